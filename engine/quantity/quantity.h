#pragma once

#include <compare>

#include "engine/quantity/unit.h"

namespace proofstone {

/// A physical quantity of one kind, stored in SI. Kinds never mix: a velocity cannot be passed for
/// a length, and a bare number is never a quantity. Construct through the named units of the kind
/// (`Length::feet(2)`) and read back the same way (`.inches()`).
///
/// Arithmetic keeps the kind: sums, differences and multiples. Anything that would change the kind
/// belongs in a formula body, which takes plain doubles in the published units.
template <class Derived>
class Quantity {
 public:
  constexpr double si() const { return si_; }
  static constexpr Derived from_si(double value) {
    Derived result;
    result.si_ = value;
    return result;
  }
  /// The value in any unit of the same kind. Precondition: `unit.kind == Derived::kind`.
  constexpr double in(const Unit& unit) const { return si_ / unit.si_factor; }
  static constexpr Derived of(double value, const Unit& unit) {
    return from_si(value * unit.si_factor);
  }

  friend constexpr Derived operator+(Derived a, Derived b) { return from_si(a.si_ + b.si_); }
  friend constexpr Derived operator-(Derived a, Derived b) { return from_si(a.si_ - b.si_); }
  friend constexpr Derived operator*(double factor, Derived a) { return from_si(factor * a.si_); }
  friend constexpr Derived operator*(Derived a, double factor) { return from_si(factor * a.si_); }
  friend constexpr Derived operator/(Derived a, double divisor) { return from_si(a.si_ / divisor); }
  /// Ratio of two quantities of one kind.
  friend constexpr double operator/(Derived a, Derived b) { return a.si_ / b.si_; }
  friend constexpr auto operator<=>(Derived a, Derived b) { return a.si_ <=> b.si_; }
  friend constexpr bool operator==(Derived a, Derived b) { return a.si_ == b.si_; }

