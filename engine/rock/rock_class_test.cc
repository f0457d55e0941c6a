#include "engine/rock/rock_class.h"

#include <gtest/gtest.h>

#include <set>
#include <string>
#include <utility>

#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

TEST(ClassCatalog, holds_the_federal_and_the_letter_classes) {
  std::set<std::string> ids;
  for (const auto& entry : class_catalog()) {
    EXPECT_TRUE(ids.insert(entry.id).second) << entry.id;
  }
  for (int i = 1; i <= 10; ++i) EXPECT_EQ(ids.count("fhwa-" + std::to_string(i)), 1U) << i;
  for (const char* letter : {"vl", "l", "m", "h", "vh"}) {
    EXPECT_EQ(ids.count(std::string("front-range-") + letter), 1U) << letter;
  }
}

TEST(ClassCatalog, goes_from_small_to_large_in_each_family) {
  const auto& catalog = class_catalog();
  for (std::size_t i = 1; i < catalog.size(); ++i) {
    if (catalog[i].family != catalog[i - 1].family) continue;
    EXPECT_GT(catalog[i].nominal_d50, catalog[i - 1].nominal_d50) << catalog[i].id;
  }
}

TEST(ClassCatalog, every_class_has_a_source_and_a_band_round_its_median) {
  for (const auto& entry : class_catalog()) {
    EXPECT_FALSE(entry.source.document.empty()) << entry.id;
    EXPECT_FALSE(entry.source.place.empty()) << entry.id;
    EXPECT_FALSE(entry.name.empty()) << entry.id;
    ASSERT_TRUE(entry.band.smallest_size_at(50)) << entry.id;
    ASSERT_TRUE(entry.band.largest_size_at(50)) << entry.id;
    // A nominal size may be printed in whole inches.
    const Length rounding = entry.id.rfind("california", 0) == 0 ? Length::inches(0.5) : Length{};
    EXPECT_LE(*entry.band.smallest_size_at(50), entry.nominal_d50 * (1 + 1e-12) + rounding)
        << entry.id;
    EXPECT_GE(*entry.band.largest_size_at(50), entry.nominal_d50 - rounding) << entry.id;
    ASSERT_TRUE(entry.band.smallest_size_at(30)) << entry.id;  // what D30 methods ask of a class
  }
}

// Masses printed beside the FHWA classes, lb, for D100 (from memory): 0.85·γ·d³ at specific gravity
// 2.65. They check the sizes independently, within the printed rounding.
TEST(ClassCatalog, federal_sizes_agree_with_the_masses_printed_beside_them) {
  const double w100[] = {140, 470, 1100, 2200, 3800, 6000, 9000, 17600, 30400, 48200};
  const double w50_min[] = {15, 51, 120, 240, 410, 650, 950, 1900, 3300, 5200};
  const double w15_max[] = {12, 39, 93, 180, 310, 500, 740, 1450, 2500, 4000};
  const auto density = Density::pounds_mass_per_cubic_foot(2.65 * 62.4);
  const auto lb = [&](Length size) {
    return stone_mass(size, SizeMeaning::intermediate_axis, density).pounds();
  };
  for (std::size_t i = 0; i < 10; ++i) {
    const auto* entry = find_rock_class("fhwa-" + std::to_string(i + 1));
    ASSERT_NE(entry, nullptr);
    ASSERT_TRUE(entry->largest_stone);
    EXPECT_NEAR(lb(*entry->largest_stone), w100[i], 0.065 * w100[i]) << entry->id;
    EXPECT_NEAR(lb(*entry->band.smallest_size_at(50)), w50_min[i], 0.065 * w50_min[i]) << entry->id;
    EXPECT_NEAR(lb(*entry->band.largest_size_at(15)), w15_max[i], 0.065 * w15_max[i]) << entry->id;
    EXPECT_NEAR(*entry->largest_stone / entry->nominal_d50, 2, 1e-12) << entry->id;
  }
}

