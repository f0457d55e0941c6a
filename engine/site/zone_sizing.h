#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/site/zone_water.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// What one method asks of a zone in one design flow case.
struct SizeAsked {
  const SizingMethod* method = nullptr;
  const ZoneWater* water = nullptr;
  RequiredSize required;
  bool within_limits = true;  ///< every published limit of the method is kept
  Evaluation evaluation;
  /// Why the method only stands beside the others; absent when it may govern.
  std::optional<std::string> for_comparison;
};

/// A method made for such zones that gives no size in one design flow case.
struct SilentMethod {
  const SizingMethod* method = nullptr;
  const ZoneWater* water = nullptr;
  bool applies = false;  ///< it would speak, but could not compute
  std::string reason;
};

/// The sizing of one zone.
struct ZoneSizing {
  const Zone* zone = nullptr;
  const RockClass* specified = nullptr;
  std::vector<SizeAsked> asked;
  std::vector<SilentMethod> silent;
  /// The asked size that leaves the specified class the least margin under the zone's policy;
  /// absent when no method within its limits speaks.
  std::optional<std::size_t> governing;
  /// Smallest class of the specified class's family that holds; nullptr when none does.
  const RockClass* smallest_holding = nullptr;
  std::vector<Finding> findings;
};

/// Asks every sizing method about the zone in every design flow case, brings them together by the
/// zone's policy, and judges class and layer. `water` must outlive the result.
ZoneSizing size_zone(const Site& site, const Zone& zone, const std::vector<ZoneWater>& water,
                     const Wording& wording);

/// Whether a method's word counts under the zone's policy: within its limits, and either chosen by
/// the designer or, where the envelope governs, not there for comparison only.
bool counts(const Zone& zone, const SizeAsked& asked);

/// "D30".
std::string size_symbol(const RequiredSize& required);

/// Puts down the smallest size of the class there over the size asked for.
void add_margin_steps(Steps& steps, const RockClass& specified, const RequiredSize& required,
                      double margin);

/// "D30 of at least 8.3 in".
std::string required_text(const RequiredSize& required, const Wording& wording);

}  // namespace proofstone
