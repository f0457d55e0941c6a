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

/// Fills whose curves stop above their fine ends, with the place and the mend.
void name_open_curves(const PreparedMix& prepared, Finding& finding) {
  for (std::size_t i = 0; i < prepared.mix.fills.size(); ++i) {
    const auto& curve = prepared.mix.fills[i].gradation.points();
    if (!(curve.front().percent_smaller > fine_end)) continue;
    const auto* material = prepared.materials[i];
    finding.reasons.push_back(fmt::format(
        "{}: its curve ends at {} mm with {} % smaller. Wash it over the No. 200 sieve, test what "
        "passes by hydrometer, and add those sizes{}.",
        prepared.mix.fills[i].name, significant(curve.front().size.millimeters(), 3),
        significant(curve.front().percent_smaller, 3),
        material == nullptr ? std::string()
                            : fmt::format(" (at /materials/{}/gradation)", material->id)));
  }
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

std::optional<MixAsFilter> mix_as_filter(const Site& site, const Zone& zone,
                                         const std::string& name, const FilledMix& mix,
                                         const MixBalance& balance, const Wording& wording) {
  const auto curve = mix_curve(mix, balance);
  if (!curve) return std::nullopt;
  MixAsFilter filter;
  filter.from_percent = curve->points().front().percent_smaller;
  filter.stability = internal_stability(curve->points(), filter.steps);
  auto& outcome = filter.stability_outcome;
  outcome = filter.stability.outcome;
  if (filter.from_percent > fine_end && outcome == Outcome::meets) {
    outcome = Outcome::not_yet_known;
  }
  if (rock_is_open_below(mix) && outcome == Outcome::falls_short) {
    outcome = Outcome::ask_the_designer;
  }
  if (const auto soil = soil_below(site, zone)) {
    filter.on_soil = judge_on_soil(*soil, LayerCurves(name, *curve), filter_choices(zone), wording);
  }
  return filter;
}

std::optional<Finding> mix_stability(const Site& site, const Zone& zone,
                                     const PreparedMix& prepared, const MixBalance& balance,
                                     const Wording& wording) {
  const auto filter =
      mix_as_filter(site, zone, prepared.site_mix->name, prepared.mix, balance, wording);
  if (!filter) return std::nullopt;
  Finding finding;
  finding.topic = Topic::mix;
  finding.about.zone = zone.id;
  finding.id = "mix-stability." + zone.id;
  finding.title = fmt::format("{} as its own filter in {}", prepared.site_mix->name, zone.name);
  finding.steps = filter->steps;
  finding.outcome = filter->stability_outcome;
  finding.sentence = filter->stability.sentence;
  finding.next = what_next(finding.outcome);
  if (finding.outcome == Outcome::not_yet_known && filter->from_percent > fine_end) {
    finding.sentence = fmt::format(
        "Whether the mix holds its own fine grains is not known: the curves stop where {} % of it "
        "is smaller.",
        significant(filter->from_percent, 2));
  }
  if (rock_is_open_below(prepared.mix)) {
    finding.reasons.push_back(
        "The class does not limit the stones below its smallest stated size: the rock is taken to "
        "end at half of that, which leaves the widest gap to the fill. Smaller stones among it "
        "make the mix hold its fill the better.");
    if (filter->stability.outcome == Outcome::falls_short) {
      finding.next =
          "Have the rock sieved below its smallest stated size, or offer sizes between rock and "
          "fill; cover the face of the layer until plants hold the fill.";
    }
  }
  name_open_curves(prepared, finding);
  for (const auto& verdict : filter->stability.verdicts)
    finding.reasons.push_back(verdict.sentence);
  finding.sources.push_back({"volume balance of rock, voids and fill",
                             "curve of the mix by the volume of its solids",
                             SourceStanding::computed});
  take_soil(filter->on_soil, finding);
  finding.cautions.push_back(
      "Criteria were made for soils: in filled rock the fill can wash out of the face until plants "
      "or a cover hold it.");
  return finding;
}

}  // namespace proofstone
