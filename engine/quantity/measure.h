#pragma once

#include <string>
#include <string_view>

#include "engine/finding/problem.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// A quantity whose kind is known only at run time: what documents, steps and findings carry.
struct Measure {
  double si = 0;
  QuantityKind kind = QuantityKind::dimensionless;

  template <class Q>
  static constexpr Measure of(Q quantity) {
    return {quantity.si(), Q::kind};
  }
  /// Precondition: the kind is Q's. Callers check first; see `as`.
  template <class Q>
  constexpr Q unchecked_as() const {
    return Q::from_si(si);
  }
};

inline Measure measure(double pure_number) { return {pure_number, QuantityKind::dimensionless}; }
template <class Q>
constexpr Measure measure(Q quantity) {
  return Measure::of(quantity);
}

/// Reads "12 in", "0.45 m", "7.1 ft/s", "165 lb/ft³", "1V:2.5H", "2.5H:1V", "33.7°", "2 %", "2.65".
///
/// Spaces around and a space between number and unit do not matter; "US survey ft" is a unit of its
/// own. Strict: one finite number in plain or exponent notation with a decimal point, then one unit
/// of the wanted kind; only dimensionless and slope may stand without a unit. A decimal comma, two
/// units ("5 ft 3 in"), a missing unit, NaN, an infinity or a unit of another kind is a Problem
/// that says what is allowed. Codes: empty-quantity, text-too-long, not-utf-8, not-a-number,
/// not-finite, number-too-large, number-too-small, decimal-comma, thousands-separator, fraction,
/// two-units, missing-unit, unknown-unit, wrong-kind, not-a-slope, ambiguous-slope. "lb/ft³" is a
/// mass or a weight for each volume, as `kind` asks.
Expected<Measure> parse_measure(std::string_view text, QuantityKind kind);

/// As parse_measure, for a kind known at compile time.
template <class Q>
Expected<Q> parse_quantity(std::string_view text) {
  auto parsed = parse_measure(text, Q::kind);
  if (!parsed) return parsed.problems();
  return parsed->template unchecked_as<Q>();
}

/// What a reader sees: a rounded number in one unit. `value` is unrounded in that unit.
struct DisplayedMeasure {
  double value = 0;
  std::string unit;
  std::string text;
};

/// How a length is read in the trade: rock in inches or millimetres, the ground in feet or metres,
/// the grains of a soil or a filter in millimetres in either system, as soil tests report them.
enum class LengthUse { ground, rock, grain };

/// Shows a measure in a unit system with the rounding of the trade: rock to 0.1 in or 1 mm, depths
/// and levels to 0.01 ft or 0.01 m, velocity to 0.1 ft/s or 0.01 m/s, shear to 0.01 lb/ft² or
/// 1 N/m², other values to three significant figures. What is too small for its step keeps two
/// figures rather than read 0. Volumes from 1 yd³ are in yd³, masses from 10 tons in tons (from
/// 10 t in tonnes), durations from 2 min in min and from 2 h in h. `system` is one of the two;
/// `both` is read as SI.
DisplayedMeasure display(Measure measure, UnitSystem system, LengthUse use = LengthUse::ground);

/// A text that parse_measure reads back to the same double: for documents and programs.
std::string exact_text(Measure measure, const Unit& unit);

/// A number at a given number of significant figures, never in exponent notation between 1e-4 and
/// 1e7, without trailing noise.
std::string significant(double value, int figures);

}  // namespace proofstone
