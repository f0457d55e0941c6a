#include "engine/site/typical_section_of.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/site/lined_ground.h"
#include "engine/site/typical_section_parts.h"
#include "engine/site/typical_section_places.h"
#include "engine/site/zone_slope.h"

namespace proofstone {
namespace {

using Picture = TypicalSectionPicture;

/// The ground from the toe up to the top, in that order.
std::vector<GroundPoint> slope_line(const Section& survey, const ZoneSlope& slope) {
  const Length low = std::min(slope.toe_station, slope.top_station);
  const Length high = std::max(slope.toe_station, slope.top_station);
  std::vector<GroundPoint> line{{low, survey.ground_at(low)}};
  for (const auto& point : survey.points()) {
    if (point.station > low && point.station < high) {
      line.push_back({point.station, point.elevation});
    }
  }
  line.push_back({high, survey.ground_at(high)});
  if (slope.toe_station > slope.top_station) std::reverse(line.begin(), line.end());
  return line;
}

void take_survey(Picture& picture, const Section& survey) {
  for (const auto& point : survey.points()) {
    picture.ground.push_back({point.station, point.elevation});
  }
}

std::optional<Picture> bank_section(const Site& site, const Zone& zone,
                                    const std::vector<ZoneWater>& waters, Picture picture,
                                    const std::string& class_name, const Wording& wording) {
  const auto& section = site.sections.at(zone.section);
  const auto slope = slope_of_zone(zone, section);
  if (!slope) return std::nullopt;
  take_survey(picture, section.survey);
  picture.surface = slope_line(section.survey, *slope);
  picture.rise_per_run = std::tan(slope->angle.radians());
  picture.slope_text = significant(1 / picture.rise_per_run, 2);
  add_levels(picture, waters, wording);
  add_toe_and_key(picture, zone, wording);
  add_parts_by_level(picture, zone, waters, class_name, wording);
  add_under(picture, site, zone, wording);
  picture.cover = drawn_cover(zone, slope->toe_elevation, slope->top_elevation, waters, wording);
  describe(picture, fmt::format("slope {}H:1V, from the toe up", picture.slope_text));
  return picture;
}

/// Across the stream, as far as the rock of a bed is counted: between the tops of the banks.
std::optional<Picture> bed_section(const Site& site, const Zone& zone,
                                   const std::vector<ZoneWater>& waters, Picture picture,
                                   const std::string& class_name, const Wording& wording) {
  const auto& section = site.sections.at(zone.section);
  take_survey(picture, section.survey);
  picture.surface = lined_ground(section, zone, waters);
  if (picture.surface.size() < 2) return std::nullopt;
  const GroundPoint left = picture.surface.front();
  const GroundPoint right = picture.surface.back();
  std::reverse(picture.surface.begin(), picture.surface.end());  // words stand on the right
  picture.level = true;
  add_levels(picture, waters, wording);
  add_whole_part(picture, zone, class_name, wording);
  add_under(picture, site, zone, wording);
  const Length high = std::max(left.elevation, right.elevation);
  picture.dimensions.push_back({fmt::format("lined {} wide, from bank top to bank top",
                                            wording.ground(right.station - left.station)),
                                {left.station, high},
                                {right.station, high}});
  describe(picture, "across the stream, in the direction of the stations");
  return picture;
}

}  // namespace

std::optional<Picture> typical_section(const Site& site, const Zone& zone,
                                       const std::vector<ZoneWater>& waters,
                                       const ZoneSizing& sizing, const Wording& wording) {
  auto picture = begin_typical_section(site, zone, sizing, wording);
  const DrawnPlace place{site, zone, waters, sizing, wording};
  const auto& name = sizing.specified->name;
  switch (zone.place) {
    case ZonePlace::bank:
      return bank_section(site, zone, waters, std::move(picture), name, wording);
    case ZonePlace::bed:
      return bed_section(site, zone, waters, std::move(picture), name, wording);
    case ZonePlace::shore:
      return shore_section(place, std::move(picture));
    case ZonePlace::outfall:
      return apron_section(place, std::move(picture));
    case ZonePlace::chute:
    case ZonePlace::drop:
      return chute_section(place, std::move(picture));
    case ZonePlace::basin:
      return basin_section(place, std::move(picture));
    case ZonePlace::pier:
      return pier_section(place, std::move(picture));
    case ZonePlace::abutment:
      return abutment_section(place, std::move(picture));
  }
  return std::nullopt;
}

std::optional<Picture> plan_view(const Site& site, const Zone& zone, const ZoneSizing& sizing,
                                 const Wording& wording) {
  if (zone.place != ZonePlace::outfall) return std::nullopt;
  return apron_plan(site, zone, sizing, wording);
}

}  // namespace proofstone
