#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "engine/toe/launchable_toe.h"
#include "engine/toe/thickened_toe.h"
#include "engine/toe/trench_toe.h"

namespace proofstone {
namespace {

double between(double low, double high) {
  constexpr int steps = 100'000;
  const int step = *rc::gen::inRange(0, steps + 1);
  return low + (high - low) * step / steps;
}

LaunchableToeInputs any_launchable() {
  LaunchableToeInputs in;
  in.layer_thickness = Length::feet(between(0.5, 6));
  in.launch_height = Length::feet(between(1, 7));
  in.placement = *rc::gen::element(ToePlacement::dry, ToePlacement::under_water);
  return in;
}

double section_of(const LaunchableToeInputs& in) {
  Steps steps;
  const auto toe = launchable_toe(in, steps);
  RC_ASSERT(static_cast<bool>(toe));
  return toe->cross_section.square_feet();
}

// Twice 7 ft is still below the 15 ft at which the increase changes.
RC_GTEST_PROP(ToeProperties, LaunchedRockGrowsAsThicknessAndHeight, ()) {
  const auto in = any_launchable();
  auto thicker = in;
  thicker.layer_thickness = 2 * in.layer_thickness;
  auto deeper = in;
  deeper.launch_height = 2 * in.launch_height;
  RC_ASSERT(std::abs(section_of(thicker) / section_of(in) - 2) < 1e-9);
  RC_ASSERT(std::abs(section_of(deeper) / section_of(in) - 2) < 1e-9);
}

RC_GTEST_PROP(ToeProperties, MoreToLaunchNeverTakesLessRock, ()) {
  auto in = any_launchable();
  in.launch_height = Length::feet(between(1, 40));
  auto deeper = in;
  deeper.launch_height = between(1, 2) * in.launch_height;
  RC_ASSERT(section_of(deeper) >= section_of(in) * (1 - 1e-12));
}

RC_GTEST_PROP(ToeProperties, TheStoredToeHoldsTheRock, ()) {
  const auto in = any_launchable();
  Steps steps;
  const auto toe = launchable_toe(in, steps);
  RC_ASSERT(static_cast<bool>(toe));
  const double stored = toe->toe_thickness.feet() * toe->toe_width.feet();
  RC_ASSERT(std::abs(stored / toe->cross_section.square_feet() - 1) < 1e-12);
}

// A trench holds its layer: it is never smaller than the rock in it.
RC_GTEST_PROP(ToeProperties, ATrenchIsNeverSmallerThanItsRock, ()) {
  TrenchToeInputs in;
  in.layer_thickness = Length::feet(between(0.5, 6));
  in.depth = Length::feet(between(1, 20));
  in.bank_slope = Slope::ratio(1 / between(1.5, 6));
  in.trench_slope = Slope::ratio(1 / between(0.5, 3));
  Steps steps;
  const auto toe = trench_toe(in, steps);
  RC_ASSERT(static_cast<bool>(toe));
  RC_ASSERT(toe->excavation_section.square_feet() >= toe->cross_section.square_feet());
}

}  // namespace
}  // namespace proofstone
