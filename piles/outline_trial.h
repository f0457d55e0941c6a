#pragma once

#include <array>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "engine/vision/photo_gradation.h"
#include "piles/taps.h"
#include "piles/trial_pile.h"

namespace proofstone::piles {

/// D15, D50 and D85.
constexpr std::array<int, 3> tried_percents{15, 50, 85};

/// By what sizes are read off a picture.
enum class SizesBy {
  true_outlines,
  network,      ///< outlines that it finds
  taps,         ///< by the grid of the screens
  close_taps,   ///< by a closer grid
  choosy_taps,  ///< by the closer grid, by somebody who calls more stones mostly hidden
};

/// A picture whose stones were outlined by the network, beside its true
/// outlines.
struct TriedPicture {
  Photo true_photo;           ///< with the true pieces drawn on it
  Photo found_photo;          ///< with what the network found
  std::vector<SeenTap> taps;  ///< of `screen_grid`
  std::vector<SeenTap> close_taps;
  double matched_area = 0;   ///< of the true stones, found at an overlap above one half
  double matched_count = 0;  ///< by number
  /// ln of the size of true stones in sight, by visible area, over that of the whole pile.
  std::array<double, 3> seen_over_pile{};
  std::string why_not;  ///< code of why the picture was refused; empty: it was not
  std::string light;
  double dust = 0;

  Photo photo_by(SizesBy by) const;
};

/// A pile of the trial with its pictures tried.
struct TriedPile {
  std::string name;
  std::string form;    ///< "blocks", "slabs" …
  std::string rock;    ///< the words of its gradation
  bool apart = false;  ///< its pictures lie side by side
  RockLies lies = RockLies::in_layer;
  std::map<int, double> sizes;
  std::vector<TriedPicture> pictures;
};

TriedPile try_pile(const TrialPile& pile, const OutlineNetwork& network);

/// What photos say of the pile: sizes by percent, absent where they are refused
/// or not known.
struct SizesSaid {
  std::map<int, PhotoSize> sizes;
};
std::optional<SizesSaid> sizes_said(const TriedPile& pile, const std::vector<Photo>& photos,
                                    const std::vector<PhotoCalibration>& calibrations = {});

/// What photos of a pile whose sizes are known give for the factors of its view; nothing where they
/// are refused or leave one of the three sizes open.
std::optional<PhotoCalibration> calibration_on(const TriedPile& pile,
                                               const std::vector<Photo>& photos);

}  // namespace proofstone::piles
