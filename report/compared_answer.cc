#include "report/compared_answer.h"

#include <nlohmann/json.hpp>

#include "engine/site/findings_text.h"
#include "report/as_safe_changes.h"

namespace proofstone {
namespace {

using nlohmann::json;

json cell_json(const ComparedRow::Cell& cell, UnitSystem units) {
  json one = {{"text", cell.text}};
  if (cell.margin) one["margin"] = margin_text(*cell.margin);
  if (cell.outcome) one["outcome"] = outcome_phrase(*cell.outcome);
  if (cell.finding) one["finding"] = finding_json(*cell.finding, units);
  return one;
}

json rows_json(const std::vector<ComparedRow>& rows, UnitSystem units) {
  json list = json::array();
  for (const auto& row : rows) {
    json line = {{"what", row.what}, {"cells", json::array()}};
    for (const auto& cell : row.cells) line["cells"].push_back(cell_json(cell, units));
    list.push_back(std::move(line));
  }
  return list;
}

}  // namespace

json substitution_json(const Substitution& study, UnitSystem units) {
  json answer = {{"columns", study.columns},
                 {"rows", rows_json(study.rows, units)},
                 {"finding", finding_json(study.finding, units)}};
  if (study.as_safe) answer["changes"] = as_safe_changes(*study.as_safe, units);
  return answer;
}

json submittals_json(const SubmittalComparison& comparison, UnitSystem units) {
  json findings = json::array();
  for (const auto& finding : comparison.findings) findings.push_back(finding_json(finding, units));
  return {{"columns", comparison.columns},
          {"rows", rows_json(comparison.rows, units)},
          {"findings", std::move(findings)}};
}

}  // namespace proofstone
