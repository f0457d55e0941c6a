#include "report/paper.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>

#include "report/example_request.h"
#include "report/markup_check.h"

namespace proofstone {
namespace {

using nlohmann::json;

json ask_paper(const json& paper) { return ask_example({{"ask", "report"}, {"paper", paper}}); }

std::string page(const json& paper) {
  const auto answer = ask_paper(paper);
  EXPECT_TRUE(answer.contains("html")) << answer.dump();
  if (!answer.contains("html")) return {};
  auto html = answer["html"].get<std::string>();
  EXPECT_EQ(testing_markup::nesting_problem(html), "");
  EXPECT_EQ(testing_markup::content_problem(html), "");
  EXPECT_NE(html.find("licensed engineer"), std::string::npos);
  EXPECT_NE(html.find("class=\"cautions\""), std::string::npos);
  return html;
}

bool says(const std::string& html, const std::string& text) {
  return html.find(text) != std::string::npos;
}

TEST(Paper, LotAcceptanceIsOfOneLotWithItsLooks) {
  const auto html = page({{"kind", "lot-acceptance"}, {"lot", "first-deliveries"}});
  EXPECT_TRUE(says(html, "Lot acceptance") || says(html, "lot acceptance"));
  EXPECT_TRUE(says(html, "What was looked at"));
  EXPECT_TRUE(says(html, "count of 100 stones"));
  EXPECT_TRUE(says(html, "weighed sample"));
  EXPECT_TRUE(says(html, "Accepted, or not, for the owner by"));
  EXPECT_TRUE(says(html, "id=\"finding-gradation-first-deliveries"));
  EXPECT_FALSE(says(html, "id=\"finding-rock-size"));
  EXPECT_FALSE(says(html, "Placing record</h2>"));
}

TEST(Paper, DesignBookLeavesEvidenceOut) {
  const auto html = page({{"kind", "design-book"}, {"zone", "outer-bank"}});
  EXPECT_TRUE(says(html, "id=\"finding-class-outer-bank"));
  EXPECT_FALSE(says(html, "Lot: "));
  EXPECT_FALSE(says(html, "id=\"finding-placing"));
  EXPECT_FALSE(says(html, "What was looked at"));
}

TEST(Paper, PlacingRecordShowsChecksAndCourse) {
  const auto html = page({{"kind", "placing-record"}, {"zone", "outer-bank"}});
  EXPECT_TRUE(says(html, "Placing record</h2>"));
  EXPECT_TRUE(says(html, "problem opened"));
  EXPECT_TRUE(says(html, "Inspected by"));
  EXPECT_FALSE(says(html, "Lot: "));
}

TEST(Paper, DailyReportIsOfOneDayByTheClockOfTheSite) {
  const std::string day = "2026-05-26";
  const auto html = page({{"kind", "daily-report"}, {"day", day}});
  EXPECT_TRUE(says(html, "Done and seen"));
  EXPECT_TRUE(says(html, "Time, UTC"));
  EXPECT_TRUE(says(html, "Load, ticket 4412"));
  const auto west = ask_paper({{"kind", "daily-report"}, {"day", day}, {"clock", "-06:00"}});
  ASSERT_TRUE(west.contains("html")) << west.dump();
  EXPECT_TRUE(says(west["html"], "Time, UTC−06:00"));
}

TEST(Paper, SaysWhatThereIsWhenItIsAskedForWhatThereIsNot) {
  const auto code = [](const json& paper) {
    const auto answer = ask_paper(paper);
    return answer.contains("problems") ? answer["problems"][0]["code"].get<std::string>() : "none";
  };
  EXPECT_EQ(code({{"kind", "lot-acceptance"}}), "no-such-lot");
  EXPECT_EQ(code({{"kind", "lot-acceptance"}, {"lot", "x"}}), "no-such-lot");
  EXPECT_EQ(code({{"kind", "placing-record"}, {"zone", "x"}}), "no-such-zone");
  EXPECT_EQ(code({{"kind", "daily-report"}, {"day", "1999-01-01"}}), "nothing-on-day");
  EXPECT_EQ(code({{"kind", "daily-report"}}), "nothing-on-day");
  EXPECT_EQ(code({{"kind", "daily-report"}, {"day", "2026-02-30"}}), "bad-day");
  EXPECT_EQ(code({{"kind", "daily-report"}, {"day", "2026-05-04"}, {"clock", "6"}}), "bad-clock");
  EXPECT_NE(code({{"kind", "poem"}}), "none");
  EXPECT_NE(code(json::array()), "none");
  const auto answer = ask_paper({{"kind", "lot-acceptance"}, {"lot", "x"}});
  EXPECT_TRUE(says(answer["problems"][0]["allowed"], "first-deliveries"));
}

}  // namespace
}  // namespace proofstone
