#include "engine/site/remedies.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/site/handling_remedies.h"
#include "engine/site/judged_blend.h"
#include "engine/site/remedy_order.h"
#include "engine/site/several_blend.h"

namespace proofstone {
namespace {

Finding begin_remedy(const LotEvidence& evidence, const std::string& what, std::string title) {
  Finding finding;
  finding.topic = Topic::remedy;
  finding.about.lot = evidence.lot->id;
  finding.id = fmt::format("remedy.{}.{}", evidence.lot->id, what);
  finding.title = std::move(title);
  return finding;
}

/// The zone that leaves the measured rock least margin, with what it asks for.
const MeasuredMargin* hardest(const std::vector<const RockInZone*>& zones) {
  const MeasuredMargin* worst = nullptr;
  for (const auto* zone : zones) {
    if (!zone->governing) continue;
    const auto& governing = zone->margins[*zone->governing];
    if (worst == nullptr ||
        governing.margin.margin.value_or(0) < worst->margin.margin.value_or(0)) {
      worst = &governing;
    }
  }
  return worst;
}

std::string loads(int number) { return number == 1 ? "1 load" : fmt::format("{} loads", number); }

/// The blend with least of the other material that is shown to serve; failing that, the one with
/// least of it that serves by estimate.
JudgedBlend choose_blend(const LotEvidence& evidence, const std::vector<BlendOption>& options,
                         const RequiredSize& required, const DecisionRisks& risks) {
  for (const auto& option : options) {
    if (!option.holds()) break;
    auto judged = judge_blend(evidence, option, required, risks);
    if (judged.is_shown()) return judged;
  }
  return judge_blend(evidence, options.front(), required, risks);
}

void state_blend(Finding& finding, const JudgedBlend& blend, const Material& material,
                 const Site& site, const LotEvidence& evidence) {
  const auto& option = *blend.option;
  finding.values.push_back({"loads_of_other", "", "loads of " + material.name,
                            measure(static_cast<double>(option.loads_of_other)),
                            LengthUse::ground});
  state_cost(finding, material, option);
  if (const auto mass = mass_of_lot(site, *evidence.lot)) {
    const double ratio = static_cast<double>(option.loads_of_other) / option.loads_of_this_rock;
    const Mass added = ratio * *mass;
    finding.values.push_back({"mass_added", "M", "mass of it for the whole lot", measure(added)});
    if (material.state.price_per_tonne) {
      put_remedy_cost(finding, added.tonnes() * *material.state.price_per_tonne);
    }
  }
  finding.values.push_back({"loads_of_this", "", "loads of " + evidence.lot->name,
                            measure(static_cast<double>(option.loads_of_this_rock)),
                            LengthUse::ground});
  state_judged(finding, blend);
}

void word_blend(Finding& finding, const JudgedBlend& blend, const Material& material,
                const LotEvidence& evidence, const MeasuredMargin& asks, const Wording& wording) {
  const auto& option = *blend.option;
  const bool shown = blend.is_shown();
  finding.outcome = shown ? Outcome::meets : Outcome::not_yet_known;
  finding.sentence = fmt::format(
      "Mix {} of {} into every {} of {}. {} the blend keeps every limit of {} and leaves {} a "
      "margin of {} in the zone.",
      loads(option.loads_of_other), material.name, loads(option.loads_of_this_rock),
      evidence.lot->name,
      shown ? fmt::format("At {} confidence", confidence_text(blend.comparison->risks.to_accept()))
            : "By estimate",
      evidence.ordered->name, asks.asked->method->description().title,
      margin_text(option.margin.value_or(0)));
  finding.next = fmt::format(
      "Spread and mix before loading out, then count 100 stones of the blend on a grid: no more "
      "than {} % should be smaller than {}.",
      percent_number(asks.required.percent_smaller), wording.rock(asks.required.size));
}

Finding blend_finding(const Site& site, const LotEvidence& evidence, const Material& material,
                      const MeasuredMargin& asks, const Wording& wording) {
  auto finding =
      begin_remedy(evidence, "blend." + material.id, fmt::format("Blend with {}", material.name));
  finding.sources.push_back({"Mass balance of two gradations", "weighted mean of percents smaller",
                             SourceStanding::computed});
  finding.cautions.push_back(
      "The other material is taken from its supplier's certificate as exact; the mixed pile must "
      "be "
      "measured before it is used.");
  const auto options =
      two_pile_blends(evidence.together->curve, material.gradation, &evidence.ordered->band,
                      asks.required.percent_smaller, asks.required.size, most_loads_in_a_round);
  if (!options) {
    finding.steps = asks.margin.steps;
    finding.outcome = Outcome::falls_short;
    finding.sentence = fmt::format("No mix of up to {} loads with {} serves.",
                                   most_loads_in_a_round, material.name);
    for (const auto& problem : options.problems()) finding.reasons.push_back(problem.sentence());
    finding.next = "Look for a material that has the missing sizes.";
    return finding;
  }
  const auto blend = choose_blend(evidence, *options, asks.required, site.evidence.risks());
  state_blend(finding, blend, material, site, evidence);
  word_blend(finding, blend, material, evidence, asks, wording);
  return finding;
}

/// Photos leave errors that more of them do not reduce; stones that are counted have none of these.
std::optional<Finding> count_after_photos_finding(const LotEvidence& evidence) {
  if (!evidence.comparison || !evidence.comparison->counted_stones_to_decide) return std::nullopt;
  const int stones = *evidence.comparison->counted_stones_to_decide;
  auto finding = begin_remedy(evidence, "measure-more", "Count stones");
  finding.outcome = Outcome::not_yet_known;
  finding.values.push_back(
      {"stones", "n", "stones to count", measure(static_cast<double>(stones)), LengthUse::ground});
  finding.steps.computed("n",
                         "stones counted on a grid that would decide, if they find the shares "
                         "of the photos",
                         "smallest n whose one-sided binomial limit clears the requirement",
                         measure(static_cast<double>(stones)));
  finding.sentence = fmt::format(
      "A count of about {} stones would decide whether it is {} by itself, if it finds the shares "
      "of the photos.",
      stones, evidence.ordered->name);
  finding.next = "Count them on a grid, spread over the whole pile and both its sides.";
  finding.sources.push_back(
      {"Clopper & Pearson, Biometrika, 1934", "limits of a proportion", SourceStanding::memory});
  return finding;
}

std::optional<Finding> more_stones_finding(const LotEvidence& evidence,
                                           const MeasuredMargin* asks) {
  if (evidence.together->photos > 0) return count_after_photos_finding(evidence);
  std::optional<int> wanted;
  std::string decides;
  if (asks != nullptr && asks->margin.stones_to_decide) {
    wanted = asks->margin.stones_to_decide;
    decides = "whether it holds in the zone";
  } else if (evidence.comparison && evidence.comparison->stones_to_decide) {
    wanted = evidence.comparison->stones_to_decide;
    decides = "whether it is " + evidence.ordered->name;
  }
  if (!wanted) return std::nullopt;
  auto finding = begin_remedy(evidence, "measure-more", "Measure more stones");
  const auto known = static_cast<int>(evidence.together->effective_stones);
  const int more = std::max(1, *wanted - known);
  finding.outcome = Outcome::not_yet_known;
  finding.values.push_back({"stones", "n", "more stones to count",
                            measure(static_cast<double>(more)), LengthUse::ground});
  finding.steps.given("n now", "stones' worth of evidence so far",
                      measure(evidence.together->effective_stones), "all looks together");
  finding.steps.computed("n", "stones that would decide, if the shares stay",
                         "smallest n whose one-sided binomial limit clears the requirement",
                         measure(static_cast<double>(*wanted)));
  finding.sentence = fmt::format(
      "About {} more stones would decide {}, if the shares stay as they are.", more, decides);
  finding.next = "Count them on a grid, spread over the whole pile and both its sides.";
  finding.sources.push_back(
      {"Clopper & Pearson, Biometrika, 1934", "limits of a proportion", SourceStanding::memory});
  return finding;
}

/// The largest other class of the family that the rock is shown to meet, or at least stays inside
/// by estimate.
std::optional<Finding> other_class_finding(const Site& site, const LotEvidence& evidence) {
  const RockClass* best = nullptr;
  BandComparison best_comparison;
  for (const auto& known : class_catalog()) {
    if (known.family != evidence.ordered->family || known.id == evidence.ordered->id) continue;
    auto comparison = compare_with_band(*evidence.together, known.band, site.evidence.risks());
    if (!comparison || comparison->outcome == Outcome::falls_short ||
        !comparison->inside_by_estimate) {
      continue;
    }
    if (best == nullptr || known.nominal_d50 > best->nominal_d50) {
      best = &known;
      best_comparison = std::move(*comparison);
    }
  }
  if (best == nullptr) return std::nullopt;
  auto finding = begin_remedy(evidence, "as-" + best->id, fmt::format("Use it as {}", best->name));
  finding.about.rock_class = best->id;
  finding.outcome = best_comparison.outcome;
  finding.steps = best_comparison.steps;
  finding.sources.push_back(best->source);
  finding.sentence = fmt::format("By estimate this rock lies inside {} ({}).", best->name,
                                 outcome_phrase(best_comparison.outcome));
  finding.next = fmt::format("Place it where the design asks for no more than {}.", best->name);
  return finding;
}

/// Where the rock is shown to hold, and where it is not.
std::optional<Finding> some_zones_finding(const LotEvidence& evidence,
                                          const std::vector<const RockInZone*>& zones) {
  std::vector<std::string> here;
  std::vector<std::string> not_there;
  auto finding = begin_remedy(evidence, "zones", "Use it only where it holds");
  for (const auto* zone : zones) {
    (zone->outcome == Outcome::meets ? here : not_there).push_back(zone->zone->name);
    if (zone->outcome != Outcome::meets || !zone->governing) continue;
    const auto& margin = zone->margins[*zone->governing].margin;
    if (!margin.margin || (finding.margin && finding.margin->value <= *margin.margin)) continue;
    finding.margin = Margin{*margin.margin, margin.low, margin.high};
    finding.confidence = margin.confidence_holds;
  }
  if (here.empty() || not_there.empty()) return std::nullopt;
  finding.outcome = Outcome::meets;
  finding.sentence = fmt::format("The measured rock is shown to hold in {}; keep it out of {}.",
                                 listed(here), listed(not_there));
  finding.next = "Mark the pile with its zones; order other rock for the rest.";
  finding.sources.push_back({"Required size against the measured curve",
                             "one-sided binomial test of the share that is smaller",
                             SourceStanding::computed});
  return finding;
}

Finding return_finding(const Site& site, const LotEvidence& evidence) {
  auto finding = begin_remedy(evidence, "return", "Send it back");
  if (const auto mass = mass_of_lot(site, *evidence.lot)) {
    finding.values.push_back({"mass_back", "M", "mass that goes back", measure(*mass)});
  }
  finding.outcome = Outcome::ask_the_designer;
  finding.sentence =
      fmt::format("If no remedy serves, {} is not the rock that was ordered and goes back.",
                  evidence.lot->name);
  finding.next = "Decide with the designer and the supplier; keep the evidence.";
  finding.sources.push_back({"Order of remedies", "", SourceStanding::common_practice});
  return finding;
}

}  // namespace

std::vector<Finding> remedies_for(const Site& site, const LotEvidence& evidence,
                                  const std::vector<const RockInZone*>& zones,
                                  const Wording& wording) {
  std::vector<Finding> remedies;
  if (!evidence.together) return remedies;
  const bool class_met = evidence.comparison && evidence.comparison->outcome == Outcome::meets;
  const bool zones_met = std::all_of(zones.begin(), zones.end(), [](const RockInZone* zone) {
    return zone->outcome == Outcome::meets;
  });
  if (class_met && zones_met) return remedies;
  const auto* asks = hardest(zones);
  if (auto more = more_stones_finding(evidence, asks)) remedies.push_back(std::move(*more));
  if (auto some = some_zones_finding(evidence, zones)) remedies.push_back(std::move(*some));
  auto handling = handling_remedies(site, evidence, zones, wording);
  std::move(handling.begin(), handling.end(), std::back_inserter(remedies));
  if (asks != nullptr) {
    std::vector<Finding> blends;
    for (const auto& [id, material] : site.materials) {
      if (is_rock(material)) {
        blends.push_back(blend_finding(site, evidence, material, *asks, wording));
      }
    }
    if (auto several = several_blend(site, evidence, *asks, wording)) {
      blends.push_back(std::move(*several));
    }
    rank_by_cost(blends);
    std::move(blends.begin(), blends.end(), std::back_inserter(remedies));
  }
  if (auto other = other_class_finding(site, evidence)) remedies.push_back(std::move(*other));
  const bool broken =
      (evidence.comparison && evidence.comparison->outcome == Outcome::falls_short) ||
      std::any_of(zones.begin(), zones.end(),
                  [](const RockInZone* zone) { return zone->outcome == Outcome::falls_short; });
  if (broken) remedies.push_back(return_finding(site, evidence));
  rank_remedies(remedies);
  return remedies;
}

}  // namespace proofstone
