#include "engine/site/loads_reader.h"

#include "engine/json/utc_time.h"
#include "engine/site/observation_reader.h"
#include "engine/site/position_reader.h"

namespace proofstone {
namespace {

/// A size, mass or thickness that is given is more than nothing.
template <class Q>
std::optional<Q> optional_positive(FieldReader& reader, const std::string& field) {
  const auto value = reader.optional_quantity<Q>(field);
  if (value && !(value->si() > 0)) {
    reader.report("not-positive", "What was measured is more than nothing.", field, "more than 0");
  }
  return value;
}

constexpr double thickest_layer_m = 20;

}  // namespace

std::string read_when(FieldReader& reader) {
  auto when = reader.optional_text("when");
  if (!when.empty() && !is_utc_time(when)) {
    reader.report("bad-time", "This is not a time in UTC.", "when",
                  "a time such as \"2026-05-04T15:10:00Z\"");
  }
  return when;
}

Load read_load(FieldReader& reader, const std::string& id, Problems& problems) {
  Load load;
  load.id = id;
  load.lot = reader.required_text("lot");
  if (reader.required("when") != nullptr) load.when = read_when(reader);
  load.ticket = reader.optional_text("ticket");
  load.source = reader.optional_text("source");
  load.mass = optional_positive<Mass>(reader, "mass");
  load.median_size = optional_positive<Length>(reader, "median_size");
  load.who = reader.optional_text("who");
  load.note = beside(read_position(reader, load.when, problems), reader.optional_text("note"));
  return load;
}

std::optional<SupplyPlan> read_supply(FieldReader& lot, Problems& problems) {
  const auto* json = lot.optional("supply");
  if (json == nullptr) return std::nullopt;
  FieldReader reader(*json, lot.pointer() + "/supply", problems);
  SupplyPlan plan;
  plan.planned_mass = optional_positive<Mass>(reader, "planned_mass");
  plan.target_size = optional_positive<Length>(reader, "target_size");
  plan.load_spread = optional_positive<Length>(reader, "load_spread");
  if (const auto loads = reader.optional_quantity<Dimensionless>("run_length")) {
    plan.run_length = *loads;
    if (!(loads->number() >= 10 && loads->number() <= 10'000)) {
      reader.report("implausible", "A chart runs some loads between two false alarms.",
                    "run_length", "10 to 10000");
    }
  }
  if (plan.target_size.has_value() != plan.load_spread.has_value()) {
    reader.report("half-a-chart", "A chart of loads needs the size to keep and its usual spread.",
                  plan.target_size ? "load_spread" : "target_size", "both, or neither");
  }
  reader.finish();
  return plan;
}

LayerSurvey read_layer_survey(FieldReader& reader, const std::string& id, Problems& problems) {
  LayerSurvey survey;
  survey.id = id;
  survey.name = reader.required_text("name");
  survey.zone = reader.required_text("zone");
  survey.seen = read_observation(reader, problems);
  if (reader.required("thicknesses") != nullptr) {
    survey.thicknesses = reader.optional_quantities<Length>("thicknesses");
    for (std::size_t i = 0; i < survey.thicknesses.size(); ++i) {
      const double thickness = survey.thicknesses[i].meters();
      if (thickness >= 0 && thickness <= thickest_layer_m) continue;
      reader.report("implausible", "No layer has this thickness.",
                    "thicknesses/" + std::to_string(i), "0 to 20 m");
    }
  }
  survey.vertical_on = reader.optional_quantity<Slope>("vertical_on");
  if (survey.vertical_on && !(survey.vertical_on->si() > 0)) {
    reader.report("not-positive", "A slope on which heights were taken rises.", "vertical_on",
                  "such as 1V:2H");
  }
  survey.least = optional_positive<Length>(reader, "least");
  return survey;
}

}  // namespace proofstone
