#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "engine/hydraulics/bank.h"
#include "engine/hydraulics/random_section.h"
#include "engine/hydraulics/section_flow.h"

namespace proofstone {
namespace {

CompositeRoughness any_composite() {
  return *rc::gen::element(CompositeRoughness::horton, CompositeRoughness::pavlovskii,
                           CompositeRoughness::lotter);
}

std::vector<Length> any_divisions(const Section& section) {
  std::vector<Length> divisions;
  const int count = *rc::gen::inRange(0, 4);
  for (int i = 0; i < count; ++i) {
    const double share = between(0.01, 0.99);
    divisions.push_back(section.left_end() + share * (section.right_end() - section.left_end()));
  }
  std::sort(divisions.begin(), divisions.end());
  divisions.erase(std::unique(divisions.begin(), divisions.end()), divisions.end());
  return divisions;
}

Expected<SectionFlow> normal(const Section& section, const std::vector<Length>& divisions,
                             double discharge, CompositeRoughness composite) {
  Steps steps;
  return normal_flow(section, divisions, Discharge::cubic_meters_per_second(discharge),
                     Slope::ratio(0.002), composite, steps);
}

RC_GTEST_PROP(SectionProperties, PartsAddUpWhereverTheSectionIsDivided, ()) {
  const Section section = section_of(any_valley(11));
  const auto level = Length::meters(between(0, 10));
  std::vector<Length> bounds = any_divisions(section);
  bounds.insert(bounds.begin(), section.left_end());
  bounds.push_back(section.right_end());
  double area = 0, perimeter = 0, moment = 0;
  for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
    const auto part = section.wet_between(bounds[i], bounds[i + 1], level);
    area += part.area.si();
    perimeter += part.wetted_perimeter.si();
    moment += part.first_moment_si;
  }
  const auto whole = section.wet(level);
  RC_ASSERT(std::abs(area - whole.area.si()) < 1e-9);
  RC_ASSERT(std::abs(perimeter - whole.wetted_perimeter.si()) < 1e-9);
  RC_ASSERT(std::abs(moment - whole.first_moment_si) < 1e-9);
}

RC_GTEST_PROP(SectionProperties, ConveyanceIsTheSumOfItsParts, ()) {
  const Section section = section_of(any_valley(11));
  const auto flow = flow_at_level(section, any_divisions(section), Length::meters(between(0, 10)),
                                  any_composite());
  double sum = 0, area = 0;
  for (const auto& part : flow.parts) {
    sum += part.conveyance_si;
    area += part.area.si();
  }
  RC_ASSERT(std::abs(sum - flow.conveyance_si) <= 1e-12 * (1 + sum));
  RC_ASSERT(std::abs(area - flow.wet.area.si()) < 1e-9);
  RC_ASSERT(flow.energy_coefficient.number() > 1 - 1e-9);
}

RC_GTEST_PROP(SectionProperties, AMirroredSectionCarriesTheSame, ()) {
  const auto points = any_valley(11);
  std::vector<SectionPoint> mirrored;
  for (std::size_t i = points.size(); i-- > 0;) {
    // Roughness holds from a point to the next, so it moves to the piece's other end.
    mirrored.push_back(
        {-1.0 * points[i].station, points[i].elevation, points[i > 0 ? i - 1 : 0].roughness});
  }
  const auto level = Length::meters(between(0, 10));
  const auto composite = any_composite();
  const auto one = flow_at_level(section_of(points), {}, level, composite);
  const auto other = flow_at_level(section_of(mirrored), {}, level, composite);
  RC_ASSERT(std::abs(one.conveyance_si - other.conveyance_si) <= 1e-9 * (1 + one.conveyance_si));
}

RC_GTEST_PROP(NormalFlowProperties, TheLowestLevelRisesWithTheDischarge, ()) {
  const Section section = section_of(any_valley(11));
  const auto divisions = any_divisions(section);
  const auto composite = any_composite();
  const double small = between(0.1, 100);
  const double large = small * between(1.001, 3);
  const auto low = normal(section, divisions, small, composite);
  const auto high = normal(section, divisions, large, composite);
  if (!high) return;
  RC_ASSERT(static_cast<bool>(low));
  RC_ASSERT(low->water_level <= high->water_level);
}

RC_GTEST_PROP(NormalFlowProperties, TheLevelFoundCarriesTheDischarge, ()) {
  const Section section = section_of(any_valley(11));
  const double discharge = between(0.01, 200);
  const auto flow = normal(section, any_divisions(section), discharge, any_composite());
  if (!flow) {
    RC_ASSERT(flow.problems().front().code == "overtopped");
    return;
  }
  const double carried = flow->conveyance_si * std::sqrt(0.002);
  RC_ASSERT(std::abs(carried / discharge - 1) < 1e-6);
}

// Froude's law: lengths by λ and roughness by λ^(1/6) take velocities by √λ at the same slope.
RC_GTEST_PROP(NormalFlowProperties, ScalesAsFroudeSays, ()) {
  const double scale = between(0.2, 3);
  auto points = any_valley(11);
  const Section model = section_of(points);
  for (auto& point : points) {
    point.station = scale * point.station;
    point.elevation = scale * point.elevation;
    point.roughness = std::pow(scale, 1.0 / 6.0) * point.roughness;
  }
  const Section scaled = section_of(points);
  const double discharge = between(0.1, 100);
  const auto composite = any_composite();
  const auto one = normal(model, {}, discharge, composite);
  const auto other = normal(scaled, {}, discharge * std::pow(scale, 2.5), composite);
  RC_ASSERT(static_cast<bool>(one) == static_cast<bool>(other));
  if (!one) return;
  RC_ASSERT(std::abs(other->water_level / one->water_level / scale - 1) < 1e-9);
  RC_ASSERT(std::abs(other->mean_velocity() / one->mean_velocity() / std::sqrt(scale) - 1) < 1e-9);
  RC_ASSERT(std::abs(other->froude_number.number() / one->froude_number.number() - 1) < 1e-9);
}

// The slope of the energy curve is worked out by formula; the curve itself must agree.
RC_GTEST_PROP(CriticalFlowProperties, EveryLevelFoundIsALeastOfTheEnergy, ()) {
  const Section section = section_of(any_valley(11));
  const auto composite = any_composite();
  const auto discharge = Discharge::cubic_meters_per_second(between(0.1, 200));
  const auto flows = critical_flows(section, {}, discharge, composite);
  if (!flows) {
    RC_ASSERT(flows.problems().front().code == "overtopped");
    return;
  }
  for (const auto& flow : *flows) {
    for (const double step : {-1e-4, 1e-4}) {
      const auto beside =
          carrying(flow_at_level(section, {}, flow.water_level + Length::meters(step), composite),
                   discharge);
      RC_ASSERT(beside.specific_energy() > flow.specific_energy() - Length::meters(1e-9));
    }
  }
}

RC_GTEST_PROP(BankProperties, TheLocalPlaceLiesBetweenToeAndWaterLine, ()) {
  const Section section = section_of(any_valley(11));
  const auto side = *rc::gen::element(BankSide::left, BankSide::right);
  const auto level = section.lowest() + Length::meters(between(0.01, 3));
  const auto bank = bank_geometry(section, side, std::nullopt, std::nullopt, level);
  RC_ASSERT(static_cast<bool>(bank));
  const double out = (bank->local_station - bank->toe_station).meters();
  const double all = (bank->top_station - bank->toe_station).meters();
  RC_ASSERT(out / all > -1e-12 && out / all < 1 + 1e-12);
  RC_ASSERT(bank->local_depth <= bank->toe_depth);
  RC_ASSERT(bank->angle <= bank->steepest_angle + Angle::radians(1e-12));
}

}  // namespace
}  // namespace proofstone
