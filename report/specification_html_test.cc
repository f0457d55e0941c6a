#include "report/specification_html.h"

#include <gtest/gtest.h>

#include "report/markup_check.h"

namespace proofstone {
namespace {

Specification one_class() {
  Specification whole;
  whole.site_name = "Sorrel <Creek>";
  whole.revision = "r2";
  SpecifiedClass rock;
  rock.name = "Class III";
  rock.family = "A family";
  rock.sources = {"Granite & Knob"};
  rock.specific_gravity = Dimensionless::number(2.65);
  rock.places = {{"Outer bank", Length::inches(24), Placement::under_water}};
  rock.sizes = {
      {50, Length::inches(11.5), Length::inches(14), Mass::pounds(123), Mass::pounds(222)}};
  rock.limits = {
      {"D50 at least 11.5 in", Length::inches(11.5), BandCondition::Sense::at_most, true, {37, 63}},
      {"no stone above 24 in", Length::inches(24), BandCondition::Sense::at_least, false, {}}};
  whole.classes = {rock};
  RockLimit limit;
  limit.test = RockTest::abrasion;
  limit.most = 0.4;
  limit.from = "a set";
  limit.source = {"A manual", "Table 1", SourceStanding::published};
  whole.rock_limits = {limit};
  return whole;
}

void expect_whole(const Specification& whole) {
  const auto html = specification_html(whole, UnitSystem::us_customary);
  EXPECT_EQ(testing_markup::nesting_problem(html), "");
  EXPECT_EQ(testing_markup::content_problem(html), "");
  EXPECT_EQ(html.find("<script"), std::string::npos);
}

TEST(SpecificationHtml, SaysWhatIsToBeDelivered) {
  expect_whole(one_class());
  const auto html = specification_html(one_class(), UnitSystem::us_customary);
  for (const char* words :
       {"Sorrel &lt;Creek&gt;", "Class III", "Granite &amp; Knob", "11.5 in to 14.0 in",
        "123 lb to 222 lb", "24.0 in", "under water", "at most 37", "at least 63",
        "at most 40 %, on average", "A manual, Table 1", "chooses no set of requirements",
        "The designer is to state it", "two truckloads taken at random", "Not yet known"}) {
    EXPECT_NE(html.find(words), std::string::npos) << words;
  }
}

TEST(SpecificationHtml, SaysWhatBeddingAndGeotextileMustBe) {
  auto whole = one_class();
  SpecifiedBedding bedding;
  bedding.name = "Bedding & <sand>";
  bedding.is_band = true;
  bedding.source = {"A manual", "Table 2", SourceStanding::published};
  bedding.sieves = {{Length::inches(1.5), 90.0, std::nullopt},
                    {Length::millimeters(4.75), 20.0, 45.0},
                    {Length::millimeters(0.075), std::nullopt, 2.0}};
  bedding.places = {{"Outer bank", "layer 2 of 2 from the soil", Length::inches(6), true}};
  SpecifiedFabric fabric;
  fabric.fabric.opening_size = Length::millimeters(0.21);
  fabric.fabric.strength_class = 1;
  fabric.fabric.drop_height = Length::feet(2);
  fabric.place = {"Inner <bank>", "", std::nullopt, false};
  whole.filters = {{bedding}, {fabric}};
  expect_whole(whole);
  const auto html = specification_html(whole, UnitSystem::us_customary);
  for (const char* words :
       {"Bedding &amp; &lt;sand&gt;", "layer 2 of 2 from the soil: 6.0 in thick", "under water",
        "1.5 in", "at least 90 %", "20 to 45 %", "at most 2 %", "A manual, Table 2",
        "Geotextile of Inner &lt;bank&gt;", "at most 0.21 mm", "not stated: the designer",
        "Class 1: grab 900 N", "from at most 2.00 ft"}) {
    EXPECT_NE(html.find(words), std::string::npos) << words;
  }
}

TEST(SpecificationHtml, ShowsSiUnitsAndWhatIsStated) {
  auto whole = one_class();
  whole.rock_limits_chosen = true;
  whole.frequency = {"One count for every 500 ton"};
  const auto html = specification_html(whole, UnitSystem::si);
  EXPECT_NE(html.find("292 mm to 356 mm"), std::string::npos);
  EXPECT_NE(html.find("One count for every 500 ton"), std::string::npos);
  EXPECT_EQ(html.find("chooses no set"), std::string::npos);
}

TEST(SpecificationHtml, IsWholeWithNothingToSpecify) { expect_whole(Specification{}); }

}  // namespace
}  // namespace proofstone
