#include "engine/scour/regime_scour.h"

#include <algorithm>

namespace proofstone {

namespace {

const char* const procedure_source =
    "USBR, Computing Degradation and Local Scour (1984), as used by NRCS NEH 654 TS14B (from "
    "memory; confirm)";
const char* const authors_source =
    "the formulas' authors, after Richards (2018), World Environmental and Water Resources "
    "Congress";

Expected<double> factor_of(const RegimeScourInputs& in, const RegimeFactors& table) {
  if (in.factor) return in.factor->number();
  if (in.procedure == RegimeProcedure::from_water_level) {
    return Problem{"missing-input",
                   "Counted from the water level the factor is another one than the tabulated Z, "
                   "and it must be stated.",
                   "", "/factor", "a number of at least 1"};
  }
  if (const auto z = table.of(in.situation)) return *z;
  return Problem{"no-published-factor",
                 "The table of this formula states no factor for this situation.", "", "/situation",
                 "another situation, or a factor of your own"};
}

}  // namespace

std::optional<double> RegimeFactors::of(ScourSituation situation) const {
  switch (situation) {
    case ScourSituation::straight:
      return straight;
    case ScourSituation::moderate_bend:
      return moderate_bend;
    case ScourSituation::severe_bend:
      return severe_bend;
    case ScourSituation::right_angle_bend:
      return right_angle_bend;
    case ScourSituation::vertical_wall:
      return vertical_wall;
    case ScourSituation::pier_nose:
      return pier_nose;
    case ScourSituation::guide_bank_nose:
      return guide_bank_nose;
    case ScourSituation::dam_across_river:
      return dam_across_river;
  }
  return std::nullopt;
}

Expected<RegimeScourResult> scour_from_regime(Length regime_depth, const RegimeScourInputs& inputs,
                                              const RegimeFactors& table, Steps& steps) {
  const auto z = factor_of(inputs, table);
  if (!z) return z.problems();
  RegimeScourResult result;
  result.regime_depth = regime_depth;
  result.factor = Dimensionless::number(*z);
  steps.given("Z", inputs.factor ? "factor, stated" : "factor by the table of the formula",
              measure(result.factor), inputs.factor ? "" : procedure_source);
  if (inputs.procedure == RegimeProcedure::below_existing_bed) {
    result.scour = *z * regime_depth;
    steps.computed("d_s", "general scour below the existing bed", "Z·d", measure(result.scour),
                   procedure_source);
    return result;
  }
  if (*z < 1) {
    return Problem{"factor-below-one", "Counted from the water level the factor is at least 1.", "",
                   "/factor", "a number of at least 1"};
  }
  if (!inputs.existing_depth) {
    return Problem{"missing-input",
                   "Counted from the water level, the existing depth must be known.", "",
                   "/existing_depth", "a length"};
  }
  result.scour = std::max(Length::feet(0), *z * regime_depth - *inputs.existing_depth);
  steps.given("d_e", "existing mean depth", measure(*inputs.existing_depth));
  steps.computed("d_s", "general scour below the existing bed", "max(0, Z·d − d_e)",
                 measure(result.scour), authors_source);
  return result;
}

std::vector<Source> regime_sources(const std::string& formula) {
  return {{"USBR, Pemberton and Lara, Computing Degradation and Local Scour (1984)",
           formula + " and its factors Z", SourceStanding::memory},
          {"NRCS National Engineering Handbook Part 654 (2007)", "Technical Supplement 14B",
           SourceStanding::memory},
          {"Richards, Assessment of regime equations for predicting general scour (2018)",
           "the two ways the factor is used", SourceStanding::published}};
}

std::vector<std::string> regime_cautions() {
  return {"The factor Z holds bend scour already: do not add bend scour to this result.",
          "Z times the regime depth (below the bed) and the factor times the regime depth less the "
          "existing depth are different calculations; the choice is yours and is shown.",
          "Where the table prints a range of Z, its upper end is taken.",
          "It knows nothing of local scour at piers, walls' ends and drops, nor of long-term "
          "lowering of the bed."};
}

}  // namespace proofstone
