#pragma once

#include <cassert>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace proofstone {

/// Something the user can put right: what is wrong, where, and what is allowed instead.
struct Problem {
  // Made, copied and let go in one file: what that takes would else be compiled in every file that
  // does.
  Problem();
  Problem(std::string_view code_word, std::string_view what_is_wrong,
          std::string_view file_or_document = {}, std::string_view where_in_it = {},
          std::string_view allowed_instead = {});
  Problem(const Problem&);
  Problem(Problem&&) noexcept;
  Problem& operator=(const Problem&);
  Problem& operator=(Problem&&) noexcept;
  ~Problem();

  /// Short stable word for programs, such as "not-a-number" or "unknown-field".
  std::string code;
  /// One sentence for people.
  std::string what;
  /// The file or document; empty when there is only one.
  std::string file;
  /// Where in it: a JSON pointer ("/zones/lower-bend/bank_slope") or "row 12, elevation".
  std::string where;
  /// What would be accepted; may be empty when `what` already says it.
  std::string allowed;

  /// "section.csv, row 12, elevation: … Allowed: …"
  std::string sentence() const;
};

using Problems = std::vector<Problem>;

/// Puts a place in front of the place each problem already names ("/zones/x" + "/slope").
Problems located_under(Problems problems, const std::string& prefix);

/// A value, or the problems that stand in its way. Never both, never neither.
template <class T>
class Expected {
 public:
  Expected(T value) : value_(std::move(value)) {}                  // NOLINT: implicit
  Expected(Problem problem) : problems_(1, std::move(problem)) {}  // NOLINT: implicit
  Expected(Problems problems) : problems_(std::move(problems)) {   // NOLINT: implicit
    assert(!problems_.empty());
  }

  explicit operator bool() const { return value_.has_value(); }
  const T& operator*() const { return value_.value(); }
  T& operator*() { return value_.value(); }
  const T* operator->() const { return &value_.value(); }
  T* operator->() { return &value_.value(); }
  /// Empty where there is a value.
  const Problems& problems() const { return problems_; }

 private:
  std::optional<T> value_;
  Problems problems_;
};

}  // namespace proofstone

extern template class std::vector<proofstone::Problem>;
