#include "report/markup.h"

#include <gtest/gtest.h>

#include "report/markup_check.h"

namespace proofstone {
namespace {

TEST(Markup, EscapesWhatWouldBeMarkup) {
  EXPECT_EQ(escaped("<script>alert('x & \"y\"')</script>"),
            "&lt;script&gt;alert(&#39;x &amp; &quot;y&quot;&#39;)&lt;/script&gt;");
}

TEST(Markup, KeepsLettersOfEveryScript) {
  EXPECT_EQ(escaped("Šárka ½ 石 🪨 ≥ 1V:2.5H\nnext"), "Šárka ½ 石 🪨 ≥ 1V:2.5H\nnext");
}

TEST(Markup, ReplacesWhatMustNotBeShown) {
  EXPECT_EQ(escaped(std::string("a\0b\x1B\x7F", 5)), "a\uFFFDb\uFFFD\uFFFD");
  EXPECT_EQ(escaped("a\xC2\x85"
                    "b"),
            "a\uFFFDb");                                       // C1 control
  EXPECT_EQ(escaped("meets\u202E txet"), "meets\uFFFD txet");  // writing turned round
  EXPECT_EQ(escaped("\u2066x\u2069\u2028"), "\uFFFDx\uFFFD\uFFFD");
  EXPECT_EQ(escaped("\xFFz\xE2\x82"), "\uFFFDz\uFFFD\uFFFD");  // not UTF-8
  EXPECT_EQ(escaped(""), "");
}

TEST(Markup, IdsAreLettersDigitsAndHyphens) {
  EXPECT_EQ(id_from("rock-size.outer bank\"><x"), "rock-size-outer-bank---x");
}

TEST(MarkupCheck, SeesWhatIsWrong) {
  using testing_markup::content_problem;
  using testing_markup::nesting_problem;
  EXPECT_EQ(nesting_problem("<a><b x=\"1\"/>t &amp; u</a>"), "");
  EXPECT_NE(nesting_problem("<a><b></a></b>"), "");
  EXPECT_NE(nesting_problem("<a>"), "");
  EXPECT_NE(nesting_problem("<a x=\"1></a>"), "");
  EXPECT_NE(nesting_problem("<a>b & c</a>"), "");
  EXPECT_NE(nesting_problem("<a>b > c</a>"), "");
  EXPECT_NE(content_problem("<a x=\"nan\"/>"), "");
  EXPECT_NE(content_problem("<a id=\"b\"/><c id=\"b\"/>"), "");
}

}  // namespace
}  // namespace proofstone
