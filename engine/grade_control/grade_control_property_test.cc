#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "engine/grade_control/constructed_riffle.h"
#include "engine/grade_control/grouted_boulder_drop.h"
#include "engine/grade_control/low_drop.h"
#include "engine/grade_control/sloping_rock_drop.h"
#include "engine/grade_control/weighted_creep.h"

namespace proofstone {
namespace {

double between(double low, double high) {
  constexpr int steps = 100'000;
  const int step = *rc::gen::inRange(0, steps + 1);
  return low + (high - low) * step / steps;
}

constexpr double rounding = 1e-12;

RC_GTEST_PROP(SlopingRockDrop, FasterOrSteeperNeverNeedsSmallerRock, ()) {
  SlopingRockDropInputs in;
  in.velocity = Velocity::feet_per_second(between(3, 20));
  in.slope = Slope::ratio(between(0.01, 0.3));
  auto faster = in;
  faster.velocity = between(1, 2) * *in.velocity;
  faster.slope = between(1, 2) * in.slope;
  Steps steps;
  const Length size = sloping_rock_drop(in, steps)->d50;
  RC_ASSERT(sloping_rock_drop(faster, steps)->d50 >= (1 - rounding) * size);
}

RC_GTEST_PROP(SlopingRockDrop, DenserRockNeverNeedsToBeLarger, ()) {
  SlopingRockDropInputs in;
  in.unit_discharge = UnitDischarge::square_feet_per_second(between(1, 60));
  in.slope = Slope::ratio(between(0.01, 0.3));
  in.specific_gravity = Dimensionless::number(between(2.2, 2.8));
  auto denser = in;
  denser.specific_gravity = between(1, 1.2) * in.specific_gravity;
  Steps steps;
  const Length size = sloping_rock_drop(in, steps)->d50;
  RC_ASSERT(sloping_rock_drop(denser, steps)->d50 <= (1 + rounding) * size);
}

RC_GTEST_PROP(GroutedBoulderDrop, MoreWaterNeverNeedsASmallerBoulder, ()) {
  GroutedBoulderDropInputs in;
  in.unit_discharge = UnitDischarge::square_feet_per_second(between(1, 100));
  in.slope = Slope::ratio(between(0.05, 0.3));
  auto more = in;
  more.unit_discharge = between(1, 2) * *in.unit_discharge;
  Steps steps;
  const auto one = grouted_boulder_drop(in, steps);
  const auto other = grouted_boulder_drop(more, steps);
  if (one && other) RC_ASSERT(other->boulder >= one->boulder);
  RC_ASSERT(static_cast<bool>(one) || !other);
}

RC_GTEST_PROP(LowDrop, ScalesAsFroudeSays, ()) {
  LowDropInputs in;
  in.unit_discharge = UnitDischarge::square_feet_per_second(between(1, 100));
  in.drop_height = Length::feet(between(0.5, 5));
  const double scale = between(0.2, 5);
  auto scaled = in;
  scaled.unit_discharge = std::pow(scale, 1.5) * *in.unit_discharge;
  scaled.drop_height = scale * in.drop_height;
  Steps steps;
  const auto one = low_drop(in, steps);
  const auto other = low_drop(scaled, steps);
  RC_ASSERT(std::abs(other->block_height / one->block_height / scale - 1) < 1e-9);
  RC_ASSERT(std::abs(other->drop_over_critical / one->drop_over_critical - 1) < 1e-9);
}

RC_GTEST_PROP(WeightedCreep, AsMuchMoreCutOffAsIsMissingSuffices, ()) {
  WeightedCreepInputs in;
  in.horizontal = Length::feet(between(0, 100));
  in.vertical = Length::feet(between(0, 40));
  in.head = Length::feet(between(0.5, 20));
  in.soil = *rc::gen::element(CreepSoil::fine_sand, CreepSoil::coarse_sand, CreepSoil::soft_clay);
  Steps steps;
  const auto result = weighted_creep(in, steps);
  in.vertical = in.vertical + result->missing_length;
  const auto mended = weighted_creep(in, steps);
  RC_ASSERT(mended->creep_ratio.number() > mended->least_ratio.number() * (1 - 1e-9));
}

RC_GTEST_PROP(ConstructedRiffle, DeeperOrSteeperNeverNeedsSmallerRock, ()) {
  ConstructedRiffleInputs in;
  in.depth = Length::meters(between(0.1, 4));
  in.slope = Slope::ratio(between(0.005, 0.2));
  auto more = in;
  more.depth = between(1, 2) * in.depth;
  more.slope = between(1, 2) * in.slope;
  Steps steps;
  const Length size = constructed_riffle(in, steps)->rock_diameter;
  RC_ASSERT(constructed_riffle(more, steps)->rock_diameter >= (1 - rounding) * size);
}

}  // namespace
}  // namespace proofstone
