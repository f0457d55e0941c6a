#include "piles/render.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <thread>

#include "piles/noise.h"

namespace proofstone::piles {
namespace {

/// Follows the rays of one sample of one pixel.
class Tracer {
 public:
  Tracer(const Scene& scene, const SurfaceLooks& looks, const Sky& sky, float pixel_angle)
      : scene_(scene), looks_(looks), sky_(sky), pixel_angle_(pixel_angle) {}

  Vec3 light_along(const Vec3& from, const Vec3& direction, SampleDraws& draws) const {
    const auto hit = scene_.first_hit(from, direction);
    if (!hit) return sky_.seen(direction) * 2;
    const SurfaceLook surface = looks_.fine(*hit, hit->distance * pixel_angle_);
    const Vec3 start = hit->at + hit->normal * (hit->distance * 2e-5F + 1e-4F);
    Vec3 light = filtered(surface.colour, sun_on(start, surface.normal, hit->normal, draws));
    light += filtered(surface.colour, sky_on(start, surface.normal, hit->normal, draws));
    if (surface.gloss > 0) light += mirrored(start, direction, *hit, surface);
    return light;
  }

 private:
  /// Sunlight that reaches a point, as a white surface gives it back.
  Vec3 sun_on(const Vec3& at, const Vec3& normal, const Vec3& flat, SampleDraws& draws) const {
    const float facing = normal.dot(sky_.to_sun());
    if (facing <= 0 || flat.dot(sky_.to_sun()) <= 0 || sky_.sunlight().isZero()) return {0, 0, 0};
    const float first = draws.uniform();
    const float second = draws.uniform();
    if (scene_.blocked(at, sky_.to_sun_disc(first, second))) return {0, 0, 0};
    return sky_.sunlight() * (facing / SIMD_PI);
  }

  /// Light of the sky and of one other surface.
  Vec3 sky_on(const Vec3& at, const Vec3& normal, const Vec3& flat, SampleDraws& draws) const {
    Vec3 across;
    Vec3 beside;
    btPlaneSpace1(normal, across, beside);
    const float square = draws.uniform();
    const float turn = SIMD_2_PI * draws.uniform();
    const float radius = std::sqrt(square);
    const Vec3 direction = across * (radius * std::cos(turn)) + beside * (radius * std::sin(turn)) +
                           normal * std::sqrt(1 - square);
    if (direction.dot(flat) <= 0) return {0, 0, 0};
    const auto hit = scene_.first_hit(at, direction);
    if (!hit) return sky_.seen(direction);
    const Vec3 start = hit->at + hit->normal * 2e-4F;
    // What the second surface gets of the sky is taken as a share, smaller down in the voids.
    const float open = 0.12F + 0.28F * std::max(0.0F, hit->normal.dot(sky_.up()));
    const Vec3 second =
        sun_on(start, hit->normal, hit->normal, draws) + sky_.seen(hit->normal) * open;
    return filtered(looks_.coarse_colour(*hit), second);
  }

  /// What a glossy surface mirrors of sun and sky; the closer to grazing, the more.
  Vec3 mirrored(const Vec3& at, const Vec3& direction, const Hit& hit,
                const SurfaceLook& surface) const {
    const float facing = std::max(0.0F, -surface.normal.dot(direction));
    const float rest = 1 - facing;
    const float share =
        surface.gloss + (0.6F * surface.gloss / 0.04F) * rest * rest * rest * rest * rest;
    const Vec3 way = direction + surface.normal * (2 * facing);
    if (way.dot(hit.normal) <= 0 || scene_.blocked(at, way)) return {0, 0, 0};
    const float near_sun = std::max(0.0F, way.normalized().dot(sky_.to_sun()));
    return (sky_.seen(way.normalized()) + sky_.sunlight() * (6 * std::pow(near_sun, 150.0F))) *
           std::min(1.0F, share);
  }

  const Scene& scene_;
  const SurfaceLooks& looks_;
  const Sky& sky_;
  float pixel_angle_;
};

}  // namespace

LinearPicture render(const Scene& scene, const SurfaceLooks& looks, const Sky& sky,
                     const Camera& camera, const RenderEffort& effort, std::uint32_t seed) {
  LinearPicture picture{camera.width, camera.height, {}};
  picture.pixels.resize(static_cast<std::size_t>(camera.width) *
                        static_cast<std::size_t>(camera.height));
  const Tracer tracer(scene, looks, sky, 1 / camera.focal_pixels);
  std::atomic<int> next_row{0};
  const auto work = [&] {
    for (int row = next_row++; row < camera.height; row = next_row++) {
      for (int column = 0; column < camera.width; ++column) {
        const auto index = static_cast<std::size_t>(row) * static_cast<std::size_t>(camera.width) +
                           static_cast<std::size_t>(column);
        const std::uint32_t pixel_seed = mixed_seed(seed, static_cast<std::uint32_t>(index));
        Vec3 sum(0, 0, 0);
        for (int sample = 0; sample < effort.samples; ++sample) {
          SampleDraws draws(pixel_seed, sample);
          const float x = static_cast<float>(column) + draws.uniform();
          const float y = static_cast<float>(row) + draws.uniform();
          sum += tracer.light_along(camera.position, camera.ray(x, y), draws);
        }
        picture.pixels[index] = sum / static_cast<float>(effort.samples);
      }
    }
  };
  std::vector<std::thread> helpers;
  for (int i = 1; i < effort.threads; ++i) helpers.emplace_back(work);
  work();
  for (std::thread& helper : helpers) helper.join();
  return picture;
}

StoneMask render_mask(const Scene& scene, const Camera& camera) {
  StoneMask mask{camera.width, camera.height, {}};
  for (int row = 0; row < camera.height; ++row) {
    for (int column = 0; column < camera.width; ++column) {
      const auto hit = scene.first_hit(
          camera.position,
          camera.ray(static_cast<float>(column) + 0.5F, static_cast<float>(row) + 0.5F));
      const bool stone = hit && scene.is_stone(*hit);
      mask.stones.push_back(stone ? static_cast<std::uint16_t>(hit->body + 1) : std::uint16_t{0});
    }
  }
  return mask;
}

}  // namespace proofstone::piles
