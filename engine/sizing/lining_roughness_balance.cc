#include "engine/sizing/lining_roughness_balance.h"

#include <cmath>
#include <vector>

#include "engine/hydraulics/bracketed_root.h"

namespace proofstone {

namespace {

constexpr double under_water_roughness = 1.15;

/// The scan for fixed points: D30 from 0.02 to 20 ft, each step 2 % larger than the last.
constexpr Length smallest = Length::feet(0.02);
constexpr Length largest = Length::feet(20);
constexpr double step_ratio = 1.02;

/// Water over rock of D90, with the low roughness, and the D30 that it asks for.
Expected<RockLinedTrial> look_at(const LiningRoughnessInputs& in, Length d90, Steps& steps) {
  const auto n = roughness_of(d90, in.velocity_coefficient, steps);
  return trial_at(in, n, steps);
}

/// Whether rock of D30 is at least what its own roughness asks for.
bool holds(const LiningRoughnessInputs& in, double d30_meters) {
  Steps unused;
  const Length d30 = Length::meters(d30_meters);
  const auto trial = look_at(in, in.d90_over_d30.number() * d30, unused);
  return trial && trial->required_d30 <= d30;
}

/// Every size within the scan at which "holds" turns, smallest first.
struct FixedPoints {
  std::vector<double> sizes;  ///< m
  bool largest_holds = false;
};

FixedPoints find_fixed_points(const LiningRoughnessInputs& in) {
  FixedPoints found;
  const auto rock_holds = [&](double size) { return holds(in, size); };
  const auto rock_moves = [&](double size) { return !holds(in, size); };
  double below = smallest.meters();
  bool below_holds = rock_holds(below);
  if (below_holds) found.sizes.push_back(below);
  while (below * step_ratio < largest.meters()) {
    const double size = below * step_ratio;
    const bool size_holds = rock_holds(size);
    if (size_holds && !below_holds) found.sizes.push_back(turning_point(below, size, rock_holds));
    if (!size_holds && below_holds) found.sizes.push_back(turning_point(below, size, rock_moves));
    below = size;
    below_holds = size_holds;
  }
  found.largest_holds = below_holds;
  return found;
}

Expected<Length> safe_size(const LiningRoughnessInputs& in, LiningRoughnessResult& result) {
  const auto found = find_fixed_points(in);
  if (!found.largest_holds) {
    return Problem{"no-size-holds", "Even rock of 20 ft asks for larger rock.", "", "/discharge",
                   "a slower channel"};
  }
  result.fixed_points = Dimensionless::number(static_cast<double>(found.sizes.size()));
  return Length::meters(found.sizes.back());
}

/// The deeper water, for level and freeboard.
Problems level_case(const LiningRoughnessInputs& in, LiningRoughnessResult& result, Steps& steps) {
  // Of the class chosen; of the size found, as long as no class is chosen.
  const Length d90 = in.chosen_d90.value_or(result.d90);
  double n = roughness_of(d90, in.level_coefficient, steps).number();
  if (in.placement == Placement::under_water) {
    n *= under_water_roughness;
    steps.computed("n", "Manning's n, high, of rock placed under water", "1.15·n", measure(n),
                   "USACE EM 1110-2-1601 (1994) (from memory; confirm)");
  }
  result.level_roughness = Dimensionless::number(n);
  const auto flow = rock_lined_flow(in.channel(), result.level_roughness);
  if (!flow) return flow.problems();
  result.level_depth = flow->depth;
  result.level_velocity = flow->velocity;
  steps.computed("y", "depth for level and freeboard", "Manning's equation", measure(flow->depth));
  return {};
}

MethodDescription describe_lining_roughness_balance() {
  MethodDescription about;
  about.id = "lining-roughness-balance";
  about.title = "Rock size and its own roughness";
  about.purpose =
      "Size of rock that lines a whole trapezoidal channel, where the rock's roughness decides the "
      "depth and velocity that size it; with the low roughness for size and the high one for "
      "level.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"USACE WES Streambank Handbook (1997)",
       "App. A, eq. A.2, K 0.034, 0.036 and 0.038; Example 2", SourceStanding::published},
      {"USACE EM 1110-2-1601 (1994)", "eqs. 3-2 and 3-3, App. H Problem 2 by trials",
       SourceStanding::memory}};
  about.cautions = {
      "Where several sizes balance, the largest is taken: every larger size looked at holds.",
      "Uniform flow is an assumption; where a profile calculation gives the depth, use that."};
  return about;
}

