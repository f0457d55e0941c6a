#pragma once

#include "engine/finding/steps.h"
#include "engine/vision/photo.h"

namespace proofstone {

/// What somebody found who looked at outlines node by node.
struct OutlineCheck {
  int right = 0;
  int corrected = 0;
  int mostly_hidden = 0;
  int not_rock = 0;
  int without_outline = 0;  ///< nodes that no outline goes round any more; left out
  double ratio = 1;         ///< of the mean size as looked at over that as outlined
  double error = 0;         ///< standard deviation of ln ratio
  /// Share of the rock seen that may be outlined wrongly, at 95 % confidence.
  double wrong_at_most = 1;

  int looked_at() const { return right + corrected + not_rock; }
  double low() const;   ///< of the 90 % interval
  double high() const;  ///< of the 90 % interval
};

/// Compares outlines with what somebody says of them. The stone under a node is met by its visible
/// area, so that the mean of ln √(long·short) over the nodes speaks of the rock as outlines do. An
/// outline that is right counts the same on both sides, by the tightest rectangle round it; one
/// that is no rock counts as outlined alone; mostly hidden ones count on neither. The error is that
/// of the difference of both means over the nodes, Student's t, with 3 % for each stone that was
/// looked at (reference study, section 7). Problems: fewer than five nodes that count, a node
/// twice, a photo that there is not or that has no scale, taps off the picture.
Expected<OutlineCheck> check_outlines(const PhotoSet& set, Steps& steps);

}  // namespace proofstone
