#include "engine/site/rock_in_zone.h"

#include <fmt/format.h>

#include "engine/site/margin_notes.h"

namespace proofstone {
namespace {

std::string symbol_of(const RequiredSize& required) {
  return "D" + percent_number(required.percent_smaller);
}

Finding begin_finding(const Zone& zone, const LotEvidence& evidence) {
  Finding finding;
  finding.topic = Topic::rock_in_zone;
  finding.about.zone = zone.id;
  finding.about.lot = evidence.lot->id;
  finding.sources.push_back({"Required size against the measured curve",
                             "one-sided binomial test of the share that is smaller",
                             SourceStanding::computed});
  return finding;
}

void word_margin(Finding& finding, const MeasuredMargin& measured, double confidence,
                 const Wording& wording) {
  const auto symbol = symbol_of(measured.required);
  const auto& margin = measured.margin;
  finding.outcome = margin.outcome;
  finding.confidence = margin.confidence_holds;
  if (margin.margin) {
    finding.margin = Margin{*margin.margin, margin.low, margin.high};
    const Length size = *margin.margin * measured.required.size;
    finding.values.push_back(
        {"measured_size", symbol, "measured size", measure(size), LengthUse::rock});
    finding.sentence =
        fmt::format("Measured {} {} against {} needed: margin {}; it holds with {} confidence.",
                    symbol, wording.rock(size), wording.rock(measured.required.size),
                    margin_text(*margin.margin), confidence_text(margin.confidence_holds));
  } else {
    finding.sentence = fmt::format(
        "The measured curve does not reach down to {}; {} is needed. It holds with {} confidence.",
        symbol, wording.rock(measured.required.size), confidence_text(margin.confidence_holds));
  }
  finding.values.push_back({"required_size", symbol, "size needed with this rock's own density",
                            measure(measured.required.size), LengthUse::rock});
  switch (margin.outcome) {
    case Outcome::meets:
      finding.next = "Nothing to do.";
      break;
    case Outcome::falls_short:
      finding.next = "See the remedies.";
      break;
    default:
      finding.next =
          margin.stones_to_decide
              ? fmt::format("About {} stones in all would decide at {} confidence.",
                            *margin.stones_to_decide, confidence_text(confidence))
              : "More stones will hardly decide: the rock lies on the limit. See the remedies.";
  }
}

Finding method_finding(const Site& site, const Zone& zone, const LotEvidence& evidence,
                       const MeasuredMargin& measured, const SizingAnswer& answer,
                       const std::optional<DensityScatter>& scatter, const Wording& wording) {
  const auto& about = measured.asked->method->description();
  const auto& flow_case = *measured.asked->water->flow_case;
  auto finding = begin_finding(zone, evidence);
  finding.about.method = about.id;
  finding.about.flow_case = flow_case.id;
  finding.id =
      fmt::format("rock-in-zone.{}.{}.{}.{}", zone.id, evidence.lot->id, flow_case.id, about.id);
  finding.title = fmt::format("{} with the measured rock", about.title);
  finding.sources.insert(finding.sources.begin(), about.sources.begin(), about.sources.end());
  finding.limits = about.limits;
  finding.limits_not_kept = answer.evaluation.limits_not_kept;
  finding.cautions = about.cautions;
  finding.steps = answer.evaluation.steps;
  finding.steps.append(measured.margin.steps);
  word_margin(finding, measured, site.evidence.confidence, wording);
  if (!finding.limits_not_kept.empty()) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next = "The zone stands outside this method's published range. Judge it by another.";
  } else if (answer.for_comparison && !counts(zone, *measured.asked)) {
    finding.reasons.push_back("Shown for comparison, it does not govern: " +
                              *answer.for_comparison);
    if (finding.outcome != Outcome::meets) {
      finding.outcome = Outcome::ask_the_designer;
      finding.next = "Settle the inputs that this method takes by default, or judge by another.";
    }
  }
  note_thickness(finding, site, zone, measured, wording);
  if (scatter) note_density(finding, site.sources.at(evidence.lot->source), measured, *scatter);
  return finding;
}

/// All methods that count must hold.
Outcome bring_together(const Zone& zone, const std::vector<MeasuredMargin>& margins) {
  bool any = false;
  bool all_meet = true;
  for (const auto& measured : margins) {
    if (!counts(zone, *measured.asked)) continue;
    any = true;
    if (measured.margin.outcome == Outcome::falls_short) return Outcome::falls_short;
    if (measured.margin.outcome != Outcome::meets) all_meet = false;
  }
  if (!any) return Outcome::ask_the_designer;
  return all_meet ? Outcome::meets : Outcome::not_yet_known;
}

/// Why a method is shown but does not decide; empty when it does.
std::string why_it_does_not_count(const Zone& zone, const SizeAsked& asked) {
  if (counts(zone, asked)) return {};
  if (!asked.within_limits) return " Shown only: the zone stands outside its published range.";
  switch (zone.policy) {
    case GoverningPolicy::envelope:
      return " Shown for comparison: some of its inputs are defaults, not known of the zone.";
    case GoverningPolicy::chosen:
      return " Shown only: another method was chosen to govern.";
    case GoverningPolicy::weighted:
      break;
  }
  return " Shown only: it has no weight.";
}

void list_methods(Finding& finding, const RockInZone& result) {
  for (const auto& measured : result.margins) {
    const auto& margin = measured.margin;
    const auto aside = why_it_does_not_count(*result.zone, *measured.asked);
    finding.reasons.push_back(fmt::format(
        "{}: {}{}{} confidence that it holds.{}", measured.asked->method->description().title,
        aside.empty() ? std::string(outcome_phrase(margin.outcome)) + ", " : std::string(),
        margin.margin ? "margin " + margin_text(*margin.margin) + ", " : std::string(),
        confidence_text(margin.confidence_holds), aside));
  }
}

Finding zone_finding(const RockInZone& result, const LotEvidence& evidence) {
  const auto& zone = *result.zone;
  auto finding = begin_finding(zone, evidence);
  finding.id = fmt::format("rock-in-zone.{}.{}", zone.id, evidence.lot->id);
  finding.title = fmt::format("{} in {}", evidence.lot->name, zone.name);
  finding.governs = true;
  finding.outcome = result.outcome;
  finding.cautions.push_back(
      "The design of the zone must be the designer's own before rock of another gradation is "
      "placed in it.");
  list_methods(finding, result);
  if (zone.policy == GoverningPolicy::weighted) {
    finding.reasons.push_back(
        "Measured rock is judged by every method that has a weight, not by their mean.");
  }
  if (!result.governing) {
    finding.sentence = "No method speaks for this zone within its published range.";
    finding.next = "Ask the designer.";
    return finding;
  }
  const auto& governing = result.margins[*result.governing];
  finding.about.method = governing.asked->method->description().id;
  finding.about.flow_case = governing.asked->water->flow_case->id;
  finding.confidence = governing.margin.confidence_holds;
  finding.steps.given_rock(symbol_of(governing.required), "size that the governing method asks for",
                           governing.required.size, governing.asked->method->description().title);
  finding.steps.append(governing.margin.steps);
  if (governing.margin.margin) {
    finding.margin = Margin{*governing.margin.margin, governing.margin.low, governing.margin.high};
  }
  const auto& title = governing.asked->method->description().title;
  const auto sure = confidence_text(governing.margin.confidence_holds);
  switch (result.outcome) {
    case Outcome::meets:
      finding.sentence = fmt::format(
          "The measured rock holds in {} by every method that counts; least by {}, with {} "
          "confidence.",
          zone.name, title, sure);
      finding.next = "It may serve here if the designer agrees; note it in the record.";
      break;
    case Outcome::falls_short:
      finding.sentence =
          fmt::format("The measured rock is too small for {} by {}: it holds with {} confidence.",
                      zone.name, title, sure);
      finding.next = "Do not place it here. See the remedies.";
      break;
    default:
      finding.sentence = fmt::format(
          "Whether the measured rock holds in {} is not yet known: by {} it holds with {} "
          "confidence.",
          zone.name, title, sure);
      finding.next = governing.margin.stones_to_decide
                         ? fmt::format("Measure until about {} stones in all, or see the remedies.",
                                       *governing.margin.stones_to_decide)
                         : "See the remedies.";
  }
  return finding;
}

Finding largest_stone_finding(const Zone& zone, const LotEvidence& evidence, const Length& largest,
                              const Wording& wording) {
  auto finding = begin_finding(zone, evidence);
  finding.topic = Topic::layer;
  finding.id = fmt::format("largest-stone.{}.{}", zone.id, evidence.lot->id);
  finding.title = "Largest stone against the layer";
  const double margin = zone.layer_thickness / largest;
  finding.margin = Margin{margin, std::nullopt, std::nullopt};
  finding.outcome = margin >= 1 - 1e-9 ? Outcome::meets : Outcome::falls_short;
  finding.steps.given_rock("T", "specified thickness", zone.layer_thickness, "document");
  finding.steps.given_rock("D max", "size that no measured stone exceeds", largest, "measured");
  finding.steps.computed("margin", "layer over largest stone", "T / D max", measure(margin));
  finding.sources.push_back({"USACE EM 1110-2-1601, 1994",
                             "paragraph 3-2h: thickness not less than the largest stone",
                             SourceStanding::memory});
  finding.sentence = fmt::format("No stone larger than {} was seen; the layer is {} thick.",
                                 wording.rock(largest), wording.rock(zone.layer_thickness));
  finding.next = finding.outcome == Outcome::meets
                     ? "Keep looking: a larger one may lie unseen in the pile."
                     : "Pick out stones larger than the layer; they leave gaps round them.";
  return finding;
}

}  // namespace

