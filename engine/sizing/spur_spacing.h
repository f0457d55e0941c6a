#pragma once

#include <optional>

#include "engine/method/typed_method.h"

namespace proofstone {

/// Whether water passes through a spur.
enum class SpurKind { impermeable, permeable };

/// Spacing of spurs along a bank: S = L·cotθe with the expansion angle θe of the flow behind a
/// spur, about 17° for impermeable spurs; FHWA HEC-23 Vol. 2 (2009) Design Guideline 2.
struct SpurSpacingInputs {
  SpurKind kind = SpurKind::impermeable;
  Length projected_length;               ///< perpendicular to the flow, from the bank
  std::optional<Angle> expansion_angle;  ///< 17° for impermeable spurs when absent
  std::optional<Length> bankfull_width;  ///< only to watch the limit
};

struct SpurSpacingResult {
  Angle expansion_angle;
  Length spacing;
};

/// Problems: a permeable spur without its expansion angle.
Expected<SpurSpacingResult> spur_spacing(const SpurSpacingInputs& inputs, Steps& steps);

const Method& spur_spacing_method();

}  // namespace proofstone
