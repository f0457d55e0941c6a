#include "engine/blend/blend_shares.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/blend/simplex_fit.h"
#include "engine/quantity/measure.h"

namespace proofstone {
namespace {

using Sense = BandCondition::Sense;

constexpr double at_limit = 1e-6;      // percent
constexpr double share_slack = 0.001;  // of a sum of shares

/// Shares 0 to 1, one together, every line kept by `margin` where it has room.
LinearProgram program_of(const BlendTarget& target, double margin) {
  LinearProgram program;
  LinearRow whole;
  whole.sense = LinearRow::Sense::equal;
  whole.bound = 1;
  for (std::size_t i = 0; i < target.materials(); ++i) {
    program.add_variable(0, 0, 1);
    whole.coefficients.push_back(1);
  }
  program.rows.push_back(std::move(whole));
  for (const auto& line : target.lines) {
    auto row = row_of(line);
    if (line.has_room) row.bound = line.condition.sense == Sense::at_most ? -margin : margin;
    program.rows.push_back(std::move(row));
  }
  return program;
}

/// Cleans what rounding left of shares: none below zero, one together.
std::vector<double> shares_from(const std::vector<double>& x, std::size_t count) {
  std::vector<double> shares(x.begin(), x.begin() + static_cast<std::ptrdiff_t>(count));
  double sum = 0;
  for (double& share : shares) {
    if (share < 1e-10) share = 0;
    sum += share;
  }
  for (double& share : shares) share /= sum;
  return shares;
}

SharedBlend blend_of(const BlendTarget& target, std::vector<double> shares) {
  SharedBlend blend;
  blend.margin = target.margin(shares);
  for (std::size_t k = 0; k < target.lines.size(); ++k) {
    const auto& line = target.lines[k];
    const double over = BlendTarget::percent(line, shares) - line.condition.percent;
    const double room = line.condition.sense == Sense::at_most ? -over : over;
    if (line.has_room && std::abs(room - blend.margin) < at_limit) blend.binding.push_back(k);
  }
  blend.shares = std::move(shares);
  return blend;
}

/// "largest stone at most 20 in"; the wording of the class, else what is counted.
std::string words_of(const BandCondition& condition) {
  if (!condition.wording.empty()) return condition.wording;
  return fmt::format(
      "{} {} % smaller than {} mm", condition.sense == Sense::at_most ? "at most" : "at least",
      significant(condition.percent, 4), significant(condition.size.millimeters(), 4));
}

}  // namespace

std::optional<std::vector<ShareRange>> feasible_ranges(const BlendTarget& target) {
  auto program = program_of(target, 0);
  std::vector<ShareRange> ranges;
  for (std::size_t i = 0; i < target.materials(); ++i) {
    ShareRange range;
    for (const double sign : {1.0, -1.0}) {
      std::fill(program.cost.begin(), program.cost.end(), 0);
      program.cost[i] = sign;
      const auto solution = solve(program);
      if (solution.status != ProgramStatus::optimal) return std::nullopt;
      (sign > 0 ? range.least : range.most) = std::clamp(solution.x[i], 0.0, 1.0);
    }
    ranges.push_back(range);
  }
  return ranges;
}

std::optional<SharedBlend> widest_margin(const BlendTarget& target) {
  auto program = program_of(target, 0);
  // Percents differ by 100 at most, so no margin is larger.
  const std::size_t t = program.add_variable(-1, -100, 100);
  for (std::size_t k = 0; k < target.lines.size(); ++k) {
    const auto& line = target.lines[k];
    if (!line.has_room) continue;
    auto& row = program.rows[k + 1];
    row.coefficients.resize(t + 1, 0);
    row.coefficients[t] = line.condition.sense == Sense::at_most ? 1 : -1;
  }
  const auto solution = solve(program);
  if (solution.status != ProgramStatus::optimal) return std::nullopt;
  return blend_of(target, shares_from(solution.x, target.materials()));
}

std::optional<SharedBlend> cheapest_shares(const BlendTarget& target,
                                           const std::vector<OfferedMaterial>& materials,
                                           double margin) {
  auto program = program_of(target, margin);
  for (std::size_t i = 0; i < materials.size(); ++i) {
    if (!materials[i].price_per_tonne) return std::nullopt;
    program.cost[i] = *materials[i].price_per_tonne;
  }
  const auto solution = solve(program);
  if (solution.status != ProgramStatus::optimal) return std::nullopt;
  return blend_of(target, shares_from(solution.x, target.materials()));
}

Expected<SharedBlend> best_fit(const BlendTarget& target) {
  std::vector<std::vector<double>> columns(target.materials());
  std::vector<double> middle;
  for (const auto& point : target.middle) {
    middle.push_back(point.percent);
    for (std::size_t i = 0; i < columns.size(); ++i) columns[i].push_back(point.percents[i]);
  }
  const auto shares = best_fit_shares(columns, middle);
  if (!shares) return shares.problems();
  return blend_of(target, *shares);
}

std::optional<NearestBlend> nearest_blend(const BlendTarget& target) {
  auto program = program_of(target, 0);
  for (std::size_t k = 0; k < target.lines.size(); ++k) {
    const std::size_t elastic = program.add_variable(1);
    auto& row = program.rows[k + 1];
    row.coefficients.resize(elastic + 1, 0);
    row.coefficients[elastic] = target.lines[k].condition.sense == Sense::at_most ? -1 : 1;
  }
  const auto solution = solve(program);
  if (solution.status != ProgramStatus::optimal) return std::nullopt;
  NearestBlend nearest;
  nearest.shares = shares_from(solution.x, target.materials());
  for (std::size_t k = 0; k < target.lines.size(); ++k) {
    const auto& line = target.lines[k];
    const double missed = BlendTarget::miss(line, nearest.shares);
    const double over = BlendTarget::percent(line, nearest.shares) - line.condition.percent;
    if (missed > at_limit) {
      Miss miss{k, missed, true};
      for (const double percent : line.percents) {
        const double alone = percent - line.condition.percent;
        const bool kept =
            line.condition.sense == Sense::at_most ? alone <= at_limit : alone >= -at_limit;
        if (kept) miss.no_material_keeps = false;
      }
      nearest.misses.push_back(miss);
    } else if (std::abs(over) < at_limit && line.has_room) {
      nearest.held_by.push_back(k);
    }
  }
  return nearest;
}

std::string why_infeasible(const BlendTarget& target, const NearestBlend& nearest) {
  std::string sentence;
  for (const auto& miss : nearest.misses) {
    const auto& line = target.lines[miss.line];
    const double has = BlendTarget::percent(line, nearest.shares);
    sentence += fmt::format("{}The nearest blend misses \"{}\" by {} % (it has {} %)",
                            sentence.empty() ? "" : " ", words_of(line.condition),
                            significant(miss.percent, 2), significant(has, 3));
    sentence += miss.no_material_keeps ? "; no material on offer keeps it by itself." : ".";
  }
  if (!nearest.held_by.empty()) {
    std::string held;
    for (const std::size_t k : nearest.held_by) {
      held += (held.empty() ? "\"" : ", \"") + words_of(target.lines[k].condition) + "\"";
    }
    sentence += fmt::format(" More cannot be mended without breaking {}.", held);
  }
  return sentence;
}

Problems problems_of_shares(const std::vector<double>& shares) {
  Problems problems;
  double sum = 0;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    if (!(std::isfinite(shares[i]) && shares[i] >= 0)) {
      problems.push_back({"bad-share", "A share is not a number from 0 up.", "",
                          fmt::format("share {}", i + 1), "0 to 1"});
    }
    sum += shares[i];
  }
  if (problems.empty() && !(std::abs(sum - 1) <= share_slack)) {
    problems.push_back({"shares-not-whole",
                        fmt::format("The shares are {} % together.", significant(100 * sum, 4)), "",
                        "shares", "100 % together, to 0.1 %"});
  }
  return problems;
}

}  // namespace proofstone
