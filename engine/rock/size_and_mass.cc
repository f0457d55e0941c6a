#include "engine/rock/size_and_mass.h"

#include <cmath>

namespace proofstone {
namespace {

/// k in mass = k·ρ·D³.
double volume_factor(SizeMeaning meaning) {
  constexpr double pi = 3.14159265358979323846;
  switch (meaning) {
    case SizeMeaning::sphere:
      return pi / 6;
    case SizeMeaning::intermediate_axis:
    case SizeMeaning::sieve:
      break;
  }
  return 0.85;
}

}  // namespace

Mass stone_mass(Length size, SizeMeaning meaning, Density rock) {
  const double d = size.meters();
  return Mass::kilograms(volume_factor(meaning) * rock.kilograms_per_cubic_meter() * d * d * d);
}

Length stone_size(Mass mass, SizeMeaning meaning, Density rock) {
  const double volume = mass.kilograms() / rock.kilograms_per_cubic_meter();
  return Length::meters(std::pow(volume / volume_factor(meaning), 1.0 / 3));
}

Length convert_size(Length size, SizeMeaning from, SizeMeaning to) {
  if (from == to) return size;
  return size * std::pow(volume_factor(from) / volume_factor(to), 1.0 / 3);
}

}  // namespace proofstone
