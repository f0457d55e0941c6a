#include "cli/survey_commands.h"

#include <fmt/format.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "cli/exit_codes.h"
#include "cli/output.h"
#include "cli/site_folder.h"
#include "cli/terminal_text.h"
#include "engine/finding/quoted_text.h"
#include "engine/quantity/measure.h"
#include "geodata/landxml_sections.h"
#include "geodata/survey_files.h"
#include "geodata/vector_layer.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// Reads the options that a person must state, and gathers what is missing or wrong.
class StatedOptions {
 public:
  explicit StatedOptions(const Arguments& arguments) : arguments_(arguments) {}

  std::string text(const std::string& option, const std::string& why,
                   const std::string& allowed = "a value") {
    auto value = arguments_.value(option);
    if (value.empty()) {
      problems.push_back({"missing-option", fmt::format("--{} is not stated. {}", option, why), "",
                          "", fmt::format("--{} with {}", option, allowed)});
    }
    return value;
  }

  template <class Meaning>
  Meaning word(const std::string& option, const std::string& why,
               const std::vector<std::pair<std::string, Meaning>>& words) {
    std::string allowed;
    for (const auto& entry : words) {
      allowed += (allowed.empty() ? "" : " or ") + in_quotes(entry.first);
    }
    const auto value = text(option, why, allowed);
    for (const auto& [word, meaning] : words) {
      if (word == value) return meaning;
    }
    if (!value.empty()) wrong(option, value, allowed);
    return words.front().second;
  }

  template <class Q>
  std::optional<Q> quantity(const std::string& option) {
    const auto value = arguments_.value(option);
    if (value.empty()) return std::nullopt;
    const auto read = parse_quantity<Q>(value);
    if (read) return *read;
    for (auto problem : read.problems()) {
      problem.where = "--" + option;
      problems.push_back(std::move(problem));
    }
    return std::nullopt;
  }

  void wrong(const std::string& option, const std::string& value, const std::string& allowed) {
    problems.push_back({"unknown-word",
                        fmt::format("--{} is stated as {}.", option, in_quotes(value)), "", "",
                        allowed});
  }

  Problems problems;

 private:
  const Arguments& arguments_;
};

LayerFields layer_fields(const Arguments& arguments) {
  return {arguments.value("layer"), arguments.value("name-field"),
          arguments.value("roughness-field"), arguments.value("left-bank-field"),
          arguments.value("right-bank-field")};
}

std::string file_name(const std::string& path) {
  return std::filesystem::path(path).filename().string();
}

bool is_landxml(const std::string& path) {
  auto ending = std::filesystem::path(path).extension().string();
  for (char& c : ending) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return ending == ".xml" || ending == ".landxml";
}

SectionFilesRequest section_request(const std::string& path, StatedOptions& stated) {
  SectionFilesRequest request;
  request.from = file_name(path);
  request.elevation_unit = stated.word<Unit>(
      "elevation-unit", "Files are often wrong about the unit of their elevations.",
      {{"ft", unit::foot}, {"US survey ft", unit::survey_foot}, {"m", unit::meter}});
  request.vertical_datum =
      stated.text("vertical-datum", "Levels of another datum would be feet off.");
  request.starts = stated.word<LineStart>(
      "starts",
      "A file does not say at which bank, looking downstream, its lines begin (in LandXML: where "
      "offsets are least).",
      {{"left", LineStart::left_bank}, {"right", LineStart::right_bank}});
  const std::string slope =
      stated.text("energy-slope", "A section without a reach is computed as uniform flow at it.");
  const auto read = stated.quantity<Slope>("energy-slope");
  if (read && !(read->ratio() > 0)) stated.wrong("energy-slope", slope, "more than 0");
  request.energy_slope = slope;
  request.roughness = stated.quantity<Dimensionless>("roughness");
  return request;
}

/// What stands in the way of laying a file there: another one of its name.
Problems taken_names(const std::string& folder, const std::vector<NamedText>& files) {
  Problems problems;
  for (const auto& file : files) {
    const auto path = folder + "/" + file.name;
    if (!std::filesystem::exists(path)) continue;
    const auto there = read_text_file(path);
    if (there && *there == file.text) continue;
    problems.push_back({"file-exists", "Another file of this name lies there already.", path, "",
                        "a folder without it"});
  }
  return problems;
}

/// The files, the fragment last, so that what names the others stands only when they do. Nothing is
/// written where a file would overwrite another.
int write_files(const std::string& folder, const SurveyedFiles& made,
                const std::string& fragment_name, const Arguments& arguments) {
  std::vector<NamedText> files = made.files;
  files.push_back({fragment_name, made.revision.dump(2) + "\n"});
  auto problems = taken_names(folder, files);
  if (!problems.empty()) return refuse(problems, exit_failed);
  std::error_code error;
  std::filesystem::create_directories(folder, error);
  json names = json::array();
  for (const auto& file : files) {
    problems = write_text_file(folder + "/" + file.name, file.text);
    if (!problems.empty()) return refuse(problems, exit_failed);
    names.push_back(file.name);
  }
  if (arguments.has("json")) {
    const json answer = {
        {"files", names}, {"revision", made.revision}, {"cautions", made.cautions}};
    print(answer.dump(2) + "\n");
    return exit_done;
  }
  const auto count = made.files.size();
  std::string text =
      fmt::format("{} {} written to {}:", count, count == 1 ? "table" : "tables", folder);
  for (const auto& file : made.files) text += "\n  " + file.name;
  text += "\n\n" + made.revision["note"].get<std::string>() + ".\n\n";
  text += wrapped(
      fmt::format("Lay the tables beside the site document and put what {} holds into it as a new "
                  "revision, with its id, after, time and author.",
                  fragment_name),
      0);
  for (const auto& caution : made.cautions) text += wrapped(caution, 0);
  print(text);
  return exit_done;
}

Expected<SurveyFile> read_survey(const std::string& path, const Arguments& arguments) {
  if (!is_landxml(path)) return read_section_lines(path, layer_fields(arguments));
  const auto text = read_text_file(path);
  if (!text) return text.problems();
  return read_landxml_sections(*text, path, arguments.value("surface"));
}

}  // namespace

int read_sections_command(const Arguments& arguments) {
  const std::string& path = arguments.words.front();
  StatedOptions stated(arguments);
  const auto folder = stated.text("out", "The tables need a folder to lie in.");
  const auto request = section_request(path, stated);
  if (!stated.problems.empty()) return refuse(stated.problems, exit_usage);
  const auto survey = read_survey(path, arguments);
  if (!survey) return refuse(survey.problems(), exit_problems);
  const auto made = section_files(*survey, request);
  if (!made) return refuse(made.problems(), exit_problems);
  return write_files(folder, *made, "sections-revision.json", arguments);
}

int read_centreline_command(const Arguments& arguments) {
  const std::string& path = arguments.words.front();
  StatedOptions stated(arguments);
  const auto folder = stated.text("out", "The tables need a folder to lie in.");
  const auto runs = stated.word<CourseRuns>(
      "runs", "A file does not say which way the water runs along its lines.",
      {{"downstream", CourseRuns::downstream}, {"upstream", CourseRuns::upstream}});
  if (!stated.problems.empty()) return refuse(stated.problems, exit_usage);
  const auto found = read_course_lines(path, layer_fields(arguments));
  if (!found) return refuse(found.problems(), exit_problems);
  const auto made = course_files(*found, file_name(path), runs);
  if (!made) return refuse(made.problems(), exit_problems);
  return write_files(folder, *made, "centrelines-revision.json", arguments);
}

}  // namespace proofstone
