#pragma once

#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/hydraulics/section.h"

namespace proofstone {

/// The wet part of the ground between two neighbouring points of a section, in SI.
struct WetPiece {
  double width = 0;
  double area = 0;
  double perimeter = 0;
  double first_moment = 0;
  double perimeter_growth = 0;  ///< d(perimeter)/d(water level)
  double deepest = 0;
  double roughness = 0;
  bool starts_wet = false;  ///< water stands above its left end
  bool ends_wet = false;    ///< water stands above its right end
  bool added_wall = false;  ///< not ground: the wall put up at an end of the section
  bool foot_right = false;  ///< a wall that stands on the ground right of it
};

namespace wet_piece_detail {

/// A level or sloping piece of ground; at least one of the depths at its ends is positive, and a
/// negative depth is the height of dry ground above the water.
inline WetPiece under_water(double width, double left_depth, double right_depth) {
  WetPiece piece;
  const double fall = right_depth - left_depth;
  const double length = std::sqrt(width * width + fall * fall);
  double wet_share = 1;
  piece.starts_wet = left_depth > 0;
  piece.ends_wet = right_depth > 0;
  if (!piece.starts_wet || !piece.ends_wet) {
    const double wet_depth = std::max(left_depth, right_depth);
    wet_share = wet_depth / std::abs(fall);
    piece.perimeter_growth = length / std::abs(fall);
  }
  const double d1 = std::max(left_depth, 0.0);
  const double d2 = std::max(right_depth, 0.0);
  piece.width = wet_share * width;
  piece.perimeter = wet_share * length;
  piece.area = piece.width * (d1 + d2) / 2;
  piece.first_moment = piece.width * (d1 * d1 + d1 * d2 + d2 * d2) / 6;
  piece.deepest = std::max(d1, d2);
  return piece;
}

/// A vertical wall whose foot stands under `foot_depth` of water.
inline WetPiece wall_under_water(double height, double foot_depth) {
  WetPiece piece;
  piece.perimeter = std::min(height, foot_depth);
  piece.perimeter_growth = foot_depth <= height ? 1 : 0;
  piece.deepest = foot_depth;
  return piece;
}

/// Stations closer than this are one station: far below any survey, far above rounding.
constexpr double same_station = 1e-9;

/// The water's touch on a vertical wall at `station`, when the wall faces the ground between `left`
/// and `right`: it faces the side on which its foot stands.
inline std::optional<WetPiece> wall_piece(double station, double depth_before, double depth_after,
                                          double left, double right) {
  const bool faces_right = depth_after > depth_before;
  const double from_left = station - left;
  const double to_right = right - station;
  const bool inside = faces_right ? from_left > -same_station && to_right > same_station
                                  : from_left > same_station && to_right > -same_station;
  if (!inside) return std::nullopt;
  WetPiece piece =
      wall_under_water(std::abs(depth_after - depth_before), std::max(depth_before, depth_after));
  piece.starts_wet = depth_before > 0;
  piece.ends_wet = depth_after > 0;
  piece.foot_right = faces_right;
  return piece;
}

/// The wet part of the ground between stations x1 and x2 that also lies between `left` and `right`.
inline std::optional<WetPiece> ground_piece(double x1, double x2, double d1, double d2, double left,
                                            double right) {
  const double from = std::max(x1, left);
  const double to = std::min(x2, right);
  if (to <= from) return std::nullopt;
  const double deepening = (d2 - d1) / (x2 - x1);
  const double depth_from = from > x1 ? d1 + deepening * (from - x1) : d1;
  const double depth_to = to < x2 ? d1 + deepening * (to - x1) : d2;
  if (depth_from <= 0 && depth_to <= 0) return std::nullopt;
  return under_water(to - from, depth_from, depth_to);
}

/// The wall put up at an end of the section, when water stands above it.
inline std::optional<WetPiece> end_wall(const SectionPoint& end, double level) {
  const double depth = level - end.elevation.meters();
  if (depth <= 0) return std::nullopt;
  WetPiece piece = wall_under_water(depth, depth);
  piece.starts_wet = piece.ends_wet = true;
  piece.added_wall = true;
  return piece;
}

}  // namespace wet_piece_detail

/// Calls `visit(piece)` for every wet piece of ground between two stations, left to right.
template <class Visit>
void visit_wet_pieces(const Section& section, Length left, Length right, Length water_level,
                      Visit&& visit) {
  const auto& points = section.points();
  const double level = water_level.meters();
  const auto visit_with = [&](std::optional<WetPiece> piece, Dimensionless roughness) {
    if (!piece) return;
    piece->roughness = roughness.number();
    visit(*piece);
  };

  if (left <= section.left_end()) {
    visit_with(wet_piece_detail::end_wall(points.front(), level), points.front().roughness);
  }
  auto point =
      std::lower_bound(points.begin(), points.end(), left,
                       [](const SectionPoint& p, Length station) { return p.station < station; });
  if (point != points.begin()) --point;
  for (; point + 1 < points.end() && point->station <= right; ++point) {
    const double x1 = point->station.meters();
    const double x2 = (point + 1)->station.meters();
    const double d1 = level - point->elevation.meters();
    const double d2 = level - (point + 1)->elevation.meters();
    if (d1 <= 0 && d2 <= 0) continue;
    const bool wall = x2 - x1 < wet_piece_detail::same_station;
    visit_with(wall ? wet_piece_detail::wall_piece(x1, d1, d2, left.meters(), right.meters())
                    : wet_piece_detail::ground_piece(x1, x2, d1, d2, left.meters(), right.meters()),
               point->roughness);
  }
  if (right >= section.right_end()) {
    visit_with(wet_piece_detail::end_wall(points.back(), level),
               points[points.size() - 2].roughness);
  }
}

}  // namespace proofstone
