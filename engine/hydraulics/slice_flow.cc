#include "engine/hydraulics/slice_flow.h"

#include <algorithm>
#include <cmath>

#include "engine/hydraulics/divided_section.h"
#include "engine/hydraulics/section_problem.h"
#include "engine/hydraulics/water_weight.h"
#include "engine/hydraulics/wet_pieces.h"

namespace proofstone {

namespace {

constexpr double most_slices = 20'000;

Problems problems_of(const Section& section, const SliceExtent& extent, const SliceWater& water) {
  Problems problems;
  if (!(extent.left >= section.left_end() && extent.right <= section.right_end() &&
        extent.left < extent.right)) {
    problems.push_back(
        section_problem("extent-outside",
                        "The stations between which the flow is shared are not inside the "
                        "section from left to right.",
                        "left", "two stations inside the section"));
  }
  if (!(water.discharge.si() > 0) || !std::isfinite(water.discharge.si())) {
    problems.push_back(section_problem("discharge-not-positive",
                                       "The discharge is not a positive number.", "discharge",
                                       "a discharge above 0"));
  }
  if (!(water.energy_slope.ratio() > 0) || !std::isfinite(water.energy_slope.ratio())) {
    problems.push_back(section_problem("slope-not-positive", "The slope is not a positive number.",
                                       "slope", "a slope above 0"));
  }
  if (!std::isfinite(water.water_level.meters())) {
    problems.push_back(section_problem("not-a-number", "The water level is not a finite number.",
                                       "water_level", "a finite length"));
  }
  return problems;
}

/// Parts of equal width, none wider than `greatest`; one where `greatest` is not positive.
double parts_of(double width, double greatest) {
  return greatest > 0 ? std::max(1.0, std::ceil(width / greatest * (1 - 1e-12))) : 1.0;
}

/// The vertical lines: the ends, the survey points between them, the lines that cut wide ground.
std::vector<Length> lines_of(const Section& section, const SliceExtent& extent) {
  std::vector<Length> points{extent.left};
  for (const SectionPoint& point : section.points()) {
    const bool further = (point.station - points.back()).meters() > wet_piece_detail::same_station;
    const bool before_end =
        (extent.right - point.station).meters() > wet_piece_detail::same_station;
    if (further && before_end) points.push_back(point.station);
  }
  points.push_back(extent.right);
  std::vector<Length> lines{points.front()};
  for (std::size_t i = 1; i < points.size(); ++i) {
    const Length width = points[i] - points[i - 1];
    const double parts = parts_of(width.meters(), extent.greatest_width.meters());
    if (static_cast<double>(lines.size()) + parts > most_slices) return {};
    for (int k = 1; k < static_cast<int>(parts); ++k) {
      lines.push_back(points[i - 1] + width * (k / parts));
    }
    lines.push_back(points[i]);
  }
  return lines;
}

/// Geometry and conveyance of one slice. A wall that stands beside the slice counts with the
/// roughness of its own piece, as in Lotter's sum.
FlowSlice slice_between(const Section& section, Length left, Length right, Length level) {
  FlowSlice slice;
  slice.left = left;
  slice.right = right;
  double area = 0, perimeter = 0, width = 0, deepest = 0, weighted = 0;
  visit_wet_pieces(section, left, right, level, [&](const WetPiece& piece) {
    area += piece.area;
    perimeter += piece.perimeter;
    width += piece.width;
    deepest = std::max(deepest, piece.deepest);
    weighted += piece.perimeter * piece.roughness;
  });
  slice.area = Area::square_meters(area);
  slice.wetted_perimeter = Length::meters(perimeter);
  slice.top_width = Length::meters(width);
  slice.deepest = Length::meters(deepest);
  if (!(area > 0)) return slice;
  slice.mean_depth = Length::meters(area / width);
  slice.conveyance_si = manning_conveyance(area, perimeter, weighted / perimeter);
  return slice;
}

void carry(FlowSlice& slice, const SliceWater& water, double all_conveyance) {
  const double area = slice.area.square_meters();
  const double depth = slice.mean_depth.meters();
  const double v = water.discharge.si() / all_conveyance * slice.conveyance_si / area;
  slice.discharge = water.discharge * (slice.conveyance_si / all_conveyance);
  slice.velocity = Velocity::meters_per_second(v);
  slice.unit_discharge = UnitDischarge::square_meters_per_second(v * depth);
  slice.shear = Stress::pascals(water_unit_weight.newtons_per_cubic_meter() * area /
                                slice.wetted_perimeter.meters() * water.energy_slope.ratio());
  slice.froude_number = Dimensionless::number(v / std::sqrt(g_si * depth));
}

}  // namespace

Expected<std::vector<FlowSlice>> slice_flow(const Section& section, const SliceExtent& extent,
                                            const SliceWater& water) {
  const Problems problems = problems_of(section, extent, water);
  if (!problems.empty()) return problems;
  const std::vector<Length> lines = lines_of(section, extent);
  if (lines.empty()) {
    return section_problem("too-many-slices", "The slices are too narrow for this section.",
                           "slice_width", "a width that gives at most 20,000 slices");
  }
  std::vector<FlowSlice> slices;
  double conveyance = 0;
  for (std::size_t i = 1; i < lines.size(); ++i) {
    const FlowSlice slice = slice_between(section, lines[i - 1], lines[i], water.water_level);
    if (!(slice.conveyance_si > 0)) continue;
    conveyance += slice.conveyance_si;
    slices.push_back(slice);
  }
  if (slices.empty()) {
    return section_problem("dry", "No water stands between these stations at this level.",
                           "water_level", "a level above the ground there");
  }
  for (FlowSlice& slice : slices) carry(slice, water, conveyance);
  return slices;
}

const FlowSlice* slice_at(const std::vector<FlowSlice>& slices, Length station) {
  const FlowSlice* found = nullptr;
  for (const FlowSlice& slice : slices) {
    if (station < slice.left || station > slice.right) continue;
    if (found == nullptr || slice.velocity > found->velocity) found = &slice;
  }
  return found;
}

const Source& slice_flow_source() {
  static const Source source{
      "Conveyance slices, Kᵢ = a^(5/3)·p^(−2/3)/n, scaled to the whole discharge",
      "for straight reaches (restriction: WES Streambank Handbook 1997, App. A)",
      SourceStanding::common_practice};
  return source;
}

}  // namespace proofstone
