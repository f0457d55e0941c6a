#include "engine/method/check_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <utility>

#include "engine/json/field_reader.h"
#include "engine/json/strict_json.h"
#include "engine/method/registry.h"

namespace proofstone {

namespace {

using nlohmann::json;

constexpr int shown_figures = 7;

struct Expectation {
  const OutputDescription* output = nullptr;
  Measure value;
  double tolerance_si = 0;
  std::string value_text;
  std::string tolerance_text;
};

struct CheckCase {
  std::string id;
  std::string about;
  std::string remark;
  Source source;
  const json* inputs = nullptr;
  std::vector<Expectation> expectations;
  std::string expected_problem;
};

const OutputDescription* find_output(const MethodDescription& about, const std::string& key) {
  const auto found =
      std::find_if(about.outputs.begin(), about.outputs.end(),
                   [&](const OutputDescription& output) { return output.key == key; });
  return found == about.outputs.end() ? nullptr : &*found;
}

/// The text of a quantity, read as one of `kind`.
std::optional<Measure> read_text(FieldReader& reader, const std::string& field,
                                 const std::string& text, QuantityKind kind, Problems& problems) {
  auto measure = parse_measure(text, kind);
  if (measure) return *measure;
  for (auto& problem : located_under(measure.problems(), reader.pointer() + "/" + field)) {
    problems.push_back(std::move(problem));
  }
  return std::nullopt;
}

/// The allowed difference in SI; a problem where neither or both tolerances stand, or one is not
/// positive.
void read_tolerance(FieldReader& reader, Expectation& expectation, Problems& problems) {
  const bool absolute = reader.has("within");
  if (absolute == reader.has("relative")) {
    reader.report("tolerance", "One tolerance belongs here.", "within",
                  "either \"within\" (a quantity) or \"relative\" (a number)");
    return;
  }
  if (absolute) {
    const std::string text = reader.required_text("within");
    const auto within = read_text(reader, "within", text, expectation.output->kind, problems);
    expectation.tolerance_si = within ? within->si : 0;
    expectation.tolerance_text = text;
  } else {
    const json* relative = reader.required("relative");
    const double share = relative->is_number() ? relative->get<double>() : 0;
    expectation.tolerance_si = share * std::abs(expectation.value.si);
    expectation.tolerance_text = significant(100 * share, 3) + " %";
  }
  if (!(expectation.tolerance_si > 0) || !std::isfinite(expectation.tolerance_si)) {
    reader.report("tolerance", "The tolerance is not a positive number.",
                  absolute ? "within" : "relative", "a tolerance above 0");
  }
}

std::vector<Expectation> read_expectations(const json& object, const std::string& pointer,
                                           const MethodDescription& about, Problems& problems) {
  std::vector<Expectation> expectations;
  if (!object.is_object() || object.empty()) {
    problems.push_back({"nothing-expected", "A case must expect at least one output.", "", pointer,
                        "{ output: { value, within or relative } }"});
    return expectations;
  }
  for (const auto& [key, entry] : object.items()) {
    FieldReader reader(entry, pointer + "/" + key, problems);
    Expectation expectation;
    expectation.output = find_output(about, key);
    if (expectation.output == nullptr) {
      problems.push_back({"unknown-output", fmt::format("The method has no output \"{}\".", key),
                          "", reader.pointer(), "an output key of the method"});
      continue;
    }
    expectation.value_text = reader.required_text("value");
    const auto value =
        read_text(reader, "value", expectation.value_text, expectation.output->kind, problems);
    if (value) expectation.value = *value;
    read_tolerance(reader, expectation, problems);
    reader.finish();
    expectations.push_back(std::move(expectation));
  }
  return expectations;
}

Source read_source(const json* object, const std::string& pointer, Problems& problems) {
  Source source;
  if (object == nullptr) return source;
  FieldReader reader(*object, pointer, problems);
  source.document = reader.required_text("document");
  source.place = reader.required_text("place");
  source.standing =
      reader.choice<SourceStanding>("standing",
                                    {{"published", SourceStanding::published},
                                     {"memory", SourceStanding::memory},
                                     {"computed", SourceStanding::computed},
                                     {"common practice", SourceStanding::common_practice}},
                                    std::nullopt);
  reader.finish();
  return source;
}

CheckCase read_case(const json& object, const std::string& pointer, const MethodDescription& about,
                    Problems& problems) {
  FieldReader reader(object, pointer, problems);
  CheckCase check;
  check.id = reader.required_text("id");
  check.about = reader.required_text("about");
  check.remark = reader.optional_text("remark");
  check.source = read_source(reader.required("source"), pointer + "/source", problems);
  check.inputs = reader.required("inputs");
  check.expected_problem = reader.optional_text("expect_problem");
  if (const json* expect = reader.optional("expect")) {
    check.expectations = read_expectations(*expect, pointer + "/expect", about, problems);
    if (!check.expected_problem.empty()) {
      reader.report("two-expectations", "A case expects values or a problem, not both.",
                    "expect_problem", "");
    }
  } else if (check.expected_problem.empty()) {
    reader.report("missing-field", "The field \"expect\" is missing.", "expect",
                  "\"expect\" or \"expect_problem\"");
  }
  reader.finish();
  return check;
}

std::string in_unit(const Measure& measure, const Unit& unit) {
  std::string text = significant(measure.si / unit.si_factor, shown_figures);
  if (!unit.symbol.empty()) text += " " + std::string(unit.symbol);
  return text;
}

/// The unit that `text` is written in, or `otherwise` where it has none of that kind.
Unit unit_written_in(const std::string& text, const Unit& otherwise) {
  Unit unit = otherwise;
  std::size_t longest = 0;
  for (const auto& known : unit_spellings()) {
    const auto length = known.spelling.size();
    if (known.unit.kind != otherwise.kind || length <= longest || length >= text.size()) continue;
    if (text.compare(text.size() - length, length, known.spelling) != 0) continue;
    unit = known.unit;
    longest = length;
  }
  return unit;
}

/// "velocity 10 ft/s, turbulence high"
std::string inputs_in_words(const json& inputs) {
  std::string words;
  for (const auto& [key, value] : inputs.items()) {
    words += fmt::format("{}{} {}", words.empty() ? "" : ", ", key,
                         value.is_string() ? value.get<std::string>() : value.dump());
  }
  return words;
}

CheckOutcome begin_outcome(const std::string& method, const CheckCase& check) {
  CheckOutcome outcome;
  outcome.method = method;
  outcome.case_id = check.id;
  outcome.about = check.about;
  outcome.inputs = inputs_in_words(*check.inputs);
  outcome.remark = check.remark;
  outcome.source = check.source;
  return outcome;
}

CheckOutcome compare(const std::string& method, const CheckCase& check,
                     const Expectation& expectation, const Expected<Evaluation>& evaluation) {
  auto outcome = begin_outcome(method, check);
  outcome.output = expectation.output->key;
  outcome.expected_si = expectation.value.si;
  outcome.tolerance_si = expectation.tolerance_si;
  outcome.expected_text = expectation.value_text;
  outcome.allowed_text = expectation.tolerance_text;
  const auto expected = fmt::format("{}: expected {} ± {}", outcome.output, expectation.value_text,
                                    expectation.tolerance_text);
  if (!evaluation) {
    outcome.computed_text = evaluation.problems().front().sentence();
    outcome.sentence = expected + ", but: " + outcome.computed_text;
    return outcome;
  }
  const Measure& computed = evaluation->output(outcome.output);
  outcome.computed_si = computed.si;
  outcome.passed = std::abs(computed.si - expectation.value.si) <= expectation.tolerance_si;
  outcome.computed_text =
      in_unit(computed, unit_written_in(expectation.value_text, expectation.output->unit));
  outcome.sentence = fmt::format("{}, computed {}", expected, outcome.computed_text);
  return outcome;
}

CheckOutcome compare_problem(const std::string& method, const CheckCase& check,
                             const Expected<Evaluation>& evaluation) {
  auto outcome = begin_outcome(method, check);
  outcome.expected_text = check.expected_problem;
  const auto expected = fmt::format("expected the problem \"{}\"", check.expected_problem);
  if (evaluation) {
    outcome.sentence = expected + ", but values were computed";
    return outcome;
  }
  const auto& problems = evaluation.problems();
  const auto found = std::find_if(problems.begin(), problems.end(), [&](const Problem& problem) {
    return problem.code == check.expected_problem;
  });
  outcome.passed = found != problems.end();
  outcome.computed_text = (outcome.passed ? *found : problems.front()).sentence();
  outcome.sentence = fmt::format("{}; the engine says: {}", expected, outcome.computed_text);
  return outcome;
}

std::vector<CheckOutcome> run_case(const Method& method, const CheckCase& check) {
  const auto& id = method.description().id;
  const auto evaluation = method.evaluate(*check.inputs);
  if (!check.expected_problem.empty()) return {compare_problem(id, check, evaluation)};
  std::vector<CheckOutcome> outcomes;
  for (const Expectation& expectation : check.expectations) {
    outcomes.push_back(compare(id, check, expectation, evaluation));
  }
  return outcomes;
}

}  // namespace

double CheckOutcome::strain() const {
  return tolerance_si > 0 ? std::abs(computed_si - expected_si) / tolerance_si : 0;
}

Expected<std::vector<CheckOutcome>> run_check_table(std::string_view json_text) {
  const auto table = parse_strict_json(json_text);
  if (!table) return table.problems();
  Problems problems;
  FieldReader reader(*table, "", problems);
  const std::string method_id = reader.required_text("method");
  const json* list = reader.optional_list("cases");
  reader.finish();
  const Method* method = find_method(method_id);
  if (method == nullptr) {
    problems.push_back({"unknown-method", fmt::format("No method is called \"{}\".", method_id), "",
                        "/method", "the id of a method"});
  } else if (list == nullptr || list->empty()) {
    problems.push_back({"no-cases", "The table has no cases.", "", "/cases", "at least one case"});
  }
  if (!problems.empty()) return problems;

  std::vector<CheckCase> cases;
  std::set<std::string> ids;
  for (std::size_t i = 0; i < list->size(); ++i) {
    const auto pointer = fmt::format("/cases/{}", i);
    cases.push_back(read_case((*list)[i], pointer, method->description(), problems));
    if (!ids.insert(cases.back().id).second) {
      problems.push_back(
          {"repeated-id", "Two cases have this id.", "", pointer + "/id", "each id once"});
    }
  }
  if (!problems.empty()) return problems;

  std::vector<CheckOutcome> outcomes;
  for (const CheckCase& check : cases) {
    for (auto& outcome : run_case(*method, check)) outcomes.push_back(std::move(outcome));
  }
  return outcomes;
}

}  // namespace proofstone
