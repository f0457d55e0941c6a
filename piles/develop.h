#pragma once

#include <cstdint>
#include <vector>

#include "piles/render.h"

namespace proofstone::piles {

/// Eight bits a channel, red, green, blue.
struct DevelopedPicture {
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> bytes;
};

/// What linear light is multiplied by so that the mean of its logarithm becomes a middle grey.
float automatic_exposure(const LinearPicture& picture);

/// As a phone would keep it: exposed, balanced, blurred a little, with the noise of its sensor.
DevelopedPicture develop(const LinearPicture& picture, const Development& how, std::uint32_t seed);

/// Writes a JPEG. False where the file cannot be written.
bool write_jpeg(const DevelopedPicture& picture, int quality, const std::string& path);
/// Writes linear light times `exposure` as a PNG of 16 bits a channel; above 1 it is cut off.
bool write_linear_png(const LinearPicture& picture, float exposure, const std::string& path);
/// Writes a grey PNG of 16 bits whose values are the numbers of the stones.
bool write_mask_png(const StoneMask& mask, const std::string& path);

}  // namespace proofstone::piles
