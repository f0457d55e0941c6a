#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/site/named_level.h"

namespace proofstone {

/// What the voids of a rock layer hold.
enum class RockKind {
  bare,         ///< nothing
  soil_filled,  ///< soil that plants grow in
  void_filled,  ///< a mix of smaller rock, gravel and soil
  grouted,      ///< grout; a flag, the engine does not judge it
};

/// "bare", "soil-filled", "void-filled", "grouted": as documents and sentences write it.
std::string_view rock_kind_word(RockKind kind);

/// Whether smaller material fills the voids and is the filter over the ground, so that the layer
/// needs no bedding (common practice, no source).
bool is_filled(RockKind kind);

/// One kind of rock on the way up a slope, from where the one before it ends, or from the toe.
struct KindUpSlope {
  RockKind kind = RockKind::bare;
  NamedLevel up_to;    ///< neither: the top of the zone
  std::string reason;  ///< the designer's own; stands against what the engine proposes
};

enum class Light { sun, part_shade, under_deck };
enum class Growing { good, poor, none };
enum class Access { kept_off, walk_by, walk_on };
enum class WorkExtent { usual, small_and_local };
enum class WaveAction { none, some };

/// What a zone's document says of the place, as far as it decides the kind of rock. What is absent
/// is not known.
struct ZoneConditions {
  std::optional<Light> light;
  std::optional<Growing> growing;  ///< soil, water and care for plants
  std::optional<Access> access;    ///< of people
  std::optional<WorkExtent> extent;
  std::optional<WaveAction> waves;
};

/// A trench at the top of the slope into which the layer is turned down, filled with its rock.
struct ZoneKey {
  Length width;
  Length depth;  ///< below the ground at the top
};

}  // namespace proofstone
