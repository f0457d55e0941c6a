#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/evidence/confidence.h"
#include "engine/finding/outcome.h"
#include "engine/hydraulics/centreline.h"
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

/// Soil, filter and rock on one picture: log size across, percent smaller by mass upward.
struct FilterPicture {
  std::string id;  ///< "filter.outer-bank"
  std::string title;
  std::string description;
  enum class Part { soil, filter, rock };
  struct Layer {
    std::string name;
    Part part = Part::soil;
    std::vector<GradationPoint> coarse;  ///< the curve itself where there is no band
    std::vector<GradationPoint> fine;    ///< empty where there is no band
  };
  std::vector<Layer> layers;  ///< from the soil upward
  struct ControlPoint {
    double percent = 15;
    Length size;
    bool is_largest = false;  ///< the filter must be finer there; else coarser
  };
  std::vector<ControlPoint> control_points;  ///< of a filter on the soil; may be empty
  std::optional<Length> fabric_opening;
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
  /// Velocity and shear over one slice of the section, as in a straight reach.
  struct AcrossValue {
    Length left;
    Length right;
    Velocity velocity;
    Stress shear;
  };
  std::string across_of;            ///< the flow case they belong to
  std::vector<AcrossValue> across;  ///< from left to right; may be empty
};

/// A channel in plan with its bends and the zones along its banks.
struct PlanPicture {
  std::string id;  ///< "plan.main-channel"
  std::string title;
  std::string description;
  std::vector<PlanPoint> course;  ///< downstream
  Length width;                   ///< of the water
  struct Mark {
    std::string label;
    std::vector<PlanPoint> line;  ///< along a bank
  };
  std::vector<Mark> bends;  ///< their outer banks
  std::vector<Mark> zones;
};

/// The water surface along a reach, from upstream on the left to downstream on the right.
struct ProfilePicture {
  std::string id;  ///< "profile.lower-run"
  std::string title;
  std::string description;
  struct Place {
    std::string name;  ///< empty where the section is interpolated
    Length distance;   ///< along the channel from the first section
    Length bed;
    Length lower_bank;  ///< elevation of the lower bank top
  };
  std::vector<Place> places;
  struct WaterPoint {
    Length distance;
    Length level;
    Length critical;
  };
  struct Jump {
    Length distance;
    Length level_before;
    Length level_after;
  };
  struct WaterLine {
    std::string name;  ///< "Design flood"
    bool largest = false;
    std::vector<WaterPoint> points;
    std::vector<Jump> jumps;
  };
  std::vector<WaterLine> water_lines;
};

/// What every method asks for, side by side on one axis of sizes, with the band of the class.
/// Methods ask for different percents: each stands over what the class has at that percent.
struct MethodSizesPicture {
  std::string id;  ///< "sizes.outer-bank"
  std::string title;
  std::string description;
  std::string class_name;
  struct Row {
    std::string label;                  ///< "Isbash equation, Design flood"
    std::string symbol;                 ///< "D50"
    Length required;                    ///< as the class measures stones
    std::optional<Length> class_least;  ///< least the class has at that percent
    std::optional<Length> class_most;
    bool within_limits = true;
    bool counts = true;  ///< under the zone's policy
    bool governs = false;
    std::optional<double> weight;  ///< share of the weights, under a weighted policy
    Outcome outcome = Outcome::not_yet_known;
  };
  std::vector<Row> rows;
};

/// The median sizes of loads in the order of time.
struct RunChartPicture {
  std::string id;  ///< "loads.first-deliveries"
  std::string title;
  std::string description;
  struct Point {
    std::string label;  ///< "ticket 4711"
    Length size;
    std::optional<Length> average;  ///< moving average so far
    std::optional<Length> low;      ///< where it stays without a drift
    std::optional<Length> high;
    bool alarm = false;
  };
  std::vector<Point> points;
  std::optional<Length> target;  ///< size that loads should keep
};

/// A count against the lines of its sequential plan, and how that plan operates.
struct SequentialCountPicture {
  std::string id;  ///< "count.first-deliveries"
  std::string title;
  std::string description;
  std::string wrong;              ///< what is counted upward: "stones smaller than 11.5 in"
  double good_share = 0;          ///< of the limit that is drawn, 0 to 1
  double unacceptable_share = 0;  ///< likewise
  double producers_risk = 0;
  double owners_risk = 0;
  std::vector<int> path;  ///< wrong stones after each stone; one value where only the end is known
  int stones = 0;         ///< counted
  Outcome outcome = Outcome::not_yet_known;
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

/// Where the volume of a filled mix goes: bars of one scale, the bulk volume of the rock being 1.
struct MixPicture {
  std::string id;  ///< "mix.outer-bank"
  std::string title;
  std::string description;
  enum class Stuff { rock, fill, open_voids };
  struct Piece {
    std::string label;  ///< "Native loam, loose"
    Stuff stuff = Stuff::rock;
    double volume = 0;
  };
  struct Bar {
    std::string label;  ///< "As delivered, loose"
    std::vector<Piece> pieces;
  };
  std::vector<Bar> bars;
};

}  // namespace proofstone
