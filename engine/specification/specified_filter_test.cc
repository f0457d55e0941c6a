#include "engine/specification/specified_filter.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/site/example_document.h"

namespace proofstone {
namespace {

using nlohmann::json;

SpecifiedFilters filters_of(const json& layers) {
  ExampleDocument example;
  example.items["materials"]["crushed"] = {{"name", "Crushed"},
                                           {"gradation",
                                            {{{"size", "3 in"}, {"smaller", "100 %"}},
                                             {{"size", "1 in"}, {"smaller", "50 %"}},
                                             {{"size", "4.75 mm"}, {"smaller", "9 %"}}}}};
  example.items["zones"]["bank"]["filter"] = layers;
  const auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? specified_filters(*site) : SpecifiedFilters{};
}

const SpecifiedSieve* sieve(const SpecifiedBedding& bedding, Length size) {
  const auto found = std::find_if(
      bedding.sieves.begin(), bedding.sieves.end(),
      [size](const SpecifiedSieve& one) { return std::abs(one.size / size - 1) < 1e-6; });
  return found == bedding.sieves.end() ? nullptr : &*found;
}

// Urban Storm Drainage Criteria Manual Vol. 1, Table MD-11: Type I 95 to 100 % pass No. 4, 0 to 2 %
// No. 200; Type II 20 to 90 % pass 3/4 in.
TEST(SpecifiedFilters, GiveTheLimitsOfAStandardBeddingSieveBySieve) {
  const auto filters = filters_of(
      json::array({{{"kind", "granular"}, {"bedding", "bedding-type-1"}, {"thickness", "4 in"}},
                   {{"kind", "granular"}, {"bedding", "crushed"}, {"thickness", "6 in"}}}));
  ASSERT_EQ(filters.beddings.size(), 2U);
  const auto& standard = filters.beddings[0];
  EXPECT_TRUE(standard.is_band);
  ASSERT_EQ(standard.places.size(), 1U);
  EXPECT_EQ(standard.places[0].from_the_soil, "layer 1 of 2 from the soil");
  EXPECT_NEAR(standard.places[0].thickness->inches(), 4, 1e-9);
  const auto* no_4 = sieve(standard, Length::millimeters(4.75));
  ASSERT_NE(no_4, nullptr);
  ASSERT_TRUE(no_4->least);
  EXPECT_NEAR(*no_4->least, 95, 1e-9);
  const auto* no_200 = sieve(standard, Length::millimeters(0.075));
  ASSERT_NE(no_200, nullptr);
  EXPECT_FALSE(no_200->least);
  ASSERT_TRUE(no_200->most);
  EXPECT_NEAR(*no_200->most, 2, 1e-9);
  // A material of the document is one curve.
  EXPECT_FALSE(filters.beddings[1].is_band);
  ASSERT_EQ(filters.beddings[1].sieves.size(), 3U);
  EXPECT_NEAR(*filters.beddings[1].sieves[1].least, 50, 1e-9);
  EXPECT_GT(filters.beddings[1].sieves[0].size, filters.beddings[1].sieves[1].size);
}

TEST(SpecifiedFilters, KeepTheFabricAsItsZoneStatesIt) {
  const auto filters = filters_of(json::array({{{"kind", "geotextile"},
                                                {"opening_size", "0.21 mm"},
                                                {"permittivity", "0.7 s⁻¹"},
                                                {"fabric", "nonwoven"},
                                                {"strength_class", 1}}}));
  EXPECT_TRUE(filters.beddings.empty());
  ASSERT_EQ(filters.fabrics.size(), 1U);
  EXPECT_NEAR(filters.fabrics[0].fabric.opening_size.millimeters(), 0.21, 1e-12);
  EXPECT_TRUE(filters.fabrics[0].place.from_the_soil.empty());
  EXPECT_TRUE(filters_of("none").fabrics.empty());
}

}  // namespace
}  // namespace proofstone
