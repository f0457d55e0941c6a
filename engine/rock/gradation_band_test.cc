#include "engine/rock/gradation_band.h"

#include <gtest/gtest.h>

#include <cmath>

#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

using Sense = BandCondition::Sense;

constexpr GradationBasis by_mass{SizeMeaning::intermediate_axis, PercentOf::mass};

Length in(double inches) { return Length::inches(inches); }

GradationBand good(Expected<GradationBand> band) {
  EXPECT_TRUE(band) << (band ? "" : band.problems().front().sentence());
  return band ? *band : GradationBand{};
}

Problem first_problem(const Expected<GradationBand>& band) {
  EXPECT_FALSE(band);
  return band ? Problem{} : band.problems().front();
}

// The 12-in class of the Front Range letter classes (catalog/rock-classes-front-range.json).
GradationBand twelve_inch() {
  return good(GradationBand::from_percent_windows(
      {{in(4), 2, 10}, {in(12), 35, 50}, {in(18), 50, 70}, {in(21), 70, 100}}, by_mass));
}

TEST(PercentWindows, become_one_sided_conditions) {
  const auto band = twelve_inch();
  ASSERT_EQ(band.conditions().size(), 7U);  // "at most 100" says nothing
  EXPECT_EQ(band.conditions()[0].sense, Sense::at_most);
  EXPECT_EQ(band.conditions()[0].percent, 10);
  EXPECT_EQ(band.conditions()[0].wording, "at most 10 % smaller than 4.0 in (102 mm)");
  EXPECT_EQ(band.conditions()[1].sense, Sense::at_least);
  EXPECT_EQ(band.conditions()[1].percent, 2);
  EXPECT_EQ(band.conditions()[6].sense, Sense::at_least);
  EXPECT_EQ(band.conditions()[6].size, in(21));
  EXPECT_EQ(band.conditions()[6].percent, 70);
  EXPECT_EQ(band.basis(), by_mass);
}

TEST(PercentWindows, draw_the_two_limits) {
  const auto band = twelve_inch();
  ASSERT_EQ(band.fine_limit().size(), 4U);
  ASSERT_EQ(band.coarse_limit().size(), 4U);
  EXPECT_EQ(band.fine_limit().front().percent_smaller, 10);
  EXPECT_EQ(band.coarse_limit().front().percent_smaller, 2);
  EXPECT_EQ(band.fine_limit().back().percent_smaller, 100);
  EXPECT_EQ(band.coarse_limit().back().percent_smaller, 70);
}

TEST(PercentWindows, give_the_range_of_sizes_at_a_percent) {
  const auto band = twelve_inch();
  EXPECT_NEAR(band.smallest_size_at(50)->inches(), 12, 1e-12);
  EXPECT_NEAR(band.largest_size_at(50)->inches(), 18, 1e-12);
  EXPECT_NEAR(band.smallest_size_at(30)->inches(), 4 * std::sqrt(3.0), 1e-12);
  const auto single = good(GradationBand::from_percent_windows({{in(4), 2, 10}}, by_mass));
  ASSERT_FALSE(single.smallest_size_at(50));
  EXPECT_EQ(single.smallest_size_at(50).problems().front().code, "beyond-band");
}

TEST(PercentWindows, may_come_in_any_order) {
  const auto band = good(GradationBand::from_percent_windows(
      {{in(21), 70, 100}, {in(4), 2, 10}, {in(18), 50, 70}, {in(12), 35, 50}}, by_mass));
  EXPECT_NEAR(band.smallest_size_at(50)->inches(), 12, 1e-12);
}

TEST(PercentWindows, bound_one_another) {
  // At most 40 % below 8 in also holds below 4 in; at least 20 % below 4 in also below 8 in.
  const auto band =
      good(GradationBand::from_percent_windows({{in(4), 20, 90}, {in(8), 0, 40}}, by_mass));
  EXPECT_EQ(band.fine_limit().front().percent_smaller, 40);
  EXPECT_EQ(band.coarse_limit().back().percent_smaller, 20);
}

