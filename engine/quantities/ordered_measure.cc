#include "engine/quantities/ordered_measure.h"

#include <fmt/format.h>

#include <cmath>

namespace proofstone {
namespace {

constexpr double whole_from = 100;
constexpr const char* narrow_space = "\u202F";

Unit unit_of(QuantityKind kind, bool us) {
  switch (kind) {
    case QuantityKind::area:
      return us ? unit::square_yard : unit::square_meter;
    case QuantityKind::volume:
      return us ? unit::cubic_yard : unit::cubic_meter;
    case QuantityKind::mass:
      return us ? unit::short_ton : unit::tonne;
    case QuantityKind::length:
      return us ? unit::foot : unit::meter;
    default:
      return unit::number;
  }
}

}  // namespace

DisplayedMeasure ordered_measure(const Measure& amount, UnitSystem system) {
  const Unit unit = unit_of(amount.kind, system == UnitSystem::us_customary);
  DisplayedMeasure shown;
  shown.value = amount.si / unit.si_factor;
  shown.unit = unit.symbol;
  shown.text = std::abs(shown.value) >= whole_from ? fmt::format("{:.0f}", shown.value)
                                                   : significant(shown.value, 3);
  if (!shown.unit.empty()) shown.text += " " + shown.unit;
  return shown;
}

std::string money_text(double amount, const std::string& currency) {
  auto digits = fmt::format("{:.0f}", std::abs(amount));
  for (auto place = digits.size(); place > 3;) {
    place -= 3;
    digits.insert(place, narrow_space);
  }
  return (amount < 0 ? "-" : "") + digits + (currency.empty() ? "" : " ") + currency;
}

}  // namespace proofstone
