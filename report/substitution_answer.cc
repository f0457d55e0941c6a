#include "report/substitution_answer.h"

#include <nlohmann/json.hpp>

#include "engine/site/findings_text.h"

namespace proofstone {

nlohmann::json substitution_json(const Substitution& study, UnitSystem units) {
  nlohmann::json into = {{"columns", study.columns},
                         {"rows", nlohmann::json::array()},
                         {"finding", finding_json(study.finding, units)}};
  for (const auto& row : study.rows) {
    nlohmann::json line = {{"what", row.what}, {"cells", nlohmann::json::array()}};
    for (const auto& cell : row.cells) {
      nlohmann::json one = {{"text", cell.text}};
      if (cell.margin) one["margin"] = margin_text(*cell.margin);
      if (cell.outcome) one["outcome"] = outcome_phrase(*cell.outcome);
      line["cells"].push_back(std::move(one));
    }
    into["rows"].push_back(std::move(line));
  }
  return into;
}

}  // namespace proofstone
