#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "engine/quantity/quantity.h"
#include "engine/vision/picture_geometry.h"

namespace proofstone {

/// A marker of a board on a picture: its number, and the corners of its dark square as the marker
/// itself has them, from its upper left clockwise.
struct SeenMarker {
  int number = 0;
  std::array<PhotoPoint, 4> corners;
};

/// A ball of known diameter that lies on the rock: its outline on the picture.
struct ScaleBall {
  PhotoPoint middle;
  double radius = 0;  ///< pixels
  Length diameter;
};

/// A staff of known length that lies on the rock: its two marks on the picture.
struct ScaleStaff {
  PhotoPoint from;
  PhotoPoint to;
  Length length;
};

/// A marker board of known size that lies on the rock: those of its markers that are in sight.
struct ScaleBoard {
  Length edge;  ///< of the dark square of one marker, as it was printed
  std::vector<SeenMarker> markers = {};
};

/// How the camera looked at the face of the rock.
enum class PhotoView {
  straight_on,  ///< square to the face, up to 30 degrees off
  oblique,      ///< as somebody sees a pile who stands in front of it
};

/// A stone under a node of a grid over the picture: the ends of its longest visible axis and of the
/// one across, or mostly hidden and left out.
struct TappedStone {
  PhotoPoint node;
  bool mostly_hidden = false;
  PhotoPoint long_from;
  PhotoPoint long_to;
  PhotoPoint short_from;
  PhotoPoint short_to;
};

/// What somebody says who looks at the outline under a node of a check.
enum class CheckAnswer { right, other_axes, mostly_hidden, not_rock };

/// An outline that was looked at: the stone under a node, whose axes count where it is outlined
/// wrongly.
struct CheckedOutline {
  int photo = 1;  ///< number of the photo, from 1
  CheckAnswer answer = CheckAnswer::right;
  TappedStone stone;
};

/// One photo of rock and what was drawn on it.
struct Photo {
  std::string file = {};  ///< SHA-256 of the file, 64 hexadecimal digits; empty: not stated
  PictureSize size;
  PhotoView view = PhotoView::straight_on;
  std::optional<Angle> off_square = {};  ///< of the line of sight from square to the face
  /// As of a camera with a 36 × 24 mm picture; absent: 26 mm, as usual for a telephone.
  std::optional<Length> focal_length = {};
  std::vector<ScaleBall> balls = {};
  std::vector<ScaleStaff> staffs = {};
  std::vector<ScaleBoard> boards = {};
  /// Standard deviation of the scale over the scale, as the observer states it.
  std::optional<Dimensionless> scale_error = {};
  std::vector<std::vector<PhotoPoint>> outlines = {};
  /// Diameter in pixels below which who drew the outlines may have lost stones.
  double smallest_drawn = 8;
  std::vector<VisiblePiece> pieces = {};
  std::vector<TappedStone> tapped = {};
};

/// How the rock lies that was photographed.
enum class RockLies { in_layer, in_heap };

/// How far the sizes of the rock spread, where somebody knows it: the D85 over the D15 about 1.35,
/// 1.9, 2.3 and 3.2.
enum class SizeSpread { very_uniform, class_like, broad, very_broad };

/// The largest stone in sight, by its two ends on a photo.
struct TappedLargest {
  int photo = 1;  ///< number of the photo, from 1
  PhotoPoint from;
  PhotoPoint to;
};

/// What a site found when it measured rock both by photos and by weight or tape: measured over
/// true size, and what error is left.
struct PhotoCalibration {
  std::string from;  ///< how it was found
  PhotoView view = PhotoView::straight_on;
  RockLies lies = RockLies::in_layer;
  bool of_tapped_stones = false;
  Dimensionless d15;
  Dimensionless d50;
  Dimensionless d85;
  Dimensionless error;  ///< standard deviation that is left, over the size
};

/// Photos of one rock, all with outlines or all with tapped stones.
struct PhotoSet {
  std::vector<Photo> photos;
  RockLies lies = RockLies::in_layer;
  std::optional<SizeSpread> spread = {};
  std::optional<Length> taped_largest = {};
  std::optional<TappedLargest> tapped_largest = {};
  std::vector<CheckedOutline> check = {};  ///< of outlines, by somebody who looked at them
};

}  // namespace proofstone
