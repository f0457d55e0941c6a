#include "engine/hydraulics/bend_geometry_method.h"

#include <algorithm>

#include "engine/hydraulics/centreline.h"
#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

struct BendGeometryInputs {
  std::vector<Length> eastings;
  std::vector<Length> northings;
  Length width;
  std::optional<Dimensionless> bend;
};

struct BendGeometryResult {
  Length least_radius;
  Length mean_radius;
  Angle turn;
  Length begin;
  Length end;
  Dimensionless radius_over_width;
  Dimensionless outer_bank;
  Dimensionless bends;
};

Expected<Centreline> centreline_of(const BendGeometryInputs& inputs) {
  if (inputs.eastings.size() != inputs.northings.size()) {
    return Problem{"lists-differ", "There are not as many northings as eastings.", "", "/northings",
                   "one northing for each easting"};
  }
  std::vector<PlanPoint> points;
  for (std::size_t i = 0; i < inputs.eastings.size(); ++i) {
    points.push_back({inputs.eastings[i], inputs.northings[i]});
  }
  return Centreline::make(std::move(points));
}

Expected<PlanBend> chosen(const std::vector<PlanBend>& bends, const BendGeometryInputs& inputs) {
  if (bends.empty()) {
    return Problem{"no-bend", "The centreline has no bend sharper than ten widths.", "",
                   "/eastings", "a centreline with a bend, or no bend factor at all"};
  }
  if (!inputs.bend) {
    return *std::min_element(bends.begin(), bends.end(), [](const auto& a, const auto& b) {
      return a.least_radius < b.least_radius;
    });
  }
  const double wanted = inputs.bend->number();
  if (wanted > static_cast<double>(bends.size())) {
    return Problem{"no-such-bend", "There are not so many bends along the centreline.", "", "/bend",
                   "a smaller number"};
  }
  return bends[static_cast<std::size_t>(wanted) - 1];
}

Expected<BendGeometryResult> compute_bend_geometry(const BendGeometryInputs& inputs, Steps& steps) {
  const auto centreline = centreline_of(inputs);
  if (!centreline) return centreline.problems();
  const auto curve = curvature_along(*centreline, inputs.width);
  if (!curve) return curve.problems();
  const std::vector<PlanBend> bends = bends_along(*curve, inputs.width);
  const auto bend = chosen(bends, inputs);
  if (!bend) return bend.problems();
  BendGeometryResult result;
  result.least_radius = bend->least_radius;
  result.mean_radius = bend->mean_radius;
  result.turn = bend->turn;
  result.begin = bend->begin;
  result.end = bend->end;
  result.radius_over_width = Dimensionless::number(bend->least_radius / inputs.width);
  result.outer_bank = Dimensionless::number(bend->outer_bank == BankSide::right ? 1 : -1);
  result.bends = Dimensionless::number(static_cast<double>(bends.size()));
  steps.given("W", "water's width", measure(inputs.width));
  steps.computed("L", "length of the centreline", "Σ √(Δx²+Δy²) along a smooth line",
                 measure(curve->back().along));
  steps.computed("s₁", "upstream tangent point", "where r falls below 10·W", measure(result.begin));
  steps.computed("s₂", "downstream tangent point", "where r rises above 10·W", measure(result.end));
  steps.computed("r_min", "least radius", "|ab|·|bc|·|ca|/(4·area) at W/4, smoothed over W",
                 measure(result.least_radius), "common practice");
  steps.computed("φ", "turn", "∫ ds/r", measure(result.turn));
  steps.computed("r_mean", "mean radius", "(s₂ − s₁)/φ", measure(result.mean_radius));
  return result;
}

void describe_bend_geometry_outputs(TypedMethod<BendGeometryInputs, BendGeometryResult>& method) {
  method.output({"least_radius", "r_min", "least radius of the smoothed centreline"},
                &BendGeometryResult::least_radius, unit::foot);
  method.output({"mean_radius", "r_mean", "mean radius over the bend"},
                &BendGeometryResult::mean_radius, unit::foot);
  method.output({"turn", "φ", "by how much the course turns"}, &BendGeometryResult::turn,
                unit::degree);
  method.output({"begin", "s₁", "upstream tangent point, from the first point"},
                &BendGeometryResult::begin, unit::foot);
  method.output({"end", "s₂", "downstream tangent point, from the first point"},
                &BendGeometryResult::end, unit::foot);
  method.output({"radius_over_width", "r/W", "least radius over width"},
                &BendGeometryResult::radius_over_width, unit::number);
  method.output({"outer_bank", "", "1 where the right bank is outside, −1 where the left bank is"},
                &BendGeometryResult::outer_bank, unit::number);
  method.output({"bends", "", "how many bends the centreline has"}, &BendGeometryResult::bends,
                unit::number);
}

TypedMethod<BendGeometryInputs, BendGeometryResult> build_bend_geometry() {
  MethodDescription about;
  about.id = "bend-geometry";
  about.title = "Bends of a centreline";
  about.purpose =
      "Radius, turn, outer bank and tangent points of a bend from the channel's centreline in "
      "plan, "
      "points running downstream.";
  about.group = MethodGroup::water;
  about.sources = {
      {"Circle through three points", "r = |ab|·|bc|·|ca|/(4·area)", SourceStanding::computed},
      {"Centreline at a quarter of the width, smoothed over one width",
       "common rule for digitised lines", SourceStanding::common_practice}};
  about.cautions = {
      "A radius is no better than the points: digitise the centreline of the main channel at the "
      "design flow at least once a width through the bend."};
  TypedMethod<BendGeometryInputs, BendGeometryResult> method(about, &compute_bend_geometry);
  method.required_list({"eastings", "x", "eastings of the centreline, from upstream"},
                       &BendGeometryInputs::eastings, unit::foot, AllowedRange::any());
  method.required_list({"northings", "y", "northings of the same points"},
                       &BendGeometryInputs::northings, unit::foot, AllowedRange::any());
  method.required({"width", "W", "width of the water in the main channel at the design flow"},
                  &BendGeometryInputs::width, unit::foot, AllowedRange::positive_to(1e5));
  method.optional({"bend", "", "which bend, counted from upstream"}, &BendGeometryInputs::bend,
                  unit::number, AllowedRange::between(1, 10'000), "the sharpest");
  describe_bend_geometry_outputs(method);
  return method;
}

}  // namespace

const Method& bend_geometry_method() {
  static const TypedMethod<BendGeometryInputs, BendGeometryResult> method = build_bend_geometry();
  return method;
}

}  // namespace proofstone
