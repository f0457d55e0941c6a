#include "formats/sieve_name.h"

#include <array>
#include <string>

#include "engine/quantity/measure.h"

namespace proofstone {
namespace {

struct NumberedSieve {
  int number;
  double opening;  ///< mm
};
constexpr std::array<NumberedSieve, 20> numbered{
    {{4, 4.75},  {5, 4.0},    {6, 3.35},    {8, 2.36},    {10, 2.0},   {12, 1.7},   {16, 1.18},
     {18, 1.0},  {20, 0.85},  {30, 0.6},    {40, 0.425},  {50, 0.3},   {60, 0.25},  {70, 0.212},
     {80, 0.18}, {100, 0.15}, {120, 0.125}, {140, 0.106}, {170, 0.09}, {200, 0.075}}};

std::string_view without_spaces_before(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  return text;
}

/// What follows "No.", "no", "#" at the start of a name; nothing where it starts otherwise.
std::optional<std::string_view> after_number_mark(std::string_view name) {
  for (const std::string_view mark : {"No.", "no.", "NO.", "No", "no", "NO", "#"}) {
    if (name.substr(0, mark.size()) == mark) {
      return without_spaces_before(name.substr(mark.size()));
    }
  }
  return std::nullopt;
}

std::optional<int> whole_number(std::string_view& text) {
  int value = 0;
  std::size_t digits = 0;
  while (digits < text.size() && digits < 4 && text[digits] >= '0' && text[digits] <= '9') {
    value = 10 * value + (text[digits] - '0');
    ++digits;
  }
  if (digits == 0) return std::nullopt;
  text.remove_prefix(digits);
  return value;
}

bool is_inch(std::string_view text) {
  text = without_spaces_before(text);
  return text == "in" || text == "in." || text == "inch" || text == "inches" || text == "\"" ||
         text == "″";
}

/// "3/4 in", "1 1/2 in", "1-1/2 in".
std::optional<Length> fraction_of_an_inch(std::string_view text) {
  double whole = 0;
  auto first = whole_number(text);
  if (!first) return std::nullopt;
  if (!text.empty() && (text.front() == ' ' || text.front() == '-')) {
    whole = *first;
    text = without_spaces_before(text.substr(1));
    first = whole_number(text);
    if (!first) return std::nullopt;
  }
  if (text.empty() || text.front() != '/') return std::nullopt;
  text.remove_prefix(1);
  const auto parts = whole_number(text);
  if (!parts || *parts == 0 || !is_inch(text)) return std::nullopt;
  return Length::inches(whole + static_cast<double>(*first) / *parts);
}

Unit unit_of(std::string_view name) {
  for (const auto& spelling : unit_spellings(QuantityKind::length)) {
    const auto& symbol = spelling.spelling;
    if (name.size() > symbol.size() && name.substr(name.size() - symbol.size()) == symbol) {
      const char before = name[name.size() - symbol.size() - 1];
      if (before == ' ' || (before >= '0' && before <= '9')) return spelling.unit;
    }
  }
  return unit::millimeter;
}

}  // namespace

std::optional<NamedSieve> sieve_called(std::string_view name) {
  if (auto rest = after_number_mark(name)) {
    const auto number = whole_number(*rest);
    if (!number || !rest->empty()) return std::nullopt;
    for (const auto& sieve : numbered) {
      if (sieve.number == *number) return NamedSieve{Length::millimeters(sieve.opening)};
    }
    return std::nullopt;
  }
  if (const auto fraction = fraction_of_an_inch(name)) {
    if (fraction->si() > 0) return NamedSieve{*fraction, unit::inch};
    return std::nullopt;
  }
  const auto size = parse_quantity<Length>(name);
  if (!size || !(size->si() > 0)) return std::nullopt;
  return NamedSieve{*size, unit_of(name)};
}

}  // namespace proofstone
