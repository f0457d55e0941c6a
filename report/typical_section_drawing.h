#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/site/typical_section.h"
#include "report/rock_packing.h"

namespace proofstone {

/// What a line of a typical section shows.
enum class SectionRole {
  ground,
  water,
  bare_rock,
  soil_filled_rock,
  void_filled_rock,
  grouted_rock,
  stone,
  bedding,
  fabric,
  topsoil,
  blanket,
  stake,
  trench,
  structure,
  flow,
  dimension,
};

/// The name of the layer on which drawing programs find it: "GROUND", "ROCK-SOIL-FILLED" …
std::string_view drawing_layer_name(SectionRole role);

/// One line or area, in metres: station to the right, elevation upward.
struct SectionShape {
  SectionRole role = SectionRole::ground;
  bool closed = false;
  std::vector<SectionPlace> points;
};

/// A word on the drawing and the place it points at.
struct SectionNote {
  SectionRole role = SectionRole::ground;
  SectionPlace at;
  std::string text;
};

/// A stretch of rock that stones are drawn in.
struct RockStretch {
  SectionRole role = SectionRole::bare_rock;
  LayerStrip strip;
  double from = 0;  ///< along the strip
  double to = 0;
  std::vector<SectionPlace> outline;
};

/// A typical section as neutral lines and words, from which the picture is drawn and files of
/// drawing programs are written.
struct TypicalSectionDrawing {
  std::string title;
  std::vector<SectionShape> shapes;  ///< what lies lower comes first
  std::vector<SectionNote> notes;
  std::vector<RockStretch> rocks;
  SectionWindow works;  ///< round everything that is built
  bool channel_on_right = true;
  bool level = false;           ///< as much is seen on the one side as on the other
  bool in_plan = false;         ///< from above: there is no ground, thickness or slope
  SectionPlace thickness_from;  ///< dimension of the layer, square to it
  SectionPlace thickness_to;
  std::string thickness_text;
  SectionPlace slope_middle;  ///< below the layer, where the slope is told
  double rise_per_run = 0;    ///< falls toward the channel
  std::string slope_text;     ///< empty: none is told
};

/// Nothing where the surface has no length, or the layer no thickness.
std::optional<TypicalSectionDrawing> typical_section_drawing(const TypicalSectionPicture& picture);

/// Outlines of the stones of a stretch, at most `most`; the same `seed` gives the same stones.
std::vector<std::vector<SectionPlace>> stones_in(const RockStretch& rock, double median,
                                                 std::size_t most, const std::string& seed);

}  // namespace proofstone
