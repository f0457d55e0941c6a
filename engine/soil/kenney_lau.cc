#include "engine/soil/kenney_lau.h"

#include <cmath>

#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

TypedMethod<KenneyLauInputs, KenneyLauResult> build_kenney_lau() {
  MethodDescription about;
  about.id = "kenney-lau";
  about.title = "Internal stability, Kenney–Lau";
  about.purpose =
      "Whether the finer grains of a gradation are held by what is up to four times as large.";
  about.group = MethodGroup::soil;
  about.sources = {{"Kenney & Lau, Can. Geotech. J. 22 (1985) and 23 (1986)", "form and limits",
                    SourceStanding::memory},
                   {"Chang & Zhang (2013), abstract",
                    "limit of 1.0 for well-graded soils below "
                    "5 % of fines",
                    SourceStanding::published}};
  about.cautions = {
      "The uniformity that decides how far up the curve is looked at should be that "
      "of the coarse fabric; here it is that of the whole curve."};
  TypedMethod<KenneyLauInputs, KenneyLauResult> method(about, &kenney_lau);
  describe_gradation(method);
  method.defaulted({"limit", "", "least H/F of a stable gradation"}, &KenneyLauInputs::limit,
                   unit::number, AllowedRange::between(0.5, 2));
  method.output({"ratio", "(H/F)min", "least ratio"}, &KenneyLauResult::ratio, unit::number);
  method.output({"at", "F", "percent smaller where it stands"}, &KenneyLauResult::at,
                unit::percent);
  method.output({"up_to", "F_max", "percent smaller up to which the curve is looked at"},
                &KenneyLauResult::up_to, unit::percent);
  method.output({"margin", "", "ratio over its limit"}, &KenneyLauResult::margin, unit::number);
  return method;
}

}  // namespace

Expected<KenneyLauResult> kenney_lau(const KenneyLauInputs& in, Steps& steps) {
  const auto made = gradation_from(in);
  if (!made) return made.problems();
  const auto& curve = made->points();
  const auto cu = uniformity(curve);
  const int up_to = cu && *cu <= 3 ? 30 : 20;
  std::optional<double> least;
  int at = 0;
  for (int f = 1; f <= up_to; ++f) {
    const auto size = size_on_curve(curve, f);
    if (!size) continue;
    const auto above = known_percent(curve, 4 * *size);
    if (!above) continue;
    const double ratio = (*above - f) / f;
    // Along a straight curve all are alike: the first of them stands for all on every machine.
    if (!least || ratio < *least * (1 - 1e-9)) {
      least = ratio;
      at = f;
    }
  }
  if (!least) {
    return Problem{"curve-does-not-reach", "The curve does not tell its finer part.", "",
                   "/smaller", "percents smaller below 20 %, and sizes four times as large"};
  }
  KenneyLauResult result;
  result.ratio = Dimensionless::number(*least);
  result.at = Dimensionless::of(at, unit::percent);
  result.up_to = Dimensionless::of(up_to, unit::percent);
  result.margin = Dimensionless::number(*least / in.limit.number());
  const auto source = kenney_lau_method().description().sources.front().sentence();
  steps.given("F_max", "percent smaller up to which the curve is looked at", measure(result.up_to),
              source);
  steps.computed("(H/F)min", "least ratio", "[P(4D) − P(D)]/P(D)", measure(result.ratio), source);
  steps.computed("F", "percent smaller where it stands", "", measure(result.at));
  return result;
}

const Method& kenney_lau_method() {
  static const TypedMethod<KenneyLauInputs, KenneyLauResult> method = build_kenney_lau();
  return method;
}

}  // namespace proofstone
