#include "engine/soil/kezdi.h"

#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

constexpr int lowest_split = 5;
constexpr int highest_split = 60;

TypedMethod<KezdiInputs, KezdiResult> build_kezdi() {
  MethodDescription about;
  about.id = "kezdi";
  about.title = "Internal stability, Kezdi";
  about.purpose = "Whether the coarse part of a gradation filters its own fine part.";
  about.group = MethodGroup::soil;
  about.sources = {
      {"Kezdi (1969); Sherard (1979) for the limit of 5", "split curve", SourceStanding::memory}};
  TypedMethod<KezdiInputs, KezdiResult> method(about, &kezdi);
  describe_gradation(method);
  method.defaulted({"limit", "", "largest ratio of a stable gradation"}, &KezdiInputs::limit,
                   unit::number, AllowedRange::between(3, 6));
  method.output({"ratio", "D15c/d85f", "largest ratio"}, &KezdiResult::ratio, unit::number);
  method.output({"at", "F", "percent smaller where the curve is split there"}, &KezdiResult::at,
                unit::percent);
  method.output({"margin", "", "limit over ratio"}, &KezdiResult::margin, unit::number);
  return method;
}

}  // namespace

Expected<KezdiResult> kezdi(const KezdiInputs& in, Steps& steps) {
  const auto made = gradation_from(in);
  if (!made) return made.problems();
  const auto& curve = made->points();
  double largest = 0;
  int at = 0;
  for (int f = lowest_split; f <= highest_split; ++f) {
    const auto fine = size_on_curve(curve, 0.85 * f);
    const auto coarse = size_on_curve(curve, f + 0.15 * (100 - f));
    if (!fine || !coarse) continue;
    const double ratio = *coarse / *fine;
    // Along a straight curve all are alike: the first of them stands for all on every machine.
    if (ratio > largest * (1 + 1e-9)) {
      largest = ratio;
      at = f;
    }
  }
  if (at == 0) {
    return Problem{"curve-does-not-reach", "The curve does not tell its finer part.", "",
                   "/smaller", "percents smaller from 50 % down"};
  }
  KezdiResult result;
  result.ratio = Dimensionless::number(largest);
  result.at = Dimensionless::of(at, unit::percent);
  result.margin = Dimensionless::number(in.limit.number() / largest);
  steps.computed("D15c/d85f", "largest ratio", "D at F + 0.15(100 − F) over D at 0.85·F",
                 measure(result.ratio), kezdi_method().description().sources.front().sentence());
  steps.computed("F", "percent smaller where the curve is split there", "", measure(result.at));
  return result;
}

const Method& kezdi_method() {
  static const TypedMethod<KezdiInputs, KezdiResult> method = build_kezdi();
  return method;
}

}  // namespace proofstone
