#include "engine/sizing/bank_and_bed_flow.h"

#include <cmath>

namespace proofstone {

const std::vector<ChoiceOption<WaterAttack>>& water_attack_options() {
  static const std::vector<ChoiceOption<WaterAttack>> options{
      {WaterAttack::straight_or_inside, "straight-or-inside", "straight reach or inside of a bend"},
      {WaterAttack::outside_of_bend, "outside-of-bend", "outside of a bend"},
      {WaterAttack::below_concrete_channel, "below-concrete-channel",
       "just downstream of a concrete channel"},
      {WaterAttack::end_of_dike, "end-of-dike", "end of a dike"},
      {WaterAttack::impinging, "impinging", "braided or oblique flow that runs at the bank"}};
  return options;
}

void take_bank_and_bed_flow(const ZoneSetting& zone, BankAndBedFlow& flow) {
  flow.attack = zone.bend_side == BendSide::outside ? WaterAttack::outside_of_bend
                                                    : WaterAttack::straight_or_inside;
  flow.channel_form = zone.channel_form;
  flow.average_velocity = zone.average_velocity;
  flow.bend_radius = zone.bend_radius;
  if (zone.water_top_width.si() > 0) flow.top_width = zone.water_top_width;
  flow.local_depth = zone.local_depth;
  flow.bank_angle = zone.place == ZonePlace::bank ? zone.bank_angle : Angle{};
  flow.specific_gravity = zone.rock.specific_gravity;
  flow.angularity = zone.rock.angularity;
  flow.channel_slope = zone.energy_slope;
  flow.froude_number = zone.froude_number;
}

bool bank_within_published_slope(const BankAndBedFlow& flow) {
  constexpr double steepest = 1 / 1.5;
  return std::tan(flow.bank_angle.radians()) < steepest + 1e-9;
}

}  // namespace proofstone
