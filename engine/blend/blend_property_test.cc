// The solver against a general one, at random, and what must hold of every blend.
#include <glpk.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <numeric>

#include "engine/blend/blend_examples.h"
#include "engine/blend/blend_shares.h"
#include "engine/blend/load_plan.h"
#include "engine/blend/simplex_fit.h"

namespace proofstone {
namespace {

using GeneralProgram = std::unique_ptr<glp_prob, decltype(&glp_delete_prob)>;

/// What the general solver says of a program; absent where it finds no solution.
struct GeneralAnswer {
  bool optimal = false;
  bool infeasible = false;
  double value = 0;
};

GeneralProgram general(const LinearProgram& program, const std::vector<bool>& whole) {
  GeneralProgram given(glp_create_prob(), &glp_delete_prob);
  glp_term_out(GLP_OFF);
  const int columns = static_cast<int>(program.cost.size());
  glp_add_cols(given.get(), columns);
  for (int j = 0; j < columns; ++j) {
    const auto at = static_cast<std::size_t>(j);
    const bool open = !std::isfinite(program.upper[at]);
    const bool fixed = !open && !(program.lower[at] < program.upper[at]);
    glp_set_col_bnds(given.get(), j + 1, open ? GLP_LO : (fixed ? GLP_FX : GLP_DB),
                     program.lower[at], open ? 0 : program.upper[at]);
    glp_set_obj_coef(given.get(), j + 1, program.cost[at]);
    if (!whole.empty() && whole[at]) glp_set_col_kind(given.get(), j + 1, GLP_IV);
  }
  for (const auto& row : program.rows) {
    const int number = glp_add_rows(given.get(), 1);
    const int kind = row.sense == LinearRow::Sense::equal
                         ? GLP_FX
                         : (row.sense == LinearRow::Sense::at_most ? GLP_UP : GLP_LO);
    glp_set_row_bnds(given.get(), number, kind, row.bound, row.bound);
    std::vector<int> places{0};
    std::vector<double> entries{0};
    for (std::size_t j = 0; j < row.coefficients.size(); ++j) {
      places.push_back(static_cast<int>(j) + 1);
      entries.push_back(row.coefficients[j]);
    }
    glp_set_mat_row(given.get(), number, static_cast<int>(row.coefficients.size()), places.data(),
                    entries.data());
  }
  return given;
}

GeneralAnswer asked_of_general(const LinearProgram& program, const std::vector<bool>& whole) {
  const auto given = general(program, whole);
  glp_smcp simplex;
  glp_init_smcp(&simplex);
  simplex.msg_lev = GLP_MSG_OFF;
  GeneralAnswer answer;
  if (glp_simplex(given.get(), &simplex) != 0) return answer;
  const int status = glp_get_status(given.get());
  answer.infeasible = status == GLP_NOFEAS || status == GLP_INFEAS;
  answer.optimal = status == GLP_OPT;
  answer.value = glp_get_obj_val(given.get());
  if (whole.empty() || !answer.optimal) return answer;
  glp_iocp search;
  glp_init_iocp(&search);
  search.msg_lev = GLP_MSG_OFF;
  search.tol_int = 1e-7;
  search.mip_gap = 0;
  answer.optimal = glp_intopt(given.get(), &search) == 0 && glp_mip_status(given.get()) == GLP_OPT;
  answer.infeasible = glp_mip_status(given.get()) == GLP_NOFEAS;
  answer.value = glp_mip_obj_val(given.get());
  return answer;
}

double some(int low, int high) { return *rc::gen::inRange(low, high + 1); }

/// Whole numbers as coefficients, so that a program is feasible or not by a wide step.
LinearProgram some_program() {
  LinearProgram program;
  const int variables = *rc::gen::inRange(1, 9);
  const int rows = *rc::gen::inRange(1, 13);
  for (int j = 0; j < variables; ++j) {
    const double low = some(-5, 5);
    const bool open = *rc::gen::inRange(0, 4) == 0;
    program.add_variable(some(-9, 9), low, open ? LinearProgram::unlimited : low + some(0, 20));
  }
  for (int i = 0; i < rows; ++i) {
    LinearRow row;
    for (int j = 0; j < variables; ++j) row.coefficients.push_back(some(-9, 9));
    const int sense = *rc::gen::inRange(0, 5);
    row.sense = sense == 0 ? LinearRow::Sense::equal
                           : (sense < 3 ? LinearRow::Sense::at_most : LinearRow::Sense::at_least);
    row.bound = some(-40, 40);
    program.rows.push_back(std::move(row));
  }
  return program;
}

/// Two to eight rocks with random curves over common sieves, and a band round one of their blends.
struct RandomBlend {
  std::vector<OfferedMaterial> materials;
  GradationBand band;
};

RandomBlend some_blend() {
  const std::vector<double> sieves{25, 50, 100, 150, 225, 300, 450, 600};
  RandomBlend blend;
  const int count = *rc::gen::inRange(2, 9);
  std::vector<double> of_blend(sieves.size(), 0);
  for (int i = 0; i < count; ++i) {
    std::vector<double> percents;
    double now = 0;
    for (std::size_t k = 0; k < sieves.size(); ++k) {
      now = std::min(100.0, now + some(0, 35));
      percents.push_back(now);
    }
    percents.back() = 100;
    for (std::size_t k = 0; k < sieves.size(); ++k) of_blend[k] += percents[k] / count;
    auto material = offered("rock " + std::to_string(i + 1), curve_of_sieves(sieves, percents));
    material.price_per_tonne = some(500, 4000) / 100;
    material.load = Mass::tonnes(some(8, 25));
    blend.materials.push_back(std::move(material));
  }
  const double half = some(3, 12);
  std::vector<double> low;
  std::vector<double> high;
  for (const double percent : of_blend) {
    low.push_back(std::max(0.0, percent - half));
    high.push_back(std::min(100.0, percent + half));
  }
  blend.band = band_of_sieves(sieves, low, high);
  return blend;
}

TEST(BlendProperty, LinearProgramsAgreeWithAGeneralSolver) {
  EXPECT_TRUE(rc::check("same status, same value", [] {
    const auto program = some_program();
    const auto ours = solve(program);
    const auto theirs = asked_of_general(program, {});
    RC_ASSERT(ours.status != ProgramStatus::gave_up);
    RC_ASSERT((ours.status == ProgramStatus::optimal) == theirs.optimal);
    RC_ASSERT((ours.status == ProgramStatus::infeasible) == theirs.infeasible);
    if (theirs.optimal) {
      RC_ASSERT(std::abs(ours.value - theirs.value) <= 1e-6 * (1 + std::abs(theirs.value)));
      RC_ASSERT(largest_miss(program, ours.x) < 1e-6);
    }
  }));
}

TEST(BlendProperty, IntegerProgramsAgreeWithAGeneralSolver) {
  EXPECT_TRUE(rc::check("same status, same value", [] {
    IntegerProgram program{some_program(), {}, std::nullopt};
    for (double& upper : program.linear.upper) upper = std::min(upper, 15.0);
    for (std::size_t j = 0; j < program.linear.cost.size(); ++j) {
      program.whole.push_back(*rc::gen::inRange(0, 3) > 0);
    }
    const auto ours = solve(program);
    const auto theirs = asked_of_general(program.linear, program.whole);
    RC_ASSERT(ours.proven);
    RC_ASSERT((ours.status == ProgramStatus::optimal) == theirs.optimal);
    if (theirs.optimal) {
      RC_ASSERT(std::abs(ours.value - theirs.value) <= 1e-6 * (1 + std::abs(theirs.value)));
      RC_ASSERT(largest_miss(program.linear, ours.x) < 1e-6);
    }
  }));
}

TEST(BlendProperty, ABandRoundABlendIsKeptAndSharesAreWhole) {
  EXPECT_TRUE(rc::check("a margin is found and shares are one", [] {
    const auto blend = some_blend();
    const auto target = *blend_target(blend.materials, blend.band);
    const auto widest = widest_margin(target);
    RC_ASSERT(widest.has_value());
    RC_ASSERT(widest->margin > -1e-6);
    double sum = 0;
    for (const double share : widest->shares) {
      RC_ASSERT(share >= 0);
      sum += share;
    }
    RC_ASSERT(std::abs(sum - 1) < 1e-12);
    const auto fit = best_fit(target);
    RC_ASSERT(bool(fit));
    RC_ASSERT(std::abs(std::accumulate(fit->shares.begin(), fit->shares.end(), 0.0) - 1) < 1e-9);
    const auto cheapest = cheapest_shares(target, blend.materials, 0);
    RC_ASSERT(cheapest.has_value());
    RC_ASSERT(cheapest->margin > -1e-6);
    const auto ranges = feasible_ranges(target);
    RC_ASSERT(ranges.has_value());
    for (std::size_t i = 0; i < ranges->size(); ++i) {
      RC_ASSERT(cheapest->shares[i] > (*ranges)[i].least - 1e-6);
      RC_ASSERT(cheapest->shares[i] < (*ranges)[i].most + 1e-6);
    }
  }));
}

TEST(BlendProperty, TheBestFitIsNoWorseThanAnyOther) {
  EXPECT_TRUE(rc::check("least squares", [] {
    const int count = *rc::gen::inRange(1, 9);
    std::vector<std::vector<double>> columns(count, std::vector<double>(7));
    for (auto& column : columns) {
      for (double& percent : column) percent = some(0, 100);
    }
    std::vector<double> target(7);
    for (double& percent : target) percent = some(0, 100);
    const auto shares = best_fit_shares(columns, target);
    RC_ASSERT(bool(shares));
    std::vector<double> other(count);
    double sum = 0;
    for (double& share : other) sum += share = some(0, 100) + 0.01;
    for (double& share : other) share /= sum;
    const double best = squared_misfit(columns, target, *shares);
    RC_ASSERT(best <= squared_misfit(columns, target, other) + 1e-6);
    for (std::size_t j = 0; j < columns.size(); ++j) {
      std::vector<double> step = *shares;
      for (double& share : step) share *= 0.999;
      step[j] += 0.001;
      RC_ASSERT(best <= squared_misfit(columns, target, step) + 1e-6);
    }
  }));
}

TEST(BlendProperty, WholeLoadsKeepTheBandAndAgreeWithAGeneralSolver) {
  EXPECT_TRUE(rc::check("loads", [] {
    const auto blend = some_blend();
    const auto target = *blend_target(blend.materials, blend.band);
    const auto plan = cheapest_loads(target, blend.materials, {Mass::tonnes(some(100, 900))});
    if (!plan) {
      RC_ASSERT(plan.problems().front().code == "no-blend-serves");
      return;
    }
    RC_ASSERT(plan->margin > -1e-5);
    RC_ASSERT(plan->proven);
    const auto shares = cheapest_shares(target, blend.materials, 0);
    RC_ASSERT(shares.has_value());
    double least = 0;
    for (std::size_t i = 0; i < shares->shares.size(); ++i) {
      least += shares->shares[i] * *blend.materials[i].price_per_tonne;
    }
    // Whole loads never cost less than the same mass in free shares.
    RC_ASSERT(plan->cost >= least * plan->mass.tonnes() - 0.5);
  }));
}

}  // namespace
}  // namespace proofstone
