#include "report/specified_mix_html.h"

#include <gtest/gtest.h>

#include "report/markup_check.h"

namespace proofstone {
namespace {

SpecifiedMix one_mix() {
  SpecifiedMix mix;
  mix.name = "Fill <of> the bank";
  mix.kind = "soil-filled";
  mix.rock_name = "Class III";
  mix.zones = {"Outer bank"};
  mix.placing = MixPlacing::washed_in;
  mix.bucket = Volume::cubic_yards(3);
  mix.rock_parts = 13;
  mix.rock_share = 0.65;
  mix.rock_voids = Dimensionless::number(0.4);
  mix.rock = Dimensionless::number(1);
  mix.filling = Dimensionless::number(0.97);
  auto curve = Gradation::make({{Length::millimeters(0.075), 55}, {Length::millimeters(2), 100}},
                               GradationBasis{});
  EXPECT_TRUE(curve);
  mix.fills.push_back({"Loam & sand", 7, 0.35, Dimensionless::number(0.538),
                       Dimensionless::number(0.431), Dimensionless::number(0.72), std::nullopt,
                       *curve});
  mix.tolerance = FillTolerance{0.929, 1.032};
  mix.outcome = Outcome::meets;
  return mix;
}

void expect_sound(const std::string& html) {
  EXPECT_EQ(testing_markup::nesting_problem(html), "");
  EXPECT_EQ(testing_markup::content_problem(html), "");
}

TEST(SpecifiedMixHtml, SaysPartsTestsAndWhatIsAccepted) {
  const auto html = specified_mix_html(one_mix(), Wording(UnitSystem::us_customary));
  expect_sound(html);
  for (const char* words :
       {"Fill &lt;of&gt; the bank", "Loam &amp; sand", "Buckets in a batch", "65 %", "35 %",
        "55 % smaller than 0.075 mm", "0.538", "0.431", "6.5 to 7.22 of Loam &amp; sand",
        "every batch", "0.72", "Common practice, no source", "more is more than the voids hold"}) {
    EXPECT_NE(html.find(words), std::string::npos) << words;
  }
  EXPECT_EQ(html.find("Not to be ordered"), std::string::npos);
}

TEST(SpecifiedMixHtml, WarnsOfWhatIsNotGood) {
  auto mix = one_mix();
  mix.outcome = Outcome::falls_short;
  mix.tolerance.reset();
  mix.sentence = "The fill forces the rock apart.";
  const auto html = specified_mix_html(mix, Wording(UnitSystem::si));
  expect_sound(html);
  EXPECT_NE(html.find("Not to be ordered as it stands: falls short"), std::string::npos);
  EXPECT_EQ(html.find("What is accepted"), std::string::npos);
}

TEST(SpecifiedMixHtml, ProportionsThatServeStandBesideThoseThatDoNot) {
  auto mix = one_mix();
  mix.outcome = Outcome::falls_short;
  mix.tolerance.reset();
  auto found = one_mix();
  found.designed = true;
  found.rock_parts = 7;
  found.fills[0].parts = 3;
  mix.beside.push_back(found);
  const auto html = specified_mix_html(mix, Wording(UnitSystem::si));
  expect_sound(html);
  const auto at = html.find("Proportions found beside those stated");
  ASSERT_NE(at, std::string::npos);
  EXPECT_LT(html.find("Not to be ordered"), at);
  EXPECT_NE(html.find("These parts were found", at), std::string::npos);
  EXPECT_NE(html.find("To 7 of Class III", at), std::string::npos);
  mix.beside.clear();
  mix.none_beside = {"Loam & sand: Its porosity in place is not known."};
  const auto none = specified_mix_html(mix, Wording(UnitSystem::si));
  expect_sound(none);
  EXPECT_NE(none.find("Loam &amp; sand: Its porosity in place is not known."), std::string::npos);
}

TEST(SpecifiedMixHtml, SaysWhatIsMissing) {
  SpecifiedMix mix;
  mix.name = "A mix";
  mix.problems = {"The voids of the rock are not stated."};
  const auto html = specified_mix_html(mix, Wording(UnitSystem::si));
  expect_sound(html);
  EXPECT_NE(html.find("The voids of the rock are not stated."), std::string::npos);
}

}  // namespace
}  // namespace proofstone
