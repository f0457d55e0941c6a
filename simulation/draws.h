#pragma once

#include <random>

namespace proofstone {

/// Random numbers that are the same on every platform, from one seed.
class Draws {
 public:
  explicit Draws(unsigned seed) : engine_(seed) {}

  /// Above 0 and below 1, of 53 bits.
  double uniform() { return (static_cast<double>(engine_() >> 11) + 0.5) / 9007199254740992.0; }
  double normal();

 private:
  std::mt19937_64 engine_;
};

}  // namespace proofstone
