#include "engine/hydraulics/gradually_varied_flow_method.h"

#include "engine/hydraulics/prismatic_channel.h"
#include "engine/hydraulics/profile.h"
#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

struct GraduallyVariedFlowInputs : TrapezoidalChannel {
  Slope bed_slope;
  Discharge discharge;
  Length known_depth;
  Length distance;
  Dimensionless energy_coefficient = Dimensionless::number(1);
  Dimensionless steps = Dimensionless::number(200);
  FrictionMean friction = FrictionMean::average_conveyance;
};

struct GraduallyVariedFlowResult {
  Length depth;
  Velocity velocity;
  Dimensionless froude_number;
  Length normal_depth;
  Length critical_depth;
  Dimensionless zone;
};

/// Far above any depth asked for, so that the channel's own banks hold the water.
Length bank_height(const GraduallyVariedFlowInputs& in) {
  return 10 * in.known_depth + Length::meters(30);
}

/// Two sections, the known depth at the downstream one in tranquil flow, else at the upstream one.
Expected<Reach> reach_of(const GraduallyVariedFlowInputs& in) {
  const Length fall = in.bed_slope.ratio() * in.distance;
  auto upstream = trapezoidal_section(in, fall, bank_height(in));
  if (!upstream) return upstream.problems();
  auto downstream = trapezoidal_section(in, Length::meters(0), bank_height(in));
  if (!downstream) return downstream.problems();
  upstream->to_next = ReachLengths::all(in.distance);
  upstream->losses = {Dimensionless::number(0), Dimensionless::number(0)};
  upstream->energy_coefficient = downstream->energy_coefficient = in.energy_coefficient;
  return Reach::make({*upstream, *downstream}, (1 / in.steps.number()) * in.distance);
}

/// 1 above normal and critical depth, 2 between them, 3 below both.
int zone_of(Length depth, Length normal, Length critical) {
  return 1 + (depth < normal ? 1 : 0) + (depth < critical ? 1 : 0);
}

Expected<WaterProfile> profile_of(const GraduallyVariedFlowInputs& in, const Reach& reach,
                                  bool tranquil) {
  ProfileCase flow_case;
  flow_case.discharge = in.discharge;
  flow_case.friction = in.friction;
  flow_case.regime = tranquil ? ProfileRegime::subcritical : ProfileRegime::supercritical;
  const Length upstream_bed = reach.sections().front().section.lowest();
  if (tranquil) {
    flow_case.downstream = Boundary::known(in.known_depth);
  } else {
    flow_case.upstream = Boundary::known(upstream_bed + in.known_depth);
  }
  return water_profile(reach, flow_case);
}

/// What makes a profile useless for an answer at its far end.
Problems problems_in(const WaterProfile& profile) {
  for (const ProfileSection& one : profile.sections) {
    if (one.flow.wet.end_wall_added) {
      return {{"too-deep", "The water would stand far above the known depth.", "", "/known_depth",
               "a distance and a discharge that go with the known depth"}};
    }
    if (one.has(ProfileNote::critical_assumed)) {
      return {{"profile-ends",
               "The profile reaches critical depth before the distance is run through.", "",
               "/distance", "a shorter distance"}};
    }
  }
  return {};
}

Expected<GraduallyVariedFlowResult> compute_gradually_varied_flow(
    const GraduallyVariedFlowInputs& in, Steps& steps) {
  const auto reach = reach_of(in);
  if (!reach) return reach.problems();
  const Section& section = reach->sections().back().section;
  Steps unshown;
  const auto normal =
      normal_flow(section, {}, in.discharge, in.bed_slope, CompositeRoughness::horton, unshown);
  if (!normal) return normal.problems();
  const auto solved_upstream = profile_of(in, *reach, true);
  if (!solved_upstream) return solved_upstream.problems();
  GraduallyVariedFlowResult result;
  result.normal_depth = normal->wet.deepest;
  result.critical_depth = solved_upstream->sections.back().critical_level - section.lowest();

  const bool tranquil = !(in.known_depth < result.critical_depth);
  const auto profile = tranquil ? solved_upstream : profile_of(in, *reach, false);
  if (!profile) return profile.problems();
  const Problems problems = problems_in(*profile);
  if (!problems.empty()) return problems;
  const ProfileSection& far = tranquil ? profile->sections.front() : profile->sections.back();
  result.depth = far.flow.wet.deepest;
  result.velocity = far.flow.mean_velocity();
  result.froude_number = far.flow.froude_number;
  result.zone =
      Dimensionless::number(zone_of(in.known_depth, result.normal_depth, result.critical_depth));

  steps.given("Q", "discharge", measure(in.discharge));
  steps.given("S0", "slope of the bed", measure(in.bed_slope));
  steps.given("y0", "known depth", measure(in.known_depth));
  steps.computed("yn", "normal depth", "K(yn)·√S0 = Q", measure(result.normal_depth));
  steps.computed("yc", "critical depth", "α·Q²·T = g·A³", measure(result.critical_depth));
  steps.computed("y",
                 tranquil ? "depth at the distance upstream: tranquil flow"
                          : "depth at the distance downstream: rapid flow",
                 "w1 + α·V1²/2g = w2 + α·V2²/2g + L·Sf, step by step", measure(result.depth),
                 "standard step method, bracketed root finding");
  return result;
}