 private:
  double si_ = 0;
};

/// A distance or a size. The survey foot (1200/3937 m) is a unit of its own.
class Length : public Quantity<Length> {
 public:
  static constexpr QuantityKind kind = QuantityKind::length;
  static constexpr Length meters(double v) { return of(v, unit::meter); }
  static constexpr Length millimeters(double v) { return of(v, unit::millimeter); }
  static constexpr Length feet(double v) { return of(v, unit::foot); }
  static constexpr Length survey_feet(double v) { return of(v, unit::survey_foot); }
  static constexpr Length inches(double v) { return of(v, unit::inch); }
  static constexpr Length miles(double v) { return of(v, unit::mile); }
  constexpr double meters() const { return in(unit::meter); }
  constexpr double millimeters() const { return in(unit::millimeter); }
  constexpr double feet() const { return in(unit::foot); }
  constexpr double inches() const { return in(unit::inch); }
  constexpr double miles() const { return in(unit::mile); }
};

class Area : public Quantity<Area> {
 public:
  static constexpr QuantityKind kind = QuantityKind::area;
  static constexpr Area square_meters(double v) { return of(v, unit::square_meter); }
  static constexpr Area square_feet(double v) { return of(v, unit::square_foot); }
  constexpr double square_meters() const { return in(unit::square_meter); }
  constexpr double square_feet() const { return in(unit::square_foot); }
};

class Volume : public Quantity<Volume> {
 public:
  static constexpr QuantityKind kind = QuantityKind::volume;
  static constexpr Volume cubic_meters(double v) { return of(v, unit::cubic_meter); }
  static constexpr Volume cubic_feet(double v) { return of(v, unit::cubic_foot); }
  static constexpr Volume cubic_yards(double v) { return of(v, unit::cubic_yard); }
  constexpr double cubic_meters() const { return in(unit::cubic_meter); }
  constexpr double cubic_feet() const { return in(unit::cubic_foot); }
  constexpr double cubic_yards() const { return in(unit::cubic_yard); }
};

class Velocity : public Quantity<Velocity> {
 public:
  static constexpr QuantityKind kind = QuantityKind::velocity;
  static constexpr Velocity meters_per_second(double v) { return of(v, unit::meter_per_second); }
  static constexpr Velocity feet_per_second(double v) { return of(v, unit::foot_per_second); }
  static constexpr Velocity miles_per_hour(double v) { return of(v, unit::mile_per_hour); }
  constexpr double meters_per_second() const { return in(unit::meter_per_second); }
  constexpr double feet_per_second() const { return in(unit::foot_per_second); }
  constexpr double miles_per_hour() const { return in(unit::mile_per_hour); }
};

class Discharge : public Quantity<Discharge> {
 public:
  static constexpr QuantityKind kind = QuantityKind::discharge;
  static constexpr Discharge cubic_meters_per_second(double v) {
    return of(v, unit::cubic_meter_per_second);
  }
  static constexpr Discharge cubic_feet_per_second(double v) {
    return of(v, unit::cubic_foot_per_second);
  }
  constexpr double cubic_meters_per_second() const { return in(unit::cubic_meter_per_second); }
  constexpr double cubic_feet_per_second() const { return in(unit::cubic_foot_per_second); }
};

/// Discharge for each unit of width.
class UnitDischarge : public Quantity<UnitDischarge> {
 public:
  static constexpr QuantityKind kind = QuantityKind::unit_discharge;
  static constexpr UnitDischarge square_meters_per_second(double v) {
    return of(v, unit::square_meter_per_second);
  }
  static constexpr UnitDischarge square_feet_per_second(double v) {
    return of(v, unit::square_foot_per_second);
  }
  constexpr double square_meters_per_second() const { return in(unit::square_meter_per_second); }
  constexpr double square_feet_per_second() const { return in(unit::square_foot_per_second); }
};

class Acceleration : public Quantity<Acceleration> {
 public:
  static constexpr QuantityKind kind = QuantityKind::acceleration;
  static constexpr Acceleration meters_per_second_squared(double v) {
    return of(v, unit::meter_per_second_squared);
  }
  static constexpr Acceleration feet_per_second_squared(double v) {
    return of(v, unit::foot_per_second_squared);
  }
  constexpr double meters_per_second_squared() const { return in(unit::meter_per_second_squared); }
  constexpr double feet_per_second_squared() const { return in(unit::foot_per_second_squared); }
};

/// Force for each unit of area: the shear of water on a bed or bank.
class Stress : public Quantity<Stress> {
 public:
  static constexpr QuantityKind kind = QuantityKind::stress;
  static constexpr Stress pascals(double v) { return of(v, unit::pascal); }
  static constexpr Stress pounds_per_square_foot(double v) {
    return of(v, unit::pound_per_square_foot);
  }
  constexpr double pascals() const { return in(unit::pascal); }
  constexpr double pounds_per_square_foot() const { return in(unit::pound_per_square_foot); }
};

/// Mass for each unit of volume.
class Density : public Quantity<Density> {
 public:
  static constexpr QuantityKind kind = QuantityKind::density;
  static constexpr Density kilograms_per_cubic_meter(double v) {
    return of(v, unit::kilogram_per_cubic_meter);
  }
  static constexpr Density pounds_mass_per_cubic_foot(double v) {
    return of(v, unit::pound_mass_per_cubic_foot);
  }
  constexpr double kilograms_per_cubic_meter() const { return in(unit::kilogram_per_cubic_meter); }
  constexpr double pounds_mass_per_cubic_foot() const {
    return in(unit::pound_mass_per_cubic_foot);
  }
};

/// Weight (force) for each unit of volume.
class UnitWeight : public Quantity<UnitWeight> {
 public:
  static constexpr QuantityKind kind = QuantityKind::unit_weight;
  static constexpr UnitWeight newtons_per_cubic_meter(double v) {
    return of(v, unit::newton_per_cubic_meter);
  }
  static constexpr UnitWeight pounds_per_cubic_foot(double v) {
    return of(v, unit::pound_per_cubic_foot);
  }
  constexpr double newtons_per_cubic_meter() const { return in(unit::newton_per_cubic_meter); }
  constexpr double pounds_per_cubic_foot() const { return in(unit::pound_per_cubic_foot); }
};

/// Mass; what a scale at the quarry shows. A "ton" is the short ton of the US trade and a "tonne"
/// the metric one.
class Mass : public Quantity<Mass> {
 public:
  static constexpr QuantityKind kind = QuantityKind::mass;
  static constexpr Mass kilograms(double v) { return of(v, unit::kilogram); }
  static constexpr Mass pounds(double v) { return of(v, unit::pound); }
  static constexpr Mass short_tons(double v) { return of(v, unit::short_ton); }
  static constexpr Mass tonnes(double v) { return of(v, unit::tonne); }
  constexpr double kilograms() const { return in(unit::kilogram); }
  constexpr double pounds() const { return in(unit::pound); }
  constexpr double short_tons() const { return in(unit::short_ton); }
  constexpr double tonnes() const { return in(unit::tonne); }
};

/// An angle, stored in radians. A bank written "1V:2.5H" is an Angle or a Slope, as the place asks.
class Angle : public Quantity<Angle> {
 public:
  static constexpr QuantityKind kind = QuantityKind::angle;
  static constexpr Angle radians(double v) { return of(v, unit::radian); }
  static constexpr Angle degrees(double v) { return of(v, unit::degree); }
  constexpr double radians() const { return in(unit::radian); }
  constexpr double degrees() const { return in(unit::degree); }
};

/// Fall for each unit of horizontal length (ft/ft, m/m).
class Slope : public Quantity<Slope> {
 public:
  static constexpr QuantityKind kind = QuantityKind::slope;
  static constexpr Slope ratio(double v) { return of(v, unit::rise_per_run); }
  static constexpr Slope percent(double v) { return of(v, unit::percent_slope); }
  constexpr double ratio() const { return in(unit::rise_per_run); }
};

/// A length of time: a wave period, how long a wind blows.
class Duration : public Quantity<Duration> {
 public:
  static constexpr QuantityKind kind = QuantityKind::duration;
  static constexpr Duration seconds(double v) { return of(v, unit::second); }
  static constexpr Duration minutes(double v) { return of(v, unit::minute); }
  static constexpr Duration hours(double v) { return of(v, unit::hour); }
  constexpr double seconds() const { return in(unit::second); }
  constexpr double minutes() const { return in(unit::minute); }
  constexpr double hours() const { return in(unit::hour); }
};

/// So much for each second: the permittivity of a fabric, its conductivity over its thickness.
class Rate : public Quantity<Rate> {
 public:
  static constexpr QuantityKind kind = QuantityKind::rate;
  static constexpr Rate per_second(double v) { return of(v, unit::per_second); }
  constexpr double per_second() const { return in(unit::per_second); }
};

/// A pure number: a specific gravity, a coefficient, a Froude number, Manning's n by convention.
class Dimensionless : public Quantity<Dimensionless> {
 public:
  static constexpr QuantityKind kind = QuantityKind::dimensionless;
  static constexpr Dimensionless number(double v) { return of(v, unit::number); }
  constexpr double number() const { return in(unit::number); }
};

/// Angle of a bank from its slope and back; `slope` is vertical over horizontal.
Angle angle_of(Slope slope);
Slope slope_of(Angle angle);

/// Standard gravity, exactly 9.80665 m/s² (CGPM 1901).
inline constexpr Acceleration standard_gravity = Acceleration::meters_per_second_squared(9.80665);
inline constexpr double g_si = standard_gravity.meters_per_second_squared();
inline constexpr double g_us = standard_gravity.feet_per_second_squared();

}  // namespace proofstone
