#include "engine/finding/problem.h"

template class std::vector<proofstone::Problem>;

namespace proofstone {

Problem::Problem() = default;
Problem::Problem(std::string_view code_word, std::string_view what_is_wrong,
                 std::string_view file_or_document, std::string_view where_in_it,
                 std::string_view allowed_instead)
    : code(code_word),
      what(what_is_wrong),
      file(file_or_document),
      where(where_in_it),
      allowed(allowed_instead) {}
Problem::Problem(const Problem&) = default;
Problem::Problem(Problem&&) noexcept = default;
Problem& Problem::operator=(const Problem&) = default;
Problem& Problem::operator=(Problem&&) noexcept = default;
Problem::~Problem() = default;

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
