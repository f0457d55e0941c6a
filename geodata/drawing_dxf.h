#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>

#include "engine/finding/problem.h"
#include "engine/site/layered_drawing.h"

namespace proofstone {

/// A drawing as the request interface answers it.
LayeredDrawing layered_drawing_from(const nlohmann::json& drawing);

/// Writes a drawing as DXF: lines and outlines as polylines, words as texts, each on its layer.
/// Coordinates stand in the unit of the drawing. Problem (not-writable): the file cannot be
/// written.
Problems write_drawing_dxf(const LayeredDrawing& drawing, const std::string& path);

}  // namespace proofstone
