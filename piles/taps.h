#pragma once

#include <vector>

#include "piles/trial_pile.h"

namespace proofstone::piles {

/// What somebody finds under a node of a grid who sees the outlines exactly and taps the ends of
/// the two visible axes with an error of 3 % each.
struct SeenTap {
  PhotoPoint node;
  double along = 0;   ///< longest visible axis in pixels
  double across = 0;  ///< the one across it
  double shows = 0;   ///< visible area over that of the stone if nothing hid it
};

/// Rows and columns of nodes over a picture that is wider than tall.
struct TapGrid {
  int columns = 0;
  int rows = 0;
};
/// That of the screens, for each of several photos, and one that asks as much of a single photo.
constexpr TapGrid screen_grid{7, 5};
constexpr TapGrid close_grid{12, 9};

/// Of the nodes on stones, in turn; those on gaps, ground and marks are left out.
std::vector<SeenTap> seen_taps(const TrialPicture& picture, const TapGrid& grid, unsigned seed);

/// As the engine takes them: stones of which less than `least_shown` shows are said to be mostly
/// hidden. Axes are laid level and upright through the node, moved where the picture ends.
std::vector<TappedStone> tapped_stones(const std::vector<SeenTap>& taps, double least_shown,
                                       const PictureSize& picture);

}  // namespace proofstone::piles
