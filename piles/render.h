#pragma once

#include <cstdint>
#include <vector>

#include "piles/camera.h"
#include "piles/sky.h"
#include "piles/surface_look.h"

namespace proofstone::piles {

/// A picture in linear light, row by row from the top left.
struct LinearPicture {
  int width = 0;
  int height = 0;
  std::vector<Vec3> pixels;
};

/// Which stone the middle of each pixel shows: its number from 1, or 0 where there is none.
struct StoneMask {
  int width = 0;
  int height = 0;
  std::vector<std::uint16_t> stones;
};

/// How much work goes into a picture.
struct RenderEffort {
  int samples = 12;  ///< a pixel; with none a picture is its mask alone
  int threads = 1;
};

/// Sun with soft shadows, sky, and light that has met one more surface. The same picture whatever
/// the number of threads.
LinearPicture render(const Scene& scene, const SurfaceLooks& looks, const Sky& sky,
                     const Camera& camera, const RenderEffort& effort, std::uint32_t seed);

StoneMask render_mask(const Scene& scene, const Camera& camera);

}  // namespace proofstone::piles
