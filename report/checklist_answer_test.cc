// The checklist of a walk: what it asks can be taken down as it says, and counts.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <set>

#include "report/example_request.h"

namespace proofstone {
namespace {

using nlohmann::json;

json ask_checklist(const json& document, const std::string& zone, const std::string& units = "us") {
  return ask_example(
      {{"ask", "checklist"}, {"zone", zone}, {"units", units}, {"document", document}});
}

json example() { return json::parse(example_file("site.json")); }

/// The example after one more change.
json changed(json document, const std::string& pointer, json to) {
  json change = {{"set", pointer}, {"to", std::move(to)}};
  json revision = {
      {"id", "walked"},        {"after", json::array()}, {"time", "2026-07-01T10:00:00Z"},
      {"author", "L. Brandt"}, {"note", "Walk"},         {"changes", json::array()}};
  revision["after"].push_back(document["revisions"].back()["id"]);
  revision["changes"].push_back(std::move(change));
  document["revisions"].push_back(std::move(revision));
  return document;
}

json seen_of(const json& check) {
  return {{"name", check["title"]},
          {"zone", "outer-bank"},
          {"who", "L. Brandt"},
          {"when", "2026-07-01T10:00:00Z"}};
}

/// The example after the check was taken down as its `takes` says.
json walked(const json& check) {
  auto seen = seen_of(check);
  const auto length = "1 " + check["unit"].get<std::string>();
  if (check["takes"] == "thicknesses") {
    seen["thicknesses"] = json::array();
    for (int i = 0; i < 3; ++i) seen["thicknesses"].push_back(length);
    return changed(example(), "/layer_surveys/walked", seen);
  }
  json entry;
  if (check["takes"] == "result") entry["result"] = "fail";
  if (check["takes"] == "lengths") {
    entry["measured"] = json::array();
    entry["measured"].push_back(length);
  }
  for (const auto& material : check["materials"]) {
    entry["loads"][material["id"].get<std::string>()] = 2;
  }
  seen["checks"][check["id"].get<std::string>()] = entry;
  return changed(example(), "/placing_walks/walked", seen);
}

TEST(Checklist, WhatItAsksIsTakenDownAsItSays) {
  const auto answer = ask_checklist(example(), "outer-bank");
  ASSERT_TRUE(answer.contains("checklist")) << answer.dump();
  const auto& checks = answer["checklist"]["checks"];
  ASSERT_GE(checks.size(), 10U);
  std::set<std::string> ids;
  std::set<std::string> ways;
  for (const auto& check : checks) {
    ids.insert(check["id"]);
    ways.insert(check["takes"]);
    EXPECT_FALSE(check["next"].get<std::string>().empty()) << check["id"];
    EXPECT_FALSE(check["how"].get<std::string>().empty()) << check["id"];
    const auto after = ask_checklist(walked(check), "outer-bank");
    ASSERT_TRUE(after.contains("checklist")) << check["id"] << after.dump();
    for (const auto& now : after["checklist"]["checks"]) {
      if (now["id"] != check["id"]) continue;
      EXPECT_GT(now["evidence"].size(), check["evidence"].size()) << check["id"];
    }
  }
  EXPECT_EQ(ids.size(), checks.size()) << "each check has an id of its own";
  EXPECT_TRUE(ways.contains("lengths") && ways.contains("result") && ways.contains("thicknesses"));
}

TEST(Checklist, AFailureAsksForANonconformance) {
  const auto before = ask_checklist(example(), "outer-bank")["checklist"];
  for (const auto& check : before["checks"]) {
    if (check["takes"] != "result") continue;
    const auto after = ask_checklist(walked(check), "outer-bank")["checklist"];
    for (const auto& now : after["checks"]) {
      if (now["id"] != check["id"]) continue;
      EXPECT_EQ(now["outcome"], "falls short");
      EXPECT_NE(now["next"].get<std::string>().find("nonconformance"), std::string::npos);
    }
    EXPECT_EQ(after["outcome"], "falls short");
  }
}

TEST(Checklist, ReadsInTheUnitsAsked) {
  const auto us = ask_checklist(example(), "outer-bank")["checklist"]["checks"];
  const auto si = ask_checklist(example(), "outer-bank", "si")["checklist"]["checks"];
  ASSERT_EQ(us.size(), si.size());
  for (std::size_t i = 0; i < us.size(); ++i) {
    EXPECT_EQ(us[i]["id"], si[i]["id"]);
    EXPECT_TRUE(us[i]["unit"] == "ft" || us[i]["unit"] == "in");
    EXPECT_TRUE(si[i]["unit"] == "m" || si[i]["unit"] == "mm");
  }
}

TEST(Checklist, NamesTheZonesWhereThereIsNoSuchZone) {
  const auto answer = ask_checklist(example(), "inner-bank");
  ASSERT_TRUE(answer.contains("problems"));
  EXPECT_EQ(answer["problems"][0]["where"], "/zone");
  EXPECT_EQ(answer["problems"][0]["allowed"], "outer-bank");
}

}  // namespace
}  // namespace proofstone
