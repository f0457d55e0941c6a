#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/site/site.h"
#include "engine/specification/count_limits.h"
#include "engine/specification/specified_filter.h"
#include "engine/specification/specified_mix.h"

namespace proofstone {

/// The sizes a class allows at one percent smaller, and the stones of those sizes.
struct SpecifiedSize {
  double percent = 50;
  std::optional<Length> least;
  std::optional<Length> most;
  std::optional<Mass> least_mass;
  std::optional<Mass> most_mass;
};

/// One limit of the band in the words of the class, with what a count of stones says of it.
struct SpecifiedLimit {
  std::string wording;
  Length size;
  BandCondition::Sense sense = BandCondition::Sense::at_most;
  bool counted = false;  ///< an ordinary share; else it is a matter of the largest stones
  CountLimits count;
};

/// What must be delivered of one class.
struct SpecifiedClass {
  std::string id;
  std::string name;
  std::string family;
  GradationBasis basis;
  Source source;
  Length nominal_d50;
  Dimensionless specific_gravity;    ///< at which the masses are worked out: that of the design
  std::vector<std::string> sources;  ///< names of the sources the design took
  struct Place {
    std::string zone;
    Length thickness;
    Placement placement = Placement::dry;
  };
  std::vector<Place> places;
  std::vector<SpecifiedSize> sizes;
  std::vector<SpecifiedLimit> limits;
  std::vector<std::string> notes;
};

/// What quarry and contractor must deliver, as the document has it and as lots will be judged.
struct Specification {
  std::string site_name;
  std::string revision;
  std::vector<SpecifiedClass> classes;
  std::vector<SpecifiedMix> mixes;
  SpecifiedFilters filters;
  std::vector<RockLimit> rock_limits;
  bool rock_limits_chosen = false;
  std::string exposure;
  std::vector<std::string> frequency;
  std::vector<std::string> placing;
  double confidence = 0.95;
  int counted_stones = 100;
};

/// One class after the other, by the order of the zones that use them.
Specification specification_of(const Site& site);

}  // namespace proofstone
