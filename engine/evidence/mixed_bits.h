#pragma once

#include <cstdint>

namespace proofstone {

/// SplitMix64 (Steele, Lea, Flood 2014): well mixed bits from a counter, the same on every machine.
constexpr std::uint64_t mixed_bits(std::uint64_t counter) {
  std::uint64_t z = counter * 0x9E3779B97F4A7C15ULL;
  z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
  z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
  return z ^ (z >> 31);
}

}  // namespace proofstone
