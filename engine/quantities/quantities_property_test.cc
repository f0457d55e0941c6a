#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "engine/quantities/fabric_area.h"
#include "engine/quantities/layer_rock.h"
#include "engine/quantities/truck_loads.h"

namespace proofstone {
namespace {

double between(double low, double high) {
  constexpr int steps = 100'000;
  const int step = *rc::gen::inRange(0, steps + 1);
  return low + (high - low) * step / steps;
}

LayerRockInputs any_layer() {
  LayerRockInputs in;
  in.area = Area::square_feet(between(10, 1e5));
  in.thickness = Length::feet(between(0.5, 8));
  in.specific_gravity = Dimensionless::number(between(2.2, 3.2));
  in.voids = Dimensionless::number(between(0.2, 0.5));
  return in;
}

double mass_of(const LayerRockInputs& in) {
  Steps steps;
  return layer_rock(in, steps)->mass.si();
}

RC_GTEST_PROP(Quantities, AThickerLayerIsNeverLighter, ()) {
  const auto in = any_layer();
  auto thicker = in;
  thicker.thickness = between(1, 3) * in.thickness;
  RC_ASSERT(mass_of(thicker) >= mass_of(in));
}

RC_GTEST_PROP(Quantities, RockAndVoidsAreTheWhole, ()) {
  const auto in = any_layer();
  const double solid = mass_of(in) / (in.specific_gravity.number() * 62.4 * 0.45359237) /
                       (in.area.square_feet() * in.thickness.feet());
  RC_ASSERT(std::abs(solid + in.voids.number() - 1) < 1e-12);
}

RC_GTEST_PROP(Quantities, MoreSpareIsNeverFewerLoads, ()) {
  TruckLoadsInputs in;
  in.mass = Mass::short_tons(between(1, 1e5));
  in.truck_load = Mass::short_tons(between(5, 40));
  in.spare = Dimensionless::number(between(0, 0.5));
  auto more = in;
  more.spare = Dimensionless::number(in.spare.number() + between(0, 0.5));
  Steps steps;
  const auto few = truck_loads(in, steps);
  const auto many = truck_loads(more, steps);
  RC_ASSERT(many->loads >= few->loads);
  // The loads carry the order, and one fewer would not.
  RC_ASSERT(few->loads.number() * in.truck_load.si() >= few->ordered.si() * (1 - 1e-8));
  RC_ASSERT((few->loads.number() - 1) * in.truck_load.si() < few->ordered.si());
}

RC_GTEST_PROP(Quantities, StripsCoverTheGround, ()) {
  FabricAreaInputs in;
  in.length = Length::feet(between(1, 5000));
  in.slope_length = Length::feet(between(1, 200));
  in.overlap = Length::feet(between(0, 6));
  Steps steps;
  const auto fabric = fabric_area(in, steps);
  const double reach =
      fabric->strips.number() * (in.roll_width - in.overlap).feet() + in.overlap.feet();
  RC_ASSERT(reach >= in.length.feet() * (1 - 1e-9));
  RC_ASSERT(fabric->laid >= fabric->covered * (1 - 1e-9));
  auto wider = in;
  wider.overlap = in.overlap + Length::feet(between(0, 6));
  RC_ASSERT(fabric_area(wider, steps)->laid >= fabric->laid);
}

TEST(FabricArea, OverlapsOfTheWholeWidthAreRefused) {
  FabricAreaInputs in;
  in.length = Length::feet(100);
  in.slope_length = Length::feet(10);
  in.roll_width = in.overlap = Length::feet(3);
  Steps steps;
  const auto fabric = fabric_area(in, steps);
  ASSERT_FALSE(fabric);
  EXPECT_EQ(fabric.problems().front().code, "overlap-too-wide");
}

}  // namespace
}  // namespace proofstone
