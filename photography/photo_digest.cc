#include "photography/photo_digest.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <cstdint>

namespace proofstone {
namespace {

using Word = std::uint32_t;

/// The first 32 bits of the fraction of a root of a small prime; its double is exact enough by far.
Word fraction_bits(long double root) {
  return static_cast<Word>((root - std::floor(root)) * 4294967296.0L);
}

bool is_prime(int number) {
  for (int divisor = 2; divisor * divisor <= number; ++divisor) {
    if (number % divisor == 0) return false;
  }
  return true;
}

struct Constants {
  std::array<Word, 8> start{};   ///< of the square roots of the first 8 primes
  std::array<Word, 64> round{};  ///< of the cube roots of the first 64 primes

  Constants() {
    std::size_t count = 0;
    for (int number = 2; count < round.size(); ++number) {
      if (!is_prime(number)) continue;
      if (count < start.size())
        start[count] = fraction_bits(std::sqrt(static_cast<long double>(number)));
      round[count++] = fraction_bits(std::cbrt(static_cast<long double>(number)));
    }
  }
};

Word turned(Word word, int bits) { return word >> bits | word << (32 - bits); }

void take_block(const char* bytes, const Constants& constants, std::array<Word, 8>& hash) {
  std::array<Word, 64> words{};
  for (std::size_t i = 0; i < 64; ++i) {
    words[i / 4] = words[i / 4] << 8 | static_cast<unsigned char>(bytes[i]);
  }
  for (std::size_t i = 16; i < 64; ++i) {
    const Word early = words[i - 15];
    const Word late = words[i - 2];
    words[i] = words[i - 16] + (turned(early, 7) ^ turned(early, 18) ^ early >> 3) + words[i - 7] +
               (turned(late, 17) ^ turned(late, 19) ^ late >> 10);
  }
  auto [a, b, c, d, e, f, g, h] = hash;
  for (std::size_t i = 0; i < 64; ++i) {
    const Word first = h + (turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)) + ((e & f) ^ (~e & g)) +
                       constants.round[i] + words[i];
    const Word second =
        (turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)) + ((a & b) ^ (a & c) ^ (b & c));
    h = g;
    g = f;
    f = e;
    e = d + first;
    d = c;
    c = b;
    b = a;
    a = first + second;
  }
  const std::array<Word, 8> added{a, b, c, d, e, f, g, h};
  for (std::size_t i = 0; i < 8; ++i) hash[i] += added[i];
}

}  // namespace

std::string photo_digest(std::string_view bytes) {
  static const Constants constants;
  std::array<Word, 8> hash = constants.start;
  std::size_t at = 0;
  for (; at + 64 <= bytes.size(); at += 64) take_block(bytes.data() + at, constants, hash);
  std::string last(bytes.substr(at));
  last += '\x80';
  while (last.size() % 64 != 56) last += '\0';
  const std::uint64_t bits = std::uint64_t{bytes.size()} * 8;
  for (int shift = 56; shift >= 0; shift -= 8) last += static_cast<char>(bits >> shift & 255U);
  for (at = 0; at < last.size(); at += 64) take_block(last.data() + at, constants, hash);
  std::string text;
  for (const Word word : hash) text += fmt::format("{:08x}", word);
  return text;
}

}  // namespace proofstone
