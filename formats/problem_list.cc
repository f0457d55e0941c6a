#include "formats/problem_list.h"

#include <fmt/format.h>

namespace proofstone {

void ProblemList::add(Problem problem) {
  constexpr std::size_t most = 20;
  if (problems_.size() < most) {
    problems_.push_back(std::move(problem));
  } else {
    ++left_out_;
  }
}

void ProblemList::add(const Problems& problems) {
  for (const auto& problem : problems) add(problem);
}

Problems ProblemList::take() {
  if (left_out_ > 0) {
    problems_.push_back({"more-problems",
                         fmt::format("{} more problems of this file are left out.", left_out_),
                         problems_.front().file, "", ""});
  }
  return std::move(problems_);
}

}  // namespace proofstone
