#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "engine/evidence/measured_gradation.h"
#include "engine/evidence/observation.h"
#include "engine/vision/photo.h"

namespace proofstone {

/// A stone count: bins or measured axes, as it was taken down.
struct StoneCount {
  StonePicking picking = StonePicking::grid;
  std::vector<CountBin> bins;
  std::vector<Length> intermediate_axes;
};

/// A weighed sample: size groups, each weighed and counted.
struct WeighedSample {
  SizeMeaning size_meaning = SizeMeaning::intermediate_axis;
  std::vector<WeighedGroup> groups;
};

/// Stones sorted by their mass: those heavier than `lower` and not heavier than `upper`, weighed
/// together.
struct MassRange {
  std::optional<Mass> lower;
  Mass upper;
  Mass mass;
  int stones = 0;  ///< 0: not counted
};
struct MassRanges {
  std::vector<MassRange> ranges;
};

enum class SeenShape { blocky, mixed, flat_or_long };
enum class SeenFines { none, little, much };

/// Sizes of which the eye finds no stones.
struct MissingSizes {
  Length larger_than;
  Length not_larger_than;
};

/// What a look without counting says of a pile.
struct QuickLook {
  Length largest;
  Length smallest;  ///< of the stones, apart from fines
  std::optional<Length> most_common;
  std::vector<MissingSizes> missing;
  SeenShape shape = SeenShape::blocky;
  SeenFines fines = SeenFines::none;
};

/// Three axes of a stone, square to one another.
struct StoneAxes {
  Length longest;
  Length intermediate;
  Length shortest;
};
/// Stones taken blindly and measured for their shape.
struct ShapeCount {
  std::vector<StoneAxes> stones;
};

/// One act of observation of a lot.
struct Look {
  std::string id;
  std::string name;
  std::string lot;
  Observation seen;
  std::string side = {};  ///< of the pile; empty: over the whole of it
  std::string load = {};  ///< id of the one load looked at; empty: the lot as a whole
  std::variant<StoneCount, WeighedSample, MassRanges, QuickLook, ShapeCount, PhotoSet> taken;
};

/// Whether a look says what share of the rock is smaller than a size.
inline bool gives_curve(const Look& look) {
  return !std::holds_alternative<QuickLook>(look.taken) &&
         !std::holds_alternative<ShapeCount>(look.taken);
}

}  // namespace proofstone
