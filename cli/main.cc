#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "cli/archive_commands.h"
#include "cli/arguments.h"
#include "cli/board_command.h"
#include "cli/engine_question.h"
#include "cli/exit_codes.h"
#include "cli/outline_command.h"
#include "cli/output.h"
#include "cli/site_folder.h"
#include "cli/survey_commands.h"
#include "cli/terminal_text.h"
#include "engine/site/findings.h"
#include "geodata/drawing_dxf.h"
#include "geodata/water_grids_document.h"
#include "office/quantities_workbook.h"
#include "report/handbook.h"

namespace proofstone {
namespace {

using nlohmann::json;

constexpr const char* help_text =
    R"(Proofstone: rock protection from the flood it must survive to the rock that was accepted.

  proofstone assess SITE             everything the engine has to say about a site
      --findings FILE                also write the findings as JSON
      --report FILE                  also write the report as HTML
      --gate                         let the exit code tell the headline outcome
  proofstone explain SITE FINDING    one finding to its last step, source and limit
  proofstone drawing SITE --zone ZONE --out FILE.dxf   the typical section of a zone as DXF, with
                                     its end keys, in feet or metres, on named layers
  proofstone blend SITE CLASS [MATERIAL…]   what the materials on offer can do together for a class
      --mass MASS                    also whole truckloads for that much, such as "500 ton"
      --margin PERCENT               how far inside every limit the cheapest must stay
      --buckets NUMBER               most buckets to a recipe, 12 unless stated
      --scalp SIZE                   each material also without its stones above this, such as "24 in"
  proofstone count-plan [SITE] CLASS   how many stones to count before going out, limit by limit;
                                     with a site, for its own classes too and at its risks
      --owners-risk, --producers-risk PERCENT   5 % each unless stated
      --good-by PERCENT              of its mass by which good rock keeps a limit, 10 % unless stated
      --stones-in-load N, --alike-in-load R     stones of one load are alike, R from 0 to 1
  proofstone quantities SITE         what the zones take: areas, rock, loads, excavation, cost
      --xlsx FILE, --csv FILE        also write them as a workbook, as comma-separated values
  proofstone specification SITE --out FILE  what quarry and contractor must deliver, as HTML
  proofstone report SITE KIND --out FILE  a paper to print and sign, as HTML. KIND is one of
                                     findings, design-book, lot-acceptance, placing-record,
                                     daily-report
      --lot ID                       the lot of a lot acceptance
      --zone ID                      one zone alone, of a design book or placing record
      --day 2026-05-28, --clock -06:00   the day of a daily report, and how far the clock on the
                                     site is ahead of UTC
  proofstone substitution SITE --zone ID  other rock for a zone beside the rock specified:
      --source ID, --class ID, --angularity rounded|angular, --specific-gravity 2.45
  proofstone validate SITE           what is wrong with a document, if anything
  proofstone pack SITE --out FILE.zip   a whole site as one file: the document, the files it names,
                                     and its photos, as the screens take it in
      --without-positions            leaves out where things were taken down, and photos that may tell
  proofstone join ONE OTHER --out FILE.zip   two copies of one site, carried apart, in one; what
                                     both wrote is kept, and what crosses is named
  proofstone methods [METHOD]        the published methods, or one of them
  proofstone classes                 the rock classes with their bands
  proofstone evaluate METHOD INPUT=VALUE…   one method by hand, such as velocity="8 ft/s"
  proofstone sample-water REQUEST    what a zone may state of its water, out of the grids of a
                                     two-dimensional model (REQUEST is a JSON file beside them)
  proofstone read-sections FILE --out FOLDER   section lines with z (GeoPackage, Shapefile) or the
                                     cross sections of LandXML as tables beside a site document
      --elevation-unit ft|"US survey ft"|m     asked for, never guessed, and so are
      --vertical-datum TEXT          the datum of the elevations,
      --starts left|right            the bank, looking downstream, at which lines begin, and
      --energy-slope SLOPE           the slope of the energy line
      --roughness N                  Manning's n, or --roughness-field F
      --layer L --name-field F --left-bank-field F --right-bank-field F --surface S
  proofstone read-centreline FILE --out FOLDER --runs downstream|upstream   lines in plan as courses
                                     of channels (--layer L, --name-field F)
  proofstone outline PHOTO…          the stones on photographs (JPEG, PNG), found by a small network,
      --out FILE                     as the pictures of a photo look, in JSON
      --edge "65 mm"                 of the markers of a board in sight, which give the scale
  proofstone board 1 --out FILE.svg  a marker board to print (1 to 4) and lay on the rock
      --edge "65 mm"                 of a marker; 65 mm fits a sheet of Letter or A4
  proofstone prove                   every published check value against this engine
  proofstone handbook FOLDER         the handbook, made from the code and the checks
  proofstone about                   version and cautions

SITE is a folder with a site.json, the document itself, or a whole site as a ZIP.
Options everywhere: --units us|si, --json (the answer as JSON).

Exit codes: 0 done · 1 a file could not be read or written, or a check was missed · 2 wrong command
line · 3 the document or an input has problems · with --gate: 4 falls short · 5 not yet known ·
6 ask the designer.
)";

/// Prints an answer as JSON or through `as_text`; problems go to stderr.
template <class AsText>
int show(const json& answer, const Arguments& arguments, AsText as_text) {
  if (answer.contains("problems") && !answer["problems"].empty()) {
    if (arguments.has("json")) print(answer.dump(2) + "\n");
    complain(problems_text(answer["problems"]));
    return exit_problems;
  }
  print(arguments.has("json") ? answer.dump(2) + "\n" : as_text(answer));
  return exit_done;
}

Expected<json> site_request(const char* what, const Arguments& arguments) {
  auto folder = read_site_folder(arguments.words.front());
  if (!folder) return folder.problems();
  json request = {{"ask", what},
                  {"document", std::move(folder->document)},
                  {"files", std::move(folder->files)}};
  if (std::string(what) != "validate") request["units"] = arguments.value("units", "us");
  return request;
}

int gate(const std::string& outcome) {
  if (outcome == "meets") return exit_done;
  if (outcome == "falls short") return exit_falls_short;
  if (outcome == "not yet known") return exit_not_yet_known;
  return exit_ask_the_designer;
}

int assess_command(const Arguments& arguments) {
  const auto request = site_request("assess", arguments);
  if (!request) return refuse(request.problems(), code_of(request.problems()));
  const auto answer = ask(*request);
  if (answer.contains("problems")) return show(answer, arguments, [](const json&) { return ""; });
  Problems problems;
  if (const auto path = arguments.value("findings"); !path.empty()) {
    problems = write_text_file(path, answer["findings"].dump(2) + "\n");
  }
  if (const auto path = arguments.value("report"); problems.empty() && !path.empty()) {
    auto report = *request;
    report["ask"] = "report";
    problems = write_text_file(path, ask(report)["html"].get<std::string>());
  }
  if (!problems.empty()) return refuse(problems, exit_failed);
  const int shown =
      show(answer, arguments, [](const json& whole) { return findings_text(whole["findings"]); });
  if (shown != exit_done || !arguments.has("gate")) return shown;
  return gate(answer["findings"]["headline"]["outcome"].get<std::string>());
}

int explain_command(const Arguments& arguments) {
  const auto request = site_request("assess", arguments);
  if (!request) return refuse(request.problems(), code_of(request.problems()));
  const auto answer = ask(*request);
  if (answer.contains("problems")) return show(answer, arguments, [](const json&) { return ""; });
  std::string known;
  for (const auto& finding : answer["findings"]["findings"]) {
    if (finding["id"] == arguments.words[1]) return show(finding, arguments, finding_text);
    known += "\n  " + finding["id"].get<std::string>();
  }
  complain(
      fmt::format("No finding is called \"{}\". The findings are:{}\n", arguments.words[1], known));
  return exit_usage;
}

int blend_command(const Arguments& arguments) {
  auto request = site_request("blend", arguments);
  if (!request) return refuse(request.problems(), code_of(request.problems()));
  (*request)["class"] = arguments.words[1];
  for (std::size_t i = 2; i < arguments.words.size(); ++i) {
    (*request)["materials"].push_back(arguments.words[i]);
  }
  for (const auto* option : {"mass", "margin", "buckets", "scalp"}) {
    if (const auto value = arguments.value(option); !value.empty()) (*request)[option] = value;
  }
  return show(ask(*request), arguments, [](const json& all) { return blend_text(all["blend"]); });
}

int count_plan_command(const Arguments& arguments) {
  json request = {{"ask", "count-plan"}, {"units", arguments.value("units", "us")}};
  if (arguments.words.size() > 1) {
    auto of_site = site_request("count-plan", arguments);
    if (!of_site) return refuse(of_site.problems(), code_of(of_site.problems()));
    request = std::move(*of_site);
  }
  request["class"] = arguments.words.back();
  for (std::string option :
       {"owners-risk", "producers-risk", "good-by", "stones-in-load", "alike-in-load"}) {
    const auto value = arguments.value(option);
    if (value.empty()) continue;
    std::replace(option.begin(), option.end(), '-', '_');
    request[option] = value;
  }
  return show(ask(request), arguments,
              [](const json& all) { return count_plan_text(all["count_plan"]); });
}

int quantities_command(const Arguments& arguments) {
  const auto request = site_request("quantities", arguments);
  if (!request) return refuse(request.problems(), code_of(request.problems()));
  const auto answer = ask(*request);
  if (answer.contains("problems")) return show(answer, arguments, [](const json&) { return ""; });
  Problems problems;
  if (const auto path = arguments.value("xlsx"); !path.empty()) {
    problems = write_quantities_workbook(path, answer);
  }
  if (const auto path = arguments.value("csv"); problems.empty() && !path.empty()) {
    problems = write_text_file(path, answer["csv"].get<std::string>());
  }
  if (!problems.empty()) return refuse(problems, exit_failed);
  return show(answer, arguments,
              [](const json& all) { return quantities_text(all["quantities"]); });
}

/// Writes the page that a request asks for to --out.
int write_page(const Expected<json>& request, const Arguments& arguments, std::string_view name) {
  const auto path = arguments.value("out");
  if (path.empty()) {
    return refuse({{"usage", fmt::format("The {} is a page.", name), "", "", "--out FILE.html"}},
                  exit_usage);
  }
  if (!request) return refuse(request.problems(), code_of(request.problems()));
  const auto answer = ask(*request);
  if (!answer.contains("problems")) {
    const auto problems = write_text_file(path, answer["html"].get<std::string>());
    if (!problems.empty()) return refuse(problems, exit_failed);
  }
  return show(answer, arguments,
              [&](const json&) { return fmt::format("The {} stands in {}.\n", name, path); });
}

int specification_command(const Arguments& arguments) {
  return write_page(site_request("specification", arguments), arguments, "specification sheet");
}

int report_command(const Arguments& arguments) {
  auto request = site_request("report", arguments);
  if (request) {
    auto& paper = (*request)["paper"];
    paper["kind"] = arguments.words.back();
    for (const char* option : {"lot", "zone", "day", "clock"}) {
      if (const auto value = arguments.value(option); !value.empty()) paper[option] = value;
    }
  }
  return write_page(request, arguments, "paper");
}

int substitution_command(const Arguments& arguments) {
  auto request = site_request("substitution", arguments);
  if (!request) return refuse(request.problems(), code_of(request.problems()));
  for (const char* option : {"zone", "source", "class", "angularity"}) {
    if (const auto value = arguments.value(option); !value.empty()) (*request)[option] = value;
  }
  if (const auto value = arguments.value("specific-gravity"); !value.empty()) {
    (*request)["specific_gravity"] = value;
  }
  return show(ask(*request), arguments,
              [](const json& all) { return substitution_text(all["substitution"]); });
}

int validate_command(const Arguments& arguments) {
  const auto request = site_request("validate", arguments);
  if (!request) return refuse(request.problems(), code_of(request.problems()));
  return show(ask(*request), arguments,
              [](const json&) { return std::string("The document is good.\n"); });
}

int drawing_command(const Arguments& arguments) {
  const auto path = arguments.value("out");
  const auto zone = arguments.value("zone");
  if (path.empty() || zone.empty()) {
    return refuse({{"usage", "A drawing needs its zone and a file to write.", "", "",
                    "--zone ZONE --out FILE.dxf"}},
                  exit_usage);
  }
  auto request = site_request("drawing", arguments);
  if (!request) return refuse(request.problems(), code_of(request.problems()));
  (*request)["zone"] = zone;
  const auto answer = ask(*request);
  if (!answer.contains("problems")) {
    const auto problems = write_drawing_dxf(layered_drawing_from(answer["drawing"]), path);
    if (!problems.empty()) return refuse(problems, exit_failed);
  }
  return show(answer, arguments, [&path](const json& whole) {
    return fmt::format("{} stands in {}, in {}.\n", whole["drawing"]["title"].get<std::string>(),
                       path, whole["drawing"]["unit"].get<std::string>());
  });
}

int methods_command(const Arguments& arguments) {
  const auto answer = ask({{"ask", "methods"}});
  if (arguments.words.empty()) {
    return show(answer, arguments, [](const json& all) { return methods_text(all["methods"]); });
  }
  for (const auto& method : answer["methods"]) {
    if (method["id"] == arguments.words[0]) return show(method, arguments, method_text);
  }
  return refuse({{"unknown-method", fmt::format("No method is called \"{}\".", arguments.words[0]),
                  "", "", "an id that `proofstone methods` lists"}},
                exit_usage);
}

int classes_command(const Arguments& arguments) {
  return show(ask({{"ask", "classes"}, {"units", arguments.value("units", "us")}}), arguments,
              [](const json& all) { return classes_text(all); });
}

int evaluate_command(const Arguments& arguments) {
  json inputs = json::object();
  for (std::size_t i = 1; i < arguments.words.size(); ++i) {
    const auto& word = arguments.words[i];
    const auto equals = word.find('=');
    if (equals == std::string::npos || equals == 0) {
      return refuse({{"usage", fmt::format("\"{}\" is not an input.", word), "", "",
                      "INPUT=VALUE, such as velocity=\"8 ft/s\""}},
                    exit_usage);
    }
    const auto key = word.substr(0, equals);
    const auto value = word.substr(equals + 1);
    // A list is written as a JSON array; all else is a text.
    json parsed = value;
    if (!value.empty() && value.front() == '[') parsed = json::parse(value, nullptr, false);
    if (parsed.is_discarded()) {
      return refuse({{"usage", fmt::format("The list of {} breaks off.", key), "", "",
                      "a list such as '[\"0 ft\", \"12 ft\"]'"}},
                    exit_usage);
    }
    inputs[key] = std::move(parsed);
  }
  return show(ask({{"ask", "evaluate"},
                   {"method", arguments.words[0]},
                   {"inputs", inputs},
                   {"units", arguments.value("units", "us")}}),
              arguments, evaluation_text);
}

int sample_water_command(const Arguments& arguments) {
  const std::string& path = arguments.words[0];
  const auto text = read_text_file(path);
  if (!text) return refuse(text.problems(), exit_failed);
  const auto slash = path.rfind('/');
  const auto answer =
      water_from_grids(*text, slash == std::string::npos ? "" : path.substr(0, slash));
  if (!answer) return refuse(answer.problems(), exit_problems);
  return show(*answer, arguments, [](const json& sampled) {
    std::string words = "What the zone may state under \"water\", for its flow case:\n\n" +
                        sampled["water"].dump(2) + "\n\nSampled:\n\n" + sampled["sampled"].dump(2) +
                        "\n\n";
    for (const auto& caution : sampled["cautions"]) words += wrapped(caution.get<std::string>(), 0);
    return words;
  });
}

int prove_command(const Arguments& arguments) {
  const auto answer = ask({{"ask", "prove"}});
  const int shown =
      show(answer, arguments, [](const json& all) { return checks_text(all["checks"]); });
  if (shown != exit_done) return shown;
  for (const auto& check : answer["checks"]) {
    if (!check["passed"].get<bool>()) return exit_failed;
  }
  return exit_done;
}

int handbook_command(const Arguments& arguments) {
  for (const auto& page : handbook()) {
    const auto problems = write_text_file(arguments.words[0] + "/" + page.file_name, page.text);
    if (!problems.empty()) return refuse(problems, exit_failed);
  }
  print(fmt::format("The handbook stands in {}.\n", arguments.words[0]));
  return exit_done;
}

int about_command(const Arguments& arguments) {
  return show(ask({{"ask", "about"}}), arguments, [](const json& about) {
    std::string text = fmt::format("Proofstone {}\n", about["engine"].get<std::string>());
    for (const auto& caution : about["cautions"]) text += wrapped(caution.get<std::string>(), 0);
    return text;
  });
}

struct Command {
  const char* name;
  std::size_t least_words;
  std::size_t most_words;
  int (*run)(const Arguments&);
};

constexpr Command commands[] = {{"assess", 1, 1, assess_command},
                                {"explain", 2, 2, explain_command},
                                {"drawing", 1, 1, drawing_command},
                                {"blend", 2, 50, blend_command},
                                {"count-plan", 1, 2, count_plan_command},
                                {"quantities", 1, 1, quantities_command},
                                {"specification", 1, 1, specification_command},
                                {"report", 2, 2, report_command},
                                {"substitution", 1, 1, substitution_command},
                                {"validate", 1, 1, validate_command},
                                {"pack", 1, 1, pack_command},
                                {"join", 2, 2, join_command},
                                {"methods", 0, 1, methods_command},
                                {"classes", 0, 0, classes_command},
                                {"evaluate", 1, 100, evaluate_command},
                                {"sample-water", 1, 1, sample_water_command},
                                {"read-sections", 1, 1, read_sections_command},
                                {"read-centreline", 1, 1, read_centreline_command},
                                {"outline", 1, 100, outline_command},
                                {"board", 1, 1, board_command},
                                {"prove", 0, 0, prove_command},
                                {"handbook", 1, 1, handbook_command},
                                {"about", 0, 0, about_command}};

int run(const std::vector<std::string>& line) {
  const auto arguments = take_apart(line);
  if (!arguments) return refuse(arguments.problems(), exit_usage);
  if (arguments->command.empty() || arguments->command == "help") {
    print(help_text);
    return arguments->command.empty() ? exit_usage : exit_done;
  }
  for (const auto& command : commands) {
    if (arguments->command != command.name) continue;
    const auto words = arguments->words.size();
    if (words >= command.least_words && words <= command.most_words) {
      return command.run(*arguments);
    }
    return refuse({{"usage", fmt::format("`{}` takes other words.", command.name), "", "",
                    "see proofstone help"}},
                  exit_usage);
  }
  return refuse({{"usage", fmt::format("The command \"{}\" is not known.", arguments->command), "",
                  "", "see proofstone help"}},
                exit_usage);
}

}  // namespace
}  // namespace proofstone

int main(int count, char** words) {
  return proofstone::run(std::vector<std::string>(words + 1, words + count));
}
