#pragma once

// Boost's table of directions uses std::size_t without the header that declares it.
#include <cstddef>

#include <boost/random/sobol.hpp>
#include <cstdint>
#include <span>
#include <vector>

#include "engine/reliability/direction_numbers.h"

namespace proofstone {

/// Sobol points in (0, 1)^dimension with the digital shift of one replicate.
class ShiftedSobol {
 public:
  static constexpr std::size_t most_dimensions = DirectionNumbers::max_dimension;

  /// Precondition: 1 to `most_dimensions`.
  ShiftedSobol(std::size_t dimension, int replicate, std::uint64_t first);

  /// Writes the next point.
  void next(std::span<double> point) {
    for (std::size_t i = 0; i < shifts_.size(); ++i) {
      // The middle of one of 2^53 cells: neither 0 nor 1.
      const std::uint64_t bits = engine_() ^ shifts_[i];
      point[i] = (static_cast<double>(bits >> 11) + 0.5) * 0x1p-53;
    }
  }

 private:
  boost::random::sobol_engine<std::uint64_t, 64, DirectionNumbers> engine_;
  std::vector<std::uint64_t> shifts_;
};

}  // namespace proofstone
