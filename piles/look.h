#pragma once

#include <string>

#include "piles/vec3.h"
#include "simulation/draws.h"

namespace proofstone::piles {

/// What stones of a picture look like; shares from 0 (none) to 1 (as much as there may be).
struct RockLook {
  std::string rock;  ///< "granite", "limestone" …
  Vec3 colour{0.4F, 0.4F, 0.4F};
  float variety = 0.1F;  ///< of colour from stone to stone
  float grain = 0.5F;
  float bedding = 0;
  float veins = 0;
  float stains = 0;
  float dust = 0;
  Vec3 dust_colour{0.5F, 0.45F, 0.38F};
  float moss = 0;
  float wet = 0;
  float snow = 0;
};

/// Where the light comes from.
struct PictureLight {
  bool sunny = true;
  float sun_elevation = 0.8F;  ///< above the horizon, radians
  float sun_azimuth = 0;       ///< from x towards y, radians
  float haze = 0.3F;           ///< share of the sun's light that comes from the whole sky
};

/// How the camera takes the light down.
struct Development {
  float exposure = 0;  ///< stops off the automatic
  Vec3 white{1, 1, 1};
  float contrast = 1;
  float saturation = 1;
  float blur = 0.5F;    ///< standard deviation, pixels
  float noise = 0.01F;  ///< of a middle grey
  float vignette = 0.15F;
  int jpeg_quality = 88;
};

/// All that makes two pictures of one pile different, but for the camera's place.
struct PictureLook {
  RockLook rock;
  PictureLight light;
  Development development;
  float fines = 0.5F;  ///< how high what lies between the stones reaches
  Vec3 fines_colour{0.3F, 0.26F, 0.2F};
  bool turf = false;  ///< around the pile grass grows
  bool balls = true;
  bool board = true;
  bool rule = false;
  bool boots = false;
  bool grass = false;
  bool fabric = false;
  unsigned seed = 1;
};

/// What is asked of the weather: a word, or "any".
inline constexpr const char* weather_words = "any, sun, overcast, dusty, wet, snow, mossy";

/// A look drawn from the seed, as the weather word has it. Precondition: one of `weather_words`.
PictureLook draw_look(const std::string& weather, unsigned seed);

/// For pictures that explain: clean grey rock in hazy sun, a rule and nothing else in view.
PictureLook plain_look(unsigned seed);

}  // namespace proofstone::piles
