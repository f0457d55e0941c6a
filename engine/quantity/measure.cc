#include "engine/quantity/measure.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <iterator>
#include <optional>
#include <utility>

#include "engine/finding/quoted_text.h"

namespace proofstone {
namespace {

constexpr std::size_t longest_text = 100;

bool is_digit(char c) { return c >= '0' && c <= '9'; }

bool starts_with(std::string_view text, std::string_view start) {
  return text.substr(0, start.size()) == start;
}

bool ends_with(std::string_view text, std::string_view end) {
  return text.size() >= end.size() && text.substr(text.size() - end.size()) == end;
}

/// Spaces and tabs, and the no-break spaces that word processors put before a unit.
constexpr std::string_view spaces[] = {" ", "\t", "\u00A0", "\u202F", "\u2009"};

std::string_view trimmed(std::string_view text) {
  // Nearly every text needs no more than this.
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  const auto is_plain = [](char c) { return c > ' ' && c < '\x7f'; };
  if (!text.empty() && is_plain(text.front()) && is_plain(text.back())) return text;
  for (bool again = true; again;) {
    again = false;
    for (const auto space : spaces) {
      if (starts_with(text, space)) {
        text.remove_prefix(space.size());
        again = true;
      }
      if (ends_with(text, space)) {
        text.remove_suffix(space.size());
        again = true;
      }
    }
  }
  return text;
}

/// A number in plain or exponent notation at the start of a text, and what follows it.
struct LeadingNumber {
  double value = 0;
  bool lost_in_rounding = false;  ///< not zero as written, but too small for a double
  std::string_view rest;
};

std::string_view take_digits(std::string_view& text) {
  const auto end = std::find_if_not(text.begin(), text.end(), is_digit);
  const auto digits = text.substr(0, static_cast<std::size_t>(end - text.begin()));
  text.remove_prefix(digits.size());
  return digits;
}

/// A decimal number as it is written: digits before and after its point, sign and power of ten.
struct WrittenNumber {
  bool negative = false;
  std::string_view whole;
  std::string_view fraction;
  long power = 0;  ///< of the exponent as written

  bool is_zero() const {
    const auto zero = [](char c) { return c == '0'; };
    return std::all_of(whole.begin(), whole.end(), zero) &&
           std::all_of(fraction.begin(), fraction.end(), zero);
  }
};

/// Those that are doubles without error.
constexpr double powers_of_ten[] = {1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                    1e8,  1e9,  1e10, 1e11, 1e12, 1e13, 1e14, 1e15,
                                    1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};

/// The double nearest to what is written. Up to 15 digits and powers of ten up to 22 are doubles
/// without error, so that one product or quotient rounds once, as strtod does (Clinger, How to read
/// floating point numbers accurately, 1990). Otherwise strtod sees digits and an exponent but no
/// point, so that it depends on no locale; it rounds correctly on every C library in use.
double value_of(const WrittenNumber& number) {
  constexpr std::size_t exact_digits = 15;
  const long exponent = number.power - static_cast<long>(number.fraction.size());
  const auto size = static_cast<std::size_t>(std::labs(exponent));
  if (number.whole.size() + number.fraction.size() <= exact_digits &&
      size < std::size(powers_of_ten)) {
    double digits = 0;
    for (const char digit : number.whole) digits = digits * 10 + (digit - '0');
    for (const char digit : number.fraction) digits = digits * 10 + (digit - '0');
    const double value = exponent < 0 ? digits / powers_of_ten[size] : digits * powers_of_ten[size];
    return number.negative ? -value : value;
  }
  const auto text =
      fmt::format("{}{}{}e{}", number.negative ? "-" : "", number.whole, number.fraction, exponent);
  return std::strtod(text.c_str(), nullptr);
}

/// Takes an exponent such as "e-3" off the text, where there is one.
long take_power(std::string_view& text) {
  if (text.empty() || (text.front() != 'e' && text.front() != 'E')) return 0;
  auto after = text.substr(1);
  const bool negative = starts_with(after, "-");
  if (negative || starts_with(after, "+")) after.remove_prefix(1);
  const auto digits = take_digits(after);
  if (digits.empty()) return 0;
  text = after;
  long power = 0;
  // Beyond ±9999 every double is zero or infinite, whatever the 100 characters before it say.
  for (const char digit : digits) power = std::min(power * 10 + (digit - '0'), 9999L);
  return negative ? -power : power;
}

/// Strict grammar: sign, digits with at most one point, exponent.
std::optional<LeadingNumber> leading_number(std::string_view text) {
  WrittenNumber written;
  for (const std::string_view minus : {"-", "−"}) {
    if (starts_with(text, minus)) {
      text.remove_prefix(minus.size());
      written.negative = true;
      break;
    }
  }
  if (!written.negative && starts_with(text, "+")) text.remove_prefix(1);

  written.whole = take_digits(text);
  if (starts_with(text, ".")) {
    text.remove_prefix(1);
    written.fraction = take_digits(text);
  }
  if (written.whole.empty() && written.fraction.empty()) return std::nullopt;
  written.power = take_power(text);

  LeadingNumber number;
  number.value = value_of(written);
  number.lost_in_rounding = std::abs(number.value) <= 0 && !written.is_zero();
  number.rest = text;
  return number;
}

struct Reading {
  std::string_view text;  ///< as written, trimmed
  QuantityKind kind;

