// Where the device was that took something down: read, refused, and shown on the record.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"
#include "engine/site/record_entries.h"

namespace proofstone {
namespace {

using nlohmann::json;

const char* const noon = "2026-05-20T12:00:00Z";

json position(const json& latitude, const json& longitude, const json& more = json::object()) {
  json one = {{"latitude", latitude}, {"longitude", longitude}};
  one.update(more);
  return one;
}

ExampleDocument with_load_at(const json& where) {
  ExampleDocument example;
  example.items["loads"]["one"] = {{"lot", "first"}, {"when", noon}, {"position", where}};
  return example;
}

Problem first_problem(const json& where) {
  const auto site = read_site(with_load_at(where).text());
  return site ? Problem{} : site.problems().front();
}

TEST(Position, IsReadInDecimalDegreesUpToTheEndsOfTheEarth) {
  for (const auto& where :
       {position("39.73921°", "-104.99025°"), position("-90°", "180°"), position("90 deg", "-180°"),
        position("0°", "0°", {{"accuracy", "6 m"}, {"when", noon}})}) {
    EXPECT_EQ(first_problem(where).what, "") << where;
  }
}

TEST(Position, IsRefusedWithASentenceWhereItIsNone) {
  const auto refused = [](const json& where, const char* code, const char* field) {
    const auto problem = first_problem(where);
    EXPECT_EQ(problem.code, code) << where;
    EXPECT_EQ(problem.where, std::string("/loads/one/position") + field) << where;
    EXPECT_NE(problem.what, "") << where;
  };
  refused(position("90.01°", "0°"), "out-of-range", "/latitude");
  refused(position("0°", "-180.5°"), "out-of-range", "/longitude");
  refused(position("1e400°", "0°"), "number-too-large", "/latitude");
  refused(position("NaN°", "0°"), "not-finite", "/latitude");
  refused(position("39.7", "0°"), "missing-unit", "/latitude");
  refused(position("1V:2H", "0°"), "not-an-angle", "/latitude");
  refused(position(39.7, 0), "missing-unit", "/latitude");
  refused({{"latitude", "39.7°"}}, "missing-field", "/longitude");
  refused("39.7, -104.9", "not-an-object", "");
  refused(position("39.7°", "0°", {{"accuracy", "-6 m"}}), "implausible", "/accuracy");
  refused(position("39.7°", "0°", {{"accuracy", "9000 km"}}), "implausible", "/accuracy");
  refused(position("39.7°", "0°", {{"when", "at noon"}}), "bad-time", "/when");
  refused(position("39.7°", "0°", {{"height", "6 m"}}), "unknown-field", "/height");
}

std::vector<std::string> words_with(const json& where) {
  auto example = with_load_at(where);
  example.items["looks"]["count"]["position"] = where;
  example.items["looks"]["count"]["where"] = "north face";
  const auto site = read_site(example.text());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  std::vector<std::string> words;
  if (!site) return words;
  for (const auto& entry : record_entries(*site, Wording(UnitSystem::us_customary))) {
    words.push_back(entry.words);
  }
  return words;
}

TEST(Position, StandsOnTheRecordAsPeopleWriteIt) {
  const auto shown = [](const json& where, const std::string& text) {
    int number = 0;
    const auto all = words_with(where);
    for (const auto& words : all) {
      if (words.find(text) != std::string::npos) ++number;
    }
    EXPECT_EQ(number, 2) << text << " in " << fmt::format("{}", fmt::join(all, " | "));
  };
  shown(position("39.739213°", "-104.990251°"), "39.73921° N, 104.99025° W");
  shown(position("-12.5°", "130.75°", {{"accuracy", "6 m"}}),
        "12.50000° S, 130.75000° E (within 6 m)");
  shown(position("1°", "2°", {{"when", "2026-05-20T11:58:00Z"}}), "(at 2026-05-20T11:58:00Z)");
  const auto at_noon = words_with(position("1°", "2°", {{"when", noon}}));
  EXPECT_NE(fmt::format("{}", fmt::join(at_noon, " | ")).find("north face; 1.00000° N"),
            std::string::npos);
}

TEST(Position, ChangesNoFinding) {
  const auto sentences = [](const json& where) {
    auto example = with_load_at(where);
    if (where.is_null()) example.items["loads"]["one"].erase("position");
    const auto site = read_site(example.text());
    std::string all;
    if (!site) return all;
    for (const auto& finding : assess(*site, UnitSystem::us_customary).findings) {
      all += finding.id + finding.sentence + "\n";
    }
    return all;
  };
  EXPECT_NE(sentences(nullptr), "");
  EXPECT_EQ(sentences(position("1°", "2°")), sentences(nullptr));
}

}  // namespace
}  // namespace proofstone
