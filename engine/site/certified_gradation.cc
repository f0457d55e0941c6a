#include "engine/site/certified_gradation.h"

#include <fmt/format.h>

#include "engine/quantity/rounding.h"
#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

/// Percent smaller than a size: one value on the curve, two where the curve does not reach.
struct Smaller {
  double low = 0;
  double high = 100;
};

Smaller smaller_than(const Gradation& curve, Length size) {
  const auto& points = curve.points();
  if (size < points.front().size) return {0, points.front().percent_smaller};
  if (size > points.back().size) return {points.back().percent_smaller, 100};
  const double percent = curve.percent_smaller(size);
  return {percent, percent};
}

Outcome judge(const BandCondition& condition, const Smaller& smaller) {
  const bool at_most = condition.sense == BandCondition::Sense::at_most;
  // Nothing a curve shows contradicts "at most 100 %"; the largest stone is then a size to reach.
  const double worst = at_most ? smaller.high : smaller.low;
  const double best = at_most ? smaller.low : smaller.high;
  const auto kept = [&](double percent) {
    return at_most ? percent <= condition.percent + rounding
                   : percent >= condition.percent - rounding;
  };
  if (kept(worst)) return Outcome::meets;
  return kept(best) ? Outcome::not_yet_known : Outcome::falls_short;
}

std::string shown(const Smaller& smaller) {
  if (smaller.high - smaller.low < rounding) return significant(smaller.low, 3) + " % smaller";
  return fmt::format("between {} and {} % smaller", significant(smaller.low, 3),
                     significant(smaller.high, 3));
}

void conclude(Finding& finding, const RockClass& rock_class, int broken, int open) {
  if (broken > 0) {
    finding.outcome = Outcome::falls_short;
    finding.sentence =
        fmt::format("The certified curve breaks {} of the limits of {}.", broken, rock_class.name);
    finding.next =
        "Ask for rock inside the band, or run the substitution study with another class.";
  } else if (open > 0) {
    finding.outcome = Outcome::not_yet_known;
    finding.sentence = fmt::format(
        "The certified curve keeps the limits of {} that it reaches; {} lie beyond its ends.",
        rock_class.name, open);
    finding.next = "Ask for the percents smaller at the sizes named.";
  } else {
    finding.outcome = Outcome::meets;
    finding.sentence = fmt::format("The certified curve keeps every limit of {}.", rock_class.name);
    finding.next = "Judge every lot that comes all the same.";
  }
}

}  // namespace

Finding certificate_finding(const RockClass& rock_class, const Submittal& submittal,
                            const Wording& wording) {
  Finding finding;
  finding.topic = Topic::submittal;
  finding.about.rock_class = rock_class.id;
  finding.id = fmt::format("submittal.{}.gradation", submittal.id);
  finding.title = submittal.name + ": certified gradation";
  finding.sources = {rock_class.source};
  finding.cautions = {"A certificate is of the sample that was tested, at the quarry that day."};
  if (!submittal.gradation) {
    finding.outcome = Outcome::not_yet_known;
    finding.sentence = "The submittal holds no certified gradation.";
    finding.next = fmt::format("Ask for the gradation against {}, by mass.", rock_class.name);
    return finding;
  }
  const auto& curve = *submittal.gradation;
  int broken = 0;
  int open = 0;
  for (const auto& condition : rock_class.band.conditions()) {
    if (percent_of(condition, rock_class.band.basis()) != curve.basis().percent) {
      finding.outcome = Outcome::ask_the_designer;
      finding.sentence = fmt::format(
          "The certificate is in percent by {}, the band in percent by {}: the two do not compare.",
          percent_of_name(curve.basis().percent),
          percent_of_name(percent_of(condition, rock_class.band.basis())));
      finding.next = "Ask for the gradation on the basis of the class.";
      return finding;
    }
    const auto size =
        convert_size(condition.size, rock_class.band.basis().size, curve.basis().size);
    const auto smaller = smaller_than(curve, size);
    const auto outcome = judge(condition, smaller);
    broken += outcome == Outcome::falls_short ? 1 : 0;
    open += outcome == Outcome::not_yet_known ? 1 : 0;
    finding.reasons.push_back(fmt::format("{}: {}; at {} the certificate has {}.",
                                          condition.wording, outcome_phrase(outcome),
                                          wording.rock(size), shown(smaller)));
    finding.steps.given_rock("D", condition.wording, size, rock_class.source.sentence());
    finding.steps.computed("F(D)", "percent smaller on the certified curve",
                           "log-size interpolation", measure(smaller.low / 100));
  }
  conclude(finding, rock_class, broken, open);
  return finding;
}

}  // namespace proofstone
