#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "engine/filter/base_category.h"
#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

/// A soil from clay to gravel: sizes fixed, percents rising at random to 100.
CurvePoints any_soil() {
  const std::vector<double> sizes{0.002, 0.01, 0.03, 0.075, 0.15, 0.425, 1, 2, 4.75, 9.5, 19};
  CurvePoints points;
  double sum = 0;
  std::vector<double> parts;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    parts.push_back(*rc::gen::inRange(1, 100));
    sum += parts.back();
  }
  double so_far = 0;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    so_far += parts[i];
    points.push_back({Length::millimeters(sizes[i]), std::min(100.0, 100 * so_far / sum)});
  }
  points.back().percent_smaller = 100;
  return points;
}

RC_GTEST_PROP(BaseCategoryProperty, the_band_is_never_wider_than_five, ()) {
  const auto soil = any_soil();
  Steps steps;
  const auto limits = filter_limits({soil, soil}, {}, steps);
  RC_PRE(bool(limits));
  RC_ASSERT(limits->min_d15 <= limits->max_d15 * (1 + 1e-9));
  RC_ASSERT(limits->max_d15 / limits->min_d15 <= 5 * (1 + 1e-9));
  RC_ASSERT(limits->max_d60 / limits->max_d10 <= 6 * (1 + 1e-9));
  RC_ASSERT(bool(filter_band_of(*limits)));
}

RC_GTEST_PROP(BaseCategoryProperty, a_dispersive_soil_never_takes_a_coarser_filter, ()) {
  const auto soil = any_soil();
  Steps steps;
  const auto calm = filter_limits({soil, soil}, {Dispersion::no}, steps);
  const auto dispersive = filter_limits({soil, soil}, {Dispersion::yes}, steps);
  RC_PRE(calm && dispersive);
  RC_ASSERT(dispersive->max_d15 <= calm->max_d15 * (1 + 1e-12));
}

RC_GTEST_PROP(BaseCategoryProperty, the_issue_of_2017_never_lets_less_water_out, ()) {
  const auto soil = any_soil();
  Steps steps;
  const auto before = filter_limits(
      {soil, soil}, {Dispersion::no, FilterEdition::of_1994, Regrading::by_rule}, steps);
  const auto after = filter_limits(
      {soil, soil}, {Dispersion::no, FilterEdition::of_2017, Regrading::by_rule}, steps);
  RC_PRE(before && after);
  RC_ASSERT(after->permeable_d15 >= before->permeable_d15);
}

}  // namespace
}  // namespace proofstone
