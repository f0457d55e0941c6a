#include "engine/site/submittal_review.h"

#include <fmt/format.h>

#include "engine/finding/outcome_order.h"
#include "engine/site/certified_gradation.h"
#include "engine/site/judged_limit.h"

namespace proofstone {
namespace {

double average(const std::vector<double>& values) {
  double sum = 0;
  for (const double value : values) sum += value;
  return sum / static_cast<double>(values.size());
}

std::string results_text(const Submittal& submittal, RockTest test, UnitSystem units) {
  std::vector<std::string> words;
  for (const auto& one : submittal.tests) {
    if (one.test != test) continue;
    for (const double result : one.results) {
      auto word = rock_test_text(test, result, units);
      if (!one.manner.salt.empty()) word += " with " + one.manner.salt + " sulfate";
      if (one.manner.cycles) word += fmt::format(" in {} cycles", *one.manner.cycles);
      if (one.manner.above) word += fmt::format(" above {}:1", significant(*one.manner.above, 3));
      words.push_back(std::move(word));
    }
  }
  return listed(words);
}

Finding begin_finding(const Submittal& submittal, const std::string& what, std::string title) {
  Finding finding;
  finding.topic = Topic::submittal;
  finding.about.rock_class = submittal.rock_class;
  finding.id = fmt::format("submittal.{}{}", submittal.id, what.empty() ? "" : "." + what);
  finding.title = std::move(title);
  return finding;
}

struct Tally {
  int kept = 0;
  int broken = 0;
  int silent = 0;
};

Tally tell_limits(Finding& finding, const std::vector<JudgedLimit>& judged, UnitSystem units) {
  Tally tally;
  for (const auto& one : judged) {
    const auto& limit = *one.limit;
    finding.reasons.push_back(fmt::format(
        "{}: {}. {}.", limit.from, limit_text(limit, units),
        one.result
            ? fmt::format("Handed in: {}; it {}", rock_test_text(limit.test, *one.result, units),
                          one.outcome == Outcome::meets ? "keeps this" : "does not keep this")
            : std::string("No result speaks of this")));
    finding.sources.push_back(limit.source);
    if (one.margin && (!finding.margin || *one.margin < finding.margin->value)) {
      finding.margin = Margin{*one.margin, std::nullopt, std::nullopt};
    }
    tally.kept += one.outcome == Outcome::meets ? 1 : 0;
    tally.broken += one.outcome == Outcome::falls_short ? 1 : 0;
    tally.silent += one.result ? 0 : 1;
  }
  return tally;
}

void conclude(Finding& finding, const Tally& tally, const RockTestKind& kind, bool chosen) {
  const auto ask =
      fmt::format("Ask the supplier for this test: {} ({}).", kind.name, kind.standards);
  const bool nothing_spoke = tally.kept + tally.broken == 0;
  const bool something_missing = chosen && tally.broken == 0 && tally.silent > 0;
  if (nothing_spoke || something_missing) {
    finding.outcome = Outcome::not_yet_known;
    finding.next = ask;
  } else if (tally.broken > 0 && (chosen || tally.kept == 0)) {
    finding.outcome = Outcome::falls_short;
    finding.next = "Refuse the rock for this, or have the designer say what it still serves for.";
  } else if (tally.broken > 0) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next = "Published limits disagree about this result: choose the set that holds here.";
  } else {
    finding.outcome = Outcome::meets;
    finding.next = chosen ? "Nothing to do." : "Choose the set of requirements that holds here.";
  }
}

Finding test_finding(const Site& site, const Submittal& submittal, const RockTestKind& kind,
                     const std::vector<JudgedLimit>& judged, UnitSystem units) {
  auto finding =
      begin_finding(submittal, kind.id, fmt::format("{}: {}", submittal.name, kind.name));
  const auto handed_in = results_text(submittal, kind.test, units);
  const bool chosen = has_chosen(site.requirements);
  const auto tally = tell_limits(finding, judged, units);
  conclude(finding, tally, kind, chosen);
  if (handed_in.empty()) {
    finding.sentence = fmt::format("The submittal holds no result of this test: {} ({}).",
                                   kind.name, kind.standards);
  } else {
    finding.sentence =
        fmt::format("Handed in: {}. Limits kept: {}, not kept: {}, not spoken of: {}.", handed_in,
                    tally.kept, tally.broken, tally.silent);
  }
  if (!chosen) {
    finding.reasons.emplace_back(
        "The document chooses no set of requirements, so every published one here is shown.");
  }
  for (const auto& test : submittal.tests) {
    if (test.test != kind.test) continue;
    for (const double result : test.results) {
      finding.steps.given(kind.id, kind.name, {result, kind.kind},
                          "submittal of " + submittal.date);
    }
  }
  return finding;
}

Finding together(const Site& site, const Submittal& submittal,
                 const std::vector<Finding>& findings) {
  auto finding = begin_finding(submittal, "", submittal.name);
  finding.governs = true;
  finding.outcome = Outcome::meets;
  std::vector<std::string> open;
  for (const auto& one : findings) {
    if (weight(one.outcome) > weight(finding.outcome)) finding.outcome = one.outcome;
    if (one.outcome == Outcome::meets) continue;
    open.push_back(one.title);
    finding.reasons.push_back(
        fmt::format("{}: {}. {}", one.title, outcome_phrase(one.outcome), one.next));
  }
  finding.sentence = fmt::format(
      "Rock of {} for {}, handed in on {}{}: {} of {} questions are settled in its favour.",
      site.sources.at(submittal.source).name, find_class(site, submittal.rock_class)->name,
      submittal.date, submittal.from.empty() ? "" : " by " + submittal.from,
      findings.size() - open.size(), findings.size());
  finding.next = open.empty() ? "Accept the source; go on judging every lot."
                              : "See what stands open: " + listed(open) + ".";
  finding.cautions = {
      "Papers speak of the rock that was tested. What is delivered is judged by the looks at each "
      "lot.",
      "A service record of the same ledge in like water may say more than a test."};
  return finding;
}

/// The design took another specific gravity than the submittal shows.
std::optional<Finding> density_finding(const Site& site, const Submittal& submittal) {
  std::vector<double> results;
  for (const auto& test : submittal.tests) {
    if (test.test == RockTest::specific_gravity) {
      results.insert(results.end(), test.results.begin(), test.results.end());
    }
  }
  if (results.empty()) return std::nullopt;
  const double designed = site.sources.at(submittal.source).rock.specific_gravity.number();
  const double handed_in = average(results);
  auto finding =
      begin_finding(submittal, "design", submittal.name + ": specific gravity against the design");
  finding.steps.given("Gs", "that the design took for this source", measure(designed), "document");
  finding.steps.computed("Gs'", "mean of the submittal", "ΣGs/n", measure(handed_in));
  finding.margin = Margin{handed_in / designed, std::nullopt, std::nullopt};
  finding.sources = {
      {"sizing methods", "stone size rises as the rock gets lighter", SourceStanding::computed}};
  const bool holds = handed_in >= designed * (1 - 1e-9);
  finding.outcome = holds ? Outcome::meets : Outcome::ask_the_designer;
  finding.sentence = fmt::format("The design took {} for this source; the submittal shows {}.",
                                 significant(designed, 4), significant(handed_in, 4));
  finding.next = holds ? "Nothing to do."
                       : fmt::format(
                             "Run the substitution study with a specific gravity of {} "
                             "for every zone of this source.",
                             significant(handed_in, 4));
  return finding;
}

}  // namespace

std::vector<Finding> review_submittal(const Site& site, const Submittal& submittal,
                                      const Wording& wording) {
  std::vector<Finding> findings;
  const auto limits = limits_in_force(site.requirements);
  for (const auto& kind : rock_test_kinds()) {
    std::vector<JudgedLimit> judged;
    for (const auto& limit : limits) {
      if (limit.test == kind.test) judged.push_back(judge_limit(limit, submittal));
    }
    if (judged.empty()) continue;
    findings.push_back(test_finding(site, submittal, kind, judged, wording.units()));
  }
  if (auto density = density_finding(site, submittal)) findings.push_back(std::move(*density));
  findings.push_back(
      certificate_finding(*find_class(site, submittal.rock_class), submittal, wording));
  findings.push_back(together(site, submittal, findings));
  return findings;
}

}  // namespace proofstone
