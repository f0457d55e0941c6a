#include "engine/site/lined_part.h"

#include <cmath>

#include "engine/hydraulics/length_beside.h"
#include "engine/site/lined_ground.h"

namespace proofstone {
namespace {

Length length_of(const std::vector<GroundPoint>& line) {
  double meters = 0;
  for (std::size_t i = 1; i < line.size(); ++i) {
    meters += std::hypot((line[i].station - line[i - 1].station).meters(),
                         (line[i].elevation - line[i - 1].elevation).meters());
  }
  return Length::meters(meters);
}

void take_slope_length(const Zone& zone, const std::vector<GroundPoint>& ground, LinedPart& part) {
  if (zone.extent.slope_length) {
    part.slope_length = zone.extent.slope_length;
    part.steps.given("S", "length of the layer along the ground, across the stream",
                     measure(*part.slope_length), "document");
    return;
  }
  if (ground.size() < 2) {
    part.missing.push_back(
        "How far the rock reaches across the stream is not known: state slope_length under extent, "
        "or give the zone a section and water that show it.");
    return;
  }
  part.slope_length = length_of(ground);
  part.steps.computed("S", "length of the layer along the ground, across the stream",
                      "Σ√(Δx² + Δz²) along the section", measure(*part.slope_length),
                      "section " + zone.section);
  part.notes.push_back("The zone is taken as lined like its one section over its whole length.");
}

/// Along the centreline, and longer or shorter where the rock lies beside it in a bend.
void take_length(const Site& site, const Zone& zone, const std::vector<GroundPoint>& ground,
                 LinedPart& part) {
  if (zone.extent.length) {
    part.length = zone.extent.length;
    part.steps.given("L", "length of the rock along the stream", measure(*part.length), "document");
    return;
  }
  if (!zone.along) {
    part.missing.push_back(
        "How long the zone is is not known: state length under extent, or where it lies along a "
        "centreline.");
    return;
  }
  BesideCentreline line;
  line.from = zone.along->from;
  line.to = zone.along->to;
  const auto section = site.sections.find(zone.section);
  if (ground.size() < 2 || section == site.sections.end()) {
    part.length = line.to - line.from;
    part.steps.given("L", "length along the centreline", measure(*part.length), "document");
    return;
  }
  const auto& banks = section->second;
  const Length middle = (ground.front().station + ground.back().station) / 2;
  line.offset_right = middle - (banks.left_bank + banks.right_bank) / 2;
  line.width = banks.right_bank - banks.left_bank;
  const auto& course = site.centrelines.at(zone.along->centreline).course;
  if (const auto length = length_beside(course, line, part.steps)) {
    part.length = *length;
  } else {
    part.missing.push_back("The length along the centreline cannot be read: " +
                           length.problems().front().sentence());
  }
}

}  // namespace

LinedPart lined_part(const Site& site, const Zone& zone, const std::vector<ZoneWater>& water) {
  LinedPart part;
  std::vector<GroundPoint> ground;
  if (!zone.section.empty()) ground = lined_ground(site.sections.at(zone.section), zone, water);
  if (zone.extent.area) {
    part.area = zone.extent.area;
    part.length = zone.extent.length;
    part.slope_length = zone.extent.slope_length;
    part.steps.given("A", "area of the layer, along the slope", measure(*part.area), "document");
    return part;
  }
  take_slope_length(zone, ground, part);
  take_length(site, zone, ground, part);
  if (part.length && !(part.length->meters() > 0)) {
    part.missing.push_back("The zone has no length: from and to are the same place.");
    part.length.reset();
  }
  if (part.length && part.slope_length) {
    part.area = Area::square_meters(part.length->meters() * part.slope_length->meters());
    part.steps.computed("A", "area of the layer, along the slope", "L·S", measure(*part.area));
  }
  return part;
}

}  // namespace proofstone
