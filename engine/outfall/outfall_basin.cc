#include "engine/outfall/outfall_basin.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/hydraulics/bracketed_root.h"

namespace proofstone {

namespace {

const char* const basin = "FHWA HEC-14 3rd ed. (2006) §10.1 (from memory; confirm)";
const char* const shape_rules =
    "FHWA HEC-14 2nd ed. (1983), as a local storm-drainage manual of 2006 prints it";

Length tailwater_depth(const OutfallBasinInputs& in) {
  return in.tailwater.value_or(Length::meters(0));
}

Expected<Area> brink_area(const OutfallBasinInputs& in) {
  if (in.flow_area) return *in.flow_area;
  if (in.shape == ConduitShape::box) {
    return Area::square_meters(in.width.meters() * in.brink_depth.meters());
  }
  if (in.brink_depth > in.width) {
    return Problem{"deeper-than-conduit", "The brink depth is more than the diameter of the pipe.",
                   "", "/brink_depth", "a depth up to the diameter"};
  }
  return pipe_flow_area(in.width, in.brink_depth);
}

double tailwater_term(double tw_over_ye) {
  if (tw_over_ye < 0.75) return 1.4;
  if (tw_over_ye > 1.0) return 2.4;
  return 4.0 * tw_over_ye - 1.6;
}

/// Q²/g = A³/T in the trapezoid of the basin's end, sides 2H:1V.
double critical_depth_at_exit(double Q, double WB) {
  const auto is_deep_enough = [&](double yc) {
    const double A = yc * (WB + 2 * yc);
    const double T = WB + 4 * yc;
    return A * A * A / T >= Q * Q / g_si;
  };
  // A rectangle of that width is never shallower than the trapezoid.
  const double rectangle = std::pow(Q * Q / (g_si * WB * WB), 1.0 / 3.0);
  return turning_point(0, rectangle * (1 + 1e-9), is_deep_enough);
}

Problems no_basin(const OutfallBasinResult& result, const OutfallBasinInputs& in) {
  const double hs = result.scour_depth.meters();
  if (!(hs > 0)) {
    return {{"no-scour-hole",
             fmt::format("With rock of {:.2f} ft the scour depth comes out as {:.2f} ft, not above "
                         "0: no hole forms and this basin does not apply.",
                         in.d50.feet(), result.scour_depth.feet()),
             "", "/d50", "smaller rock, or an apron in place of a basin"}};
  }
  if (result.scour_over_size.number() < 2 - 1e-9) {
    return {{"hole-too-shallow",
             fmt::format("With rock of {:.2f} ft the scour depth is only {:.2f} times the size; "
                         "the basin must be at least twice as deep as its rock is large.",
                         in.d50.feet(), result.scour_over_size.number()),
             "", "/d50", "rock for which hs/D50 is 2 or more, or an apron in place of a basin"}};
  }
  return {};
}

void scour_depth(const OutfallBasinInputs& in, Area A, OutfallBasinResult& result) {
  const double Vo = in.discharge.cubic_meters_per_second() / A.square_meters();
  const double ye = in.shape == ConduitShape::box ? in.brink_depth.meters()
                                                  : std::pow(A.square_meters() / 2, 0.5);
  const double D50 = in.d50.meters();
  const double Fr = Vo / std::sqrt(g_si * ye);
  const double Co = tailwater_term(tailwater_depth(in).meters() / ye);
  const double hs = ye * (0.86 * std::pow(D50 / ye, -0.55) * Fr - Co);

  result.flow_area = A;
  result.outlet_velocity = Velocity::meters_per_second(Vo);
  result.equivalent_depth = Length::meters(ye);
  result.froude_number = Dimensionless::number(Fr);
  result.size_over_depth = Dimensionless::number(D50 / ye);
  result.tailwater_over_depth = Dimensionless::number(tailwater_depth(in).meters() / ye);
  result.tailwater_term = Dimensionless::number(Co);
  result.scour_depth = Length::meters(hs);
  result.scour_over_size = Dimensionless::number(hs / D50);
}

void shape_of_basin(const OutfallBasinInputs& in, OutfallBasinResult& result) {
  const Length hs = result.scour_depth;
  const Length Wo = in.width;
  result.pool_length = std::max(10 * hs, 3 * Wo);
  result.basin_length = std::max(15 * hs, 4 * Wo);
  result.basin_width = Wo + 2.0 / 3.0 * result.basin_length;
  const double Q = in.discharge.cubic_meters_per_second();
  const double WB = result.basin_width.meters();
  const double yc = critical_depth_at_exit(Q, WB);
  result.critical_depth = Length::meters(yc);
  result.exit_velocity = Velocity::meters_per_second(Q / (yc * (WB + 2 * yc)));
  result.d50 = in.d50;
  result.entry_thickness = 3 * in.d50;
  result.floor_thickness = 2 * in.d50;
}

void explain_scour(const OutfallBasinInputs& in, const OutfallBasinResult& result, Steps& steps) {
  const bool box = in.shape == ConduitShape::box;
  steps.given("Q", "discharge", measure(in.discharge));
  steps.given("Wo", box ? "width of the box" : "diameter of the pipe", measure(in.width));
  steps.given("yo", "depth at the brink", measure(in.brink_depth));
  steps.computed("A", "area of flow at the brink",
                 in.flow_area ? "given directly" : (box ? "Wo·yo" : "segment of the circle"),
                 measure(result.flow_area));
  steps.computed("Vo", "velocity there", "Q/A", measure(result.outlet_velocity));
  steps.computed("ye", "equivalent depth", box ? "yo" : "(A/2)^½", measure(result.equivalent_depth),
                 shape_rules);
  steps.computed("Fr", "Froude number there", "Vo/√(g·ye)", measure(result.froude_number));
  steps.given("TW", "tailwater", measure(tailwater_depth(in)),
              in.tailwater ? "" : "unknown: taken as none, which digs deepest");
  steps.computed("Co", "tailwater term",
                 "1.4 where TW/ye < 0.75; 4.0·(TW/ye) − 1.6 to 1.0; 2.4 above",
                 measure(result.tailwater_term), basin);
  steps.given_rock("D50", "rock tried", in.d50);
  steps.computed("hs", "scour depth", "ye·[0.86·(D50/ye)^−0.55·Fr − Co]",
                 measure(result.scour_depth), basin);
  steps.computed("hs/D50", "depth over size, 2 or more", "", measure(result.scour_over_size),
                 basin);
}

void explain_basin(const OutfallBasinResult& result, Steps& steps) {
  steps.computed("Ls", "length of the pool", "the larger of 10·hs and 3·Wo",
                 measure(result.pool_length), shape_rules);
  steps.computed("LB", "length of the basin", "the larger of 15·hs and 4·Wo",
                 measure(result.basin_length), shape_rules);
  steps.computed("WB", "width at its end", "Wo + 2·(LB/3)", measure(result.basin_width), basin);
  steps.computed("yc", "critical depth at its end", "Q²/g = A³/T, sides 2H:1V",
                 measure(result.critical_depth), basin);
  steps.computed("Vc", "velocity there", "Q/A", measure(result.exit_velocity), basin);
  steps.computed("t", "thickness on the entry slope", "3·D50", measure(result.entry_thickness),
                 basin);
  steps.computed("t", "thickness elsewhere", "2·D50", measure(result.floor_thickness), basin);
}

}  // namespace

Area pipe_flow_area(Length diameter, Length depth) {
  const double r = diameter.meters() / 2;
  const double y = depth.meters();
  const double half_angle = std::acos((r - y) / r);
  return Area::square_meters(r * r * (half_angle - std::sin(half_angle) * std::cos(half_angle)));
}

Expected<OutfallBasinResult> outfall_basin(const OutfallBasinInputs& inputs, Steps& steps) {
  const auto area = brink_area(inputs);
  if (!area) return area.problems();
  OutfallBasinResult result;
  scour_depth(inputs, *area, result);
  const Problems refused = no_basin(result, inputs);
  if (!refused.empty()) return refused;
  shape_of_basin(inputs, result);
  explain_scour(inputs, result, steps);
  explain_basin(result, steps);
  return result;
}

}  // namespace proofstone
