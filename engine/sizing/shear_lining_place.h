#pragma once

#include <optional>

namespace proofstone {

/// What the requirement at a trial size depends on, in feet and radians.
struct ShearLiningPlace {
  double depth = 0;  ///< greatest, ft
  double slope = 0;
  double kb = 1;     ///< bend factor on shear
  double theta = 0;  ///< side slope; 0 on a bottom
  double phi = 0;    ///< angle of repose of the rock
  double k1 = 1;     ///< side shear over bottom shear
  double k2 = 1;     ///< stability of rock on the side over rock on the bottom
  double specific_gravity = 2.65;

  double z() const;  ///< horizontal over vertical
  bool on_bank() const { return theta > 0; }
  bool uses_mild() const;
  bool uses_steep() const;
  /// What a side needs over the bottom. Where K1/K2 is below 1, or the side is flatter than
  /// 3H:1V, the side is built of the bottom's rock.
  double side_over_bottom() const;
  double particle_reynolds(double d50) const;
};

/// Δ of the steep form when rock of size `trial` (ft) lies there; infinite where the moments cannot
/// balance.
double steep_factor_at(const ShearLiningPlace& place, double trial);

/// What the procedure asks for (ft) when rock of size `trial` lies there. On a bank in the mild
/// form the side gets K1/K2 times what the bottom gets.
double required_here(const ShearLiningPlace& place, double trial);

/// The smallest size (ft) that is not smaller than what is required at that size; nothing where
/// none up to 30 ft is.
std::optional<double> size_here(const ShearLiningPlace& place);

/// The first size above `found` that is again smaller than what is required at it, if there is one:
/// only the steep form on a side can refuse it.
std::optional<double> failing_again_above(const ShearLiningPlace& place, double found);

}  // namespace proofstone
