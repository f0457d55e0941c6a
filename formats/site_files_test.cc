#include "formats/site_files.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/quantity/measure.h"
#include "formats/section_csv.h"
#include "formats/stone_count_csv.h"
#include "formats/weighed_sample_csv.h"

namespace proofstone {
namespace {

using nlohmann::json;

const SuppliedFile section_file{"section.csv",
                                "station (US survey ft),elevation (ft),roughness "
                                "n\n0,101.3,0.035\n12.1,95.7,0.03\n24,99,0.035\n"};
const SuppliedFile count_file{"count.csv", "stone,intermediate axis (in)\n1,11.5\n2,7.3\n3,9\n"};
const SuppliedFile bins_file{"bins.csv",
                             "larger than (in),not larger than (mm),stones\n,76.2,4\n3,152.4,7\n"};
const SuppliedFile weighed_file{
    "weighed.csv",
    "larger than (in),not larger than (in),mass (lb),stones\n,3,310,41\n3,6,820.3,12\n"};

json document_with(const json& change) {
  return {{"proofstone", "site"},
          {"format", 1},
          {"revisions", json::array({{{"id", "r1"}, {"changes", json::array({change})}}})}};
}

json file(const std::string& name) { return {{"file", name}}; }

json document() {
  json changes = json::array();
  changes.push_back({{"set", "/sections/s"}, {"to", {{"survey", file("section.csv")}}}});
  changes.push_back({{"set", "/looks/a"}, {"to", {{"stones", file("count.csv")}}}});
  changes.push_back({{"set", "/looks/b/stones"}, {"to", file("bins.csv")}});
  changes.push_back({{"set", "/looks/c"}, {"to", {{"groups", file("weighed.csv")}}}});
  json site = document_with({});
  site["revisions"][0]["changes"] = changes;
  return site;
}

const std::vector<SuppliedFile> all_files{section_file, count_file, bins_file, weighed_file};

Problem problem_of(const json& site, const std::vector<SuppliedFile>& files) {
  const auto filled = with_files(site, files);
  if (filled) {
    ADD_FAILURE() << "was filled: " << filled->dump();
    return {};
  }
  return filled.problems().front();
}

TEST(SiteFiles, NamesEachFileOnceInOrder) {
  auto site = document();
  site["revisions"].push_back(site["revisions"][0]);
  EXPECT_EQ(files_named_in(site),
            (std::vector<std::string>{"section.csv", "count.csv", "bins.csv", "weighed.csv"}));
}

TEST(SiteFiles, PutsTheTablesIntoTheDocument) {
  const auto filled = with_files(document(), all_files);
  ASSERT_TRUE(filled) << filled.problems().front().sentence();
  const json& changes = (*filled)["revisions"][0]["changes"];
  const json& survey = changes[0]["to"]["survey"];
  ASSERT_EQ(survey["points"].size(), 3U);
  EXPECT_EQ(
      survey["points"][1],
      (json{{"station", "12.1 US survey ft"}, {"elevation", "95.7 ft"}, {"roughness", "0.03"}}));
  EXPECT_EQ(changes[1]["to"]["stones"], (json{{"axes", {"11.5 in", "7.3 in", "9 in"}}}));
  const json& bins = changes[2]["to"]["bins"];
  EXPECT_EQ(bins[0], (json{{"not_larger_than", "76.2 mm"}, {"stones", 4}}));
  EXPECT_EQ(bins[1],
            (json{{"larger_than", "3 in"}, {"not_larger_than", "152.4 mm"}, {"stones", 7}}));
  const json& groups = changes[3]["to"]["groups"]["groups"];
  EXPECT_EQ(groups[1], (json{{"larger_than", "3 in"},
                             {"not_larger_than", "6 in"},
                             {"mass", "820.3 lb"},
                             {"stones", 12}}));
  EXPECT_EQ(files_named_in(*filled), std::vector<std::string>{});
}

TEST(SiteFiles, TextsReadBackToTheSameNumbers) {
  std::string rows;
  for (int i = 1; i <= 190; ++i)
    rows += std::to_string(i) + "." + std::to_string(i * 7919 % 1000) + "\n";
  for (const std::string unit : {"in", "ft", "mm", "cm"}) {
    const SuppliedFile stones{"stones.csv", "intermediate axis (" + unit + ")\n" + rows};
    const auto filled = with_files(
        document_with({{"set", "/looks/a/stones"}, {"to", file("stones.csv")}}), {stones});
    const auto table = read_stone_count_csv(stones.text, stones.name);
    if (unit == "ft") {  // 190 ft is no stone
      EXPECT_EQ(static_cast<bool>(filled), static_cast<bool>(table));
      continue;
    }
    ASSERT_TRUE(filled) << filled.problems().front().sentence();
    ASSERT_TRUE(table);
    const json& axes = (*filled)["revisions"][0]["changes"][0]["to"]["axes"];
    for (std::size_t i = 0; i < axes.size(); ++i) {
      const auto read = parse_quantity<Length>(axes[i].get<std::string>());
      ASSERT_TRUE(read);
      EXPECT_EQ(read->si(), table->intermediate_axes[i].si()) << axes[i];
    }
  }
}

TEST(SiteFiles, LeavesEverythingElseAlone) {
  json odd = document();
  odd["revisions"][0]["changes"] = json::array(
      {{{"set", "/x"}, {"to", {{"note", file("count.csv")}, {"survey", {{"file", 7}}}}}},
       {{"set", "/y"}, {"to", {{"survey", {{"file", "a.csv"}, {"sheet", 2}}}}}},
       {{"remove", "/z"}},
       "text",
       5,
       json::array()});
  const auto filled = with_files(odd, {});
  ASSERT_TRUE(filled);
  EXPECT_EQ(*filled, odd);
  for (const json& not_a_site : {json(), json(3), json::array({1}), json{{"revisions", 4}},
                                 json{{"revisions", {{{"changes", "no"}}, 7}}}}) {
    EXPECT_TRUE(files_named_in(not_a_site).empty());
    EXPECT_TRUE(with_files(not_a_site, {}));
  }
}

TEST(SiteFiles, RefusesAFileThatIsNotSupplied) {
  const auto problem = problem_of(document(), {section_file, count_file, bins_file});
  EXPECT_EQ(problem.code, "file-missing");
  EXPECT_EQ(problem.where, "/revisions/0/changes/3/to/groups/file");
}

TEST(SiteFiles, RefusesAFileSuppliedTwice) {
  auto files = all_files;
  files.push_back(section_file);
  const auto problem = problem_of(document(), files);
  EXPECT_EQ(problem.code, "file-supplied-twice");
  EXPECT_EQ(problem.where, "/revisions/0/changes/0/to/survey/file");
}

TEST(SiteFiles, RefusesNamesWithAPath) {
  for (const std::string name : {"../count.csv", "a/count.csv", "a\\count.csv", "..", ".", "",
                                 "C:x", "/etc/passwd", "a\nb"}) {
    const auto site = document_with({{"set", "/looks/a"}, {"to", {{"stones", file(name)}}}});
    const auto problem = problem_of(site, {{name, count_file.text}});
    EXPECT_EQ(problem.code, "not-a-file-name") << name;
    EXPECT_EQ(problem.where, "/revisions/0/changes/0/to/stones/file");
  }
}

TEST(SiteFiles, PointersEscapeTheirTokens) {
  const auto site =
      document_with({{"set", "/x"}, {"to", {{"a/b~c", {{"survey", file("s.csv")}}}}}});
  EXPECT_EQ(problem_of(site, {}).where, "/revisions/0/changes/0/to/a~1b~0c/survey/file");
}

TEST(SiteFiles, ReportsWhatIsWrongInAFileOnce) {
  json site = document();
  site["revisions"].push_back(site["revisions"][0]);
  auto files = all_files;
  files[1].text = "stone,intermediate axis (in)\n1,NaN\n";
  const auto filled = with_files(site, files);
  ASSERT_FALSE(filled);
  ASSERT_EQ(filled.problems().size(), 1U);
  EXPECT_EQ(filled.problems()[0].file, "count.csv");
  EXPECT_EQ(filled.problems()[0].where, "row 2, intermediate axis");
}

TEST(SiteFiles, StopsASmallDocumentThatAsksForTooMuch) {
  std::string rows = "intermediate axis (in)\n";
  for (int i = 0; i < 20000; ++i) rows += "9\n";
  json site = document_with({});
  site["revisions"][0]["changes"] = json::array();
  for (int i = 0; i < 60; ++i) {
    site["revisions"][0]["changes"].push_back({{"set", "/l"}, {"to", {{"stones", file("a.csv")}}}});
  }
  EXPECT_EQ(problem_of(site, {{"a.csv", rows}}).code, "too-large");
}

TEST(SiteFiles, DeepDocumentsAreNotFollowedWithoutEnd) {
  json deep = file("count.csv");
  for (int i = 0; i < 500; ++i) deep = json::array({std::move(deep)});
  const auto site = document_with({{"set", "/x"}, {"to", std::move(deep)}});
  EXPECT_TRUE(files_named_in(site).empty());
}

}  // namespace
}  // namespace proofstone
