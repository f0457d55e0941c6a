#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "engine/rock/limit_curve.h"
#include "engine/rock/rock_class.h"
#include "engine/rock/size_and_mass.h"

// What the tables behind catalog/ print beside the limits themselves checks the limits
// independently.

namespace proofstone {
namespace {

const RockClass& class_called(const std::string& id) {
  static const RockClass none{};
  const auto* found = find_rock_class(id);
  EXPECT_NE(found, nullptr) << id;
  return found != nullptr ? *found : none;
}

double pounds(Length size, SizeMeaning meaning, double pounds_per_cubic_foot) {
  return stone_mass(size, meaning, Density::pounds_mass_per_cubic_foot(pounds_per_cubic_foot))
      .pounds();
}

std::map<std::string, std::vector<const RockClass*>> families() {
  std::map<std::string, std::vector<const RockClass*>> all;
  for (const auto& entry : class_catalog()) all[entry.family].push_back(&entry);
  return all;
}

TEST(PublishedClasses, families_are_whole) {
  const std::map<std::string, std::size_t> expected{
      {"FHWA classes (HEC-23)", 10},
      {"FHWA FP-14 classes", 8},
      {"Front Range letter classes", 5},
      {"USACE gradations, rock of 155 lb/ft³", 13},
      {"USACE gradations, rock of 165 lb/ft³", 13},
      {"USACE gradations, rock of 175 lb/ft³", 13},
      {"AASHTO classes (HEC-11)", 6},
      {"California rock slope protection, Method A (older edition)", 5},
      {"EN 13383 heavy armourstone (HMA)", 5},
      {"EN 13383 light armourstone (LMA)", 6},
      {"EN 13383 coarse gradings (CP)", 5},
      {"British Columbia riprap classes", 6},
  };
  std::map<std::string, std::size_t> found;
  for (const auto& [family, classes] : families()) found[family] = classes.size();
  EXPECT_EQ(found, expected);
}

// Between two neighbours of a family the larger is nowhere finer, on either limit, as far as both
// limits reach.
TEST(PublishedClasses, limits_grow_from_class_to_class) {
  for (const auto& [family, classes] : families()) {
    if (family.rfind("EN 13383", 0) == 0) continue;  // its classes differ in width and overlap
    for (std::size_t i = 1; i < classes.size(); ++i) {
      for (double percent = 5; percent <= 100; percent += 5) {
        const auto small = classes[i - 1]->band.smallest_size_at(percent);
        const auto large = classes[i]->band.smallest_size_at(percent);
        if (small && large) {
          EXPECT_LE(*small, *large * (1 + 1e-12)) << classes[i]->id << " " << percent;
        }
        const auto small_most = classes[i - 1]->band.largest_size_at(percent);
        const auto large_most = classes[i]->band.largest_size_at(percent);
        if (small_most && large_most) {
          EXPECT_LE(*small_most, *large_most * (1 + 1e-12)) << classes[i]->id << " " << percent;
        }
      }
    }
  }
}

TEST(PublishedClasses, limits_never_fall_and_never_cross) {
  for (const auto& entry : class_catalog()) {
    for (const auto* limit : {&entry.band.coarse_limit(), &entry.band.fine_limit()}) {
      for (std::size_t i = 1; i < limit->size(); ++i) {
        EXPECT_LE((*limit)[i - 1].size, (*limit)[i].size) << entry.id;
        EXPECT_LE((*limit)[i - 1].percent_smaller, (*limit)[i].percent_smaller) << entry.id;
      }
    }
    for (double percent = 5; percent <= 100; percent += 5) {
      const auto smallest = entry.band.smallest_size_at(percent);
      const auto largest = entry.band.largest_size_at(percent);
      if (smallest && largest) {
        EXPECT_LE(*smallest, *largest * (1 + 1e-12)) << entry.id;
      }
    }
  }
}

// EM 1110-2-1601 Table 3-1 (from memory): W100 max is the sphere of the class's inches, and every
// other limit a share of it: W100 min 0.4, W50 max 1/1.5³, W50 min 0.2, W15 max half of W50 max,
// W15 min 1/16. All within a pound, save a few at 36 and 54 in that are two off.
TEST(PublishedClasses, usace_masses_follow_from_the_largest_stone) {
  for (const int pcf : {155, 165, 175}) {
    for (const int inches : {9, 12, 15, 18, 21, 24, 27, 30, 33, 36, 42, 48, 54}) {
      const auto& entry =
          class_called("usace-" + std::to_string(inches) + "-in-" + std::to_string(pcf));
      const double off = inches == 36 || inches == 54 ? 2.5 : 1.1;
      const double w100 = pounds(Length::inches(inches), SizeMeaning::sphere, pcf);
      const auto limit = [&](bool largest, double percent) {
        const auto size =
            largest ? entry.band.largest_size_at(percent) : entry.band.smallest_size_at(percent);
        return size ? pounds(*size, SizeMeaning::sphere, pcf) : 0;
      };
      EXPECT_NEAR(limit(true, 100), w100, off) << entry.id;
      EXPECT_NEAR(limit(false, 100), 0.4 * w100, off) << entry.id;
      EXPECT_NEAR(limit(true, 50), w100 / 3.375, off) << entry.id;
      EXPECT_NEAR(limit(false, 50), 0.2 * w100, off) << entry.id;
      EXPECT_NEAR(limit(true, 15), w100 / 6.75, off) << entry.id;
      EXPECT_NEAR(limit(false, 15), w100 / 16, off) << entry.id;
      const auto d30 = least_size_of(entry, 30);
      ASSERT_TRUE(d30) << entry.id;
      EXPECT_NEAR(d30->feet(), 0.487 * inches / 12, 0.008) << entry.id;
      // Printed to 0.01 ft; 24 in is printed 1.40 where the pattern has 1.41.
      EXPECT_NEAR(least_size_of(entry, 90)->feet(), 0.705 * inches / 12, 0.0101) << entry.id;
    }
  }
}

// The least D30 of 12, 18 and 24 in at 165 lb/ft³ was seen in a reprint (Streambank Stabilization
// Handbook, 1997, Appendix A): 0.48, 0.73, 0.97 ft. It goes before the size read off the band.
TEST(PublishedClasses, usace_least_d30_is_as_printed) {
  const std::array<std::pair<const char*, double>, 3> printed{
      {{"usace-12-in-165", 0.48}, {"usace-18-in-165", 0.73}, {"usace-24-in-165", 0.97}}};
  for (const auto& [id, feet] : printed) {
    const auto& entry = class_called(id);
    EXPECT_NEAR(least_size_of(entry, 30)->feet(), feet, 1e-12);
    EXPECT_LT(entry.band.smallest_size_at(30)->feet(),
              feet);  // the band alone allows a little less
    EXPECT_NEAR(least_size_of(entry, 50)->feet(), entry.band.smallest_size_at(50)->feet(), 1e-12);
  }
}

// FP-14 Table 705-1 prints masses beside the sizes: 0.85·γ·d³ at specific gravity 2.65 within 5 %,
// one-digit masses within their rounding. Two prints are wrong: class 2 at 15 % has 10 lb, which is
// 5 in, and class 8 at 15 % has 250 lb for what 25 in weigh (its 570 kg are 1250 lb).
TEST(PublishedClasses, fp14_sizes_agree_with_the_masses_printed_beside_them) {
  struct Row {
    int rock_class;
    double percent;
    double least;
    double most;
  };
  const std::vector<Row> rows{
      {1, 100, 59, 270},      {1, 85, 28, 110},    {1, 50, 10, 42},     {1, 15, 2, 18},
      {2, 100, 270, 750},     {2, 85, 110, 270},   {2, 50, 42, 110},    {2, 15, 18, 42},
      {3, 100, 750, 1600},    {3, 85, 270, 560},   {3, 50, 110, 220},   {3, 15, 42, 81},
      {4, 100, 1600, 2900},   {4, 85, 560, 990},   {4, 50, 220, 400},   {4, 15, 59, 140},
      {5, 100, 2900, 4850},   {5, 85, 990, 1800},  {5, 50, 400, 650},   {5, 15, 110, 270},
      {6, 100, 4850, 7400},   {6, 85, 1800, 2650}, {6, 50, 650, 990},   {6, 15, 180, 400},
      {7, 100, 7400, 12800},  {7, 85, 2650, 4450}, {7, 50, 990, 1800},  {7, 15, 270, 650},
      {8, 100, 12800, 23400}, {8, 85, 4450, 8450}, {8, 50, 1800, 3500}, {8, 15, 560, 1250},
  };
  for (const auto& row : rows) {
    const auto& entry = class_called("fp14-" + std::to_string(row.rock_class));
    EXPECT_EQ(entry.band.basis().percent, PercentOf::count);
    const auto check = [&](Length size, double printed) {
      const double mass = pounds(size, SizeMeaning::intermediate_axis, 2.65 * 62.4);
      EXPECT_NEAR(mass, printed, std::max(0.5, 0.05 * printed)) << entry.id << " " << row.percent;
    };
    check(*entry.band.smallest_size_at(row.percent), row.least);
    check(*entry.band.largest_size_at(row.percent), row.most);
  }
  EXPECT_NE(class_called("fp14-2").notes.size(), class_called("fp14-3").notes.size());
}

// HEC-11 Table 3 (from memory) prints masses: spheres at 165 lb/ft³ within a tenth.
TEST(PublishedClasses, aashto_sizes_agree_with_the_masses_printed_beside_them) {
  const std::vector<std::pair<const char*, std::array<double, 2>>> printed{
      {"aashto-facing", {200, 75}},        {"aashto-light", {500, 200}},
      {"aashto-quarter-ton", {1000, 500}}, {"aashto-half-ton", {2000, 1000}},
      {"aashto-1-ton", {4000, 2000}},      {"aashto-2-ton", {8000, 4000}},
  };
  for (const auto& [id, masses] : printed) {
    const auto& entry = class_called(id);
    ASSERT_TRUE(entry.largest_stone) << id;
    EXPECT_NEAR(pounds(*entry.largest_stone, SizeMeaning::sphere, 165), masses[0], 0.1 * masses[0])
        << id;
    EXPECT_NEAR(pounds(entry.nominal_d50, SizeMeaning::sphere, 165), masses[1], 0.1 * masses[1])
        << id;
  }
}

// California Section 72-2: nominal sizes are spheres at 165 lb/ft³ in whole inches. The smallest
// mass counts mass, the larger ones stones.
TEST(PublishedClasses, california_method_a_mixes_mass_and_count) {
  const std::vector<std::pair<const char*, double>> classes{{"california-a-half-ton", 1100},
                                                            {"california-a-1-ton", 2200},
                                                            {"california-a-2-ton", 4400},
                                                            {"california-a-4-ton", 8800},
                                                            {"california-a-8-ton", 17600}};
  for (const auto& [id, mass] : classes) {
    const auto& entry = class_called(id);
    const auto size = stone_size(Mass::pounds(mass), SizeMeaning::sphere,
                                 Density::pounds_mass_per_cubic_foot(165));
    EXPECT_NEAR(size.inches(), entry.nominal_d50.inches(), 0.75) << id;
    const auto& conditions = entry.band.conditions();
    ASSERT_EQ(conditions.size(), 3U) << id;
    EXPECT_EQ(percent_of(conditions[0], entry.band.basis()), PercentOf::mass);
    EXPECT_EQ(percent_of(conditions[1], entry.band.basis()), PercentOf::count);
    EXPECT_EQ(percent_of(conditions[2], entry.band.basis()), PercentOf::count);
  }
  const auto& half_ton = class_called("california-a-half-ton").band.conditions();
  EXPECT_EQ(half_ton[0].wording, "at least 95 % larger than 550 lb (249 kg) by mass");
  EXPECT_EQ(half_ton[1].wording, "at least 50 % larger than 1100 lb (499 kg)");
  EXPECT_EQ(half_ton[2].wording, "at most 5 % larger than 2200 lb (998 kg)");
}

// EN 13383-1: at most 10 % below the nominal lower limit, at least 70 % below the nominal upper one
// (read in documents that quote it).
TEST(PublishedClasses, armourstone_limits_stand_at_the_masses_of_its_name) {
  for (const auto& entry : class_catalog()) {
    const bool heavy = entry.id.rfind("en-hma-", 0) == 0;
    if (!heavy && entry.id.rfind("en-lma-", 0) != 0) continue;
    const auto limits = entry.id.substr(7);
    const auto dash = limits.find('-');
    const auto density = Density::kilograms_per_cubic_meter(2650);
    const auto sphere = [&](const std::string& kilograms) {
      return stone_size(Mass::kilograms(std::stod(kilograms)), SizeMeaning::sphere, density);
    };
    const Length lower = sphere(limits.substr(0, dash));
    const Length upper = sphere(limits.substr(dash + 1));
    EXPECT_NEAR(percent_on_curve(entry.band.fine_limit(), lower), 10, 1e-9) << entry.id;
    EXPECT_NEAR(percent_on_curve(entry.band.coarse_limit(), upper), 70, 1e-9) << entry.id;
    EXPECT_NEAR(entry.band.fine_limit().front().percent_smaller, heavy ? 5 : 2, 1e-12) << entry.id;
    EXPECT_NEAR(entry.band.coarse_limit().back().percent_smaller, 97, 1e-12) << entry.id;
  }
}

// British Columbia Tables 205-A and 205-B: sizes are spheres of 0.1, 1, 3 and 5 times the class
// mass at specific gravity 2.640, rounded to 5 mm; the layer is as printed.
TEST(PublishedClasses, british_columbia_sizes_are_spheres_of_the_masses) {
  const std::vector<std::pair<double, double>> classes{{10, 350},  {25, 450},   {50, 550},
                                                       {100, 700}, {250, 1000}, {500, 1200}};
  const auto density = Density::kilograms_per_cubic_meter(2640);
  for (const auto& [kilograms, thickness] : classes) {
    const auto& entry = class_called("bc-" + std::to_string(static_cast<int>(kilograms)) + "-kg");
    const std::array<std::pair<double, double>, 3> points{{{15, 0.1}, {50, 1}, {85, 3}}};
    for (const auto& [percent, times] : points) {
      const auto sphere =
          stone_size(Mass::kilograms(times * kilograms), SizeMeaning::sphere, density);
      // 2.5 mm of rounding; the 10 kg row's first size, 90 for 89.8, needs no more.
      EXPECT_NEAR(entry.band.smallest_size_at(percent)->millimeters(), sphere.millimeters(), 2.6)
          << entry.id << " " << percent;
    }
    const auto largest = stone_size(Mass::kilograms(5 * kilograms), SizeMeaning::sphere, density);
    ASSERT_TRUE(entry.largest_stone) << entry.id;
    EXPECT_NEAR(entry.largest_stone->millimeters(), largest.millimeters(), 4) << entry.id;
    ASSERT_TRUE(entry.thickness_in_d50) << entry.id;
    EXPECT_NEAR(*entry.thickness_in_d50 * entry.nominal_d50.millimeters(), thickness, 1e-9);
  }
}

// Colorado Table 506-2 prints weights: spheres of the same size at specific gravity 2.5, within 3
// %, 2 in within 6 %. One print stands apart: 12 in weigh 81.7 lb, not 85.
TEST(PublishedClasses, letter_class_sizes_agree_with_the_weights_printed_beside_them) {
  const std::vector<std::pair<double, double>> printed{{3, 1.3},   {4, 3},     {6, 10},   {9, 35},
                                                       {15, 160},  {18, 275},  {21, 440}, {24, 650},
                                                       {30, 1280}, {33, 1700}, {42, 3500}};
  const double pcf = 2.5 * 62.4;
  for (const auto& [inches, weight] : printed) {
    EXPECT_NEAR(pounds(Length::inches(inches), SizeMeaning::sphere, pcf), weight,
                std::max(0.05, 0.03 * weight))
        << inches;
  }
  EXPECT_NEAR(pounds(Length::inches(2), SizeMeaning::sphere, pcf), 0.4, 0.06 * 0.4);
  EXPECT_NEAR(pounds(Length::inches(12), SizeMeaning::sphere, pcf), 81.7, 0.05);
}

}  // namespace
}  // namespace proofstone
