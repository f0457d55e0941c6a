#include "engine/quantity/unit.h"

namespace proofstone {

std::string_view kind_name(QuantityKind kind) {
  switch (kind) {
    case QuantityKind::length:
      return "length";
    case QuantityKind::area:
      return "area";
    case QuantityKind::volume:
      return "volume";
    case QuantityKind::velocity:
      return "velocity";
    case QuantityKind::discharge:
      return "discharge";
    case QuantityKind::unit_discharge:
      return "unit discharge";
    case QuantityKind::acceleration:
      return "acceleration";
    case QuantityKind::stress:
      return "stress";
    case QuantityKind::density:
      return "density";
    case QuantityKind::unit_weight:
      return "unit weight";
    case QuantityKind::mass:
      return "mass";
    case QuantityKind::angle:
      return "angle";
    case QuantityKind::slope:
      return "slope";
    case QuantityKind::duration:
      return "duration";
    case QuantityKind::rate:
      return "rate";
    case QuantityKind::dimensionless:
      return "number";
  }
  return {};
}

const std::vector<UnitSpelling>& unit_spellings() {
  // The symbol that displays use comes first among the spellings of a unit.
  static const std::vector<UnitSpelling> spellings{
      {"ft", unit::foot},
      {"ft.", unit::foot},
      {"foot", unit::foot},
      {"feet", unit::foot},
      {"'", unit::foot},
      {"′", unit::foot},
      {"in", unit::inch},
      {"in.", unit::inch},
      {"inch", unit::inch},
      {"inches", unit::inch},
      {"\"", unit::inch},
      {"″", unit::inch},
      {"yd", unit::yard},
      {"yard", unit::yard},
      {"yards", unit::yard},
      {"US survey ft", unit::survey_foot},
      {"US survey foot", unit::survey_foot},
      {"US survey feet", unit::survey_foot},
      {"m", unit::meter},
      {"mm", unit::millimeter},
      {"cm", unit::centimeter},
      {"mi", unit::mile},
      {"mile", unit::mile},
      {"miles", unit::mile},
      {"km", unit::kilometer},

      {"yd²", unit::square_yard},
      {"yd2", unit::square_yard},
      {"ft²", unit::square_foot},
      {"ft2", unit::square_foot},
      {"sq ft", unit::square_foot},
      {"m²", unit::square_meter},
      {"m2", unit::square_meter},

      {"ft³", unit::cubic_foot},
      {"ft3", unit::cubic_foot},
      {"cu ft", unit::cubic_foot},
      {"yd³", unit::cubic_yard},
      {"yd3", unit::cubic_yard},
      {"cu yd", unit::cubic_yard},
      {"m³", unit::cubic_meter},
      {"m3", unit::cubic_meter},

      {"ft/s", unit::foot_per_second},
      {"fps", unit::foot_per_second},
      {"m/s", unit::meter_per_second},
      {"mph", unit::mile_per_hour},
      {"km/h", unit::kilometer_per_hour},

      {"ft³/s", unit::cubic_foot_per_second},
      {"ft3/s", unit::cubic_foot_per_second},
      {"cfs", unit::cubic_foot_per_second},
      {"m³/s", unit::cubic_meter_per_second},
      {"m3/s", unit::cubic_meter_per_second},

      {"ft²/s", unit::square_foot_per_second},
      {"ft2/s", unit::square_foot_per_second},
      {"cfs/ft", unit::square_foot_per_second},
      {"m²/s", unit::square_meter_per_second},
      {"m2/s", unit::square_meter_per_second},

      {"ft/s²", unit::foot_per_second_squared},
      {"ft/s2", unit::foot_per_second_squared},
      {"m/s²", unit::meter_per_second_squared},
      {"m/s2", unit::meter_per_second_squared},

      {"lb/ft²", unit::pound_per_square_foot},
      {"lb/ft2", unit::pound_per_square_foot},
      {"psf", unit::pound_per_square_foot},
      {"N/m²", unit::pascal},
      {"N/m2", unit::pascal},
      {"Pa", unit::pascal},
      {"MPa", unit::megapascal},
      {"psi", unit::pound_per_square_inch},

      {"lb/ft³", unit::pound_mass_per_cubic_foot},
      {"lb/ft3", unit::pound_mass_per_cubic_foot},
      {"pcf", unit::pound_mass_per_cubic_foot},
      {"kg/m³", unit::kilogram_per_cubic_meter},
      {"kg/m3", unit::kilogram_per_cubic_meter},

      {"lb/ft³", unit::pound_per_cubic_foot},
      {"lb/ft3", unit::pound_per_cubic_foot},
      {"pcf", unit::pound_per_cubic_foot},
      {"N/m³", unit::newton_per_cubic_meter},
      {"N/m3", unit::newton_per_cubic_meter},
      {"kN/m³", unit::kilonewton_per_cubic_meter},
      {"kN/m3", unit::kilonewton_per_cubic_meter},

      {"lb", unit::pound},
      {"lb.", unit::pound},
      {"lbs", unit::pound},
      {"ton", unit::short_ton},
      {"tons", unit::short_ton},
      {"short ton", unit::short_ton},
      {"short tons", unit::short_ton},
      {"kg", unit::kilogram},
      {"t", unit::tonne},
      {"tonne", unit::tonne},
      {"tonnes", unit::tonne},

      {"°", unit::degree},
      {"deg", unit::degree},
      {"degrees", unit::degree},
      {"rad", unit::radian},

      {"ft/ft", unit::rise_per_run},
      {"m/m", unit::rise_per_run},
      {"%", unit::percent_slope},

      {"s", unit::second},
      {"second", unit::second},
      {"seconds", unit::second},
      {"min", unit::minute},
      {"minute", unit::minute},
      {"minutes", unit::minute},
      {"h", unit::hour},
      {"hour", unit::hour},
      {"hours", unit::hour},

      {"s⁻¹", unit::per_second},
      {"s-1", unit::per_second},
      {"/s", unit::per_second},

      {"%", unit::percent},
  };
  return spellings;
}

const std::vector<UnitSpelling>& unit_spellings(QuantityKind kind) {
  static const auto by_kind = [] {
    std::vector<std::vector<UnitSpelling>> spellings(
        static_cast<std::size_t>(QuantityKind::dimensionless) + 1);
    for (const auto& entry : unit_spellings()) {
      spellings[static_cast<std::size_t>(entry.unit.kind)].push_back(entry);
    }
    return spellings;
  }();
  return by_kind[static_cast<std::size_t>(kind)];
}

std::string allowed_units(QuantityKind kind) {
  std::string units;
  const auto add = [&](std::string_view symbol) {
    if (!units.empty()) units += ", ";
    units += symbol;
  };
  if (kind == QuantityKind::slope || kind == QuantityKind::dimensionless) add("no unit");
  for (const auto& [spelling, unit] : unit_spellings(kind)) {
    if (spelling == unit.symbol || unit.symbol.empty()) add(spelling);
  }
  if (kind == QuantityKind::slope || kind == QuantityKind::angle) add("1V:2.5H");
  return units;
}

}  // namespace proofstone
