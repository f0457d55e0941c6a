#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/site/site_pictures.h"

namespace proofstone {
namespace {

/// The widest water computed at any of the zones along a centreline.
Length widest_water(const std::string& centreline, const std::vector<ZoneInPlan>& zones) {
  Length widest;
  for (const ZoneInPlan& zone : zones) {
    if (!zone.zone->along || zone.zone->along->centreline != centreline) continue;
    for (const ZoneWater& water : *zone.water) {
      if (water.setting) widest = std::max(widest, water.setting->water_top_width);
    }
  }
  return widest;
}

/// The course between two distances, moved to a bank by half the width.
std::vector<PlanPoint> bank_line(const std::vector<CurvePoint>& curve, Length from, Length to,
                                 BankSide bank, Length width) {
  const double out = (bank == BankSide::left ? 0.5 : -0.5) * width.meters();
  std::vector<PlanPoint> line;
  for (std::size_t i = 0; i < curve.size(); ++i) {
    if (curve[i].along < from || curve[i].along > to) continue;
    const PlanPoint& before = curve[i > 0 ? i - 1 : 0].place;
    const PlanPoint& after = curve[std::min(i + 1, curve.size() - 1)].place;
    const double x = (after.x - before.x).meters();
    const double y = (after.y - before.y).meters();
    const double length = std::sqrt(x * x + y * y);
    if (!(length > 0)) continue;
    line.push_back({curve[i].place.x - Length::meters(y / length * out),
                    curve[i].place.y + Length::meters(x / length * out)});
  }
  return line;
}

/// A length to three figures: a radius is known no better.
std::string rounded(Length length, UnitSystem units) {
  const Unit& unit = units == UnitSystem::si ? unit::meter : unit::foot;
  return fmt::format("{} {}", significant(length.in(unit), 3), unit.symbol);
}

}  // namespace

std::optional<PlanPicture> plan_picture(const SiteCentreline& centreline,
                                        const std::vector<ZoneInPlan>& zones,
                                        const Wording& wording) {
  const Length width = widest_water(centreline.id, zones);
  const auto curve = curvature_along(centreline.course, width);
  if (!curve) return std::nullopt;
  PlanPicture picture;
  picture.id = "plan." + centreline.id;
  picture.title = fmt::format("{} in plan", centreline.name);
  picture.width = width;
  for (const CurvePoint& point : *curve) picture.course.push_back(point.place);
  for (const PlanBend& bend : bends_along(*curve, width)) {
    picture.bends.push_back({"radius " + rounded(bend.least_radius, wording.units()),
                             bank_line(*curve, bend.begin, bend.end, bend.outer_bank, width)});
  }
  std::vector<std::string> names;
  for (const ZoneInPlan& at : zones) {
    const auto& along = at.zone->along;
    if (!along || along->centreline != centreline.id) continue;
    picture.zones.push_back(
        {at.zone->name, bank_line(*curve, along->from, along->to, at.zone->bank, width)});
    names.push_back(at.zone->name);
  }
  picture.description = fmt::format(
      "The channel seen from above, north up, {} wide, flowing along the arrows, with {} {}{}.",
      wording.ground(width), picture.bends.size(), picture.bends.size() == 1 ? "bend" : "bends",
      names.empty() ? "" : " and the zones " + listed(names));
  return picture;
}

}  // namespace proofstone
