#include "engine/reliability/shifted_sobol.h"

#include "engine/evidence/mixed_bits.h"

namespace proofstone {
namespace {

/// Keeps the shifts of replicates apart.
constexpr std::uint64_t row_length = 4096;

}  // namespace

ShiftedSobol::ShiftedSobol(std::size_t dimension, int replicate, std::uint64_t first)
    : engine_(dimension) {
  engine_.seed(first);
  const auto row = static_cast<std::uint64_t>(replicate) + 1;
  for (std::size_t i = 0; i < dimension; ++i) shifts_.push_back(mixed_bits(row * row_length + i));
}

}  // namespace proofstone
