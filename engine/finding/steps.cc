#include "engine/finding/steps.h"

#include <utility>

namespace proofstone {

void Steps::given(std::string symbol, std::string meaning, Measure value, std::string origin) {
  lines_.push_back(
      {std::move(symbol), std::move(meaning), {}, value, LengthUse::ground, std::move(origin)});
}

void Steps::computed(std::string symbol, std::string meaning, std::string formula, Measure value,
                     std::string source) {
  lines_.push_back({std::move(symbol), std::move(meaning), std::move(formula), value,
                    LengthUse::ground, std::move(source)});
}

void Steps::given_rock(std::string symbol, std::string meaning, Length size, std::string origin) {
  given(std::move(symbol), std::move(meaning), measure(size), std::move(origin));
  lines_.back().length_use = LengthUse::rock;
}

void Steps::computed_rock(std::string symbol, std::string meaning, std::string formula, Length size,
                          std::string source) {
  computed(std::move(symbol), std::move(meaning), std::move(formula), measure(size),
           std::move(source));
  lines_.back().length_use = LengthUse::rock;
}

void Steps::given_grain(std::string symbol, std::string meaning, Length size, std::string origin) {
  given(std::move(symbol), std::move(meaning), measure(size), std::move(origin));
  lines_.back().length_use = LengthUse::grain;
}

void Steps::computed_grain(std::string symbol, std::string meaning, std::string formula,
                           Length size, std::string source) {
  computed(std::move(symbol), std::move(meaning), std::move(formula), measure(size),
           std::move(source));
  lines_.back().length_use = LengthUse::grain;
}

void Steps::append(const Steps& other) {
  // A copy first: `other` may be this object.
  const std::vector<Step> lines = other.lines_;
  lines_.insert(lines_.end(), lines.begin(), lines.end());
}

}  // namespace proofstone
