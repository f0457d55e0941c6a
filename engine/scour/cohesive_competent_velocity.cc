#include "engine/scour/cohesive_competent_velocity.h"

#include <array>
#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

const char* const page_of_cohesive_competent_velocity =
    "Neill, Guide to Bridge Hydraulics (1973) (from memory; confirm)";

constexpr std::array<double, 4> depths{5, 10, 20, 50};
using Row = std::array<double, 4>;
constexpr Row easily_erodible{1.9, 2.1, 2.3, 2.7};
constexpr Row average{3.4, 3.9, 4.3, 5.0};
constexpr Row resistant{5.9, 6.6, 7.4, 8.6};

const Row& row_of(CohesiveBed bed) {
  switch (bed) {
    case CohesiveBed::average:
      return average;
    case CohesiveBed::resistant:
      return resistant;
    case CohesiveBed::easily_erodible:
      break;
  }
  return easily_erodible;
}

double interpolated(const Row& row, double depth) {
  if (depth <= depths.front()) return row.front();
  for (std::size_t i = 1; i < depths.size(); ++i) {
    if (depth > depths[i]) continue;
    const double share = std::log(depth / depths[i - 1]) / std::log(depths[i] / depths[i - 1]);
    return row[i - 1] + share * (row[i] - row[i - 1]);
  }
  return row.back();
}

TypedMethod<CohesiveVelocityInputs, CohesiveVelocityResult> build_cohesive_competent_velocity() {
  MethodDescription about;
  about.id = "cohesive-competent-velocity";
  about.title = "Competent velocity of a cohesive bed";
  about.purpose = "Mean velocity that a bed of clay or cohesive silt stands, by depth of flow.";
  about.group = MethodGroup::scour;
  about.sources = {{"Neill, Guide to Bridge Hydraulics (1973)",
                    "competent velocities of cohesive materials", SourceStanding::memory}};
  about.cautions = {"A guide only: test the soil where the works depend on it.",
                    "Weathering and frost loosen a clay bank to far below these values."};
  TypedMethod<CohesiveVelocityInputs, CohesiveVelocityResult> method(about,
                                                                     &cohesive_competent_velocity);
  method.required({"depth", "y", "depth of flow"}, &CohesiveVelocityInputs::depth, unit::foot,
                  AllowedRange::positive_to(200));
  method.choice({"bed", "", "how easily the bed erodes"}, &CohesiveVelocityInputs::bed,
                {ChoiceOption<CohesiveBed>{CohesiveBed::easily_erodible, "easily-erodible",
                                           "easily erodible"},
                 {CohesiveBed::average, "average", "average"},
                 {CohesiveBed::resistant, "resistant", "resistant"}});
  method.output({"competent_velocity", "V_c", "mean velocity the bed stands"},
                &CohesiveVelocityResult::competent_velocity, unit::foot_per_second);
  method.limit({"Depth from 5 to 50 ft, as tabulated", page_of_cohesive_competent_velocity},
               [](const CohesiveVelocityInputs& in) {
                 return in.depth >= Length::feet(5) && in.depth <= Length::feet(50);
               });
  return method;
}

}  // namespace

Expected<CohesiveVelocityResult> cohesive_competent_velocity(const CohesiveVelocityInputs& inputs,
                                                             Steps& steps) {
  CohesiveVelocityResult result;
  result.competent_velocity =
      Velocity::feet_per_second(interpolated(row_of(inputs.bed), inputs.depth.feet()));
  steps.given("y", "depth of flow", measure(inputs.depth));
  steps.computed("V_c", "mean velocity the bed stands", "table, by the logarithm of the depth",
                 measure(result.competent_velocity), page_of_cohesive_competent_velocity);
  return result;
}

const Method& cohesive_competent_velocity_method() {
  static const TypedMethod<CohesiveVelocityInputs, CohesiveVelocityResult> method =
      build_cohesive_competent_velocity();
  return method;
}

}  // namespace proofstone
