#include "engine/json/json_text.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <nlohmann/json.hpp>

namespace proofstone {
namespace {

using nlohmann::json;

TEST(JsonText, ObjectsAndListsReadBack) {
  JsonText text;
  text.begin_object().field("name", "a").key("list").begin_array();
  text.value(1).begin_object().end_object().value(true).begin_array().end_array().value(2.5);
  text.end_array().field("words", std::vector<std::string>{"one", "two"}).field("no", false);
  text.end_object();
  EXPECT_EQ(text.text(),
            R"({"name":"a","list":[1,{},true,[],2.5],"words":["one","two"],"no":false})");
}

TEST(JsonText, EveryByteOfATextReadsBack) {
  std::string all;
  for (int byte = 0; byte < 0x80; ++byte) all += static_cast<char>(byte);
  all += "γs−γw, 1½ ft³, 🪨";
  JsonText text;
  text.value(all);
  EXPECT_EQ(json::parse(text.text()).get<std::string>(), all);
}

TEST(JsonText, NothingSaidIsAnEmptyText) {
  JsonText text;
  text.begin_array().value(std::string_view()).value(std::string()).end_array();
  EXPECT_EQ(text.text(), R"(["",""])");
}

TEST(JsonText, LettersMayBeEscaped) {
  const std::string said = "γs−γw, 1½ ft³, 🪨, \xFF";
  JsonText escaped(JsonText::Letters::escaped);
  escaped.value(said);
  EXPECT_EQ(escaped.text(), R"("\u03b3s\u2212\u03b3w, 1\u00bd ft\u00b3, \ud83e\udea8, \ufffd")");
  JsonText plain;
  plain.value(said);
  EXPECT_EQ(json::parse(escaped.text()), json::parse(plain.text()));
}

TEST(JsonText, AnEscapeIsFoundWhereverItStands) {
  for (const char special : {'"', '\\', '\n', '\0', '\x1F'}) {
    for (std::size_t at = 0; at < 20; ++at) {
      std::string said(20, '!');  // the plain byte nearest below the quotation mark
      said[at] = special;
      JsonText text;
      text.value(said);
      EXPECT_EQ(json::parse(text.text()).get<std::string>(), said) << at;
    }
  }
}

TEST(JsonText, WhatIsNotUtf8IsReplacedAsTheLibraryDoes) {
  for (const std::string bad : {"a\xFFz", "\xC3", "x\xED\xA0\x80y", "\xF0\x9F\xAA", "\xC0\x80\""}) {
    JsonText text;
    text.value(bad);
    const auto read = json::parse(text.text()).get<std::string>();
    EXPECT_NE(read.find("\xEF\xBF\xBD"), std::string::npos);
  }
}

TEST(JsonText, NumbersReadBackToTheSameDouble) {
  for (const double number :
       {0.0, 1.0, -1.5, 0.1, 1e21, 1e-7, 123456789012345680.0, std::numeric_limits<double>::max(),
        std::numeric_limits<double>::denorm_min(), 1.0 / 3.0, -std::nextafter(2.0, 3.0)}) {
    JsonText text;
    text.value(number);
    EXPECT_EQ(json::parse(text.text()).get<double>(), number) << text.text();
  }
}

TEST(JsonText, ANumberThatIsNotFiniteIsNull) {
  JsonText text;
  text.begin_array().value(std::nan("")).value(HUGE_VAL).value(-HUGE_VAL).end_array();
  EXPECT_EQ(text.text(), "[null,null,null]");
}

}  // namespace
}  // namespace proofstone
