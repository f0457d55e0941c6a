#include "report/mix_answer.h"

#include <nlohmann/json.hpp>

#include "engine/site/findings_text.h"
#include "report/mix_picture.h"

namespace proofstone {

nlohmann::json mix_json(const ProposedMix& proposed, UnitSystem units, std::optional<int> width) {
  using nlohmann::json;
  json parts = json::array();
  for (const auto& part : proposed.mix.parts) {
    parts.push_back({{"material", part.material}, {"parts", significant(part.parts, 6)}});
  }
  json findings = json::array();
  for (const auto& finding : proposed.said.findings) {
    findings.push_back(finding_json(finding, units));
  }
  json answer = {
      {"proportions", {{"rock_parts", significant(proposed.mix.rock_parts, 6)}, {"parts", parts}}},
      {"findings", findings},
      {"pictures", json::array()}};
  if (width && proposed.said.picture) {
    const auto& picture = *proposed.said.picture;
    answer["pictures"].push_back({{"id", picture.id},
                                  {"kind", "mix"},
                                  {"title", picture.title},
                                  {"description", picture.description},
                                  {"svg", draw(picture, units, *width)}});
  }
  return answer;
}

}  // namespace proofstone
