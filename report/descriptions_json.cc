#include "report/descriptions_json.h"

#include <nlohmann/json.hpp>

#include "engine/site/findings_text.h"

namespace proofstone {
namespace {

using nlohmann::json;

std::string_view form_name(InputForm form) {
  switch (form) {
    case InputForm::quantity:
      return "quantity";
    case InputForm::quantity_list:
      return "quantity list";
    case InputForm::choice:
      return "choice";
  }
  return "quantity";
}

json source_json(const Source& source) {
  return {{"document", source.document},
          {"place", source.place},
          {"standing", standing_name(source.standing)},
          {"sentence", source.sentence()}};
}

json input_json(const InputDescription& input) {
  json choices = json::array();
  for (const auto& choice : input.choices) {
    choices.push_back({{"key", choice.key}, {"meaning", choice.meaning}});
  }
  return {{"key", input.key},
          {"symbol", input.symbol},
          {"meaning", input.meaning},
          {"form", form_name(input.form)},
          {"kind", kind_name(input.kind)},
          {"unit", input.unit.symbol},
          {"required", input.required},
          {"default", input.default_text},
          {"allowed", input.form == InputForm::choice ? "" : input.allowed.sentence(input.unit)},
          {"choices", choices}};
}

json limit_line(const std::vector<GradationPoint>& points, UnitSystem units) {
  json line = json::array();
  for (const auto& point : points) {
    json entry = measure_json(measure(point.size), units, LengthUse::rock);
    entry["percent_smaller"] = point.percent_smaller;
    line.push_back(std::move(entry));
  }
  return line;
}

}  // namespace

json description_json(const MethodDescription& about) {
  json into = {{"id", about.id},
               {"title", about.title},
               {"purpose", about.purpose},
               {"group", group_name(about.group)},
               {"cautions", about.cautions}};
  into["sources"] = json::array();
  for (const auto& source : about.sources) into["sources"].push_back(source_json(source));
  into["inputs"] = json::array();
  for (const auto& input : about.inputs) into["inputs"].push_back(input_json(input));
  into["outputs"] = json::array();
  for (const auto& output : about.outputs) {
    into["outputs"].push_back({{"key", output.key},
                               {"symbol", output.symbol},
                               {"meaning", output.meaning},
                               {"kind", kind_name(output.kind)},
                               {"unit", output.unit.symbol}});
  }
  into["limits"] = json::array();
  for (const auto& limit : about.limits) {
    into["limits"].push_back({{"sentence", limit.sentence}, {"source", limit.source}});
  }
  return into;
}

json rock_class_json(const RockClass& rock_class, UnitSystem units) {
  json conditions = json::array();
  for (const auto& condition : rock_class.band.conditions())
    conditions.push_back(condition.wording);
  return {{"id", rock_class.id},
          {"family", rock_class.family},
          {"name", rock_class.name},
          {"nominal_d50", measure_json(measure(rock_class.nominal_d50), units, LengthUse::rock)},
          {"size_meaning", size_meaning_name(rock_class.band.basis().size)},
          {"percent_of", percent_of_name(rock_class.band.basis().percent)},
          {"conditions", conditions},
          {"coarse_limit", limit_line(rock_class.band.coarse_limit(), units)},
          {"fine_limit", limit_line(rock_class.band.fine_limit(), units)},
          {"source", source_json(rock_class.source)},
          {"notes", rock_class.notes}};
}

}  // namespace proofstone
