#include "report/request.h"

#include <fmt/format.h>

#include <functional>
#include <map>
#include <nlohmann/json.hpp>

#include "engine/json/field_reader.h"
#include "engine/json/strict_json.h"
#include "engine/method/check_table.h"
#include "engine/method/registry.h"
#include "engine/rock/embedded_catalog.h"
#include "engine/rock/families_not_held.h"
#include "engine/site/assess.h"
#include "engine/site/quantities.h"
#include "engine/site/version.h"
#include "formats/site_files.h"
#include "report/blend_request.h"
#include "report/count_plan_answer.h"
#include "report/count_sheet_answer.h"
#include "report/descriptions_json.h"
#include "report/filter_picture.h"
#include "report/gradation_picture.h"
#include "report/html_report.h"
#include "report/layered_section.h"
#include "report/method_sizes_picture.h"
#include "report/mix_picture.h"
#include "report/plan_picture.h"
#include "report/profile_picture.h"
#include "report/quantity_answer.h"
#include "report/run_chart_picture.h"
#include "report/section_picture.h"
#include "report/sequential_count_picture.h"
#include "report/specification_html.h"
#include "report/state_answer.h"
#include "report/stones_picture.h"
#include "report/substitution_answer.h"
#include "report/typical_section_picture.h"

namespace proofstone {
namespace {

using nlohmann::json;

constexpr int narrowest_picture = 240;
constexpr int widest_picture = 4000;
constexpr int usual_picture = 720;

json refused(const Problems& problems) { return {{"problems", problems_json(problems)}}; }

UnitSystem units_of(FieldReader& request) {
  return request.choice<UnitSystem>("units",
                                    {{"us", UnitSystem::us_customary}, {"si", UnitSystem::si}},
                                    UnitSystem::us_customary);
}

std::vector<SuppliedFile> files_of(FieldReader& request, Problems& problems) {
  std::vector<SuppliedFile> files;
  if (const auto* list = request.optional_list("files")) {
    for (std::size_t i = 0; i < list->size(); ++i) {
      FieldReader file((*list)[i], fmt::format("/files/{}", i), problems);
      SuppliedFile supplied;
      supplied.name = file.required_text("name");
      // An empty file is the reader's business to name, not ours.
      if (const auto* text = file.required("text"); text != nullptr && text->is_string()) {
        supplied.text = text->get<std::string>();
      }
      file.finish();
      files.push_back(std::move(supplied));
    }
  }
  return files;
}

Expected<Site> site_of(FieldReader& request, Problems& problems) {
  const auto* document = request.required("document");
  const auto files = files_of(request, problems);
  if (!problems.empty()) return problems;
  json parsed;
  if (document->is_string()) {
    auto strict = parse_strict_json(document->get_ref<const std::string&>());
    if (!strict) return strict.problems();
    parsed = std::move(*strict);
  } else {
    parsed = *document;
  }
  auto whole = with_files(std::move(parsed), files);
  if (!whole) return whole.problems();
  return site_from(std::move(*whole));
}

template <class Picture>
void draw_all(const std::vector<Picture>& pictures, const char* kind, UnitSystem units, int width,
              json& into) {
  for (const auto& picture : pictures) {
    into.push_back({{"id", picture.id},
                    {"kind", kind},
                    {"title", picture.title},
                    {"description", picture.description},
                    {"svg", draw(picture, units, width)}});
  }
}

/// How wide the pictures are to be, where there are to be any.
std::optional<int> picture_width(FieldReader& request, Problems& problems) {
  const auto* wanted = request.optional("pictures");
  if (wanted == nullptr) return std::nullopt;
  FieldReader pictures(*wanted, "/pictures", problems);
  const auto width = pictures.optional_integer("width", narrowest_picture, widest_picture);
  pictures.finish();
  return width.value_or(usual_picture);
}

json findings_answer(const Findings& findings, std::optional<int> width) {
  json answer = {{"findings", findings_json(findings)}};
  if (!width) return answer;
  const auto units = findings.units;
  json drawn = json::array();
  draw_all(findings.gradation_pictures, "gradation", units, *width, drawn);
  draw_all(findings.filter_pictures, "filter", units, *width, drawn);
  draw_all(findings.section_pictures, "section", units, *width, drawn);
  draw_all(findings.plan_pictures, "plan", units, *width, drawn);
  draw_all(findings.typical_sections, "typical section", units, *width, drawn);
  draw_all(findings.profile_pictures, "profile", units, *width, drawn);
  draw_all(findings.stones_pictures, "stones", units, *width, drawn);
  draw_all(findings.method_sizes_pictures, "method sizes", units, *width, drawn);
  draw_all(findings.run_charts, "run chart", units, *width, drawn);
  draw_all(findings.sequential_counts, "sequential count", units, *width, drawn);
  draw_all(findings.mix_pictures, "mix", units, *width, drawn);
  answer["pictures"] = std::move(drawn);
  return answer;
}

json assess_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto width = picture_width(request, problems);
  const auto site = site_of(request, problems);
  request.finish();
  if (!problems.empty()) return refused(problems);
  if (!site) return refused(site.problems());
  return findings_answer(assess(*site, units), width);
}

json lot_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto width = picture_width(request, problems);
  const auto lot = request.required_text("lot");
  const auto site = site_of(request, problems);
  request.finish();
  if (!problems.empty()) return refused(problems);
  if (!site) return refused(site.problems());
  if (!site->lots.contains(lot)) return refused({no_such_lot(*site, lot)});
  return findings_answer(assess_lot(*site, lot, units), width);
}

