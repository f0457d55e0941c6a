#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <vector>

#include "engine/hydraulics/lateral_distribution.h"
#include "engine/hydraulics/random_section.h"
#include "engine/hydraulics/slice_flow.h"

namespace proofstone {
namespace {

std::vector<SectionPoint> mirrored(const std::vector<SectionPoint>& points) {
  std::vector<SectionPoint> image;
  for (std::size_t i = points.size(); i-- > 0;) {
    // Roughness holds from a point to the next, so it moves to the piece's other end.
    image.push_back({-1.0 * points[i].station, points[i].elevation,
                     i > 0 ? points[i - 1].roughness : points[i].roughness});
  }
  return image;
}

/// Everything `scale` times as large; roughness with the sixth root keeps friction slope equal.
std::vector<SectionPoint> scaled(const std::vector<SectionPoint>& points, double scale) {
  std::vector<SectionPoint> larger;
  for (const SectionPoint& point : points) {
    larger.push_back({scale * point.station, scale * point.elevation,
                      std::pow(scale, 1.0 / 6.0) * point.roughness});
  }
  return larger;
}

bool close(double a, double b, double relative) {
  return std::abs(a - b) <= relative * std::max(std::abs(a), std::abs(b));
}

std::vector<FlowSlice> slices_of(const Section& section, double level, double discharge,
                                 double width) {
  const auto slices = slice_flow(
      section, {section.left_end(), section.right_end(), Length::meters(width)},
      {Length::meters(level), Discharge::cubic_meters_per_second(discharge), Slope::ratio(0.002)});
  RC_ASSERT(static_cast<bool>(slices));
  return *slices;
}

LateralDistribution lateral_of(const Section& section, double level) {
  LateralWater water;
  water.water_level = Length::meters(level);
  water.energy_slope = Slope::ratio(0.002);
  water.cells = 200;
  const auto across = lateral_distribution(section, water);
  RC_ASSERT(static_cast<bool>(across));
  return *across;
}

RC_GTEST_PROP(SliceFlowProperties, SlicesCarryTheDischargeAndNoMore, ()) {
  const auto slices = slices_of(section_of(any_valley(7)), between(6.5, 9.5), 75, between(0.2, 30));
  double carried = 0;
  for (const FlowSlice& slice : slices) {
    carried += slice.velocity.si() * slice.area.si();
    RC_ASSERT(close(slice.discharge.si(), slice.unit_discharge.si() * slice.top_width.si(), 1e-12));
  }
  RC_ASSERT(close(carried, 75, 1e-12));
}

RC_GTEST_PROP(SliceFlowProperties, AMirroredSectionHasTheSameSlicesTheOtherWayRound, ()) {
  const auto points = any_valley(7);
  const double level = between(6.5, 9.5);
  const double width = between(0.5, 30);
  const auto slices = slices_of(section_of(points), level, 75, width);
  const auto image = slices_of(section_of(mirrored(points)), level, 75, width);
  RC_ASSERT(slices.size() == image.size());
  for (std::size_t i = 0; i < slices.size(); ++i) {
    RC_ASSERT(close(slices[i].velocity.si(), image[image.size() - 1 - i].velocity.si(), 1e-7));
  }
}

RC_GTEST_PROP(SliceFlowProperties, ScalesAsFroude, ()) {
  const auto points = any_valley(7);
  const double level = between(6.5, 9.5);
  const double scale = between(0.2, 5);
  std::vector<SectionPoint> larger = scaled(points, scale);
  for (auto& point : larger) {
    RC_PRE(point.roughness.number() > 0.005 && point.roughness.number() < 0.5);
  }
  const auto slices = slices_of(section_of(points), level, 75, 0);
  const auto model =
      slices_of(section_of(std::move(larger)), level * scale, 75 * std::pow(scale, 2.5), 0);
  RC_ASSERT(slices.size() == model.size());
  for (std::size_t i = 0; i < slices.size(); ++i) {
    RC_ASSERT(close(model[i].velocity.si(), std::sqrt(scale) * slices[i].velocity.si(), 1e-9));
    RC_ASSERT(close(model[i].shear.si(), scale * slices[i].shear.si(), 1e-9));
    RC_ASSERT(close(model[i].froude_number.si(), slices[i].froude_number.si(), 1e-9));
  }
}

RC_GTEST_PROP(LateralProperties, GroundHoldsBackWhatTheWeightPulls, ()) {
  const auto across = lateral_of(section_of(any_valley(7)), between(6.5, 9.5));
  RC_ASSERT(close(across.boundary_force_si, across.weight_force_si, 1e-9));
}

RC_GTEST_PROP(LateralProperties, AMirroredSectionCarriesTheSame, ()) {
  const auto points = any_valley(7);
  const double level = between(6.5, 9.5);
  const auto across = lateral_of(section_of(points), level);
  const auto image = lateral_of(section_of(mirrored(points)), level);
  RC_ASSERT(close(across.discharge.si(), image.discharge.si(), 1e-9));
}

RC_GTEST_PROP(LateralProperties, ScalesAsFroude, ()) {
  const auto points = any_valley(7);
  const double level = between(6.5, 9.5);
  const double scale = between(0.2, 5);
  const auto across = lateral_of(section_of(points), level);
  const auto larger = lateral_of(section_of(scaled(points, scale)), level * scale);
  RC_ASSERT(close(larger.discharge.si(), std::pow(scale, 2.5) * across.discharge.si(), 1e-9));
}

}  // namespace
}  // namespace proofstone
