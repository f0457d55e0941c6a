#pragma once

#include <string>
#include <vector>

#include "engine/quantity/measure.h"

namespace proofstone {

/// Words values for the sentences of findings in the unit system a reader asked for.
class Wording {
 public:
  explicit Wording(UnitSystem units) : units_(units) {}
  UnitSystem units() const { return units_; }

  std::string rock(Length size) const { return shown(Measure::of(size), LengthUse::rock); }
  std::string ground(Length length) const { return shown(Measure::of(length), LengthUse::ground); }
  template <class Q>
  std::string of(Q quantity) const {
    return shown(Measure::of(quantity), LengthUse::ground);
  }
  std::string shown(const Measure& measure, LengthUse use) const;

 private:
  UnitSystem units_;
};

/// A margin as people say it: "1.08".
std::string margin_text(double ratio);

/// A confidence in whole percent, never 0 % or 100 %: "97 %", "more than 99.9 %".
std::string confidence_text(double confidence);

/// "a", "a and b", "a, b and c".
std::string listed(const std::vector<std::string>& words);

/// "30" for 30, "12.5" for 12.5: the number in "D30".
std::string percent_number(double percent);

}  // namespace proofstone
