#include "engine/site/headline.h"

#include <fmt/format.h>

#include <string>
#include <vector>

#include "engine/finding/outcome_order.h"

namespace proofstone {
namespace {

/// A remedy or a single method does not speak for a whole zone or lot.
bool is_verdict(const Finding& finding) {
  switch (finding.topic) {
    case Topic::rock_class:
    case Topic::layer:
    case Topic::placing:
    case Topic::document:
      return true;
    case Topic::toe:
    case Topic::filter:
    case Topic::mix:
    case Topic::kind:
    case Topic::cover:
    case Topic::gradation:
    case Topic::rock_in_zone:
    case Topic::placing_check:
      return finding.governs;
    default:
      return false;
  }
}

}  // namespace

void write_headline(Findings& findings) {
  findings.headline_outcome = Outcome::meets;
  findings.headline.clear();
  std::vector<std::string> sentences;
  bool any = false;
  for (const auto& finding : findings.findings) {
    if (!is_verdict(finding)) continue;
    any = true;
    if (weight(finding.outcome) > weight(findings.headline_outcome)) {
      findings.headline_outcome = finding.outcome;
    }
    // A lot and its rock in a zone are always told; a class or a layer only when it does not hold.
    const bool always_told = finding.governs && finding.topic != Topic::rock_class;
    if (always_told || finding.outcome != Outcome::meets) {
      sentences.push_back(fmt::format("{}: {}", finding.title, outcome_phrase(finding.outcome)));
    }
  }
  if (!any) {
    findings.headline_outcome = Outcome::not_yet_known;
    findings.headline = "There is nothing to judge yet.";
    return;
  }
  for (const auto& sentence : sentences) {
    findings.headline += (findings.headline.empty() ? "" : " ") + sentence + ".";
  }
  if (sentences.empty()) findings.headline = "Every class and layer holds.";
}

}  // namespace proofstone