void describe_rock(TypedMethod<LiningRoughnessInputs, LiningRoughnessResult>& method) {
  method.defaulted({"velocity_coefficient", "K", "of roughness, for velocity and rock size"},
                   &LiningRoughnessInputs::velocity_coefficient, unit::number,
                   AllowedRange::between(0.02, 0.06));
  method.defaulted({"level_coefficient", "K", "of roughness, for level and freeboard"},
                   &LiningRoughnessInputs::level_coefficient, unit::number,
                   AllowedRange::between(0.02, 0.06));
  method.defaulted({"d90_over_d30", "D90/D30", "of the smallest rock the class allows"},
                   &LiningRoughnessInputs::d90_over_d30, unit::number, AllowedRange::between(1, 5));
  method.choice(
      {"placement", "", "where the rock is placed"}, &LiningRoughnessInputs::placement,
      {ChoiceOption<Placement>{Placement::dry, "dry", "above water"},
       {Placement::under_water, "under-water", "through water: 15 % rougher for the level"}});
  method.optional({"chosen_d90", "D90", "of the class chosen, smallest allowed"},
                  &LiningRoughnessInputs::chosen_d90, unit::foot, AllowedRange::positive_to(50),
                  "of the size found", LengthUse::rock);
}

void describe_lining_roughness_balance_outputs(
    TypedMethod<LiningRoughnessInputs, LiningRoughnessResult>& method) {
  method.output({"d30", "D30", "size that its own roughness asks for"}, &LiningRoughnessResult::d30,
                unit::foot, LengthUse::rock);
  method.output({"d90", "D90", "D90 with it"}, &LiningRoughnessResult::d90, unit::foot,
                LengthUse::rock);
  method.output({"fixed_points", "", "how many sizes balance"},
                &LiningRoughnessResult::fixed_points, unit::number);
  method.output({"roughness", "n", "Manning's n, low"}, &LiningRoughnessResult::roughness,
                unit::number);
  method.output({"depth", "y", "depth with it"}, &LiningRoughnessResult::depth, unit::foot);
  method.output({"velocity", "V", "mean velocity with it"}, &LiningRoughnessResult::velocity,
                unit::foot_per_second);
  method.output({"attacking_velocity", "V_SS", "velocity at the rock with it"},
                &LiningRoughnessResult::attacking_velocity, unit::foot_per_second);
  method.output({"level_roughness", "n", "Manning's n, high"},
                &LiningRoughnessResult::level_roughness, unit::number);
  method.output({"level_depth", "y", "depth for level and freeboard"},
                &LiningRoughnessResult::level_depth, unit::foot);
  method.output({"level_velocity", "V", "mean velocity with it"},
                &LiningRoughnessResult::level_velocity, unit::foot_per_second);
}

TypedMethod<LiningRoughnessInputs, LiningRoughnessResult> build_lining_roughness_balance() {
  TypedMethod<LiningRoughnessInputs, LiningRoughnessResult> method(
      describe_lining_roughness_balance(), &lining_roughness_balance);
  describe_rock_lined_channel(method);
  describe_rock(method);
  describe_lining_roughness_balance_outputs(method);
  return method;
}

}  // namespace

Expected<LiningRoughnessResult> lining_roughness_balance(const LiningRoughnessInputs& inputs,
                                                         Steps& steps) {
  // One look first, so that what is wrong with the inputs is said and not taken for rock that
  // moves.
  Steps unused;
  const auto first = look_at(inputs, smallest, unused);
  if (!first) return first.problems();
  LiningRoughnessResult result;
  const auto d30 = safe_size(inputs, result);
  if (!d30) return d30.problems();
  result.d30 = *d30;
  result.d90 = inputs.d90_over_d30.number() * result.d30;
  steps.computed("N", "sizes from 0.02 to 20 ft that balance; the largest is taken",
                 "D30 required by the water over D30 = D30", measure(result.fixed_points));
  const auto trial = look_at(inputs, result.d90, steps);
  if (!trial) return trial.problems();
  result.roughness = trial->roughness;
  result.depth = trial->flow.depth;
  result.velocity = trial->flow.velocity;
  result.attacking_velocity = trial->attacking_velocity;
  steps.computed_rock("D30", "size that its own roughness asks for", "", result.d30);
  const Problems problems = level_case(inputs, result, steps);
  if (!problems.empty()) return problems;
  return result;
}

const Method& lining_roughness_balance_method() {
  static const TypedMethod<LiningRoughnessInputs, LiningRoughnessResult> method =
      build_lining_roughness_balance();
  return method;
}

}  // namespace proofstone
