#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "engine/rock/gradation.h"
#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

constexpr GradationBasis by_mass{SizeMeaning::intermediate_axis, PercentOf::mass};

/// Two to nine points of 0.1 in and more, percents strictly rising so that sizes are unique.
std::vector<GradationPoint> any_points() {
  const int count = *rc::gen::inRange(2, 10);
  std::vector<GradationPoint> points;
  int size = 0;
  int percent = *rc::gen::inRange(0, 100);
  for (int i = 0; i < count; ++i) {
    size += *rc::gen::inRange(1, 100);
    points.push_back({Length::inches(size / 10.0), percent / 10.0});
    percent += *rc::gen::inRange(1, 101);
  }
  return points;
}

double share_of(const Gradation& rock, double share) {
  const double low = rock.points().front().percent_smaller;
  const double high = rock.points().back().percent_smaller;
  return std::min(high, std::max(low, low + share * (high - low)));
}

RC_GTEST_PROP(Gradation, percent_of_the_size_at_a_percent_is_that_percent, ()) {
  const auto rock = Gradation::make(any_points(), by_mass);
  RC_ASSERT(static_cast<bool>(rock));
  const double percent = share_of(*rock, *rc::gen::inRange(0, 1001) / 1000.0);
  const auto size = rock->size_at(percent);
  RC_ASSERT(static_cast<bool>(size));
  RC_ASSERT(std::abs(rock->percent_smaller(*size) - percent) < 1e-9);
}

RC_GTEST_PROP(Gradation, never_falls, ()) {
  const auto rock = Gradation::make(any_points(), by_mass);
  const auto a = Length::inches(*rc::gen::inRange(1, 1200) / 10.0);
  const auto b = Length::inches(*rc::gen::inRange(1, 1200) / 10.0);
  RC_ASSERT(rock->percent_smaller(std::min(a, b)) <= rock->percent_smaller(std::max(a, b)) + 1e-12);
}

RC_GTEST_PROP(Gradation, goes_through_its_points, ()) {
  const auto points = any_points();
  const auto rock = Gradation::make(points, by_mass);
  for (const auto& point : points) {
    RC_ASSERT(std::abs(rock->percent_smaller(point.size) - point.percent_smaller) < 1e-9);
    RC_ASSERT(std::abs(*rock->size_at(point.percent_smaller) / point.size - 1) < 1e-9);
  }
}

RC_GTEST_PROP(Gradation, is_the_same_from_either_end, ()) {
  auto points = any_points();
  const auto rock = Gradation::make(points, by_mass);
  std::reverse(points.begin(), points.end());
  const auto turned = Gradation::make(points, by_mass);
  const double percent = share_of(*rock, 0.37);
  RC_ASSERT(*rock->size_at(percent) == *turned->size_at(percent));
}

// The curve is straight in log(size), so larger stones in proportion are a shifted curve.
RC_GTEST_PROP(Gradation, scales_with_the_stones, ()) {
  auto points = any_points();
  const auto rock = Gradation::make(points, by_mass);
  const double factor = *rc::gen::inRange(2, 50) / 10.0;
  for (auto& point : points) point.size = factor * point.size;
  const auto scaled = Gradation::make(points, by_mass);
  const double percent = share_of(*rock, *rc::gen::inRange(0, 1001) / 1000.0);
  RC_ASSERT(std::abs(*scaled->size_at(percent) / *rock->size_at(percent) / factor - 1) < 1e-9);
}

RC_GTEST_PROP(StoneSize, is_the_inverse_of_stone_mass, ()) {
  const auto meaning =
      *rc::gen::element(SizeMeaning::intermediate_axis, SizeMeaning::sphere, SizeMeaning::sieve);
  const auto size = Length::millimeters(*rc::gen::inRange(1, 5000));
  const auto density = Density::kilograms_per_cubic_meter(*rc::gen::inRange(1500, 3500));
  RC_ASSERT(std::abs(stone_size(stone_mass(size, meaning, density), meaning, density) / size - 1) <
            1e-12);
}

RC_GTEST_PROP(ConvertSize, keeps_the_mass_and_comes_back, ()) {
  const auto any_meaning =
      rc::gen::element(SizeMeaning::intermediate_axis, SizeMeaning::sphere, SizeMeaning::sieve);
  const auto from = *any_meaning;
  const auto to = *any_meaning;
  const auto size = Length::millimeters(*rc::gen::inRange(1, 5000));
  const auto density = Density::kilograms_per_cubic_meter(2650);
  const auto other = convert_size(size, from, to);
  RC_ASSERT(std::abs(stone_mass(other, to, density) / stone_mass(size, from, density) - 1) < 1e-12);
  RC_ASSERT(std::abs(convert_size(other, to, from) / size - 1) < 1e-12);
}

}  // namespace
}  // namespace proofstone
