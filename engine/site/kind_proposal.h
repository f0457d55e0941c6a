#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/site/zone_kinds.h"

namespace proofstone {

/// How much a part of a slope is under water.
enum class WaterPresence {
  always,   ///< below base flow
  often,    ///< below the frequent flow
  rarely,   ///< below the design flood
  never,    ///< above it
  unknown,  ///< below the design flood; no lesser flow says how often
};

/// What kind of rock suits a part of a slope, and why.
struct KindProposal {
  std::optional<RockKind> kind;      ///< absent while something is missing
  std::vector<std::string> reasons;  ///< each with its standing
  std::vector<std::string> missing;  ///< fields of the document that would decide
  bool bare_serves = false;          ///< bare rock is as good a choice there
};

/// Rules of the trade, none with a published source: void-filled rock as high as water often
/// stands, soil-filled above where plants can grow, bare where nothing grows or waves work.
/// `rise_per_run` is that of the slope; a bed has none.
KindProposal propose_kind(WaterPresence water, const ZoneConditions& conditions,
                          double rise_per_run = 0);

/// Whether plants can hold soil there; nothing while the document does not say.
std::optional<bool> plants_can_grow(const ZoneConditions& conditions);

}  // namespace proofstone
