#include "engine/site/top_of_rock.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "engine/site/local_attack.h"
#include "engine/sizing/freeboard.h"

namespace proofstone {
namespace {

/// The design water that stands highest along the zone.
const ZoneWater* highest_design(const std::vector<ZoneWater>& waters) {
  const ZoneWater* highest = nullptr;
  double level = 0;
  for (const ZoneWater& water : waters) {
    const bool counts = water.flow_case->purpose == FlowPurpose::design && water.flow &&
                        water.setting && water.bank;
    if (!counts) continue;
    const double here = (water.flow->water_level + rise_at_zone(*water.setting)).meters();
    if (highest != nullptr && here <= level) continue;
    highest = &water;
    level = here;
  }
  return highest;
}

/// What the rule is asked: its own choices, and the water.
nlohmann::json asked_of(const Zone& zone, const ZoneSetting& setting) {
  nlohmann::json asked = *zone.freeboard;
  asked["depth"] = exact_text(measure(setting.toe_depth), unit::meter);
  asked["velocity"] = exact_text(measure(setting.average_velocity), unit::meter_per_second);
  asked["superelevation"] = exact_text(measure(rise_at_zone(setting)), unit::meter);
  return asked;
}

Finding begin_top_finding(const Zone& zone, const ZoneWater& water) {
  Finding finding;
  finding.topic = Topic::layer;
  finding.about.zone = zone.id;
  finding.about.flow_case = water.flow_case->id;
  finding.about.method = freeboard_method().description().id;
  finding.id = "top." + zone.id;
  finding.title = fmt::format("Top of the rock of {}", zone.name);
  finding.sources = freeboard_method().description().sources;
  finding.cautions = freeboard_method().description().cautions;
  return finding;
}

void judge(Finding& finding, const Zone& zone, const SiteSection& section, Length wanted,
           const Wording& wording) {
  if (!zone.top_station) {
    finding.outcome = Outcome::not_yet_known;
    finding.sentence =
        fmt::format("The top of the rock should stand at {}; the zone does not say where it ends.",
                    wording.ground(wanted));
    finding.next = "Give the station of the top of the zone.";
    return;
  }
  const Length top = section.survey.ground_at(*zone.top_station);
  finding.steps.given("z_top", "ground at the top of the zone", measure(top));
  finding.values.push_back(
      {"top", "z_top", "elevation of the top of the zone", measure(top), LengthUse::ground});
  const bool high_enough = top >= wanted;
  finding.outcome = high_enough ? Outcome::meets : Outcome::falls_short;
  finding.sentence = fmt::format("The top of the rock should stand at {}; it stands at {}, {} {}.",
                                 wording.ground(wanted), wording.ground(top),
                                 wording.ground(high_enough ? top - wanted : wanted - top),
                                 high_enough ? "above that" : "below that");
  finding.next = high_enough ? "Nothing to do."
                             : "Carry the rock further up the bank, or state another rule with the "
                               "one who sets the criteria.";
}

}  // namespace

std::optional<Finding> top_of_rock(const Zone& zone, const SiteSection& section,
                                   const std::vector<ZoneWater>& waters, const Wording& wording) {
  if (zone.freeboard->empty() || zone.place != ZonePlace::bank) return std::nullopt;
  const ZoneWater* water = highest_design(waters);
  if (water == nullptr) return std::nullopt;
  Finding finding = begin_top_finding(zone, *water);
  const auto evaluation = freeboard_method().evaluate(asked_of(zone, *water->setting));
  if (!evaluation) {
    finding.outcome = Outcome::not_yet_known;
    for (const Problem& problem :
         located_under(evaluation.problems(), "/zones/" + zone.id + "/freeboard")) {
      finding.reasons.push_back(problem.sentence());
    }
    finding.sentence = "The freeboard could not be computed. " + finding.reasons.front();
    finding.next = "Mend the freeboard of the zone.";
    return finding;
  }
  const Length above = evaluation->output("above_mean_level").unchecked_as<Length>();
  const Length wanted = water->flow->water_level + above;
  finding.steps.given("w", "design water level", measure(water->flow->water_level));
  finding.steps.append(evaluation->steps);
  finding.steps.computed("z_wanted", "elevation wanted of the top of the rock", "w + F + Δy + H_w",
                         measure(wanted));
  finding.values.push_back({"wanted_top", "z_wanted", "elevation wanted of the top of the rock",
                            measure(wanted), LengthUse::ground});
  judge(finding, zone, section, wanted, wording);
  return finding;
}

}  // namespace proofstone
