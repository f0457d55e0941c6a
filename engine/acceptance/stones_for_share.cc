#include "engine/acceptance/stones_for_share.h"

#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

using DescribedStonesForShare = TypedMethod<StonesForShareInputs, StonesForShareResult>;

Source sample_size_source() {
  return {"Fripp & Diplas 1993, Surface sampling in gravel streams", "sample size of a grid count",
          SourceStanding::memory};
}

DescribedStonesForShare build_stones_for_share() {
  MethodDescription about;
  about.id = "stones-for-share";
  about.title = "How many stones to count";
  about.purpose =
      "Before going out: how many stones to count so that the percent smaller than a size is known "
      "closely enough, and over how many loads to spread them.";
  about.group = MethodGroup::evidence;
  about.sources = {sample_size_source()};
  about.cautions = {
      "A normal approximation for planning; what was counted is judged by exact limits.",
      "Stones of one load are alike: more loads help more than more stones of one."};
  DescribedStonesForShare method(std::move(about), &stones_for_share);
  method.defaulted({"share", "p", "percent smaller that is looked for"},
                   &StonesForShareInputs::share, unit::percent, AllowedRange::between(1, 99));
  method.defaulted({"within", "ε", "half-width wanted, in percent smaller"},
                   &StonesForShareInputs::within, unit::percent, AllowedRange::between(0.5, 40));
  method.defaulted({"confidence", "1 − α", "two-sided confidence"},
                   &StonesForShareInputs::confidence, unit::percent,
                   AllowedRange::between(50, 99.99));
  method.defaulted({"stones_in_load", "m", "stones picked from each load"},
                   &StonesForShareInputs::stones_in_load, unit::number,
                   AllowedRange::between(1, 1000));
  method.defaulted({"alike_in_load", "ρ_c", "how alike stones of one load are; 0 for not at all"},
                   &StonesForShareInputs::alike_in_load, unit::number, AllowedRange::between(0, 1));
  method.output({"independent_stones", "n_0", "stones, if each told something new"},
                &StonesForShareResult::independent_stones, unit::number);
  method.output({"stones", "n", "stones to count"}, &StonesForShareResult::stones, unit::number);
  method.output({"loads", "k", "loads to take them from"}, &StonesForShareResult::loads,
                unit::number);
  return method;
}

}  // namespace

Expected<StonesForShareResult> stones_for_share(const StonesForShareInputs& in, Steps& steps) {
  const double p = in.share.number();
  const double epsilon = in.within.number();
  const double z = normal_quantile(1 - (1 - in.confidence.number()) / 2);
  const double m = in.stones_in_load.number();
  const double independent = std::ceil(z * z * p * (1 - p) / (epsilon * epsilon));
  const double inflation = 1 + (m - 1) * in.alike_in_load.number();
  const double stones = std::ceil(independent * inflation);
  const double loads = std::ceil(stones / m);
  const auto source = sample_size_source().sentence();
  steps.computed("z", "standard normal quantile", "Φ⁻¹(1 − α/2)", measure(z));
  steps.computed("n_0", "independent stones", "z²·p·(1 − p)/ε²", measure(independent), source);
  steps.computed("n", "stones to count", "n_0·[1 + (m − 1)·ρ_c]", measure(stones),
                 "variance of clusters (from memory; confirm)");
  steps.computed("k", "loads", "n/m", measure(loads));
  return StonesForShareResult{Dimensionless::number(independent), Dimensionless::number(stones),
                              Dimensionless::number(loads)};
}

const Method& stones_for_share_method() {
  static const DescribedStonesForShare method = build_stones_for_share();
  return method;
}

}  // namespace proofstone
