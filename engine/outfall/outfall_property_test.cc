#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "engine/outfall/front_range_outlet.h"
#include "engine/outfall/outfall_apron.h"
#include "engine/outfall/outfall_basin.h"
#include "engine/outfall/outlet_bohan.h"
#include "engine/outfall/outlet_fletcher_grace.h"
#include "engine/outfall/outlet_protection_length.h"

namespace proofstone {
namespace {

double between(double low, double high) {
  constexpr int steps = 100'000;
  const int step = *rc::gen::inRange(0, steps + 1);
  return low + (high - low) * step / steps;
}

constexpr double rounding = 1e-12;

/// Size in feet, or 0 where the method has none.
template <class Inputs, class Result>
double size_of(Expected<Result> (*method)(const Inputs&, Steps&), const Inputs& in) {
  Steps steps;
  const auto result = method(in, steps);
  return result ? result->d50.feet() : 0;
}

OutfallApronInputs any_apron() {
  OutfallApronInputs in;
  in.diameter = Length::feet(between(1, 5));
  in.discharge =
      Discharge::cubic_feet_per_second(between(0.2, 1.5) * std::pow(in.diameter.feet(), 2.5));
  in.tailwater = between(0.1, 1.5) * in.diameter;
  return in;
}

RC_GTEST_PROP(OutfallApron, MoreWaterNeverNeedsSmallerRock, ()) {
  const auto in = any_apron();
  auto more = in;
  more.discharge = between(1, 2) * in.discharge;
  RC_ASSERT(size_of(&outfall_apron, more) >= size_of(&outfall_apron, in) * (1 - rounding));
}

RC_GTEST_PROP(OutfallApron, MoreTailwaterNeverNeedsLargerRock, ()) {
  const auto in = any_apron();
  auto deeper = in;
  deeper.tailwater = between(1, 2) * *in.tailwater;
  RC_ASSERT(size_of(&outfall_apron, deeper) <= size_of(&outfall_apron, in) * (1 + rounding));
}

RC_GTEST_PROP(OutfallApron, ScalesAsFroudeSays, ()) {
  const auto in = any_apron();
  const double scale = between(0.3, 1);
  auto scaled = in;
  scaled.diameter = scale * in.diameter;
  scaled.tailwater = scale * *in.tailwater;
  scaled.discharge = std::pow(scale, 2.5) * in.discharge;
  const double ratio = size_of(&outfall_apron, scaled) / size_of(&outfall_apron, in);
  RC_ASSERT(std::abs(ratio / scale - 1) < 1e-9);
}

RC_GTEST_PROP(OutfallApron, TheClassIsNeverSmallerThanTheSize, ()) {
  Steps steps;
  const auto result = outfall_apron(any_apron(), steps);
  if (result) RC_ASSERT(result->class_d50 >= result->d50);
}

/// A box culvert with rock that the method takes, more often than not.
OutfallBasinInputs any_basin() {
  OutfallBasinInputs in;
  in.shape = ConduitShape::box;
  in.width = Length::feet(between(3, 12));
  in.brink_depth = Length::feet(between(2, 6));
  const double ye = in.brink_depth.feet();
  const double V = between(1.2, 3) * std::sqrt(32.2 * ye);
  in.discharge = Discharge::cubic_feet_per_second(V * ye * in.width.feet());
  in.tailwater = between(0, 1.2) * in.brink_depth;
  in.d50 = between(0.1, 0.7) * in.brink_depth;
  return in;
}

RC_GTEST_PROP(OutfallBasin, WhatItGivesHasAHoleAtLeastTwoSizesDeep, ()) {
  Steps steps;
  const auto result = outfall_basin(any_basin(), steps);
  if (!result) {
    const auto& code = result.problems().front().code;
    RC_ASSERT(code == "no-scour-hole" || code == "hole-too-shallow");
    return;
  }
  RC_ASSERT(result->scour_over_size.number() > 2 - 1e-6);
  RC_ASSERT(result->basin_length >= result->pool_length);
  RC_ASSERT(result->critical_depth.meters() > 0);
}

RC_GTEST_PROP(OutfallBasin, ScalesAsFroudeSays, ()) {
  const auto in = any_basin();
  const double scale = between(0.3, 3);
  auto scaled = in;
  scaled.width = scale * in.width;
  scaled.brink_depth = scale * in.brink_depth;
  scaled.tailwater = scale * *in.tailwater;
  scaled.d50 = scale * in.d50;
  scaled.discharge = std::pow(scale, 2.5) * in.discharge;
  Steps steps;
  const auto one = outfall_basin(in, steps);
  const auto other = outfall_basin(scaled, steps);
  if (!one || !other) return;
  RC_ASSERT(std::abs(other->scour_depth / one->scour_depth / scale - 1) < 1e-9);
  RC_ASSERT(std::abs(other->critical_depth / one->critical_depth / scale - 1) < 1e-9);
}

RC_GTEST_PROP(OutfallBasin, LargerRockNeverDigsADeeperHole, ()) {
  const auto in = any_basin();
  auto larger = in;
  larger.d50 = between(1, 1.5) * in.d50;
  Steps steps;
  const auto one = outfall_basin(in, steps);
  const auto other = outfall_basin(larger, steps);
  if (one && other) RC_ASSERT(other->scour_depth <= (1 + rounding) * one->scour_depth);
}

RC_GTEST_PROP(OutfallForms, MoreWaterNeverNeedsSmallerRock, ()) {
  FrontRangeOutletInputs front;
  front.height = Length::feet(between(1, 8));
  front.width = Length::feet(between(1, 12));
  front.shape = *rc::gen::element(OutletShape::circular, OutletShape::rectangular);
  front.discharge = Discharge::cubic_feet_per_second(between(1, 500));
  auto more = front;
  more.discharge = between(1, 2) * front.discharge;
  RC_ASSERT(size_of(&front_range_outlet, more) >=
            size_of(&front_range_outlet, front) * (1 - rounding));

  OutletFletcherGraceInputs fletcher;
  fletcher.diameter = front.height;
  fletcher.discharge = front.discharge;
  auto more_fletcher = fletcher;
  more_fletcher.discharge = more.discharge;
  RC_ASSERT(size_of(&outlet_fletcher_grace, more_fletcher) >=
            size_of(&outlet_fletcher_grace, fletcher) * (1 - rounding));
}

RC_GTEST_PROP(OutfallForms, BohanScalesAsFroudeSays, ()) {
  OutletBohanInputs in;
  in.diameter = Length::feet(between(1, 8));
  in.velocity = Velocity::feet_per_second(between(1, 3) * std::sqrt(32.2 * in.diameter.feet()));
  in.tailwater = between(0, 1.5) * in.diameter;
  const double scale = between(0.3, 3);
  auto scaled = in;
  scaled.diameter = scale * in.diameter;
  scaled.tailwater = scale * *in.tailwater;
  scaled.velocity = std::sqrt(scale) * in.velocity;
  if (std::abs(*in.tailwater / in.diameter - 0.5) < 1e-6) return;
  const double ratio = size_of(&outlet_bohan, scaled) / size_of(&outlet_bohan, in);
  RC_ASSERT(std::abs(ratio / scale - 1) < 1e-9);
}

// Where the equation itself governs, the flow at the end is as wide as the area asked for: T·Yt =
// At.
RC_GTEST_PROP(ProtectionLength, TheEndIsAsWideAsTheFlowNeeds, ()) {
  OutletProtectionLengthInputs in;
  in.height = Length::feet(between(1, 8));
  in.width = in.height;
  in.discharge = Discharge::cubic_feet_per_second(between(5, 500));
  in.tailwater = Length::feet(between(0.5, 6));
  in.allowable_velocity = Velocity::feet_per_second(between(3, 7));
  in.expansion_factor = Dimensionless::number(between(1, 7));
  Steps steps;
  const auto result = outlet_protection_length(in, steps);
  RC_ASSERT(static_cast<bool>(result));
  RC_ASSERT(result->length >= result->shortest && result->length <= result->longest);
  const bool governs =
      result->computed_length > result->shortest && result->computed_length < result->longest;
  if (!governs) return;
  const double area = result->end_width.feet() * in.tailwater.feet();
  RC_ASSERT(std::abs(area / result->required_area.square_feet() - 1) < 1e-9);
}

}  // namespace
}  // namespace proofstone
