#include "engine/acceptance/stone_shape.h"

#include <cmath>
#include <numbers>

#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

using DescribedStoneShape = TypedMethod<StoneShapeInputs, StoneShapeResult>;

Source sieve_source() {
  return {"Church, McLean & Wolcott 1987, River bed gravels: sampling and analysis",
          "sieve opening and middle axis", SourceStanding::memory};
}
Source mass_source() {
  return {"FHWA FP-14", "Table 705-1 as quoted in another document, masses at 165 lb/ft³",
          SourceStanding::published};
}
Source sphere_source() {
  return {"USACE Streambank Manual", "Appendix A, eq. A.1, sphere of equal mass",
          SourceStanding::published};
}

DescribedStoneShape build_stone_shape() {
  MethodDescription about;
  about.id = "stone-shape";
  about.title = "Shape of a stone";
  about.purpose =
      "What the three axes of a stone say: how flat and long it is, through which sieve it goes, "
      "and "
      "what it weighs by the conventions in use.";
  about.group = MethodGroup::evidence;
  about.sources = {sieve_source(), mass_source(), sphere_source()};
  about.cautions = {
      "The same size means 62 % more mass by 0.85·ρ·b³ than as a sphere: ask which a class uses.",
      "USACE Streambank Manual, Appendix A: no stone with a/c above 3.5."};
  DescribedStoneShape method(std::move(about), &stone_shape);
  const auto axis = AllowedRange::positive_to(5000);
  method.required({"long_axis", "a", "longest axis"}, &StoneShapeInputs::long_axis,
                  unit::millimeter, axis, LengthUse::rock);
  method.required({"middle_axis", "b", "middle axis"}, &StoneShapeInputs::middle_axis,
                  unit::millimeter, axis, LengthUse::rock);
  method.required({"short_axis", "c", "shortest axis"}, &StoneShapeInputs::short_axis,
                  unit::millimeter, axis, LengthUse::rock);
  method.defaulted({"density", "ρ", "density of the rock"}, &StoneShapeInputs::density,
                   unit::kilogram_per_cubic_meter, AllowedRange::between(1500, 4000));
  method.output({"elongation", "b/a", "middle over longest axis"}, &StoneShapeResult::elongation,
                unit::number);
  method.output({"flatness", "c/b", "shortest over middle axis"}, &StoneShapeResult::flatness,
                unit::number);
  method.output({"slenderness", "a/c", "longest over shortest axis"},
                &StoneShapeResult::slenderness, unit::number);
  method.output({"sieve_size", "D", "square opening that lets it through"},
                &StoneShapeResult::sieve_size, unit::millimeter, LengthUse::rock);
  method.output({"krumbein_sphericity", "ψ_K", "(b·c/a²)^⅓"},
                &StoneShapeResult::krumbein_sphericity, unit::number);
  method.output({"sneed_folk_sphericity", "ψ_p", "(c²/(a·b))^⅓"},
                &StoneShapeResult::sneed_folk_sphericity, unit::number);
  method.output({"corey_factor", "S_F", "c/√(a·b)"}, &StoneShapeResult::corey_factor, unit::number);
  method.output({"ellipsoid_mass", "M", "mass as an ellipsoid"}, &StoneShapeResult::ellipsoid_mass,
                unit::kilogram);
  method.output({"sphere_mass", "M", "mass as a sphere of the middle axis"},
                &StoneShapeResult::sphere_mass, unit::kilogram);
  method.output({"common_mass", "M", "mass by 0.85·ρ·b³"}, &StoneShapeResult::common_mass,
                unit::kilogram);
  method.output({"equal_volume_sphere", "D_s", "sphere of the volume of the ellipsoid"},
                &StoneShapeResult::equal_volume_sphere, unit::millimeter, LengthUse::rock);
  return method;
}

}  // namespace

Expected<StoneShapeResult> stone_shape(const StoneShapeInputs& in, Steps& steps) {
  const double a = in.long_axis.meters();
  const double b = in.middle_axis.meters();
  const double c = in.short_axis.meters();
  if (!(a >= b && b >= c)) {
    return Problem{"axes-swapped", "The axes do not fall from long to short.", "",
                   b > a ? "/middle_axis" : "/short_axis",
                   "longest, middle and shortest axis in this order"};
  }
  const double rho = in.density.kilograms_per_cubic_meter();
  StoneShapeResult result;
  result.elongation = Dimensionless::number(b / a);
  result.flatness = Dimensionless::number(c / b);
  result.slenderness = Dimensionless::number(a / c);
  result.sieve_size = Length::meters(b * std::sqrt(0.5 * (1 + (c / b) * (c / b))));
  result.krumbein_sphericity = Dimensionless::number(std::pow(b * c / (a * a), 1.0 / 3));
  result.sneed_folk_sphericity = Dimensionless::number(std::pow(c * c / (a * b), 1.0 / 3));
  result.corey_factor = Dimensionless::number(c / std::sqrt(a * b));
  const double sixth = std::numbers::pi / 6;
  result.ellipsoid_mass = Mass::kilograms(sixth * rho * a * b * c);
  result.sphere_mass = Mass::kilograms(sixth * rho * b * b * b);
  result.common_mass = Mass::kilograms(0.85 * rho * b * b * b);
  result.equal_volume_sphere = Length::meters(std::pow(a * b * c, 1.0 / 3));
  steps.computed("b/a", "middle over longest axis", "b/a", measure(result.elongation));
  steps.computed("c/b", "shortest over middle axis", "c/b", measure(result.flatness));
  steps.computed("a/c", "longest over shortest axis", "a/c", measure(result.slenderness));
  steps.computed_rock("D", "square opening that lets it through", "b·√{½·[1 + (c/b)²]}",
                      result.sieve_size, sieve_source().sentence());
  steps.computed("M", "mass as an ellipsoid", "(π/6)·ρ·a·b·c", measure(result.ellipsoid_mass));
  steps.computed("M", "mass as a sphere of the middle axis", "(π/6)·ρ·b³",
                 measure(result.sphere_mass), sphere_source().sentence());
  steps.computed("M", "mass by the rule of riprap classes", "0.85·ρ·b³",
                 measure(result.common_mass), mass_source().sentence());
  return result;
}

const Method& stone_shape_method() {
  static const DescribedStoneShape method = build_stone_shape();
  return method;
}

}  // namespace proofstone
