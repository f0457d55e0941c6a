#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/blend/blend_target.h"

namespace proofstone {

/// What a share may be, whatever the others are: over all blends that keep every line.
struct ShareRange {
  double least = 0;
  double most = 1;
};

/// A blend by shares of mass.
struct SharedBlend {
  std::vector<double> shares;  ///< one a material; 1 together
  double margin = 0;           ///< least distance to a limit, percent
  /// Lines that stand at the least margin: what holds the blend where it is.
  std::vector<std::size_t> binding;
};

/// The range of every share over the blends that keep all lines; for two materials the one
/// interval. Absent when no blend keeps them.
std::optional<std::vector<ShareRange>> feasible_ranges(const BlendTarget& target);

/// The blend that stands furthest inside: the largest t with every limit kept by t percent. Its
/// margin is negative when no blend keeps them all, and then t is by how much the worst line is
/// missed. Absent when limits at 0 or 100 %, which know no margin, cannot be kept.
std::optional<SharedBlend> widest_margin(const BlendTarget& target);

/// The blend that costs least for each tonne and keeps every limit by at least `margin` percent.
/// Absent when none does, or a material has no price.
std::optional<SharedBlend> cheapest_shares(const BlendTarget& target,
                                           const std::vector<OfferedMaterial>& materials,
                                           double margin);

/// Closest, in the sum of squares, to the middle between the limiting curves at every size of the
/// band; shares from 0, 1 together.
Expected<SharedBlend> best_fit(const BlendTarget& target);

/// What stands in the way when no blend keeps every line: the blend that misses least in all.
struct Miss {
  std::size_t line = 0;
  double percent = 0;  ///< missed by
  /// No material by itself keeps this line: what is missing is a material, not a proportion.
  bool no_material_keeps = false;
};
struct NearestBlend {
  std::vector<double> shares;
  std::vector<Miss> misses;
  /// Lines kept without room, which hold the blend back.
  std::vector<std::size_t> held_by;
};
std::optional<NearestBlend> nearest_blend(const BlendTarget& target);

/// One sentence for people: which limits are missed, by how much, what holds the blend back, and
/// whether any material could help.
std::string why_infeasible(const BlendTarget& target, const NearestBlend& nearest);

/// Shares must be 1 together: a sum off by more than 0.001 is refused, never scaled in silence.
Problems problems_of_shares(const std::vector<double>& shares);

}  // namespace proofstone
