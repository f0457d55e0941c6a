#include "engine/hydraulics/wall_shear_share.h"

#include <cmath>

#include "engine/hydraulics/water_weight.h"
#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

/// Which fit gives the share.
enum class WallForm { rectangle, trapezoid };

struct WallShearShareInputs {
  WallForm form = WallForm::rectangle;
  Length bottom_width;
  Length depth;
  Dimensionless side_slope;
  Slope slope;
};

struct WallShearShareResult {
  Dimensionless wall_share;
  Dimensionless wall_ratio;
  Dimensionless bed_ratio;
  Stress wall_shear;
  Stress bed_shear;
};

/// %SF_w of a smooth rectangle, as a share of 1.
double rectangle_share(double width_over_depth) {
  return 0.01 * std::exp(6.146 - 3.230 * std::log10(width_over_depth + 3));
}

/// SF_w by the perimeters of bed and walls.
double trapezoid_share(double bed_over_walls) {
  return 1.766 * std::pow(bed_over_walls + 1.5, -1.4026);
}

Expected<WallShearShareResult> compute_wall_shear_share(const WallShearShareInputs& inputs,
                                                        Steps& steps) {
  const double b = inputs.bottom_width.meters();
  const double h = inputs.depth.meters();
  const bool rectangle = inputs.form == WallForm::rectangle;
  const double z = rectangle ? 0 : inputs.side_slope.number();
  const double walls = 2 * h * std::sqrt(1 + z * z);
  const double area = h * (b + z * h);
  const double share = rectangle ? rectangle_share(b / h) : trapezoid_share(b / walls);
  WallShearShareResult result;
  result.wall_share = Dimensionless::number(share);
  result.wall_ratio = Dimensionless::number(share * area / (walls * h));
  result.bed_ratio = Dimensionless::number((1 - share) * area / (b * h));
  const double depth_slope = water_unit_weight.newtons_per_cubic_meter() * h * inputs.slope.ratio();
  result.wall_shear = Stress::pascals(result.wall_ratio.number() * depth_slope);
  result.bed_shear = Stress::pascals(result.bed_ratio.number() * depth_slope);

  steps.given("B", "bottom width", measure(inputs.bottom_width));
  steps.given("H", "depth", measure(inputs.depth));
  steps.given("S", "slope of the energy line", measure(inputs.slope));
  if (rectangle) {
    steps.computed("SF_w", "share of the walls", "0.01·exp(6.146 − 3.230·log₁₀(B/H + 3))",
                   measure(result.wall_share), "Knight et al. 1984 (from memory; confirm)");
  } else {
    steps.given("z", "side slope, horizontal over vertical", measure(inputs.side_slope));
    steps.computed("P_w", "perimeter of both walls", "2·H·√(1+z²)", measure(Length::meters(walls)));
    steps.computed("SF_w", "share of the walls", "1.766·(B/P_w + 1.5)^−1.4026",
                   measure(result.wall_share), "Flintham & Carling 1988 (from memory; confirm)");
  }
  steps.computed("A", "area", "H·(B + z·H)", measure(Area::square_meters(area)));
  steps.computed("τ_w", "mean shear on the walls", "SF_w·γ·A·S/P_w, γ = 62.4 lb/ft³",
                 measure(result.wall_shear));
  steps.computed("τ_b", "mean shear on the bed", "(1 − SF_w)·γ·A·S/B", measure(result.bed_shear));
  return result;
}

TypedMethod<WallShearShareInputs, WallShearShareResult> build_wall_shear_share() {
  MethodDescription about;
  about.id = "wall-shear-share";
  about.title = "Shear on walls and bed";
  about.purpose =
      "How the shear of a straight uniform flow is shared between the walls and the bed of a "
      "rectangular or trapezoidal channel of one roughness.";
  about.group = MethodGroup::water;
  about.sources = {{"Knight, Demetriou & Hamed, J. Hydraul. Eng. 110 (1984)",
                    "wall share of smooth rectangles", SourceStanding::memory},
                   {"Flintham & Carling, Int. Conf. on River Regime (1988)",
                    "wall share of trapezoids", SourceStanding::memory}};
  about.cautions = {
      "Means over wall and bed; the greatest shear on them is larger. Walls rougher or smoother "
      "than the bed carry another share."};
  TypedMethod<WallShearShareInputs, WallShearShareResult> method(about, &compute_wall_shear_share);
  method.choice({"form", "", "shape of the channel"}, &WallShearShareInputs::form,
                {{WallForm::rectangle, "rectangle", "upright walls"},
                 {WallForm::trapezoid, "trapezoid", "sloping walls"}});
  method.required({"bottom_width", "B", "bottom width"}, &WallShearShareInputs::bottom_width,
                  unit::foot, AllowedRange::positive_to(1e5));
  method.required({"depth", "H", "depth"}, &WallShearShareInputs::depth, unit::foot,
                  AllowedRange::positive_to(1e3));
  method.defaulted({"side_slope", "z", "side slope of a trapezoid, horizontal over vertical"},
                   &WallShearShareInputs::side_slope, unit::number, AllowedRange::between(0, 20));
  method.required({"slope", "S", "slope of the energy line"}, &WallShearShareInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(1));
  method.output({"wall_share", "SF_w", "share of the shear force on both walls"},
                &WallShearShareResult::wall_share, unit::number);
  method.output({"wall_ratio", "τ_w/γHS", "mean wall shear over depth-slope shear"},
                &WallShearShareResult::wall_ratio, unit::number);
  method.output({"bed_ratio", "τ_b/γHS", "mean bed shear over depth-slope shear"},
                &WallShearShareResult::bed_ratio, unit::number);
  method.output({"wall_shear", "τ_w", "mean shear on the walls"}, &WallShearShareResult::wall_shear,
                unit::pound_per_square_foot);
  method.output({"bed_shear", "τ_b", "mean shear on the bed"}, &WallShearShareResult::bed_shear,
                unit::pound_per_square_foot);
  return method;
}

}  // namespace

const Method& wall_shear_share_method() {
  static const TypedMethod<WallShearShareInputs, WallShearShareResult> method =
      build_wall_shear_share();
  return method;
}

}  // namespace proofstone
