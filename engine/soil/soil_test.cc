// Soil groups, gaps and internal stability: the words beside the numbers that checks/ hold.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "engine/soil/gradation_inputs.h"
#include "engine/soil/internal_stability.h"
#include "engine/soil/kenney_lau.h"
#include "engine/soil/soil_curve.h"
#include "engine/soil/soil_group.h"

namespace proofstone {
namespace {

CurvePoints curve(const std::vector<std::pair<double, double>>& points) {
  CurvePoints made;
  for (const auto& [size, percent] : points) made.push_back({Length::millimeters(size), percent});
  return made;
}

SoilIndex soil(double passing_no_4, double passing_no_200) {
  SoilIndex index;
  index.passing_no_4 = passing_no_4;
  index.passing_no_200 = passing_no_200;
  return index;
}

TEST(SoilGroup, NamesTellWhatElseIsThere) {
  auto index = soil(82, 40);
  index.fines = FinesKind::clay;
  EXPECT_EQ(classify_soil(index).symbol(), "SC");
  EXPECT_EQ(classify_soil(index).name, "clayey sand with gravel");
  index = soil(32.5, 10);
  index.uniformity = 60;
  index.curvature = 2;
  index.liquid_limit = 40;
  index.plasticity_index = 4;
  EXPECT_EQ(classify_soil(index).symbol(), "GW-GM");
  EXPECT_EQ(classify_soil(index).name, "well-graded gravel with silt and sand");
  index = soil(95, 80);
  index.liquid_limit = 70;
  index.plasticity_index = 10;
  EXPECT_EQ(classify_soil(index).name, "elastic silt with sand");
  index = soil(90, 60);
  index.plasticity_index = 0;
  EXPECT_EQ(classify_soil(index).name, "sandy silt");
}

TEST(SoilGroup, ATenthOfFinesIsDualWhateverTheirKind) {
  for (const double fines : {5.0, 8.0, 12.0}) {
    auto index = soil(90, fines);
    index.uniformity = 8;
    index.curvature = 2;
    index.fines = FinesKind::clay;
    EXPECT_EQ(classify_soil(index).symbol(), "SW-SC") << fines;
    index.uniformity = 4;
    EXPECT_EQ(classify_soil(index).symbol(), "SP-SC") << fines;
  }
}

TEST(SoilGroup, SaysWhatItHangsOn) {
  EXPECT_EQ(classify_soil(soil(100, 90)).missing, "its liquid limit and plasticity index");
  EXPECT_EQ(classify_soil(soil(90, 8)).missing,
            "D10, D30 and D60, for its uniformity and curvature");
  EXPECT_EQ(classify_soil(soil(90, 30)).missing,
            "the liquid limit and plasticity index of the fines");
  EXPECT_FALSE(classify_soil(soil(90, 30)).known());
}

TEST(SoilCurve, TellsNothingBeyondItsEnds) {
  const auto sand = curve({{0.15, 12}, {0.425, 45}, {4.75, 97}});
  EXPECT_FALSE(known_percent(sand, sieve::no_200));
  EXPECT_FALSE(known_percent(sand, sieve::three_inch));
  EXPECT_NEAR(*known_percent(sand, sieve::no_40), 45, 1e-9);
  EXPECT_EQ(*known_percent(curve({{1, 0}, {2, 100}}), sieve::no_200), 0);
  EXPECT_EQ(*known_percent(curve({{1, 0}, {2, 100}}), sieve::no_4), 100);
  EXPECT_FALSE(uniformity(sand));
}

TEST(SoilCurve, FindsTheGapAndNoneWhereThereIsNone) {
  const auto gap = size_gap(curve({{.1, 0},
                                   {.2, 8},
                                   {.3, 16},
                                   {.5, 25},
                                   {10, 25.0001},
                                   {15, 50},
                                   {20, 70},
                                   {30, 90},
                                   {40, 100}}));
  ASSERT_TRUE(gap);
  EXPECT_NEAR(gap->from.millimeters(), 0.5, 1e-9);
  EXPECT_NEAR(gap->ratio(), 21.7, 0.1);
  EXPECT_FALSE(size_gap(curve({{37.5, 100}, {1, 60}, {0.075, 30}, {0.002, 6}})));
}

TEST(SoilCurve, RetainedPercentsAreTold) {
  EXPECT_TRUE(look_retained(curve({{4.75, 0}, {0.425, 40}, {0.075, 70}})));
  EXPECT_FALSE(look_retained(curve({{4.75, 100}, {0.425, 40}, {0.075, 70}})));
  EXPECT_FALSE(look_retained(curve({{4.75, 100}, {0.425, 40}})));
}

// P = 100(D/Dmax)^n has H/F = 4^n − 1 at every size.
TEST(InternalStability, APowerLawCurveIsAnIdentity) {
  for (const double n : {0.25, 0.35, 0.5, 0.68}) {
    KenneyLauInputs inputs;
    // Points on the very sizes that are asked for, so that nothing is interpolated.
    for (int f = 1; f <= 30; ++f) {
      const double size = 100 * std::pow(f / 100.0, 1 / n);
      inputs.sizes.push_back(Length::millimeters(size));
      inputs.sizes.push_back(Length::millimeters(4 * size));
    }
    std::sort(inputs.sizes.begin(), inputs.sizes.end());
    inputs.sizes.erase(std::unique(inputs.sizes.begin(), inputs.sizes.end(),
                                   [](Length a, Length b) { return b / a < 1 + 1e-9; }),
                       inputs.sizes.end());
    while (inputs.sizes.back() >= Length::millimeters(100 * (1 - 1e-9))) inputs.sizes.pop_back();
    inputs.sizes.push_back(Length::millimeters(100));
    for (const auto size : inputs.sizes) {
      inputs.smaller.push_back(Dimensionless::number(std::pow(size.millimeters() / 100, n)));
    }
    Steps steps;
    const auto result = kenney_lau(inputs, steps);
    ASSERT_TRUE(result) << result.problems().front().sentence();
    EXPECT_NEAR(result->ratio.number(), std::pow(4, n) - 1, 1e-6) << n;
  }
}

TEST(InternalStability, CriteriaThatDisagreeAreBothShown) {
  const auto quarry_run = curve({{2, 0},
                                 {5, 5},
                                 {10, 9},
                                 {20, 14},
                                 {50, 25},
                                 {100, 40},
                                 {150, 52},
                                 {230, 68},
                                 {300, 80},
                                 {450, 100}});
  Steps steps;
  const auto both = internal_stability(quarry_run, steps);
  EXPECT_FALSE(both.agree);
  EXPECT_EQ(both.outcome, Outcome::ask_the_designer);
  ASSERT_EQ(both.verdicts.size(), 5u);
  EXPECT_EQ(both.verdicts[0].outcome, Outcome::meets);        // Kenney–Lau
  EXPECT_EQ(both.verdicts[1].outcome, Outcome::falls_short);  // Kezdi
  EXPECT_NE(both.sentence.find("Kenney–Lau"), std::string::npos);
  EXPECT_NE(both.sentence.find("Kezdi"), std::string::npos);
}

TEST(InternalStability, AGapIsUnstableByAll) {
  Steps steps;
  const auto gap = internal_stability(curve({{.1, 0},
                                             {.2, 8},
                                             {.3, 16},
                                             {.5, 25},
                                             {10, 25.0001},
                                             {15, 50},
                                             {20, 70},
                                             {30, 90},
                                             {40, 100}}),
                                      steps);
  EXPECT_TRUE(gap.agree);
  EXPECT_EQ(gap.outcome, Outcome::falls_short);
  for (const auto& verdict : gap.verdicts)
    EXPECT_EQ(verdict.outcome, Outcome::falls_short) << verdict.name;
}

TEST(InternalStability, SilentWhereTheCurveIs) {
  Steps steps;
  const auto none = internal_stability(curve({{10, 70}, {20, 100}}), steps);
  EXPECT_EQ(none.outcome, Outcome::not_yet_known);
}

}  // namespace
}  // namespace proofstone
