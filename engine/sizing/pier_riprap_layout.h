#pragma once

#include <optional>

#include "engine/method/typed_method.h"

namespace proofstone {

/// How far and how thick rock lies round a bridge pier: FHWA HEC-23 Vol. 2 (2009) Design Guideline
/// 11. Twice the pier's width across the flow on all sides, 3·D50 thick or, where contraction scour
/// is deeper than that, as thick as contraction scour and long-term lowering together.
struct PierRiprapLayoutInputs {
  Length d50;  ///< median size of the class chosen
  Length pier_width;
  Length pier_length;
  Angle skew;  ///< of the flow to the pier's axis
  Length contraction_scour;
  Length degradation;  ///< long-term
};

struct PierRiprapLayoutResult {
  Length projected_width;  ///< a', across the flow
  Length extent;           ///< of the rock from the pier's face, on all sides
  Length filter_extent;    ///< of the filter from the pier's face
  Length thickness;        ///< placed in the dry
  Volume volume;           ///< of a rectangular layer round the pier
};

Expected<PierRiprapLayoutResult> pier_riprap_layout(const PierRiprapLayoutInputs& inputs,
                                                    Steps& steps);

const Method& pier_riprap_layout_method();

}  // namespace proofstone
