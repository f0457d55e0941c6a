#include "engine/mix/lighter_stone_limit.h"

namespace proofstone {

namespace {

using DescribedLighterStoneLimit = TypedMethod<LighterStoneLimitInputs, LighterStoneLimitResult>;

DescribedLighterStoneLimit build_lighter_stone_limit() {
  MethodDescription about;
  about.id = "lighter-stone-limit";
  about.title = "Small stone that the voids hold";
  about.purpose =
      "The largest share of stone lighter than W15 whose bulk volume does not exceed the voids of "
      "the rest.";
  about.sources = {{"USACE EM 1110-2-1601 (1 July 1970)",
                    "riprap gradation criteria, item 7: the rule; n/(1 + n) follows from it",
                    SourceStanding::published}};
  about.group = MethodGroup::mix;
  DescribedLighterStoneLimit method(std::move(about), &lighter_stone_limit);
  method.defaulted({"voids", "n", "voids of the rest, share of its bulk volume"},
                   &LighterStoneLimitInputs::voids, unit::number, {0.0, std::nullopt, 0.7});
  method.output({"largest_share", "", "largest share of small stone"},
                &LighterStoneLimitResult::largest_share, unit::number);
  return method;
}

}  // namespace

Expected<LighterStoneLimitResult> lighter_stone_limit(const LighterStoneLimitInputs& inputs,
                                                      Steps& steps) {
  const double n = inputs.voids.number();
  LighterStoneLimitResult result;
  result.largest_share = Dimensionless::number(n / (1 + n));
  steps.given("n", "voids of the rest", measure(n));
  steps.computed("", "largest share of small stone", "n/(1 + n)", measure(result.largest_share));
  return result;
}

const Method& lighter_stone_limit_method() {
  static const DescribedLighterStoneLimit method = build_lighter_stone_limit();
  return method;
}

}  // namespace proofstone
