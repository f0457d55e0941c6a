#include "report/outline_answers.h"

#include <fmt/format.h>

#include <cmath>
#include <type_traits>

#include "engine/json/field_reader.h"
#include "engine/json/problem_json.h"
#include "engine/json/strict_json.h"
#include "engine/vision/outline_edits.h"
#include "engine/vision/photo_marks.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// Stones of fewer pixels of the working picture are lost (reference study of rendered piles).
constexpr double least_working_pixels = 8;

double in_tenths(double value) { return std::round(value * 10) / 10; }

PhotoPoint read_place(const json& value, FieldReader& reader, const std::string& field) {
  if (value.is_array() && value.size() == 2 && value[0].is_number() && value[1].is_number()) {
    return {value[0].get<double>(), value[1].get<double>()};
  }
  reader.report("not-pixels", "This is no place on a photo.", field, "[x, y] in pixels");
  return {};
}

StoneOutline read_path(const json& value, FieldReader& reader, const std::string& field) {
  StoneOutline path;
  if (!value.is_array()) {
    reader.report("not-an-outline", "The corners of an outline belong here.", field,
                  "[[x, y], [x, y], [x, y], …]");
    return path;
  }
  for (std::size_t i = 0; i < value.size(); ++i) {
    path.push_back(read_place(value[i], reader, fmt::format("{}/{}", field, i)));
  }
  return path;
}

std::vector<StoneOutline> read_outlines(FieldReader& request) {
  std::vector<StoneOutline> outlines;
  const auto* list = request.optional_list("outlines");
  for (std::size_t i = 0; list != nullptr && i < list->size(); ++i) {
    outlines.push_back(read_path((*list)[i], request, fmt::format("outlines/{}", i)));
  }
  return outlines;
}

double required_number(FieldReader& request, const std::string& field) {
  const auto* value = request.required(field);
  if (value == nullptr) return 0;
  if (value->is_number()) return value->get<double>();
  request.report("not-a-number", "A number belongs here.", field, "a number of pixels");
  return 0;
}

template <class Result>
json edited(const Expected<Result>& stones) {
  if (!stones) return why_not(stones.problems());
  if constexpr (std::is_same_v<Result, StoneOutline>) {
    return {{"outlines", outlines_in_tenths({*stones})}};
  } else {
    return {{"outlines", outlines_in_tenths(*stones)}};
  }
}

json balls_json(const std::vector<BallInPicture>& balls) {
  json list = json::array();
  for (const auto& [middle, radius] : balls) {
    list.push_back({{"middle", json::array({in_tenths(middle.x), in_tenths(middle.y)})},
                    {"radius", in_tenths(radius)}});
  }
  return list;
}

std::vector<std::array<double, 2>> corners_in_tenths(std::span<const PhotoPoint> corners) {
  std::vector<std::array<double, 2>> result;
  result.reserve(corners.size());
  for (const auto& point : corners) result.push_back({in_tenths(point.x), in_tenths(point.y)});
  return result;
}

enum class OutlineEdit { join, cut, draw };

json edit(const json& text) {
  Problems problems;
  FieldReader request(text, "", problems);
  const auto ask = request.choice<OutlineEdit>(
      "ask", {{"join", OutlineEdit::join}, {"cut", OutlineEdit::cut}, {"draw", OutlineEdit::draw}},
      std::nullopt);
  const double pixel = required_number(request, "pixel");
  const auto outlines = read_outlines(request);
  StoneOutline line;
  PictureSize picture;
  if (ask != OutlineEdit::join) {
    const char* field = ask == OutlineEdit::cut ? "line" : "path";
    if (const auto* value = request.required(field)) line = read_path(*value, request, field);
  }
  if (ask == OutlineEdit::cut && problems.empty() && (line.size() != 2 || outlines.size() != 1)) {
    request.report("no-line", "One stone is cut along one line.", "line", "[[x, y], [x, y]]");
  }
  if (ask == OutlineEdit::draw) {
    picture = {required_number(request, "width"), required_number(request, "height")};
  }
  request.finish();
  if (!problems.empty()) return why_not(problems);
  switch (ask) {
    case OutlineEdit::join:
      return edited(joined_outlines(outlines, pixel));
    case OutlineEdit::cut:
      return edited(cut_outline(outlines.front(), line[0], line[1], pixel));
    default:
      return edited(drawn_outline(line, outlines, picture, pixel));
  }
}

std::string as_text(const json& answer) {
  return answer.dump(-1, ' ', false, json::error_handler_t::replace);
}

}  // namespace

json boards_json(const std::map<int, std::vector<SeenMarker>>& boards) {
  json list = json::array();
  for (const auto& [number, markers] : boards) {
    json board = {
        {"number", number}, {"marker_numbers", json::array()}, {"markers", json::array()}};
    const int first = (number - 1) * markers_of_board;
    for (int i = 0; i < markers_of_board; ++i) board["marker_numbers"].push_back(first + i);
    for (const auto& marker : markers) {
      board["markers"].push_back(
          {{"number", marker.number}, {"corners", corners_in_tenths(marker.corners)}});
    }
    list.push_back(std::move(board));
  }
  return list;
}

std::vector<std::vector<std::array<double, 2>>> outlines_in_tenths(
    const std::vector<std::vector<PhotoPoint>>& outlines) {
  std::vector<std::vector<std::array<double, 2>>> result;
  result.reserve(outlines.size());
  for (const auto& outline : outlines) {
    result.push_back(corners_in_tenths(outline));
  }
  return result;
}

double smallest_drawn(const OutlinedPhoto& found) {
  return in_tenths(least_working_pixels * found.working_pixel);
}

std::string outlined_answer(const PhotoPixels& photo, const OutlineNetwork& network,
                            const std::string& where, const OutlineProgress& progress) {
  const auto found = outline_photo(photo, network, where, progress);
  if (!found) return as_text(why_not(found.problems()));
  return as_text({{"outlines", outlines_in_tenths(found->outlines)},
                  {"balls", balls_json(found->balls)},
                  {"smallest_drawn", smallest_drawn(*found)},
                  {"working_pixel", found->working_pixel},
                  {"rock_share", found->rock_share},
                  {"boards", boards_json(find_boards(photo))},
                  {"cautions", found->cautions}});
}

std::string marks_answer(const PhotoPixels& photo, const std::string& where) {
  if (auto problem = problem_of_pixels(photo, where)) return as_text(why_not({*problem}));
  const auto marks = marks_on_photo(photo);
  return as_text({{"balls", balls_json(marks.balls)},
                  {"boards", boards_json(marks.boards)},
                  {"cautions", marks.cautions}});
}

std::string answer_outline_edit(std::string_view json_text) {
  const auto text = parse_strict_json(json_text);
  return as_text(text ? edit(*text) : why_not(text.problems()));
}

}  // namespace proofstone
