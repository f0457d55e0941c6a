#pragma once

#include <optional>

namespace proofstone {

/// The curves of FHWA HEC-15 3rd ed. (2005) chs. 3 and 6 that its shear-based lining is made of.
/// Doubles are ratios and, for the angle arguments, radians.
namespace hec15 {

/// K1 by the side slope Z (horizontal over vertical).
double side_shear_factor(double z);
/// K2 = √(1 − sin²θ/sin²φ); nothing where the side is as steep as the rock's repose.
std::optional<double> side_stability_factor(double theta, double phi);
/// Kb by Rc/T.
double bend_factor(double radius_over_width);
/// F* and SF by particle Reynolds number.
struct Shields {
  double f_star;
  double safety_factor;
};
Shields shields(double particle_reynolds);
/// The one size D at which D = (SF/F*)·`shear_size`, F* and SF being those of D itself:
/// `reynolds_per_size`·D is its particle Reynolds number. SF/F* falls as D grows, so that every
/// larger size is enough too. Arguments positive; the result in the length of `shear_size`.
double sufficient_size(double shear_size, double reynolds_per_size);
/// One size tried on one side slope; lengths in one unit of choice.
struct SteepTrial {
  double k1 = 1;
  double d_s = 0;  ///< Kb·d·S, a length
  double slope = 0;
  double theta = 0;
  double phi = 0;
  double specific_gravity = 2.65;
  double d50 = 0;
  Shields shields{};
};
/// Δ of the steep form (eq. 6.11), K1 within it; nothing where no rock of that size can hold (the
/// moments cannot balance).
std::optional<double> steep_factor(const SteepTrial& trial);

}  // namespace hec15

}  // namespace proofstone
