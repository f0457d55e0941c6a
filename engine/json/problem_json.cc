#include "engine/json/problem_json.h"

#include <nlohmann/json.hpp>

namespace proofstone {

using nlohmann::json;

json problem_json(const Problem& problem) {
  return {{"code", problem.code}, {"sentence", problem.sentence()}, {"what", problem.what},
          {"file", problem.file}, {"where", problem.where},         {"allowed", problem.allowed}};
}

json problems_json(const Problems& problems) {
  json list = json::array();
  for (const auto& problem : problems) list.push_back(problem_json(problem));
  return list;
}

nlohmann::json why_not(const Problems& problems) { return {{"problems", problems_json(problems)}}; }

}  // namespace proofstone
