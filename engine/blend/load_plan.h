#pragma once

#include "engine/blend/blend_target.h"
#include "engine/blend/integer_program.h"

namespace proofstone {

/// Whole loads of every material.
struct LoadPlan {
  std::vector<int> loads;      ///< one a material
  std::vector<double> shares;  ///< of the mass
  Mass mass;                   ///< of all loads
  double cost = 0;             ///< of all loads; 0 where a price is not known
  double margin = 0;           ///< least distance to a limit, percent
  bool proven = false;         ///< nothing better exists
  double bound = 0;            ///< no plan is better than this: cost, or margin
  std::size_t programs = 0;    ///< linear programs the search took
};

/// What an order of whole loads must bring. Plans that bring up to twice the least mass and ten
/// loads more are looked at.
struct LoadOrder {
  Mass least_mass;
  double margin = 0;  ///< every limit kept by at least this, percent
  std::size_t most_programs = 20000;
};

/// The cheapest whole loads that bring at least the mass and keep every limit; of least mass where
/// a price is not known. No more than is available of anything. Problems: a load that is not known,
/// a mass without meaning or so large that more than 100,000 loads would be needed, no plan.
Expected<LoadPlan> cheapest_loads(const BlendTarget& target,
                                  const std::vector<OfferedMaterial>& materials,
                                  const LoadOrder& order);

/// Whole buckets of equal mass, `buckets` or fewer together, that keep every limit with the widest
/// margin; of recipes alike in margin to 0.05 %, the one with the fewest buckets. Problems: fewer
/// than 1 or more than 40 buckets, no recipe.
Expected<LoadPlan> best_recipe(const BlendTarget& target, int buckets);

/// A round of at most `most_loads` loads of equal mass with at least one of material `kept` that
/// keeps every limit: the one whose loads of the others cost least for each load of the round,
/// `cost_of_load` being one a material. Problems: fewer than 2 or more than 40 loads, costs below
/// zero, no round.
Expected<LoadPlan> cheapest_round(const BlendTarget& target,
                                  const std::vector<double>& cost_of_load, std::size_t kept,
                                  int most_loads);

}  // namespace proofstone
