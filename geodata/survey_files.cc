#include "geodata/survey_files.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "engine/finding/quoted_text.h"
#include "engine/quantity/measure.h"
#include "formats/centreline_csv.h"
#include "formats/section_csv.h"

namespace proofstone {

namespace {

using nlohmann::json;

constexpr std::size_t longest_id = 60;

/// A number as tables write it: to a millionth, without trailing noise.
std::string number(double value) {
  std::string text = fmt::format("{:.6f}", value);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text == "-0" ? "0" : text;
}

/// "XS 2+40" → "xs-2-40"; a name that begins with a digit gets `kind` in front.
std::string id_of(const std::string& name, const std::string& kind) {
  std::string id;
  for (const char c : name) {
    const bool large = c >= 'A' && c <= 'Z';
    const bool kept = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    if (large || kept) {
      id += large ? static_cast<char>(c - 'A' + 'a') : c;
    } else if (!id.empty() && id.back() != '-') {
      id += '-';
    }
  }
  if (id.size() > longest_id) id.resize(longest_id);
  while (!id.empty() && id.back() == '-') id.pop_back();
  if (id.empty()) return id;
  return id.front() >= '0' && id.front() <= '9' ? kind + "-" + id : id;
}

/// Gives items their ids; two of one id would overwrite one another.
class Names {
 public:
  Names(std::string file, std::string kind) : file_(std::move(file)), kind_(std::move(kind)) {}

  struct Named {
    std::string id;
    std::string name;
  };
  std::optional<Named> take(const std::string& name, const std::string& where, Problems& problems) {
    ++count_;
    Named named{id_of(name, kind_), name};
    if (named.id.empty()) {
      named.id = fmt::format("{}-{}", kind_, count_);
      named.name =
          fmt::format("{}{} {}", static_cast<char>(kind_[0] - 'a' + 'A'), kind_.substr(1), count_);
    }
    const auto [before, fresh] = taken_.emplace(named.id, where);
    if (fresh) return named;
    problems.push_back(
        {"same-name",
         fmt::format("This would be called \"{}\", as {} already is.", named.id, before->second),
         file_, where, "a field that names each one differently"});
    return std::nullopt;
  }

