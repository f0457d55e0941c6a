#include "engine/hydraulics/section.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "engine/hydraulics/wet_pieces.h"
#include "engine/quantity/measure.h"

namespace proofstone {

namespace {

constexpr std::size_t fewest_points = 3;
constexpr std::size_t most_points = 10'000;
constexpr double least_roughness = 0.005;
constexpr double greatest_roughness = 0.5;
constexpr double greatest_width_m = 100'000;
constexpr double greatest_height_m = 10'000;

Problem problem_at(const std::string& code, const std::string& what, std::size_t index,
                   const char* field, const std::string& allowed) {
  return {code, what, "", fmt::format("point {}, {}", index + 1, field), allowed};
}

/// Problems of one point and of its place after the ones before it.
void check_point(const std::vector<SectionPoint>& points, std::size_t i, Problems& problems) {
  const SectionPoint& point = points[i];
  if (!std::isfinite(point.station.meters())) {
    problems.push_back(problem_at("not-a-number", "The station is not a finite number.", i,
                                  "station", "a finite length"));
  }
  if (!std::isfinite(point.elevation.meters())) {
    problems.push_back(problem_at("not-a-number", "The elevation is not a finite number.", i,
                                  "elevation", "a finite length"));
  }
  const double n = point.roughness.number();
  if (!(n >= least_roughness && n <= greatest_roughness)) {
    problems.push_back(problem_at("roughness-out-of-range",
                                  fmt::format("Manning's n is {}.", significant(n, 4)), i,
                                  "roughness", "0.005 to 0.5"));
  }
  if (i == 0) return;
  const SectionPoint& before = points[i - 1];
  if (point.station < before.station) {
    problems.push_back(
        problem_at("stations-fall", "The station is smaller than the one before it.", i, "station",
                   "stations from left to right, looking downstream, that never fall"));
  } else if (point.station == before.station) {
    if (point.elevation == before.elevation) {
      problems.push_back(problem_at("repeated-point", "The point repeats the one before it.", i,
                                    "station", "each point once"));
    } else if (i >= 2 && points[i - 2].station == point.station) {
      problems.push_back(problem_at("repeated-station", "More than two points have this station.",
                                    i, "station", "two points of one station for a vertical wall"));
    }
  }
}

Problem whole_section(const std::string& code, const std::string& what,
                      const std::string& allowed) {
  return {code, what, "", "section", allowed};
}

}  // namespace

Expected<Section> Section::make(std::vector<SectionPoint> points) {
  if (points.size() < fewest_points) {
    return whole_section("too-few-points", fmt::format("The section has {} points.", points.size()),
                         "at least 3 points");
  }
  if (points.size() > most_points) {
    return whole_section("too-many-points",
                         fmt::format("The section has {} points.", points.size()),
                         "at most 10,000 points; thin the survey to the breaks of the ground");
  }
  Problems problems;
  for (std::size_t i = 0; i < points.size(); ++i) check_point(points, i, problems);
  if (!problems.empty()) return problems;

  Section section(std::move(points));
  const double width = (section.right_end() - section.left_end()).meters();
  if (width > greatest_width_m) {
    return whole_section("section-width",
                         fmt::format("The section is {} m wide.", significant(width, 4)),
                         "at most 100 km; check the stations and their units");
  }
  const double height = (section.highest() - section.lowest()).meters();
  if (height > greatest_height_m) {
    return whole_section("section-height",
                         fmt::format("The section is {} m high.", significant(height, 4)),
                         "at most 10 km; check the elevations and their units");
  }
  return section;
}

Length Section::lowest() const {
  return std::min_element(
             points_.begin(), points_.end(),
             [](const SectionPoint& a, const SectionPoint& b) { return a.elevation < b.elevation; })
      ->elevation;
}

Length Section::highest() const {
  return std::max_element(
             points_.begin(), points_.end(),
             [](const SectionPoint& a, const SectionPoint& b) { return a.elevation < b.elevation; })
      ->elevation;
}

Length Section::lower_end() const {
  return std::min(points_.front().elevation, points_.back().elevation);
}

Length Section::ground_at(Length station) const {
  if (station < left_end()) return points_.front().elevation;
  if (station > right_end()) return points_.back().elevation;
  const auto next =
      std::lower_bound(points_.begin(), points_.end(), station,
                       [](const SectionPoint& p, Length wanted) { return p.station < wanted; });
  if (!(station < next->station)) {
    const auto after = next + 1;
    const bool wall = after != points_.end() && !(station < after->station);
    return wall ? std::min(next->elevation, after->elevation) : next->elevation;
  }
  const auto before = next - 1;
  const double share = (station - before->station) / (next->station - before->station);
  return before->elevation + share * (next->elevation - before->elevation);
}

WetGeometry Section::wet(Length water_level) const {
  return wet_between(left_end(), right_end(), water_level);
}

WetGeometry Section::wet_between(Length left, Length right, Length water_level) const {
  double area = 0;
  double perimeter = 0;
  double width = 0;
  double deepest = 0;
  bool last_ended_wet = false;
  WetGeometry wet;
  visit_wet_pieces(*this, left, right, water_level, [&](const WetPiece& piece) {
    area += piece.area;
    perimeter += piece.perimeter;
    width += piece.width;
    deepest = std::max(deepest, piece.deepest);
    wet.first_moment_si += piece.first_moment;
    wet.perimeter_growth += piece.perimeter_growth;
    wet.end_wall_added = wet.end_wall_added || piece.added_wall;
    if (!(last_ended_wet && piece.starts_wet)) ++wet.wet_stretches;
    last_ended_wet = piece.ends_wet;
  });
  wet.area = Area::square_meters(area);
  wet.wetted_perimeter = Length::meters(perimeter);
  wet.top_width = Length::meters(width);
  wet.deepest = Length::meters(deepest);
  return wet;
}

}  // namespace proofstone
