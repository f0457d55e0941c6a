#include "engine/site/findings_text.h"

#include <nlohmann/json.hpp>

#include "engine/site/version.h"
#include "engine/site/wording.h"

namespace proofstone {
namespace {

using nlohmann::json;

void write_measure(JsonText& into, const Measure& measure, UnitSystem units, LengthUse use) {
  const auto shown = display(measure, units, use);
  into.field("si", measure.si)
      .field("kind", kind_name(measure.kind))
      .field("value", shown.value)
      .field("unit", shown.unit)
      .field("text", shown.text);
}

void write_about(JsonText& into, const About& about) {
  const auto put = [&into](const char* key, const std::string& id) {
    if (!id.empty()) into.field(key, id);
  };
  into.begin_object();
  put("zone", about.zone);
  put("reach", about.reach);
  put("flow_case", about.flow_case);
  put("lot", about.lot);
  put("look", about.look);
  put("method", about.method);
  put("class", about.rock_class);
  into.end_object();
}

void write_margin(JsonText& into, const Margin& margin) {
  into.begin_object().field("value", margin.value);
  if (margin.low) into.field("low", *margin.low);
  if (margin.high) into.field("high", *margin.high);
  into.field("text", margin_text(margin)).end_object();
}

void write_limits(JsonText& into, const Finding& finding) {
  into.begin_array();
  for (const auto& limit : finding.limits) {
    into.begin_object()
        .field("sentence", limit.sentence)
        .field("source", limit.source)
        .field("kept", finding.keeps(limit))
        .end_object();
  }
  into.end_array();
}

void write_values(JsonText& into, const std::vector<StatedValue>& values, UnitSystem units) {
  into.begin_array();
  for (const auto& value : values) {
    into.begin_object()
        .field("key", value.key)
        .field("symbol", value.symbol)
        .field("meaning", value.meaning);
    write_measure(into, value.value, units, value.length_use);
    into.end_object();
  }
  into.end_array();
}

void write_steps(JsonText& into, const Steps& steps, UnitSystem units) {
  into.begin_array();
  for (const auto& step : steps.lines()) {
    into.begin_object()
        .field("symbol", step.symbol)
        .field("meaning", step.meaning)
        .field("formula", step.formula)
        .field("source", step.source);
    write_measure(into, step.value, units, step.length_use);
    into.end_object();
  }
  into.end_array();
}

void write_sources(JsonText& into, const std::vector<Source>& sources) {
  into.begin_array();
  for (const auto& source : sources) {
    into.begin_object()
        .field("document", source.document)
        .field("place", source.place)
        .field("standing", standing_name(source.standing))
        .field("sentence", source.sentence())
        .end_object();
  }
  into.end_array();
}

void write_finding(JsonText& into, const Finding& finding, UnitSystem units) {
  into.begin_object().field("id", finding.id).field("topic", topic_name(finding.topic));
  write_about(into.key("about"), finding.about);
  into.field("title", finding.title)
      .field("outcome", outcome_phrase(finding.outcome))
      .field("sentence", finding.sentence)
      .field("next", finding.next)
      .field("governs", finding.governs)
      .field("reasons", finding.reasons)
      .field("cautions", finding.cautions);
  write_steps(into.key("steps"), finding.steps, units);
  write_limits(into.key("limits"), finding);
  if (finding.margin) write_margin(into.key("margin"), *finding.margin);
  if (finding.confidence) {
    into.key("confidence")
        .begin_object()
        .field("value", *finding.confidence)
        .field("text", confidence_text(*finding.confidence))
        .end_object();
  }
  write_values(into.key("values"), finding.values, units);
  write_sources(into.key("sources"), finding.sources);
  into.end_object();
}

/// What `write` writes, as a value: for the answers that hold little.
template <class Write>
json written(Write write) {
  JsonText text;
  write(text);
  return json::parse(text.text());
}

}  // namespace

void write_findings(JsonText& into, const Findings& findings) {
  into.begin_object()
      .field("proofstone", "findings")
      .field("format", 1)
      .field("engine", engine_version)
      .field("units", findings.units == UnitSystem::si ? "si" : "us");
  into.key("site")
      .begin_object()
      .field("name", findings.site_name)
      .field("revision", findings.revision)
      .end_object();
  into.key("headline")
      .begin_object()
      .field("outcome", outcome_phrase(findings.headline_outcome))
      .field("sentence", findings.headline)
      .end_object();
  into.field("cautions", findings.cautions).key("findings").begin_array();
  for (const auto& finding : findings.findings) write_finding(into, finding, findings.units);
  into.end_array().end_object();
}

std::string findings_text(const Findings& findings) {
  JsonText text;
  write_findings(text, findings);
  return text.take();
}

json finding_json(const Finding& finding, UnitSystem units) {
  return written([&](JsonText& into) { write_finding(into, finding, units); });
}

json steps_json(const Steps& steps, UnitSystem units) {
  return written([&](JsonText& into) { write_steps(into, steps, units); });
}

json measure_json(const Measure& measure, UnitSystem units, LengthUse use) {
  return written([&](JsonText& into) {
    write_measure(into.begin_object(), measure, units, use);
    into.end_object();
  });
}

}  // namespace proofstone