TEST(PercentWindows, name_what_is_wrong) {
  const auto problem = [](std::vector<PercentWindow> windows) {
    return first_problem(GradationBand::from_percent_windows(std::move(windows), by_mass));
  };
  EXPECT_EQ(problem({}).code, "empty-band");
  EXPECT_EQ(problem({{in(0), 0, 50}}).code, "size-not-positive");
  EXPECT_EQ(problem({{in(std::nan("")), 0, 50}}).code, "size-not-positive");
  EXPECT_EQ(problem(std::vector<PercentWindow>(100, {in(std::nan("")), 0, 50})).code,
            "size-not-positive");
  EXPECT_EQ(problem({{in(4), 60, 50}}).code, "percent-outside");
  EXPECT_EQ(problem({{in(4), -1, 50}}).code, "percent-outside");
  EXPECT_EQ(problem({{in(4), 0, 101}}).code, "percent-outside");
  EXPECT_EQ(problem({{in(4), std::nan(""), 50}}).code, "percent-outside");
  EXPECT_EQ(problem({{in(4), 0, 50}, {in(4), 0, 60}}).code, "size-twice");
  const auto contradiction = problem({{in(8), 0, 40}, {in(4), 50, 60}});
  EXPECT_EQ(contradiction.code, "windows-contradict");
  EXPECT_EQ(contradiction.where, "window 1");  // as it stands in the specification
}

// FHWA Class III of catalog/rock-classes-fhwa.json.
GradationBand class_three() {
  return good(GradationBand::from_size_windows({{15, in(7.3), in(10.5)},
                                                {50, in(11.5), in(14)},
                                                {85, in(15.5), in(18.5)},
                                                {100, std::nullopt, in(24)}},
                                               by_mass));
}

TEST(SizeWindows, become_one_sided_conditions) {
  const auto band = class_three();
  ASSERT_EQ(band.conditions().size(), 7U);
  EXPECT_EQ(band.conditions()[2].wording, "D50 at least 11.5 in (292 mm)");
  EXPECT_EQ(band.conditions()[2].sense, Sense::at_most);
  EXPECT_EQ(band.conditions()[2].size, in(11.5));
  EXPECT_EQ(band.conditions()[3].wording, "D50 at most 14.0 in (356 mm)");
  EXPECT_EQ(band.conditions()[3].sense, Sense::at_least);
  EXPECT_EQ(band.conditions()[6].wording, "largest stone at most 24.0 in (610 mm)");
  EXPECT_EQ(band.conditions()[6].percent, 100);
}

TEST(SizeWindows, limit_what_they_state_and_no_more) {
  const auto band = class_three();
  EXPECT_NEAR(band.smallest_size_at(50)->inches(), 11.5, 1e-12);
  EXPECT_NEAR(band.largest_size_at(100)->inches(), 24, 1e-12);
  EXPECT_NEAR(band.smallest_size_at(30)->inches(), 7.3 * std::pow(11.5 / 7.3, 15.0 / 35), 1e-12);
  ASSERT_FALSE(band.smallest_size_at(100));  // the class states no least D100
  EXPECT_EQ(band.smallest_size_at(100).problems().front().code, "beyond-band");
  EXPECT_EQ(band.smallest_size_at(100).problems().front().allowed, "15 to 85 %");
}

TEST(SizeWindows, bound_one_another) {
  // D15 at least 9 in makes D50 at least 9 in; D85 at most 10 in makes D50 at most 10 in.
  const auto band = good(GradationBand::from_size_windows(
      {{15, in(9), std::nullopt}, {50, in(4), in(20)}, {85, std::nullopt, in(10)}}, by_mass));
  EXPECT_NEAR(band.smallest_size_at(50)->inches(), 9, 1e-12);
  EXPECT_NEAR(band.largest_size_at(50)->inches(), 10, 1e-12);
}

