#include "engine/site/handling_remedies.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/evidence/scalped_evidence.h"
#include "engine/finding/outcome_order.h"
#include "engine/rock/size_and_mass.h"
#include "engine/site/remedy_order.h"

namespace proofstone {
namespace {

/// Rock as it comes from the quarry in place of a graded class takes so many times the layer.
constexpr double least_thicker = 1.5;
constexpr double most_thicker = 2;

Source thicker_layer_source() {
  return {"USACE, The Streambank Erosion Control Evaluation and Demonstration Act, Appendix A",
          "paragraph A.2.4(3): quarry-run stone at 1.5 to 2 times the thickness",
          SourceStanding::published};
}

Finding begin_finding(const LotEvidence& evidence, const char* what, std::string title) {
  Finding finding;
  finding.topic = Topic::remedy;
  finding.about.lot = evidence.lot->id;
  finding.id = fmt::format("remedy.{}.{}", evidence.lot->id, what);
  finding.title = std::move(title);
  return finding;
}

/// The size above which stones are too many or too large: the least of the class's limits for the
/// largest stone and of the layers, where a stone that is larger was measured.
std::optional<Length> where_to_scalp(const LotEvidence& evidence,
                                     const std::vector<const RockInZone*>& zones) {
  const auto& measured = *evidence.together;
  const Length largest = measured.curve.points().back().size;
  std::optional<Length> at;
  const auto consider = [&](Length size) {
    if (size < largest && (!at || size < *at)) at = size;
  };
  const auto& band = evidence.ordered->band;
  for (const auto& condition : band.conditions()) {
    const bool of_largest =
        condition.sense == BandCondition::Sense::at_least && condition.percent >= 100;
    if (!of_largest) continue;
    consider(convert_size(condition.size, band.basis().size, measured.curve.basis().size));
  }
  for (const auto* zone : zones) consider(zone->zone->layer_thickness);
  return at;
}

/// Whether the rock holds in every zone once it is scalped; the margin of the hardest.
void judge_in_zones(Finding& finding, const Site& site, const MeasuredGradation& scalped,
                    const std::vector<const RockInZone*>& zones, Outcome& outcome) {
  SizeMargins margins(scalped, site.evidence.risks());
  for (const auto* zone : zones) {
    for (const auto& one : zone->margins) {
      if (!counts(*zone->zone, *one.asked)) continue;
      const auto margin = margins.at(one.required.percent_smaller, one.required.size);
      if (!margin) continue;
      if (weight(margin->outcome) > weight(outcome)) outcome = margin->outcome;
      if (margin->margin && (!finding.margin || *margin->margin < finding.margin->value)) {
        finding.margin = Margin{*margin->margin, margin->low, margin->high};
        finding.confidence = margin->confidence_holds;
      }
    }
  }
}

std::optional<Finding> scalp(const Site& site, const LotEvidence& evidence,
                             const std::vector<const RockInZone*>& zones, const Wording& wording) {
  const auto at = where_to_scalp(evidence, zones);
  if (!at) return std::nullopt;
  const auto scalped = scalped_evidence(*evidence.together, *at);
  if (!scalped) return std::nullopt;
  const auto comparison =
      compare_with_band(scalped->measured, evidence.ordered->band, site.evidence.risks());
  if (!comparison) return std::nullopt;
  auto finding = begin_finding(evidence, "scalp", fmt::format("Scalp above {}", wording.rock(*at)));
  finding.outcome = comparison->outcome;
  judge_in_zones(finding, site, scalped->measured, zones, finding.outcome);
  finding.steps = scalped->measured.steps;
  finding.steps.append(comparison->steps);
  finding.values.push_back(
      {"scalp_at", "", "size above which stones are taken out", measure(*at), LengthUse::rock});
  finding.values.push_back(
      {"taken_out", "", "percent of the mass taken out", measure(100 * scalped->taken_out)});
  std::string lost = fmt::format("{:.1f} % of the mass", 100 * scalped->taken_out);
  if (const auto mass = mass_of_lot(site, *evidence.lot)) {
    const Mass out = scalped->taken_out * *mass;
    finding.values.push_back({"mass_out", "M", "mass taken out", measure(out)});
    lost += ", " + wording.of(out);
    if (evidence.lot->price_per_tonne) {
      put_remedy_cost(finding, out.tonnes() * *evidence.lot->price_per_tonne);
    }
  }
  finding.sentence = fmt::format(
      "Stones above {} are too large for the class or the layer. Without them ({}) the rock {} "
      "{}{}.",
      wording.rock(*at), lost,
      comparison->inside_by_estimate ? "lies by estimate inside" : "still lies outside",
      evidence.ordered->name,
      finding.outcome == Outcome::meets ? ", shown at the stated risks" : "");
  finding.next =
      "Pick them out with the bucket or over a grizzly; use them at the toe or as "
      "single boulders.";
  finding.sources.push_back(
      {"Mass balance of a gradation", "P' = 100·P/P_s", SourceStanding::computed});
  return finding;
}

/// Rock that is no longer the graded class can lie thicker where its sizes still hold.
std::optional<Finding> thicken(const LotEvidence& evidence,
                               const std::vector<const RockInZone*>& zones,
                               const Wording& wording) {
  const bool misses = evidence.comparison && evidence.comparison->outcome == Outcome::falls_short;
  const Length largest = evidence.together->curve.points().back().size;
  Outcome sizes = Outcome::meets;
  std::vector<std::string> words;
  auto finding = begin_finding(evidence, "thicken", "Thicken the layer");
  for (const auto* zone : zones) {
    const Length drawn = zone->zone->layer_thickness;
    if (!misses && !(largest > drawn)) continue;
    if (weight(zone->outcome) > weight(sizes)) sizes = zone->outcome;
    const Length least = std::max(least_thicker * drawn, largest);
    const Length most = std::max(most_thicker * drawn, largest);
    finding.steps.given_rock("T", "thickness drawn", drawn, "document");
    finding.steps.computed_rock("T'", "thickness to lay, least", "max(1.5·T, largest stone)", least,
                                thicker_layer_source().sentence());
    words.push_back(fmt::format("{} to {} instead of {} in {}, {:.0f} to {:.0f} % more rock",
                                wording.rock(least), wording.rock(most), wording.rock(drawn),
                                zone->zone->name, 100 * (least / drawn - 1),
                                100 * (most / drawn - 1)));
    finding.values.push_back({"thickness." + zone->zone->id, "T'",
                              "least layer, " + zone->zone->name, measure(least), LengthUse::rock});
    if (zone->governing && zone->margins[*zone->governing].margin.margin) {
      const auto& margin = zone->margins[*zone->governing].margin;
      if (!finding.margin || *margin.margin < finding.margin->value) {
        finding.margin = Margin{*margin.margin, margin.low, margin.high};
        finding.confidence = margin.confidence_holds;
      }
    }
  }
  if (words.empty()) return std::nullopt;
  finding.outcome =
      sizes == Outcome::falls_short ? Outcome::falls_short : Outcome::ask_the_designer;
  finding.sentence =
      sizes == Outcome::falls_short
          ? "A thicker layer does not help where the stones are too small for the water."
          : fmt::format("Laid as quarry-run rock, not as {}: {}.", evidence.ordered->name,
                        listed(words));
  finding.next = sizes == Outcome::falls_short
                     ? "Take another remedy."
                     : "The designer decides: the sizes hold by the margin above, the gradation is "
                       "not the one ordered, and the filter must suit it.";
  finding.sources.push_back(thicker_layer_source());
  finding.cautions.push_back(
      "Thicker rock narrows the waterway and takes a deeper subgrade; check both.");
  return finding;
}

}  // namespace

std::vector<Finding> handling_remedies(const Site& site, const LotEvidence& evidence,
                                       const std::vector<const RockInZone*>& zones,
                                       const Wording& wording) {
  std::vector<Finding> remedies;
  if (auto one = scalp(site, evidence, zones, wording)) remedies.push_back(std::move(*one));
  if (auto one = thicken(evidence, zones, wording)) remedies.push_back(std::move(*one));
  return remedies;
}

}  // namespace proofstone
