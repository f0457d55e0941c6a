#include "engine/finding/problem.h"

namespace proofstone {

std::string Problem::sentence() const {
  std::string place = file;
  if (!where.empty()) place += (place.empty() ? "" : ", ") + where;
  std::string text = (place.empty() ? "" : place + ": ") + what;
  if (!allowed.empty()) text += " Allowed: " + allowed + ".";
  return text;
}

Problems located_under(Problems problems, const std::string& prefix) {
  for (auto& problem : problems) {
    const bool continues = problem.where.empty() || problem.where.front() == '/' || prefix.empty();
    problem.where = prefix + (continues ? "" : ", ") + problem.where;
  }
  return problems;
}

}  // namespace proofstone
