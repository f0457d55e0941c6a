// Curves of soils and materials as the document writes them: what is wrong is named, located, and
// the likely mend told.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/site/example_document.h"
#include "engine/site/site.h"

namespace proofstone {
namespace {

using nlohmann::json;

using Points = std::vector<std::pair<const char*, const char*>>;

/// The first problem of a document whose soil or material has this curve.
Problem problem_of(const std::string& collection, const json& gradation) {
  ExampleDocument example;
  example.items[collection]["ground"] = {{"name", "Ground"}, {"gradation", gradation}};
  const auto site = site_from(example.document());
  if (site) {
    ADD_FAILURE() << "was read: " << gradation.dump();
    return {};
  }
  return site.problems().front();
}

json curve(const Points& points) {
  json list = json::array();
  for (const auto& [size, smaller] : points) list.push_back({{"size", size}, {"smaller", smaller}});
  return list;
}

class CurveOf : public testing::TestWithParam<const char*> {
 protected:
  void expect(const Points& points, const std::string& code, const std::string& where,
              const std::string& mend) const {
    const std::string collection = GetParam();
    const auto problem = problem_of(collection, curve(points));
    EXPECT_EQ(problem.code, code) << problem.sentence();
    // A row is part of the pointer, a point of the curve stands before what is wrong with it.
    const bool of_row = where.rfind('/', 0) == 0;
    EXPECT_EQ(problem.where, "/" + collection + "/ground/gradation" + (of_row ? where : ""))
        << problem.sentence();
    EXPECT_TRUE(of_row || problem.what.rfind(where, 0) == 0) << problem.sentence();
    EXPECT_NE(problem.allowed.find(mend), std::string::npos) << problem.sentence();
    EXPECT_FALSE(problem.what.empty());
  }
};

TEST_P(CurveOf, SievesInMixedOrder) {
  expect({{"75 mm", "100 %"}, {"4.75 mm", "60 %"}, {"19 mm", "80 %"}, {"0.075 mm", "10 %"}},
         "sizes-out-of-order", "point 3", "from small to large or from large to small");
}

TEST_P(CurveOf, UnitsMixed) {
  expect({{"75 mm", "100 %"}, {"19 mm", "80 %"}, {"4.75 in", "60 %"}, {"0.075 mm", "10 %"}},
         "sizes-out-of-order", "point 3", "are two units mixed?");
  expect({{"75 mm", "100 %"}, {"19 lb", "80 %"}}, "wrong-kind", "/1/size", "in");
  expect({{"75", "100 %"}, {"19 mm", "80 %"}}, "missing-unit", "/0/size", "in");
}

TEST_P(CurveOf, ASieveTwice) {
  expect({{"4.75 mm", "60 %"}, {"4.75 mm", "50 %"}}, "size-twice", "point 2", "each size once");
}

TEST_P(CurveOf, RetainedInThePlaceOfPassing) {
  expect({{"19 mm", "0 %"}, {"4.75 mm", "22 %"}, {"0.075 mm", "82 %"}}, "percent-falls", "point 2",
         "give 100 less each");
}

TEST_P(CurveOf, RetainedOnEachSieveAlone) {
  expect({{"19 mm", "22 %"}, {"4.75 mm", "40 %"}, {"0.425 mm", "20 %"}, {"0.075 mm", "18 %"}},
         "percent-falls", "point 2", "retained on each sieve");
  // Where they do not sum to 100 nothing is guessed, and it is said.
  expect(
      {{"19 mm", "22 %"}, {"4.75 mm", "40 %"}, {"0.425 mm", "20 %"}, {"0.075 mm", "8 %"}},
      "percent-falls", "point 2",
      "percents that never fall with size; were these percents retained on each sieve they would "
      "sum to 100, not to 90");
  expect({{"19 mm", "2 %"}, {"4.75 mm", "10 %"}, {"0.425 mm", "5 %"}}, "percent-falls", "point 2",
         "percents that never fall with size");
}

TEST_P(CurveOf, PercentsBeyondAll) {
  expect({{"19 mm", "120 %"}, {"4.75 mm", "40 %"}}, "percent-outside", "point 1", "0 to 100");
  expect({{"19 mm", "100 %"}, {"4.75 mm", "-4 %"}}, "percent-outside", "point 2", "0 to 100");
  // Written without their sign.
  expect({{"19 mm", "100"}, {"4.75 mm", "38"}}, "percent-outside", "point 1", "write the sign");
}

TEST_P(CurveOf, TooFewPointsOrNone) {
  expect({{"19 mm", "100 %"}}, "too-few-points", "", "two or more sizes");
  EXPECT_EQ(problem_of(GetParam(), "all of it").code, "not-a-list");
}

INSTANTIATE_TEST_SUITE_P(OfTheDocument, CurveOf, testing::Values("soils", "materials"),
                         [](const auto& of) { return std::string(of.param); });

}  // namespace
}  // namespace proofstone
