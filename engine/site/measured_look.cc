#include "engine/site/measured_look.h"

#include "engine/hydraulics/water_weight.h"
#include "engine/rock/size_and_mass.h"
#include "engine/vision/photo_gradation.h"

namespace proofstone {
namespace {

Expected<MeasuredGradation> from_mass_ranges(const Site& site, const Look& look,
                                             const MassRanges& taken) {
  const auto& source = site.sources.at(site.lots.at(look.lot).source);
  const Density rock = source.rock.specific_gravity.number() * water_density;
  const auto meaning = SizeMeaning::intermediate_axis;
  std::vector<WeighedGroup> groups;
  for (const auto& range : taken.ranges) {
    WeighedGroup group;
    if (range.lower && range.lower->si() > 0) group.lower = stone_size(*range.lower, meaning, rock);
    group.upper = stone_size(range.upper, meaning, rock);
    group.mass = range.mass;
    group.stones = range.stones;
    groups.push_back(group);
  }
  auto measured = gradation_from_weighed(groups, meaning);
  if (measured) {
    measured->method = "mass ranges";
    measured->steps.given("ρ", "density at which masses of stones became sizes", measure(rock),
                          "source of the lot; M = 0.85·ρ·D³");
  }
  return measured;
}

}  // namespace

Expected<MeasuredGradation> measured_look(const Site& site, const Look& look) {
  if (const auto* count = std::get_if<StoneCount>(&look.taken)) {
    return count->intermediate_axes.empty()
               ? gradation_from_bins(count->bins, count->picking)
               : gradation_from_stones(count->intermediate_axes, count->picking);
  }
  if (const auto* ranges = std::get_if<MassRanges>(&look.taken)) {
    return from_mass_ranges(site, look, *ranges);
  }
  if (const auto* photos = std::get_if<PhotoSet>(&look.taken)) {
    auto found = gradation_from_photos(*photos, site.evidence.photo_calibrations);
    if (!found) return found.problems();
    return std::move(found->measured);
  }
  const auto* sample = std::get_if<WeighedSample>(&look.taken);
  if (sample == nullptr) {
    return Problem{"no-curve", "This look says nothing of shares.", "", look.id, "a count"};
  }
  return gradation_from_weighed(sample->groups, sample->size_meaning);
}

}  // namespace proofstone
