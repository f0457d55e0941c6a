#include "engine/site/mix_stability.h"

#include <fmt/format.h>

#include "engine/quantity/measure.h"
#include "engine/site/filter_chain.h"

namespace proofstone {
namespace {

/// The criteria look at the fine end: a curve that stops above it shows nothing good.
constexpr double fine_end = 5;  // percent

/// What the mix does over the soil of the zone, and what that changes.
void take_soil(const std::optional<PairVerdict>& pair, Finding& finding) {
  if (!pair) {
    finding.reasons.push_back(
        "Whether the mix keeps the ground below is not known: the zone states no soil.");
    return;
  }
  finding.sentence += " " + pair->sentence;
  finding.steps.append(pair->steps);
  finding.sources.insert(finding.sources.end(), pair->sources.begin(), pair->sources.end());
  finding.reasons.insert(finding.reasons.end(), pair->reasons.begin(), pair->reasons.end());
  if (!is_worse(pair->outcome, finding.outcome)) return;
  finding.outcome = pair->outcome;
  finding.next = pair->next;
}

std::string what_next(Outcome outcome) {
  switch (outcome) {
    case Outcome::meets:
      return "No bedding is needed for the sake of the mix; see that no pocket of open rock is "
             "left.";
    case Outcome::falls_short:
      return "Add the sizes that are missing between rock and fill, or put bedding or a fabric "
             "under the layer and cover its face.";
    case Outcome::ask_the_designer:
      return "The criteria do not agree: judge by what water runs through the layer, and cover it.";
    case Outcome::not_yet_known:
      break;
  }
  return "Give the gradations of rock and fill down to their fine ends.";
}

}  // namespace

MixAsFilter mix_as_filter(const Site& site, const Zone& zone, const std::string& name,
                          const Gradation& curve, const Wording& wording) {
  MixAsFilter filter;
  filter.stability = internal_stability(curve.points(), filter.steps);
  filter.stability_outcome = filter.stability.outcome;
  if (curve.points().front().percent_smaller > fine_end &&
      filter.stability_outcome == Outcome::meets) {
    filter.stability_outcome = Outcome::not_yet_known;
  }
  if (const auto soil = soil_below(site, zone)) {
    filter.on_soil = judge_on_soil(*soil, LayerCurves(name, curve), filter_choices(zone), wording);
  }
  return filter;
}

std::optional<Finding> mix_stability(const Site& site, const Zone& zone,
                                     const PreparedMix& prepared, const MixBalance& balance,
                                     const Wording& wording) {
  const auto curve = mix_curve(prepared.mix, balance);
  if (!curve) return std::nullopt;
  Finding finding;
  finding.topic = Topic::mix;
  finding.about.zone = zone.id;
  finding.id = "mix-stability." + zone.id;
  finding.title = fmt::format("{} as its own filter in {}", prepared.site_mix->name, zone.name);
  const auto filter = mix_as_filter(site, zone, prepared.site_mix->name, *curve, wording);
  finding.steps = filter.steps;
  finding.outcome = filter.stability_outcome;
  finding.sentence = filter.stability.sentence;
  finding.next = what_next(finding.outcome);
  if (filter.stability_outcome != filter.stability.outcome) {
    finding.sentence = fmt::format(
        "Whether the mix holds its own fine grains is not known: the class limits the rock only "
        "down "
        "to a size of which {} % of the mix is smaller.",
        significant(curve->points().front().percent_smaller, 2));
  }
  for (const auto& verdict : filter.stability.verdicts) finding.reasons.push_back(verdict.sentence);
  finding.sources.push_back({"volume balance of rock, voids and fill",
                             "curve of the mix by the volume of its solids",
                             SourceStanding::computed});
  take_soil(filter.on_soil, finding);
  finding.cautions.push_back(
      "Criteria were made for soils: in filled rock the fill can wash out of the face until plants "
      "or a cover hold it.");
  return finding;
}

}  // namespace proofstone
