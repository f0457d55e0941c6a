#include "geodata/surveyed_section.h"

#include <fmt/format.h>
#include <ogr_geometry.h>

#include <algorithm>
#include <cmath>

namespace proofstone {

namespace {

constexpr std::size_t most_points = 10'000;
/// Two vertices nearer than this in plan, in the unit of the file, are one place.
constexpr double one_place = 1e-6;

double distance(const SurveyedPoint& a, const SurveyedPoint& b) {
  return std::hypot(b.east - a.east, b.north - a.north);
}

bool is_finite(const SurveyedPoint& point) {
  return std::isfinite(point.east) && std::isfinite(point.north) && std::isfinite(point.elevation);
}

Problem at(const std::string& file, const std::string& where, const char* code, std::string what,
           const char* allowed) {
  return {code, std::move(what), file, where, allowed};
}

/// By the geometry library's own test; a closed line touches itself where it ends.
bool crosses_itself(const std::vector<SurveyedPoint>& line) {
  OGRLineString course;
  for (const auto& point : line) {
    const int count = course.getNumPoints();
    const bool same_place =
        count > 0 && std::hypot(point.east - course.getX(count - 1),
                                point.north - course.getY(count - 1)) < one_place;
    if (!same_place) course.addPoint(point.east, point.north);
  }
  if (course.getNumPoints() < 3) return false;
  return course.IsSimple() == 0 || course.get_IsClosed() != 0;
}

/// The first vertex, counted from 1, that only repeats the one before it; 0 where there is none.
std::size_t repeated(const std::vector<SurveyedPoint>& line, bool walls_allowed) {
  for (std::size_t i = 1; i < line.size(); ++i) {
    if (distance(line[i - 1], line[i]) >= one_place) continue;
    const bool same_height = std::abs(line[i].elevation - line[i - 1].elevation) < one_place;
    if (same_height || !walls_allowed) return i + 1;
  }
  return 0;
}

}  // namespace

Problems course_problems(const std::vector<SurveyedPoint>& line, bool walls_allowed,
                         const std::string& file, const std::string& where) {
  if (line.size() < 2) {
    return {at(file, where, "one-point", fmt::format("The line has {} point.", line.size()),
               "a line of several points")};
  }
  if (line.size() > most_points) {
    return {at(file, where, "too-many-points", fmt::format("The line has {} points.", line.size()),
               "at most 10,000; thin the survey to the breaks of the ground")};
  }
  if (!std::all_of(line.begin(), line.end(), is_finite)) {
    return {at(file, where, "not-a-number", "A coordinate or an elevation is no number.",
               "a position and an elevation at every point")};
  }
  if (const std::size_t again = repeated(line, walls_allowed); again != 0) {
    return {at(file, where, "repeated-point",
               fmt::format("Point {} repeats the one before it.", again), "each point once")};
  }
  if (crosses_itself(line)) {
    return {at(file, where, "crosses-itself", "The line crosses or touches itself.",
               "a line from one end to the other")};
  }
  return {};
}

Expected<std::vector<StationElevation>> ground_along(const std::vector<SurveyedPoint>& line,
                                                     const std::string& file,
                                                     const std::string& where) {
  auto problems = course_problems(line, true, file, where);
  if (!problems.empty()) return problems;
  const bool all_zero = std::all_of(line.begin(), line.end(), [](const SurveyedPoint& point) {
    return std::abs(point.elevation) <= 0;
  });
  if (all_zero) {
    return at(file, where, "no-elevation",
              "Every elevation is 0, as programs write where none was surveyed.",
              "surveyed elevations; shift a survey whose ground truly lies at 0");
  }
  std::vector<StationElevation> ground;
  ground.reserve(line.size());
  double station = 0;
  for (std::size_t i = 0; i < line.size(); ++i) {
    // A vertical wall has one station.
    if (i > 0) {
      const double step = distance(line[i - 1], line[i]);
      if (step >= one_place) station += step;
    }
    ground.push_back({station, line[i].elevation});
  }
  return ground;
}

}  // namespace proofstone
