#include "engine/sizing/shear_lining_place.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "engine/hydraulics/bracketed_root.h"
#include "engine/quantity/quantity.h"
#include "engine/sizing/hec15_curves.h"

namespace proofstone {
namespace {

constexpr double kinematic_viscosity = 1.217e-5;  // ft²/s, about 60 °F
constexpr double mild_up_to = 0.05;
constexpr double steep_from = 0.10;
constexpr double steep_side_z = 3;  // sides steeper than 3H:1V need rock of their own
constexpr double trial_step = 1.01;
constexpr double largest_trial = 30;              // ft
constexpr double least_safety_over_shields = 10;  // SF/F* at the greatest Re: 1.5/0.15
constexpr double no_size = std::numeric_limits<double>::infinity();

/// Kb·d·S/(SG−1): the size asked for, but for SF/F*.
double shear_size(const ShearLiningPlace& place) {
  return place.kb * place.depth * place.slope / (place.specific_gravity - 1);
}

/// D50 of the bottom that the mild form asks for at a trial size.
double bottom_required(const ShearLiningPlace& place, double trial) {
  const auto at = hec15::shields(place.particle_reynolds(trial));
  return at.safety_factor * shear_size(place) / at.f_star;
}

/// The size of the bottom that the mild form is content with.
double bottom_size(const ShearLiningPlace& place) {
  return hec15::sufficient_size(shear_size(place), place.particle_reynolds(1));
}

/// D50 that the steep form asks for at a trial size. Δ holds the side's own shear and slope, so it
/// takes the place of both K1 and K2.
double steep_required(const ShearLiningPlace& place, double trial) {
  return steep_factor_at(place, trial) * bottom_required(place, trial);
}

/// No size below this is enough, whatever is tried: the mild form's own answer, or Δ and SF/F* at
/// their least.
double scan_from(const ShearLiningPlace& place) {
  if (place.uses_mild()) return place.side_over_bottom() * bottom_size(place);
  const double alpha = std::atan(place.slope);
  const double least_factor = place.k1 * (1 + std::sin(alpha)) / (2 * std::cos(place.theta));
  return least_factor * least_safety_over_shields * shear_size(place);
}

/// The smallest size that is not smaller than what is required at that size, trying upward.
std::optional<double> smallest_sufficient(const ShearLiningPlace& place) {
  double below = 0;
  for (double trial = scan_from(place); trial <= largest_trial;) {
    if (trial >= required_here(place, trial)) {
      return turning_point(below, trial,
                           [&](double size) { return size >= required_here(place, size); });
    }
    below = trial;
    trial *= trial_step;
  }
  return std::nullopt;
}

}  // namespace

double ShearLiningPlace::z() const { return 1 / std::tan(theta); }

bool ShearLiningPlace::uses_mild() const { return slope < steep_from; }

bool ShearLiningPlace::uses_steep() const { return slope > mild_up_to; }

double ShearLiningPlace::side_over_bottom() const {
  if (!on_bank() || z() > steep_side_z - 1e-9) return 1;
  return std::max(1.0, k1 / k2);
}

double ShearLiningPlace::particle_reynolds(double d50) const {
  return std::sqrt(g_us * depth * slope) * d50 / kinematic_viscosity;
}

double steep_factor_at(const ShearLiningPlace& place, double trial) {
  hec15::SteepTrial steep;
  steep.k1 = place.k1;
  steep.d_s = place.kb * place.depth * place.slope;
  steep.slope = place.slope;
  steep.theta = place.theta;
  steep.phi = place.phi;
  steep.specific_gravity = place.specific_gravity;
  steep.d50 = trial;
  steep.shields = hec15::shields(place.particle_reynolds(trial));
  return hec15::steep_factor(steep).value_or(no_size);
}

double required_here(const ShearLiningPlace& place, double trial) {
  double required = 0;
  if (place.uses_mild()) {
    required = place.side_over_bottom() * bottom_required(place, trial / place.side_over_bottom());
  }
  if (place.uses_steep()) required = std::max(required, steep_required(place, trial));
  return required;
}

std::optional<double> size_here(const ShearLiningPlace& place) {
  if (place.on_bank() && place.uses_steep()) return smallest_sufficient(place);
  // The mild form, and the steep form on a level bottom where Δ is 1.
  const double size = place.side_over_bottom() * bottom_size(place);
  return size <= largest_trial ? std::optional<double>(size) : std::nullopt;
}

std::optional<double> failing_again_above(const ShearLiningPlace& place, double found) {
  if (!(place.on_bank() && place.uses_steep())) return std::nullopt;
  for (double trial = found * trial_step; trial <= largest_trial;) {
    if (trial < required_here(place, trial)) return trial;
    trial *= trial_step;
  }
  return std::nullopt;
}

}  // namespace proofstone
