#include "engine/soil/chang_zhang.h"

#include "engine/soil/kenney_lau.h"
#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

TypedMethod<ChangZhangInputs, ChangZhangResult> build_chang_zhang() {
  MethodDescription about;
  about.id = "chang-zhang";
  about.title = "Internal stability, Chang–Zhang";
  about.purpose =
      "Internal stability under seepage by the share of fines and the gap in the curve.";
  about.group = MethodGroup::soil;
  about.sources = {
      {"Chang & Zhang (2013), Extended internal stability criteria for soils under "
       "seepage",
       "abstract", SourceStanding::published}};
  about.cautions = {
      "Between the ranges that the abstract names, nothing is said here. Fines are "
      "taken as what passes 0.075 mm."};
  TypedMethod<ChangZhangInputs, ChangZhangResult> method(about, &chang_zhang);
  describe_gradation(method);
  method.output({"fines", "P", "passes 0.075 mm"}, &ChangZhangResult::fines, unit::percent);
  method.output({"gap_ratio", "G_r", "largest over smallest size of the gap; 0 without one"},
                &ChangZhangResult::gap_ratio, unit::number);
  method.output({"margin", "", "to the limit that decides; below 1 is unstable"},
                &ChangZhangResult::margin, unit::number);
  return method;
}

Problem between(const char* ranges) {
  return {"range-not-known", "The published limits for this share of fines were not seen.", "",
          "/smaller", ranges};
}

}  // namespace

Expected<ChangZhangResult> chang_zhang(const ChangZhangInputs& in, Steps& steps) {
  const auto made = gradation_from(in);
  if (!made) return made.problems();
  const auto& curve = made->points();
  const auto fines = known_percent(curve, sieve::no_200);
  if (!fines) {
    return Problem{"missing-no-200", "The curve does not tell what passes the No. 200 sieve.", "",
                   "/sizes", "the percent passing 0.075 mm"};
  }
  const auto gap = size_gap(curve);
  ChangZhangResult result;
  result.fines = Dimensionless::of(*fines, unit::percent);
  result.gap_ratio = Dimensionless::number(gap ? gap->ratio() : 0);
  steps.given("P", "passes 0.075 mm", measure(result.fines));
  const double stable_from = gap ? 35 : 20;
  if (*fines > stable_from) {
    result.margin = Dimensionless::number(*fines / stable_from);
    steps.computed("P/P_stable", "fines over the share from which it is stable", "P/P_stable",
                   measure(result.margin));
    return result;
  }
  if (gap) {
    if (*fines >= 10) return between("gap-graded: below 10 % or above 35 % of fines");
    steps.computed("G_r", "gap ratio", "d_max/d_min of the gap", measure(result.gap_ratio));
    result.margin = Dimensionless::number(3 / gap->ratio());
    return result;
  }
  if (*fines >= 5) return between("well graded: below 5 % or above 20 % of fines");
  KenneyLauInputs fabric;
  static_cast<GradationInputs&>(fabric) = in;
  const auto ratio = kenney_lau(fabric, steps);
  if (!ratio) return ratio.problems();
  result.margin = ratio->ratio;
  return result;
}

const Method& chang_zhang_method() {
  static const TypedMethod<ChangZhangInputs, ChangZhangResult> method = build_chang_zhang();
  return method;
}

}  // namespace proofstone
