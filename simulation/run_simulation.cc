#include "simulation/simulation_page.h"

namespace proofstone {
namespace {

std::vector<CoverageRow> rows_of_coverage() {
  const KnownPile even;
  KnownPile segregated;
  segregated.spread = 0.35;
  segregated.segregation = 0.2;
  const auto with = [](auto change) {
    Observer observer;
    change(observer);
    return observer;
  };
  return {
      {"50 stones on a grid", even, with([](Observer& o) { o.stones = 50; }), {}},
      {"100 stones on a grid", even, {}, {}},
      {"400 stones on a grid", even, with([](Observer& o) { o.stones = 400; }), {}},
      {"100 on a grid, axes read with 8 % error",
       even,
       with([](Observer& o) { o.reading_error = 0.08; }),
       {}},
      {"100 on a grid, read to the inch",
       even,
       with([](Observer& o) { o.rounding = Length::inches(1); }),
       {}},
      {"100 on a grid, in bins of a factor 1.41",
       even,
       with([](Observer& o) { o.bin_ratio = 1.41421356; }),
       {}},
      {"100 stones that a line touches",
       even,
       with([](Observer& o) { o.picking = StonePicking::line; }),
       {}},
      {"200 stones of a face",
       even,
       with([](Observer& o) {
         o.picking = StonePicking::area;
         o.stones = 200;
       }),
       {}},
      {"400 stones of a whole load",
       even,
       with([](Observer& o) {
         o.picking = StonePicking::whole;
         o.stones = 400;
       }),
       {}},
      {"200 of a face, in bins of a factor 1.41",
       even,
       with([](Observer& o) {
         o.picking = StonePicking::area;
         o.stones = 200;
         o.bin_ratio = 1.41421356;
       }),
       {}},
      {"400 of a whole load, in bins of a factor 1.41",
       even,
       with([](Observer& o) {
         o.picking = StonePicking::whole;
         o.stones = 400;
         o.bin_ratio = 1.41421356;
       }),
       {}},
      {"400 of a load, sorted into the same and weighed",
       even,
       with([](Observer& o) {
         o.picking = StonePicking::whole;
         o.stones = 400;
         o.bin_ratio = 1.41421356;
         o.weighed = true;
       }),
       {}},
      {"100 on a grid over a segregated pile", segregated, {}, {}},
      {"100 on a grid at the coarse end of it",
       segregated,
       with([](Observer& o) { o.one_end = true; }),
       {}},
  };
}

std::vector<PlanRow> rows_of_plans() {
  std::vector<PlanRow> rows;
  for (const double acceptable : {0.05, 0.10, 0.50}) {
    for (const double further : {0.10, 0.20}) {
      for (const double part : {0.0, 0.5, 1.0}) {
        PlanRow row;
        row.risks.acceptable = Dimensionless::number(acceptable);
        row.risks.unacceptable = Dimensionless::number(acceptable + further);
        row.share = acceptable + part * further;
        rows.push_back(row);
      }
    }
  }
  return rows;
}

std::vector<ComparisonRow> rows_of_comparisons() {
  const auto row = [](const char* looks, const char* test, auto change) {
    ComparisonRow made;
    made.looks = looks;
    made.test = test;
    change(made.observer);
    return made;
  };
  return {
      row("100 stones on a grid", "largest distance", [](Observer&) {}),
      row("100 on a grid, read to the inch", "largest distance",
          [](Observer& o) { o.rounding = Length::inches(1); }),
      row("100 on a grid, in bins of a factor 1.41", "χ²",
          [](Observer& o) { o.bin_ratio = 1.41421356; }),
      row("200 stones of a face", "χ²",
          [](Observer& o) {
            o.picking = StonePicking::area;
            o.stones = 200;
          }),
      row("400 of a load, sorted and weighed", "χ²",
          [](Observer& o) {
            o.picking = StonePicking::whole;
            o.stones = 400;
            o.bin_ratio = 1.41421356;
            o.weighed = true;
          }),
  };
}

KnownPile coarser_by(double factor) {
  KnownPile pile;
  pile.median = factor * pile.median;
  return pile;
}

}  // namespace

SimulationResults run_simulation() {
  SimulationResults results{rows_of_coverage(), rows_of_plans(), rows_of_comparisons(), {}};
  unsigned seed = 1;
  for (auto& row : results.coverage) {
    row.held = coverage(row.pile, row.observer, looks_a_row, seed++);
  }
  for (auto& row : results.plans) {
    row.single = count_by_single_plan(row.risks, row.share, counts_a_row, seed++);
    row.sequential = count_by_sequential_plan(row.risks, row.share, counts_a_row, seed++);
  }
  const KnownPile even;
  for (auto& row : results.comparisons) {
    row.same_rock = found_different(even, even, row.observer, pairs_a_row, seed++);
    row.tenth_coarser = found_different(even, coarser_by(1.10), row.observer, pairs_a_row, seed++);
    row.quarter_coarser =
        found_different(even, coarser_by(1.25), row.observer, pairs_a_row, seed++);
  }
  for (const int stones : {30, 100, 300}) {
    results.neighbour_rule.push_back({stones, try_neighbour_rule(piles_a_row, stones, seed++)});
  }
  return results;
}

}  // namespace proofstone
