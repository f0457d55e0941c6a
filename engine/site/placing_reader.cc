#include "engine/site/placing_reader.h"

#include <fmt/format.h>

#include <cmath>

#include "engine/site/item_reader.h"
#include "engine/site/observation_reader.h"

namespace proofstone {
namespace {

constexpr double longest_m = 100;

std::map<std::string, int> read_loads(FieldReader& entry, Problems& problems) {
  std::map<std::string, int> loads;
  const auto* json = entry.optional("loads");
  if (json == nullptr) return loads;
  FieldReader reader(*json, entry.pointer() + "/loads", problems);
  if (!reader.is_object()) return loads;
  for (const auto& [material, count] : json->items()) {
    loads[material] = reader.optional_integer(material, 0, 100'000).value_or(0);
  }
  reader.finish();
  return loads;
}

CheckEntry read_entry(const nlohmann::json& json, const std::string& pointer,
                      const std::string& check, Problems& problems) {
  FieldReader reader(json, pointer, problems);
  CheckEntry entry;
  entry.check = check;
  enum class Result { pass, fail, not_yet };
  const auto result = reader.choice<Result>(
      "result",
      {{"pass", Result::pass}, {"fail", Result::fail}, {"not yet known", Result::not_yet}},
      Result::not_yet);
  if (result != Result::not_yet) entry.passes = result == Result::pass;
  entry.measured = reader.optional_quantities<Length>("measured");
  for (std::size_t i = 0; i < entry.measured.size(); ++i) {
    if (std::abs(entry.measured[i].meters()) <= longest_m) continue;
    reader.report("implausible", "Nothing on a lining is that long; the unit may be wrong.",
                  fmt::format("measured/{}", i), "-100 to 100 m");
  }
  entry.loads = read_loads(reader, problems);
  entry.photos = read_photos(reader);
  entry.note = reader.optional_text("note");
  if (reader.is_object() && !reader.has("result") && entry.measured.empty() &&
      entry.loads.empty()) {
    reader.report("half-filled", "Nothing is said of this check.", "result",
                  "a result, lengths measured, or loads counted");
  }
  reader.finish();
  return entry;
}

std::optional<Disposition> read_disposition(FieldReader& parent, Problems& problems) {
  const auto* json = parent.optional("disposition");
  if (json == nullptr) return std::nullopt;
  FieldReader reader(*json, parent.pointer() + "/disposition", problems);
  Disposition disposition;
  disposition.kind =
      reader.choice<DispositionKind>("kind",
                                     {{"rework", DispositionKind::rework},
                                      {"remove and replace", DispositionKind::remove_and_replace},
                                      {"use as is", DispositionKind::use_as_is},
                                      {"measure further", DispositionKind::measure_further}},
                                     std::nullopt);
  disposition.approved_by = reader.optional_text("approved_by");
  disposition.signed_off = read_observation(reader, problems, true);
  reader.finish();
  return disposition;
}

}  // namespace

PlacingWalk read_placing_walk(FieldReader& reader, const std::string& id, Problems& problems) {
  PlacingWalk walk;
  walk.id = id;
  walk.name = reader.required_text("name");
  walk.zone = reader.required_text("zone");
  walk.seen = read_observation(reader, problems, true);
  const auto* checks = reader.required("checks");
  if (checks == nullptr) return walk;
  if (!checks->is_object() || checks->empty()) {
    reader.report("not-an-object", "What was found stands under the ids of checks.", "checks",
                  "{ \"subgrade\": { \"result\": \"pass\" } }");
    return walk;
  }
  for (const auto& [check, entry] : checks->items()) {
    walk.entries.push_back(
        read_entry(entry, fmt::format("{}/checks/{}", reader.pointer(), check), check, problems));
  }
  return walk;
}

Nonconformance read_nonconformance(FieldReader& reader, const std::string& id, Problems& problems) {
  Nonconformance one;
  one.id = id;
  one.name = reader.required_text("name");
  one.zone = reader.optional_text("zone");
  one.check = reader.optional_text("check");
  one.lot = reader.optional_text("lot");
  if (reader.is_object() && one.zone.empty() == one.lot.empty()) {
    reader.report("one-of", "It is about a zone or about a lot, one of the two.", "zone",
                  "a zone, or a lot");
  }
  if (!one.check.empty() && one.zone.empty()) {
    reader.report("missing-field", "A check is a check of a zone.", "zone", "the id of its zone");
  }
  if (const auto* json = reader.required("opened")) {
    FieldReader opened(*json, reader.pointer() + "/opened", problems);
    one.opened = read_observation(opened, problems, true);
    opened.finish();
  }
  one.disposition = read_disposition(reader, problems);
  if (const auto* json = reader.optional("closed")) {
    FieldReader closed(*json, reader.pointer() + "/closed", problems);
    one.closed = read_observation(closed, problems, true);
    closed.finish();
  }
  for (auto& problem : located_under(problems_of_course(one), reader.pointer())) {
    problems.push_back(std::move(problem));
  }
  return one;
}

PlacingTolerances read_placing_tolerances(FieldReader& state, Problems& problems) {
  PlacingTolerances tolerances;
  const auto* json = state.optional("placing_tolerances");
  if (json == nullptr) return tolerances;
  FieldReader reader(*json, "/placing_tolerances", problems);
  tolerances.from = reader.required_text("from");
  const auto length = [&reader](const char* field) {
    const auto value = reader.optional_quantity<Length>(field);
    if (value && !(value->meters() >= 0 && value->meters() <= 2)) {
      reader.report("implausible", "No tolerance of a lining is so.", field, "0 to 2 m");
    }
    return value;
  };
  tolerances.subgrade = length("subgrade");
  tolerances.surface = length("surface");
  tolerances.thickness = length("thickness");
  tolerances.mix = reader.optional_quantity<Dimensionless>("mix");
  if (tolerances.mix && !(tolerances.mix->number() >= 0 && tolerances.mix->number() <= 0.5)) {
    reader.report("implausible", "No mix is told apart at this tolerance.", "mix", "0 to 50 %");
  }
  reader.finish();
  return tolerances;
}

}  // namespace proofstone
