#include "engine/toe/launched_rock.h"

#include <cmath>

namespace proofstone {

namespace {

constexpr Length low_up_to = Length::feet(15);

double increase_for(Length height, ToePlacement placement) {
  const bool dry = placement == ToePlacement::dry;
  if (height <= low_up_to) return dry ? 0.25 : 0.50;
  return dry ? 0.50 : 0.75;
}

}  // namespace

const char* launched_rock_source() {
  return "USACE EM 1110-2-1601 (1994) Table 3-2 (from memory; confirm)";
}

LaunchedRock launched_rock(Length layer_thickness, Length launch_height, Slope launch_slope,
                           ToePlacement placement, Steps& steps) {
  const double T = layer_thickness.feet();
  const double h = launch_height.feet();
  const double z = 1 / launch_slope.ratio();
  const double f = increase_for(launch_height, placement);
  LaunchedRock rock;
  rock.increase = Dimensionless::number(f);
  rock.in_place = Area::square_feet(T * h * std::sqrt(1 + z * z));
  rock.cross_section = (1 + f) * rock.in_place;
  steps.given("T", "thickness of the layer after launching", measure(layer_thickness));
  steps.given("h", "height to launch, from the toe as built to the scoured bed",
              measure(launch_height));
  steps.given("1/z", "slope the launched rock takes", measure(launch_slope),
              launched_rock_source());
  steps.computed("A_0", "launched rock for each unit of length", "T·h·√(1 + z²)",
                 measure(rock.in_place), launched_rock_source());
  steps.given("f",
              placement == ToePlacement::dry
                  ? "increase, placed dry: 0.25 up to 15 ft, 0.50 above"
                  : "increase, placed under water: 0.50 up to 15 ft, 0.75 above",
              measure(rock.increase), launched_rock_source());
  steps.computed("A", "rock to store for each unit of length", "(1 + f)·A_0",
                 measure(rock.cross_section), launched_rock_source());
  return rock;
}

}  // namespace proofstone
