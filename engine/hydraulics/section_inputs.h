#pragma once

#include <vector>

#include "engine/hydraulics/section_flow.h"
#include "engine/method/typed_method.h"

namespace proofstone {

/// A section as the inputs of a method give it: lists of equal length, left to right.
struct SectionInputs {
  std::vector<Length> stations;
  std::vector<Length> elevations;
  /// One for each point, valid up to the next point, or one for all.
  std::vector<Dimensionless> roughness;
  std::vector<Length> divisions;
  CompositeRoughness composite = CompositeRoughness::horton;
};

/// The section of the inputs, or what is wrong with the lists.
Expected<Section> section_of(const SectionInputs& inputs);

/// Describes the ground of a section to a method whose inputs derive from SectionInputs.
template <class Inputs, class Result>
void describe_ground(TypedMethod<Inputs, Result>& method) {
  using Lengths = std::vector<Length> Inputs::*;
  using Numbers = std::vector<Dimensionless> Inputs::*;
  method.required_list({"stations", "x", "stations of the surveyed points, from left to right"},
                       static_cast<Lengths>(&Inputs::stations), unit::foot, AllowedRange::any());
  method.required_list({"elevations", "z", "elevations of the same points"},
                       static_cast<Lengths>(&Inputs::elevations), unit::foot, AllowedRange::any());
  method.required_list(
      {"roughness", "n", "Manning's n from each point to the next; one value stands for all"},
      static_cast<Numbers>(&Inputs::roughness), unit::number, AllowedRange::between(0.005, 0.5));
}

/// Describes how the section is divided and how roughness inside a part is put together.
template <class Inputs, class Result>
void describe_division(TypedMethod<Inputs, Result>& method) {
  method.optional_list({"divisions", "", "stations of vertical division lines, such as bank tops"},
                       static_cast<std::vector<Length> Inputs::*>(&Inputs::divisions), unit::foot,
                       AllowedRange::any(), "one undivided section");
  method.choice({"composite", "", "how differing roughness inside one part is put together"},
                static_cast<CompositeRoughness Inputs::*>(&Inputs::composite),
                {ChoiceOption<CompositeRoughness>{CompositeRoughness::horton, "horton",
                                                  "equal velocity in every piece"},
                 {CompositeRoughness::pavlovskii, "pavlovskii", "resisting forces add"},
                 {CompositeRoughness::lotter, "lotter", "discharges add"}});
}

}  // namespace proofstone
