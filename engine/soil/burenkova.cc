#include "engine/soil/burenkova.h"

#include <algorithm>
#include <cmath>

#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

TypedMethod<BurenkovaInputs, BurenkovaResult> build_burenkova() {
  MethodDescription about;
  about.id = "burenkova";
  about.title = "Internal stability, Burenkova";
  about.purpose = "Whether the shape of the coarse part of a curve holds its fine part.";
  about.group = MethodGroup::soil;
  about.sources = {{"Burenkova (1993), Filters in Geotechnical and Hydraulic Engineering",
                    "band of d90/d60", SourceStanding::memory}};
  about.cautions = {
      "Not meant for uniform rock, which falls just below the band.",
      "The later limits of Wan and Fell (2008) on d90/d60 and d20/d5 are not applied: they are "
      "recalled with doubt, and nobody has read the paper for this engine yet."};
  TypedMethod<BurenkovaInputs, BurenkovaResult> method(about, &burenkova);
  describe_gradation(method);
  method.output({"upper_ratio", "h'", "d90/d60"}, &BurenkovaResult::upper_ratio, unit::number);
  method.output({"whole_ratio", "h''", "d90/d15"}, &BurenkovaResult::whole_ratio, unit::number);
  method.output({"lowest", "", "least h' that is stable"}, &BurenkovaResult::lowest, unit::number);
  method.output({"highest", "", "largest h' that is stable"}, &BurenkovaResult::highest,
                unit::number);
  method.output({"margin", "", "to the nearer limit; below 1 outside"}, &BurenkovaResult::margin,
                unit::number);
  method.limit({"uniformity up to 200", "Burenkova (1993) (from memory; confirm)"},
               [](const BurenkovaInputs& in) {
                 const auto curve = gradation_from(in);
                 return !curve || uniformity(curve->points()).value_or(0) <= 200;
               });
  return method;
}

}  // namespace

Expected<BurenkovaResult> burenkova(const BurenkovaInputs& in, Steps& steps) {
  const auto made = gradation_from(in);
  if (!made) return made.problems();
  const auto& curve = made->points();
  const auto d15 = size_on_curve(curve, 15);
  const auto d60 = size_on_curve(curve, 60);
  const auto d90 = size_on_curve(curve, 90);
  if (!d15 || !d60 || !d90) {
    return Problem{"curve-does-not-reach", "The curve does not reach d15, d60 and d90.", "",
                   "/smaller", "percents smaller from 15 to 90 %"};
  }
  const double upper = *d90 / *d60;
  const double whole = *d90 / *d15;
  const double lowest = 0.76 * std::log10(whole) + 1;
  const double highest = 1.86 * std::log10(whole) + 1;
  BurenkovaResult result;
  result.upper_ratio = Dimensionless::number(upper);
  result.whole_ratio = Dimensionless::number(whole);
  result.lowest = Dimensionless::number(lowest);
  result.highest = Dimensionless::number(highest);
  result.margin = Dimensionless::number(std::min(upper / lowest, highest / upper));
  const auto source = burenkova_method().description().sources.front().sentence();
  steps.computed("h'", "", "d90/d60", measure(upper));
  steps.computed("h''", "", "d90/d15", measure(whole));
  steps.computed("h'_min", "least that is stable", "0.76·log h'' + 1", measure(lowest), source);
  steps.computed("h'_max", "largest that is stable", "1.86·log h'' + 1", measure(highest), source);
  return result;
}

const Method& burenkova_method() {
  static const TypedMethod<BurenkovaInputs, BurenkovaResult> method = build_burenkova();
  return method;
}

}  // namespace proofstone
