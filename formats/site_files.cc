#include "formats/site_files.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <map>
#include <nlohmann/json.hpp>
#include <utility>

#include "engine/finding/json_pointer.h"
#include "engine/finding/quoted_text.h"
#include "engine/quantity/measure.h"
#include "formats/centreline_csv.h"
#include "formats/gradation_csv.h"
#include "formats/problem_list.h"
#include "formats/section_csv.h"
#include "formats/stone_count_csv.h"
#include "formats/weighed_sample_csv.h"

namespace proofstone {

namespace {

using nlohmann::json;

/// Deeper than any value of a site; what lies deeper is left to the reader of the document.
constexpr int deepest_level = 32;
/// All rows read into one document, so that a small document cannot ask for one file without end.
constexpr std::size_t most_rows_in_all = 1000000;

/// A place where a document asks for a file.
struct FileMention {
  std::string key;  ///< survey, course, stones, groups or gradation
  std::string pointer;
  json* value = nullptr;  ///< {"file": "<name>"}

  const std::string& name() const { return value->begin()->get_ref<const std::string&>(); }
};

bool asks_for_file(const std::string& key, const json& value) {
  const bool may = key == "survey" || key == "course" || key == "stones" || key == "groups" ||
                   key == "gradation";
  return may && value.is_object() && value.size() == 1 && value.begin().key() == "file" &&
         value.begin()->is_string();
}

void find_mentions(const std::string& key, json& value, const std::string& pointer, int level,
                   std::vector<FileMention>& mentions) {
  if (asks_for_file(key, value)) {
    mentions.push_back({key, pointer, &value});
    return;
  }
  if (level == deepest_level) return;
  if (value.is_object()) {
    for (auto& [inner_key, inner] : value.items()) {
      find_mentions(inner_key, inner, pointer + "/" + pointer_step(inner_key), level + 1, mentions);
    }
  } else if (value.is_array()) {
    for (std::size_t i = 0; i < value.size(); ++i) {
      find_mentions("", value[i], fmt::format("{}/{}", pointer, i), level + 1, mentions);
    }
  }
}

std::vector<FileMention> mentions_in(json& document) {
  std::vector<FileMention> mentions;
  if (!document.is_object() || !document.contains("revisions")) return mentions;
  json& revisions = document["revisions"];
  if (!revisions.is_array()) return mentions;
  for (std::size_t r = 0; r < revisions.size(); ++r) {
    json& revision = revisions[r];
    if (!revision.is_object() || !revision.contains("changes")) continue;
    json& changes = revision["changes"];
    if (!changes.is_array()) continue;
    for (std::size_t c = 0; c < changes.size(); ++c) {
      json& change = changes[c];
      if (!change.is_object() || !change.contains("to")) continue;
      // {"set": "/sections/s1/survey", "to": {"file": …}} sets the survey itself.
      std::string key;
      const auto target = change.find("set");
      if (target != change.end() && target->is_string()) {
        const auto& path = target->get_ref<const std::string&>();
        key = path.substr(path.rfind('/') + 1);
      }
      find_mentions(key, change["to"], fmt::format("/revisions/{}/changes/{}/to", r, c), 0,
                    mentions);
    }
  }
  return mentions;
}

bool is_plain_name(const std::string& name) {
  constexpr std::size_t longest = 200;
  if (name.empty() || name.size() > longest || name == "." || name == "..") return false;
  if (name.find_first_of("/\\:") != std::string::npos) return false;
  return std::none_of(name.begin(), name.end(),
                      [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; });
}

std::string text_of(Length length, const Unit& unit) { return exact_text(measure(length), unit); }

Expected<json> survey_json(const SuppliedFile& file) {
  const auto table = read_section_csv(file.text, file.name);
  if (!table) return table.problems();
  json points = json::array();
  for (const auto& point : table->points) {
    points.push_back({{"station", text_of(point.station, table->station_unit)},
                      {"elevation", text_of(point.elevation, table->elevation_unit)},
                      {"roughness", exact_text(measure(point.roughness), unit::number)}});
  }
  return json{{"points", std::move(points)}};
}

Expected<json> course_json(const SuppliedFile& file) {
  const auto table = read_centreline_csv(file.text, file.name);
  if (!table) return table.problems();
  json points = json::array();
  for (const auto& point : table->points) {
    points.push_back({{"easting", text_of(point.x, table->easting_unit)},
                      {"northing", text_of(point.y, table->northing_unit)}});
  }
  return json{{"points", std::move(points)}};
}

/// {"larger_than": …, "not_larger_than": …, "stones": …}; an absent lower end is left out.
json range_json(const std::optional<Length>& larger_than, const Unit& larger_than_unit,
                Length not_larger_than, const Unit& not_larger_unit, int stones) {
  json range{{"not_larger_than", text_of(not_larger_than, not_larger_unit)}, {"stones", stones}};
  if (larger_than) range["larger_than"] = text_of(*larger_than, larger_than_unit);
  return range;
}

Expected<json> stones_json(const SuppliedFile& file) {
  const auto table = read_stone_count_csv(file.text, file.name);
  if (!table) return table.problems();
  if (table->bins.empty()) {
    json axes = json::array();
    for (const auto& axis : table->intermediate_axes) {
      axes.push_back(text_of(axis, table->axis_unit));
    }
    return json{{"axes", std::move(axes)}};
  }
  json bins = json::array();
  for (const auto& bin : table->bins) {
    bins.push_back(range_json(bin.lower, table->larger_than_unit, bin.upper, table->not_larger_unit,
                              bin.stones));
  }
  return json{{"bins", std::move(bins)}};
}

Expected<json> groups_json(const SuppliedFile& file) {
  const auto table = read_weighed_sample_csv(file.text, file.name);
  if (!table) return table.problems();
  json groups = json::array();
  for (const auto& group : table->groups) {
    json entry = range_json(group.lower, table->larger_than_unit, group.upper,
                            table->not_larger_unit, group.stones);
    entry["mass"] = exact_text(measure(group.mass), table->mass_unit);
    groups.push_back(std::move(entry));
  }
  return json{{"groups", std::move(groups)}};
}

Expected<json> gradation_json(const SuppliedFile& file) {
  const auto table = read_gradation_csv(file.text, file.name);
  if (!table) return table.problems();
  json points = json::array();
  for (std::size_t i = 0; i < table->points.size(); ++i) {
    const auto& point = table->points[i];
    points.push_back(
        {{"size", text_of(point.size, table->units[i])},
         {"smaller", exact_text(measure(Dimensionless::of(point.percent_smaller, unit::percent)),
                                unit::percent)}});
  }
  return points;
}

std::size_t rows_in(const json& table) {
  return table.is_array() ? table.size() : table.begin()->size();
}

Expected<json> table_json(const std::string& key, const SuppliedFile& file) {
  if (key == "survey") return survey_json(file);
  if (key == "course") return course_json(file);
  if (key == "stones") return stones_json(file);
  if (key == "gradation") return gradation_json(file);
  return groups_json(file);
}

/// The one supplied file that a mention names, or what is wrong.
Expected<const SuppliedFile*> supplied_file(const FileMention& mention,
                                            const std::vector<SuppliedFile>& files) {
  const std::string& name = mention.name();
  const std::string where = mention.pointer + "/file";
  if (!is_plain_name(name)) {
    return Problem{
        "not-a-file-name",
        fmt::format("{} is not the name of a file beside the document.", in_quotes(name)), "",
        where, "a file name without a folder, such as section-0240.csv"};
  }
  const SuppliedFile* found = nullptr;
  for (const auto& file : files) {
    if (file.name != name) continue;
    if (found != nullptr) {
      return Problem{"file-supplied-twice",
                     fmt::format("Two files called {} were supplied.", in_quotes(name)), "", where,
                     "one file of each name"};
    }
    found = &file;
  }
  if (found == nullptr) {
    return Problem{"file-missing", fmt::format("The file {} was not supplied.", in_quotes(name)),
                   "", where, "the file beside the document, under the same name"};
  }
  return found;
}

}  // namespace

std::vector<std::string> files_named_in(const nlohmann::json& site_document) {
  json copy = site_document;
  std::vector<std::string> names;
  for (const auto& mention : mentions_in(copy)) {
    if (std::find(names.begin(), names.end(), mention.name()) == names.end()) {
      names.push_back(mention.name());
    }
  }
  return names;
}

Expected<nlohmann::json> with_files(nlohmann::json site_document,
                                    const std::vector<SuppliedFile>& files) {
  ProblemList problems;
  // A file may be asked for by several revisions; it is read once for each use of it.
  std::map<std::pair<std::string, std::string>, json> read_before;
  std::size_t rows = 0;
  for (const auto& mention : mentions_in(site_document)) {
    const auto file = supplied_file(mention, files);
    if (!file) {
      problems.add(file.problems());
      continue;
    }
    const auto use = std::make_pair(mention.key, mention.name());
    auto found = read_before.find(use);
    if (found == read_before.end()) {
      auto table = table_json(mention.key, **file);
      if (!table) problems.add(table.problems());
      found = read_before.emplace(use, table ? std::move(*table) : json()).first;
    }
    if (found->second.is_null()) continue;  // its problems are told already
    rows += rows_in(found->second);
    if (rows > most_rows_in_all) {
      return Problem{"too-large", "The files of this document hold too many rows together.", "",
                     mention.pointer, "at most 1,000,000 rows in all"};
    }
    *mention.value = found->second;
  }
  if (!problems.empty()) return problems.take();
  return site_document;
}

}  // namespace proofstone
