#include "engine/hydraulics/bend_geometry_method.h"

#include <algorithm>

#include "engine/hydraulics/centreline.h"
#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

struct Inputs {
  std::vector<Length> eastings;
  std::vector<Length> northings;
  Length width;
  std::optional<Dimensionless> bend;
};

struct Result {
  Length least_radius;
  Length mean_radius;
  Angle turn;
  Length begin;
  Length end;
  Dimensionless radius_over_width;
  Dimensionless outer_bank;
  Dimensionless bends;
};

Expected<Centreline> centreline_of(const Inputs& inputs) {
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

Expected<PlanBend> chosen(const std::vector<PlanBend>& bends, const Inputs& inputs) {
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

Expected<Result> compute(const Inputs& inputs, Steps& steps) {
  const auto centreline = centreline_of(inputs);
  if (!centreline) return centreline.problems();
  const auto curve = curvature_along(*centreline, inputs.width);
  if (!curve) return curve.problems();
  const std::vector<PlanBend> bends = bends_along(*curve, inputs.width);
  const auto bend = chosen(bends, inputs);
  if (!bend) return bend.problems();
  Result result;
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

void describe_outputs(TypedMethod<Inputs, Result>& method) {
  method.output({"least_radius", "r_min", "least radius of the smoothed centreline"},
                &Result::least_radius, unit::foot);
  method.output({"mean_radius", "r_mean", "mean radius over the bend"}, &Result::mean_radius,
                unit::foot);
  method.output({"turn", "φ", "by how much the course turns"}, &Result::turn, unit::degree);
  method.output({"begin", "s₁", "upstream tangent point, from the first point"}, &Result::begin,
                unit::foot);
  method.output({"end", "s₂", "downstream tangent point, from the first point"}, &Result::end,
                unit::foot);
  method.output({"radius_over_width", "r/W", "least radius over width"}, &Result::radius_over_width,
                unit::number);
  method.output({"outer_bank", "", "1 where the right bank is outside, −1 where the left bank is"},
                &Result::outer_bank, unit::number);
  method.output({"bends", "", "how many bends the centreline has"}, &Result::bends, unit::number);
}

TypedMethod<Inputs, Result> build() {
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
  TypedMethod<Inputs, Result> method(about, &compute);
  method.required_list({"eastings", "x", "eastings of the centreline, from upstream"},
                       &Inputs::eastings, unit::foot, AllowedRange::any());
  method.required_list({"northings", "y", "northings of the same points"}, &Inputs::northings,
                       unit::foot, AllowedRange::any());
  method.required({"width", "W", "width of the water in the main channel at the design flow"},
                  &Inputs::width, unit::foot, AllowedRange::positive_to(1e5));
  method.optional({"bend", "", "which bend, counted from upstream"}, &Inputs::bend, unit::number,
                  AllowedRange::between(1, 10'000), "the sharpest");
  describe_outputs(method);
  return method;
}

}  // namespace

const Method& bend_geometry_method() {
  static const TypedMethod<Inputs, Result> method = build();
  return method;
}

}  // namespace proofstone
