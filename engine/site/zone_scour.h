#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/scour/scour_estimate.h"
#include "engine/toe/launched_rock.h"

namespace proofstone {

/// What a zone's document says of scour at its toe: the bed, and which allowances are looked at.
struct ZoneScour {
  std::optional<Length> bed_d50;
  std::optional<Length> bed_d90;
  std::vector<std::string> methods;  ///< ids out of scour_method_ids()
  std::optional<ScourSituation> situation;
  std::optional<Length> long_term;    ///< stated, beside what methods give
  std::optional<Length> contraction;  ///< stated
  std::optional<Length> local;        ///< stated
  BedformRule bedform_rule = BedformRule::added;
  Dimensionless safety_factor = Dimensionless::number(1.3);
  std::optional<Length> least_depth;  ///< as local criteria ask
};

/// How the toe of a zone's lining is made.
enum class ToeKind {
  trench,      ///< the layer goes on down to `depth` below the bed
  launchable,  ///< rock stored at the toe follows the bed down
  thickened,   ///< the layer is thicker at the toe, for the same
};

/// The toe as drawn.
struct ZoneToe {
  ToeKind kind = ToeKind::trench;
  Length depth;                     ///< of its foot below the existing bed; 0 at bed level
  std::optional<Area> stored;       ///< launchable: rock stored for each unit of length
  std::optional<Length> width;      ///< thickened: of the thicker part
  std::optional<Length> thickness;  ///< thickened: of the layer there
};

}  // namespace proofstone
