#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/evidence/observation.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// One truck or barge load of rock.
struct Load {
  std::string id;
  std::string lot;
  std::string when;    ///< RFC 3339 in UTC
  std::string ticket;  ///< empty where none came with it
  std::string source;  ///< empty: that of the lot
  std::optional<Mass> mass;
  std::optional<Length> median_size;  ///< as looked at or measured on the load
  std::string who;
  std::string note;
};

/// What is expected of the loads of a lot.
struct SupplyPlan {
  std::optional<Mass> planned_mass;
  std::optional<Length> target_size;  ///< median size that loads should keep
  std::optional<Length> load_spread;  ///< standard deviation of the median size from load to load
  Dimensionless run_length = Dimensionless::number(200);  ///< loads between two false alarms
};

/// Points at which the thickness of a placed layer was measured.
struct LayerSurvey {
  std::string id;
  std::string name;
  std::string zone;
  Observation seen;
  std::vector<Length> thicknesses;
  std::optional<Slope> vertical_on;  ///< thicknesses are vertical differences on this slope
  std::optional<Length> least;       ///< nowhere less
};

}  // namespace proofstone