 private:
  std::string file_;
  std::string kind_;
  int count_ = 0;
  std::map<std::string, std::string> taken_;
};

/// A section from the left bank to the right one, looking downstream.
SurveyedSection from_left(SurveyedSection section, LineStart starts) {
  if (starts == LineStart::left_bank) return section;
  const double sum = section.ground.front().station + section.ground.back().station;
  for (auto& point : section.ground) point.station = sum - point.station;
  std::reverse(section.ground.begin(), section.ground.end());
  if (section.left_bank) section.left_bank = sum - *section.left_bank;
  if (section.right_bank) section.right_bank = sum - *section.right_bank;
  return section;
}

std::string table_of(const SurveyedSection& section, double roughness, const Unit& station_unit,
                     const Unit& elevation_unit) {
  std::string text = fmt::format("station ({}), elevation ({}), roughness n\n", station_unit.symbol,
                                 elevation_unit.symbol);
  for (const auto& point : section.ground) {
    text += fmt::format("{}, {}, {}\n", number(point.station), number(point.elevation),
                        number(roughness));
  }
  return text;
}

void add_problems(Problems& problems, const Problems& more, const std::string& file,
                  const std::string& where) {
  for (auto problem : more) {
    problem.file = file;
    problem.where = where + (problem.where.empty() ? "" : ", " + problem.where);
    problems.push_back(std::move(problem));
  }
}

json change(const std::string& collection, const std::string& id, json to) {
  return {{"set", "/" + collection + "/" + id}, {"to", std::move(to)}};
}

std::string quantity(double value, const Unit& unit) {
  return number(value) + " " + std::string(unit.symbol);
}

void add_section(const SurveyFile& survey, const SurveyedSection& as_drawn, const Names::Named& to,
                 const SectionFilesRequest& request, SurveyedFiles& made, Problems& problems) {
  const auto section = from_left(as_drawn, request.starts);
  std::optional<double> roughness = section.roughness;
  if (!roughness && request.roughness) roughness = request.roughness->number();
  if (!roughness) {
    problems.push_back({"no-roughness", "No roughness is stated for the section.", survey.file,
                        section.where, "Manning's n, in a field or one for all"});
    return;
  }
  NamedText table{to.id + ".csv",
                  table_of(section, *roughness, survey.station_unit, request.elevation_unit)};
  const auto read = read_section_csv(table.text, table.name);
  if (!read) {
    add_problems(problems, read.problems(), survey.file, section.where);
    return;
  }
  json document = {{"name", to.name},
                   {"survey", {{"file", table.name}}},
                   {"energy_slope", request.energy_slope}};
  if (section.left_bank) {
    document["left_bank"] = quantity(*section.left_bank, survey.station_unit);
  }
  if (section.right_bank) {
    document["right_bank"] = quantity(*section.right_bank, survey.station_unit);
  }
  made.files.push_back(std::move(table));
  made.revision["changes"].push_back(change("sections", to.id, std::move(document)));
}

std::string in_system(const std::string& name) { return name.empty() ? "" : ", " + name; }

}  // namespace

Expected<SurveyedFiles> section_files(const SurveyFile& survey,
                                      const SectionFilesRequest& request) {
  if (survey.elevation_unit && survey.elevation_unit->symbol != request.elevation_unit.symbol) {
    return Problem{"units-differ",
                   fmt::format("The file states its elevations in {}, you in {}.",
                               survey.elevation_unit->symbol, request.elevation_unit.symbol),
                   survey.file, "", "the unit that is right; see who wrote the file"};
  }
  SurveyedFiles made;
  made.cautions = survey.cautions;
  made.revision = {
      {"note",
       fmt::format("Sections from {}{}; stations in {}, elevations in {}, {}; lines begin "
                   "at the {} bank",
                   request.from, in_system(survey.coordinate_name), survey.station_unit.symbol,
                   request.elevation_unit.symbol, request.vertical_datum,
                   request.starts == LineStart::left_bank ? "left" : "right")},
      {"changes", json::array()}};
  Problems problems;
  Names names(survey.file, "section");
  for (const auto& section : survey.sections) {
    const auto named = names.take(section.name, section.where, problems);
    if (named) add_section(survey, section, *named, request, made, problems);
  }
  if (!problems.empty()) return problems;
  const bool all_have_banks = std::all_of(
      survey.sections.begin(), survey.sections.end(),
      [](const SurveyedSection& section) { return section.left_bank && section.right_bank; });
  if (!all_have_banks) {
    made.cautions.emplace_back(
        "Where no bank stations are stated the whole section counts as channel: set left_bank and "
        "right_bank of each section where flood plains carry water.");
  }
  return made;
}

Expected<SurveyedFiles> course_files(const CourseFile& found, const std::string& from,
                                     CourseRuns runs) {
  SurveyedFiles made;
  made.revision = {{"note", fmt::format("Centrelines from {}{}; in {}", from,
                                        in_system(found.coordinate_name), found.plan_unit.symbol)},
                   {"changes", json::array()}};
  Problems problems;
  Names names(found.file, "centreline");
  for (const auto& course : found.courses) {
    const auto named = names.take(course.name, course.where, problems);
    if (!named) continue;
    auto points = course.points;
    if (runs == CourseRuns::upstream) std::reverse(points.begin(), points.end());
    NamedText table{named->id + ".csv",
                    fmt::format("easting ({0}), northing ({0})\n", found.plan_unit.symbol)};
    for (const auto& point : points) {
      table.text += fmt::format("{}, {}\n", number(point.east), number(point.north));
    }
    const auto read = read_centreline_csv(table.text, table.name);
    if (!read) {
      add_problems(problems, read.problems(), found.file, course.where);
      continue;
    }
    made.revision["changes"].push_back(change(
        "centrelines", named->id, {{"name", named->name}, {"course", {{"file", table.name}}}}));
    made.files.push_back(std::move(table));
  }
  if (!problems.empty()) return problems;
  return made;
}

}  // namespace proofstone
