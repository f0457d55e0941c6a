#include <fmt/format.h>

#include "engine/quantity/rounding.h"
#include "engine/rock/class_neighbours.h"
#include "engine/site/look_findings.h"

namespace proofstone {
namespace {

struct Suspicions {
  std::vector<std::string> words;
  std::string next;
  void add(std::string word, const char* what_next) {
    words.push_back(std::move(word));
    if (next.empty()) next = what_next;
  }
};

/// The rule of the trade: a class reaches from the median of the class below to that of the class
/// above.
void against_neighbours(const RockClass& ordered, const QuickLook& seen, Finding& finding,
                        Suspicions& suspicions, const Wording& wording) {
  const auto neighbours = class_neighbours(ordered);
  if (neighbours.below != nullptr) {
    const auto reach = neighbours.below->nominal_d50;
    finding.steps.given_rock("D50−", "median size of the class below, " + neighbours.below->name,
                             reach, "catalog");
    if (seen.smallest.meters() > reach.meters() * (1 + rounding)) {
      suspicions.add(fmt::format("the small end is missing: no stone is as small as {}, the median "
                                 "of {}",
                                 wording.rock(reach), neighbours.below->name),
                     "Count stones; if the small end is missing, a load of a smaller class or of "
                     "another small rock product mends it.");
    }
  }
  if (neighbours.above != nullptr) {
    const auto reach = neighbours.above->nominal_d50;
    finding.steps.given_rock("D50+", "median size of the class above, " + neighbours.above->name,
                             reach, "catalog");
    if (seen.largest.meters() < reach.meters() * (1 - rounding)) {
      suspicions.add(fmt::format("the large end is missing: no stone is as large as {}, the median "
                                 "of {}",
                                 wording.rock(reach), neighbours.above->name),
                     "Count stones before any of it is placed.");
    }
  }
  if (neighbours.below == nullptr || neighbours.above == nullptr) {
    finding.reasons.emplace_back(
        "The class has no neighbour in its family on one side or on both; that end was not "
        "compared.");
  }
}

void against_class(const RockClass& ordered, const QuickLook& seen, Suspicions& suspicions,
                   const Wording& wording) {
  if (ordered.largest_stone && seen.largest > *ordered.largest_stone) {
    suspicions.add(
        fmt::format("the largest stone, {}, is larger than {} allows ({})",
                    wording.rock(seen.largest), ordered.name, wording.rock(*ordered.largest_stone)),
        "Measure that stone; a single oversize stone leaves gaps and goes out.");
  }
  if (seen.most_common && (*seen.most_common < 0.5 * ordered.nominal_d50 ||
                           *seen.most_common > 2 * ordered.nominal_d50)) {
    suspicions.add(fmt::format("the most common stone, {}, is far from the median of the class, {}",
                               wording.rock(*seen.most_common), wording.rock(ordered.nominal_d50)),
                   "Look whether this is the class that was ordered.");
  }
  for (const auto& gap : seen.missing) {
    suspicions.add(fmt::format("sizes from {} to {} are missing", wording.rock(gap.larger_than),
                               wording.rock(gap.not_larger_than)),
                   "Count stones; a missing size is mended by blending.");
  }
  if (seen.shape == SeenShape::flat_or_long) {
    suspicions.add("stones are flat or long", "Measure the axes of 50 stones taken blindly.");
  }
  if (seen.fines == SeenFines::much) {
    suspicions.add("there is much fine material",
                   "Weigh a load with its fines, or have it screened.");
  }
}

}  // namespace

Finding quick_look_finding(const RockClass& ordered, const Look& look, const QuickLook& seen,
                           const Wording& wording) {
  Finding finding;
  finding.topic = Topic::gradation;
  finding.about.lot = look.lot;
  finding.about.look = look.id;
  finding.about.rock_class = ordered.id;
  finding.id = fmt::format("quick-look.{}.{}", look.lot, look.id);
  finding.title = look.name;
  finding.outcome = Outcome::not_yet_known;
  finding.steps.given_rock("D_max", "largest stone seen", seen.largest, "document");
  finding.steps.given_rock("D_min", "smallest stone seen", seen.smallest, "document");
  Suspicions suspicions;
  against_neighbours(ordered, seen, finding, suspicions, wording);
  against_class(ordered, seen, suspicions, wording);
  finding.sentence = fmt::format("Stones from {} to {} by eye. ", wording.rock(seen.smallest),
                                 wording.rock(seen.largest));
  if (suspicions.words.empty()) {
    finding.sentence += "It looks right; not yet known.";
    finding.next = "Count 100 stones on a grid over the whole pile: a look alone never accepts.";
  } else {
    finding.sentence += fmt::format("Suspicion: {}.", fmt::join(suspicions.words, "; "));
    finding.next = suspicions.next;
  }
  finding.reasons.emplace_back(
      "A quick look finds what is plainly wrong. It neither accepts nor rejects.");
  finding.sources.push_back({"trade",
                             "a class reaches at least from the median size of the class below to "
                             "that of the class above",
                             SourceStanding::common_practice});
  finding.cautions.emplace_back(
      "The eye favours large stones, and a pile shows its coarse foot: look at both sides and "
      "inside.");
  return finding;
}

}  // namespace proofstone
