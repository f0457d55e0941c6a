#include "engine/reliability/shifted_sobol.h"

namespace proofstone {
namespace {

/// SplitMix64 (Steele, Lea, Flood 2014): well mixed bits from a counter.
std::uint64_t mixed(std::uint64_t counter) {
  std::uint64_t z = counter * 0x9E3779B97F4A7C15ULL;
  z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
  z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
  return z ^ (z >> 31);
}

/// Keeps the shifts of replicates apart.
constexpr std::uint64_t row_length = 4096;

}  // namespace

ShiftedSobol::ShiftedSobol(std::size_t dimension, int replicate, std::uint64_t first)
    : engine_(dimension) {
  engine_.seed(first);
  const auto row = static_cast<std::uint64_t>(replicate) + 1;
  for (std::size_t i = 0; i < dimension; ++i) shifts_.push_back(mixed(row * row_length + i));
}

}  // namespace proofstone
