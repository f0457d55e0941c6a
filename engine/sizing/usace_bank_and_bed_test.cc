#include "engine/sizing/usace_bank_and_bed.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <nlohmann/json.hpp>

#include "engine/sizing/bend_velocity.h"

namespace proofstone {
namespace {

UsaceBankAndBedInputs bend() {
  UsaceBankAndBedInputs in;
  in.attack = WaterAttack::outside_of_bend;
  in.average_velocity = Velocity::feet_per_second(7.1);
  in.local_velocity = Velocity::feet_per_second(10.5);
  in.bend_radius = Length::feet(620);
  in.top_width = Length::feet(200);
  in.local_depth = Length::feet(12);
  in.bank_angle = angle_of(Slope::ratio(0.5));
  in.specific_gravity = Dimensionless::number(165 / 62.4);
  return in;
}

UsaceBankAndBedResult sized(const UsaceBankAndBedInputs& in) {
  Steps steps;
  const auto result = usace_bank_and_bed(in, steps);
  EXPECT_TRUE(result);
  return *result;
}

const Step* find(const Steps& steps, const std::string& symbol) {
  for (const auto& step : steps.lines()) {
    if (step.symbol == symbol) return &step;
  }
  return nullptr;
}

// EM 1110-2-1601 App. H Problem 1: safety of the class chosen, 1.1·0.73/0.62 = 1.3.
TEST(UsaceBankAndBed, SafetyOfTheClassChosenInExampleOne) {
  const auto result = sized(bend());
  EXPECT_NEAR(1.1 * 0.73 / result.d30.feet(), 1.3, 0.02);
}

// The manual's text: 10 % more velocity gives "about 30 %" more size and "nearly 100 %" more mass;
// 10 % less unit weight at 165 lb/ft³ gives "70 %" more mass.
TEST(UsaceBankAndBed, SensitivitiesOfTheManual) {
  auto in = bend();
  const double base = sized(in).d30.feet();
  in.local_velocity = 1.1 * *in.local_velocity;
  const double faster = sized(in).d30.feet() / base;
  EXPECT_NEAR(faster, 1.269, 0.002);
  EXPECT_NEAR(std::pow(faster, 3), 2.04, 0.01);
  in = bend();
  in.specific_gravity = 0.9 * in.specific_gravity;
  const double lighter = sized(in).d30.feet() / base;
  EXPECT_NEAR(lighter, 1.245, 0.002);
  EXPECT_NEAR(0.9 * std::pow(lighter, 3), 1.74, 0.01);
}

TEST(UsaceBankAndBed, TheAnalyticSideSlopeOvershootsTheManualsExample) {
  auto in = bend();
  in.side_slope_factor = SideSlopeFactor::analytic;
  EXPECT_NEAR(sized(in).d30.feet(), 0.795, 0.002);
}

TEST(UsaceBankAndBed, StepsHoldEverythingAReviewerNeeds) {
  Steps steps;
  auto in = bend();
  in.local_velocity.reset();
  const auto result = usace_bank_and_bed(in, steps);
  ASSERT_TRUE(result);
  for (const char* symbol : {"V_AVG", "R", "W", "V_SS/V_AVG", "V_SS", "Cv", "θ", "K1", "Sf", "Cs",
                             "CT", "d", "γs/γw", "D30", "D85/D15", "D50"}) {
    EXPECT_NE(find(steps, symbol), nullptr) << symbol;
  }
  // By hand from the steps alone.
  const auto value = [&](const char* symbol) { return find(steps, symbol)->value.si; };
  const double d = value("d");
  const double k1 = result->k1.number();
  const double by_hand =
      value("Sf") * value("Cs") * value("Cv") * value("CT") * d *
      std::pow(std::sqrt(1 / (value("γs/γw") - 1)) * value("V_SS") / std::sqrt(k1 * 9.80665 * d),
               2.5);
  EXPECT_NEAR(by_hand / result->d30.meters(), 1, 1e-12);
}

TEST(UsaceBankAndBed, TheOtherSideSlopeFactorIsNoted) {
  Steps steps;
  ASSERT_TRUE(usace_bank_and_bed(bend(), steps));
  int factors = 0;
  for (const auto& step : steps.lines()) factors += step.symbol == "K1" ? 1 : 0;
  EXPECT_EQ(factors, 2);
}

ZoneSetting zone() {
  ZoneSetting setting;
  setting.bank_angle = angle_of(Slope::ratio(0.5));
  setting.bend_side = BendSide::outside;
  setting.bend_radius = Length::feet(620);
  setting.average_velocity = Velocity::feet_per_second(7.1);
  setting.water_top_width = Length::feet(200);
  setting.toe_depth = Length::feet(15);
  setting.local_depth = Length::feet(12);
  setting.energy_slope = Slope::ratio(0.001);
  setting.froude_number = Dimensionless::number(0.35);
  return setting;
}

TEST(UsaceBankAndBedOfAZone, ReadsTheZone) {
  const auto answer = usace_bank_and_bed_method().size(zone());
  ASSERT_TRUE(answer.required);
  EXPECT_EQ(answer.required->percent_smaller, 30);
  EXPECT_NEAR(answer.evaluation.output("v_ss").unchecked_as<Velocity>().feet_per_second(), 10.54,
              0.005);
  EXPECT_TRUE(answer.evaluation.limits_not_kept.empty());
}

TEST(UsaceBankAndBedOfAZone, TheDesignersChoicesGoOverTheZone) {
  auto setting = zone();
  const nlohmann::json choices = {{"usace-bank-and-bed", {{"safety_factor", "1.2"}}}};
  const double base = usace_bank_and_bed_method().size(setting).required->size.feet();
  setting.method_choices = &choices;
  EXPECT_NEAR(usace_bank_and_bed_method().size(setting).required->size.feet() / base, 1.2 / 1.1,
              1e-12);
  const nlohmann::json wrong = {{"usace-bank-and-bed", {{"safety", "1.2"}}}};
  setting.method_choices = &wrong;
  const auto answer = usace_bank_and_bed_method().size(setting);
  EXPECT_FALSE(answer.required);
  ASSERT_FALSE(answer.problems.empty());
  EXPECT_EQ(answer.problems.front().where, "/usace-bank-and-bed/safety");
}

TEST(UsaceBankAndBedOfAZone, SaysWhereItDoesNotApply) {
  auto setting = zone();
  setting.turbulence = Turbulence::high;
  const auto answer = usace_bank_and_bed_method().size(setting);
  ASSERT_TRUE(answer.not_applicable);
  EXPECT_NE(answer.not_applicable->reason.find("low turbulence"), std::string::npos);
  EXPECT_FALSE(answer.required);
}

TEST(UsaceBankAndBedOfAZone, ABendWithoutRadiusNamesWhatIsMissing) {
  auto setting = zone();
  setting.bend_radius.reset();
  const auto answer = usace_bank_and_bed_method().size(setting);
  EXPECT_FALSE(answer.required);
  ASSERT_FALSE(answer.problems.empty());
  EXPECT_EQ(answer.problems.front().code, "missing-input");
}

TEST(UsaceBankAndBedOfAZone, LimitsNotKeptAreNamed) {
  auto setting = zone();
  setting.energy_slope = Slope::ratio(0.03);
  setting.froude_number = Dimensionless::number(1.2);
  setting.bank_angle = angle_of(Slope::ratio(1 / 1.4));
  const auto answer = usace_bank_and_bed_method().size(setting);
  ASSERT_TRUE(answer.required);
  EXPECT_EQ(answer.evaluation.limits_not_kept.size(), 3u);
  setting.bank_angle = angle_of(Slope::ratio(1 / 1.5));
  EXPECT_EQ(usace_bank_and_bed_method().size(setting).evaluation.limits_not_kept.size(), 2u)
      << "1V:1.5H itself is allowed";
}

TEST(UsaceBankAndBedOfAZone, NotANumberIsAProblem) {
  auto setting = zone();
  setting.average_velocity = Velocity::feet_per_second(std::numeric_limits<double>::quiet_NaN());
  const auto answer = usace_bank_and_bed_method().size(setting);
  EXPECT_FALSE(answer.required);
  ASSERT_FALSE(answer.problems.empty());
  EXPECT_EQ(answer.problems.front().code, "outside-allowed");
}

// WES Streambank Handbook App. A, Example 1: ratio 1.48.
TEST(BendVelocity, PublishedRatio) {
  const auto ratio =
      bend_velocity_ratio(ChannelForm::natural, Length::feet(620), Length::feet(200));
  EXPECT_NEAR(ratio.number(), 1.48, 0.01);
}

TEST(BendVelocity, EndsAtOneForGentleBends) {
  EXPECT_EQ(bend_velocity_ratio(ChannelForm::natural, Length::feet(27), Length::feet(1)).number(),
            1);
  EXPECT_EQ(
      bend_velocity_ratio(ChannelForm::trapezoidal, Length::feet(9), Length::feet(1)).number(), 1);
  EXPECT_GT(
      bend_velocity_ratio(ChannelForm::trapezoidal, Length::feet(8), Length::feet(1)).number(), 1);
}

// The handbook's rule with its own ratio of 1.48: held for one width, then 0.1 less for each.
TEST(BendVelocity, FadesBelowTheBend) {
  const double expected[][2] = {{0, 1.48}, {1, 1.48}, {2, 1.38}, {3, 1.28}, {6, 1.00}, {60, 1.00}};
  for (const auto& [widths, ratio] : expected) {
    const auto below = bend_ratio_below(Dimensionless::number(1.48), Length::feet(200 * widths),
                                        Length::feet(200));
    EXPECT_NEAR(below.number(), ratio, 1e-12) << widths;
  }
  const auto slower =
      bend_ratio_below(Dimensionless::number(0.9), Length::feet(900), Length::feet(200));
  EXPECT_EQ(slower.number(), 0.9) << "it never rises";
}

}  // namespace
}  // namespace proofstone
