#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/placing/placing_check.h"
#include "engine/placing/placing_tolerances.h"

namespace proofstone {

/// A layer of the filter of a zone, from the soil up.
struct DesignedFilterLayer {
  bool fabric = false;
  std::string name;                   ///< of the bedding
  std::optional<Length> thickness;    ///< of bedding
  std::optional<int> strength_class;  ///< of a fabric
  std::optional<Length> drop_height;  ///< of stones on a fabric
};

struct DesignedKey {
  Length width;
  Length depth;
};

/// What covers the rock.
struct DesignedCover {
  std::optional<Length> topsoil;
  bool seed = false;
  bool blanket = false;
  std::optional<Length> side_overlap;
  std::optional<Length> end_overlap;
  std::optional<Length> stake_length;
  std::optional<Length> stake_spacing;
  std::optional<DesignedKey> top_trench;
  std::optional<DesignedKey> water_edge_trench;
};

/// A zone's lining, as far as it decides what is checked while it is placed.
struct PlacingDesign {
  std::string class_name;
  Length layer_thickness;
  std::optional<Length> length;  ///< along the water
  std::optional<Length> largest_stone;
  bool under_water = false;
  int survey_points = 0;  ///< planned for the thickness of the layer
  std::vector<DesignedFilterLayer> filter;
  bool filled = false;
  std::vector<MixShare> mix;  ///< empty: no recipe is known
  std::optional<Length> toe_depth;
  std::optional<Length> toe_thickness;  ///< of a thickened toe
  bool toe_stored = false;              ///< rock lies at the toe, ready to launch
  std::optional<DesignedKey> top_key;
  std::optional<DesignedCover> cover;
  PlacingTolerances tolerances;
};

/// The checks of a zone in the order of work: ground, filter, rock as it comes, rock as it lies,
/// cover. Every number is the design's own; every tolerance has its source or says that it is usual
/// without one.
std::vector<PlacingCheck> placing_checks(const PlacingDesign& design);

/// A check that is measured wants three points, and one for so much of the zone's length (common
/// practice, no source).
inline constexpr Length length_for_a_point = Length::feet(100);

/// The parts of that list. Internal to placing.
void add_ground_checks(const PlacingDesign& design, std::vector<PlacingCheck>& checks);
void add_filter_checks(const PlacingDesign& design, std::size_t layer,
                       std::vector<PlacingCheck>& checks);
void add_rock_checks(const PlacingDesign& design, std::vector<PlacingCheck>& checks);
void add_cover_checks(const PlacingDesign& design, std::vector<PlacingCheck>& checks);

/// The source of a rule of the trade that has none.
Source usual(const std::string& what);

/// The tolerance of `check`: as the document states it, else `published` with its source.
void put_tolerance(PlacingCheck& check, const PlacingTolerances& tolerances,
                   const std::optional<Length>& stated, const std::optional<Length>& published,
                   Source source);

}  // namespace proofstone
