#include <fmt/format.h>

#include "engine/evidence/percent_limits.h"
#include "engine/site/look_findings.h"

namespace proofstone {
namespace {

/// Shares of stones by number that may be longer than so many times their least dimension.
struct ShapeLimit {
  double ratio;
  double share;
};
constexpr ShapeLimit shape_limits[] = {{2.5, 0.30}, {3.0, 0.15}};
/// No single stone beyond this.
constexpr double longest_ratio = 3.5;

double slenderness(const StoneAxes& stone) { return stone.longest / stone.shortest; }

int stones_beyond(const ShapeCount& count, double ratio) {
  int beyond = 0;
  for (const auto& stone : count.stones) beyond += slenderness(stone) > ratio ? 1 : 0;
  return beyond;
}

Outcome outcome_at(double confidence_kept, double confidence) {
  if (confidence_kept >= confidence) return Outcome::meets;
  return confidence_kept <= 1 - confidence ? Outcome::falls_short : Outcome::not_yet_known;
}

}  // namespace

Finding shape_count_finding(const Site& site, const Look& look, const ShapeCount& count,
                            const Wording& wording) {
  Finding finding;
  finding.topic = Topic::gradation;
  finding.about.lot = look.lot;
  finding.about.look = look.id;
  finding.id = fmt::format("shape.{}.{}", look.lot, look.id);
  finding.title = look.name;
  finding.outcome = Outcome::meets;
  const auto n = static_cast<double>(count.stones.size());
  finding.sentence = fmt::format("{:.0f} stones by their axes.", n);
  for (const auto& limit : shape_limits) {
    const int beyond = stones_beyond(count, limit.ratio);
    PercentLimitsInputs inputs;
    inputs.smaller = Dimensionless::number(beyond);
    inputs.stones = Dimensionless::number(n);
    inputs.confidence = Dimensionless::number(site.evidence.confidence);
    inputs.limit = Dimensionless::number(limit.share);
    const auto share = percent_limits(inputs, finding.steps);
    if (!share) continue;
    finding.sentence += fmt::format(
        " {} longer than {:g} times their least dimension ({:.0f} %, at most {:.0f} % asked).",
        beyond, limit.ratio, 100 * beyond / n, 100 * limit.share);
    const auto outcome = outcome_at(share->confidence_at_most.number(), site.evidence.confidence);
    if (outcome == Outcome::falls_short || finding.outcome == Outcome::meets) {
      finding.outcome = outcome;
    }
  }
  if (const int beyond = stones_beyond(count, longest_ratio); beyond > 0) {
    finding.reasons.push_back(
        fmt::format("{} longer than {:g} times their least dimension: none should be placed.",
                    beyond, longest_ratio));
  }
  const StoneAxes* largest = nullptr;
  for (const auto& stone : count.stones) {
    if (largest == nullptr || stone.longest > largest->longest) largest = &stone;
  }
  if (largest != nullptr) {
    finding.values.push_back(
        {"longest", "a", "longest axis measured", measure(largest->longest), LengthUse::rock});
    finding.reasons.push_back(
        fmt::format("Longest axis measured: {}.", wording.rock(largest->longest)));
  }
  finding.next = finding.outcome == Outcome::meets ? "Nothing to do."
                 : finding.outcome == Outcome::falls_short
                     ? "Lay flat and long stones aside, or ask the quarry for another bench."
                     : "Measure the axes of more stones, taken blindly.";
  finding.sources.push_back(
      {"USACE EM 1110-2-1601",
       "shape: at most 30 % above 2.5 and 15 % above 3.0, length to thickness",
       SourceStanding::memory});
  finding.sources.push_back(
      {"USACE Streambank Manual", "App. A, no stone above 3.5", SourceStanding::published});
  return finding;
}

}  // namespace proofstone
