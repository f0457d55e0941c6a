#include "report/svg_canvas.h"

#include <gtest/gtest.h>

#include <limits>

#include "report/markup_check.h"

namespace proofstone {
namespace {

TEST(SvgNumber, HasAtMostTwoDecimalsAndNoNoise) {
  EXPECT_EQ(svg_number(0), "0");
  EXPECT_EQ(svg_number(-0.0), "0");
  EXPECT_EQ(svg_number(-0.004), "0");
  EXPECT_EQ(svg_number(12), "12");
  EXPECT_EQ(svg_number(0.1 + 0.2), "0.3");
  EXPECT_EQ(svg_number(-7.256), "-7.26");
  EXPECT_EQ(svg_number(1.05), "1.05");
  EXPECT_EQ(svg_number(-0.05), "-0.05");
}

TEST(SvgNumber, NeverWritesWhatIsNoNumber) {
  EXPECT_EQ(svg_number(std::numeric_limits<double>::quiet_NaN()), "0");
  EXPECT_EQ(svg_number(std::numeric_limits<double>::infinity()), "0");
  EXPECT_EQ(svg_number(1e300), "1000000");
  EXPECT_EQ(svg_number(-1e300), "-1000000");
}

TEST(SvgCanvas, WritesAWholePicture) {
  SvgCanvas canvas("a.b", 100);
  canvas.begin_clipped_group("x", {{0, 0}, {9, 0}, {9, 9}});
  canvas.line({0, 0}, {1, 2.5}, {Ink::none, 1, Ink::river, 2, "4 3", "level"});
  canvas.end_group();
  canvas.text({1, 2}, "<&>", {12, TextAnchor::end, Ink::ink, true, true, {}});
  const auto svg = canvas.finish(50, "p", "T \"1\"", "D");
  EXPECT_EQ(testing_markup::nesting_problem(svg), "");
  EXPECT_EQ(testing_markup::content_problem(svg), "");
  EXPECT_NE(svg.find("viewBox=\"0 0 100 50\""), std::string::npos);
  EXPECT_NE(svg.find("role=\"img\""), std::string::npos);
  EXPECT_NE(svg.find("<title id=\"a-b-title\">T &quot;1&quot;</title>"), std::string::npos);
  EXPECT_NE(svg.find("clip-path=\"url(#a-b-clip-1)\""), std::string::npos);
  EXPECT_NE(svg.find("stroke=\"var(--river, #1d5c87)\""), std::string::npos);
  EXPECT_NE(svg.find("&lt;&amp;&gt;"), std::string::npos);
}

TEST(PathThrough, JoinsPoints) {
  EXPECT_EQ(path_through({{1, 2}, {3, 4.5}}, false), "M1 2L3 4.5");
  EXPECT_EQ(path_through({{1, 2}, {3, 4}}, true), "M1 2L3 4Z");
  EXPECT_EQ(path_through({}, true), "");
}

}  // namespace
}  // namespace proofstone
