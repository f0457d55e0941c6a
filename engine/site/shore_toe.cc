#include "engine/site/shore_toe.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "engine/quantity/rounding.h"
#include "engine/waves/wave_toe.h"

namespace proofstone {
namespace {

/// What the method is asked: the zone's waves and rock, with the designer's choices over them.
nlohmann::json asked_of(const Zone& zone, const RockClass& specified, const ZoneSetting& setting) {
  const auto length = [](Length value) { return exact_text(measure(value), unit::meter); };
  const auto layer = layer_of_class(specified, zone.placement);
  nlohmann::json asked = {{"wave_height", length(*setting.stated.wave_height)},
                          {"armour_cube", length(*layer.median_cube)},
                          {"specific_gravity", setting.rock.specific_gravity.number()}};
  if (setting.stated.depth) asked["water_depth"] = length(*setting.stated.depth);
  const auto own = zone.method_choices->find(wave_toe_method().description().id);
  if (own != zone.method_choices->end() && own->is_object()) asked.update(*own);
  return asked;
}

Finding begin_wave_toe_finding(const Zone& zone, const ZoneWater& at) {
  const auto& about = wave_toe_method().description();
  Finding finding;
  finding.topic = Topic::toe;
  finding.about.zone = zone.id;
  finding.about.flow_case = at.flow_case->id;
  finding.about.method = about.id;
  finding.id = fmt::format("toe.{}.{}", zone.id, at.flow_case->id);
  finding.title = fmt::format("Toe of {} in the {}", zone.name, at.flow_case->name);
  finding.sources = about.sources;
  finding.cautions = about.cautions;
  finding.limits = about.limits;
  return finding;
}

/// The toe as drawn against the depth it goes to, or the width of an apron in its place.
void judge_wave_toe(const Zone& zone, Length scour, Length apron, Finding& finding,
                    const Wording& wording) {
  if (!zone.toe) {
    finding.outcome = Outcome::not_yet_known;
    finding.sentence += " The zone states no toe.";
    finding.next = "Draw the toe: a trench with its depth, or a thicker part with its width.";
    return;
  }
  const bool is_apron = zone.toe->kind == ToeKind::thickened;
  if (zone.toe->kind == ToeKind::launchable) {
    finding.outcome = Outcome::ask_the_designer;
    finding.sentence += " The toe as drawn launches; no rule for its rock under waves is held.";
    finding.next = "Dig the toe in, or lay an apron.";
    return;
  }
  const Length drawn = is_apron ? *zone.toe->width : zone.toe->depth;
  const Length wanted = is_apron ? apron : scour;
  finding.margin = Margin{drawn / wanted, std::nullopt, std::nullopt};
  finding.sentence += is_apron
                          ? fmt::format(" The apron as drawn is {} wide.", wording.ground(drawn))
                          : fmt::format(" The toe as drawn goes down {}.", wording.ground(drawn));
  const bool enough = finding.margin->value >= 1 - rounding;
  finding.outcome = enough ? Outcome::meets : Outcome::falls_short;
  if (!finding.limits_not_kept.empty() && enough) finding.outcome = Outcome::ask_the_designer;
  finding.next = "Survey the bed before the toe after storms.";
  if (!enough) {
    finding.next = is_apron ? fmt::format("Make the apron {} wide.", wording.ground(wanted))
                            : fmt::format("Carry the toe down {}.", wording.ground(wanted));
  }
}

Finding shore_toe(const Zone& zone, const RockClass& specified, const ZoneWater& at,
                  const Wording& wording) {
  Finding finding = begin_wave_toe_finding(zone, at);
  const auto toe = wave_toe_method().evaluate(asked_of(zone, specified, *at.setting));
  if (!toe) {
    finding.outcome = Outcome::not_yet_known;
    for (const auto& problem : located_under(toe.problems(), "/wave-toe")) {
      finding.reasons.push_back(problem.sentence());
    }
    finding.sentence = "The toe could not be computed. " + finding.reasons.front();
    finding.next = "Mend what the zone chooses for its toe.";
    return finding;
  }
  finding.steps = toe->steps;
  finding.limits_not_kept = toe->limits_not_kept;
  const auto length = [&](const char* key) { return toe->output(key).unchecked_as<Length>(); };
  const Length scour = length("scour");
  const Length apron = length("apron_width");
  const Length thick = length("apron_thickness");
  finding.values.push_back({"required_depth", "ys", "depth below the bed to which the toe goes",
                            measure(scour), LengthUse::ground});
  finding.values.push_back(
      {"apron_width", "B", "width of an apron in its place", measure(apron), LengthUse::ground});
  finding.values.push_back({"toe_stone", "Dn50", "cube of the toe's median stone",
                            measure(length("stone_cube")), LengthUse::rock});
  finding.sentence = fmt::format(
      "The toe goes {} below the bed, or an apron {} wide and {} thick lies in its place.",
      wording.ground(scour), wording.ground(apron), wording.rock(thick));
  judge_wave_toe(zone, scour, apron, finding, wording);
  return finding;
}

}  // namespace

std::vector<Finding> shore_toe_findings(const Zone& zone, const ZoneSizing& sizing,
                                        const std::vector<ZoneWater>& water,
                                        const Wording& wording) {
  std::vector<Finding> findings;
  if (zone.place != ZonePlace::shore || zone.scour) return findings;
  std::size_t governing = 0;
  for (const auto& at : water) {
    if (at.flow_case->purpose != FlowPurpose::design || !at.setting) continue;
    if (!at.setting->stated.wave_height || !(at.setting->stated.wave_height->si() > 0)) continue;
    findings.push_back(shore_toe(zone, *sizing.specified, at, wording));
    const auto margin_of = [&](std::size_t i) {
      return findings[i].margin ? findings[i].margin->value : 0;
    };
    if (margin_of(findings.size() - 1) < margin_of(governing)) governing = findings.size() - 1;
  }
  if (!findings.empty()) findings[governing].governs = true;
  return findings;
}

}  // namespace proofstone