  Problem problem(const std::string& code, const std::string& what) const {
    return {code, what, {}, {}, allowed_units(kind)};
  }
};

bool may_stand_without_unit(QuantityKind kind) {
  return kind == QuantityKind::dimensionless || kind == QuantityKind::slope;
}

std::string with_article(std::string_view noun) {
  const bool vowel = std::string_view("aeiou").find(noun.front()) != std::string_view::npos;
  // "unit discharge" and "unit weight" are spoken with a consonant.
  return (vowel && !starts_with(noun, "uni") ? "an " : "a ") + std::string(noun);
}

/// "length", or "density or unit weight" where a spelling serves several kinds.
std::string kinds_written(std::string_view spelling) {
  std::string kinds;
  for (const auto& entry : unit_spellings()) {
    if (entry.spelling != spelling) continue;
    const auto name = with_article(kind_name(entry.unit.kind));
    kinds += kinds.empty() ? name : " or " + name;
  }
  return kinds;
}

bool is_spelling(std::string_view text) {
  return std::any_of(unit_spellings().begin(), unit_spellings().end(),
                     [&](const UnitSpelling& entry) { return entry.spelling == text; });
}

std::string lower_case(std::string_view text) {
  std::string lower(text);
  for (char& c : lower) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return lower;
}

/// What is wrong with a unit that nobody spells so.
Problem unreadable_unit(const Reading& reading, std::string_view unit_text) {
  const auto shown = in_quotes(reading.text);
  if (unit_text.front() == ',') {
    auto after = unit_text.substr(1);
    const auto digits = take_digits(after);
    if (digits.size() == 3) {
      return reading.problem("thousands-separator",
                             shown +
                                 " has a comma that may separate thousands or decimals; write "
                                 "1234 or 1.234.");
    }
    return reading.problem("decimal-comma",
                           shown + " has a decimal comma; write a point, as in 0.45.");
  }
  if (is_digit(unit_text.front()) && unit_text.find('/') == std::string_view::npos) {
    return reading.problem("thousands-separator",
                           shown + " has a gap inside its number; write 1234 without a space.");
  }
  if (is_digit(unit_text.front()) || unit_text.front() == '/' || starts_with(unit_text, "½") ||
      starts_with(unit_text, "¼") || starts_with(unit_text, "¾")) {
    return reading.problem("fraction", shown + " has a fraction; write a decimal, as in 0.5 in.");
  }
  if (unit_text.front() == ':') {
    return reading.problem("ambiguous-slope",
                           shown + " does not say which figure is vertical; write 1V:2.5H.");
  }
  const auto first_digit = std::find_if(unit_text.begin(), unit_text.end(), is_digit);
  if (first_digit != unit_text.end()) {
    const auto before =
        unit_text.substr(0, static_cast<std::size_t>(first_digit - unit_text.begin()));
    const bool set_apart = trimmed(before) != before || before == "'" || before == "′";
    if (set_apart && is_spelling(trimmed(before))) {
      return reading.problem("two-units",
                             shown + " has two numbers; write one number with one unit.");
    }
  }
  for (const auto& entry : unit_spellings()) {
    if (lower_case(entry.spelling) == lower_case(unit_text)) {
      return reading.problem("unknown-unit", shown +
                                                 " has a unit in other letters than it is "
                                                 "written: use " +
                                                 std::string(entry.spelling) + ".");
    }
  }
  return reading.problem("unknown-unit", in_quotes(unit_text) + " is not a unit known here.");
}

Problem not_a_number(const Reading& reading) {
  const auto lower = lower_case(reading.text);
  for (const std::string_view word : {"nan", "inf", "+inf", "-inf", "−inf", "∞", "-∞", "−∞"}) {
    if (starts_with(lower, word)) {
      return reading.problem("not-finite", in_quotes(reading.text) + " is not a finite number.");
    }
  }
  return reading.problem("not-a-number",
                         in_quotes(reading.text) + " does not start with a number.");
}

std::optional<Problem> unusable(const Reading& reading, const LeadingNumber& number) {
  if (!std::isfinite(number.value)) {
    return reading.problem("number-too-large", in_quotes(reading.text) + " is too large a number.");
  }
  if (number.lost_in_rounding) {
    return reading.problem("number-too-small", in_quotes(reading.text) + " is too small a number.");
  }
  return std::nullopt;
}

/// The unit of a kind that is written so; nullptr where there is none.
const Unit* unit_spelled(std::string_view text, QuantityKind kind) {
  for (const auto& candidate : unit_spellings(kind)) {
    const auto spelling = candidate.spelling;
    // Documents hold quantities by the ten thousand: most spellings differ at once.
    if (spelling.size() == text.size() && spelling[0] == text[0] && spelling == text) {
      return &candidate.unit;
    }
  }
  return nullptr;
}

/// A number with a unit of the kind and nothing else, as nearly all texts are; absent where there
/// is more to be said.
std::optional<Measure> plain_measure(const Reading& reading) {
  if (reading.text.size() > longest_text) return std::nullopt;
  const auto number = leading_number(reading.text);
  if (!number || number->lost_in_rounding) return std::nullopt;
  const auto text = trimmed(number->rest);
  const Unit* unit = text.empty() ? nullptr : unit_spelled(text, reading.kind);
  if (unit == nullptr) return std::nullopt;
  const Measure measure{number->value * unit->si_factor, reading.kind};
  return std::isfinite(measure.si) ? std::optional(measure) : std::nullopt;
}

/// One side of "1V:2.5H".
struct SlopeSide {
  LeadingNumber number;
  bool vertical = false;
};

std::optional<SlopeSide> slope_side(std::string_view text) {
  const auto number = leading_number(trimmed(text));
  if (!number) return std::nullopt;
  const auto letter = trimmed(number->rest);
  if (letter == "V" || letter == "v") return SlopeSide{*number, true};
  if (letter == "H" || letter == "h") return SlopeSide{*number, false};
  return std::nullopt;
}

/// Reads "1V:2.5H" or "2.5H:1V"; absent when the text is not of that form.
std::optional<Expected<Measure>> parse_vertical_to_horizontal(const Reading& reading) {
  const auto colon = reading.text.find(':');
  if (colon == std::string_view::npos) return std::nullopt;
  const auto left = slope_side(reading.text.substr(0, colon));
  const auto right = slope_side(reading.text.substr(colon + 1));
  if (!left || !right || left->vertical == right->vertical) return std::nullopt;
  if (reading.kind != QuantityKind::slope && reading.kind != QuantityKind::angle) {
    return reading.problem("wrong-kind", in_quotes(reading.text) + " is a slope; " +
                                             with_article(kind_name(reading.kind)) +
                                             " is wanted here.");
  }
  for (const auto& side : {*left, *right}) {
    if (auto problem = unusable(reading, side.number)) return std::move(*problem);
  }
  const double vertical = (left->vertical ? *left : *right).number.value;
  const double horizontal = (left->vertical ? *right : *left).number.value;
  if (vertical < 0 || horizontal < 0 || (vertical <= 0 && horizontal <= 0)) {
    return reading.problem("not-a-slope",
                           in_quotes(reading.text) + " has a negative side, or two that are zero.");
  }
  if (reading.kind == QuantityKind::angle) {
    return measure(Angle::radians(std::atan2(vertical, horizontal)));
  }
  const double ratio = vertical / horizontal;
  if (!std::isfinite(ratio)) {
    return reading.problem("not-finite",
                           in_quotes(reading.text) + " is vertical: no finite slope.");
  }
  return measure(Slope::ratio(ratio));
}

/// A size, below 1e7, in steps of its last decimal, halves upward. What lies within a trillionth of
/// a half counts as one, so that two computers that differ in the last bit show the same figure.
long long in_steps(double size, std::size_t decimals) {
  return static_cast<long long>(std::floor(size * powers_of_ten[decimals] * (1 + 1e-12) + 0.5));
}

/// So many steps of the last decimal, never as "-0.00".
std::string fixed(long long steps, bool negative, std::size_t decimals) {
  std::string text(negative && steps > 0 ? "-" : "");
  const fmt::format_int digits(steps);
  const std::string_view written(digits.data(), digits.size());
  if (written.size() <= decimals) text.append(decimals + 1 - written.size(), '0');
  text += written;
  if (decimals > 0) text.insert(text.size() - decimals, 1, '.');
  return text;
}

/// How a value is shown: in which unit, and rounded to how many decimals, or, when absent, to three
/// significant figures.
struct DisplayRule {
  Unit unit;
  std::optional<std::size_t> decimals;
};

struct KindDisplay {
  QuantityKind kind = QuantityKind::dimensionless;
  DisplayRule us_customary;
  DisplayRule si;
};

constexpr KindDisplay velocity_display{
    QuantityKind::velocity, {unit::foot_per_second, 1}, {unit::meter_per_second, 2}};
constexpr KindDisplay kind_displays[] = {
    {QuantityKind::length, {unit::foot, 2}, {unit::meter, 2}},
    {QuantityKind::area, {unit::square_foot, {}}, {unit::square_meter, {}}},
    {QuantityKind::volume, {unit::cubic_foot, {}}, {unit::cubic_meter, {}}},
    velocity_display,
    {QuantityKind::discharge,
     {unit::cubic_foot_per_second, {}},
     {unit::cubic_meter_per_second, {}}},
    {QuantityKind::unit_discharge,
     {unit::square_foot_per_second, {}},
     {unit::square_meter_per_second, {}}},
    {QuantityKind::acceleration,
     {unit::foot_per_second_squared, {}},
     {unit::meter_per_second_squared, {}}},
    {QuantityKind::stress, {unit::pound_per_square_foot, 2}, {unit::pascal, 0}},
    {QuantityKind::density,
     {unit::pound_mass_per_cubic_foot, {}},
     {unit::kilogram_per_cubic_meter, {}}},
    {QuantityKind::unit_weight,
     {unit::pound_per_cubic_foot, {}},
     {unit::kilonewton_per_cubic_meter, {}}},
    {QuantityKind::mass, {unit::pound, {}}, {unit::kilogram, {}}},
    {QuantityKind::angle, {unit::degree, {}}, {unit::degree, {}}},
    {QuantityKind::slope, {unit::rise_per_run, {}}, {unit::rise_per_run, {}}},
    {QuantityKind::duration, {unit::second, {}}, {unit::second, {}}},
    {QuantityKind::rate, {unit::per_second, {}}, {unit::per_second, {}}},
    {QuantityKind::dimensionless, {unit::number, {}}, {unit::number, {}}},
};
constexpr KindDisplay rock_size_display{
    QuantityKind::length, {unit::inch, 1}, {unit::millimeter, 0}};
constexpr KindDisplay large_volume_display{
    QuantityKind::volume, {unit::cubic_yard, {}}, {unit::cubic_meter, {}}};
constexpr KindDisplay large_mass_display{
    QuantityKind::mass, {unit::short_ton, {}}, {unit::tonne, {}}};

constexpr double seeping = 1e-4;  // m/s

DisplayRule display_rule(const Measure& measure, bool us, LengthUse use) {
  const auto rule_of = [us](const KindDisplay& shown) {
    return us ? shown.us_customary : shown.si;
  };
  const double size = std::abs(measure.si);
  if (measure.kind == QuantityKind::length && use == LengthUse::rock) {
    return rule_of(rock_size_display);
  }
  if (measure.kind == QuantityKind::length && use == LengthUse::grain) {
    return {unit::millimeter, {}};
  }
  if (measure.kind == QuantityKind::volume && size >= unit::cubic_yard.si_factor) {
    return rule_of(large_volume_display);
  }
  if (measure.kind == QuantityKind::mass) {
    const DisplayRule large = rule_of(large_mass_display);
    if (size >= 10 * large.unit.si_factor) return large;
  }
  // How fast water seeps, which no step of a running water shows.
  if (measure.kind == QuantityKind::velocity && size > 0 && size < seeping) {
    return {rule_of(velocity_display).unit, {}};
  }
  if (measure.kind == QuantityKind::duration) {
    if (size >= 2 * unit::hour.si_factor) return {unit::hour, {}};
    if (size >= 2 * unit::minute.si_factor) return {unit::minute, {}};
  }
  return rule_of(*std::find_if(std::begin(kind_displays), std::end(kind_displays),
                               [&](const auto& shown) { return shown.kind == measure.kind; }));
}

/// A number by its rule; what is too small for the step keeps two figures.
std::string displayed_number(double value, std::optional<std::size_t> decimals) {
  const double size = std::abs(value);
  if (!decimals || !std::isfinite(size) || size >= 1e7) return significant(value, 3);
  const long long steps = in_steps(size, *decimals);
  const bool nothing = size < 1e-6;
  if (nothing || steps >= 10) return fixed(steps, value < 0, *decimals);
  return significant(value, 2);
}

/// Moves the point of "1.35" to where a power of ten has it.
void put_point(std::string& digits, int power) {
  if (digits.size() > 1) digits.erase(1, 1);
  if (power < 0) {
    digits.insert(0, "0." + std::string(static_cast<std::size_t>(-power - 1), '0'));
    return;
  }
  const auto whole = static_cast<std::size_t>(power) + 1;
  if (digits.size() <= whole) {
    digits.append(whole - digits.size(), '0');
  } else {
    digits.insert(whole, 1, '.');
  }
}

std::string with_unit(std::string number, std::string_view symbol) {
  if (symbol.empty()) return number;
  if (symbol != unit::degree.symbol) number += ' ';
  return number + std::string(symbol);
}

}  // namespace

Expected<Measure> parse_measure(std::string_view text, QuantityKind kind) {
  const Reading reading{trimmed(text), kind};
  if (const auto plain = plain_measure(reading)) return *plain;
  if (reading.text.size() > longest_text) {
    return reading.problem("text-too-long",
                           in_quotes(reading.text) + " is too long for a quantity.");
  }
  if (!is_utf8(reading.text)) {
    return reading.problem("not-utf-8", in_quotes(reading.text) + " is not written in UTF-8.");
  }
  if (reading.text.empty()) {
    return reading.problem("empty-quantity", "A quantity is missing here.");
  }
  if (auto slope = parse_vertical_to_horizontal(reading)) return std::move(*slope);

  const auto number = leading_number(reading.text);
  if (!number) return not_a_number(reading);
  if (auto problem = unusable(reading, *number)) return std::move(*problem);

  const auto unit_text = trimmed(number->rest);
  if (unit_text.empty()) {
    if (may_stand_without_unit(kind)) return Measure{number->value, kind};
    return reading.problem("missing-unit", in_quotes(reading.text) + " has no unit.");
  }
  if (unit_spelled(unit_text, kind) != nullptr) {
    return reading.problem("number-too-large", in_quotes(reading.text) + " is too large a number.");
  }
  if (!is_spelling(unit_text)) return unreadable_unit(reading, unit_text);
  return reading.problem("wrong-kind", in_quotes(reading.text) + " is " + kinds_written(unit_text) +
                                           "; " + with_article(kind_name(kind)) +
                                           " is wanted here.");
}

DisplayedMeasure display(Measure measure, UnitSystem system, LengthUse use) {
  const DisplayRule rule = display_rule(measure, system == UnitSystem::us_customary, use);
  DisplayedMeasure shown;
  shown.value = measure.si / rule.unit.si_factor;
  shown.unit = rule.unit.symbol;
  shown.text = with_unit(displayed_number(shown.value, rule.decimals), rule.unit.symbol);
  return shown;
}

std::string exact_text(Measure measure, const Unit& unit) {
  const double near = measure.si / unit.si_factor;
  const double below = std::nextafter(near, -HUGE_VAL);
  const double above = std::nextafter(near, HUGE_VAL);
  // Multiplying back, which is what a reader does, may miss by the last bit; a neighbour usually
  // hits. Where several hit, the shortest is what somebody wrote: 7.3 and not 7.299999999999999.
  // One product is rounded alike everywhere, so the exact comparison is safe.
  std::string shortest;
  for (const double value : {near, below, above}) {
    if (value * unit.si_factor != measure.si) continue;
    auto text = fmt::format("{}", value);
    if (shortest.empty() || text.size() < shortest.size()) shortest = std::move(text);
  }
  if (!shortest.empty()) return with_unit(std::move(shortest), unit.symbol);
  // Some doubles are no multiple of the factor; the SI unit, whose factor is one, always serves.
  for (const auto& entry : unit_spellings(measure.kind)) {
    if (entry.unit.si_factor == 1) {
      return with_unit(fmt::format("{}", measure.si), entry.unit.symbol);
    }
  }
  return fmt::format("{}", measure.si);
}

std::string significant(double value, int figures) {
  if (std::isnan(value)) return "not a number";
  if (std::isinf(value)) return value > 0 ? "infinite" : "-infinite";
  if (std::abs(value) <= 0) return "0";
  // As in `in_steps`: what is nearly a half is one.
  const double steadied = figures <= 12 ? value * (1 + 1e-13) : value;
  std::string text = fmt::format("{:.{}e}", std::abs(steadied), figures - 1);
  const auto mark = text.find('e');
  const int exponent = std::atoi(text.c_str() + mark + 1);
  text.erase(mark);
  const bool plain = exponent >= -4 && exponent < 7;
  if (plain) put_point(text, exponent);
  if (text.find('.') != std::string::npos) {
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
  }
  if (value < 0) text.insert(0, 1, '-');
  if (!plain) text += fmt::format("e{}", exponent);
  return text;
}

}  // namespace proofstone
