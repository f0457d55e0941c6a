#pragma once

#include <optional>

#include "engine/method/typed_method.h"

namespace proofstone {

/// Rock as it lies: what turns a volume into a mass, and the length of toe asked for.
struct PlacedRock {
  std::optional<Density> bulk_density;  ///< stated; otherwise from the two below
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Dimensionless voids = Dimensionless::number(0.38);  ///< share of the volume between the stones
  Length toe_length = Length::feet(1);
};

/// Mass of rock for each volume it fills: as stated, or ρw·Gs·(1 − n) with water of 62.4 lb/ft³.
Density bulk_density_of(const PlacedRock& rock);

/// Rock of one cross-section over the length of the toe.
struct PlacedQuantity {
  Volume volume;
  Mass mass;
};
PlacedQuantity quantity_of(Area cross_section, const PlacedRock& rock, Steps& steps);

/// Mass of a volume that placed rock fills, voids and all.
Mass placed_mass(Volume volume, const PlacedRock& rock, Steps& steps);

template <class Inputs, class Result>
void describe_bulk_density(TypedMethod<Inputs, Result>& method) {
  method.optional({"bulk_density", "ρ_b", "mass of placed rock for each volume it fills"},
                  static_cast<std::optional<Density> Inputs::*>(&Inputs::bulk_density),
                  unit::pound_mass_per_cubic_foot, AllowedRange::between(50, 200),
                  "from specific gravity and voids");
  method.defaulted({"specific_gravity", "Gs", "specific gravity of the rock"},
                   static_cast<Dimensionless Inputs::*>(&Inputs::specific_gravity), unit::number,
                   AllowedRange::between(1.5, 4));
  method.defaulted({"voids", "n", "share of the placed volume between the stones, 0 to 1"},
                   static_cast<Dimensionless Inputs::*>(&Inputs::voids), unit::number,
                   AllowedRange::between(0, 0.7));
}

template <class Inputs, class Result>
void describe_placed_rock(TypedMethod<Inputs, Result>& method) {
  describe_bulk_density(method);
  method.defaulted({"toe_length", "L", "length of toe"},
                   static_cast<Length Inputs::*>(&Inputs::toe_length), unit::foot,
                   AllowedRange::positive_to(1e6));
}

template <class Inputs, class Result>
void describe_quantity(TypedMethod<Inputs, Result>& method) {
  method.output({"cross_section", "A", "volume of rock for each unit of toe length"},
                &Result::cross_section, unit::square_foot);
  method.output({"volume", "V", "volume of rock over the length of toe"}, &Result::volume,
                unit::cubic_foot);
  method.output({"mass", "M", "mass of rock over the length of toe"}, &Result::mass,
                unit::short_ton);
}

}  // namespace proofstone
