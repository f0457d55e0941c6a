#pragma once

#include <optional>

#include "engine/method/typed_method.h"

namespace proofstone {

/// Keys that hold a bank's layer at its ends and between: trenches up the bank, filled with its
/// rock, so that water that finds a way round an end does not roll the layer up.
///
/// Published: a tieback every one or two channel widths, one at least at the downstream end (WES
/// Streambank Handbook §7.1.4.5, of stone toes); an end half as thick again over 3 ft (Urban Storm
/// Drainage Criteria Manual, from memory). No document held here states the depth of a key; twice
/// the layer is common practice.
struct KeyTrenchInputs {
  Length layer_thickness;
  Length slope_length;                     ///< along the bank, from the toe to the top of the rock
  std::optional<Length> channel_width;     ///< of the water, for the spacing
  std::optional<Length> protected_length;  ///< along the bank, ends included, for the number
  std::optional<Length> key_depth;         ///< square to the slope, from the layer's surface
  std::optional<Length> bottom_width;
  Slope trench_slope = Slope::ratio(1);  ///< of its sides
  Dimensionless spacing_widths = Dimensionless::number(2);
};

struct KeyTrenchResult {
  Length depth;
  Length bottom_width;
  Length top_width;    ///< at the underside of the layer
  Area cross_section;  ///< of its rock below the layer's underside
  Volume volume;       ///< of one key
  Length spacing;      ///< 0 where the width of the channel is not known
  Dimensionless keys;  ///< both ends counted; 0 where the length is not known
  Volume total_volume;
};

/// Problems: a key no deeper than the layer.
Expected<KeyTrenchResult> key_trench(const KeyTrenchInputs& inputs, Steps& steps);

const Method& key_trench_method();

}  // namespace proofstone
