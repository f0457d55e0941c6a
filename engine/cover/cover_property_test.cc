#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "engine/cover/blanket_anchors.h"
#include "engine/cover/blanket_rolls.h"
#include "engine/cover/blanket_shear.h"
#include "engine/cover/grass_lining.h"
#include "engine/cover/non_scour_velocity.h"
#include "engine/cover/rolled_product_roughness.h"
#include "engine/cover/rolled_product_shear.h"

namespace proofstone {
namespace {

double between(double low, double high) {
  constexpr int steps = 100'000;
  const int step = *rc::gen::inRange(0, steps + 1);
  return low + (high - low) * step / steps;
}

GrassLiningInputs any_grass() {
  GrassLiningInputs in;
  in.soil = CoverSoil::sc;
  in.plasticity_index = Dimensionless::number(between(10, 40));
  in.void_ratio = Dimensionless::number(between(0.3, 1.2));
  in.discharge = Discharge::cubic_meters_per_second(between(0.05, 5));
  in.bottom_width = Length::meters(between(0, 5));
  in.slope = Slope::ratio(between(0.002, 0.1));
  in.stem_height = Length::meters(between(0.03, 0.5));
  in.condition =
      *rc::gen::element(GrassCondition::excellent, GrassCondition::good, GrassCondition::poor);
  in.growth = *rc::gen::element(GrassGrowth::sod, GrassGrowth::bunch, GrassGrowth::mixed);
  return in;
}

RC_GTEST_PROP(GrassLining, TheDepthCarriesTheDischarge, ()) {
  const auto in = any_grass();
  Steps steps;
  const auto result = grass_lining(in, steps);
  RC_ASSERT(static_cast<bool>(result));
  const double d = result->depth.meters();
  const double area = d * (in.bottom_width.meters() + 3 * d);
  const double manning = 1 / result->roughness.number() *
                         std::pow(result->hydraulic_radius.meters(), 2.0 / 3.0) *
                         std::sqrt(in.slope.ratio());
  RC_ASSERT(std::abs(area * manning / in.discharge.cubic_meters_per_second() - 1) < 1e-9);
  RC_ASSERT(std::abs(result->velocity.meters_per_second() / manning - 1) < 1e-9);
}

RC_GTEST_PROP(GrassLining, MoreWaterNeverLeavesMoreMargin, ()) {
  const auto in = any_grass();
  auto more = in;
  more.discharge = between(1, 3) * in.discharge;
  Steps steps;
  const auto one = grass_lining(in, steps);
  const auto other = grass_lining(more, steps);
  RC_ASSERT(other->depth >= one->depth);
  RC_ASSERT(other->margin.number() <= one->margin.number() * (1 + 1e-9));
}

// The soil is at its limit exactly where the lining is.
RC_GTEST_PROP(GrassLining, BothFormsOfTheVerdictAgree, ()) {
  const auto in = any_grass();
  Steps steps;
  const auto result = grass_lining(in, steps);
  const auto soil = bare_soil_shear(in, steps);
  const double by_soil = soil->permissible_shear / result->effective_shear;
  RC_ASSERT(std::abs(by_soil / result->margin.number() - 1) < 1e-9);
}

RC_GTEST_PROP(RolledProduct, SoilAndProductReachTheirLimitTogether, ()) {
  RolledProductShearInputs in;
  in.soil = CoverSoil::cl;
  in.plasticity_index = Dimensionless::number(between(10, 40));
  in.void_ratio = Dimensionless::number(between(0.3, 1.2));
  in.tested_shear = Stress::pascals(between(20, 500));
  Steps steps;
  in.applied_shear = rolled_product_shear(in, steps)->permissible_shear;
  const auto result = rolled_product_shear(in, steps);
  RC_ASSERT(std::abs(result->effective_shear / result->soil_shear - 1) < 1e-9);
}

RC_GTEST_PROP(NonScourVelocity, DeeperNeverBearsLess, ()) {
  NonScourVelocityInputs in;
  in.material = static_cast<ScourMaterial>(*rc::gen::inRange(0, 15));
  const double depth = between(1.3, 9.8);
  in.mean_depth = Length::feet(depth);
  NonScourVelocityInputs deeper = in;
  deeper.mean_depth = Length::feet(between(depth, 9.8));
  Steps steps;
  const auto one = non_scour_velocity(in, steps);
  const auto other = non_scour_velocity(deeper, steps);
  RC_ASSERT(other->velocity.si() >= one->velocity.si() * (1 - 1e-12));
}

// Stones and grains alone; the loams bear more than sand for their cohesion.
RC_GTEST_PROP(NonScourVelocity, CoarserNeverBearsLess, ()) {
  NonScourVelocityInputs in;
  const int row = *rc::gen::inRange(1, 12);
  in.material = static_cast<ScourMaterial>(row);
  in.mean_depth = Length::feet(between(1.3, 9.8));
  NonScourVelocityInputs coarser = in;
  coarser.material = static_cast<ScourMaterial>(row - 1);
  Steps steps;
  RC_ASSERT(non_scour_velocity(coarser, steps)->velocity >=
            non_scour_velocity(in, steps)->velocity);
}

RC_GTEST_PROP(RolledProduct, RoughnessPassesThroughTheMiddleTest, ()) {
  RolledProductRoughnessInputs in;
  in.roughness_middle = Dimensionless::number(between(0.02, 0.05));
  in.roughness_lower = between(1, 1.3) * in.roughness_middle;
  in.roughness_upper = between(0.7, 1) * in.roughness_middle;
  in.middle_shear = Stress::pascals(between(20, 200));
  in.shear = in.middle_shear;
  Steps steps;
  const auto at_middle = rolled_product_roughness(in, steps);
  RC_ASSERT(std::abs(at_middle->roughness / in.roughness_middle - 1) < 1e-9);
  in.shear = between(1, 2) * in.middle_shear;
  RC_ASSERT(rolled_product_roughness(in, steps)->roughness <= (1 + 1e-12) * at_middle->roughness);
}

RC_GTEST_PROP(BlanketShear, AtWhatItBearsTheSoilMeetsWhatTheSoilBears, ()) {
  BlanketShearInputs in;
  in.tested_shear = Stress::pascals(between(5, 500));
  in.soil_shear = Stress::pascals(between(0.5, 8));
  in.factor = *rc::gen::element(BlanketFactor::si, BlanketFactor::us);
  Steps steps;
  in.applied_shear = blanket_shear(in, steps)->permissible_shear;
  RC_ASSERT(std::abs(blanket_shear(in, steps)->effective_shear / in.soil_shear - 1) < 1e-9);
}

RC_GTEST_PROP(BlanketRolls, StripsReachAcrossAndALongerBankNeverTakesFewer, ()) {
  BlanketRollsInputs in;
  in.height = Length::feet(between(1, 40));
  in.side_slope = Dimensionless::number(between(1, 5));
  in.length = Length::feet(between(10, 2000));
  in.roll_width = Length::feet(between(4, 16));
  in.roll_length = Length::feet(between(50, 300));
  in.side_overlap = Length::inches(between(0, 12));
  in.end_overlap = Length::inches(between(0, 24));
  Steps steps;
  const auto one = blanket_rolls(in, steps);
  const Length across = one->strips.number() * (in.roll_width - in.side_overlap) + in.side_overlap;
  RC_ASSERT(across >= one->slope_length - Length::millimeters(0.01));
  auto longer = in;
  longer.length = between(1, 3) * in.length;
  RC_ASSERT(blanket_rolls(longer, steps)->rolls >= one->rolls);
}

RC_GTEST_PROP(BlanketAnchors, EveryCellOfTheGridHasItsStake, ()) {
  BlanketAnchorsInputs in;
  in.area = Area::square_feet(between(10, 50000));
  in.spacing = Length::feet(between(0.5, 6));
  Steps steps;
  const auto anchors = blanket_anchors(in, steps);
  const double cell = in.spacing.feet() * in.spacing.feet();
  RC_ASSERT(anchors->in_field.number() * cell >= in.area.square_feet() * (1 - 1e-9));
  RC_ASSERT(anchors->total >= anchors->in_field);
}

}  // namespace
}  // namespace proofstone
