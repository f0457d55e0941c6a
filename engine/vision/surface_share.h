#pragma once

#include <cstddef>
#include <vector>

#include "engine/quantity/quantity.h"

namespace proofstone {

/// One stone seen on a photo: its size as photographed, what it counts in the surface, and the
/// block of the picture that it lies in.
struct SeenStone {
  Length size;
  double weight = 1;
  std::size_t block = 0;
};

/// The shares of the surface by size, of stones from small to large. Each stone counts as smaller
/// than its own size by half; between sizes straight in log(size).
class SurfaceShare {
 public:
  /// Sizes and weights positive; at least one stone. Sorts the stones.
  explicit SurfaceShare(std::vector<SeenStone> stones);

  const std::vector<SeenStone>& stones() const { return stones_; }
  /// The same with `times[block]` as much weight to the stones of each block. At least one stone
  /// must keep a weight.
  void weigh_blocks(const std::vector<int>& times);

  double percent_smaller(Length size) const;
  Length size_at(double percent) const;

 private:
  std::vector<SeenStone> stones_;
  std::vector<double> logs_;
  std::vector<double> percents_;  ///< at the size of each stone
};

/// What chance does to sizes: 500 pictures put together anew from their blocks, drawn with return
/// by a generator that is the same on every machine.
struct BlockBootstrap {
  /// The logarithm of the size in metres at each percent asked, for each picture put together anew.
  std::vector<std::vector<double>> log_sizes;
  /// B/(B − 1), B the number of blocks: variances are enlarged by it, because the blocks that are
  /// drawn vary about their own mean.
  double enlarged = 1;
  /// Standard deviation of ln D at each percent asked.
  std::vector<double> errors() const;
};

/// Blocks are all blocks that hold a stone, at least two.
BlockBootstrap block_bootstrap(const SurfaceShare& share, const std::vector<double>& percents);

/// Blocks that hold a stone.
std::size_t filled_blocks(const std::vector<SeenStone>& stones);

}  // namespace proofstone
