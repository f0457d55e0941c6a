#include "engine/placing/check_standing.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/finding/stable_order.h"
#include "engine/quantity/rounding.h"

namespace proofstone {
namespace {

bool is_worse(const PlacingCheck& check, Length one, Length other) {
  switch (check.measure) {
    case CheckMeasure::at_least:
      return one < other;
    case CheckMeasure::within:
      return std::abs(one.meters()) > std::abs(other.meters());
    default:
      return one > other;
  }
}

bool holds(const PlacingCheck& check, Length measured) {
  const double tolerance = check.tolerance.value_or(Length::meters(0)).meters();
  const double asked = check.asked.value_or(Length::meters(0)).meters();
  const double slack = tolerance + rounding;
  switch (check.measure) {
    case CheckMeasure::at_least:
      return measured.meters() >= asked - slack;
    case CheckMeasure::at_most:
      return measured.meters() <= asked + slack;
    case CheckMeasure::within:
      return std::abs(measured.meters()) <= slack;
    default:
      return true;
  }
}

void keep_worst(const PlacingCheck& check, std::optional<Length>& worst, Length measured) {
  if (!worst || is_worse(check, measured, *worst)) worst = measured;
}

/// A nonconformance about the check that was closed at or after the failure.
const Nonconformance* answer_to(const std::string& failed_when,
                                const std::vector<const Nonconformance*>& about) {
  for (const auto* one : about) {
    if (one->closed && one->closed->when >= failed_when) return one;
  }
  return nullptr;
}

}  // namespace

std::string_view check_state_word(CheckState state) {
  switch (state) {
    case CheckState::pass:
      return "pass";
    case CheckState::fail:
      return "fail";
    case CheckState::not_yet:
      return "not yet known";
  }
  return "not yet known";
}

CheckEvidence judge_entry(const PlacingCheck& check, const CheckEntry& entry,
                          const std::string& when) {
  CheckEvidence evidence;
  evidence.when = when;
  evidence.points = static_cast<int>(entry.measured.size());
  bool kept = true;
  for (const auto length : entry.measured) {
    keep_worst(check, evidence.worst, length);
    kept = kept && holds(check, length);
  }
  // What the eye rejects fails whatever was measured; what it accepts still has to measure up.
  if (!kept || entry.passes == false) {
    evidence.says = CheckState::fail;
  } else if (!entry.measured.empty() || entry.passes == true) {
    evidence.says = CheckState::pass;
  }
  return evidence;
}

bool TallyLine::holds() const { return std::abs(counted - wanted) <= allowed + rounding; }

std::vector<TallyLine> tally_lines(const std::vector<MixShare>& mix,
                                   const std::map<std::string, int>& loads,
                                   std::optional<double> tolerance) {
  std::vector<TallyLine> lines;
  const auto counted = [&loads](const std::string& id) {
    const auto found = loads.find(id);
    return found == loads.end() ? 0 : found->second;
  };
  if (mix.empty() || counted(mix.front().id) <= 0) return lines;
  for (std::size_t i = 1; i < mix.size(); ++i) {
    TallyLine line;
    line.name = mix[i].name;
    line.counted = counted(mix[i].id);
    line.wanted = counted(mix.front().id) * mix[i].parts / mix.front().parts;
    line.allowed = std::max(1.0, tolerance.value_or(usual_mix_tolerance) * line.wanted);
    lines.push_back(std::move(line));
  }
  return lines;
}

std::map<std::string, int> loads_beside_mix(const std::vector<MixShare>& mix,
                                            const std::map<std::string, int>& loads) {
  if (mix.empty()) return {};
  auto beside = loads;
  for (const auto& share : mix) beside.erase(share.id);
  return beside;
}

std::string loads_text(const std::map<std::string, int>& loads) {
  std::vector<std::string> parts;
  for (const auto& [material, count] : loads) {
    parts.push_back(fmt::format("{} load{} of {}", count, count == 1 ? "" : "s", material));
  }
  return fmt::format("{}", fmt::join(parts, ", "));
}

CheckStanding standing_of(const PlacingCheck& check, std::vector<CheckEvidence> evidence,
                          const std::vector<const Nonconformance*>& about) {
  sort_in_order(evidence.begin(), evidence.end(),
                [](const auto& one, const auto& other) { return one.when < other.when; });
  CheckStanding standing;
  for (const auto& look : evidence) {
    if (look.says == CheckState::fail) {
      const auto* answer = answer_to(look.when, about);
      standing.points = 0;
      standing.worst = look.worst;
      standing.passed_when.clear();
      standing.accepted_by.clear();
      standing.wants_new_look = false;
      if (answer == nullptr) {
        standing.state = CheckState::fail;
        standing.answered_open =
            std::any_of(about.begin(), about.end(), [](const auto* one) { return !one->closed; });
        standing.failed_unanswered = !standing.answered_open;
        return standing;
      }
      if (answer->disposition->kind == DispositionKind::use_as_is) {
        standing.accepted_by = answer->disposition->approved_by;
        standing.passed_when = answer->closed->when;
        standing.state = CheckState::pass;
      } else {
        standing.wants_new_look = true;
        standing.state = CheckState::not_yet;
      }
      continue;
    }
    if (look.says == CheckState::not_yet) continue;
    if (standing.wants_new_look) standing.worst.reset();
    standing.points += look.points;
    if (look.worst) keep_worst(check, standing.worst, *look.worst);
    standing.wants_new_look = false;
    const bool enough = check.measure == CheckMeasure::by_eye ||
                        check.measure == CheckMeasure::layer_survey ||
                        check.measure == CheckMeasure::load_tally ||
                        standing.points >= check.fewest_points || !standing.accepted_by.empty();
    standing.too_few_points = !enough;
    if (standing.state == CheckState::pass) continue;
    standing.state = enough ? CheckState::pass : CheckState::not_yet;
    if (enough) standing.passed_when = look.when;
  }
  return standing;
}

}  // namespace proofstone