TypedMethod<GraduallyVariedFlowInputs, GraduallyVariedFlowResult> build_gradually_varied_flow() {
  MethodDescription about;
  about.id = "gradually-varied-flow";
  about.title = "Gradually varied flow in a trapezoidal channel";
  about.purpose =
      "The depth at a distance from a known depth: upstream of it in tranquil flow, downstream of "
      "it in rapid flow.";
  about.group = MethodGroup::water;
  about.sources = {
      {"Chow, Open-Channel Hydraulics (1959)", "chs. 9 and 10", SourceStanding::memory},
      {"FHWA HDS 6, River Engineering for Highway Encroachments (2001)", "p. 2.55",
       SourceStanding::published}};
  about.cautions = {
      "One straight channel without bridges, bends or jumps; a surveyed reach needs its sections.",
      "Compare with twice the steps: where the depth moves, the steps were too few."};
  TypedMethod<GraduallyVariedFlowInputs, GraduallyVariedFlowResult> method(
      about, &compute_gradually_varied_flow);
  const auto width =
      static_cast<Length GraduallyVariedFlowInputs::*>(&TrapezoidalChannel::bottom_width);
  const auto side =
      static_cast<Dimensionless GraduallyVariedFlowInputs::*>(&TrapezoidalChannel::side_slope);
  const auto n =
      static_cast<Dimensionless GraduallyVariedFlowInputs::*>(&TrapezoidalChannel::roughness);
  method.required({"bottom_width", "b", "width of the bed"}, width, unit::foot,
                  AllowedRange::positive_to(300'000));
  method.required({"side_slope", "z", "horizontal run of the sides for 1 up; 0 for walls"}, side,
                  unit::number, AllowedRange::between(0, 20));
  method.required({"roughness", "n", "Manning's n"}, n, unit::number,
                  AllowedRange::between(0.005, 0.5));
  method.required({"bed_slope", "S0", "slope of the bed"}, &GraduallyVariedFlowInputs::bed_slope,
                  unit::rise_per_run, AllowedRange::positive_to(0.5));
  method.required({"discharge", "Q", "discharge"}, &GraduallyVariedFlowInputs::discharge,
                  unit::cubic_foot_per_second, AllowedRange::positive_to(1e8));
  method.required({"known_depth", "y0", "known depth"}, &GraduallyVariedFlowInputs::known_depth,
                  unit::foot, AllowedRange::positive_to(300));
  method.required({"distance", "x", "distance from the known depth"},
                  &GraduallyVariedFlowInputs::distance, unit::foot,
                  AllowedRange::positive_to(300'000));
  method.defaulted({"energy_coefficient", "α", "energy coefficient of the velocity"},
                   &GraduallyVariedFlowInputs::energy_coefficient, unit::number,
                   AllowedRange::between(1, 10));
  method.defaulted({"steps", "", "into how many steps the distance is cut"},
                   &GraduallyVariedFlowInputs::steps, unit::number, AllowedRange::between(1, 2000));
  method.choice({"friction", "", "how the slope of the energy line is averaged over a step"},
                &GraduallyVariedFlowInputs::friction,
                {ChoiceOption<FrictionMean>{FrictionMean::average_conveyance, "average-conveyance",
                                            "(2Q/(K1+K2))²"},
                 {FrictionMean::arithmetic, "arithmetic", "(S1+S2)/2"},
                 {FrictionMean::geometric, "geometric", "√(S1·S2)"},
                 {FrictionMean::harmonic, "harmonic", "2·S1·S2/(S1+S2)"}});
  method.output({"depth", "y", "depth at the distance"}, &GraduallyVariedFlowResult::depth,
                unit::foot);
  method.output({"velocity", "V", "mean velocity there"}, &GraduallyVariedFlowResult::velocity,
                unit::foot_per_second);
  method.output({"froude_number", "Fr", "Froude number there, with α"},
                &GraduallyVariedFlowResult::froude_number, unit::number);
  method.output({"normal_depth", "yn", "normal depth"}, &GraduallyVariedFlowResult::normal_depth,
                unit::foot);
  method.output({"critical_depth", "yc", "critical depth"},
                &GraduallyVariedFlowResult::critical_depth, unit::foot);
  method.output({"zone", "",
                 "1 when the known depth stands above normal and critical depth, 2 between them, 3 "
                 "below both"},
                &GraduallyVariedFlowResult::zone, unit::number);
  method.limit({"Slope below about 10 %: steeper, depth must be measured square to the bed",
                "common practice"},
               [](const GraduallyVariedFlowInputs& in) { return in.bed_slope.ratio() < 0.10; });
  return method;
}

}  // namespace

const Method& gradually_varied_flow_method() {
  static const TypedMethod<GraduallyVariedFlowInputs, GraduallyVariedFlowResult> method =
      build_gradually_varied_flow();
  return method;
}

}  // namespace proofstone
