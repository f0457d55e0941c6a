#include "engine/grade_control/weighted_creep.h"

#include <algorithm>

namespace proofstone {

namespace {

using DescribedWeightedCreep = TypedMethod<WeightedCreepInputs, WeightedCreepResult>;

const char* const lane = "Lane, weighted creep; USDCM Vol. 2";
const char* const ratios = "Lane; USDCM Vol. 2, Table 9-3 (values from memory; confirm)";

double least_ratio(CreepSoil soil) {
  switch (soil) {
    case CreepSoil::very_fine_sand_or_silt:
      return 8.5;
    case CreepSoil::fine_sand:
      return 7.0;
    case CreepSoil::medium_sand:
      return 6.0;
    case CreepSoil::coarse_sand:
      return 5.0;
    case CreepSoil::fine_gravel:
      return 4.0;
    case CreepSoil::medium_gravel:
      return 3.5;
    case CreepSoil::coarse_gravel_and_cobbles:
      return 3.0;
    case CreepSoil::boulders_cobbles_and_gravel:
      return 2.5;
    case CreepSoil::soft_clay:
      return 3.0;
    case CreepSoil::medium_clay:
      return 2.0;
    case CreepSoil::hard_clay:
      return 1.8;
    case CreepSoil::very_hard_clay:
      return 1.6;
  }
  return 8.5;
}

MethodDescription describe_weighted_creep() {
  MethodDescription about;
  about.id = "weighted-creep";
  about.title = "Weighted creep under a drop";
  about.purpose =
      "Whether the way of seepage under a drop or check is long enough for the head across it, and "
      "how much cut-off is missing.";
  about.group = MethodGroup::water;
  about.sources = {{lane, "horizontal contact counts one third", SourceStanding::published},
                   {"USDCM Vol. 2", "Table 9-3: least ratios by soil", SourceStanding::memory}};
  about.cautions = {
      "A screen, not a seepage analysis: layered ground, open gravel and defects need one.",
      "Filters and drains at the foot matter as much as the length."};
  return about;
}

DescribedWeightedCreep build_weighted_creep() {
  DescribedWeightedCreep method(describe_weighted_creep(), &weighted_creep);
  method.required({"horizontal", "ΣLh", "contact flatter than 45°"},
                  &WeightedCreepInputs::horizontal, unit::foot, AllowedRange::between(0, 1e5));
  method.required({"vertical", "ΣLv", "contact steeper than 45°, both faces of a cut-off"},
                  &WeightedCreepInputs::vertical, unit::foot, AllowedRange::between(0, 1e4));
  method.required({"head", "Hs", "difference of the water levels"}, &WeightedCreepInputs::head,
                  unit::foot, AllowedRange::positive_to(1000));
  method.choice({"soil", "", "the ground under the drop"}, &WeightedCreepInputs::soil,
                {{CreepSoil::very_fine_sand_or_silt, "very-fine-sand-or-silt", "8.5"},
                 {CreepSoil::fine_sand, "fine-sand", "7.0"},
                 {CreepSoil::medium_sand, "medium-sand", "6.0"},
                 {CreepSoil::coarse_sand, "coarse-sand", "5.0"},
                 {CreepSoil::fine_gravel, "fine-gravel", "4.0"},
                 {CreepSoil::medium_gravel, "medium-gravel", "3.5"},
                 {CreepSoil::coarse_gravel_and_cobbles, "coarse-gravel-and-cobbles", "3.0"},
                 {CreepSoil::boulders_cobbles_and_gravel, "boulders-cobbles-and-gravel", "2.5"},
                 {CreepSoil::soft_clay, "soft-clay", "3.0"},
                 {CreepSoil::medium_clay, "medium-clay", "2.0"},
                 {CreepSoil::hard_clay, "hard-clay", "1.8"},
                 {CreepSoil::very_hard_clay, "very-hard-clay", "1.6"}});
  method.output({"weighted_length", "", "weighted way of seepage"},
                &WeightedCreepResult::weighted_length, unit::foot);
  method.output({"creep_ratio", "Cw", "weighted creep ratio"}, &WeightedCreepResult::creep_ratio,
                unit::number);
  method.output({"least_ratio", "", "least ratio for the soil"}, &WeightedCreepResult::least_ratio,
                unit::number);
  method.output({"needed_length", "", "weighted length needed"},
                &WeightedCreepResult::needed_length, unit::foot);
  method.output({"missing_length", "", "weighted length missing"},
                &WeightedCreepResult::missing_length, unit::foot);
  method.limit({"Weighted creep ratio at least that of the soil", ratios},
               [](const WeightedCreepInputs& in) {
                 Steps unread;
                 const auto result = weighted_creep(in, unread);
                 return result &&
                        result->creep_ratio.number() > result->least_ratio.number() - 1e-9;
               });
  return method;
}

}  // namespace

Expected<WeightedCreepResult> weighted_creep(const WeightedCreepInputs& inputs, Steps& steps) {
  WeightedCreepResult result;
  result.weighted_length = inputs.horizontal / 3 + inputs.vertical;
  result.creep_ratio = Dimensionless::number(result.weighted_length / inputs.head);
  result.least_ratio = Dimensionless::number(least_ratio(inputs.soil));
  result.needed_length = result.least_ratio.number() * inputs.head;
  result.missing_length =
      std::max(Length::meters(0), result.needed_length - result.weighted_length);
  steps.given("ΣLh", "contact flatter than 45°", measure(inputs.horizontal));
  steps.given("ΣLv", "contact steeper than 45°", measure(inputs.vertical));
  steps.given("Hs", "difference of the water levels", measure(inputs.head));
  steps.computed("", "weighted way of seepage", "ΣLh/3 + ΣLv", measure(result.weighted_length),
                 lane);
  steps.computed("Cw", "weighted creep ratio", "(ΣLh/3 + ΣLv)/Hs", measure(result.creep_ratio),
                 lane);
  steps.given("", "least ratio for the soil", measure(result.least_ratio), ratios);
  steps.computed("", "weighted length needed", "least ratio·Hs", measure(result.needed_length));
  steps.computed("", "weighted length missing", "needed less present, 0 where none is",
                 measure(result.missing_length));
  return result;
}

const Method& weighted_creep_method() {
  static const DescribedWeightedCreep method = build_weighted_creep();
  return method;
}

}  // namespace proofstone
