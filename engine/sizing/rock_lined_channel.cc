#include "engine/sizing/rock_lined_channel.h"

namespace proofstone {

namespace {

const char* const roughness_page = "WES Streambank Handbook (1997) App. A, eq. A.2";
const char* const local_depth_page =
    "USACE EM 1110-2-1601 (1994) App. H, as printed in WES Streambank Handbook (1997) App. A";

constexpr double bank_depth_share = 0.8;

UsaceBankAndBedInputs sizing_inputs(const RockLinedChannelInputs& in, const RockLinedFlow& flow) {
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

}  // namespace

Expected<RockLinedTrial> trial_at(const RockLinedChannelInputs& inputs, Dimensionless roughness,
                                  Steps& steps) {
  RockLinedTrial trial;
  trial.roughness = roughness;
  const auto flow = rock_lined_flow(inputs.channel(), roughness);
  if (!flow) return flow.problems();
  trial.flow = *flow;
  steps.computed("y", "depth of uniform flow", "Manning's equation", measure(flow->depth));
  steps.computed("W", "top width", "b + 2·z·y", measure(flow->top_width));
  steps.computed("V", "mean velocity", "Q/A", measure(flow->velocity));
  const auto sizing = sizing_inputs(inputs, *flow);
  trial.local_depth = sizing.local_depth;
  steps.computed("d", "local depth: on a bank, 20 % up the slope from the toe",
                 inputs.place == ZonePlace::bank ? "0.80·y" : "y", measure(sizing.local_depth),
                 local_depth_page);
  const auto required = usace_bank_and_bed(sizing, steps);
  if (!required) return required.problems();
  trial.attacking_velocity = required->v_ss;
  trial.required_d30 = required->d30;
  return trial;
}

Dimensionless roughness_of(Length d90, Dimensionless k, Steps& steps) {
  const auto n = rock_roughness(d90, k);
  steps.given_rock("D90", "smallest the class allows", d90);
  steps.given("K", "coefficient of the roughness of rock", measure(k), roughness_page);
  steps.computed("n", "Manning's n", "K·D90^⅙ (ft)", measure(n), roughness_page);
  return n;
}

const char* rock_roughness_source() { return roughness_page; }

}  // namespace proofstone
