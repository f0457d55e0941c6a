#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/site/site.h"

namespace proofstone {

/// A sieve of a bedding and what may pass it; one number of both where a single curve is specified.
struct SpecifiedSieve {
  Length size;
  std::optional<double> least;  ///< percent; absent: not limited
  std::optional<double> most;
};

/// Where a layer of a filter is laid.
struct FilterPlace {
  std::string zone;
  std::string from_the_soil;  ///< "layer 1 of 2 from the soil"
  std::optional<Length> thickness;
  bool under_water = false;
};

/// What must be delivered of one bedding.
struct SpecifiedBedding {
  std::string id;
  std::string name;
  bool is_band = false;  ///< else the one curve that the design was made with
  Source source;
  std::vector<SpecifiedSieve> sieves;  ///< from large to small
  std::vector<FilterPlace> places;
};

/// What must be delivered of one geotextile, as its zone states it.
struct SpecifiedFabric {
  GeotextileFilter fabric;
  FilterPlace place;
};

/// The filters under the rock of a site.
struct SpecifiedFilters {
  std::vector<SpecifiedBedding> beddings;
  std::vector<SpecifiedFabric> fabrics;
};

/// Each bedding once, by the order of the zones that use it; each geotextile of each zone.
SpecifiedFilters specified_filters(const Site& site);

}  // namespace proofstone
