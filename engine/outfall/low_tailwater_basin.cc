#include "engine/outfall/low_tailwater_basin.h"

#include <algorithm>
#include <cmath>

namespace proofstone {

namespace {

using DescribedLowTailwaterBasin = TypedMethod<LowTailwaterBasinInputs, LowTailwaterBasinResult>;

const char* const usdcm_of_low_tailwater_basin =
    "USDCM Vol. 2, Hydraulic Structures (from uncertain memory; confirm)";

MethodDescription describe_low_tailwater_basin() {
  MethodDescription about;
  about.id = "low-tailwater-basin";
  about.title = "Low-tailwater basin below a storm-drain outlet";
  about.purpose =
      "Length, width and rock thickness of a basin below an outlet whose tailwater is no more than "
      "a third of the conduit's height.";
  about.group = MethodGroup::layer;
  about.sources = {{"Urban Storm Drainage Criteria Manual (USDCM) Vol. 2",
                    "hydraulic structures: low-tailwater basin", SourceStanding::memory}};
  about.cautions = {"Recalled with little certainty: look it up in the manual before use.",
                    "The size of the rock comes from figures of the manual that are not here; the "
                    "size given is taken as it is.",
                    "Side slopes 4H:1V or flatter."};
  return about;
}

DescribedLowTailwaterBasin build_low_tailwater_basin() {
  DescribedLowTailwaterBasin method(describe_low_tailwater_basin(), &low_tailwater_basin);
  method.required({"height", "D", "diameter of the pipe, or height of the box"},
                  &LowTailwaterBasinInputs::height, unit::foot, AllowedRange::positive_to(50));
  method.required({"width", "w", "width of the conduit; the diameter of a pipe"},
                  &LowTailwaterBasinInputs::width, unit::foot, AllowedRange::positive_to(500));
  method.required({"velocity", "V", "velocity at the outlet"}, &LowTailwaterBasinInputs::velocity,
                  unit::foot_per_second, AllowedRange::positive_to(100));
  method.required({"tailwater", "Yt", "depth of the water below the outlet"},
                  &LowTailwaterBasinInputs::tailwater, unit::foot, AllowedRange::between(0, 1000));
  method.required({"d50", "d50", "median size of the rock chosen"}, &LowTailwaterBasinInputs::d50,
                  unit::foot, AllowedRange::positive_to(20), LengthUse::rock);
  method.output({"length", "L", "length of the basin"}, &LowTailwaterBasinResult::length,
                unit::foot);
  method.output({"basin_width", "W", "width of the basin"}, &LowTailwaterBasinResult::basin_width,
                unit::foot);
  method.output({"thinnest", "t", "least thickness of the rock"},
                &LowTailwaterBasinResult::thinnest, unit::foot);
  method.output({"thickest", "t", "greatest thickness asked for"},
                &LowTailwaterBasinResult::thickest, unit::foot);
  method.limit({"Tailwater at most a third of the conduit's height", usdcm_of_low_tailwater_basin},
               [](const LowTailwaterBasinInputs& in) {
                 return in.tailwater / in.height < 1.0 / 3.0 + 1e-9;
               });
  return method;
}

}  // namespace

Expected<LowTailwaterBasinResult> low_tailwater_basin(const LowTailwaterBasinInputs& inputs,
                                                      Steps& steps) {
  const double D = inputs.height.feet();
  const double V = inputs.velocity.feet_per_second();

  LowTailwaterBasinResult result;
  result.length = Length::feet(std::max(4 * D, std::sqrt(D) * V / 2));
  result.basin_width = inputs.width + 4 * inputs.height;
  result.thinnest = 1.75 * inputs.d50;
  result.thickest = 2 * inputs.d50;
  steps.given("D", "height of the conduit", measure(inputs.height));
  steps.given("V", "velocity at the outlet", measure(inputs.velocity));
  steps.computed("L", "length of the basin", "the larger of 4·D and D^½·V/2 (ft, ft/s)",
                 measure(result.length), usdcm_of_low_tailwater_basin);
  steps.given("w", "width of the conduit", measure(inputs.width));
  steps.computed("W", "width of the basin", "w + 4·D", measure(result.basin_width),
                 usdcm_of_low_tailwater_basin);
  steps.given_rock("d50", "rock chosen", inputs.d50);
  steps.computed("t", "least thickness of the rock", "1.75·d50", measure(result.thinnest),
                 usdcm_of_low_tailwater_basin);
  steps.computed("t", "greatest thickness asked for", "2·d50", measure(result.thickest),
                 usdcm_of_low_tailwater_basin);
  return result;
}

const Method& low_tailwater_basin_method() {
  static const DescribedLowTailwaterBasin method = build_low_tailwater_basin();
  return method;
}

}  // namespace proofstone