json count_sheet_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto lot = request.required_text("lot");
  const auto site = site_of(request, problems);
  request.finish();
  if (!problems.empty()) return refused(problems);
  if (!site) return refused(site.problems());
  auto sheet = count_sheet_answer(*site, lot, units);
  if (!sheet) return refused(sheet.problems());
  return {{"count_sheet", std::move(*sheet)}};
}

/// The document as its revisions leave it: what a screen lists and edits.
json state_request(FieldReader& request, Problems& problems) {
  const auto* document = request.required("document");
  request.finish();
  if (!problems.empty()) return refused(problems);
  auto state = state_answer(*document);
  if (!state) return refused(state.problems());
  return std::move(*state);
}

json report_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto site = site_of(request, problems);
  request.finish();
  if (!problems.empty()) return refused(problems);
  if (!site) return refused(site.problems());
  return {{"html", html_report(assess(*site, units))}};
}

json drawing_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto zone = request.required_text("zone");
  const auto site = site_of(request, problems);
  request.finish();
  if (!problems.empty()) return refused(problems);
  if (!site) return refused(site.problems());
  std::string known;
  for (const auto& picture : assess(*site, units).typical_sections) {
    const auto id = picture.id.substr(std::string("typical.").size());
    known += (known.empty() ? "" : ", ") + id;
    if (id != zone) continue;
    if (const auto drawing = layered_section(picture, units)) {
      return {{"drawing", layered_drawing_json(*drawing)}};
    }
  }
  return refused({{"no-section", fmt::format("There is no typical section of \"{}\".", zone), "",
                   "/zone", known.empty() ? "a bank zone with a section" : known}});
}

json quantities_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto site = site_of(request, problems);
  request.finish();
  if (!problems.empty()) return refused(problems);
  if (!site) return refused(site.problems());
  const auto table = quantities_of(*site, Wording(units));
  json answer = {{"quantities", quantities_json(table, units)},
                 {"csv", quantities_csv(table, units)}};
  answer["quantities"]["site"] = {{"name", site->name}, {"revision", site->revision}};
  answer["quantities"]["engine"] = engine_version;
  answer["quantities"]["cautions"] = usual_cautions();
  return answer;
}

