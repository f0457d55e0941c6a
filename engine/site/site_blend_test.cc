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

}  // namespace
}  // namespace proofstone
