#pragma once

#include <string>
#include <vector>

#include "engine/finding/problem.h"

namespace proofstone {

/// A place on a picture in pixels: x to the right, y down, from its upper left corner.
struct PhotoPoint {
  double x = 0;
  double y = 0;
};

/// A picture's size in pixels, as it was taken.
struct PictureSize {
  double width = 0;
  double height = 0;
  double diagonal() const;
};

/// The upright box round something, in pixels.
struct PhotoBox {
  double left = 0;
  double top = 0;
  double right = 0;
  double bottom = 0;
  double width() const { return right - left; }
  double height() const { return bottom - top; }
  PhotoPoint middle() const { return {(left + right) / 2, (top + bottom) / 2}; }
  /// Grows until it holds the place.
  void take_in(PhotoPoint place);
};

/// The box round places. Precondition: one or more.
PhotoBox box_round(const std::vector<PhotoPoint>& places);

/// Whether a place is a number and lies on the picture or its edge.
bool is_on_picture(PhotoPoint place, const PictureSize& picture);

/// The visible piece of one stone: its area in square pixels and the box round it.
struct VisiblePiece {
  double area = 0;
  PhotoBox box;
};

double pixels_between(PhotoPoint one, PhotoPoint other);

/// The piece that an outline encloses; the last corner joins the first, repeated corners count
/// once. Problems at `where`: fewer than three corners or more than 2,000, a corner that is not a
/// number, an outline that crosses itself, no area.
Expected<VisiblePiece> piece_of_outline(std::vector<PhotoPoint> outline, const std::string& where);

/// What is wrong with a piece on a picture: not a number, an area that its box cannot hold, outside
/// the picture. Half a pixel beyond the edge is rounding.
Problems problems_of_piece(const VisiblePiece& piece, const PictureSize& picture,
                           const std::string& where);

/// Whether the edge of the picture cuts the piece: it comes within a pixel of it.
bool is_cut_by_edge(const VisiblePiece& piece, const PictureSize& picture);

/// Whether a place lies within an outline that does not cross itself.
bool encloses(const std::vector<PhotoPoint>& outline, PhotoPoint place);

/// Sides of a rectangle in pixels.
struct RectangleSides {
  double longest = 0;
  double shortest = 0;
};

/// Corners of the convex hull in turn, none of them on the line between its neighbours.
std::vector<PhotoPoint> convex_hull(std::vector<PhotoPoint> points);

/// The rectangle of least area round an outline, however it is turned: the longest visible axis of
/// a stone and the one across it. Sides are 0 where the outline has no area.
RectangleSides tightest_rectangle(std::vector<PhotoPoint> outline);

/// Diameter in pixels of the circle with the piece's area.
double equal_area_diameter(double area);

/// How many pieces like this stand for each that was seen whole: a large piece is cut by the edge
/// more often, 1/[(1 − w/W)(1 − h/H)]. Precondition: not cut by the edge.
double edge_weight(const VisiblePiece& piece, const PictureSize& picture);

}  // namespace proofstone
