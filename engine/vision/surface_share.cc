#include "engine/vision/surface_share.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <set>

#include "engine/evidence/mixed_bits.h"

namespace proofstone {
namespace {

constexpr int replicates = 500;

/// Which block is drawn: a number below `blocks`, by a counter.
std::size_t drawn(std::uint64_t counter, std::size_t blocks) {
  return static_cast<std::size_t>(((mixed_bits(counter) >> 32) * blocks) >> 32);
}

double log_of(Length size) { return std::log(size.meters()); }

}  // namespace

SurfaceShare::SurfaceShare(std::vector<SeenStone> stones) : stones_(std::move(stones)) {
  std::sort(stones_.begin(), stones_.end(), [](const SeenStone& a, const SeenStone& b) {
    if (a.size < b.size || b.size < a.size) return a.size < b.size;
    return a.weight < b.weight;
  });
  logs_.reserve(stones_.size());
  std::size_t last_block = 0;
  for (const auto& stone : stones_) {
    logs_.push_back(log_of(stone.size));
    last_block = std::max(last_block, stone.block);
  }
  weigh_blocks(std::vector<int>(last_block + 1, 1));
}

void SurfaceShare::weigh_blocks(const std::vector<int>& times) {
  percents_.assign(stones_.size(), 0);
  double sum = 0;
  for (std::size_t i = 0; i < stones_.size(); ++i) {
    const double own = stones_[i].weight * times[stones_[i].block];
    percents_[i] = sum + own / 2;
    sum += own;
  }
  for (double& percent : percents_) percent *= 100 / sum;
}

double SurfaceShare::percent_smaller(Length size) const {
  if (size < stones_.front().size) return 0;
  if (size > stones_.back().size) return 100;
  const double at = log_of(size);
  const auto above =
      static_cast<std::size_t>(std::upper_bound(logs_.begin(), logs_.end(), at) - logs_.begin());
  if (above == 0) return percents_.front();
  if (above == logs_.size()) return percents_.back();
  const double part = (at - logs_[above - 1]) / (logs_[above] - logs_[above - 1]);
  return percents_[above - 1] + part * (percents_[above] - percents_[above - 1]);
}

Length SurfaceShare::size_at(double percent) const {
  const auto above = static_cast<std::size_t>(
      std::lower_bound(percents_.begin(), percents_.end(), percent) - percents_.begin());
  if (above == 0) return stones_.front().size;
  if (above == percents_.size()) return stones_.back().size;
  const double below = percents_[above - 1];
  const double part = (percent - below) / (percents_[above] - below);
  return Length::meters(std::exp(logs_[above - 1] + part * (logs_[above] - logs_[above - 1])));
}

std::size_t filled_blocks(const std::vector<SeenStone>& stones) {
  std::set<std::size_t> filled;
  for (const auto& stone : stones) filled.insert(stone.block);
  return filled.size();
}

BlockBootstrap block_bootstrap(const SurfaceShare& share, const std::vector<double>& percents) {
  std::set<std::size_t> filled;
  for (const auto& stone : share.stones()) filled.insert(stone.block);
  const std::vector<std::size_t> blocks(filled.begin(), filled.end());
  const std::size_t count = blocks.size();

  BlockBootstrap result;
  result.enlarged = static_cast<double>(count) / static_cast<double>(count - 1);
  result.log_sizes.reserve(replicates);
  SurfaceShare again = share;
  std::uint64_t counter = 0;
  for (int replicate = 0; replicate < replicates; ++replicate) {
    std::vector<int> times(blocks.back() + 1, 0);
    for (std::size_t i = 0; i < count; ++i) ++times[blocks[drawn(++counter, count)]];
    again.weigh_blocks(times);
    std::vector<double> sizes;
    sizes.reserve(percents.size());
    for (const double percent : percents) sizes.push_back(log_of(again.size_at(percent)));
    result.log_sizes.push_back(std::move(sizes));
  }
  return result;
}

std::vector<double> BlockBootstrap::errors() const {
  std::vector<double> errors;
  const auto count = static_cast<double>(log_sizes.size());
  for (std::size_t i = 0; i < log_sizes.front().size(); ++i) {
    double mean = 0;
    for (const auto& sizes : log_sizes) mean += sizes[i] / count;
    double variance = 0;
    for (const auto& sizes : log_sizes) variance += (sizes[i] - mean) * (sizes[i] - mean) / count;
    errors.push_back(std::sqrt(enlarged * variance));
  }
  return errors;
}

}  // namespace proofstone
