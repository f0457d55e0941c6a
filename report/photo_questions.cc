#include "report/photo_questions.h"

#include <cmath>

#include "engine/json/field_reader.h"
#include "engine/json/problem_json.h"
#include "engine/json/strict_json.h"
#include "engine/site/photo_look_reader.h"
#include "engine/vision/check_nodes.h"
#include "engine/vision/scale_cautions.h"

namespace proofstone {
namespace {

using nlohmann::json;

enum class PhotoQuestion { scale, check };

json cautions_json(const PhotoSet& set, int first) {
  json list = json::array();
  for (std::size_t i = 0; i < set.photos.size(); ++i) {
    for (auto& caution : cautions_of_scale(set.photos[i], first + static_cast<int>(i))) {
      list.push_back(std::move(caution));
    }
  }
  return {{"cautions", std::move(list)}};
}

json nodes_json(const PhotoSet& set) {
  json list = json::array();
  for (const auto& node : check_nodes(set.photos)) {
    list.push_back(
        {{"picture", node.photo},
         {"at", json::array({std::round(node.at.x * 10) / 10, std::round(node.at.y * 10) / 10})}});
  }
  return {{"nodes", std::move(list)}};
}

json answer(const json& text) {
  Problems problems;
  FieldReader request(text, "", problems);
  const auto ask = request.choice<PhotoQuestion>(
      "ask", {{"scale", PhotoQuestion::scale}, {"check", PhotoQuestion::check}}, std::nullopt);
  const int first = request.optional_integer("first", 1, 1000).value_or(1);
  const auto set = read_photo_set(request, problems);
  request.finish();
  if (!problems.empty()) return why_not(problems);
  return ask == PhotoQuestion::scale ? cautions_json(set, first) : nodes_json(set);
}

}  // namespace

std::string answer_photo_question(std::string_view json_text) {
  const auto text = parse_strict_json(json_text);
  return (text ? answer(*text) : why_not(text.problems()))
      .dump(-1, ' ', false, json::error_handler_t::replace);
}

}  // namespace proofstone
