#include "engine/json/strict_json.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>

namespace proofstone {
namespace {

std::string code_of(std::string_view text) {
  const auto parsed = parse_strict_json(text);
  return parsed ? "good" : parsed.problems().front().code;
}

TEST(StrictJson, ReadsWhatIsWellFormed) {
  const auto parsed = parse_strict_json("\xEF\xBB\xBF{\"a\": [1, {\"b\": \"ft³/s\"}]}\n");
  ASSERT_TRUE(parsed);
  EXPECT_EQ((*parsed)["a"][1]["b"], "ft³/s");
}

TEST(StrictJson, NamesWhatIsWrong) {
  EXPECT_EQ(code_of(""), "empty");
  EXPECT_EQ(code_of(" \n\t"), "empty");
  EXPECT_EQ(code_of(std::string_view("{\"a\": 1\0}", 9)), "not-text");
  EXPECT_EQ(code_of("{\"a\": 1"), "not-json");
  EXPECT_EQ(code_of("{\"a\": 1} tail"), "not-json");
  EXPECT_EQ(code_of("{\"a\": NaN}"), "not-json");
  EXPECT_EQ(code_of("{\"a\": 1e999}"), "not-json");
  EXPECT_EQ(code_of("{\"a\": \"\xFF\xFE\"}"), "not-json");
  EXPECT_EQ(code_of("{\"a\": 1, \"a\": 2}"), "repeated-field");
  EXPECT_EQ(code_of("{\"x\": {\"a\": 1}, \"y\": {\"a\": 1}}"), "good");
}

TEST(StrictJson, SaysWhereItBreaks) {
  const auto parsed = parse_strict_json("{\n  \"a\": 1,\n  oops\n}");
  ASSERT_FALSE(parsed);
  EXPECT_NE(parsed.problems().front().where.find("line 3"), std::string::npos);
}

TEST(StrictJson, SaysWhereAFieldStandsTwice) {
  const auto parsed = parse_strict_json(R"({"a/b": [{}, {"c": {"d": 1, "e": 2, "d": 3}}]})");
  ASSERT_FALSE(parsed);
  EXPECT_EQ(parsed.problems().front().where, "/a~1b/1/c");
}

TEST(StrictJson, RefusesHostileDepthAndSize) {
  EXPECT_EQ(code_of(std::string(100000, '[')), "too-deep");
  EXPECT_EQ(code_of(std::string(60, '[') + std::string(60, ']')), "good");
  EXPECT_EQ(code_of(std::string(65, '[') + std::string(65, ']')), "too-deep");
  // Brackets inside a text are no nesting.
  EXPECT_EQ(code_of("\"" + std::string(500, '[') + "\""), "good");
  EXPECT_EQ(code_of(std::string((64u << 20) + 1, ' ')), "too-large");
}

}  // namespace
}  // namespace proofstone
