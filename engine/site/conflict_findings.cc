#include "engine/site/conflict_findings.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "engine/finding/quoted_text.h"

namespace proofstone {
namespace {

constexpr std::size_t longest_value = 120;

std::string what_of(const Change& change) {
  if (change.action == Change::Action::remove) return fmt::format("removed {}", change.pointer);
  auto value = change.value.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
  if (value.size() > longest_value) return fmt::format("wrote {} anew", change.pointer);
  return fmt::format("set {} to {}", change.pointer, value);
}

SiteConflict::Side in_words(const ConflictSide& side) {
  return {side.author, side.time, what_of(side.change)};
}

std::string sentence_of(const SiteConflict::Side& side) {
  return fmt::format("{} {} ({})", side.author, side.what, side.time);
}

}  // namespace

std::vector<SiteConflict> in_words(const std::vector<RevisionConflict>& conflicts) {
  std::vector<SiteConflict> words;
  words.reserve(conflicts.size());
  for (const auto& one : conflicts) {
    words.push_back({one.pointer, in_words(one.stands), in_words(one.passed_over)});
  }
  return words;
}

std::vector<Finding> conflict_findings(const Site& site) {
  std::vector<Finding> findings;
  int number = 0;
  for (const auto& conflict : site.conflicts) {
    Finding finding;
    finding.topic = Topic::document;
    finding.id = fmt::format("conflict.{}", ++number);
    finding.title = fmt::format("Two entries cross at {}", conflict.pointer);
    finding.outcome = Outcome::ask_the_designer;
    finding.sentence = fmt::format("{}; {}. Neither knew of the other; the first of these stands.",
                                   sentence_of(conflict.stands), sentence_of(conflict.passed_over));
    finding.next = "Settle it: say that what stands is right, or enter what is.";
    finding.reasons.emplace_back(
        "Nothing is lost: both entries are in the record. Of two values the later stands; what one "
        "edits, another does not remove unseen.");
    findings.push_back(std::move(finding));
  }
  return findings;
}

}  // namespace proofstone
