// What a screen asks after each stone is what the whole assessment says of the lot.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "report/example_request.h"

namespace proofstone {
namespace {

using nlohmann::json;

TEST(LotRequest, SaysOfTheLotWhatTheWholeAssessmentSays) {
  const auto whole = ask_example({{"ask", "assess"}});
  const auto lot =
      ask_example({{"ask", "lot"}, {"lot", "first-deliveries"}, {"pictures", {{"width", 390}}}});
  ASSERT_TRUE(lot.contains("findings")) << lot.dump();
  ASSERT_TRUE(whole.contains("findings")) << whole.dump();
  std::size_t compared = 0;
  for (const auto& finding : lot["findings"]["findings"]) {
    for (const auto& same : whole["findings"]["findings"]) {
      if (same["id"] != finding["id"]) continue;
      EXPECT_EQ(same, finding) << finding["id"];
      ++compared;
    }
  }
  EXPECT_EQ(compared, lot["findings"]["findings"].size());
  EXPECT_GT(compared, 2U);
  ASSERT_GE(lot["pictures"].size(), 2U);
  EXPECT_EQ(lot["pictures"][0]["kind"], "gradation");
}

TEST(LotRequest, ALotThatIsNotThereIsNamed) {
  const auto answer = ask_example({{"ask", "lot"}, {"lot", "no<such>lot"}});
  ASSERT_TRUE(answer.contains("problems"));
  EXPECT_EQ(answer["problems"][0]["where"], "/lot");
  EXPECT_NE(answer["problems"][0]["allowed"].get<std::string>().find("first-deliveries"),
            std::string::npos);
}

}  // namespace
}  // namespace proofstone
