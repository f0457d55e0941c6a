#pragma once

#include <optional>

#include "engine/method/typed_method.h"

namespace proofstone {

/// Where a blanket lies, which decides how densely it is held down.
enum class AnchorPlace {
  gentle_slope,  ///< 3H:1V or flatter
  steep_slope,   ///< steeper
  channel,       ///< in a channel, under high flow
};

/// Stakes or staples of a blanket on a square grid and along its edges. The grid is arithmetic; the
/// densities are common practice.
struct BlanketAnchorsInputs {
  Area area;
  Length spacing;                      ///< of a square grid
  std::optional<Length> perimeter;     ///< of the edges in trenches
  std::optional<Length> edge_spacing;  ///< along them; absent: the grid's
  AnchorPlace place = AnchorPlace::channel;
};

struct BlanketAnchorsResult {
  Dimensionless per_square_yard;         ///< of the grid
  Dimensionless wanted_per_square_yard;  ///< common practice
  Length wanted_spacing;                 ///< of a square grid with that density
  Dimensionless in_field;
  Dimensionless along_edges;
  Dimensionless total;
};

Expected<BlanketAnchorsResult> blanket_anchors(const BlanketAnchorsInputs& inputs, Steps& steps);

const Method& blanket_anchors_method();

}  // namespace proofstone
