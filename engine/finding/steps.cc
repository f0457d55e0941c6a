#include "engine/finding/steps.h"

#include <iterator>
#include <utility>

template class std::vector<proofstone::Step>;

namespace proofstone {
namespace {

/// Most methods note fewer lines.
constexpr std::size_t usual_lines = 12;

}  // namespace

Step::Step() = default;
Step::Step(std::string_view as_symbol, std::string_view in_words, std::string_view by_formula,
           Measure found, LengthUse use, std::string_view from)
    : symbol(as_symbol),
      meaning(in_words),
      formula(by_formula),
      value(found),
      length_use(use),
      source(from) {}
Step::Step(const Step&) = default;
Step::Step(Step&&) noexcept = default;
Step& Step::operator=(const Step&) = default;
Step& Step::operator=(Step&&) noexcept = default;
Step::~Step() = default;

Steps::Steps() = default;
Steps::Steps(const Steps&) = default;
Steps::Steps(Steps&&) noexcept = default;
Steps& Steps::operator=(const Steps&) = default;
Steps& Steps::operator=(Steps&&) noexcept = default;
Steps::~Steps() = default;

Steps Steps::unread() {
  Steps steps;
  steps.read_ = false;
  return steps;
}

void Steps::note(std::string_view symbol, std::string_view meaning, std::string_view formula,
                 Measure value, LengthUse use, std::string_view source) {
  if (!read_) return;
  if (lines_.empty()) lines_.reserve(usual_lines);
  lines_.emplace_back(symbol, meaning, formula, value, use, source);
}

void Steps::given(std::string_view symbol, std::string_view meaning, Measure value,
                  std::string_view origin) {
  note(symbol, meaning, {}, value, LengthUse::ground, origin);
}

void Steps::computed(std::string_view symbol, std::string_view meaning, std::string_view formula,
                     Measure value, std::string_view source) {
  note(symbol, meaning, formula, value, LengthUse::ground, source);
}

void Steps::given_rock(std::string_view symbol, std::string_view meaning, Length size,
                       std::string_view origin) {
  note(symbol, meaning, {}, measure(size), LengthUse::rock, origin);
}

void Steps::computed_rock(std::string_view symbol, std::string_view meaning,
                          std::string_view formula, Length size, std::string_view source) {
  note(symbol, meaning, formula, measure(size), LengthUse::rock, source);
}

void Steps::given_grain(std::string_view symbol, std::string_view meaning, Length size,
                        std::string_view origin) {
  note(symbol, meaning, {}, measure(size), LengthUse::grain, origin);
}

void Steps::computed_grain(std::string_view symbol, std::string_view meaning,
                           std::string_view formula, Length size, std::string_view source) {
  note(symbol, meaning, formula, measure(size), LengthUse::grain, source);
}

void Steps::append(const Steps& other) { append(Steps(other)); }

void Steps::append(Steps&& other) {
  if (!read_) return;
  if (lines_.empty()) {
    lines_ = std::move(other.lines_);
    return;
  }
  lines_.insert(lines_.end(), std::make_move_iterator(other.lines_.begin()),
                std::make_move_iterator(other.lines_.end()));
}

}  // namespace proofstone
