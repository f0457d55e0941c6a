#include "engine/hydraulics/boundary_level.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

namespace proofstone {

namespace {

Problem boundary_problem(const std::string& code, const std::string& what,
                         const std::string& allowed) {
  return {code, what, "", "boundary", allowed};
}

Expected<SectionState> normal_level(const LevelTable& table, Slope slope, double discharge) {
  if (!(slope.ratio() > 0) || !std::isfinite(slope.ratio())) {
    return boundary_problem(
        "slope-not-positive",
        "The slope is not a positive number; without a fall there is no uniform "
        "flow.",
        "a slope above 0, or another kind of boundary");
  }
  const double wanted = discharge / std::sqrt(slope.ratio());
  const auto excess = [&](const SectionState& state) { return state.conveyance - wanted; };
  const SectionState& lowest = table.states().front();
  if (excess(lowest) >= 0) return lowest;
  const auto level = first_rise_through_zero(table, lowest, table.states().back(), excess);
  if (!level) {
    return boundary_problem("too-much-water",
                            "The section cannot carry the discharge at this slope.",
                            "a steeper slope or a smaller discharge");
  }
  return *level;
}

Expected<SectionState> known_level(const LevelTable& table, Length level) {
  const Section& ground = table.section().section;
  if (!(level > ground.lowest()) || !(level.meters() <= table.states().back().level)) {
    return boundary_problem("level-not-above-bed",
                            "The level does not stand above the lowest ground of its section.",
                            "a level above the lowest ground");
  }
  const SectionState state = table.at(level.meters());
  if (!(state.area > 0)) {
    return boundary_problem("level-not-above-bed",
                            "At this level no part of the section carries water.",
                            "a level above the lowest ground that is not ineffective");
  }
  return state;
}

Expected<Length> rated_level(const std::vector<Boundary::RatedLevel>& table, double discharge) {
  if (table.size() < 2) {
    return boundary_problem("rating-too-short", "The rating table has fewer than two lines.",
                            "at least two lines");
  }
  for (std::size_t i = 1; i < table.size(); ++i) {
    if (table[i].discharge > table[i - 1].discharge && table[i].level >= table[i - 1].level) {
      continue;
    }
    return boundary_problem("rating-unsorted", "The rating table is not in order.",
                            "discharges that rise, with levels that do not fall");
  }
  const auto wanted = Discharge::cubic_meters_per_second(discharge);
  if (wanted < table.front().discharge || wanted > table.back().discharge) {
    return boundary_problem("rating-outside",
                            "The rating table does not reach the discharge; it is not extended.",
                            "a rating table that spans the discharge");
  }
  const auto above = std::find_if(table.begin() + 1, table.end(),
                                  [&](const auto& line) { return line.discharge >= wanted; });
  const auto& below = *(above - 1);
  const double share = (wanted - below.discharge) / (above->discharge - below.discharge);
  return below.level + share * (above->level - below.level);
}

}  // namespace

Expected<SectionState> boundary_level(const Station& station, const Boundary& boundary,
                                      double discharge) {
  switch (boundary.kind) {
    case Boundary::Kind::critical:
      return station.energy.used_critical();
    case Boundary::Kind::normal_slope:
      return normal_level(station.table, boundary.slope, discharge);
    case Boundary::Kind::known_level:
      return known_level(station.table, boundary.level);
    case Boundary::Kind::rating: {
      const auto level = rated_level(boundary.rating, discharge);
      if (!level) return level.problems();
      return known_level(station.table, *level);
    }
  }
  return boundary_problem("boundary-unknown", "The kind of boundary is not known.", "");
}

}  // namespace proofstone
