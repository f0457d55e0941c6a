#include "piles/develop.h"

#include <algorithm>
#include <cmath>

#include "piles/noise.h"

namespace proofstone::piles {
namespace {

float brightness(const Vec3& colour) { return colour.dot({0.2126F, 0.7152F, 0.0722F}); }

/// Shoulders highlights and gives contrast around a middle grey; from light to what a screen takes.
float toned(float light, float contrast) {
  const float screen = std::pow(std::max(0.0F, light), 1 / 2.2F);
  const float middle = 0.46F;
  const float steep = middle + (screen - middle) * contrast;
  return steep < 0.8F ? steep : 0.8F + 0.2F * (1 - std::exp(-(steep - 0.8F) / 0.2F));
}

/// Along rows, then along columns, with a bell of this standard deviation.
void blur(LinearPicture& picture, float deviation) {
  if (deviation < 0.2F) return;
  const int reach = static_cast<int>(std::ceil(2.5F * deviation));
  std::vector<float> weights;
  float sum = 0;
  for (int i = -reach; i <= reach; ++i) {
    const float far = static_cast<float>(i) / deviation;
    weights.push_back(std::exp(-0.5F * far * far));
    sum += weights.back();
  }
  for (const bool along_rows : {true, false}) {
    const std::vector<Vec3> before = picture.pixels;
    for (int row = 0; row < picture.height; ++row) {
      for (int column = 0; column < picture.width; ++column) {
        Vec3 total(0, 0, 0);
        for (int i = -reach; i <= reach; ++i) {
          const int x = std::clamp(column + (along_rows ? i : 0), 0, picture.width - 1);
          const int y = std::clamp(row + (along_rows ? 0 : i), 0, picture.height - 1);
          total += before[static_cast<std::size_t>(y * picture.width + x)] *
                   (weights[static_cast<std::size_t>(i + reach)] / sum);
        }
        picture.pixels[static_cast<std::size_t>(row * picture.width + column)] = total;
      }
    }
  }
}

float bell(QuickDraws& draws) {
  const float radius = std::sqrt(-2 * std::log(1 - draws.uniform()));
  return radius * std::cos(SIMD_2_PI * draws.uniform());
}

}  // namespace

float automatic_exposure(const LinearPicture& picture) {
  double sum = 0;
  for (const Vec3& pixel : picture.pixels) sum += std::log(brightness(pixel) + 0.003F);
  return 0.17F / static_cast<float>(std::exp(sum / static_cast<double>(picture.pixels.size())));
}

DevelopedPicture develop(const LinearPicture& picture, const Development& how, std::uint32_t seed) {
  LinearPicture light = picture;
  blur(light, how.blur);
  const float exposure = automatic_exposure(light) * std::exp2(how.exposure);
  DevelopedPicture developed{light.width, light.height, {}};
  developed.bytes.reserve(light.pixels.size() * 3);
  QuickDraws draws(mixed_seed(seed, 90));
  const float corner =
      0.25F * static_cast<float>(light.width * light.width + light.height * light.height);
  for (std::size_t i = 0; i < light.pixels.size(); ++i) {
    const auto column = static_cast<float>(i % static_cast<std::size_t>(light.width));
    const auto row = static_cast<float>(i / static_cast<std::size_t>(light.width));
    const float x = column - 0.5F * static_cast<float>(light.width);
    const float y = row - 0.5F * static_cast<float>(light.height);
    const float falloff = 1 - how.vignette * (x * x + y * y) / corner;
    Vec3 colour = filtered(light.pixels[i], how.white) * (exposure * falloff);
    const float grey = brightness(colour);
    colour = mixed_colour({grey, grey, grey}, colour, how.saturation);
    for (int channel = 0; channel < 3; ++channel) {
      const float clean = std::max(0.0F, colour[channel]);
      const float noisy = clean + how.noise * std::sqrt((clean + 0.01F) * 0.18F) * bell(draws);
      const float level = std::clamp(toned(noisy, how.contrast), 0.0F, 1.0F);
      developed.bytes.push_back(static_cast<std::uint8_t>(std::lround(255 * level)));
    }
  }
  return developed;
}

}  // namespace proofstone::piles
