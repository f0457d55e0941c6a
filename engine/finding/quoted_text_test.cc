#include "engine/finding/quoted_text.h"

#include <gtest/gtest.h>

#include <string>

namespace proofstone {
namespace {

// The table of well-formed byte sequences of The Unicode Standard, table 3-7.
TEST(IsUtf8, accepts_well_formed_text_only) {
  for (const char* text :
       {"", "ft", "ft³", "−", "€", "\xF0\x9F\xAA\xA8", "\xF4\x8F\xBF\xBF", "\xED\x9F\xBF"}) {
    EXPECT_TRUE(is_utf8(text)) << text;
  }
  for (const char* text :
       {"\x80", "\xC0\xAF", "\xC1\xBF", "\xE0\x80\x80", "\xE2\x82", "\xED\xA0\x80",
        "\xF0\x80\x80\x80", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFF", "a\xC3"}) {
    EXPECT_FALSE(is_utf8(text)) << in_quotes(text);
  }
}

TEST(InQuotes, shows_short_text_whole) {
  EXPECT_EQ(in_quotes("5 ft"), "“5 ft”");
  EXPECT_EQ(in_quotes(""), "“”");
  EXPECT_EQ(in_quotes("5 ft³"), "“5 ft³”");
}

TEST(InQuotes, cuts_long_text_between_characters) {
  std::string stones;
  std::string forty;
  for (int i = 0; i < 1000; ++i) {
    stones += "³";
    if (i < 40) forty += "³";
  }
  EXPECT_EQ(in_quotes(stones), "“" + forty + "…”");
}

TEST(InQuotes, is_itself_readable_text) {
  EXPECT_EQ(in_quotes("a\nb\tc\x7F"), "“a?b?c?”");
  EXPECT_EQ(in_quotes("5 \xFF\xFE"), "“5 ??”");
  EXPECT_EQ(in_quotes(std::string_view("\0x", 2)), "“?x”");
}

}  // namespace
}  // namespace proofstone
