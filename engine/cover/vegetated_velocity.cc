#include "engine/cover/vegetated_velocity.h"

namespace proofstone {

namespace {

const char* const tp61 =
    "SCS-TP-61, Handbook of Channel Design for Soil and Water Conservation, as "
    "a reprint has it";

struct ListedVelocity {
  GrassSpecies species;
  double slope_up_to;
  double resistant;      // ft/s
  double easily_eroded;  // ft/s
};
constexpr double any_slope = 10;
constexpr ListedVelocity listed[] = {{GrassSpecies::bermudagrass, 0.05, 8, 6},
                                     {GrassSpecies::bermudagrass, 0.10, 7, 5},
                                     {GrassSpecies::bermudagrass, any_slope, 6, 4},
                                     {GrassSpecies::bluegrass_brome_grama, 0.05, 7, 5},
                                     {GrassSpecies::bluegrass_brome_grama, 0.10, 6, 4},
                                     {GrassSpecies::bluegrass_brome_grama, any_slope, 5, 3},
                                     {GrassSpecies::grass_mixture, 0.05, 5, 4},
                                     {GrassSpecies::grass_mixture, 0.10, 4, 3},
                                     {GrassSpecies::lespedeza_lovegrass_group, 0.05, 3.5, 2.5},
                                     {GrassSpecies::annuals, 0.05, 3.5, 2.5}};

MethodDescription describe_vegetated_velocity() {
  MethodDescription about;
  about.id = "vegetated-velocity";
  about.title = "Velocity that grass bears";
  about.purpose =
      "Permissible velocity over established grass by species, channel slope and soil; a second "
      "opinion beside the shear of a grass lining.";
  about.group = MethodGroup::cover;
  about.sources = {{tp61, "permissible velocities for channels lined with vegetation",
                    SourceStanding::published}};
  about.cautions = {
      "Above 5 ft/s only where a good cover and its upkeep are certain.",
      "On slopes above 10 % only as the sides of a channel with a centre of rock or concrete.",
      "The reprint shows 3.4 ft/s for the lespedeza group; 3.5 is taken, as for annuals."};
  return about;
}

TypedMethod<VegetatedVelocityInputs, VegetatedVelocityResult> build_vegetated_velocity() {
  TypedMethod<VegetatedVelocityInputs, VegetatedVelocityResult> method(
      describe_vegetated_velocity(), &vegetated_velocity);
  method.choice({"species", "", "the plants"}, &VegetatedVelocityInputs::species,
                {{GrassSpecies::bermudagrass, "bermudagrass", "bermudagrass"},
                 {GrassSpecies::bluegrass_brome_grama, "bluegrass-brome-grama",
                  "bluegrass, smooth brome, blue grama"},
                 {GrassSpecies::grass_mixture, "grass-mixture", "a mixture of grasses"},
                 {GrassSpecies::lespedeza_lovegrass_group, "lespedeza-lovegrass-group",
                  "lespedeza, weeping lovegrass, alfalfa, red fescue"},
                 {GrassSpecies::annuals, "annuals", "annuals, for a season"}});
  method.choice({"soil", "", "the soil under them"}, &VegetatedVelocityInputs::soil,
                {{SoilErodibility::resistant, "resistant", "erosion-resistant"},
                 {SoilErodibility::easily_eroded, "easily-eroded", "easily eroded"}});
  method.required({"slope", "S", "slope of the channel"}, &VegetatedVelocityInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(1));
  method.output({"velocity", "V", "permissible velocity"}, &VegetatedVelocityResult::velocity,
                unit::foot_per_second);
  return method;
}

}  // namespace

Expected<VegetatedVelocityResult> vegetated_velocity(const VegetatedVelocityInputs& inputs,
                                                     Steps& steps) {
  for (const ListedVelocity& row : listed) {
    if (row.species != inputs.species) continue;
    if (inputs.slope.ratio() > row.slope_up_to + 1e-9) continue;
    VegetatedVelocityResult result;
    result.velocity = Velocity::feet_per_second(
        inputs.soil == SoilErodibility::resistant ? row.resistant : row.easily_eroded);
    steps.given("S", "slope of the channel", measure(inputs.slope));
    steps.given("V", "listed velocity for these plants, slope and soil", measure(result.velocity),
                tp61);
    return result;
  }
  return Problem{"not-listed", "Nothing is listed for these plants on so steep a channel.", "",
                 "/slope", "a flatter channel, or other plants"};
}

const Method& vegetated_velocity_method() {
  static const TypedMethod<VegetatedVelocityInputs, VegetatedVelocityResult> method =
      build_vegetated_velocity();
  return method;
}

}  // namespace proofstone
