#include "office/quantities_workbook.h"

#include <gtest/gtest.h>

#include <array>
#include <cstdio>
#include <filesystem>
#include <nlohmann/json.hpp>

namespace proofstone {
namespace {

using nlohmann::json;

json answer() {
  return json::parse(R"({"quantities": {
    "currency": "USD", "prices_from": "a test", "engine": "0", "cautions": ["Take care."],
    "site": {"name": "A <site> & more", "revision": "r1"}, "without_price": [], "cost": 1234.5,
    "totals": [{"what": "Rock, Class III, ordered", "value": 1180.25, "unit": "ton",
                "how": "sum over the zones", "price": "rock: 58 USD for 1 ton", "cost": 68454.5,
                "partial": false},
               {"what": "=1+1", "how": "", "price": "", "partial": true}],
    "zones": [{"name": "Outer bank", "missing": ["Its length."], "notes": [],
               "rows": [{"what": "Area on the slope", "value": 1500.5, "unit": "yd²",
                         "how": "length × length", "price": "", "partial": false}],
               "steps": [{"symbol": "S", "meaning": "length", "formula": "a·b", "value": 26.83,
                          "unit": "ft", "source": "section"}]}]}})");
}

class WorkbookTest : public testing::Test {
 protected:
  WorkbookTest() : folder_(std::filesystem::temp_directory_path() / "proofstone-workbook-test") {
    std::filesystem::create_directories(folder_);
  }
  ~WorkbookTest() override { std::filesystem::remove_all(folder_); }

  std::string path() const { return (folder_ / "q.xlsx").string(); }
  /// One part of the written workbook, unzipped.
  std::string part(const std::string& name) const {
    const auto command = "unzip -p '" + path() + "' " + name;
    std::string text;
    FILE* pipe = popen(command.c_str(), "r");
    EXPECT_NE(pipe, nullptr);
    std::array<char, 4096> block{};
    for (std::size_t got = 1; got > 0;) {
      got = fread(block.data(), 1, block.size(), pipe);
      text.append(block.data(), got);
    }
    EXPECT_EQ(pclose(pipe), 0) << command;
    return text;
  }

 private:
  std::filesystem::path folder_;
};

TEST_F(WorkbookTest, NumbersAreNumbersAndNothingIsAFormula) {
  ASSERT_TRUE(write_quantities_workbook(path(), answer()).empty());
  const auto totals = part("xl/worksheets/sheet1.xml");
  EXPECT_NE(totals.find("<v>1180.25</v>"), std::string::npos) << totals;
  EXPECT_NE(totals.find("<v>68454.5</v>"), std::string::npos);
  EXPECT_NE(totals.find("<v>1234.5</v>"), std::string::npos);
  const auto zones = part("xl/worksheets/sheet2.xml");
  EXPECT_NE(zones.find("<v>1500.5</v>"), std::string::npos);
  const auto steps = part("xl/worksheets/sheet3.xml");
  EXPECT_NE(steps.find("<v>26.83</v>"), std::string::npos);
  for (const auto* sheet : {&totals, &zones, &steps}) {
    EXPECT_EQ(sheet->find("<f>"), std::string::npos);
  }
  const auto texts = part("xl/sharedStrings.xml");
  for (const char* words :
       {"Rock, Class III, ordered", "Cost (USD)", "not yet known", "=1+1", "Outer bank", "yd²",
        "a·b", "A &lt;site&gt; &amp; more", "Its length."}) {
    EXPECT_NE(texts.find(words), std::string::npos) << words;
  }
}

TEST_F(WorkbookTest, WhatCannotBeWrittenIsSaidAndLeavesNothing) {
  const auto problems = write_quantities_workbook(path() + "/nowhere/q.xlsx", answer());
  ASSERT_EQ(problems.size(), 1U);
  EXPECT_EQ(problems.front().code, "not-writable");
  EXPECT_FALSE(std::filesystem::exists(path() + "/nowhere"));
}

}  // namespace
}  // namespace proofstone
