#include <fmt/format.h>

#include "engine/placing/placing_design.h"

namespace proofstone {
namespace {

void add_fabric(const PlacingDesign& design, const DesignedFilterLayer& layer, std::size_t number,
                std::vector<PlacingCheck>& checks) {
  PlacingCheck roll;
  roll.id = fmt::format("fabric-{}", number);
  roll.title = "Geotextile as delivered";
  roll.required = "The label of every roll names the fabric of the design";
  if (layer.strength_class) {
    roll.required += fmt::format(", strength Class {} or stronger", *layer.strength_class);
  }
  roll.design = fmt::format("filter/{} of the zone; finding \"filter\"", number - 1);
  roll.source = usual("labels are photographed before the rolls are opened");
  roll.how = "label and certificate of each roll; look for tears and sun damage";
  checks.push_back(roll);

  PlacingCheck laps;
  laps.id = fmt::format("fabric-{}-laps", number);
  laps.title = "Laps and pins of the geotextile";
  laps.measure = CheckMeasure::at_least;
  laps.hold_point = true;
  laps.required =
      "Laid loose on the ground along the flow, upstream over downstream, keyed at toe and top, "
      "pinned so that it does not move (common practice, no source); laps between sheets";
  laps.design = roll.design;
  laps.asked = design.under_water ? Length::feet(3) : Length::feet(1);
  laps.reads_as_ground = true;
  put_tolerance(
      laps, design.tolerances, std::nullopt, std::nullopt,
      {"FHWA HEC-23", "laps of 1 ft placed dry, 3 ft under water", SourceStanding::memory});
  laps.how = "tape across each lap, before bedding or rock covers it";
  laps.fewest_points = 3;
  checks.push_back(std::move(laps));
}

void add_bedding(const PlacingDesign& design, const DesignedFilterLayer& layer, std::size_t number,
                 std::vector<PlacingCheck>& checks) {
  PlacingCheck gradation;
  gradation.id = fmt::format("bedding-{}-gradation", number);
  gradation.title = fmt::format("Gradation of {}", layer.name);
  gradation.required = fmt::format("A sieve analysis of what is delivered fits {}", layer.name);
  gradation.design = fmt::format("filter/{}/bedding of the zone; finding \"filter\"", number - 1);
  gradation.source = usual("one sieve analysis before placing, and one when the pit changes");
  gradation.how = "sieve analysis of a sample from the pile";
  checks.push_back(std::move(gradation));

  PlacingCheck spread;
  spread.id = fmt::format("bedding-{}", number);
  spread.title = fmt::format("Thickness of {}", layer.name);
  spread.measure = CheckMeasure::at_least;
  spread.hold_point = true;
  spread.required = "Spread evenly, not mixed with the ground, to its thickness";
  spread.design = fmt::format("filter/{}/thickness of the zone; finding \"filter\"", number - 1);
  spread.asked = layer.thickness;
  put_tolerance(spread, design.tolerances, design.tolerances.thickness, std::nullopt,
                usual("bedding is nowhere thinner than drawn"));
  spread.how = "hole dug through the layer and a rule, before rock covers it";
  spread.fewest_points = 3;
  checks.push_back(std::move(spread));
}

}  // namespace

void add_filter_checks(const PlacingDesign& design, std::size_t layer,
                       std::vector<PlacingCheck>& checks) {
  const auto& one = design.filter[layer];
  if (one.fabric) {
    add_fabric(design, one, layer + 1, checks);
  } else {
    add_bedding(design, one, layer + 1, checks);
  }
}

}  // namespace proofstone
