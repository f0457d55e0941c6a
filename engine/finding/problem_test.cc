#include "engine/finding/problem.h"

#include <gtest/gtest.h>

namespace proofstone {
namespace {

TEST(Problem, sentence_names_file_place_and_what_is_allowed) {
  const Problem problem{"not-a-number", "“x” is no number.", "section.csv", "row 12, elevation",
                        "ft, m"};
  EXPECT_EQ(problem.sentence(),
            "section.csv, row 12, elevation: “x” is no number. Allowed: ft, m.");
}

TEST(Problem, sentence_leaves_out_what_is_unknown) {
  EXPECT_EQ((Problem{"c", "It is so.", "", "", ""}.sentence()), "It is so.");
  EXPECT_EQ((Problem{"c", "It is so.", "", "/zones", ""}.sentence()), "/zones: It is so.");
  EXPECT_EQ((Problem{"c", "It is so.", "a.csv", "", ""}.sentence()), "a.csv: It is so.");
}

TEST(LocatedUnder, joins_pointers_and_words) {
  const auto where = [](const std::string& inner, const std::string& prefix) {
    return located_under({{"c", "w", "", inner, ""}}, prefix).front().where;
  };
  EXPECT_EQ(where("/slope", "/zones/x"), "/zones/x/slope");
  EXPECT_EQ(where("", "/zones/x"), "/zones/x");
  EXPECT_EQ(where("point 3", "/curve"), "/curve, point 3");
  EXPECT_EQ(where("point 3", ""), "point 3");
}

TEST(Expected, holds_a_value_or_problems) {
  const Expected<int> value = 3;
  ASSERT_TRUE(value);
  EXPECT_EQ(*value, 3);
  const Expected<int> problem = Problem{"c", "w", "", "", ""};
  ASSERT_FALSE(problem);
  EXPECT_EQ(problem.problems().front().code, "c");
}

}  // namespace
}  // namespace proofstone