// City of Austin 591S reprint, first row (published).
TEST(ClassCatalog, class_one_is_as_published) {
  const auto* entry = find_rock_class("fhwa-1");
  ASSERT_NE(entry, nullptr);
  EXPECT_EQ(entry->source.standing, SourceStanding::published);
  EXPECT_EQ(entry->name, "Class I");
  EXPECT_NEAR(entry->band.smallest_size_at(15)->inches(), 3.7, 1e-12);
  EXPECT_NEAR(entry->band.largest_size_at(15)->inches(), 5.2, 1e-12);
  EXPECT_NEAR(entry->band.smallest_size_at(85)->inches(), 7.8, 1e-12);
  EXPECT_NEAR(entry->band.largest_size_at(85)->inches(), 9.2, 1e-12);
  EXPECT_EQ(*entry->largest_stone, Length::inches(12));
  EXPECT_FALSE(entry->thickness_in_d50);
}

TEST(ClassCatalog, says_what_is_from_memory) {
  EXPECT_EQ(find_rock_class("fhwa-3")->source.standing, SourceStanding::memory);
  EXPECT_EQ(find_rock_class("front-range-m")->source.standing, SourceStanding::published);
  EXPECT_FALSE(find_rock_class("front-range-m")->notes.empty());
}

TEST(ClassCatalog, letter_classes_set_no_limit_to_a_single_stone) {
  EXPECT_FALSE(find_rock_class("front-range-m")->largest_stone);
}

TEST(ClassCatalog, knows_no_other_class) {
  EXPECT_EQ(find_rock_class(""), nullptr);
  EXPECT_EQ(find_rock_class("Class III"), nullptr);
}

// Common practice, no source: the facts that people in the trade carry in their heads.

TEST(CommonPractice, letter_classes_have_medians_of_6_9_12_18_and_24_inches) {
  const std::pair<const char*, double> medians[] = {
      {"vl", 6}, {"l", 9}, {"m", 12}, {"h", 18}, {"vh", 24}};
  for (const auto& [letter, inches] : medians) {
    const auto* entry = find_rock_class(std::string("front-range-") + letter);
    ASSERT_NE(entry, nullptr);
    EXPECT_EQ(entry->nominal_d50, Length::inches(inches));
  }
}

// "About 4 to about 21 in" are the ends of the table, not of the stones: up to a tenth of the rock
// may be smaller than 4 in and up to three tenths larger than 21 in.
TEST(CommonPractice, twelve_inch_class_holds_stones_of_about_4_to_21_inches) {
  const auto& band = find_rock_class("front-range-m")->band;
  EXPECT_EQ(band.fine_limit().front().size, Length::inches(4));
  EXPECT_EQ(band.coarse_limit().back().size, Length::inches(21));
  EXPECT_EQ(band.fine_limit().front().percent_smaller, 10);
  EXPECT_EQ(band.coarse_limit().back().percent_smaller, 70);
  EXPECT_EQ(band.fine_limit().back().percent_smaller, 100);
}

TEST(CommonPractice, layer_of_the_twelve_inch_class_is_21_to_24_inches) {
  const auto* entry = find_rock_class("front-range-m");
  ASSERT_TRUE(entry->thickness_in_d50);
  EXPECT_NEAR(*entry->thickness_in_d50 * entry->nominal_d50.inches(), 21, 1e-12);
  EXPECT_NEAR(2 * entry->nominal_d50.inches(), 24, 1e-12);
}

TEST(CommonPractice, half_of_a_pile_is_smaller_than_its_median) {
  const auto pile = Gradation::make({{Length::inches(2), 3},
                                     {Length::inches(9), 31},
                                     {Length::inches(15), 64},
                                     {Length::inches(24), 100}},
                                    {SizeMeaning::intermediate_axis, PercentOf::mass});
  ASSERT_TRUE(pile);
  EXPECT_NEAR(pile->percent_smaller(*pile->size_at(50)), 50, 1e-12);
}

}  // namespace
}  // namespace proofstone
