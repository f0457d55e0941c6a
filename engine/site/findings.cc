#include "engine/site/findings.h"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/site/version.h"
#include "engine/site/wording.h"

namespace proofstone {
namespace {

using nlohmann::json;

void put_measure(json& into, const Measure& measure, UnitSystem units, LengthUse use) {
  const auto shown = display(measure, units, use);
  into["si"] = measure.si;
  into["kind"] = kind_name(measure.kind);
  into["value"] = shown.value;
  into["unit"] = shown.unit;
  into["text"] = shown.text;
}

json about_json(const About& about) {
  json into = json::object();
  const auto put = [&into](const char* key, const std::string& id) {
    if (!id.empty()) into[key] = id;
  };
  put("zone", about.zone);
  put("reach", about.reach);
  put("flow_case", about.flow_case);
  put("lot", about.lot);
  put("look", about.look);
  put("method", about.method);
  put("class", about.rock_class);
  return into;
}

json margin_json(const Margin& margin) {
  json into = {{"value", margin.value}};
  if (margin.low) into["low"] = *margin.low;
  if (margin.high) into["high"] = *margin.high;
  into["text"] = margin_text(margin);
  return into;
}

json limits_json(const Finding& finding) {
  json list = json::array();
  for (const auto& limit : finding.limits) {
    list.push_back(
        {{"sentence", limit.sentence}, {"source", limit.source}, {"kept", finding.keeps(limit)}});
  }
  return list;
}

json json_of(const Finding& finding, UnitSystem units) {
  json into = {{"id", finding.id},
               {"topic", topic_name(finding.topic)},
               {"about", about_json(finding.about)},
               {"title", finding.title},
               {"outcome", outcome_phrase(finding.outcome)},
               {"sentence", finding.sentence},
               {"next", finding.next},
               {"governs", finding.governs},
               {"reasons", finding.reasons},
               {"cautions", finding.cautions},
               {"steps", steps_json(finding.steps, units)},
               {"limits", limits_json(finding)}};
  if (finding.margin) into["margin"] = margin_json(*finding.margin);
  if (finding.confidence) {
    into["confidence"] = {{"value", *finding.confidence},
                          {"text", confidence_text(*finding.confidence)}};
  }
  into["values"] = json::array();
  for (const auto& value : finding.values) {
    json line = {{"key", value.key}, {"symbol", value.symbol}, {"meaning", value.meaning}};
    put_measure(line, value.value, units, value.length_use);
    into["values"].push_back(std::move(line));
  }
  into["sources"] = json::array();
  for (const auto& source : finding.sources) {
    into["sources"].push_back({{"document", source.document},
                               {"place", source.place},
                               {"standing", standing_name(source.standing)},
                               {"sentence", source.sentence()}});
  }
  return into;
}

}  // namespace

std::string_view topic_name(Topic topic) {
  switch (topic) {
    case Topic::document:
      return "document";
    case Topic::kind:
      return "kind of rock";
    case Topic::cover:
      return "cover";
    case Topic::water:
      return "water";
    case Topic::rock_size:
      return "rock size";
    case Topic::rock_class:
      return "class";
    case Topic::layer:
      return "layer";
    case Topic::toe:
      return "toe";
    case Topic::soil:
      return "soil";
    case Topic::filter:
      return "filter";
    case Topic::extent:
      return "extent";
    case Topic::quantities:
      return "quantities";
    case Topic::submittal:
      return "submittal";
    case Topic::substitution:
      return "substitution";
    case Topic::gradation:
      return "gradation";
    case Topic::rock_in_zone:
      return "rock in the zone";
    case Topic::remedy:
      return "remedy";
    case Topic::chance:
      return "chance of instability";
    case Topic::supply:
      return "supply";
    case Topic::placing:
      return "placing";
    case Topic::placing_check:
      return "placing check";
    case Topic::mix:
      return "mix";
  }
  return "document";
}

std::string margin_text(const Margin& margin) {
  std::string text = margin_text(margin.value);
  if (margin.low && margin.high) {
    text += fmt::format(" ({} to {})", margin_text(*margin.low), margin_text(*margin.high));
  } else if (margin.low) {
    text += fmt::format(" (at least {})", margin_text(*margin.low));
  } else if (margin.high) {
    text += fmt::format(" (at most {})", margin_text(*margin.high));
  }
  return text;
}

bool Finding::keeps(const LimitDescription& limit) const {
  return std::none_of(
      limits_not_kept.begin(), limits_not_kept.end(),
      [&limit](const LimitDescription& broken) { return broken.sentence == limit.sentence; });
}

const Finding* Findings::find(std::string_view id) const {
  for (const auto& finding : findings) {
    if (finding.id == id) return &finding;
  }
  return nullptr;
}

json findings_json(const Findings& findings) {
  json into = {
      {"proofstone", "findings"},
      {"format", 1},
      {"engine", engine_version},
      {"units", findings.units == UnitSystem::si ? "si" : "us"},
      {"site", {{"name", findings.site_name}, {"revision", findings.revision}}},
      {"headline",
       {{"outcome", outcome_phrase(findings.headline_outcome)}, {"sentence", findings.headline}}},
      {"cautions", findings.cautions}};
  into["findings"] = json::array();
  for (const auto& finding : findings.findings) {
    into["findings"].push_back(json_of(finding, findings.units));
  }
  return into;
}

json finding_json(const Finding& finding, UnitSystem units) { return json_of(finding, units); }

json problem_json(const Problem& problem) {
  return {{"code", problem.code}, {"sentence", problem.sentence()}, {"what", problem.what},
          {"file", problem.file}, {"where", problem.where},         {"allowed", problem.allowed}};
}

json problems_json(const Problems& problems) {
  json list = json::array();
  for (const auto& problem : problems) list.push_back(problem_json(problem));
  return list;
}

json steps_json(const Steps& steps, UnitSystem units) {
  json list = json::array();
  for (const auto& step : steps.lines()) {
    json line = {{"symbol", step.symbol},
                 {"meaning", step.meaning},
                 {"formula", step.formula},
                 {"source", step.source}};
    put_measure(line, step.value, units, step.length_use);
    list.push_back(std::move(line));
  }
  return list;
}

json measure_json(const Measure& measure, UnitSystem units, LengthUse use) {
  json into = json::object();
  put_measure(into, measure, units, use);
  return into;
}

}  // namespace proofstone
