#include "engine/site/wording.h"

#include <fmt/format.h>

#include <cmath>

namespace proofstone {

std::string Wording::shown(const Measure& measure, LengthUse use) const {
  return display(measure, units_, use).text;
}

std::string margin_text(double ratio) { return fmt::format("{:.2f}", ratio); }

std::string confidence_text(double confidence) {
  if (confidence > 0.999) return "more than 99.9 %";
  if (confidence < 0.001) return "less than 0.1 %";
  const double percent = 100 * confidence;
  // Near the ends a whole percent would round to certainty.
  if (percent > 98.5 || percent < 1.5) return fmt::format("{:.1f} %", percent);
  return fmt::format("{:.0f} %", percent);
}

std::string listed(const std::vector<std::string>& words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (i > 0) text += i + 1 == words.size() ? " and " : ", ";
    text += words[i];
  }
  return text;
}

std::string percent_number(double percent) {
  const double rounded = std::round(percent * 10) / 10;
  return std::fabs(rounded - std::round(rounded)) < 0.05 ? fmt::format("{:.0f}", rounded)
                                                         : fmt::format("{:.1f}", rounded);
}

}  // namespace proofstone
