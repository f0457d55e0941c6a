#include "engine/site/zone_setting_of.h"

#include <cmath>

#include "engine/hydraulics/extended_section.h"

namespace proofstone {
namespace {

Length mean_depth_of(const FlowPart& part) {
  return Length::meters(part.area.square_meters() / part.top_width.meters());
}

double froude_of(const FlowPart& part) {
  return part.velocity.meters_per_second() /
         std::sqrt(standard_gravity.meters_per_second_squared() * mean_depth_of(part).meters());
}

}  // namespace

ZoneSetting setting_of(const Site& site, const Zone& zone, const FlowCase& flow_case) {
  ZoneSetting setting;
  setting.zone = zone.id;
  setting.flow_case = flow_case.id;
  setting.place = zone.place;
  setting.channel_form = zone.channel_form;
  if (zone.bend) {
    setting.bend_side = zone.bend->side;
    setting.bend_radius = zone.bend->radius;
  }
  setting.turbulence = zone.turbulence;
  setting.rock = site.sources.at(zone.source).rock;
  setting.method_choices = &*zone.method_choices;
  return setting;
}

void take_channel(ZoneSetting& setting, Slope energy_slope, const FlowPart& channel) {
  setting.average_velocity = channel.velocity;
  setting.water_top_width = channel.top_width;
  setting.mean_depth = mean_depth_of(channel);
  setting.energy_slope = energy_slope;
  setting.froude_number = Dimensionless::number(froude_of(channel));
}

Problems take_ground(ZoneSetting& setting, const Zone& zone, const Section& survey,
                     const SectionFlow& flow, std::optional<BankGeometry>& bank) {
  if (zone.place != ZonePlace::bank) {
    setting.toe_depth = flow.wet.deepest;
    setting.local_depth = flow.wet.deepest;
    return {};
  }
  auto found =
      bank_geometry(survey, zone.bank, zone.toe_station, zone.top_station, flow.water_level);
  if (!found && flow.wet.end_wall_added) {
    // The bank goes on up the wall that was added; the finding says so.
    const auto extended = extended_to(survey, flow.water_level + Length::meters(1));
    if (!extended) return extended.problems();
    found =
        bank_geometry(*extended, zone.bank, zone.toe_station, zone.top_station, flow.water_level);
  }
  if (!found) return found.problems();
  setting.bank_angle = found->angle;
  setting.toe_depth = found->toe_depth;
  setting.local_depth = found->local_depth;
  bank = std::move(*found);
  return {};
}

}  // namespace proofstone