RockInZone rock_in_zone(const Site& site, const ZoneSizing& sizing, const LotEvidence& evidence,
                        const Wording& wording) {
  RockInZone result;
  result.zone = sizing.zone;
  if (!evidence.together) {
    auto finding = begin_finding(*sizing.zone, evidence);
    finding.id = fmt::format("rock-in-zone.{}.{}", sizing.zone->id, evidence.lot->id);
    finding.title = fmt::format("{} in {}", evidence.lot->name, sizing.zone->name);
    finding.outcome = Outcome::not_yet_known;
    finding.sentence = "There is no measured curve of this lot to take through the design.";
    finding.next = "Measure the lot first.";
    result.findings.push_back(std::move(finding));
    return result;
  }
  double least = 0;
  SizeMargins margins(*evidence.together, site.evidence.risks());
  for (const auto& asked : sizing.asked) {
    ZoneSetting setting = *asked.water->setting;
    setting.rock = site.sources.at(evidence.lot->source).rock;
    auto answer = asked.method->size(setting);
    if (!answer.required) continue;
    // As the curve measures stones.
    answer.required->size = size_as(*answer.required, evidence.together->curve.basis().size);
    answer.required->by_mass = false;
    const auto scatter =
        density_scatter(site.sources.at(evidence.lot->source), setting, *asked.method,
                        answer.required->size, evidence.together->curve.basis().size);
    auto margin = margins.at(answer.required->percent_smaller, answer.required->size,
                             scatter ? scatter->log_errors : std::vector<double>{});
    if (!margin) continue;
    MeasuredMargin measured{&asked, *answer.required, std::move(*margin)};
    result.findings.push_back(
        method_finding(site, *sizing.zone, evidence, measured, answer, scatter, wording));
    // Without a margin the curve does not reach down to the percent: nothing could be worse.
    const double ratio = measured.margin.margin.value_or(0);
    if (counts(*sizing.zone, asked) && (!result.governing || ratio < least)) {
      result.governing = result.margins.size();
      least = ratio;
    }
    result.margins.push_back(std::move(measured));
  }
  result.outcome = bring_together(*sizing.zone, result.margins);
  result.findings.push_back(zone_finding(result, evidence));
  const auto& points = evidence.together->curve.points();
  result.findings.push_back(
      largest_stone_finding(*sizing.zone, evidence, points.back().size, wording));
  return result;
}

}  // namespace proofstone
