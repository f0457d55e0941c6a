#pragma once

#include <vector>

#include "engine/vision/photo.h"

namespace proofstone {

/// What balls and marker boards hide of a photo: nothing there is a stone.
class CoveringMarks {
 public:
  explicit CoveringMarks(const Photo& photo);

  bool cover(PhotoPoint place) const;
  /// Share of what an outline goes round that they cover, from 0 to 1.
  double share_of(const std::vector<PhotoPoint>& outline) const;
  double share_of(const PhotoBox& box) const;
  /// Share of the picture that they cover, from 0 to 1.
  double share_of_picture() const;

 private:
  bool near(const PhotoBox& box) const;

  PictureSize picture_;
  std::vector<ScaleBall> balls_;
  std::vector<std::vector<PhotoPoint>> sheets_;
  std::vector<PhotoBox> boxes_;
};

/// An outline of which marks cover more than half is one of a mark, not of a stone.
inline constexpr double most_covered = 0.5;

}  // namespace proofstone