json substitution_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  SubstituteRock rock;
  rock.zone = request.required_text("zone");
  rock.source = request.optional_text("source");
  rock.rock_class = request.optional_text("class");
  rock.specific_gravity = request.optional_quantity<Dimensionless>("specific_gravity");
  if (request.has("angularity")) {
    rock.angularity = request.choice<Angularity>(
        "angularity", {{"angular", Angularity::angular}, {"rounded", Angularity::rounded}},
        std::nullopt);
  }
  const auto site = site_of(request, problems);
  request.finish();
  if (!problems.empty()) return refused(problems);
  if (!site) return refused(site.problems());
  const auto study = study_substitution(*site, rock, Wording(units));
  if (!study) return refused(study.problems());
  return {{"substitution", substitution_json(*study, units)}};
}

json specification_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto site = site_of(request, problems);
  request.finish();
  if (!problems.empty()) return refused(problems);
  if (!site) return refused(site.problems());
  return {{"html", specification_html(specification_of(*site), units)}};
}

json validate_request(FieldReader& request, Problems& problems) {
  const auto site = site_of(request, problems);
  request.finish();
  if (!problems.empty()) return refused(problems);
  return refused(site ? Problems{} : site.problems());
}

json blend_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto question = read_blend_question(request, problems);
  const auto site = site_of(request, problems);
  request.finish();
  if (!problems.empty()) return refused(problems);
  if (!site) return refused(site.problems());
  const auto blend = blend_on_site(*site, question);
  if (!blend) return refused(blend.problems());
  return {{"blend", blend_json(*blend, units)}};
}

json count_plan_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto question = read_count_question(request);
  request.finish();
  if (!problems.empty()) return refused(problems);
  auto plan = count_plan_answer(question, units);
  if (!plan) return refused(plan.problems());
  return {{"count_plan", std::move(*plan)}};
}

json methods_request(FieldReader& request, Problems& problems) {
  request.finish();
  if (!problems.empty()) return refused(problems);
  json list = json::array();
  for (const auto* method : all_methods()) list.push_back(description_json(method->description()));
  return {{"methods", list}};
}

json classes_request(FieldReader& request, Problems& problems) {
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
  return {{"classes", list}, {"not_held", not_held}};
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

json evaluate_request(FieldReader& request, Problems& problems) {
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
  return evaluation_json(*method, *evaluation, units);
}

/// The check tables that come with the request, else those that the engine carries.
std::vector<std::string> check_tables(const std::vector<SuppliedFile>& files) {
  std::vector<std::string> tables;
  for (const auto& file : files) tables.push_back(file.text);
  if (!tables.empty()) return tables;
  for (const auto& file : embedded_checks()) tables.emplace_back(file.text);
  return tables;
}

json prove_request(FieldReader& request, Problems& problems) {
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
  return {{"checks", list}};
}

json about_request(FieldReader& request, Problems& problems) {
  request.finish();
  if (!problems.empty()) return refused(problems);
  return {{"engine", engine_version}, {"cautions", usual_cautions()}};
}

using Answer = json (*)(FieldReader&, Problems&);

const std::map<std::string, Answer>& answers() {
  static const std::map<std::string, Answer> known = {{"about", about_request},
                                                      {"assess", assess_request},
                                                      {"blend", blend_request},
                                                      {"classes", classes_request},
                                                      {"count-plan", count_plan_request},
                                                      {"count-sheet", count_sheet_request},
                                                      {"drawing", drawing_request},
                                                      {"evaluate", evaluate_request},
                                                      {"lot", lot_request},
                                                      {"methods", methods_request},
                                                      {"prove", prove_request},
                                                      {"quantities", quantities_request},
                                                      {"report", report_request},
                                                      {"specification", specification_request},
                                                      {"state", state_request},
                                                      {"substitution", substitution_request},
                                                      {"validate", validate_request}};
  return known;
}

json answer(std::string_view json_text) {
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
    return answer(json_text).dump(-1, ' ', false, json::error_handler_t::replace);
  } catch (const std::exception& error) {
    return json{{"problems",
                 {{{"code", "not-possible"},
                   {"sentence", std::string("The engine could not finish: ") + error.what()},
                   {"what", error.what()},
                   {"file", ""},
                   {"where", ""},
                   {"allowed", ""}}}}}
        .dump(-1, ' ', false, json::error_handler_t::replace);
  }
}

}  // namespace proofstone
