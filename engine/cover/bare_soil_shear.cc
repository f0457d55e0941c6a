#include "engine/cover/bare_soil_shear.h"

#include <cmath>
#include <string>

namespace proofstone {

namespace {

const char* const hec15_of_bare_soil_shear =
    "FHWA HEC-15 3rd ed. (2005) ch. 4 (from memory; confirm)";

/// Finer soil than this, in mm, has the least permissible shear and roughness.
constexpr double coarse_from_mm = 1.3;
constexpr double fine_roughness = 0.016;

struct Coefficients {
  CoverSoil soil;
  bool above_20;  ///< for PI above 20, else for 10 to 20
  double c1, c2, c3, c4, c5, c6;
};
constexpr Coefficients published[] = {
    {CoverSoil::gm, false, 1.07, 14.3, 47.7, 1.42, -0.61, 4.8e-3},
    {CoverSoil::gm, true, 0, 0, 0.076, 1.42, -0.61, 48},
    {CoverSoil::gc, false, 0.0477, 2.86, 42.9, 1.42, -0.61, 4.8e-2},
    {CoverSoil::gc, true, 0, 0, 0.119, 1.42, -0.61, 48},
    {CoverSoil::sm, false, 1.07, 7.15, 11.9, 1.42, -0.61, 4.8e-3},
    {CoverSoil::sm, true, 0, 0, 0.058, 1.42, -0.61, 48},
    {CoverSoil::sc, false, 1.07, 14.3, 47.7, 1.42, -0.61, 4.8e-3},
    {CoverSoil::sc, true, 0, 0, 0.076, 1.42, -0.61, 48},
    {CoverSoil::ml, false, 1.07, 7.15, 11.9, 1.48, -0.57, 4.8e-3},
    {CoverSoil::ml, true, 0, 0, 0.058, 1.48, -0.57, 48},
    {CoverSoil::cl, false, 1.07, 14.3, 47.7, 1.48, -0.57, 4.8e-3},
    {CoverSoil::cl, true, 0, 0, 0.076, 1.48, -0.57, 48},
    {CoverSoil::mh, false, 0.0477, 1.43, 10.7, 1.38, -0.373, 4.8e-2},
    {CoverSoil::mh, true, 0, 0, 0.058, 1.38, -0.373, 48},
    {CoverSoil::ch, true, 0, 0, 0.097, 1.38, -0.373, 48}};

Problem missing(const char* key, const char* what) {
  return {"missing-input", what, "", std::string("/") + key, ""};
}

Expected<BareSoilShearResult> without_cohesion(const BareSoilShearInputs& in, Steps& steps) {
  if (!in.d75) return missing("d75", "Soil without cohesion needs its grain size D75.");
  const double D75 = in.d75->millimeters();
  const bool coarse = D75 >= coarse_from_mm;
  BareSoilShearResult result;
  result.permissible_shear = Stress::pascals(coarse ? 0.75 * D75 : 1.0);
  result.roughness =
      Dimensionless::number(coarse ? 0.015 * std::pow(D75, 1.0 / 6.0) : fine_roughness);
  steps.given_rock("D75", "grain size of which 75 % is finer", *in.d75);
  steps.computed("τp", "permissible shear of the soil",
                 coarse ? "0.75·D75 (N/m², mm)" : "1.0 N/m², D75 below 1.3 mm",
                 measure(result.permissible_shear), hec15_of_bare_soil_shear);
  steps.computed("ns", "roughness of the soil",
                 coarse ? "0.015·D75^(1/6) (mm)" : "0.016, D75 below 1.3 mm",
                 measure(result.roughness), hec15_of_bare_soil_shear);
  return result;
}

Problems missing_of_cohesive(const BareSoilShearInputs& in) {
  Problems problems;
  if (!in.plasticity_index) {
    problems.push_back(missing("plasticity_index", "Cohesive soil needs its plasticity index."));
  }
  if (!in.void_ratio) {
    problems.push_back(missing("void_ratio", "Cohesive soil needs its void ratio."));
  }
  if (!problems.empty()) return problems;
  if (in.plasticity_index->number() < 10) {
    problems.push_back({"not-cohesive",
                        "Soil with a plasticity index below 10 counts as without cohesion.", "",
                        "/plasticity_index", "10 or more, or soil \"non-cohesive\" with its D75"});
  }
  return problems;
}

Expected<BareSoilShearResult> cohesive(const BareSoilShearInputs& in, Steps& steps) {
  const Problems problems = missing_of_cohesive(in);
  if (!problems.empty()) return problems;
  const double PI = in.plasticity_index->number();
  const double e = in.void_ratio->number();
  for (const auto& c : published) {
    if (c.soil != in.soil || c.above_20 != (PI > 20)) continue;
    const double tau = (c.c1 * PI * PI + c.c2 * PI + c.c3) * std::pow(c.c4 + c.c5 * e, 2) * c.c6;
    BareSoilShearResult result;
    result.permissible_shear = Stress::pascals(tau);
    result.roughness = Dimensionless::number(fine_roughness);
    steps.given("PI", "plasticity index", measure(*in.plasticity_index));
    steps.given("e", "void ratio", measure(*in.void_ratio));
    steps.computed("τp", "permissible shear of the soil",
                   "(c1·PI² + c2·PI + c3)·(c4 + c5·e)²·c6, c1 to c6 by soil group (N/m²)",
                   measure(result.permissible_shear), hec15_of_bare_soil_shear);
    steps.given("ns", "roughness of the soil", measure(result.roughness), hec15_of_bare_soil_shear);
    return result;
  }
  return Problem{"no-coefficients",
                 "No coefficients are published for this soil group at this plasticity index.", "",
                 "/plasticity_index", "fat clay (ch) above 20"};
}

MethodDescription describe_bare_soil_shear() {
  MethodDescription about;
  about.id = "bare-soil-shear";
  about.title = "Permissible shear of bare soil";
  about.purpose =
      "How much shear bare soil bears, and its roughness: what lies under grass, blankets and "
      "topsoil cover.";
  about.group = MethodGroup::cover;
  about.sources = {
      {"FHWA HEC-15 3rd ed. (2005), FHWA-NHI-05-114", "ch. 4", SourceStanding::memory}};
  about.cautions = {"Topsoil on rock is a cover to be lost in a flood; the rock must hold bare."};
  return about;
}

TypedMethod<BareSoilShearInputs, BareSoilShearResult> build_bare_soil_shear() {
  TypedMethod<BareSoilShearInputs, BareSoilShearResult> method(describe_bare_soil_shear(),
                                                               &bare_soil_shear);
  describe_cover_soil(method);
  method.output({"permissible_shear", "τp", "permissible shear of the soil"},
                &BareSoilShearResult::permissible_shear, unit::pascal);
  method.output({"roughness", "ns", "roughness of the soil"}, &BareSoilShearResult::roughness,
                unit::number);
  return method;
}

}  // namespace

Expected<BareSoilShearResult> bare_soil_shear(const BareSoilShearInputs& inputs, Steps& steps) {
  if (inputs.soil == CoverSoil::non_cohesive) return without_cohesion(inputs, steps);
  return cohesive(inputs, steps);
}

const Method& bare_soil_shear_method() {
  static const TypedMethod<BareSoilShearInputs, BareSoilShearResult> method =
      build_bare_soil_shear();
  return method;
}

}  // namespace proofstone
