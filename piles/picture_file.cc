#include <cstdio>
#include <memory>

// The JPEG header takes size_t and FILE for granted.
#include <jpeglib.h>
#include <png.h>

#include <algorithm>
#include <cmath>

#include "piles/develop.h"

namespace proofstone::piles {
namespace {

std::uint16_t sixteen_bits(float share) {
  return static_cast<std::uint16_t>(std::lround(65535 * std::clamp(share, 0.0F, 1.0F)));
}

bool write_png(int width, int height, png_uint_32 format, const void* bytes,
               const std::string& path) {
  png_image image{};
  image.version = PNG_IMAGE_VERSION;
  image.width = static_cast<png_uint_32>(width);
  image.height = static_cast<png_uint_32>(height);
  image.format = format;
  return png_image_write_to_file(&image, path.c_str(), 0, bytes, 0, nullptr) != 0;
}

}  // namespace

bool write_jpeg(const DevelopedPicture& picture, int quality, const std::string& path) {
  const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(path.c_str(), "wb"),
                                                             std::fclose);
  if (!file) return false;
  jpeg_compress_struct codec{};
  jpeg_error_mgr errors{};
  codec.err = jpeg_std_error(&errors);
  jpeg_create_compress(&codec);
  jpeg_stdio_dest(&codec, file.get());
  codec.image_width = static_cast<JDIMENSION>(picture.width);
  codec.image_height = static_cast<JDIMENSION>(picture.height);
  codec.input_components = 3;
  codec.in_color_space = JCS_RGB;
  jpeg_set_defaults(&codec);
  jpeg_set_quality(&codec, quality, TRUE);
  jpeg_start_compress(&codec, TRUE);
  std::vector<std::uint8_t> row(static_cast<std::size_t>(picture.width) * 3);
  while (codec.next_scanline < codec.image_height) {
    const auto start =
        picture.bytes.begin() + static_cast<std::ptrdiff_t>(codec.next_scanline * row.size());
    std::copy_n(start, row.size(), row.begin());
    JSAMPROW scanline = row.data();
    jpeg_write_scanlines(&codec, &scanline, 1);
  }
  jpeg_finish_compress(&codec);
  jpeg_destroy_compress(&codec);
  return std::ferror(file.get()) == 0;
}

bool write_linear_png(const LinearPicture& picture, float exposure, const std::string& path) {
  std::vector<std::uint16_t> values;
  values.reserve(picture.pixels.size() * 3);
  for (const Vec3& pixel : picture.pixels) {
    for (int channel = 0; channel < 3; ++channel) {
      values.push_back(sixteen_bits(pixel[channel] * exposure));
    }
  }
  return write_png(picture.width, picture.height, PNG_FORMAT_LINEAR_RGB, values.data(), path);
}

bool write_mask_png(const StoneMask& mask, const std::string& path) {
  return write_png(mask.width, mask.height, PNG_FORMAT_LINEAR_Y, mask.stones.data(), path);
}

}  // namespace proofstone::piles
