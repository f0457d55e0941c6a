#include "engine/site/zone_kind_findings.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/finding/with_capital.h"
#include "engine/site/slope_parts.h"
#include "engine/site/zone_slope.h"

namespace proofstone {
namespace {

struct PresenceWords {
  const char* id;
  const char* where;
};

PresenceWords words_of(WaterPresence water) {
  switch (water) {
    case WaterPresence::always:
      return {"always-wet", "where water always stands"};
    case WaterPresence::often:
      return {"often-wet", "up to the frequent flow"};
    case WaterPresence::rarely:
      return {"rarely-wet", "between the frequent flow and the design flood"};
    case WaterPresence::never:
      return {"dry", "above the design flood"};
    case WaterPresence::unknown:
      break;
  }
  return {"not-known", "where no flow case says how often water stands"};
}

/// What the document says of the place, with the waves that its water states.
ZoneConditions conditions_of(const Zone& zone) {
  ZoneConditions conditions = zone.conditions;
  const bool stated = std::any_of(zone.water.begin(), zone.water.end(), [](const auto& water) {
    return water.second.wave_height && water.second.wave_height->si() > 0;
  });
  if (!conditions.waves && (stated || zone.place == ZonePlace::shore)) {
    conditions.waves = WaveAction::some;
  }
  return conditions;
}

Finding begin_kind_finding(const Zone& zone, const std::string& id, const std::string& where) {
  Finding finding;
  finding.topic = Topic::kind;
  finding.about.zone = zone.id;
  finding.id = id;
  finding.title = where.empty() ? fmt::format("Kind of rock of {}", zone.name)
                                : fmt::format("Kind of rock of {}, {}", zone.name, where);
  finding.sources.push_back(
      {"common practice", "no published source", SourceStanding::common_practice});
  finding.cautions = {
      "Rules of the trade; the designer's choice overrules them with a reason.",
      "The fill of the voids adds no strength here: the rock is sized as if it were bare."};
  return finding;
}

/// Soil that nothing holds where water works on it.
bool washes_out(RockKind kind, WaterPresence water, const ZoneConditions& conditions) {
  if (kind != RockKind::soil_filled || water == WaterPresence::never) return false;
  return water == WaterPresence::always || conditions.waves == WaveAction::some ||
         plants_can_grow(conditions) == false;
}

void judge(Finding& finding, const KindUpSlope& stated, WaterPresence water,
           const ZoneConditions& conditions, const KindProposal& proposal) {
  const std::string word(rock_kind_word(stated.kind));
  finding.sentence += fmt::format(" The zone states {} rock.", word);
  if (stated.kind == RockKind::grouted) {
    finding.outcome = Outcome::ask_the_designer;
    finding.sentence += " Grouted rock is rigid, and is not judged here.";
    finding.next = "Let the engineer responsible design the grout, its drains and its edges.";
    return;
  }
  if (washes_out(stated.kind, water, conditions)) {
    finding.outcome = stated.reason.empty() ? Outcome::falls_short : Outcome::ask_the_designer;
    finding.sentence +=
        " Soil washes out where water runs constantly or waves work and plants cannot hold.";
    if (!stated.reason.empty()) finding.sentence += " The designer's reason: " + stated.reason;
    finding.next = "Fill the voids with the mix of void-filled rock there, or leave them open.";
    finding.governs = true;
    return;
  }
  if (!proposal.kind) return;
  if (stated.kind == *proposal.kind || (stated.kind == RockKind::bare && proposal.bare_serves)) {
    finding.outcome = Outcome::meets;
    finding.next = "Nothing to do; the filter under it is judged by this kind.";
    return;
  }
  finding.outcome = stated.reason.empty() ? Outcome::ask_the_designer : Outcome::meets;
  finding.sentence += stated.reason.empty()
                          ? std::string(" It gives no reason against what is usual.")
                          : " The designer's reason stands against it: " + stated.reason;
  finding.next = stated.reason.empty()
                     ? fmt::format("Change it to {} rock, or state the reason for {} rock.",
                                   rock_kind_word(*proposal.kind), word)
                     : "Nothing to do; the reason is on record.";
}

void propose(Finding& finding, const KindProposal& proposal) {
  finding.reasons = proposal.reasons;
  if (proposal.kind) {
    finding.sentence += fmt::format(" {} rock is usual there.", rock_kind_word(*proposal.kind));
    return;
  }
  finding.sentence += " What is usual there is not known yet.";
  finding.next = fmt::format("State {}.", listed(proposal.missing));
}

void state_levels(Finding& finding, const SlopeBand& band) {
  finding.steps.given("z₁", "elevation from which this part goes up", measure(band.bottom));
  finding.steps.given("z₂", "elevation at which it ends", measure(band.top));
  finding.values.push_back({"bottom", "z₁", "elevation from which this part goes up",
                            measure(band.bottom), LengthUse::ground});
  finding.values.push_back(
      {"top", "z₂", "elevation at which it ends", measure(band.top), LengthUse::ground});
}

Finding piece_finding(const Zone& zone, const KindPiece& piece, double rise_per_run,
                      const std::string& id, const Wording& wording) {
  const auto words = words_of(piece.band.water);
  Finding finding = begin_kind_finding(zone, id, words.where);
  state_levels(finding, piece.band);
  const auto conditions = conditions_of(zone);
  const auto proposal = propose_kind(piece.band.water, conditions, rise_per_run);
  finding.sentence = fmt::format("From {} to {}, {}:", wording.ground(piece.band.bottom),
                                 wording.ground(piece.band.top), words.where);
  propose(finding, proposal);
  if (piece.stated != nullptr) {
    judge(finding, *piece.stated, piece.band.water, conditions, proposal);
  } else {
    finding.sentence += " The zone states no kind that reaches here, or its level is not known.";
    finding.next = "State the kinds of rock up to the top of the zone.";
  }
  return finding;
}

/// One finding for a zone that states no kinds: what is usual, from the toe up.
Finding proposal_finding(const Zone& zone, const std::vector<SlopeBand>& bands, double rise_per_run,
                         const Wording& wording) {
  Finding finding = begin_kind_finding(zone, "kind." + zone.id, "");
  finding.sentence = "The zone states no kind of rock.";
  finding.next = "State the kinds of the zone: bare, soil-filled or void-filled, and up to where.";
  std::vector<std::string> missing;
  for (const SlopeBand& band : bands) {
    const auto proposal = propose_kind(band.water, conditions_of(zone), rise_per_run);
    const auto words = words_of(band.water);
    finding.steps.given("z", std::string("elevation up to which it is as said, ") + words.where,
                        measure(band.top));
    missing.insert(missing.end(), proposal.missing.begin(), proposal.missing.end());
    if (!proposal.kind) continue;
    finding.sentence +=
        with_capital(fmt::format("{} rock is usual up to {}, {}.", rock_kind_word(*proposal.kind),
                                 wording.ground(band.top), words.where))
            .insert(0, " ");
    for (const auto& reason : proposal.reasons) {
      if (std::find(finding.reasons.begin(), finding.reasons.end(), reason) ==
          finding.reasons.end()) {
        finding.reasons.push_back(reason);
      }
    }
  }
  std::sort(missing.begin(), missing.end());
  missing.erase(std::unique(missing.begin(), missing.end()), missing.end());
  if (!missing.empty()) finding.next += fmt::format(" To decide, give {}.", listed(missing));
  return finding;
}

/// A bed is one part: what its water is decides.
WaterPresence water_on_bed(const Zone& zone, const std::vector<ZoneWater>& waters) {
  if (zone.cover && zone.cover->stream == StreamWater::dry_swale) return WaterPresence::rarely;
  if (highest_level(waters, FlowPurpose::base)) return WaterPresence::always;
  return highest_level(waters, FlowPurpose::frequent) ? WaterPresence::often
                                                      : WaterPresence::unknown;
}

Finding flat_finding(const Zone& zone, WaterPresence water) {
  const auto words = words_of(water);
  Finding finding = begin_kind_finding(zone, "kind." + zone.id, "");
  const auto conditions = conditions_of(zone);
  const auto proposal = propose_kind(water, conditions);
  finding.sentence = fmt::format("On the bed, {}:", words.where);
  propose(finding, proposal);
  if (zone.kinds.empty()) {
    finding.sentence += " The zone states no kind of rock.";
    finding.next = "State the kind of the zone: bare, soil-filled or void-filled.";
    return finding;
  }
  judge(finding, zone.kinds.front(), water, conditions, proposal);
  if (zone.kinds.size() > 1) {
    finding.reasons.emplace_back("A bed has one kind of rock; the others stated are not judged.");
  }
  return finding;
}

Finding elsewhere_finding(const Zone& zone) {
  Finding finding = begin_kind_finding(zone, "kind." + zone.id, "");
  finding.outcome = Outcome::ask_the_designer;
  std::vector<std::string> words;
  for (const auto& one : zone.kinds) words.emplace_back(rock_kind_word(one.kind));
  finding.sentence = fmt::format(
      "The zone states {} rock. What suits is proposed for banks and beds with a section only.",
      listed(words));
  finding.next = "See with the designer that water and waves leave the fill in the voids.";
  return finding;
}

/// Kinds that are stated to end below where they begin, and so lie nowhere.
std::vector<Finding> misplaced_findings(const Zone& zone, const std::vector<StatedKind>& kinds,
                                        const Wording& wording) {
  std::vector<Finding> findings;
  for (std::size_t i = 0; i < kinds.size(); ++i) {
    const auto& kind = kinds[i];
    if (!kind.top || !(*kind.top < kind.bottom)) continue;
    auto finding =
        begin_kind_finding(zone, fmt::format("kind.{}.misplaced.{}", zone.id, i + 1), "");
    finding.outcome = Outcome::ask_the_designer;
    finding.sentence = fmt::format(
        "{} rock is stated up to {}, below {} where the kind before it ends: it lies nowhere.",
        with_capital(std::string(rock_kind_word(kind.stated->kind))), wording.ground(*kind.top),
        wording.ground(kind.bottom));
    finding.next = "State the kinds from the toe up, each to a level above the one before it.";
    finding.steps.given("z", "elevation at which the kind before it ends", measure(kind.bottom));
    findings.push_back(std::move(finding));
  }
  return findings;
}

std::vector<Finding> slope_findings(const Zone& zone, const ZoneSlope& slope,
                                    const std::vector<ZoneWater>& waters, const Wording& wording) {
  std::vector<Finding> findings;
  const auto bands = slope_bands(slope.toe_elevation, slope.top_elevation, waters);
  const double rise_per_run = std::tan(slope.angle.radians());
  if (zone.kinds.empty()) return {proposal_finding(zone, bands, rise_per_run, wording)};
  const auto kinds = stated_kinds(zone, slope.toe_elevation, slope.top_elevation, waters);
  findings = misplaced_findings(zone, kinds, wording);
  for (const SlopeBand& band : bands) {
    const auto pieces = pieces_of(band, kinds);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
      std::string id = fmt::format("kind.{}.{}", zone.id, words_of(band.water).id);
      if (i > 0) id += fmt::format(".{}", i + 1);
      findings.push_back(piece_finding(zone, pieces[i], rise_per_run, id, wording));
    }
  }
  return findings;
}

}  // namespace

std::vector<Finding> kind_findings(const Zone& zone, const SiteSection* section,
                                   const std::vector<ZoneWater>& waters, const Wording& wording) {
  if (section != nullptr && zone.place == ZonePlace::bed) {
    return {flat_finding(zone, water_on_bed(zone, waters))};
  }
  if (section != nullptr && zone.place == ZonePlace::bank) {
    const auto slope = slope_of_zone(zone, *section);
    if (!slope) return {};
    return slope_findings(zone, *slope, waters, wording);
  }
  if (zone.kinds.empty()) return {};
  return {elsewhere_finding(zone)};
}

}  // namespace proofstone
