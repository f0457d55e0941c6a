#include "engine/soil/soil_classification.h"

#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

const char* const chart = "ASTM D2487, chart of groups (from memory; confirm)";

TypedMethod<SoilClassificationInputs, SoilClassificationResult> build_soil_classification() {
  MethodDescription about;
  about.id = "soil-classification";
  about.title = "Unified soil classification";
  about.purpose =
      "Group of the soil that rock lies on, from what passes the No. 4 and No. 200 sieves, sizes "
      "and plasticity.";
  about.group = MethodGroup::soil;
  about.sources = {
      {"ASTM D2487-98", "rule of dual symbols for 5 to 12 % of fines", SourceStanding::published},
      {"ASTM D2487", "chart of groups and names", SourceStanding::memory}};
  about.cautions = {"Percents are of the material smaller than 3 in (75 mm)."};
  TypedMethod<SoilClassificationInputs, SoilClassificationResult> method(about,
                                                                         &soil_classification);
  const auto percent = AllowedRange::between(0, 100);
  method.required({"passing_no_4", "P4", "passes the No. 4 sieve, 4.75 mm"},
                  &SoilClassificationInputs::passing_no_4, unit::percent, percent);
  method.required({"passing_no_200", "F", "passes the No. 200 sieve, 0.075 mm"},
                  &SoilClassificationInputs::passing_no_200, unit::percent, percent);
  const auto size = AllowedRange::positive_to(100);
  method.optional({"d10", "D10", "size of which 10 % is smaller"}, &SoilClassificationInputs::d10,
                  unit::millimeter, size, "not known", LengthUse::grain);
  method.optional({"d30", "D30", "size of which 30 % is smaller"}, &SoilClassificationInputs::d30,
                  unit::millimeter, size, "not known", LengthUse::grain);
  method.optional({"d60", "D60", "size of which 60 % is smaller"}, &SoilClassificationInputs::d60,
                  unit::millimeter, size, "not known", LengthUse::grain);
  method.optional({"liquid_limit", "LL", "liquid limit of what passes No. 40"},
                  &SoilClassificationInputs::liquid_limit, unit::number,
                  AllowedRange::positive_to(500), "not tested");
  method.optional({"plasticity_index", "PI", "plasticity index; 0 for what is not plastic"},
                  &SoilClassificationInputs::plasticity_index, unit::number,
                  AllowedRange::between(0, 400), "not tested");
  method.choice({"fines", "", "what the fines are, where no limits were tested"},
                &SoilClassificationInputs::fines,
                {ChoiceOption<FinesKind>{FinesKind::unknown, "unknown", "not known"},
                 {FinesKind::silt, "silt", "silt by look and feel"},
                 {FinesKind::clay, "clay", "clay by look and feel"}});
  method.choice({"organic", "", "liquid limit after oven drying below 0.75 of the one before"},
                &SoilClassificationInputs::organic,
                {ChoiceOption<SoilClassificationInputs::Organic>{
                     SoilClassificationInputs::Organic::no, "no", "mineral soil"},
                 {SoilClassificationInputs::Organic::yes, "yes", "organic soil"}});
  method.output({"gravel", "G", "larger than No. 4"}, &SoilClassificationResult::gravel,
                unit::percent);
  method.output({"sand", "S", "between No. 4 and No. 200"}, &SoilClassificationResult::sand,
                unit::percent);
  method.output({"fines", "F", "smaller than No. 200"}, &SoilClassificationResult::fines,
                unit::percent);
  method.output({"uniformity", "Cu", "D60/D10; 0 where a size is not given"},
                &SoilClassificationResult::uniformity, unit::number);
  method.output({"curvature", "Cc", "D30²/(D10·D60); 0 where a size is not given"},
                &SoilClassificationResult::curvature, unit::number);
  method.output({"a_line", "PI_A", "plasticity index of the A-line; 0 without a liquid limit"},
                &SoilClassificationResult::a_line, unit::number);
  method.output({"group", "",
                 "group, by its number: 1 GW, 2 GP, 3 GM, 4 GC, 5 SW, 6 SP, 7 SM, 8 SC, 9 ML, "
                 "10 CL, 11 OL, 12 MH, 13 CH, 14 OH"},
                &SoilClassificationResult::group, unit::number);
  method.output({"second_group", "", "second half of a dual symbol, by its number; 0 without"},
                &SoilClassificationResult::second_group, unit::number);
  return method;
}

