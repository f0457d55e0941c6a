#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/finding/source.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// How a check is decided.
enum class CheckMeasure {
  by_eye,        ///< passes or fails, as seen
  at_least,      ///< no length measured is less than what is asked, but for the tolerance
  at_most,       ///< none is more
  within,        ///< lengths are distances off the lines drawn, none more than the tolerance
  layer_survey,  ///< surveys of the layer's thickness
  load_tally,    ///< loads of each material of the mix against its recipe
};

/// One check of a zone's work, as its design asks for it.
struct PlacingCheck {
  std::string id;     ///< "subgrade", "bedding-1", "toe"
  std::string title;  ///< "Subgrade"
  CheckMeasure measure = CheckMeasure::by_eye;
  bool hold_point = false;  ///< work does not go on before it passes
  int stage = 0;            ///< of the work; checks of one stage do not wait for one another
  std::string required;     ///< in words; lengths stand in `asked`
  std::string design;       ///< field of the zone, or topic of the finding, it comes from
  std::optional<Length> asked;
  bool reads_as_ground = false;     ///< lengths are read in feet or metres, not as sizes of rock
  std::optional<Length> tolerance;  ///< absent: none
  Source source;                    ///< of the tolerance, or of the rule where there is none
  std::string how;                  ///< it is measured
  int fewest_points = 1;
};

/// A material of a filled layer and how much of it, by loose volume; the first is the rock.
struct MixShare {
  std::string id;
  std::string name;
  double parts = 1;
};

/// A tally of loads is out when a fill is off its recipe by more than this share of what the rock
/// so far takes, or one load where that is more (common practice, no source).
inline constexpr double usual_mix_tolerance = 0.05;

}  // namespace proofstone
