#include "engine/site/findings.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/site/wording.h"

template class std::vector<proofstone::StatedValue>;
template class std::vector<proofstone::Finding>;

namespace proofstone {

StatedValue::StatedValue() = default;
StatedValue::StatedValue(std::string_view by_key, std::string_view as_symbol,
                         std::string_view in_words, Measure stated, LengthUse use)
    : key(by_key), symbol(as_symbol), meaning(in_words), value(stated), length_use(use) {}
StatedValue::StatedValue(const StatedValue&) = default;
StatedValue::StatedValue(StatedValue&&) noexcept = default;
StatedValue& StatedValue::operator=(const StatedValue&) = default;
StatedValue& StatedValue::operator=(StatedValue&&) noexcept = default;
StatedValue::~StatedValue() = default;

Finding::Finding() = default;
Finding::Finding(const Finding&) = default;
Finding::Finding(Finding&&) noexcept = default;
Finding& Finding::operator=(const Finding&) = default;
Finding& Finding::operator=(Finding&&) noexcept = default;
Finding::~Finding() = default;

Findings::Findings() = default;
Findings::Findings(const Findings&) = default;
Findings::Findings(Findings&&) noexcept = default;
Findings& Findings::operator=(const Findings&) = default;
Findings& Findings::operator=(Findings&&) noexcept = default;
Findings::~Findings() = default;

std::string_view topic_name(Topic topic) {
  switch (topic) {
    case Topic::document:
      return "document";
    case Topic::kind:
      return "kind of rock";
    case Topic::cover:
      return "cover";
    case Topic::water:
      return "water";
    case Topic::rock_size:
      return "rock size";
    case Topic::rock_class:
      return "class";
    case Topic::layer:
      return "layer";
    case Topic::toe:
      return "toe";
    case Topic::soil:
      return "soil";
    case Topic::filter:
      return "filter";
    case Topic::extent:
      return "extent";
    case Topic::quantities:
      return "quantities";
    case Topic::submittal:
      return "submittal";
    case Topic::substitution:
      return "substitution";
    case Topic::gradation:
      return "gradation";
    case Topic::rock_in_zone:
      return "rock in the zone";
    case Topic::remedy:
      return "remedy";
    case Topic::chance:
      return "chance of instability";
    case Topic::supply:
      return "supply";
    case Topic::placing:
      return "placing";
    case Topic::placing_check:
      return "placing check";
    case Topic::mix:
      return "mix";
  }
  return "document";
}

std::string margin_text(const Margin& margin) {
  std::string text = margin_text(margin.value);
  if (margin.low && margin.high) {
    text += fmt::format(" ({} to {})", margin_text(*margin.low), margin_text(*margin.high));
  } else if (margin.low) {
    text += fmt::format(" (at least {})", margin_text(*margin.low));
  } else if (margin.high) {
    text += fmt::format(" (at most {})", margin_text(*margin.high));
  }
  return text;
}

void Finding::state(std::string_view key, std::string_view symbol, std::string_view meaning,
                    Measure value, LengthUse use) {
  values.emplace_back(key, symbol, meaning, value, use);
}

bool Finding::keeps(const LimitDescription& limit) const {
  return std::none_of(
      limits_not_kept.begin(), limits_not_kept.end(),
      [&limit](const LimitDescription& broken) { return broken.sentence == limit.sentence; });
}

const Finding* Findings::find(std::string_view id) const {
  for (const auto& finding : findings) {
    if (finding.id == id) return &finding;
  }
  return nullptr;
}

}  // namespace proofstone
