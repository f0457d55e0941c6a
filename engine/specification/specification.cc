#include "engine/specification/specification.h"

#include <algorithm>
#include <cmath>

#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

std::optional<Mass> mass_of(const std::optional<Length>& size, const SpecifiedClass& specified) {
  if (!size) return std::nullopt;
  const auto density =
      Density::kilograms_per_cubic_meter(1000 * specified.specific_gravity.number());
  return stone_mass(*size, specified.basis.size, density);
}

void add_sizes(const RockClass& rock_class, SpecifiedClass& specified) {
  for (const double percent : {15.0, 30.0, 50.0, 85.0, 100.0}) {
    SpecifiedSize row;
    row.percent = percent;
    if (const auto least = rock_class.band.smallest_size_at(percent)) row.least = *least;
    if (const auto most = rock_class.band.largest_size_at(percent)) row.most = *most;
    if (!row.least && !row.most) continue;
    row.least_mass = mass_of(row.least, specified);
    row.most_mass = mass_of(row.most, specified);
    specified.sizes.push_back(row);
  }
}

bool is_ordinary(const BandCondition& condition) {
  return condition.percent > 0 && condition.percent < 100;
}

void add_limits(const RockClass& rock_class, const Specification& whole,
                SpecifiedClass& specified) {
  const auto& conditions = rock_class.band.conditions();
  // As a lot is judged: all limits together at the confidence asked. "The largest stone is at
  // least" and "at least none" are not tested by a sample.
  const auto tested =
      std::count_if(conditions.begin(), conditions.end(), [](const BandCondition& condition) {
        const bool at_most = condition.sense == BandCondition::Sense::at_most;
        return at_most ? condition.percent < 100 : condition.percent > 0;
      });
  const double level =
      1 - (1 - whole.confidence) / std::max<double>(1, static_cast<double>(tested));
  for (const auto& condition : conditions) {
    SpecifiedLimit limit{
        condition.wording, condition.size, condition.sense, is_ordinary(condition), {}};
    if (limit.counted) {
      limit.count = count_limits(condition.sense, condition.percent, whole.counted_stones, level);
    }
    specified.limits.push_back(std::move(limit));
  }
}

SpecifiedClass begin_class(const Site& site, const Zone& zone, const RockClass& rock_class) {
  SpecifiedClass specified;
  specified.id = rock_class.id;
  specified.name = rock_class.name;
  specified.family = rock_class.family;
  specified.basis = rock_class.band.basis();
  specified.source = rock_class.source;
  specified.nominal_d50 = rock_class.nominal_d50;
  specified.specific_gravity = site.sources.at(zone.source).rock.specific_gravity;
  specified.notes = rock_class.notes;
  return specified;
}

void add_once(std::vector<std::string>& names, const std::string& name) {
  if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
}

}  // namespace

Specification specification_of(const Site& site) {
  Specification whole;
  whole.site_name = site.name;
  whole.revision = site.revision;
  whole.confidence = site.evidence.confidence;
  whole.rock_limits = limits_in_force(site.requirements);
  whole.rock_limits_chosen = has_chosen(site.requirements);
  whole.exposure = site.requirements.exposure;
  whole.frequency = site.requirements.frequency;
  whole.placing = site.requirements.placing;
  for (const auto& [id, zone] : site.zones) {
    const auto& rock_class = *find_class(site, zone.rock_class);
    auto found =
        std::find_if(whole.classes.begin(), whole.classes.end(),
                     [&](const SpecifiedClass& known) { return known.id == rock_class.id; });
    if (found == whole.classes.end()) {
      whole.classes.push_back(begin_class(site, zone, rock_class));
      found = whole.classes.end() - 1;
      add_sizes(rock_class, *found);
      add_limits(rock_class, whole, *found);
    }
    const auto& source = site.sources.at(zone.source);
    add_once(found->sources, source.name);
    found->places.push_back({zone.name, zone.layer_thickness, zone.placement});
  }
  whole.mixes = specified_mixes(site);
  whole.filters = specified_filters(site);
  return whole;
}

}  // namespace proofstone
