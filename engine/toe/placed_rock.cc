#include "engine/toe/placed_rock.h"

#include "engine/hydraulics/water_weight.h"

namespace proofstone {

Density bulk_density_of(const PlacedRock& rock) {
  if (rock.bulk_density) return *rock.bulk_density;
  return rock.specific_gravity.number() * (1 - rock.voids.number()) * water_density;
}

Mass placed_mass(Volume volume, const PlacedRock& rock, Steps& steps) {
  const Density bulk = bulk_density_of(rock);
  const auto mass = Mass::pounds(volume.cubic_feet() * bulk.pounds_mass_per_cubic_foot());
  if (rock.bulk_density) {
    steps.given("ρ_b", "mass of placed rock for each volume it fills, stated", measure(bulk));
  } else {
    steps.given("Gs", "specific gravity of the rock", measure(rock.specific_gravity));
    steps.given("n", "share of voids", measure(rock.voids));
    steps.computed("ρ_b", "mass of placed rock for each volume it fills", "Gs·(1 − n)·62.4 lb/ft³",
                   measure(bulk));
  }
  steps.computed("M", "mass of that rock", "V·ρ_b", measure(mass));
  return mass;
}

PlacedQuantity quantity_of(Area cross_section, const PlacedRock& rock, Steps& steps) {
  PlacedQuantity quantity;
  quantity.volume = Volume::cubic_feet(cross_section.square_feet() * rock.toe_length.feet());
  steps.given("L", "length of toe", measure(rock.toe_length));
  steps.computed("V", "volume of rock over that length", "A·L", measure(quantity.volume));
  quantity.mass = placed_mass(quantity.volume, rock, steps);
  return quantity;
}

}  // namespace proofstone
