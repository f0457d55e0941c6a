#pragma once

#include <map>
#include <string>
#include <vector>

#include "engine/vision/photo.h"
#include "engine/vision/stone_regions.h"

namespace proofstone::piles {

/// A picture of a pile as `piles make` left it, with what is true of it.
struct TrialPicture {
  std::string name;  ///< of its file, without its ending
  PhotoPixels pixels;
  StoneRegions stones;  ///< as they are seen, numbered as in the pile
  /// Pixels that each stone in view would cover alone, by its number less one; 0: not in view.
  std::vector<double> alone;
  Photo photo;          ///< with its exact scale by two staffs, and nothing drawn on it
  std::string weather;  ///< "sun" or "overcast"
  double dust = 0;
  bool apart = false;  ///< it lies beside the others of its kind of view
};

/// A pile with its pictures.
struct TrialPile {
  std::string name;
  std::string form;  ///< what most of its stones are: "blocks", "slabs", "river
                     ///< stones" …
  std::string rock;  ///< the words of its gradation
  bool heap = false;
  std::map<int, double> sizes;      ///< of the whole pile in metres, by percent
  std::vector<double> stone_sizes;  ///< in metres, by the stone's number less one
  std::vector<TrialPicture> pictures;
};

/// Reads a folder that `piles make` wrote. Problems name the file that is
/// missing or spoiled.
Expected<TrialPile> read_trial_pile(const std::string& folder);

/// What each stone of regions shows, its number its place less one; stones not
/// seen have no area.
std::vector<VisiblePiece> pieces_of(const StoneRegions& regions);

}  // namespace proofstone::piles
