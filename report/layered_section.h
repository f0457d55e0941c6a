#pragma once

#include <nlohmann/json_fwd.hpp>
#include <optional>

#include "engine/site/layered_drawing.h"
#include "engine/site/typical_section.h"

namespace proofstone {

/// A typical section as lines and words in feet or metres, station to the right and elevation
/// upward, each on the layer of what it shows. Stones stand on a layer of their own; every word
/// stands beside what it names, tied to it by a line. Nothing where there is no rock to draw.
std::optional<LayeredDrawing> layered_section(const TypicalSectionPicture& picture,
                                              UnitSystem units);

/// Sets `other` below what is drawn already, under its title, from the same left edge on. Both are
/// in the same unit.
void place_below(LayeredDrawing& drawing, const LayeredDrawing& other);

/// {title, unit, lines: [{layer, closed, points: [[x, y]]}], texts: [{layer, at, height, text}]}
nlohmann::json layered_drawing_json(const LayeredDrawing& drawing);

}  // namespace proofstone
