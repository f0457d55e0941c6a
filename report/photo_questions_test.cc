#include "report/photo_questions.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

namespace proofstone {
namespace {

using nlohmann::json;

json asked(const json& request) { return json::parse(answer_photo_question(request.dump())); }

json picture() {
  return json::parse(R"({"width": 800, "height": 600, "view": "oblique",
    "balls": [{"middle": [400, 300], "radius": 180, "diameter": "12 in"}],
    "outlines": [[[100, 100], [300, 100], [300, 500], [100, 500]]]})");
}

json question(const char* ask) {
  json request = {{"ask", ask}, {"lies", "heap"}, {"pictures", json::array()}};
  request["pictures"].push_back(picture());
  return request;
}

TEST(PhotoQuestions, TellCautionsOfTheScale) {
  const auto answer = asked(question("scale"));
  ASSERT_TRUE(answer.contains("cautions")) << answer;
  EXPECT_EQ(answer["cautions"].size(), 4U) << answer;  // oblique, one mark, too large, off the rock
  auto later = question("scale");
  later["first"] = 3;
  EXPECT_EQ(asked(later)["cautions"][0].get<std::string>().substr(0, 7), "Photo 3");
}

TEST(PhotoQuestions, TellTheNodesOfACheck) {
  const auto answer = asked(question("check"));
  ASSERT_TRUE(answer.contains("nodes")) << answer;
  EXPECT_EQ(answer["nodes"].size(), 30U);
  EXPECT_EQ(answer["nodes"][0]["picture"], 1);
  EXPECT_EQ(answer["nodes"][0]["at"].size(), 2U);
}

TEST(PhotoQuestions, ThatDoNotReadAreRefused) {
  const auto code = [](const json& request) {
    const auto answer = asked(request);
    return answer.contains("problems") ? answer["problems"][0]["code"].get<std::string>() : "";
  };
  EXPECT_EQ(json::parse(answer_photo_question("{"))["problems"][0]["code"], "not-json");
  EXPECT_EQ(code(question("paint")), "unknown-word");
  auto request = question("scale");
  request["pictures"][0]["view"] = "from above";
  EXPECT_EQ(code(request), "unknown-word");
  request = question("scale");
  request.erase("pictures");
  EXPECT_EQ(code(request), "missing-field");
  request = question("check");
  request["more"] = 1;
  EXPECT_EQ(code(request), "unknown-field");
}

}  // namespace
}  // namespace proofstone
