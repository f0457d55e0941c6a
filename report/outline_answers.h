#pragma once

#include <array>
#include <map>
#include <nlohmann/json_fwd.hpp>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/vision/outline_photo.h"
#include "engine/vision/photo.h"

namespace proofstone {

/// Outlines as documents hold them: corners [x, y], each to a tenth of a pixel, which is finer than
/// anything that was seen.
std::vector<std::vector<std::array<double, 2>>> outlines_in_tenths(
    const std::vector<std::vector<PhotoPoint>>& outlines);

/// Marker boards in sight: a list of `number`, `markers` as documents hold them, and
/// `marker_numbers` of all that the board has.
nlohmann::json boards_json(const std::map<int, std::vector<SeenMarker>>& boards);

/// Diameter in pixels of the photo below which stones are lost, to a tenth.
double smallest_drawn(const OutlinedPhoto& found);

/// What was found on a photo, as JSON text: `outlines`, `balls` [{middle, radius}],
/// `smallest_drawn`, `working_pixel`, `rock_share`, `cautions` and `boards`; or `problems`.
std::string outlined_answer(const PhotoPixels& photo, const OutlineNetwork& network,
                            const std::string& where, const OutlineProgress& progress = {});

/// What tells the scale of a photo whose stones nobody looks for, as JSON text: `balls`, `boards`
/// and `cautions`; or `problems`.
std::string marks_answer(const PhotoPixels& photo, const std::string& where);

/// What somebody changes about outlines, as JSON text in and out: `ask` is `join` (`outlines`),
/// `cut` (`outlines` of one, `line`) or `draw` (`path`, `outlines` of others, `width`, `height`),
/// each with `pixel`. The answer holds `outlines` or `problems`.
std::string answer_outline_edit(std::string_view json_text);

}  // namespace proofstone
