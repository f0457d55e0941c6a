#pragma once

#include <string>
#include <vector>

#include "simulation/compared_piles.h"
#include "simulation/counting_plans.h"
#include "simulation/neighbour_rule.h"
#include "simulation/stated_intervals.h"

namespace proofstone {

/// Looks of one kind at one pile, and how often what is stated at 90 % held.
struct CoverageRow {
  std::string looks;  ///< "100 stones on a grid"
  KnownPile pile;
  Observer observer;
  Coverage held;
};

/// Counts of rock with one true share by both plans of the same risks.
struct PlanRow {
  ShareRisks risks;
  double share = 0;
  CountsMade single;
  CountsMade sequential;
};

/// Pairs of looks of one kind, at the same rock and at rock that is so much coarser.
struct ComparisonRow {
  std::string looks;
  std::string test;
  Observer observer;
  double same_rock = 0;        ///< share of the pairs found different
  double tenth_coarser = 0;    ///< where one median is 10 % larger
  double quarter_coarser = 0;  ///< 25 % larger
};

struct RuleRow {
  int stones = 0;
  RuleAgainstBand found;
};

/// What the simulated piles show. The same numbers on every run.
struct SimulationResults {
  std::vector<CoverageRow> coverage;
  std::vector<PlanRow> plans;
  std::vector<ComparisonRow> comparisons;
  std::vector<RuleRow> neighbour_rule;
};

inline constexpr int looks_a_row = 4000;
inline constexpr int pairs_a_row = 2000;
inline constexpr int counts_a_row = 10000;
inline constexpr int piles_a_row = 4000;

SimulationResults run_simulation();

/// The handbook's page of it, docs/simulation.md.
std::string simulation_page(const SimulationResults& results);

}  // namespace proofstone
