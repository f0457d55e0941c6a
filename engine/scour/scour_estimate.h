#pragma once

#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <vector>

#include "engine/method/method.h"
#include "engine/scour/regime_scour.h"
#include "engine/scour/toe_depth.h"

namespace proofstone {

/// What is known of the water and the bed where the scour at a toe is asked for. A method takes
/// what it needs; what is absent it names as missing.
struct ScourWater {
  std::optional<Discharge> discharge;  ///< of the main channel
  std::optional<Velocity> velocity;    ///< mean, main channel
  std::optional<Length> mean_depth;    ///< area over top width, main channel
  std::optional<Length> toe_depth;     ///< from the water to the bed at the toe
  std::optional<Length> top_width;
  std::optional<Slope> energy_slope;
  std::optional<Length> bend_radius;  ///< absent on a straight reach and on the inside of a bend
  std::optional<Length> bed_d50;
  std::optional<Length> bed_d90;
  std::optional<ScourSituation> situation;
};

/// Which allowance of a toe's depth a method estimates.
enum class ScourAllowance { long_term, contraction, general, bend, bedform, local, whole };

/// What one method says of the scour at a toe.
struct ScourEstimate {
  const Method* method = nullptr;
  ScourAllowance allowance = ScourAllowance::general;
  Length depth;  ///< below the existing bed at the toe
  Evaluation evaluation;
};

/// Ids of the methods that estimate an allowance, in the order lists show them.
std::vector<std::string> scour_method_ids();

/// Evaluates the scour method `id` with what `water` knows, and over it the designer's own inputs
/// (an object by input key, or nullptr). Problems: those of the method; "unknown-method".
Expected<ScourEstimate> estimate_scour(const std::string& id, const ScourWater& water,
                                       const nlohmann::json* own_inputs);

/// Puts an estimate to the allowance it stands for.
void add_estimate(ToeDepthInputs& toe, const ScourEstimate& estimate);

}  // namespace proofstone
