#include "engine/site/compared_rock.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "engine/acceptance/two_piles.h"
#include "engine/evidence/same_rock.h"

namespace proofstone {
namespace {

/// The work of the exact chance grows with the product of both counts.
constexpr std::size_t most_pairs = 250'000;

/// Looks that are taken together, and what they are called.
struct Side {
  std::string name;
  std::vector<const LotEvidence::Seen*> looks;
};

std::optional<MeasuredGradation> curve_of(const Side& side) {
  std::vector<MeasuredGradation> measured;
  for (const auto* seen : side.looks) measured.push_back(seen->measured);
  if (measured.empty()) return std::nullopt;
  if (measured.size() == 1) return measured.front();
  auto together = pooled(measured);
  if (!together) return std::nullopt;
  return std::move(*together);
}

/// Sizes of the stones, where every look measured them one by one on a grid.
std::vector<double> stones_of(const Side& side) {
  std::vector<double> stones;
  for (const auto* seen : side.looks) {
    const auto* count = std::get_if<StoneCount>(&seen->look->taken);
    const bool one_by_one = count != nullptr && count->picking == StonePicking::grid &&
                            !count->intermediate_axes.empty();
    if (!one_by_one) return {};
    for (const auto& axis : count->intermediate_axes) stones.push_back(axis.meters());
  }
  return stones;
}

/// What a test says of two sides.
struct Verdict {
  std::string test;
  std::string method;
  double chance = 1;  ///< of such a difference with the same rock
  Steps steps;
};

Expected<Verdict> test_sides(const Side& first, const Side& second,
                             const std::vector<MeasuredGradation>& curves, double confidence) {
  Verdict verdict;
  const auto one = stones_of(first);
  const auto other = stones_of(second);
  if (!one.empty() && !other.empty() && one.size() * other.size() <= most_pairs) {
    const auto distance = largest_distance(one, other);
    verdict.test = "largest distance between both curves, exact with ties";
    verdict.method = two_piles_method().description().id;
    verdict.chance = distance.chance;
    verdict.steps.computed("D", "largest distance between both curves", "max |F1 − F2|",
                           measure(distance.distance));
    verdict.steps.computed("P(D)", "chance of it with the same rock",
                           "all ways to deal the stones, with ties", measure(distance.chance));
    return verdict;
  }
  auto test = same_rock(curves, confidence);
  if (!test) return test.problems();
  verdict.test = "χ² of the shares between common sizes";
  verdict.method = same_rock_method().description().id;
  verdict.chance = test->test.chance;
  verdict.steps = test->steps;
  return verdict;
}

std::string median_words(const std::string& name, const MeasuredGradation& measured,
                         const Wording& wording) {
  const auto size = measured.curve.size_at(50);
  return size ? fmt::format("{} D50 {}", name, wording.rock(*size)) : name;
}

/// What is said of a pair that differs, and what to do.
struct Meaning {
  std::string id;
  std::string title;
  Outcome when_different = Outcome::falls_short;
  std::string next_when_different;
};

GradationPicture picture_of(const LotEvidence& evidence, const Meaning& meaning, const Side& first,
                            const Side& second, const std::vector<MeasuredGradation>& curves) {
  GradationPicture picture;
  picture.id = meaning.id;
  picture.title = meaning.title;
  picture.description =
      fmt::format("Percent smaller by mass over size: {} and {}.", first.name, second.name);
  picture.class_name = evidence.ordered->name;
  picture.coarse_limit = evidence.ordered->band.coarse_limit();
  picture.fine_limit = evidence.ordered->band.fine_limit();
  picture.looks.push_back({first.name, curves[0].curve.points()});
  picture.looks.push_back({second.name, curves[1].curve.points()});
  return picture;
}

void compare(const Site& site, const LotEvidence& evidence, const Meaning& meaning,
             const Side& first, const Side& second, const Wording& wording,
             ComparedRock& compared) {
  auto one = curve_of(first);
  auto other = curve_of(second);
  Finding finding;
  finding.topic = Topic::gradation;
  finding.about.lot = evidence.lot->id;
  finding.id = meaning.id;
  finding.title = meaning.title;
  finding.cautions.push_back(
      "Not to differ is no proof of sameness: with few stones only large differences show.");
  if (!one || !other) {
    finding.sentence = fmt::format("{} and {} cannot be compared yet.", first.name, second.name);
    finding.next = "Count stones on a grid on both.";
    compared.findings.push_back(std::move(finding));
    return;
  }
  const double confidence = site.evidence.confidence;
  const std::vector<MeasuredGradation> curves{*one, *other};
  auto verdict = test_sides(first, second, curves, confidence);
  if (!verdict) {
    finding.sentence = verdict.problems().front().sentence();
    finding.next = "Count more stones on both.";
    compared.findings.push_back(std::move(finding));
    return;
  }
  const bool differ = verdict->chance < 1 - confidence;
  finding.about.method = verdict->method;
  for (const auto* method : {&two_piles_method(), &same_rock_method()}) {
    if (method->description().id == verdict->method)
      finding.sources = method->description().sources;
  }
  finding.steps = verdict->steps;
  finding.outcome = differ ? meaning.when_different : Outcome::meets;
  const auto sizes = fmt::format("{}, {}", median_words(first.name, curves[0], wording),
                                 median_words(second.name, curves[1], wording));
  finding.sentence = fmt::format(
      "{}: {}. With the same rock so large a difference has a chance of {} %.", sizes,
      differ ? "they differ" : "no difference shows", significant(100 * verdict->chance, 2));
  finding.reasons.push_back(
      fmt::format("Test: {}; a difference is called one at a chance below {:g} %.", verdict->test,
                  100 * (1 - confidence)));
  finding.next = differ ? meaning.next_when_different : "Go on; compare again through the work.";
  compared.pictures.push_back(picture_of(evidence, meaning, first, second, curves));
  compared.findings.push_back(std::move(finding));
}

Side whole_of(const LotEvidence& evidence) {
  Side side{evidence.lot->name, {}};
  for (const auto& seen : evidence.seen) side.looks.push_back(&seen);
  return side;
}

const LotEvidence* reference_for(const LotEvidence& evidence,
                                 const std::vector<LotEvidence>& lots) {
  for (const auto& other : lots) {
    if (other.lot->reference && other.lot != evidence.lot && other.ordered == evidence.ordered &&
        !other.seen.empty()) {
      return &other;
    }
  }
  return nullptr;
}

/// Every side against all other sides together: with two sides there is one comparison.
void compare_sides(const Site& site, const LotEvidence& evidence, const Wording& wording,
                   ComparedRock& compared) {
  std::map<std::string, Side> sides;
  for (const auto& seen : evidence.seen) {
    if (seen.look->side.empty()) continue;
    auto& side = sides[seen.look->side];
    side.name = seen.look->side;
    side.looks.push_back(&seen);
  }
  if (sides.size() < 2) return;
  std::size_t number = 0;
  for (const auto& [name, side] : sides) {
    ++number;
    if (sides.size() == 2 && number == 2) break;
    Side rest;
    std::vector<std::string> names;
    for (const auto& [other, looks] : sides) {
      if (other == name) continue;
      names.push_back(other);
      rest.looks.insert(rest.looks.end(), looks.looks.begin(), looks.looks.end());
    }
    rest.name = listed(names);
    compare(
        site, evidence,
        {fmt::format("compare.{}.sides.{}", evidence.lot->id, number),
         fmt::format("Sides of {}: {} against {}", evidence.lot->name, name, rest.name),
         Outcome::falls_short,
         "The pile is segregated: mix it from both sides before loading out, then count again."},
        side, rest, wording, compared);
  }
}

void compare_loads(const Site& site, const LotEvidence& evidence, const LotEvidence* reference,
                   const Wording& wording, ComparedRock& compared) {
  std::map<std::string, Side> loads;
  Side rest{fmt::format("the rest of {}", evidence.lot->name), {}};
  for (const auto& seen : evidence.seen) {
    if (seen.look->load.empty()) {
      rest.looks.push_back(&seen);
    } else {
      loads[seen.look->load].looks.push_back(&seen);
    }
  }
  if (reference != nullptr) rest = whole_of(*reference);
  if (rest.looks.empty()) return;
  for (auto& [id, load] : loads) {
    const auto& ticket = site.loads.at(id).ticket;
    load.name = ticket.empty() ? fmt::format("load {}", id) : fmt::format("ticket {}", ticket);
    compare(site, evidence,
            {fmt::format("compare.{}.load.{}", evidence.lot->id, id),
             fmt::format("Load of {} against {}", load.name, rest.name), Outcome::falls_short,
             "Set this load aside and count the next one before it is dumped."},
            load, rest, wording, compared);
  }
}

}  // namespace

ComparedRock compare_rock(const Site& site, const LotEvidence& evidence,
                          const std::vector<LotEvidence>& lots, const Wording& wording) {
  ComparedRock compared;
  const auto* reference = reference_for(evidence, lots);
  if (reference != nullptr && !evidence.lot->reference && !evidence.seen.empty()) {
    compare(site, evidence,
            {fmt::format("compare.{}.reference", evidence.lot->id),
             fmt::format("{} against the reference, {}", evidence.lot->name, reference->lot->name),
             Outcome::ask_the_designer,
             "This is other rock than the accepted one: judge it by its own band, not by the eye."},
            whole_of(evidence), whole_of(*reference), wording, compared);
  }
  compare_sides(site, evidence, wording, compared);
  compare_loads(site, evidence, reference, wording, compared);
  return compared;
}

}  // namespace proofstone
