#pragma once

#include <optional>
#include <string>

#include "engine/method/typed_method.h"

namespace proofstone {

/// What the water meets where general scour is asked for.
enum class ScourSituation {
  straight,
  moderate_bend,
  severe_bend,
  right_angle_bend,
  vertical_wall,
  pier_nose,
  guide_bank_nose,
  dam_across_river,
};

/// What the factor multiplies. The two are different calculations and agree only where the existing
/// depth equals the regime depth; never exchange their factors.
enum class RegimeProcedure {
  below_existing_bed,  ///< scour below the bed = Z·d (USBR 1984; NRCS)
  from_water_level,    ///< scour below the bed = Zmax·d − existing depth (the formulas' authors)
};

/// The part that the regime formulas of general scour have in common.
struct RegimeScourInputs {
  ScourSituation situation = ScourSituation::straight;
  RegimeProcedure procedure = RegimeProcedure::below_existing_bed;
  std::optional<Dimensionless> factor;   ///< in place of the tabulated Z
  std::optional<Length> existing_depth;  ///< mean, at the design flow
};

/// Z of one formula by situation. Where a range is printed its upper end stands; nothing where the
/// table states none.
struct RegimeFactors {
  std::optional<double> straight;
  std::optional<double> moderate_bend;
  std::optional<double> severe_bend;
  std::optional<double> right_angle_bend;
  std::optional<double> vertical_wall;
  std::optional<double> pier_nose;
  std::optional<double> guide_bank_nose;
  std::optional<double> dam_across_river;

  std::optional<double> of(ScourSituation situation) const;
};

struct RegimeScourResult {
  Length regime_depth;
  Dimensionless factor;
  Length scour;  ///< below the existing bed; never negative
};

/// From the regime depth to scour below the bed. Problems: the table states no Z for the situation
/// ("no-published-factor"); the procedure from the water level lacks its factor or the existing
/// depth ("missing-input").
Expected<RegimeScourResult> scour_from_regime(Length regime_depth, const RegimeScourInputs& inputs,
                                              const RegimeFactors& table, Steps& steps);

/// Where the two procedures stand, for descriptions.
std::vector<Source> regime_sources(const std::string& formula);
std::vector<std::string> regime_cautions();

/// Describes the common inputs and outputs to a method whose Inputs derive from RegimeScourInputs.
template <class Inputs, class Result>
void describe_regime(TypedMethod<Inputs, Result>& method) {
  method.choice(
      {"situation", "Z", "what the water meets"},
      static_cast<ScourSituation Inputs::*>(&Inputs::situation),
      {ChoiceOption<ScourSituation>{ScourSituation::straight, "straight", "a straight reach"},
       {ScourSituation::moderate_bend, "moderate-bend", "a moderate bend"},
       {ScourSituation::severe_bend, "severe-bend", "a severe bend"},
       {ScourSituation::right_angle_bend, "right-angle-bend", "a right-angle bend"},
       {ScourSituation::vertical_wall, "vertical-wall", "a vertical rock bank or wall"},
       {ScourSituation::pier_nose, "pier-nose", "the nose of a pier"},
       {ScourSituation::guide_bank_nose, "guide-bank-nose", "the nose of a guide bank"},
       {ScourSituation::dam_across_river, "dam-across-river",
        "a small dam or control across the river"}});
  method.choice(
      {"procedure", "", "what the factor multiplies, and from where scour is counted"},
      static_cast<RegimeProcedure Inputs::*>(&Inputs::procedure),
      {ChoiceOption<RegimeProcedure>{RegimeProcedure::below_existing_bed, "below-existing-bed",
                                     "Z times the regime depth, below the existing bed"},
       {RegimeProcedure::from_water_level, "from-water-level",
        "a factor of 1 or more times the regime depth, below the water, less the existing depth"}});
  method.optional({"factor", "Z", "factor in place of the tabulated one"},
                  static_cast<std::optional<Dimensionless> Inputs::*>(&Inputs::factor),
                  unit::number, AllowedRange::positive_to(5), "the table of the formula");
  method.optional({"existing_depth", "d_e", "existing mean depth at the design flow"},
                  static_cast<std::optional<Length> Inputs::*>(&Inputs::existing_depth), unit::foot,
                  AllowedRange::positive_to(200),
                  "not needed when scour is counted from the existing bed");
  method.output({"regime_depth", "d", "depth the formula gives the flow"}, &Result::regime_depth,
                unit::foot);
  method.output({"factor", "Z", "factor used"}, &Result::factor, unit::number);
  method.output({"scour", "d_s", "general scour below the existing bed"}, &Result::scour,
                unit::foot);
}

}  // namespace proofstone
