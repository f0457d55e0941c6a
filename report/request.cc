#include "report/request.h"

#include <fmt/format.h>

#include <map>
#include <nlohmann/json.hpp>
#include <optional>

#include "engine/json/field_reader.h"
#include "engine/json/strict_json.h"
#include "engine/method/check_table.h"
#include "engine/method/registry.h"
#include "engine/rock/embedded_catalog.h"
#include "engine/rock/families_not_held.h"
#include "engine/site/assess.h"
#include "engine/site/findings_text.h"
#include "engine/site/version.h"
#include "report/count_plan_answer.h"
#include "report/descriptions_json.h"
#include "report/marker_sheet.h"
#include "report/request_reading.h"
#include "report/site_requests.h"

namespace proofstone {
namespace {

using nlohmann::json;

Answer count_plan_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  // A class of the document's own needs the document; a published one does not.
  std::optional<Site> stated;
  if (request.optional("document") != nullptr) {
    auto site = site_of(request, problems);
    if (!site) return refused(site.problems());
    stated = std::move(*site);
  }
  const Site* site = stated ? &*stated : nullptr;
  const auto question = read_count_question(request, site);
  request.finish();
  if (!problems.empty()) return refused(problems);
  auto plan = count_plan_answer(question, site, units);
  if (!plan) return refused(plan.problems());
  return Answer(json{{"count_plan", std::move(*plan)}});
}

Answer methods_request(FieldReader& request, Problems& problems) {
  request.finish();
  if (!problems.empty()) return refused(problems);
  json list = json::array();
  for (const auto* method : all_methods()) list.push_back(description_json(method->description()));
  return Answer(json{{"methods", list}});
}

Answer classes_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  request.finish();
  if (!problems.empty()) return refused(problems);
  json list = json::array();
  for (const auto& known : class_catalog()) list.push_back(rock_class_json(known, units));
  json not_held = json::array();
  for (const auto& family : families_not_held()) {
    not_held.push_back({{"family", family.family},
                        {"document", family.source.document},
                        {"place", family.source.place},
                        {"known", family.known},
                        {"next", what_to_do_without_limits()}});
  }
  return Answer({{"classes", list}, {"not_held", not_held}});
}

json evaluation_json(const Method& method, const Evaluation& evaluation, UnitSystem units) {
  json answer = {
      {"outputs", json::array()}, {"steps", json::array()}, {"limits_not_kept", json::array()}};
  for (const auto& described : method.description().outputs) {
    json line = measure_json(evaluation.output(described.key), units, described.length_use);
    line["key"] = described.key;
    line["symbol"] = described.symbol;
    line["meaning"] = described.meaning;
    answer["outputs"].push_back(std::move(line));
  }
  answer["steps"] = steps_json(evaluation.steps, units);
  for (const auto& limit : evaluation.limits_not_kept) {
    answer["limits_not_kept"].push_back({{"sentence", limit.sentence}, {"source", limit.source}});
  }
  return answer;
}

Answer evaluate_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto id = request.required_text("method");
  const auto* inputs = request.required("inputs");
  request.finish();
  if (!problems.empty()) return refused(problems);
  const auto* method = find_method(id);
  if (method == nullptr) {
    return refused({{"unknown-method", fmt::format("No method is called \"{}\".", id), "",
                     "/method", "the id of a method; ask for the list of methods"}});
  }
  const auto evaluation = method->evaluate(*inputs);
  if (!evaluation) return refused(located_under(evaluation.problems(), "/inputs"));
  return Answer(evaluation_json(*method, *evaluation, units));
}

/// The check tables that come with the request, else those that the engine carries.
std::vector<std::string> check_tables(const std::vector<SuppliedFile>& files) {
  std::vector<std::string> tables;
  for (const auto& file : files) tables.push_back(file.text);
  if (!tables.empty()) return tables;
  for (const auto& file : embedded_checks()) tables.emplace_back(file.text);
  return tables;
}

Answer prove_request(FieldReader& request, Problems& problems) {
  const auto tables = check_tables(files_of(request, problems));
  request.finish();
  if (!problems.empty()) return refused(problems);
  if (tables.empty()) {
    return refused({{"no-check-tables", "This engine carries no check tables.", "", "/files",
                     "the tables of checks/, as name and text"}});
  }
  json list = json::array();
  for (const auto& table : tables) {
    const auto outcomes = run_check_table(table);
    if (!outcomes) return refused(outcomes.problems());
    for (const auto& outcome : *outcomes) {
      list.push_back({{"method", outcome.method},
                      {"case", outcome.case_id},
                      {"output", outcome.output},
                      {"passed", outcome.passed},
                      {"expected_si", outcome.expected_si},
                      {"computed_si", outcome.computed_si},
                      {"sentence", outcome.sentence}});
    }
  }
  return Answer(json{{"checks", list}});
}

Answer about_request(FieldReader& request, Problems& problems) {
  request.finish();
  if (!problems.empty()) return refused(problems);
  return Answer({{"engine", engine_version}, {"cautions", usual_cautions()}});
}

/// A marker board to print and lay on the rock that is photographed.
Answer marker_board_request(FieldReader& request, Problems& problems) {
  constexpr int most_boards = 1000;  // which there are, the sheet says
  const auto board = request.optional_integer("board", 1, most_boards).value_or(1);
  const auto edge =
      request.optional_quantity<Length>("edge").value_or(Length::millimeters(usual_marker_edge_mm));
  request.finish();
  if (!problems.empty()) return refused(problems);
  const auto sheet = marker_sheet(board, edge);
  if (!sheet) return refused(sheet.problems());
  return Answer(json{{"svg", *sheet}});
}

const std::map<std::string, RequestAnswer>& answers() {
  static const std::map<std::string, RequestAnswer> known = [] {
    std::map<std::string, RequestAnswer> all = {{"about", about_request},
                                                {"classes", classes_request},
                                                {"count-plan", count_plan_request},
                                                {"evaluate", evaluate_request},
                                                {"marker-board", marker_board_request},
                                                {"methods", methods_request},
                                                {"prove", prove_request}};
    for (const auto& [word, answer] : site_requests()) all.emplace(word, answer);
    return all;
  }();
  return known;
}

Answer answer(std::string_view json_text) {
  const auto request = parse_strict_json(json_text);
  if (!request) return refused(request.problems());
  Problems problems;
  FieldReader reader(*request, "", problems);
  const auto ask = reader.required_text("ask");
  if (!problems.empty()) return refused(problems);
  const auto found = answers().find(ask);
  if (found == answers().end()) {
    std::string allowed;
    for (const auto& [word, unused] : answers()) {
      allowed += (allowed.empty() ? "\"" : ", \"") + word + "\"";
    }
    reader.report("unknown-word", "This cannot be asked.", "ask", allowed);
    return refused(problems);
  }
  return found->second(reader, problems);
}

}  // namespace

std::string answer_request(std::string_view json_text) {
  // A shell must always get an answer it can show; memory running out is the one failure left.
  try {
    return answer(json_text).text();
  } catch (const std::exception& error) {
    return refused({{"not-possible", std::string("The engine could not finish: ") + error.what(),
                     "", "", ""}})
        .text();
  }
}

}  // namespace proofstone
