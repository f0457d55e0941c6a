#include "engine/site/profile_picture_of.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace proofstone {
namespace {

ProfilePicture::Place place_of(const Site& site, const ProfileSection& section) {
  ProfilePicture::Place place;
  place.distance = section.distance;
  place.bed = section.flow.water_level - section.flow.wet.deepest;
  place.lower_bank = section.lower_bank;
  if (!section.interpolated) place.name = site.sections.at(section.name).name;
  return place;
}

ProfilePicture::WaterLine line_of(const ReachWater& water) {
  ProfilePicture::WaterLine line;
  line.name = water.flow_case->name;
  for (const ProfileSection& section : water.profile->sections) {
    line.points.push_back({section.distance, section.flow.water_level, section.critical_level});
  }
  for (const ProfileJump& jump : water.profile->jumps) {
    line.jumps.push_back({jump.distance, jump.level_before, jump.level_after});
  }
  return line;
}

}  // namespace

std::optional<ProfilePicture> profile_picture(const Site& site, const SiteReach& reach,
                                              const std::vector<ReachWater>& water) {
  ProfilePicture picture;
  picture.id = "profile." + reach.id;
  picture.title = fmt::format("{}: water surface", reach.name);
  std::vector<std::string> names;
  bool jumps = false;
  for (const ReachWater& one : water) {
    if (one.reach != &reach || !one.profile) continue;
    if (picture.places.empty()) {
      for (const ProfileSection& section : one.profile->sections) {
        picture.places.push_back(place_of(site, section));
      }
    }
    picture.water_lines.push_back(line_of(one));
    names.push_back(one.flow_case->name);
    jumps = jumps || !one.profile->jumps.empty();
  }
  if (picture.water_lines.empty()) return std::nullopt;
  picture.water_lines.back().largest = true;  // cases come by rising discharge
  picture.description = fmt::format(
      "Elevation of bed, lower bank and water surface along {}, flowing from left to right, for "
      "{}. "
      "{}",
      reach.name, listed(names),
      jumps ? "A hydraulic jump is marked." : "There is no hydraulic jump.");
  return picture;
}

}  // namespace proofstone
