#include "engine/vision/grey_picture.h"

#include <algorithm>
#include <cmath>

namespace proofstone {

double GreyPicture::between(double x, double y) const {
  const double left = std::floor(x - 0.5);
  const double top = std::floor(y - 0.5);
  const double right_share = x - 0.5 - left;
  const double lower_share = y - 0.5 - top;
  const auto column = [this](double at) {
    return static_cast<int>(std::clamp(at, 0.0, static_cast<double>(width - 1)));
  };
  const auto row = [this](double at) {
    return static_cast<int>(std::clamp(at, 0.0, static_cast<double>(height - 1)));
  };
  const double upper =
      at(column(left), row(top)) * (1 - right_share) + at(column(left + 1), row(top)) * right_share;
  const double lower = at(column(left), row(top + 1)) * (1 - right_share) +
                       at(column(left + 1), row(top + 1)) * right_share;
  return upper * (1 - lower_share) + lower * lower_share;
}

GreyPicture grey_of(const PhotoPixels& photo) {
  GreyPicture picture{photo.width, photo.height, {}};
  const std::size_t pixels = photo.rgb.size() / 3;
  picture.grey.resize(pixels);
  for (std::size_t i = 0; i < pixels; ++i) {
    const int sum =
        299 * photo.rgb[3 * i] + 587 * photo.rgb[3 * i + 1] + 114 * photo.rgb[3 * i + 2];
    picture.grey[i] = static_cast<std::uint8_t>((sum + 500) / 1000);
  }
  return picture;
}

GreyPicture halved(const GreyPicture& picture) {
  GreyPicture half{picture.width / 2, picture.height / 2, {}};
  half.grey.reserve(static_cast<std::size_t>(half.width) * static_cast<std::size_t>(half.height));
  for (int y = 0; y < half.height; ++y) {
    for (int x = 0; x < half.width; ++x) {
      const int sum = picture.at(2 * x, 2 * y) + picture.at(2 * x + 1, 2 * y) +
                      picture.at(2 * x, 2 * y + 1) + picture.at(2 * x + 1, 2 * y + 1);
      half.grey.push_back(static_cast<std::uint8_t>((sum + 2) / 4));
    }
  }
  return half;
}

std::vector<std::uint8_t> darker_than_around(const GreyPicture& picture, int reach, int by) {
  const auto width = static_cast<std::size_t>(picture.width);
  const auto height = static_cast<std::size_t>(picture.height);
  // Sums over the rectangle from the corner, one row and column of zeros before them.
  std::vector<std::uint32_t> sums((width + 1) * (height + 1), 0);
  for (std::size_t y = 0; y < height; ++y) {
    std::uint32_t row = 0;
    for (std::size_t x = 0; x < width; ++x) {
      row += picture.grey[y * width + x];
      sums[(y + 1) * (width + 1) + x + 1] = sums[y * (width + 1) + x + 1] + row;
    }
  }
  std::vector<std::uint8_t> dark(width * height, 0);
  const auto r = static_cast<std::size_t>(reach);
  for (std::size_t y = 0; y < height; ++y) {
    const std::size_t top = y > r ? y - r : 0;
    const std::size_t bottom = std::min(height, y + r + 1);
    for (std::size_t x = 0; x < width; ++x) {
      const std::size_t left = x > r ? x - r : 0;
      const std::size_t right = std::min(width, x + r + 1);
      // Differences of wrapped sums are right as long as the sum of the neighbourhood itself fits.
      const std::uint32_t sum = sums[bottom * (width + 1) + right] -
                                sums[top * (width + 1) + right] -
                                sums[bottom * (width + 1) + left] + sums[top * (width + 1) + left];
      const auto pixels = static_cast<std::uint32_t>((bottom - top) * (right - left));
      const auto brightness = static_cast<std::uint32_t>(picture.grey[y * width + x]);
      dark[y * width + x] = (brightness + static_cast<std::uint32_t>(by)) * pixels <= sum ? 1 : 0;
    }
  }
  return dark;
}

}  // namespace proofstone
