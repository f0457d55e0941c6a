#pragma once

#include <nlohmann/json_fwd.hpp>

#include "engine/json/field_reader.h"
#include "engine/site/site.h"

namespace proofstone {

/// What a count is to be planned for.
struct CountQuestion {
  std::string rock_class;
  DecisionRisks risks;
  double good_by = 0.10;
  double alike_in_load = 0;  ///< correlation of the stones of one load; 0 for none
  int stones_in_load = 1;    ///< picked from each load
};

/// `class`, `owners_risk`, `producers_risk`, `good_by`, `stones_in_load`, `alike_in_load`; what is
/// not asked is as the site states it, where there is one.
CountQuestion read_count_question(FieldReader& request, const Site* site);

/// How many stones to count, limit by limit, one by one or all at once, for a published class or
/// one of the site's own. Problems: no such class, risks that no reasonable count keeps.
Expected<nlohmann::json> count_plan_answer(const CountQuestion& question, const Site* site,
                                           UnitSystem units);

}  // namespace proofstone
