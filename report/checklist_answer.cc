#include "report/checklist_answer.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "engine/finding/quoted_text.h"
#include "engine/site/placing_findings.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// What is taken down of a check. Loads are tallied by a recipe; while there is none, what was seen
/// is said in words.
const char* takes(const PlacingRecordLine& line) {
  switch (line.measure) {
    case CheckMeasure::by_eye:
      return "result";
    case CheckMeasure::layer_survey:
      return "thicknesses";
    case CheckMeasure::load_tally:
      return line.mix.empty() ? "result" : "loads";
    default:
      return "lengths";
  }
}

/// The unit in which people read such lengths off a rod or a tape.
const char* unit_of_lengths(LengthUse use, UnitSystem units) {
  if (units == UnitSystem::si) return use == LengthUse::ground ? "m" : "mm";
  return use == LengthUse::ground ? "ft" : "in";
}

json line_json(const PlacingRecordLine& line, UnitSystem units) {
  json check = {{"id", line.id},
                {"title", line.title},
                {"hold_point", line.hold_point},
                {"takes", takes(line)},
                {"unit", unit_of_lengths(line.length_use, units)},
                {"fewest_points", line.fewest_points},
                {"required", line.required},
                {"tolerance", line.tolerance},
                {"how", line.how},
                {"outcome", outcome_phrase(line.outcome)},
                {"state", line.state},
                {"evidence", line.evidence},
                {"next", line.next},
                {"materials", json::array()}};
  for (const auto& share : line.mix) {
    check["materials"].push_back({{"id", share.id}, {"name", share.name}});
  }
  return check;
}

Problem no_such_zone(const Site& site, const std::string& zone) {
  std::string known;
  for (const auto& [id, one] : site.zones) known += (known.empty() ? "" : ", ") + id;
  return {"no-zone", fmt::format("There is no zone {}.", in_quotes(zone)), "", "/zone",
          known.empty() ? "a document with zones" : known};
}

}  // namespace

Expected<json> checklist_answer(const Site& site, const std::string& zone, UnitSystem units) {
  const auto found = site.zones.find(zone);
  if (found == site.zones.end()) return no_such_zone(site, zone);
  const Wording wording(units);
  const auto placing = placing_of(site, found->second, wording);
  const auto summary = placing_findings(placing, wording).front();
  json checks = json::array();
  for (const auto& line : placing_record(placing, wording).lines) {
    checks.push_back(line_json(line, units));
  }
  return json{{"zone", zone},
              {"name", found->second.name},
              {"outcome", outcome_phrase(summary.outcome)},
              {"sentence", summary.sentence},
              {"next", summary.next},
              {"cautions", summary.cautions},
              {"checks", std::move(checks)}};
}

}  // namespace proofstone
