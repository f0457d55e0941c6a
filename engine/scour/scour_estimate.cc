#include "engine/scour/scour_estimate.h"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/method/registry.h"

namespace proofstone {

namespace {

using nlohmann::json;

/// Inputs of a method as texts; what is not known stays absent.
class InputTexts {
 public:
  template <class Q>
  InputTexts& put(const char* key, const std::optional<Q>& value, const Unit& unit) {
    if (value) inputs_[key] = exact_text(measure(*value), unit);
    return *this;
  }
  InputTexts& put_situation(const ScourWater& water);
  json take() { return std::move(inputs_); }

 private:
  json inputs_ = json::object();
};

const char* word_of(ScourSituation situation) {
  switch (situation) {
    case ScourSituation::straight:
      return "straight";
    case ScourSituation::moderate_bend:
      return "moderate-bend";
    case ScourSituation::severe_bend:
      return "severe-bend";
    case ScourSituation::right_angle_bend:
      return "right-angle-bend";
    case ScourSituation::vertical_wall:
      return "vertical-wall";
    case ScourSituation::pier_nose:
      return "pier-nose";
    case ScourSituation::guide_bank_nose:
      return "guide-bank-nose";
    case ScourSituation::dam_across_river:
      return "dam-across-river";
  }
  return "straight";
}

InputTexts& InputTexts::put_situation(const ScourWater& water) {
  if (water.situation) inputs_["situation"] = word_of(*water.situation);
  return *this;
}

std::optional<UnitDischarge> unit_discharge(const ScourWater& water) {
  if (!water.discharge || !water.top_width || !(water.top_width->si() > 0)) return std::nullopt;
  return UnitDischarge::square_meters_per_second(water.discharge->cubic_meters_per_second() /
                                                 water.top_width->meters());
}

std::optional<Length> mean_or_toe_depth(const ScourWater& water) {
  return water.mean_depth ? water.mean_depth : water.toe_depth;
}

json lacey_inputs(const ScourWater& w) {
  return InputTexts()
      .put("discharge", w.discharge, unit::cubic_meter_per_second)
      .put("bed_grain", w.bed_d50, unit::meter)
      .put("existing_depth", w.mean_depth, unit::meter)
      .put_situation(w)
      .take();
}

json blench_inputs(const ScourWater& w) {
  return InputTexts()
      .put("unit_discharge", unit_discharge(w), unit::square_meter_per_second)
      .put("bed_grain", w.bed_d50, unit::meter)
      .put("existing_depth", w.mean_depth, unit::meter)
      .put_situation(w)
      .take();
}

json neill_inputs(const ScourWater& w) {
  return InputTexts()
      .put("unit_discharge", unit_discharge(w), unit::square_meter_per_second)
      .put("existing_depth", w.mean_depth, unit::meter)
      .put_situation(w)
      .take();
}

json competent_depth_inputs(const ScourWater& w) {
  return InputTexts()
      .put("depth", w.mean_depth, unit::meter)
      .put("bed_grain", w.bed_d50, unit::meter)
      .put("unit_discharge", unit_discharge(w), unit::square_meter_per_second)
      .take();
}

json maynord_inputs(const ScourWater& w) {
  return InputTexts()
      .put("bend_radius", w.bend_radius, unit::meter)
      .put("width", w.top_width, unit::meter)
      .put("crossing_depth", w.mean_depth, unit::meter)
      .put("existing_depth", w.toe_depth, unit::meter)
      .take();
}

json thorne_inputs(const ScourWater& w) {
  return InputTexts()
      .put("bend_radius", w.bend_radius, unit::meter)
      .put("width", w.top_width, unit::meter)
      .put("mean_depth", w.mean_depth, unit::meter)
      .take();
}

json zeller_inputs(const ScourWater& w) {
  return InputTexts()
      .put("greatest_depth", w.toe_depth, unit::meter)
      .put("hydraulic_depth", w.mean_depth, unit::meter)
      .put("velocity", w.velocity, unit::meter_per_second)
      .put("energy_slope", w.energy_slope, unit::rise_per_run)
      .put("bend_radius", w.bend_radius, unit::meter)
      .put("top_width", w.top_width, unit::meter)
      .take();
}

json antidune_inputs(const ScourWater& w) {
  return InputTexts()
      .put("velocity", w.velocity, unit::meter_per_second)
      .put("depth", mean_or_toe_depth(w), unit::meter)
      .take();
}

json dune_inputs(const ScourWater& w) {
  return InputTexts()
      .put("velocity", w.velocity, unit::meter_per_second)
      .put("depth", mean_or_toe_depth(w), unit::meter)
      .put("d50", w.bed_d50, unit::meter)
      .put("d90", w.bed_d90, unit::meter)
      .take();
}

json bed_grain_input(const ScourWater& w) {
  return InputTexts().put("bed_grain", w.bed_d50, unit::meter).take();
}

/// Methods whose inputs lie elsewhere than at the toe: the designer gives them all.
json nothing_from_the_zone(const ScourWater&) { return json::object(); }

struct Estimator {
  const char* id;
  ScourAllowance allowance;
  const char* output;
  json (*inputs)(const ScourWater&);
  /// The output is a depth from the water surface, of which the depth at the toe is taken off.
  bool from_water = false;
};

const std::vector<Estimator>& estimators() {
  static const std::vector<Estimator> all{
      {"lacey-scour", ScourAllowance::general, "scour", &lacey_inputs},
      {"blench-scour", ScourAllowance::general, "scour", &blench_inputs},
      {"neill-scour", ScourAllowance::general, "scour", &neill_inputs},
      {"competent-depth", ScourAllowance::general, "scour", &competent_depth_inputs},
      {"zeller-bend-scour", ScourAllowance::general, "scour", &zeller_inputs},
      {"maynord-bend-scour", ScourAllowance::bend, "bend_depth", &maynord_inputs, true},
      {"thorne-bend-scour", ScourAllowance::bend, "bend_depth", &thorne_inputs, true},
      {"live-bed-contraction-scour", ScourAllowance::contraction, "scour", &nothing_from_the_zone},
      {"clear-water-contraction-scour", ScourAllowance::contraction, "scour",
       &nothing_from_the_zone},
      {"antidune-allowance", ScourAllowance::bedform, "trough", &antidune_inputs},
      {"dune-allowance", ScourAllowance::bedform, "trough", &dune_inputs},
      {"armouring-scour", ScourAllowance::long_term, "degradation", &nothing_from_the_zone},
      {"degradation-above-control", ScourAllowance::long_term, "degradation",
       &nothing_from_the_zone},
      {"pier-scour", ScourAllowance::local, "scour", &nothing_from_the_zone},
      {"hec11-toe-depth", ScourAllowance::whole, "scour", &bed_grain_input},
  };
  return all;
}

const Estimator* find_estimator(const std::string& id) {
  const auto found = std::find_if(estimators().begin(), estimators().end(),
                                  [&](const Estimator& one) { return id == one.id; });
  return found == estimators().end() ? nullptr : &*found;
}

/// On the outside of a bend a factor for straight reaches would be too small, so it must be said
/// how sharp the bend is.
bool situation_is_missing(const json& inputs, const Method& method, const ScourWater& water) {
  const auto& described = method.description().inputs;
  const bool asks = std::any_of(described.begin(), described.end(),
                                [](const auto& input) { return input.key == "situation"; });
  return asks && water.bend_radius && !inputs.contains("situation") && !inputs.contains("factor");
}

}  // namespace

std::vector<std::string> scour_method_ids() {
  std::vector<std::string> ids;
  for (const auto& one : estimators()) ids.emplace_back(one.id);
  return ids;
}

Expected<ScourEstimate> estimate_scour(const std::string& id, const ScourWater& water,
                                       const json* own_inputs) {
  const Estimator* estimator = find_estimator(id);
  const Method* method = estimator == nullptr ? nullptr : find_method(id);
  if (method == nullptr) {
    return Problem{"unknown-method", "No method of this name estimates scour at a toe.", "",
                   "/" + id, ""};
  }
  json inputs = estimator->inputs(water);
  if (own_inputs != nullptr && own_inputs->is_object()) inputs.update(*own_inputs);
  if (situation_is_missing(inputs, *method, water)) {
    return Problem{"missing-input", "On the outside of a bend it must be said how sharp it is.", "",
                   "/situation", "\"moderate bend\", \"severe bend\" or \"right-angle bend\""};
  }
  auto evaluation = method->evaluate(inputs);
  if (!evaluation) return evaluation.problems();
  ScourEstimate estimate;
  estimate.method = method;
  estimate.allowance = estimator->allowance;
  estimate.depth = Length::from_si(evaluation->output(estimator->output).si);
  estimate.evaluation = std::move(*evaluation);
  if (!estimator->from_water) return estimate;
  if (!water.toe_depth) {
    return Problem{"missing-input", "The depth at the toe is not known.", "", "/depth", "a length"};
  }
  estimate.depth = std::max(Length::meters(0), estimate.depth - *water.toe_depth);
  estimate.evaluation.steps.given("y", "depth at the toe as it stands", measure(*water.toe_depth));
  estimate.evaluation.steps.computed("z", "bend scour below the bed at the toe",
                                     "max(0, greatest depth − y)", measure(estimate.depth));
  return estimate;
}

void add_estimate(ToeDepthInputs& toe, const ScourEstimate& estimate) {
  switch (estimate.allowance) {
    case ScourAllowance::long_term:
      toe.long_term = std::max(toe.long_term.value_or(estimate.depth), estimate.depth);
      return;
    case ScourAllowance::contraction:
      toe.contraction.push_back(estimate.depth);
      return;
    case ScourAllowance::general:
      toe.general.push_back(estimate.depth);
      return;
    case ScourAllowance::bend:
      toe.bend.push_back(estimate.depth);
      return;
    case ScourAllowance::bedform:
      toe.bedform.push_back(estimate.depth);
      return;
    case ScourAllowance::local:
      toe.local.push_back(estimate.depth);
      return;
    case ScourAllowance::whole:
      toe.whole.push_back(estimate.depth);
      return;
  }
}

}  // namespace proofstone
