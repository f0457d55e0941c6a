#include "engine/site/site_blend.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/site/example_document.h"

namespace proofstone {
namespace {

TEST(SiteBlend, AnswersForAClassAndNamesWhatIsWrong) {
  ExampleDocument example;
  example.items["materials"]["fine"] = {{"name", "Fine stock"},
                                        {"gradation",
                                         {{{"size", "4 in"}, {"smaller", "0 %"}},
                                          {{"size", "9 in"}, {"smaller", "40 %"}},
                                          {{"size", "14 in"}, {"smaller", "100 %"}}}},
                                        {"price", {{"amount", "20"}, {"per", "t"}}},
                                        {"load", "15 t"}};
  example.items["materials"]["coarse"]["price"] = {{"amount", "25"}, {"per", "t"}};
  example.items["materials"]["coarse"]["load"] = "15 t";
  const auto site = site_from(example.document());
  ASSERT_TRUE(site) << site.problems().front().sentence();
  BlendQuestion question{"fhwa-3", {"coarse", "fine"}, Mass::tonnes(300), 0, 12};
  const auto answer = blend_on_site(*site, question);
  ASSERT_TRUE(answer) << answer.problems().front().sentence();
  if (answer->ranges) {
    ASSERT_TRUE(answer->loads.has_value());
    EXPECT_GE(answer->loads->mass.tonnes(), 300);
    EXPECT_GE(answer->loads->margin, -1e-6);
  } else {
    EXPECT_FALSE(answer->why.empty());
  }
  question.rock_class = "no-such";
  EXPECT_EQ(blend_on_site(*site, question).problems().front().code, "no-such-class");
  question.rock_class = "fhwa-3";
  question.materials = {"gold"};
  EXPECT_EQ(blend_on_site(*site, question).problems().front().code, "no-such-item");
  question.materials.clear();
  question.margin = -4;
  EXPECT_EQ(blend_on_site(*site, question).problems().front().code, "out-of-range");
}

ExampleDocument with_two_stocks() {
  ExampleDocument example;
  example.items["materials"]["fine"] = {{"name", "Fine stock"},
                                        {"gradation",
                                         {{{"size", "4 in"}, {"smaller", "0 %"}},
                                          {{"size", "9 in"}, {"smaller", "40 %"}},
                                          {{"size", "14 in"}, {"smaller", "100 %"}}}}};
  return example;
}

// 60 % of the coarse stock are smaller than 18 in.
TEST(SiteBlend, MaterialsMayBeScalpedForTheQuestion) {
  const auto site = site_from(with_two_stocks().document());
  ASSERT_TRUE(site);
  BlendQuestion question{"fhwa-3", {"coarse", "fine"}, std::nullopt, 0, 12, Length::inches(18)};
  const auto answer = blend_on_site(*site, question);
  ASSERT_TRUE(answer) << answer.problems().front().sentence();
  ASSERT_EQ(answer->materials.size(), 3U);
  EXPECT_EQ(answer->materials[1].id, "coarse-scalped");
  EXPECT_NEAR(answer->materials[1].gradation.percent_smaller(Length::inches(18)), 100, 1e-9);
  EXPECT_NEAR(answer->materials[1].gradation.percent_smaller(Length::inches(9)), 100 * 4 / 60.0,
              1e-9);
  // All of the fine stock is smaller: it stays one material, and nothing is said of it.
  EXPECT_EQ(answer->materials[2].id, "fine");
  question.scalp_at.reset();
  EXPECT_EQ(blend_on_site(*site, question)->materials.size(), 2U);
}

TEST(SiteBlend, WhatCannotBeScalpedThereIsSaidAndStays) {
  const auto site = site_from(with_two_stocks().document());
  ASSERT_TRUE(site);
  const BlendQuestion question{"fhwa-3", {"coarse", "fine"}, std::nullopt, 0,
                               12,       Length::inches(6)};
  const auto answer = blend_on_site(*site, question);
  ASSERT_TRUE(answer);
  ASSERT_EQ(answer->materials.size(), 3U);  // coarse, fine, fine scalped
  EXPECT_EQ(answer->materials[2].id, "fine-scalped");
  ASSERT_FALSE(answer->why.empty());
  EXPECT_EQ(answer->why[0].rfind("Coarse stock is not scalped.", 0), 0U) << answer->why[0];
}

}  // namespace
}  // namespace proofstone
