#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/placing/nonconformance.h"
#include "engine/placing/placing_check.h"
#include "engine/placing/placing_walk.h"

namespace proofstone {

enum class CheckState { pass, fail, not_yet };

/// "pass", "fail", "not yet known".
std::string_view check_state_word(CheckState state);

/// What one act of looking says of a check.
struct CheckEvidence {
  std::string when;
  CheckState says = CheckState::not_yet;
  int points = 0;               ///< measured
  std::optional<Length> worst;  ///< of the lengths measured
};

/// Lengths or the eye, against what the check asks. Entries of a tally are not judged alone.
CheckEvidence judge_entry(const PlacingCheck& check, const CheckEntry& entry,
                          const std::string& when);

/// Loads of a fill counted so far, against what the rock counted so far takes.
struct TallyLine {
  std::string name;
  double counted = 0;
  double wanted = 0;
  double allowed = 0;  ///< off the wanted, either way
  bool holds() const;
};

/// A tally of all loads against a recipe; lines for the fills, none before there is rock.
std::vector<TallyLine> tally_lines(const std::vector<MixShare>& mix,
                                   const std::map<std::string, int>& loads,
                                   std::optional<double> tolerance);

/// Those of the loads that are of no material of a mix that has a recipe: a part that was taken out
/// of it after they were tallied, or a slip. None where there is no recipe yet.
std::map<std::string, int> loads_beside_mix(const std::vector<MixShare>& mix,
                                            const std::map<std::string, int>& loads);

/// "8 loads of gold, 1 load of loam"
std::string loads_text(const std::map<std::string, int>& loads);

/// Where a check stands after everything that was seen.
struct CheckStanding {
  CheckState state = CheckState::not_yet;
  int points = 0;
  std::optional<Length> worst;
  std::string passed_when;  ///< of the look with which it passed
  std::string accepted_by;  ///< the engineer who has the work used as it is
  bool too_few_points = false;
  bool failed_unanswered = false;  ///< it fails and no nonconformance says so
  bool answered_open = false;      ///< it fails and its nonconformance is not closed
  bool wants_new_look = false;     ///< its nonconformance is closed, but no later look passes it
};

/// A failure stands until a nonconformance about the check is closed after it; then a later look
/// must pass, or the engineer has it used as it is. Nothing that passes elsewhere hides a failure.
CheckStanding standing_of(const PlacingCheck& check, std::vector<CheckEvidence> evidence,
                          const std::vector<const Nonconformance*>& about);

}  // namespace proofstone
