#include "report/outline_answers.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/vision/drawn_boards.h"

namespace proofstone {
namespace {

using nlohmann::json;

json asked(const json& request) { return json::parse(answer_outline_edit(request.dump())); }

std::string code_of(const json& request) {
  const auto answer = asked(request);
  return answer.contains("problems") ? answer["problems"][0]["code"].get<std::string>() : "";
}

json box(double left, double top, double right, double bottom) {
  json corners = json::array();
  for (const auto& [x, y] : {std::pair{left, top}, {right, top}, {right, bottom}, {left, bottom}}) {
    corners.push_back(json::array({x, y}));
  }
  return corners;
}

json list(const json& one) {
  json outlines = json::array();
  outlines.push_back(one);
  return outlines;
}

TEST(OutlineEdits, AreAskedAsText) {
  auto both = list(box(0, 0, 40, 40));
  both.push_back(box(41, 0, 90, 40));
  const auto joined = asked({{"ask", "join"}, {"pixel", 1}, {"outlines", both}});
  ASSERT_TRUE(joined.contains("outlines")) << joined;
  EXPECT_EQ(joined["outlines"].size(), 1U);

  json line = json::array();
  line.push_back(json::array({45, -5}));
  line.push_back(json::array({45, 50}));
  const auto parts =
      asked({{"ask", "cut"}, {"pixel", 1}, {"outlines", joined["outlines"]}, {"line", line}});
  ASSERT_TRUE(parts.contains("outlines")) << parts;
  EXPECT_EQ(parts["outlines"].size(), 2U);

  const auto drawn = asked({{"ask", "draw"},
                            {"pixel", 1},
                            {"outlines", parts["outlines"]},
                            {"path", box(20, 20, 70, 90)},
                            {"width", 400},
                            {"height", 300}});
  ASSERT_TRUE(drawn.contains("outlines")) << drawn;
  EXPECT_EQ(drawn["outlines"].size(), 1U);
}

TEST(OutlineEdits, ThatDoNotReadAreRefused) {
  EXPECT_EQ(json::parse(answer_outline_edit("nothing"))["problems"][0]["code"], "not-json");
  EXPECT_EQ(code_of({{"ask", "paint"}, {"pixel", 1}}), "unknown-word");
  EXPECT_EQ(code_of({{"ask", "join"}}), "missing-field");
  EXPECT_EQ(code_of({{"ask", "join"}, {"pixel", "1"}}), "not-a-number");
  EXPECT_EQ(code_of({{"ask", "join"}, {"pixel", 1}}), "one-piece");
  EXPECT_EQ(code_of({{"ask", "join"}, {"pixel", 1}, {"outlines", list(4)}}), "not-an-outline");
  EXPECT_EQ(code_of({{"ask", "join"}, {"pixel", 1}, {"outlines", list(list("a"))}}), "not-pixels");
  EXPECT_EQ(
      code_of({{"ask", "cut"}, {"pixel", 1}, {"outlines", json::array()}, {"line", json::array()}}),
      "no-line");
  EXPECT_EQ(code_of({{"ask", "draw"}, {"pixel", 1}, {"path", box(0, 0, 9, 9)}}), "missing-field");
}

TEST(MarksAnswer, ListsBoardsWithAllTheirNumbers) {
  auto pixels = speckled_ground(800, 600, 3);
  draw_board(pixels, {{400, 300}, 60, 8, 10}, 2);
  const auto answer = json::parse(marks_answer(pixels, "photo"));
  ASSERT_EQ(answer["boards"].size(), 1U) << answer;
  const auto& board = answer["boards"][0];
  EXPECT_EQ(board["number"], 2);
  EXPECT_EQ(board["marker_numbers"], json({6, 7, 8, 9, 10, 11}));
  EXPECT_EQ(board["markers"].size(), 6U);
  EXPECT_EQ(board["markers"][0]["corners"].size(), 4U);
  EXPECT_TRUE(answer["balls"].empty());
  EXPECT_EQ(json::parse(marks_answer({}, "photo"))["problems"][0]["code"], "not-a-photo");
}

TEST(OutlinesInTenths, AreFineEnough) {
  const auto rounded = outlines_in_tenths({{{1.26, 2}, {3.04, 4.449}}});
  ASSERT_EQ(rounded.size(), 1U);
  EXPECT_EQ(rounded[0][0][0], 1.3);
  EXPECT_EQ(rounded[0][1][1], 4.4);
}

}  // namespace
}  // namespace proofstone
