#include "engine/site/zone_water_words.h"

#include <fmt/format.h>

namespace proofstone {

Finding begin_water_finding(const Zone& zone, const FlowCase& flow_case) {
  Finding finding;
  finding.topic = Topic::water;
  finding.about.zone = zone.id;
  finding.about.flow_case = flow_case.id;
  finding.id = fmt::format("water.{}.{}", zone.id, flow_case.id);
  finding.title = fmt::format("{}: water at {}", flow_case.name, zone.name);
  return finding;
}

void report_water_problems(Finding& finding, const Problems& problems) {
  finding.outcome = Outcome::not_yet_known;
  for (const auto& problem : problems) finding.reasons.push_back(problem.sentence());
  finding.sentence = "The water at this zone could not be computed. " + finding.reasons.front();
  finding.next = "Mend the section, the slope or the discharge; then look again.";
}

void state_water(Finding& finding, const ZoneWater& water) {
  const auto& flow = *water.flow;
  const auto add = [&finding](const std::string& key, const std::string& symbol,
                              const std::string& meaning, Measure value) {
    finding.values.push_back({key, symbol, meaning, value, LengthUse::ground});
  };
  add("discharge", "Q", "discharge", measure(flow.discharge));
  add("water_level", "w", "water level", measure(flow.water_level));
  if (!water.setting) return;
  const auto& setting = *water.setting;
  add("average_velocity", "V", "mean velocity of the main channel",
      measure(setting.average_velocity));
  add("toe_depth", "y", "depth at the toe", measure(setting.toe_depth));
  add("local_depth", "d", "local depth at the rock", measure(setting.local_depth));
  add("top_width", "W", "water surface width of the main channel",
      measure(setting.water_top_width));
  add("froude_number", "Fr", "Froude number of the main channel", measure(setting.froude_number));
}

void word_water(Finding& finding, const ZoneWater& water, const Zone& zone,
                const Wording& wording) {
  const auto& setting = *water.setting;
  finding.sentence = fmt::format(
      "{} stands at {} and runs at {} in the main channel (Froude number {}); at the rock it is {} "
      "deep.",
      wording.of(water.flow->discharge), wording.ground(water.flow->water_level),
      wording.of(setting.average_velocity), significant(setting.froude_number.number(), 2),
      wording.ground(setting.local_depth));
  if (water.flow->wet.end_wall_added) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next = "The water stands above an end of the survey: extend the section.";
    finding.reasons.emplace_back(
        "Vertical walls were added at the ends of the survey; level and velocity are only as good "
        "as they are.");
  } else if (setting.froude_number.number() >= 1) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next =
        "The flow is rapid here. Bank formulas for tranquil flow do not apply; use a method for "
        "steep channels.";
  } else {
    finding.outcome = Outcome::meets;
    finding.next = fmt::format("Nothing to do; what {} needs in this water stands under rock size.",
                               zone.name);
  }
}

void caution_about_ground(Finding& finding, const ZoneWater& water, const Wording& wording) {
  if (water.flow->wet.wet_stretches > 1) {
    finding.cautions.push_back(
        "Low ground apart from the channel is taken to carry water. See whether it is connected at "
        "this level; if not, the channel carries more.");
  }
  for (const auto& level : water.flow->further_levels) {
    finding.cautions.push_back(fmt::format(
        "The same discharge would also run uniformly at {}: conveyance falls while the water "
        "spreads. The lower level is used.",
        wording.ground(level)));
  }
  if (water.bank && water.bank->steepest_angle > water.bank->angle + Angle::degrees(3)) {
    finding.cautions.push_back(
        fmt::format("The bank is uneven: sized as {} from toe to top, but a piece of it stands at "
                    "{}. Trim it, or "
                    "size on the steeper piece.",
                    wording.of(water.bank->angle), wording.of(water.bank->steepest_angle)));
  }
}

}  // namespace proofstone
