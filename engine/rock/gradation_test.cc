#include "engine/rock/gradation.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace proofstone {
namespace {

constexpr GradationBasis by_mass{SizeMeaning::intermediate_axis, PercentOf::mass};

GradationPoint at(double inches, double percent) { return {Length::inches(inches), percent}; }

Gradation curve(std::vector<GradationPoint> points) {
  const auto made = Gradation::make(std::move(points), by_mass);
  EXPECT_TRUE(made);
  return *made;
}

std::string code_of(std::vector<GradationPoint> points) {
  const auto made = Gradation::make(std::move(points), by_mass);
  return made ? "none" : made.problems().front().code;
}

TEST(Gradation, is_straight_in_log_size) {
  const auto rock = curve({at(4, 0), at(16, 100)});
  EXPECT_NEAR(rock.percent_smaller(Length::inches(8)), 50, 1e-12);
  ASSERT_TRUE(rock.size_at(25));
  EXPECT_NEAR(rock.size_at(25)->inches(), 4 * std::sqrt(2.0), 1e-12);
}

TEST(Gradation, reads_percentiles_between_its_points) {
  const auto rock = curve({at(3, 5), at(6, 20), at(12, 55), at(24, 100)});
  EXPECT_NEAR(rock.size_at(30)->inches(), 6 * std::pow(2.0, 10.0 / 35), 1e-12);
  EXPECT_NEAR(rock.size_at(85)->inches(), 12 * std::pow(2.0, 30.0 / 45), 1e-12);
}

// Computed by us with the log interpolation of Bunte & Abt, USDA RMRS-GTR-74 (2001), sec. 2.1.4
// (from memory): bins 90 to 512 mm with 8, 17, 30, 29 and 16 stones.
TEST(Gradation, percentiles_of_a_counted_sample) {
  const auto mm = [](double size, double percent) {
    return GradationPoint{Length::millimeters(size), percent};
  };
  const auto rock =
      curve({mm(90, 0), mm(128, 8), mm(180, 25), mm(256, 55), mm(362, 84), mm(512, 100)});
  EXPECT_NEAR(rock.size_at(15)->millimeters(), 147.29, 0.01);
  EXPECT_NEAR(rock.size_at(50)->millimeters(), 241.40, 0.01);
  EXPECT_NEAR(rock.size_at(85)->millimeters(), 369.93, 0.01);
}

TEST(Gradation, ends_at_its_ends) {
  const auto rock = curve({at(3, 5), at(24, 90)});
  EXPECT_EQ(rock.percent_smaller(Length::inches(1)), 5);
  EXPECT_EQ(rock.percent_smaller(Length::inches(99)), 90);
  EXPECT_EQ(rock.percent_smaller(Length::inches(-1)), 5);
  EXPECT_NEAR(rock.size_at(5)->inches(), 3, 1e-12);
  EXPECT_NEAR(rock.size_at(90)->inches(), 24, 1e-12);
  for (const double percent : {4.9, 90.1, -1.0, 101.0, std::nan("")}) {
    const auto size = rock.size_at(percent);
    ASSERT_FALSE(size) << percent;
    EXPECT_EQ(size.problems().front().code, "beyond-curve");
    EXPECT_EQ(size.problems().front().allowed, "5 to 90 %");
  }
}

TEST(Gradation, gives_the_smallest_size_where_it_is_level) {
  const auto rock = curve({at(2, 0), at(4, 50), at(8, 50), at(16, 100)});
  EXPECT_NEAR(rock.size_at(50)->inches(), 4, 1e-12);
  EXPECT_NEAR(rock.percent_smaller(Length::inches(6)), 50, 1e-12);
  EXPECT_NEAR(curve({at(2, 0), at(3, 0), at(4, 100)}).size_at(0)->inches(), 2, 1e-12);
}

TEST(Gradation, turns_points_round_that_come_largest_first) {
  const auto rock = curve({at(24, 100), at(12, 50), at(6, 0)});
  EXPECT_EQ(rock.points().front().size, Length::inches(6));
  EXPECT_NEAR(rock.size_at(50)->inches(), 12, 1e-12);
}

TEST(Gradation, names_what_is_wrong_with_a_point) {
  EXPECT_EQ(code_of({}), "too-few-points");
  EXPECT_EQ(code_of({at(6, 50)}), "too-few-points");
  EXPECT_EQ(code_of({at(0, 0), at(6, 50)}), "size-not-positive");
  EXPECT_EQ(code_of({at(-3, 0), at(6, 50)}), "size-not-positive");
  EXPECT_EQ(code_of({at(std::nan(""), 0), at(6, 50)}), "size-not-positive");
  EXPECT_EQ(code_of({at(3, 0), at(std::numeric_limits<double>::infinity(), 50)}),
            "size-not-positive");
  EXPECT_EQ(code_of({at(3, -1), at(6, 50)}), "percent-outside");
  EXPECT_EQ(code_of({at(3, 0), at(6, 100.5)}), "percent-outside");
  EXPECT_EQ(code_of({at(3, std::nan("")), at(6, 50)}), "percent-outside");
  EXPECT_EQ(code_of({at(3, 0), at(3, 50)}), "size-twice");
  EXPECT_EQ(code_of({at(3, 0), at(12, 50), at(6, 70)}), "sizes-out-of-order");
  EXPECT_EQ(code_of({at(3, 40), at(6, 30)}), "percent-falls");
  EXPECT_EQ(code_of({at(6, 30), at(3, 40)}), "percent-falls");
}

TEST(Gradation, names_the_point_as_it_was_given) {
  const auto made = Gradation::make({at(24, 100), at(12, 50), at(13, 40), at(6, 120)}, by_mass);
  ASSERT_FALSE(made);
  EXPECT_EQ(made.problems().front().where, "point 4");
  const auto disordered = Gradation::make({at(24, 100), at(12, 50), at(13, 40), at(6, 0)}, by_mass);
  ASSERT_FALSE(disordered);
  EXPECT_EQ(disordered.problems().front().where, "point 3");
}

TEST(GradationBasis, is_named) {
  EXPECT_EQ(size_meaning_name(SizeMeaning::intermediate_axis), "intermediate axis");
  EXPECT_EQ(size_meaning_name(SizeMeaning::sphere), "sphere");
  EXPECT_EQ(size_meaning_name(SizeMeaning::sieve), "sieve");
  EXPECT_EQ(percent_of_name(PercentOf::mass), "mass");
  EXPECT_EQ(percent_of_name(PercentOf::count), "count");
}

}  // namespace
}  // namespace proofstone
