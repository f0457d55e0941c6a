#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/evidence/confidence.h"
#include "engine/finding/outcome.h"
#include "engine/rock/gradation_band.h"
#include "engine/rock/rock_properties.h"

namespace proofstone {

/// What a picture shows, in quantities; report/ draws it. Every picture has a title and a
/// description that says in words what is seen.

/// A gradation curve in its band: log size across, percent smaller by mass upward.
struct GradationPicture {
  std::string id;  ///< "gradation.first-deliveries"
  std::string title;
  std::string description;
  std::string class_name;
  std::vector<GradationPoint> coarse_limit;
  std::vector<GradationPoint> fine_limit;
  std::vector<ConfidencePoint> measured;  ///< the pooled curve with its limits; may be empty
  double confidence = 0.95;
  struct Look {
    std::string name;
    std::vector<GradationPoint> points;
  };
  std::vector<Look> looks;  ///< the single looks behind it
  struct Required {
    std::string label;  ///< "USACE bank and bed equation, Outer bank"
    double percent = 50;
    Length size;
    Outcome outcome = Outcome::not_yet_known;
  };
  std::vector<Required> required;  ///< what each method asks for in the zone
};

struct GroundPoint {
  Length station;
  Length elevation;
};

/// A surveyed section to scale with its water levels and the rock drawn at size.
struct SectionPicture {
  std::string id;  ///< "section.outer-bank"
  std::string title;
  std::string description;
  std::vector<GroundPoint> ground;
  struct WaterLevel {
    std::string name;
    Length level;
    bool governing = false;
  };
  std::vector<WaterLevel> water_levels;
  struct RockLayer {
    std::string label;
    std::vector<GroundPoint> surface;  ///< finished surface of the layer, along the ground
    Length thickness;                  ///< square to the ground, below the surface
    Length median_stone;
    Angularity angularity = Angularity::angular;
  };
  std::vector<RockLayer> layers;
};

/// Stones drawn to scale beside a one-foot rule: what a class asks for, what was measured.
struct StonesPicture {
  std::string id;  ///< "stones.first-deliveries"
  std::string title;
  std::string description;
  struct Stone {
    std::string label;  ///< "D50"
    Length size;
  };
  struct Row {
    std::string label;  ///< "Class III, largest allowed"
    std::vector<Stone> stones;
    Angularity angularity = Angularity::angular;
  };
  std::vector<Row> rows;
};

}  // namespace proofstone
