#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/site/findings.h"
#include "engine/site/site.h"

namespace proofstone {

/// One fill of a specified mix. Volumes are for each unit of volume of the layer in place.
struct SpecifiedFill {
  std::string name;
  double parts = 0;                   ///< loose; buckets where the mix states its bucket
  double share = 0;                   ///< of all loose volume of a batch
  Dimensionless loose;                ///< loose volume over volume of the layer
  std::optional<Dimensionless> bank;  ///< as it lies in the ground
  std::optional<Dimensionless> in_place_over_loose;  ///< as the mix was worked out with
  std::optional<Dimensionless> porosity;             ///< in place, alone
  Gradation gradation;
};

/// What of all fill together, as a factor on the parts, keeps the mix good by the limits that it is
/// judged with.
struct FillTolerance {
  double least = 1;
  double most = 1;
};

/// A filled mix as it is to be delivered and placed.
struct SpecifiedMix {
  std::string id;
  std::string name;
  std::string kind;
  std::string rock_class;  ///< id
  std::string rock_name;
  std::vector<std::string> zones;     ///< names
  std::vector<std::string> problems;  ///< why nothing can be specified; empty otherwise
  std::string soil;                   ///< id, below the first of the zones; empty: not stated
  bool designed = false;              ///< proportions found, none being stated or none that serve
  std::optional<Volume> bucket;
  MixPlacing placing = MixPlacing::mixed;
  double rock_parts = 0;
  double rock_share = 0;  ///< of all loose volume of a batch
  Dimensionless rock_voids;
  Dimensionless rock;  ///< bulk volume of the rock over volume of the layer
  std::optional<Volume> batch_in_place;
  std::vector<SpecifiedFill> fills;
  Dimensionless filling;
  std::optional<Dimensionless> dilation;
  std::optional<FillTolerance> tolerance;    ///< absent where the mix as stated is not good
  Outcome outcome = Outcome::not_yet_known;  ///< as the finding of the mix has it
  std::string sentence;
  std::string next;
  std::optional<Source> recipe;
  std::vector<std::string> notes;
  /// Where stated proportions do not meet: one with those found for the materials on offer, to
  /// stand beside them, or the reasons why none are.
  std::vector<SpecifiedMix> beside;
  std::vector<std::string> none_beside;
};

/// Every mix that a zone names, once for each class it fills, by the order of the zones.
std::vector<SpecifiedMix> specified_mixes(const Site& site);

}  // namespace proofstone
