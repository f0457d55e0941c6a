#pragma once

#include <string>
#include <utility>
#include <vector>

#include "report/label_placement.h"
#include "report/picture_legend.h"
#include "report/rock_packing.h"
#include "report/svg_canvas.h"

namespace proofstone {

/// A section as it is drawn: in metres, without what cannot be drawn.
struct DrawnSection {
  struct Level {
    std::string text;  ///< "Design flood, 114.52 ft"
    double z = 0;
    bool governing = false;
  };
  struct Layer {
    LayerStrip strip;
    std::string label;           ///< "Class III"
    std::string thickness_text;  ///< "24 in"
    std::string median_text;     ///< "12.4 in"
    double median = 0;           ///< 0 when it is not known
    Angularity angularity = Angularity::angular;
  };
  std::vector<SectionPlace> ground;  ///< in the order of the survey
  std::vector<Level> levels;         ///< highest first
  std::vector<Layer> layers;
};

DrawnSection drawn_section(const SectionPicture& picture, UnitSystem units);

/// The part of a section that is drawn into a rectangle of the picture, and at which scale.
struct SectionView {
  SectionWindow window;
  PixelPoint corner;         ///< top left of the rectangle
  double pixels_across = 1;  ///< for each metre
  double pixels_up = 1;      ///< for each metre

  double width() const { return (window.right - window.left) * pixels_across; }
  double height() const { return (window.top - window.bottom) * pixels_up; }
  PixelPoint at(SectionPlace place) const {
    return {corner.x + (place.x - window.left) * pixels_across,
            corner.y + (window.top - place.z) * pixels_up};
  }
  std::vector<PixelPoint> line(const std::vector<SectionPlace>& places) const;
  PixelBox box() const { return {corner.x, corner.y, corner.x + width(), corner.y + height()}; }
};

/// The stretches of the ground line that lie under a level, as pairs of stations.
std::vector<std::pair<double, double>> wet_stretches(const std::vector<SectionPlace>& ground,
                                                     double level);

/// Whether the stones of a layer can be drawn at size in a view.
bool stones_can_be_seen(const DrawnSection::Layer& layer, const SectionView& view);

/// What a drawing of a view says in words beside the lines.
enum class SectionWords {
  levels_and_layers,  ///< water levels and layers by name
  dimensions,         ///< thickness of the layers
};

/// Draws a view: water, ground, rock, then the words, which keep clear of one another; names for
/// which there is no room come back for the legend. The same `seed` gives the same stones.
std::vector<LegendEntry> draw_view(SvgCanvas& canvas, const DrawnSection& section,
                                   const SectionView& view, SectionWords words,
                                   const std::string& seed);

}  // namespace proofstone
