#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/site/pictures.h"
#include "engine/site/zone_kinds.h"

namespace proofstone {

/// A zone as it is built, seen where the trade draws it: a bank or shore up its slope, a bed across
/// the stream, an apron, chute, drop or basin along the flow, a pier or abutment across it, a key
/// along the bank, an apron from above. In quantities; report/ draws it and writes it as shapes for
/// drawing programs. Points go from the foot of the rock up.
struct TypicalSectionPicture {
  std::string id;  ///< "typical.outer-bank", "keys.outer-bank"
  std::string title;
  std::string description;
  std::vector<GroundPoint> ground;   ///< the survey
  std::vector<GroundPoint> surface;  ///< finished surface of the rock, from its foot to its top
  Length thickness;                  ///< of the rock, square to the surface
  std::string thickness_text;
  Length median_stone;
  Angularity angularity = Angularity::angular;
  /// Seen across a bed, along the flow or along rock that lies level: each part goes from end to
  /// end.
  bool level = false;
  /// Seen from above: stations go along the flow, elevations are distances to the left of its
  /// middle, rock is in blocks. There is no ground, water, slope or thickness.
  bool in_plan = false;
  double rise_per_run = 0;              ///< of the slope
  std::string slope_text;               ///< "2.0"; horizontal for 1 vertical; empty: none is told
  std::optional<GroundPoint> slope_at;  ///< on the surface; absent: in its lower half

  struct WaterLevel {
    std::string label;  ///< "Design flood, 114.52 ft"
    Length level;
  };
  std::vector<WaterLevel> water_levels;

  /// The layer between two elevations, by what fills its voids.
  struct Part {
    RockKind kind = RockKind::bare;
    std::string label;
    Length bottom;
    Length top;
  };
  std::vector<Part> parts;

  /// Under the rock, from it down.
  struct Under {
    std::string label;
    Length thickness;           ///< 0 for a fabric
    Length short_of_ends = {};  ///< how far from each end of the rock it ends
  };
  std::vector<Under> under;

  /// Rock beside the layer: a toe, a key. Outlines run round.
  struct Block {
    std::string label;
    std::vector<GroundPoint> outline;
    bool is_key = false;
  };
  std::vector<Block> blocks;

  struct Dimension {
    std::string label;
    GroundPoint from;
    GroundPoint to;
  };
  /// How deep the foot reaches below the bed.
  std::optional<Dimension> toe_depth;
  std::vector<Dimension> dimensions;  ///< all others, but for the thickness

  /// What is only told, with the place it is told of.
  struct Note {
    std::string label;
    GroundPoint at;
  };
  std::vector<Note> notes;

  /// What is built there beside the rock: a pier, a wall, a conduit seen from above. Outlines run
  /// round.
  struct Structure {
    std::string label;
    std::vector<GroundPoint> outline;
  };
  std::vector<Structure> structures;

  /// A conduit that ends at the rock and comes from the side away from its foot.
  struct Conduit {
    std::string label;
    GroundPoint invert;
    Length height;
  };
  std::optional<Conduit> conduit;

  struct Cover {
    Length from;     ///< elevation of its lower edge
    Length topsoil;  ///< 0 where there is none
    std::string topsoil_label;
    std::string blanket_label;  ///< empty: no blanket
    std::string stakes_label;   ///< empty: no stakes
    Length stake_length;
    Length stake_spacing;
    bool seeded = false;
    std::optional<Length> top_trench;  ///< its depth
    Length back_from_crest;
    std::optional<Length> water_edge_trench;  ///< its depth
  };
  std::optional<Cover> cover;
};

}  // namespace proofstone