double number_of(SoilGroup group) { return static_cast<double>(static_cast<int>(group)); }

SoilIndex index_of(const SoilClassificationInputs& in) {
  SoilIndex soil;
  soil.passing_no_4 = in.passing_no_4.in(unit::percent);
  soil.passing_no_200 = in.passing_no_200.in(unit::percent);
  if (in.d10 && in.d60) soil.uniformity = *in.d60 / *in.d10;
  if (in.d10 && in.d30 && in.d60) soil.curvature = (*in.d30 / *in.d10) * (*in.d30 / *in.d60);
  if (in.liquid_limit) soil.liquid_limit = in.liquid_limit->number();
  if (in.plasticity_index) soil.plasticity_index = in.plasticity_index->number();
  soil.fines = in.fines;
  soil.organic = in.organic == SoilClassificationInputs::Organic::yes;
  return soil;
}

Dimensionless in_percent(double value) { return Dimensionless::of(value, unit::percent); }

}  // namespace

Expected<SoilClassificationResult> soil_classification(const SoilClassificationInputs& in,
                                                       Steps& steps) {
  if (in.passing_no_200 > in.passing_no_4) {
    return Problem{"percent-falls", "More passes the No. 200 sieve than the No. 4 sieve.", "",
                   "/passing_no_200", "at most what passes No. 4; percents passing, not retained"};
  }
  if (in.liquid_limit && in.plasticity_index && *in.plasticity_index > *in.liquid_limit) {
    return Problem{"implausible", "The plasticity index is above the liquid limit.", "",
                   "/plasticity_index", "at most the liquid limit"};
  }
  const SoilIndex index = index_of(in);
  SoilClassificationResult result;
  result.gravel = in_percent(index.gravel());
  result.sand = in_percent(index.sand());
  result.fines = in.passing_no_200;
  result.uniformity = Dimensionless::number(index.uniformity.value_or(0));
  result.curvature = Dimensionless::number(index.curvature.value_or(0));
  result.a_line = Dimensionless::number(index.liquid_limit ? a_line(*index.liquid_limit) : 0);
  steps.computed("G", "gravel", "100 − P4", measure(result.gravel));
  steps.computed("S", "sand", "P4 − F", measure(result.sand));
  steps.given("F", "fines", measure(result.fines));
  if (index.uniformity) steps.computed("Cu", "uniformity", "D60/D10", measure(result.uniformity));
  if (index.curvature) {
    steps.computed("Cc", "curvature", "D30²/(D10·D60)", measure(result.curvature));
  }
  if (index.liquid_limit) {
    steps.computed("PI_A", "plasticity index of the A-line", "0.73(LL − 20), not below 4",
                   measure(result.a_line), chart);
  }
  result.soil = classify_soil(index);
  if (!result.soil.known()) {
    return Problem{"not-known",
                   "The group hangs on what is not given: " + result.soil.missing + ".", "", "",
                   result.soil.missing};
  }
  result.group = Dimensionless::number(number_of(result.soil.first));
  result.second_group = Dimensionless::number(number_of(result.soil.second));
  steps.computed(result.soil.symbol(), result.soil.name, "by the chart of groups",
                 measure(result.group), chart);
  return result;
}

const Method& soil_classification_method() {
  static const TypedMethod<SoilClassificationInputs, SoilClassificationResult> method =
      build_soil_classification();
  return method;
}

}  // namespace proofstone
