#pragma once

#include <cstddef>
#include <cstdint>

namespace proofstone {

/// What Sobol points of up to 64 dimensions are made from: primitive polynomials and the numbers
/// their recurrences start with, in the form that boost::random::sobol_engine asks for. Joe and Kuo
/// 2008 (SIAM J. Sci. Comput. 30, 2635), of whose tables Boost carries 3667 dimensions: too much to
/// send to a browser.
struct DirectionNumbers {
  using value_type = std::uint16_t;  // NOLINT(readability-identifier-naming): Boost's name
  static constexpr unsigned max_dimension = 64;
  static value_type polynomial(std::size_t number);
  static value_type minit(std::size_t number, std::size_t degree);
};

}  // namespace proofstone
