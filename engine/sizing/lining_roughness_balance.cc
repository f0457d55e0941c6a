#include "engine/sizing/lining_roughness_balance.h"

#include <cmath>
#include <vector>

#include "engine/hydraulics/bracketed_root.h"

namespace proofstone {

namespace {

using Inputs = LiningRoughnessInputs;
using Result = LiningRoughnessResult;

const char* const roughness_page = "WES Streambank Handbook (1997) App. A, eq. A.2";
const char* const local_depth_page =
    "USACE EM 1110-2-1601 (1994) App. H, as printed in WES Streambank Handbook (1997) App. A";

constexpr double bank_depth_share = 0.8;
constexpr double under_water_roughness = 1.15;

/// The scan for fixed points: D30 from 0.02 to 20 ft, each step 2 % larger than the last.
constexpr Length smallest = Length::feet(0.02);
constexpr Length largest = Length::feet(20);
constexpr double step_ratio = 1.02;

RockLinedChannel channel_of(const Inputs& in) {
  return {in.bottom_width, in.side_slope, in.bed_slope, in.discharge};
}

UsaceBankAndBedInputs sizing_inputs(const Inputs& in, const RockLinedFlow& flow) {
  UsaceBankAndBedInputs sizing;
  sizing.channel_form = in.channel_form;
  sizing.average_velocity = flow.velocity;
  sizing.top_width = flow.top_width;
  if (in.bend_radius) {
    sizing.attack = WaterAttack::outside_of_bend;
    sizing.bend_radius = in.bend_radius;
  }
  if (in.velocity_ratio) sizing.local_velocity = in.velocity_ratio->number() * flow.velocity;
  const bool bank = in.place == ZonePlace::bank;
  sizing.local_depth = bank ? bank_depth_share * flow.depth : flow.depth;
  sizing.bank_angle = bank ? angle_of(in.side_slope) : Angle::radians(0);
  sizing.specific_gravity = in.specific_gravity;
  sizing.angularity = in.angularity;
  sizing.safety_factor = in.safety_factor;
  sizing.channel_slope = in.bed_slope;
  return sizing;
}

/// Water over rock of roughness n and the D30 that this water asks for; working goes to `steps`.
Expected<LiningTrial> look_at_roughness(const Inputs& in, Dimensionless n, Steps& steps) {
  LiningTrial trial;
  trial.roughness = n;
  const auto flow = rock_lined_flow(channel_of(in), n);
  if (!flow) return flow.problems();
  trial.flow = *flow;
  steps.computed("y", "depth of uniform flow", "Manning's equation", measure(flow->depth));
  steps.computed("W", "top width", "b + 2·z·y", measure(flow->top_width));
  steps.computed("V", "mean velocity", "Q/A", measure(flow->velocity));
  const auto sizing = sizing_inputs(in, *flow);
  trial.local_depth = sizing.local_depth;
  steps.computed("d", "local depth: on a bank, 20 % up the slope from the toe",
                 in.place == ZonePlace::bank ? "0.80·y" : "y", measure(sizing.local_depth),
                 local_depth_page);
  const auto required = usace_bank_and_bed(sizing, steps);
  if (!required) return required.problems();
  trial.attacking_velocity = required->v_ss;
  trial.required_d30 = required->d30;
  return trial;
}

/// The same over rock of D90.
Expected<LiningTrial> look_at(const Inputs& in, Length d90, Steps& steps) {
  const auto n = rock_roughness(d90, in.velocity_coefficient);
  steps.given_rock("D90", "smallest the class allows", d90);
  steps.given("K", "coefficient of roughness for velocity and rock size",
              measure(in.velocity_coefficient), roughness_page);
  steps.computed("n", "Manning's n, low", "K·D90^⅙ (ft)", measure(n), roughness_page);
  return look_at_roughness(in, n, steps);
}

/// Whether rock of D30 is at least what its own roughness asks for.
bool holds(const Inputs& in, double d30_meters) {
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

FixedPoints find_fixed_points(const Inputs& in) {
  FixedPoints found;
  const auto rock_holds = [&](double size) { return holds(in, size); };
  const auto rock_moves = [&](double size) { return !holds(in, size); };
  double below = smallest.meters();
  bool below_holds = rock_holds(below);
  if (below_holds) found.sizes.push_back(below);
  for (double size = below * step_ratio; size < largest.meters(); size *= step_ratio) {
    const bool size_holds = rock_holds(size);
    if (size_holds && !below_holds) found.sizes.push_back(turning_point(below, size, rock_holds));
    if (!size_holds && below_holds) found.sizes.push_back(turning_point(below, size, rock_moves));
    below = size;
    below_holds = size_holds;
  }
  found.largest_holds = below_holds;
  return found;
}

Expected<Length> safe_size(const Inputs& in, Result& result) {
  const auto found = find_fixed_points(in);
  if (!found.largest_holds) {
    return Problem{"no-size-holds", "Even rock of 20 ft asks for larger rock.", "", "/discharge",
                   "a slower channel"};
  }
  result.fixed_points = Dimensionless::number(static_cast<double>(found.sizes.size()));
  return Length::meters(found.sizes.back());
}

/// The deeper water, for level and freeboard.
Problems level_case(const Inputs& in, Result& result, Steps& steps) {
  const Length d90 = in.chosen_d90.value_or(result.d90);
  double n = rock_roughness(d90, in.level_coefficient).number();
  steps.given_rock("D90",
                   in.chosen_d90 ? "of the class chosen, smallest allowed"
                                 : "of the size found, as no class is chosen yet",
                   d90);
  steps.given("K", "coefficient of roughness for level and freeboard",
              measure(in.level_coefficient), roughness_page);
  steps.computed("n", "Manning's n, high", "K·D90^⅙ (ft)", measure(n), roughness_page);
  if (in.placement == Placement::under_water) {
    n *= under_water_roughness;
    steps.computed("n", "Manning's n, high, of rock placed under water", "1.15·n", measure(n),
                   "USACE EM 1110-2-1601 (1994) (from memory; confirm)");
  }
  result.level_roughness = Dimensionless::number(n);
  const auto flow = rock_lined_flow(channel_of(in), result.level_roughness);
  if (!flow) return flow.problems();
  result.level_depth = flow->depth;
  result.level_velocity = flow->velocity;
  steps.computed("y", "depth for level and freeboard", "Manning's equation", measure(flow->depth));
  return {};
}

Problems trial_case(const Inputs& in, Result& result) {
  if (!in.trial_d90 && !in.trial_roughness) return {};
  Steps unused;
  const auto trial = in.trial_roughness ? look_at_roughness(in, *in.trial_roughness, unused)
                                        : look_at(in, *in.trial_d90, unused);
  if (!trial) return trial.problems();
  result.trial_roughness = trial->roughness;
  result.trial_depth = trial->flow.depth;
  result.trial_top_width = trial->flow.top_width;
  result.trial_velocity = trial->flow.velocity;
  result.trial_local_depth = trial->local_depth;
  result.trial_required_d30 = trial->required_d30;
  return {};
}

MethodDescription describe() {
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

void describe_channel(TypedMethod<Inputs, Result>& method) {
  method.required({"bottom_width", "b", "bottom width of the channel"}, &Inputs::bottom_width,
                  unit::foot, AllowedRange::between(0, 1e5));
  method.required({"side_slope", "1/z", "slope of its sides"}, &Inputs::side_slope,
                  unit::rise_per_run, AllowedRange::between(0.02, 5));
  method.required({"bed_slope", "S", "slope of the bed"}, &Inputs::bed_slope, unit::rise_per_run,
                  AllowedRange::positive_to(0.5));
  method.required({"discharge", "Q", "discharge"}, &Inputs::discharge, unit::cubic_foot_per_second,
                  AllowedRange::positive_to(1e7));
  method.choice({"place", "", "where the rock lies"}, &Inputs::place,
                {ChoiceOption<ZonePlace>{ZonePlace::bank, "bank", "on the sides"},
                 {ZonePlace::bed, "bed", "on the bottom"}});
  method.choice(
      {"channel_form", "", "which bend curve"}, &Inputs::channel_form,
      {ChoiceOption<ChannelForm>{ChannelForm::trapezoidal, "trapezoidal", "trapezoidal channel"},
       {ChannelForm::natural, "natural", "natural channel"}});
  method.optional({"bend_radius", "R", "centreline radius of the bend"}, &Inputs::bend_radius,
                  unit::foot, AllowedRange::positive_to(1e6), "a straight channel");
  method.optional({"velocity_ratio", "V_SS/V", "read by hand, in place of the bend curve"},
                  &Inputs::velocity_ratio, unit::number, AllowedRange::positive_to(3),
                  "the bend curve");
}

void describe_rock(TypedMethod<Inputs, Result>& method) {
  method.defaulted({"specific_gravity", "γs/γw", "specific gravity of the rock"},
                   &Inputs::specific_gravity, unit::number, AllowedRange::between(1.5, 4));
  method.choice({"angularity", "Cs", "how worn the stones are"}, &Inputs::angularity,
                {ChoiceOption<Angularity>{Angularity::angular, "angular", "angular"},
                 {Angularity::rounded, "rounded", "rounded"}});
  method.defaulted({"safety_factor", "Sf", "safety factor"}, &Inputs::safety_factor, unit::number,
                   AllowedRange::between(1, 3));
  method.defaulted({"velocity_coefficient", "K", "of roughness, for velocity and rock size"},
                   &Inputs::velocity_coefficient, unit::number, AllowedRange::between(0.02, 0.06));
  method.defaulted({"level_coefficient", "K", "of roughness, for level and freeboard"},
                   &Inputs::level_coefficient, unit::number, AllowedRange::between(0.02, 0.06));
  method.defaulted({"d90_over_d30", "D90/D30", "of the smallest rock the class allows"},
                   &Inputs::d90_over_d30, unit::number, AllowedRange::between(1, 5));
  method.choice(
      {"placement", "", "where the rock is placed"}, &Inputs::placement,
      {ChoiceOption<Placement>{Placement::dry, "dry", "above water"},
       {Placement::under_water, "under-water", "through water: 15 % rougher for the level"}});
  method.optional({"chosen_d90", "D90", "of the class chosen, smallest allowed"},
                  &Inputs::chosen_d90, unit::foot, AllowedRange::positive_to(50),
                  "of the size found", LengthUse::rock);
}

void describe_trial(TypedMethod<Inputs, Result>& method) {
  method.optional({"trial_d90", "D90", "a size to look at beside the one found"},
                  &Inputs::trial_d90, unit::foot, AllowedRange::positive_to(50), "no trial",
                  LengthUse::rock);
  method.optional({"trial_roughness", "n", "Manning's n of the trial, where it is stated"},
                  &Inputs::trial_roughness, unit::number, AllowedRange::between(0.005, 0.5),
                  "from the trial's D90");
}

void describe_outputs(TypedMethod<Inputs, Result>& method) {
  method.output({"d30", "D30", "size that its own roughness asks for"}, &Result::d30, unit::foot,
                LengthUse::rock);
  method.output({"d90", "D90", "D90 with it"}, &Result::d90, unit::foot, LengthUse::rock);
  method.output({"fixed_points", "", "how many sizes balance"}, &Result::fixed_points,
                unit::number);
  method.output({"roughness", "n", "Manning's n, low"}, &Result::roughness, unit::number);
  method.output({"depth", "y", "depth with it"}, &Result::depth, unit::foot);
  method.output({"velocity", "V", "mean velocity with it"}, &Result::velocity,
                unit::foot_per_second);
  method.output({"attacking_velocity", "V_SS", "velocity at the rock with it"},
                &Result::attacking_velocity, unit::foot_per_second);
  method.output({"level_roughness", "n", "Manning's n, high"}, &Result::level_roughness,
                unit::number);
  method.output({"level_depth", "y", "depth for level and freeboard"}, &Result::level_depth,
                unit::foot);
  method.output({"level_velocity", "V", "mean velocity with it"}, &Result::level_velocity,
                unit::foot_per_second);
  method.output({"trial_roughness", "n", "of the trial; 0 without one"}, &Result::trial_roughness,
                unit::number);
  method.output({"trial_depth", "y", "of the trial"}, &Result::trial_depth, unit::foot);
  method.output({"trial_top_width", "W", "of the trial"}, &Result::trial_top_width, unit::foot);
  method.output({"trial_velocity", "V", "of the trial"}, &Result::trial_velocity,
                unit::foot_per_second);
  method.output({"trial_local_depth", "d", "of the trial"}, &Result::trial_local_depth, unit::foot);
  method.output({"trial_required_d30", "D30", "that the trial's water asks for"},
                &Result::trial_required_d30, unit::foot, LengthUse::rock);
}

TypedMethod<Inputs, Result> build() {
  TypedMethod<Inputs, Result> method(describe(), &lining_roughness_balance);
  describe_channel(method);
  describe_rock(method);
  describe_trial(method);
  describe_outputs(method);
  method.limit({"Bed slope below 2 %", "WES Streambank Handbook (1997) App. A, p. A-3"},
               [](const Inputs& in) { return in.bed_slope.ratio() < 0.02; });
  method.limit({"Banks no steeper than 1V:1.5H", "WES Streambank Handbook (1997) App. A"},
               [](const Inputs& in) {
                 return in.place == ZonePlace::bed || in.side_slope.ratio() <= 1 / 1.5;
               });
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
  Result result;
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
  Problems problems = level_case(inputs, result, steps);
  if (problems.empty()) problems = trial_case(inputs, result);
  if (!problems.empty()) return problems;
  return result;
}

const Method& lining_roughness_balance_method() {
  static const TypedMethod<Inputs, Result> method = build();
  return method;
}

}  // namespace proofstone
