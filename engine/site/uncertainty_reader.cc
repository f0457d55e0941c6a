#include "engine/site/uncertainty_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/method/registry.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {
namespace {

const InputDescription* quantity_of(const MethodDescription& about, const std::string& key) {
  const auto found =
      std::find_if(about.inputs.begin(), about.inputs.end(), [&](const InputDescription& input) {
        return input.key == key && input.form == InputForm::quantity;
      });
  return found == about.inputs.end() ? nullptr : &*found;
}

std::string quantity_keys(const MethodDescription& about) {
  std::string keys;
  for (const auto& input : about.inputs) {
    if (input.form == InputForm::quantity) keys += (keys.empty() ? "" : ", ") + input.key;
  }
  return keys;
}

/// A number above 0 and not above `most`.
std::optional<double> share(FieldReader& reader, const char* field, double most) {
  const auto value = reader.optional_quantity<Dimensionless>(field);
  if (!value) return std::nullopt;
  if (!(value->number() > 0 && value->number() <= most)) {
    reader.report("outside-allowed", "This number cannot stand here.", field,
                  fmt::format("more than 0, at most {}", most));
  }
  return value->number();
}

/// A quantity whose kind is known only at run time.
std::optional<double> value_in_si(FieldReader& reader, const char* field, QuantityKind kind) {
  const auto* value = reader.optional(field);
  if (value == nullptr) return std::nullopt;
  if (!value->is_string()) {
    reader.report("not-a-quantity", "A quantity is written as a text with its unit.", field,
                  allowed_units(kind));
    return std::nullopt;
  }
  const auto measure = parse_measure(value->get_ref<const std::string&>(), kind);
  if (measure) return measure->si;
  for (const auto& problem : measure.problems()) {
    reader.report(problem.code, problem.what, field, problem.allowed);
  }
  return std::nullopt;
}

StatedSpread read_spread(const nlohmann::json& json, const std::string& pointer, QuantityKind kind,
                         Problems& problems) {
  FieldReader reader(json, pointer, problems);
  StatedSpread spread;
  spread.family = reader.choice<DistributionFamily>("distribution", distribution_words(),
                                                    DistributionFamily::lognormal);
  const auto si = [&](const char* field) { return value_in_si(reader, field, kind); };
  spread.variation = share(reader, "variation", 3);
  spread.mean = si("mean");
  spread.standard_deviation = si("standard_deviation");
  spread.low = si("low");
  spread.most_likely = si("most_likely");
  spread.high = si("high");
  reader.finish();
  return spread;
}

void read_inputs(FieldReader& reader, const MethodDescription& about, StatedUncertainty& stated,
                 Problems& problems) {
  const auto* inputs = reader.optional("inputs");
  if (inputs == nullptr) return;
  if (!inputs->is_object()) {
    reader.report("not-an-object", "Spreads under the inputs of the method belong here.", "inputs",
                  quantity_keys(about));
    return;
  }
  for (const auto& [key, value] : inputs->items()) {
    const auto* input = quantity_of(about, key);
    if (input == nullptr) {
      reader.report("cannot-vary", fmt::format("{} has no such quantity.", about.title),
                    "inputs/" + key, quantity_keys(about));
      continue;
    }
    stated.inputs[key] =
        read_spread(value, reader.pointer() + "/inputs/" + key, input->kind, problems);
  }
}

void read_correlations(FieldReader& reader, StatedUncertainty& stated, Problems& problems) {
  const auto* list = reader.optional_list("correlations");
  if (list == nullptr) return;
  for (std::size_t i = 0; i < list->size(); ++i) {
    FieldReader one((*list)[i], fmt::format("{}/correlations/{}", reader.pointer(), i), problems);
    StatedCorrelation correlation;
    correlation.first = one.required_text("first");
    correlation.second = one.required_text("second");
    correlation.coefficient = one.required_quantity<Dimensionless>("coefficient").number();
    if (!(std::abs(correlation.coefficient) < 1)) {
      one.report("outside-allowed", "A correlation lies between −1 and 1.", "coefficient",
                 "above -1 and below 1");
    }
    one.finish();
    stated.correlations.push_back(std::move(correlation));
  }
}

/// The size and the factor that stand beside the inputs.
void read_beside(FieldReader& reader, StatedUncertainty& stated, Problems& problems) {
  if (const auto* model = reader.optional("model")) {
    stated.model =
        read_spread(*model, reader.pointer() + "/model", QuantityKind::dimensionless, problems);
  }
  if (const auto* size = reader.optional("available_size")) {
    stated.available_size =
        read_spread(*size, reader.pointer() + "/available_size", QuantityKind::length, problems);
  }
}

}  // namespace

std::map<std::string, StatedUncertainty> read_uncertainty(FieldReader& zone, Problems& problems) {
  std::map<std::string, StatedUncertainty> all;
  const auto* json = zone.optional("uncertainty");
  if (json == nullptr) return all;
  if (!json->is_object()) {
    zone.report("not-an-object", "Uncertainty under the ids of sizing methods belongs here.",
                "uncertainty", "{ \"method id\": { \"from\": …, \"inputs\": { … } } }");
    return all;
  }
  for (const auto& [id, value] : json->items()) {
    const auto* method = find_sizing_method(id);
    if (method == nullptr) {
      zone.report("unknown-method", fmt::format("No sizing method is called \"{}\".", id),
                  "uncertainty/" + id, "the id of a sizing method");
      continue;
    }
    FieldReader reader(value, zone.pointer() + "/uncertainty/" + id, problems);
    StatedUncertainty stated;
    stated.from = reader.required_text("from");
    read_inputs(reader, method->description(), stated, problems);
    read_beside(reader, stated, problems);
    read_correlations(reader, stated, problems);
    stated.accepted_chance = share(reader, "accepted_chance", 1);
    reader.finish();
    all[id] = std::move(stated);
  }
  return all;
}

}  // namespace proofstone
