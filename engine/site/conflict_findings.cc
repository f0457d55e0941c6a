#include "engine/site/conflict_findings.h"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/finding/quoted_text.h"

namespace proofstone {
namespace {

constexpr std::size_t longest_value = 120;

/// A step of a pointer as it is read: "layer_thickness" is "layer thickness".
std::string plain(std::string step) {
  std::replace(step.begin(), step.end(), '_', ' ');
  return step;
}

/// What a pointer leads to, by name: "/zones/bank/class" is "Outer bank, class".
std::string place_of(const std::string& text, const nlohmann::json& state) {
  std::vector<std::string> steps;
  for (nlohmann::json::json_pointer pointer(text); !pointer.empty(); pointer.pop_back()) {
    steps.push_back(pointer.back());
  }
  std::reverse(steps.begin(), steps.end());
  if (steps.size() < 2) return steps.empty() ? text : plain(steps.front());
  const auto named = nlohmann::json::json_pointer() / steps[0] / steps[1] / "name";
  const auto* name = state.contains(named) ? &state.at(named) : nullptr;
  std::string place = name != nullptr && name->is_string()
                          ? name->get<std::string>()
                          : fmt::format("{} {}", plain(steps[0]), steps[1]);
  for (std::size_t i = 2; i < steps.size(); ++i) place += ", " + plain(steps[i]);
  return place;
}

std::string what_of(const Change& change, const nlohmann::json& state) {
  const auto place = place_of(change.pointer, state);
  if (change.action == Change::Action::remove) return fmt::format("removed {}", place);
  auto value = change.value.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
  if (value.size() > longest_value) return fmt::format("wrote {} anew", place);
  return fmt::format("set {} to {}", place, value);
}

SiteConflict::Side in_words(const ConflictSide& side, const nlohmann::json& state) {
  return {side.author, side.time, what_of(side.change, state)};
}

std::string sentence_of(const SiteConflict::Side& side) {
  return fmt::format("{} {} ({})", side.author, side.what, side.time);
}

}  // namespace

std::vector<SiteConflict> in_words(const std::vector<RevisionConflict>& conflicts,
                                   const nlohmann::json& state) {
  std::vector<SiteConflict> words;
  words.reserve(conflicts.size());
  for (const auto& one : conflicts) {
    words.push_back({place_of(one.pointer, state), in_words(one.stands, state),
                     in_words(one.passed_over, state)});
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
    finding.title = fmt::format("Two entries cross at {}", conflict.place);
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
