#include <fmt/format.h>

#include "engine/filter/beddings.h"
#include "engine/quantities/fabric_area.h"
#include "engine/site/quantity_counting.h"

namespace proofstone {
namespace {

std::string bedding_name(const Site& site, const std::string& id) {
  const auto own = site.materials.find(id);
  if (own != site.materials.end()) return own->second.name;
  const auto* standard = find_bedding(id);
  return standard == nullptr ? id : standard->name;
}

void count_bedding(Counting& counting, const GranularFilter& layer) {
  const auto name = bedding_name(counting.site, layer.bedding);
  QuantityRow row{"bedding", layer.bedding, fmt::format("Bedding, {}, ordered", name), {}};
  row.how = "area × thickness, and what is to spare";
  row.priced_as = "bedding";
  if (counting.part.area) {
    auto& steps = counting.counted.steps;
    const auto volume =
        Volume::cubic_meters(counting.part.area->square_meters() * layer.thickness.meters());
    const auto ordered = volume * (1 + counting.site.ordering.spare.number());
    steps.given("t_b", "thickness of " + name, measure(layer.thickness), "document");
    steps.computed("V_b", name + " in place", "A·t_b", measure(volume));
    steps.computed("V_o", name + " ordered", "V_b·(1 + s)", measure(ordered));
    counting.excavation = counting.excavation + volume;
    row.amount = measure(ordered);
    if (const auto& density = counting.site.ordering.bedding_density) {
      const auto mass =
          Mass::kilograms(ordered.cubic_meters() * density->kilograms_per_cubic_meter());
      steps.computed("M_b", "mass of that", "V_o·ρ", measure(mass));
      row.also = {measure(mass)};
    }
  }
  add_row(counting, std::move(row));
}

void count_fabric(Counting& counting) {
  QuantityRow row{"geotextile", "", "Geotextile with its overlaps", {}};
  row.how = "whole strips down the slope";
  row.priced_as = "geotextile";
  const auto& part = counting.part;
  if (part.length && part.slope_length) {
    FabricAreaInputs inputs;
    inputs.length = *part.length;
    inputs.slope_length = *part.slope_length;
    if (counting.site.ordering.fabric_roll_width) {
      inputs.roll_width = *counting.site.ordering.fabric_roll_width;
    }
    // FHWA HEC-11 and HEC-23, as the method fabric-area names them.
    inputs.overlap = counting.zone.placement == Placement::dry ? Length::feet(1) : Length::feet(3);
    const auto fabric = fabric_area(inputs, counting.counted.steps);
    if (fabric) {
      row.amount = measure(fabric->laid);
    } else {
      counting.counted.missing.push_back(fabric.problems().front().sentence());
    }
  } else {
    counting.counted.missing.emplace_back(
        "The geotextile is not counted: strips need both the length and the slope length of the "
        "zone.");
  }
  add_row(counting, std::move(row));
}

}  // namespace

void count_filter(Counting& counting) {
  if (!counting.zone.filter) return;
  for (const auto& layer : counting.zone.filter->layers) {
    if (const auto* granular = std::get_if<GranularFilter>(&layer)) {
      count_bedding(counting, *granular);
    } else {
      count_fabric(counting);
    }
  }
}

}  // namespace proofstone
