#include "piles/look.h"

#include <array>
#include <cmath>

#include "piles/noise.h"

namespace proofstone::piles {
namespace {

/// A kind of rock as it is quarried.
struct RockColour {
  const char* name;
  Vec3 colour;
  float variety;
  float grain;
  float bedding;
  float veins;
};

const std::array<RockColour, 8>& rock_colours() {
  static const std::array<RockColour, 8> colours{{
      {"granite", {0.36F, 0.345F, 0.33F}, 0.16F, 1.0F, 0.0F, 0.3F},
      {"pink granite", {0.42F, 0.33F, 0.29F}, 0.18F, 1.0F, 0.0F, 0.3F},
      {"limestone", {0.47F, 0.44F, 0.385F}, 0.12F, 0.25F, 0.7F, 0.25F},
      {"grey limestone", {0.34F, 0.345F, 0.345F}, 0.12F, 0.2F, 0.5F, 0.6F},
      {"basalt", {0.15F, 0.152F, 0.158F}, 0.15F, 0.3F, 0.0F, 0.1F},
      {"sandstone", {0.41F, 0.31F, 0.22F}, 0.2F, 0.5F, 0.9F, 0.0F},
      {"gneiss", {0.26F, 0.255F, 0.25F}, 0.2F, 0.7F, 0.8F, 0.5F},
      {"quartzite", {0.45F, 0.38F, 0.36F}, 0.18F, 0.3F, 0.3F, 0.4F},
  }};
  return colours;
}

/// Draws shares and choices one after the other.
class Choices {
 public:
  explicit Choices(unsigned seed) : draws_(mixed_seed(seed, 77)) {}
  float between(double low, double high) {
    return static_cast<float>(low + (high - low) * draws_.uniform());
  }
  bool chance(double share) { return draws_.uniform() < share; }
  /// A share that is mostly small: 0 in `none` of all draws.
  float share(double none, double most) {
    const double draw = draws_.uniform();
    const double strength = draws_.uniform();
    return draw < none ? 0.0F : static_cast<float>(most * strength);
  }
  std::size_t of(std::size_t count) {
    return static_cast<std::size_t>(draws_.uniform() * static_cast<double>(count));
  }

 private:
  Draws draws_;
};

RockLook draw_rock(Choices& choices) {
  const RockColour& kind = rock_colours()[choices.of(rock_colours().size())];
  RockLook rock;
  rock.rock = kind.name;
  rock.colour = kind.colour * choices.between(0.8, 1.15);
  rock.variety = kind.variety * choices.between(0.6, 1.4);
  rock.grain = kind.grain * choices.between(0.6, 1.2);
  rock.bedding = kind.bedding;
  rock.veins = kind.veins * choices.between(0, 1);
  rock.stains = choices.share(0.4, 0.8);
  rock.dust = choices.share(0.25, 0.7);
  rock.dust_colour = mixed_colour({0.5F, 0.46F, 0.4F}, kind.colour, choices.between(0, 0.6));
  return rock;
}

Development draw_development(Choices& choices) {
  Development development;
  development.exposure = choices.between(-0.35, 0.35);
  const float warmth = choices.between(-0.06, 0.06);
  development.white = {1 + warmth, 1, 1 - warmth};
  development.contrast = choices.between(0.9, 1.2);
  development.saturation = choices.between(0.75, 1.25);
  development.blur = choices.between(0.35, 0.9);
  development.noise = choices.between(0.004, 0.025);
  development.vignette = choices.between(0, 0.3);
  development.jpeg_quality = 70 + static_cast<int>(choices.of(26));
  return development;
}

/// Makes the look what the weather word says.
void apply_weather(PictureLook& look, const std::string& weather, Choices& choices) {
  if (weather == "sun") {
    look.light.sunny = true;
    look.light.haze = choices.between(0.05, 0.3);
  } else if (weather == "overcast") {
    look.light.sunny = false;
  } else if (weather == "dusty") {
    look.rock.dust = choices.between(0.7, 1);
  } else if (weather == "wet") {
    look.rock.wet = choices.between(0.6, 1);
    look.rock.dust = 0;
    look.light.sunny = look.light.sunny && choices.chance(0.3);
  } else if (weather == "snow") {
    look.rock.snow = choices.between(0.2, 0.6);
    look.rock.dust = 0;
  } else if (weather == "mossy") {
    look.rock.moss = choices.between(0.4, 1);
    look.grass = true;
  }
}

}  // namespace

PictureLook draw_look(const std::string& weather, unsigned seed) {
  Choices choices(seed);
  PictureLook look;
  look.seed = seed;
  look.rock = draw_rock(choices);
  look.light.sunny = choices.chance(0.65);
  look.light.sun_elevation = choices.between(0.35, 1.25);
  look.light.sun_azimuth = choices.between(0, 6.28318);
  look.light.haze = choices.between(0.05, 0.6);
  look.development = draw_development(choices);
  look.fines = choices.share(0.2, 1);
  look.fines_colour = mixed_colour({0.3F, 0.24F, 0.17F}, look.rock.colour, choices.between(0, 1));
  look.turf = choices.chance(0.4);
  look.board = choices.chance(0.5);
  look.boots = choices.chance(0.25);
  look.grass = choices.chance(0.3);
  look.fabric = choices.chance(0.25);
  if (weather == "any") {
    look.rock.wet = choices.share(0.8, 1);
    look.rock.moss = choices.share(0.8, 0.8);
    look.rock.snow = choices.share(0.93, 0.5);
  }
  apply_weather(look, weather, choices);
  return look;
}

PictureLook plain_look(unsigned seed) {
  PictureLook look;
  look.seed = seed;
  look.rock.rock = "grey limestone";
  look.rock.colour = {0.36F, 0.36F, 0.35F};
  look.rock.variety = 0.14F;
  look.rock.grain = 0.4F;
  look.rock.bedding = 0.3F;
  look.rock.veins = 0.2F;
  look.rock.stains = 0.25F;
  look.rock.dust = 0.25F;
  look.light = {true, 0.85F, 2.2F, 0.4F};
  look.fines = 0.35F;
  look.development.jpeg_quality = 90;
  look.development.noise = 0.006F;
  look.balls = false;
  look.board = false;
  look.rule = true;
  return look;
}

}  // namespace proofstone::piles