TEST(SizeWindows, name_what_is_wrong) {
  const auto problem = [](std::vector<SizeWindow> windows) {
    return first_problem(GradationBand::from_size_windows(std::move(windows), by_mass));
  };
  EXPECT_EQ(problem({}).code, "empty-band");
  EXPECT_EQ(problem({{50, std::nullopt, std::nullopt}}).code, "empty-window");
  EXPECT_EQ(problem({{0, in(4), in(5)}}).code, "percent-outside");
  EXPECT_EQ(problem({{101, in(4), in(5)}}).code, "percent-outside");
  EXPECT_EQ(problem({{std::nan(""), in(4), in(5)}}).code, "percent-outside");
  EXPECT_EQ(problem({{50, in(-4), in(5)}}).code, "size-not-positive");
  EXPECT_EQ(problem({{50, in(6), in(5)}}).code, "window-reversed");
  EXPECT_EQ(problem({{50, in(4), in(5)}, {50, in(4), in(5)}}).code, "percent-twice");
  const auto contradiction = problem({{50, in(4), in(5)}, {15, in(6), in(7)}});
  EXPECT_EQ(contradiction.code, "windows-contradict");
  EXPECT_EQ(contradiction.where, "window 1");
}

// The example band of USACE EM 1110-2-1601 (1 July 1970), percent lighter by weight, saturated
// surface-dry, seen in a scanned copy: W100 260 to 640 lb, W50 130 to 200 lb, W15 40 to 150 lb.
TEST(MassWindows, of_the_corps_example_band) {
  const auto density = Density::pounds_mass_per_cubic_foot(165);
  const auto lb = [](double pounds) { return Mass::pounds(pounds); };
  const auto band = good(GradationBand::from_mass_windows(
      {{100, lb(260), lb(640)}, {50, lb(130), lb(200)}, {15, lb(40), lb(150)}}, density,
      PercentOf::mass));
  EXPECT_EQ(band.basis().size, SizeMeaning::sphere);
  ASSERT_EQ(band.conditions().size(), 6U);
  EXPECT_EQ(band.conditions()[0].wording, "W15 at least 40 lb (18.1 kg)");
  EXPECT_EQ(band.conditions()[5].wording, "largest stone at most 640 lb (290 kg)");
  // As conditions: F(40) ≤ 15, F(150) ≥ 15, F(130) ≤ 50, F(200) ≥ 50, none above 640.
  const double pounds[] = {40, 150, 130, 200, 260, 640};
  const double percents[] = {15, 15, 50, 50, 100, 100};
  const Sense senses[] = {Sense::at_most,  Sense::at_least, Sense::at_most,
                          Sense::at_least, Sense::at_most,  Sense::at_least};
  for (std::size_t i = 0; i < 6; ++i) {
    EXPECT_NEAR(stone_mass(band.conditions()[i].size, SizeMeaning::sphere, density).pounds(),
                pounds[i], 1e-9);
    EXPECT_EQ(band.conditions()[i].percent, percents[i]);
    EXPECT_EQ(band.conditions()[i].sense, senses[i]);
  }
  // The 1601 rule for the least layer from this band: 1.949 ft from W100, 1.984 ft from W50.
  EXPECT_NEAR(band.largest_size_at(100)->feet(), 1.949, 0.001);
  EXPECT_NEAR(1.5 * band.largest_size_at(50)->feet(), 1.984, 0.001);
}

TEST(MassWindows, name_what_is_wrong) {
  const auto code = [](std::vector<MassWindow> windows, double density) {
    return first_problem(GradationBand::from_mass_windows(
                             std::move(windows), Density::kilograms_per_cubic_meter(density),
                             PercentOf::mass))
        .code;
  };
  const auto kg = [](double kilograms) { return Mass::kilograms(kilograms); };
  EXPECT_EQ(code({}, 2650), "empty-band");
  EXPECT_EQ(code({{50, kg(4), kg(5)}}, 0), "density-not-positive");
  EXPECT_EQ(code({{50, kg(4), kg(5)}}, std::nan("")), "density-not-positive");
  EXPECT_EQ(code({{50, kg(-4), kg(5)}}, 2650), "size-not-positive");
  EXPECT_EQ(code({{50, kg(6), kg(5)}}, 2650), "window-reversed");
}

}  // namespace
}  // namespace proofstone
