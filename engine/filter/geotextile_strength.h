#pragma once

#include <array>
#include <string>

#include "engine/filter/geotextile_filter.h"

namespace proofstone {

struct GeotextileStrengthInputs {
  Mass stone_mass;  ///< of the largest stones laid on the fabric
  Length drop_height = Length::feet(3);
  Fabric fabric = Fabric::nonwoven;
  enum class Bedding { no, yes } bedding = Bedding::no;  ///< a layer between fabric and rock
};

struct GeotextileStrengthResult {
  Dimensionless strength_class;  ///< 1 strongest, 3 weakest
};

/// Least strengths of a class in newtons, for fabrics that stretch less than 50 % before they break
/// and for those that stretch more.
struct StrengthClass {
  int number;
  std::array<double, 2> grab;
  std::array<double, 2> seam;
  std::array<double, 2> tear;  ///< of the first, 250 N where woven of monofilament in Class 2
  std::array<double, 2> puncture;
};

/// The three classes of AASHTO M 288 (from memory).
const std::array<StrengthClass, 3>& strength_classes();

/// "grab 900 N, sewn seam 810 N, tear 350 N, puncture 1925 N" of a class for a kind of fabric.
std::string strength_text(int strength_class, Fabric fabric);

/// Strength class of a geotextile under permanent erosion control.
Expected<GeotextileStrengthResult> geotextile_strength(const GeotextileStrengthInputs& in,
                                                       Steps& steps);

/// The same by name: "geotextile-strength".
const Method& geotextile_strength_method();

}  // namespace proofstone
