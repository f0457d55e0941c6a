#include "engine/soil/kezdi.h"

#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

using Inputs = KezdiInputs;
using Result = KezdiResult;

constexpr int lowest_split = 5;
constexpr int highest_split = 60;

TypedMethod<Inputs, Result> build() {
  MethodDescription about;
  about.id = "kezdi";
  about.title = "Internal stability, Kezdi";
  about.purpose = "Whether the coarse part of a gradation filters its own fine part.";
  about.group = MethodGroup::soil;
  about.sources = {
      {"Kezdi (1969); Sherard (1979) for the limit of 5", "split curve", SourceStanding::memory}};
  TypedMethod<Inputs, Result> method(about, &kezdi);
  describe_gradation(method);
  method.defaulted({"limit", "", "largest ratio of a stable gradation"}, &Inputs::limit,
                   unit::number, AllowedRange::between(3, 6));
  method.output({"ratio", "D15c/d85f", "largest ratio"}, &Result::ratio, unit::number);
  method.output({"at", "F", "percent smaller where the curve is split there"}, &Result::at,
                unit::percent);
  method.output({"margin", "", "limit over ratio"}, &Result::margin, unit::number);
  return method;
}

}  // namespace

Expected<Result> kezdi(const Inputs& in, Steps& steps) {
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
  Result result;
  result.ratio = Dimensionless::number(largest);
  result.at = Dimensionless::of(at, unit::percent);
  result.margin = Dimensionless::number(in.limit.number() / largest);
  steps.computed("D15c/d85f", "largest ratio", "D at F + 0.15(100 − F) over D at 0.85·F",
                 measure(result.ratio), kezdi_method().description().sources.front().sentence());
  steps.computed("F", "percent smaller where the curve is split there", "", measure(result.at));
  return result;
}

const Method& kezdi_method() {
  static const TypedMethod<Inputs, Result> method = build();
  return method;
}

}  // namespace proofstone
