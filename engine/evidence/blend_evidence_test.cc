#include "engine/evidence/blend_evidence.h"

#include <gtest/gtest.h>

#include "engine/evidence/confidence.h"

namespace proofstone {
namespace {

Gradation coarse() {
  return *Gradation::make({{Length::inches(6), 1}, {Length::inches(24), 100}}, GradationBasis{});
}

MeasuredGradation fine() {
  return *gradation_from_bins({{std::nullopt, Length::inches(4), 10},
                               {Length::inches(4), Length::inches(8), 50},
                               {Length::inches(8), Length::inches(16), 40}},
                              StonePicking::grid);
}

BlendOption option_of(int loads_of_this, int loads_of_other) {
  const auto options = two_pile_blends(fine().curve, coarse(), nullptr, 50, Length::inches(1), 10);
  for (const auto& option : *options) {
    if (option.loads_of_this_rock == loads_of_this && option.loads_of_other == loads_of_other) {
      return option;
    }
  }
  ADD_FAILURE() << "no such ratio";
  return options->front();
}

TEST(BlendEvidence, CountsTheStonesAsAShareOfTheBlend) {
  const auto blend = evidence_of_blend(fine(), option_of(3, 1));
  EXPECT_NEAR(blend.effective_stones, 100 / 0.75, 1e-9);
  EXPECT_NEAR(blend.curve.percent_smaller(Length::inches(8)),
              0.75 * 60 + 0.25 * coarse().percent_smaller(Length::inches(8)), 1e-9);
}

TEST(BlendEvidence, NeverClaimsLessVarianceThanTheBlendHas) {
  const auto measured = fine();
  const auto options =
      two_pile_blends(measured.curve, coarse(), nullptr, 50, Length::inches(1), 10);
  ASSERT_TRUE(options);
  for (const auto& option : *options) {
    const auto blend = evidence_of_blend(measured, option);
    const double w = static_cast<double>(option.loads_of_this_rock) /
                     (option.loads_of_this_rock + option.loads_of_other);
    for (const double size : {5.0, 7.0, 9.0, 12.0, 15.0}) {
      const auto at = Length::inches(size);
      const double f1 = measured.curve.percent_smaller(at) / 100;
      const double f = blend.curve.percent_smaller(at) / 100;
      const double truth = w * w * f1 * (1 - f1) / measured.effective_stones_at(at);
      EXPECT_GE(f * (1 - f) / blend.effective_stones_at(at), truth - 1e-15) << size;
    }
  }
}

}  // namespace
}  // namespace proofstone
