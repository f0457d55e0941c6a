#pragma once

#include <optional>
#include <string>

#include "engine/json/held_json.h"
#include "engine/site/named_level.h"

namespace proofstone {

/// Whether water always runs in the channel beside a cover.
enum class StreamWater { perennial, dry_swale };

/// What holds a blanket down.
enum class StakeForm { wedge, staple, pin };

/// A rolled product over the topsoil.
struct CoverBlanket {
  std::string type;                    ///< of the catalog: "1.A" to "5.C"
  std::optional<Stress> tested_shear;  ///< of the product: 12.5 mm of soil loss in its test
  std::optional<Length> roll_width;
  std::optional<Length> roll_length;
  std::optional<Length> side_overlap;
  std::optional<Length> end_overlap;
};

struct CoverStakes {
  StakeForm form = StakeForm::wedge;
  Length length;
  std::optional<Length> spacing;       ///< of a square grid
  std::optional<Dimensionless> count;  ///< that the drawings state
};

/// A trench in which an edge of a blanket is held.
struct AnchorTrench {
  Length width;
  Length depth;
  std::optional<Length> back_from_crest;  ///< at the top
};

/// Topsoil, seed, blanket and stakes over the rock of a zone, as drawn.
struct ZoneCover {
  NamedLevel from;  ///< how far down it goes; neither: to the toe
  std::optional<Length> topsoil;
  HeldJson soil;  ///< inputs of bare-soil-shear for the topsoil; empty: not stated
  std::string seed;
  std::string plants;  ///< row of lining-limits for the grown cover
  std::optional<Dimensionless> months_to_establish;
  std::optional<CoverBlanket> blanket;
  std::optional<CoverStakes> stakes;
  std::optional<AnchorTrench> top_trench;
  std::optional<AnchorTrench> water_edge_trench;
  std::optional<StreamWater> stream;
  std::optional<Length> length;  ///< along the stream, where no centreline gives it
};

}  // namespace proofstone
