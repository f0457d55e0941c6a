#pragma once

#include "engine/evidence/stones_needed.h"

namespace proofstone {

/// How often a decision may be mistaken.
struct DecisionRisks {
  double owners = 0.05;     ///< chance that rock which breaks a limit is accepted
  double producers = 0.05;  ///< chance that rock which keeps every limit is turned away

  /// Both risks as one minus the confidence.
  static DecisionRisks at(double confidence) { return {1 - confidence, 1 - confidence}; }

  double to_accept() const { return 1 - owners; }
  double to_turn_away() const { return 1 - producers; }
};

/// The Problem of risks that no decision can be made at.
inline std::optional<Problem> problem_of_risks(const DecisionRisks& risks) {
  if (auto problem = problem_of_confidence(risks.to_accept())) return problem;
  return problem_of_confidence(risks.to_turn_away());
}

}  // namespace proofstone
