#include "engine/method/description.h"

namespace proofstone {
namespace {

std::string in_unit(double value, const Unit& unit) {
  auto number = significant(value, 6);
  if (unit.symbol.empty()) return number;
  return number + (unit.symbol == unit::degree.symbol ? "" : " ") + std::string(unit.symbol);
}

}  // namespace

// Here and not in the header, so that no method compiles them again.
MethodDescription::MethodDescription() = default;
MethodDescription::MethodDescription(const MethodDescription&) = default;
MethodDescription::MethodDescription(MethodDescription&&) noexcept = default;
MethodDescription& MethodDescription::operator=(const MethodDescription&) = default;
MethodDescription& MethodDescription::operator=(MethodDescription&&) noexcept = default;
MethodDescription::~MethodDescription() = default;

bool AllowedRange::holds(double value) const {
  // Written so that NaN, which is outside everything, is also outside an open range.
  return value == value && (!above || value > *above) && (!at_least || value >= *at_least) &&
         (!at_most || value <= *at_most);
}

std::string AllowedRange::sentence(const Unit& unit) const {
  std::string text;
  const auto add = [&](std::string_view words, const std::optional<double>& bound) {
    if (!bound) return;
    if (!text.empty()) text += ", ";
    text += std::string(words) + " " + in_unit(*bound, unit);
  };
  add("more than", above);
  add("at least", at_least);
  add("at most", at_most);
  return text.empty() ? "any value" : text;
}

std::string_view group_name(MethodGroup group) {
  switch (group) {
    case MethodGroup::rock_size:
      return "rock size";
    case MethodGroup::layer:
      return "layer";
    case MethodGroup::scour:
      return "scour";
    case MethodGroup::toe:
      return "toe";
    case MethodGroup::soil:
      return "soil";
    case MethodGroup::filter:
      return "filter";
    case MethodGroup::mix:
      return "mix";
    case MethodGroup::cover:
      return "cover";
    case MethodGroup::quantities:
      return "quantities";
    case MethodGroup::water:
      return "water";
    case MethodGroup::evidence:
      return "evidence";
    case MethodGroup::reliability:
      return "reliability";
  }
  return {};
}

}  // namespace proofstone
