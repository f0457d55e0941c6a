#include "engine/blend/load_plan.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "engine/blend/blend_shares.h"

namespace proofstone {
namespace {

using Sense = BandCondition::Sense;

constexpr double most_loads_of_one = 100000;
constexpr int most_buckets = 40;
constexpr double alike = 0.05;  // percent of margin

Problem no_plan(const BlendTarget& target, const char* what) {
  std::string why = what;
  const auto nearest = nearest_blend(target);
  if (nearest && !nearest->misses.empty()) why += " " + why_infeasible(target, *nearest);
  return {"no-blend-serves", std::move(why), "", "", "another material, or a wider band"};
}

LoadPlan plan_of(const BlendTarget& target, const std::vector<double>& x,
                 const std::vector<double>& tonnes) {
  LoadPlan plan;
  double total = 0;
  for (std::size_t i = 0; i < target.materials(); ++i) {
    plan.loads.push_back(static_cast<int>(std::lround(x[i])));
    total += plan.loads.back() * tonnes[i];
  }
  for (std::size_t i = 0; i < target.materials(); ++i) {
    plan.shares.push_back(total > 0 ? plan.loads[i] * tonnes[i] / total : 0);
  }
  plan.mass = Mass::tonnes(total);
  plan.margin = target.margin(plan.shares);
  return plan;
}

/// What one load of each costs, in hundredths; empty where a price is not known. The mass of a
/// load, in kilograms, stands in for it.
struct LoadCosts {
  std::vector<double> of_load;
  std::optional<double> step;
  bool priced = true;
};

LoadCosts load_costs(const std::vector<OfferedMaterial>& materials,
                     const std::vector<double>& tonnes) {
  LoadCosts costs;
  costs.priced = std::all_of(materials.begin(), materials.end(), [](const OfferedMaterial& m) {
    return m.price_per_tonne.has_value();
  });
  long long step = 0;
  for (std::size_t i = 0; i < materials.size(); ++i) {
    const double one =
        costs.priced ? 100 * *materials[i].price_per_tonne * tonnes[i] : 1000 * tonnes[i];
    costs.of_load.push_back(std::round(one));
    step = std::gcd(step, static_cast<long long>(costs.of_load.back()));
  }
  if (step > 0) costs.step = static_cast<double>(step);
  return costs;
}

Problems problems_of_order(const std::vector<OfferedMaterial>& materials, const LoadOrder& order) {
  Problems problems;
  const double mass = order.least_mass.tonnes();
  if (!(std::isfinite(mass) && mass > 0)) {
    problems.push_back(
        {"not-positive", "The mass to bring is not above zero.", "", "mass", "more than 0"});
    return problems;
  }
  for (const auto& material : materials) {
    const double load = material.load ? material.load->tonnes() : 0;
    if (!(std::isfinite(load) && load > 0)) {
      problems.push_back({"load-not-known", "What one load of it holds is not known.", "",
                          material.name, "a load above 0"});
    } else if (mass / load > most_loads_of_one) {
      problems.push_back({"too-many-loads", "More than 100,000 loads would be needed.", "",
                          material.name, "a smaller mass or larger loads"});
    }
  }
  return problems;
}

IntegerProgram program_of(const BlendTarget& target, const std::vector<OfferedMaterial>& materials,
                          const LoadOrder& order, const LoadCosts& costs,
                          const std::vector<double>& tonnes) {
  IntegerProgram program;
  LinearRow enough;
  enough.sense = LinearRow::Sense::at_least;
  enough.bound = order.least_mass.tonnes();
  double heaviest = 0;
  for (const double load : tonnes) heaviest = std::max(heaviest, load);
  for (std::size_t i = 0; i < materials.size(); ++i) {
    // Whole loads that keep a narrow band may bring more than was asked for; LoadOrder says how
    // much more is looked at.
    double most = std::ceil((2 * enough.bound + 10 * heaviest) / tonnes[i]);
    if (materials[i].available) {
      most = std::min(most, std::floor(materials[i].available->tonnes() / tonnes[i] + 1e-9));
    }
    program.linear.add_variable(costs.of_load[i], 0, std::max(0.0, most));
    program.whole.push_back(true);
    enough.coefficients.push_back(tonnes[i]);
  }
  program.linear.rows.push_back(std::move(enough));
  for (const auto& line : target.lines) {
    auto row = row_of(line);
    for (std::size_t i = 0; i < tonnes.size(); ++i) {
      if (line.has_room) {
        row.coefficients[i] +=
            line.condition.sense == Sense::at_most ? order.margin : -order.margin;
      }
      row.coefficients[i] *= tonnes[i];
    }
    program.linear.rows.push_back(std::move(row));
  }
  program.value_step = costs.step;
  return program;
}

/// Exactly `loads` of equal mass, every line kept.
IntegerProgram whole_round(const BlendTarget& target, int loads) {
  IntegerProgram program;
  LinearRow whole;
  whole.sense = LinearRow::Sense::equal;
  whole.bound = loads;
  for (std::size_t i = 0; i < target.materials(); ++i) {
    program.linear.add_variable(0, 0, loads);
    program.whole.push_back(true);
    whole.coefficients.push_back(1);
  }
  program.linear.rows.push_back(std::move(whole));
  for (const auto& line : target.lines) program.linear.rows.push_back(row_of(line));
  return program;
}

/// The recipe of exactly `buckets` with the widest margin.
IntegerSolution recipe_of(const BlendTarget& target, int buckets) {
  auto program = whole_round(target, buckets);
  auto& linear = program.linear;
  const std::size_t t = linear.add_variable(-1, 0, 100);
  program.whole.push_back(false);
  for (std::size_t k = 0; k < target.lines.size(); ++k) {
    const auto& line = target.lines[k];
    if (!line.has_room) continue;
    auto& row = linear.rows[k + 1];
    row.coefficients.resize(t + 1, 0);
    row.coefficients[t] = line.condition.sense == Sense::at_most ? buckets : -buckets;
  }
  return solve(program);
}

}  // namespace

Expected<LoadPlan> cheapest_loads(const BlendTarget& target,
                                  const std::vector<OfferedMaterial>& materials,
                                  const LoadOrder& order) {
  if (auto problems = problems_of_order(materials, order); !problems.empty()) return problems;
  std::vector<double> tonnes;
  for (const auto& material : materials) {
    if (material.load) tonnes.push_back(material.load->tonnes());
  }
  const auto costs = load_costs(materials, tonnes);
  const auto solution =
      solve(program_of(target, materials, order, costs, tonnes), order.most_programs);
  if (solution.x.empty()) {
    return solution.proven
               ? no_plan(
                     target,
                     "No whole loads of what is available, up to twice the mass, keep every limit.")
               : Problem{"search-cut-short", "No plan was found in the work allowed.", "", "",
                         "fewer materials, or a wider band"};
  }
  auto plan = plan_of(target, solution.x, tonnes);
  plan.cost = costs.priced ? solution.value / 100 : 0;
  plan.bound = costs.priced ? solution.bound / 100 : solution.bound;
  plan.proven = solution.proven;
  plan.programs = solution.programs;
  return plan;
}

Expected<LoadPlan> best_recipe(const BlendTarget& target, int buckets) {
  if (buckets < 1 || buckets > most_buckets) {
    return Problem{"buckets-out-of-range", fmt::format("{} buckets make no recipe.", buckets), "",
                   "buckets", fmt::format("1 to {}", most_buckets)};
  }
  const std::vector<double> even(target.materials(), 1);
  std::optional<LoadPlan> best;
  std::size_t programs = 0;
  bool proven = true;
  for (int all = 1; all <= buckets; ++all) {
    const auto solution = recipe_of(target, all);
    programs += solution.programs;
    proven = proven && solution.proven;
    if (solution.x.empty()) continue;
    auto plan = plan_of(target, solution.x, even);
    if (!best || plan.margin > best->margin + alike) best = std::move(plan);
  }
  if (!best) return no_plan(target, "No recipe of whole buckets keeps every limit.");
  best->proven = proven;
  best->programs = programs;
  best->bound = best->margin;
  return *best;
}

Expected<LoadPlan> cheapest_round(const BlendTarget& target,
                                  const std::vector<double>& cost_of_load, std::size_t kept,
                                  int most_loads) {
  if (most_loads < 2 || most_loads > most_buckets) {
    return Problem{"loads-out-of-range", fmt::format("{} loads make no blend.", most_loads), "",
                   "loads", fmt::format("2 to {}", most_buckets)};
  }
  const bool sound = cost_of_load.size() == target.materials() && kept < target.materials() &&
                     std::all_of(
                         cost_of_load.begin(), cost_of_load.end(),
                         [](double cost) { return std::isfinite(cost) && cost >= 0; });
  if (!sound) {
    return Problem{"bad-cost", "A cost is not a number from 0 up.", "", "", "one a material"};
  }
  const std::vector<double> even(target.materials(), 1);
  std::optional<LoadPlan> best;
  std::size_t programs = 0;
  bool proven = true;
  for (int all = 2; all <= most_loads; ++all) {
    auto program = whole_round(target, all);
    program.linear.cost = cost_of_load;
    program.linear.lower[kept] = 1;
    const auto solution = solve(program);
    programs += solution.programs;
    proven = proven && solution.proven;
    if (solution.x.empty()) continue;
    const double each = solution.value / all;
    if (best && !(each < best->cost - 1e-9)) continue;
    best = plan_of(target, solution.x, even);
    best->cost = each;
  }
  if (!best) return no_plan(target, "No round of whole loads keeps every limit.");
  best->proven = proven;
  best->programs = programs;
  best->bound = best->cost;
  return *best;
}

}  // namespace proofstone
