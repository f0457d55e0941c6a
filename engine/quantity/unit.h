#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace proofstone {

/// What a quantity measures. Kinds with the same dimension (angle, slope, number) stay apart.
enum class QuantityKind {
  length,
  area,
  volume,
  velocity,
  discharge,
  unit_discharge,
  acceleration,
  stress,
  density,
  unit_weight,
  mass,
  angle,
  slope,
  duration,
  rate,
  dimensionless,
};

/// The word for a kind as a reader would say it: "length", "unit weight".
std::string_view kind_name(QuantityKind kind);

/// Where a unit is at home; a display in one system never shows units of the other.
enum class UnitSystem { us_customary, si, both };

/// One unit of one kind. `value * si_factor` is the value in the SI unit of the kind. Factors are
/// exact by definition (international foot 0.3048 m, pound 0.45359237 kg, standard gravity
/// 9.80665 m/s²) and exact products of those, or quotients of such.
struct Unit {
  QuantityKind kind;
  double si_factor;
  std::string_view symbol;
  UnitSystem system;
};

namespace unit {

inline constexpr double meters_per_foot = 0.3048;
inline constexpr double kilograms_per_pound = 0.45359237;
inline constexpr double gravity = 9.80665;
inline constexpr double square_foot_factor = 0.09290304;
inline constexpr double cubic_foot_factor = 0.028316846592;
inline constexpr double newtons_per_pound = 4.4482216152605;

inline constexpr Unit meter{QuantityKind::length, 1, "m", UnitSystem::si};
inline constexpr Unit millimeter{QuantityKind::length, 0.001, "mm", UnitSystem::si};
inline constexpr Unit centimeter{QuantityKind::length, 0.01, "cm", UnitSystem::si};
inline constexpr Unit foot{QuantityKind::length, meters_per_foot, "ft", UnitSystem::us_customary};
inline constexpr Unit survey_foot{QuantityKind::length, 1200.0 / 3937.0, "US survey ft",
                                  UnitSystem::us_customary};
/// Twelve of them are one foot to the last bit, which 0.0254 would miss.
inline constexpr Unit inch{QuantityKind::length, meters_per_foot / 12, "in",
                           UnitSystem::us_customary};
inline constexpr Unit yard{QuantityKind::length, 0.9144, "yd", UnitSystem::us_customary};
inline constexpr Unit mile{QuantityKind::length, 1609.344, "mi", UnitSystem::us_customary};
inline constexpr Unit kilometer{QuantityKind::length, 1000, "km", UnitSystem::si};

inline constexpr Unit square_meter{QuantityKind::area, 1, "m²", UnitSystem::si};
inline constexpr Unit square_foot{QuantityKind::area, square_foot_factor, "ft²",
                                  UnitSystem::us_customary};

inline constexpr Unit square_yard{QuantityKind::area, 9 * square_foot_factor, "yd²",
                                  UnitSystem::us_customary};

inline constexpr Unit cubic_meter{QuantityKind::volume, 1, "m³", UnitSystem::si};
inline constexpr Unit cubic_foot{QuantityKind::volume, cubic_foot_factor, "ft³",
                                 UnitSystem::us_customary};
inline constexpr Unit cubic_yard{QuantityKind::volume, 0.764554857984, "yd³",
                                 UnitSystem::us_customary};

inline constexpr Unit meter_per_second{QuantityKind::velocity, 1, "m/s", UnitSystem::si};
inline constexpr Unit foot_per_second{QuantityKind::velocity, meters_per_foot, "ft/s",
                                      UnitSystem::us_customary};
inline constexpr Unit mile_per_hour{QuantityKind::velocity, 0.44704, "mph",
                                    UnitSystem::us_customary};
inline constexpr Unit kilometer_per_hour{QuantityKind::velocity, 1 / 3.6, "km/h", UnitSystem::si};

inline constexpr Unit cubic_meter_per_second{QuantityKind::discharge, 1, "m³/s", UnitSystem::si};
inline constexpr Unit cubic_foot_per_second{QuantityKind::discharge, cubic_foot_factor, "ft³/s",
                                            UnitSystem::us_customary};

inline constexpr Unit square_meter_per_second{QuantityKind::unit_discharge, 1, "m²/s",
                                              UnitSystem::si};
inline constexpr Unit square_foot_per_second{QuantityKind::unit_discharge, square_foot_factor,
                                             "ft²/s", UnitSystem::us_customary};

inline constexpr Unit meter_per_second_squared{QuantityKind::acceleration, 1, "m/s²",
                                               UnitSystem::si};
inline constexpr Unit foot_per_second_squared{QuantityKind::acceleration, meters_per_foot, "ft/s²",
                                              UnitSystem::us_customary};

inline constexpr Unit pascal{QuantityKind::stress, 1, "N/m²", UnitSystem::si};
inline constexpr Unit megapascal{QuantityKind::stress, 1e6, "MPa", UnitSystem::si};
inline constexpr Unit pound_per_square_inch{QuantityKind::stress,
                                            144 * newtons_per_pound / square_foot_factor, "psi",
                                            UnitSystem::us_customary};
inline constexpr Unit pound_per_square_foot{QuantityKind::stress,
                                            newtons_per_pound / square_foot_factor, "lb/ft²",
                                            UnitSystem::us_customary};

inline constexpr Unit kilogram_per_cubic_meter{QuantityKind::density, 1, "kg/m³", UnitSystem::si};
inline constexpr Unit pound_mass_per_cubic_foot{QuantityKind::density,
                                                kilograms_per_pound / cubic_foot_factor, "lb/ft³",
                                                UnitSystem::us_customary};

inline constexpr Unit newton_per_cubic_meter{QuantityKind::unit_weight, 1, "N/m³", UnitSystem::si};
inline constexpr Unit kilonewton_per_cubic_meter{QuantityKind::unit_weight, 1000, "kN/m³",
                                                 UnitSystem::si};
inline constexpr Unit pound_per_cubic_foot{QuantityKind::unit_weight,
                                           newtons_per_pound / cubic_foot_factor, "lb/ft³",
                                           UnitSystem::us_customary};

inline constexpr Unit kilogram{QuantityKind::mass, 1, "kg", UnitSystem::si};
inline constexpr Unit tonne{QuantityKind::mass, 1000, "t", UnitSystem::si};
inline constexpr Unit pound{QuantityKind::mass, kilograms_per_pound, "lb",
                            UnitSystem::us_customary};
inline constexpr Unit short_ton{QuantityKind::mass, 907.18474, "ton", UnitSystem::us_customary};

inline constexpr Unit radian{QuantityKind::angle, 1, "rad", UnitSystem::both};
inline constexpr Unit degree{QuantityKind::angle, 3.14159265358979323846 / 180, "°",
                             UnitSystem::both};

inline constexpr Unit rise_per_run{QuantityKind::slope, 1, "", UnitSystem::both};
inline constexpr Unit percent_slope{QuantityKind::slope, 0.01, "%", UnitSystem::both};

inline constexpr Unit second{QuantityKind::duration, 1, "s", UnitSystem::both};
inline constexpr Unit minute{QuantityKind::duration, 60, "min", UnitSystem::both};
inline constexpr Unit hour{QuantityKind::duration, 3600, "h", UnitSystem::both};

/// Permittivity of a fabric is published in it.
inline constexpr Unit per_second{QuantityKind::rate, 1, "s⁻¹", UnitSystem::both};

inline constexpr Unit number{QuantityKind::dimensionless, 1, "", UnitSystem::both};
inline constexpr Unit percent{QuantityKind::dimensionless, 0.01, "%", UnitSystem::both};

}  // namespace unit

/// Every unit with the spellings a reader accepts ("ft", "feet", "'" and so on).
struct UnitSpelling {
  std::string_view spelling;
  Unit unit;
};
const std::vector<UnitSpelling>& unit_spellings();

/// The spellings of the units of one kind, in the same order.
const std::vector<UnitSpelling>& unit_spellings(QuantityKind kind);

/// The units a kind is written in, comma separated, for messages: "m, mm, ft, in".
std::string allowed_units(QuantityKind kind);

}  // namespace proofstone
