#include "piles/surface_look.h"

#include <algorithm>
#include <cmath>

#include "piles/ground_look.h"
#include "piles/noise.h"

namespace proofstone::piles {
namespace {

/// Turns a normal by the slope of a height field; only the part along the surface matters.
Vec3 tilted(const Vec3& normal, const Vec3& gradient) {
  return (normal - (gradient - normal * gradient.dot(normal))).normalized();
}

/// How much of detail of this length is left where a pixel is `footprint` wide.
float visible(float length, float footprint) { return smooth_step(1.0F, 3.0F, length / footprint); }

/// A thin line where the noise passes zero.
float line(float value, float half_width) {
  return 1 - smooth_step(half_width * 0.4F, half_width, std::abs(value));
}

/// A point of a stone: where on it, and where in the world.
struct StonePoint {
  Vec3 own;      ///< in metres, in the axes of the body
  Vec3 at;       ///< in the place
  Vec3 normal;   ///< in the place, with relief
  float upward;  ///< of the unroughened surface, 1 to the sky
  float size;    ///< b axis of the stone
  std::uint32_t seed;
  float footprint;
};

Vec3 mineral(const RockLook& rock, const StonePoint& point, Vec3 colour) {
  const float mottle = layered_noise(point.own * (3.5F / point.size), point.seed, 2).value;
  colour *= 1 + 0.13F * mottle;
  if (rock.grain > 0) {
    const float coarse = noise(point.own / 0.011F, point.seed + 7).value;
    const float fine = noise(point.own / 0.004F, point.seed + 8).value;
    const float speckle =
        coarse * visible(0.011F, point.footprint) + fine * visible(0.004F, point.footprint);
    colour *= 1 + 0.22F * rock.grain * speckle;
  }
  if (rock.bedding > 0) {
    const float warp = noise(point.own * (1.2F / point.size), point.seed + 9).value;
    const float layer =
        noise(Vec3(0.5F, 0.5F, point.own.z() * (9 / point.size) + warp * 0.7F), point.seed + 10)
            .value;
    colour *= 1 + 0.14F * rock.bedding * layer;
  }
  if (rock.veins > 0) {
    const Vec3 warp = noise(point.own * (2.5F / point.size), point.seed + 11).gradient * 0.15F;
    const float vein =
        line(noise(point.own * (1.3F / point.size) + warp, point.seed + 12).value, 0.035F);
    const bool has_veins = (point.seed & 3U) != 0;
    if (has_veins) {
      colour = mixed_colour(colour, {0.62F, 0.6F, 0.57F}, 0.55F * rock.veins * vein);
    }
  }
  return colour;
}

Vec3 weathered(const RockLook& rock, const StonePoint& point, Vec3 colour) {
  if (rock.stains > 0) {
    const float where = layered_noise(point.own * (1.8F / point.size), point.seed + 20, 3).value;
    const float stained = smooth_step(0.05F, 0.7F, where) * rock.stains;
    colour = mixed_colour(colour, filtered(colour, {1.15F, 0.78F, 0.5F}), stained);
  }
  if (rock.dust > 0) {
    const float patch = layered_noise(point.at / 0.09F, 31, 3).value;
    const float settled = smooth_step(-0.4F, 0.9F, point.upward + 0.35F * patch);
    colour = mixed_colour(colour, rock.dust_colour, 0.8F * rock.dust * settled);
  }
  if (rock.moss > 0) {
    const float patch = layered_noise(point.at / 0.13F, 41, 4).value;
    const float grown =
        smooth_step(0.35F, 0.75F, patch + 0.45F * point.upward + 0.6F * rock.moss - 0.35F);
    const Vec3 green = mixed_colour({0.10F, 0.13F, 0.03F}, {0.19F, 0.2F, 0.06F},
                                    0.5F + 0.5F * noise(point.at / 0.02F, 42).value);
    colour = mixed_colour(colour, green, 0.9F * grown);
  }
  return colour;
}

/// Share of the point that snow covers.
float snowed(const RockLook& rock, const StonePoint& point) {
  if (rock.snow <= 0) return 0;
  const float patch = layered_noise(point.at / 0.15F, 51, 4).value;
  return smooth_step(0.62F, 0.8F, point.upward + 0.22F * patch + 0.45F * (rock.snow - 0.5F));
}

}  // namespace

SurfaceLooks::SurfaceLooks(const Pile& pile, const Scene& scene, const PictureLook& look)
    : pile_(pile), scene_(scene), look_(look), up_(pile.up()) {}

Vec3 SurfaceLooks::stone_colour(std::size_t index) const {
  QuickDraws draws(mixed_seed(look_.seed, 500 + static_cast<std::uint32_t>(index)));
  const auto off = [&] { return look_.rock.variety * (2 * draws.uniform() - 1); };
  const float brightness = 1 + 1.4F * off();
  const float warmth = 0.35F * off();
  // A few stones of any pile come from another bed.
  const float stranger = draws.uniform() < 0.06F ? 0.72F + 0.5F * draws.uniform() : 1.0F;
  return filtered(look_.rock.colour, {1 + warmth, 1, 1 - warmth}) * (brightness * stranger);
}

SurfaceLook SurfaceLooks::stone(const Hit& hit, float footprint) const {
  const Stone& stone = pile_.stones[hit.body];
  const btTransform& pose = pile_.poses[hit.body];
  const RockBody& body = stone.body;
  StonePoint point;
  point.own = pose.invXform(hit.at);
  point.at = hit.at;
  point.size = stone.measure.b;
  point.seed = body.seed();
  point.footprint = footprint;
  const Vec3 plain = body.normal(point.own);
  point.upward = (pose.getBasis() * plain).dot(up_);

  // The roughness that the mesh has, and finer relief that it has not.
  const bool worn = body.shape() == RockShape::rounded;
  Vec3 slope = layered_noise(point.own * (2.2F / point.size), body.seed(), 3).gradient *
               (2.2F * body.roughness());
  const float relief = worn ? 0.1F : 0.3F;
  for (const float length : {0.11F * point.size, 0.035F, 0.012F, 0.005F}) {
    const float left = relief * visible(length, footprint);
    if (left <= 0 || length > 0.3F * point.size) continue;
    const auto octave = static_cast<std::uint32_t>(length * 10000);
    slope += noise(point.own / length, body.seed() + octave).gradient * (0.5F * left);
  }
  if (look_.rock.bedding > 0 && !worn) {
    const float ledge =
        noise(Vec3(0.5F, 0.5F, point.own.z() * (11 / point.size)), body.seed() + 3).gradient.z();
    slope += Vec3(0, 0, 0.35F * look_.rock.bedding * ledge);
  }
  point.normal = pose.getBasis() * tilted(plain, slope * 0.8F);

  SurfaceLook surface;
  surface.normal = point.normal;
  Vec3 colour = mineral(look_.rock, point, stone_colour(hit.body));
  colour = weathered(look_.rock, point, colour);
  surface.gloss = 0.0F;
  if (look_.rock.wet > 0) {
    const float patch = layered_noise(hit.at / 0.35F, 61, 3).value;
    const float wet = smooth_step(-0.35F, 0.1F, patch + 1.6F * look_.rock.wet - 0.9F);
    colour =
        mixed_colour(colour, filtered(colour, colour * 0.7F + Vec3(0.3F, 0.3F, 0.3F)) * 0.8F, wet);
    surface.gloss = 0.035F * wet;
    surface.normal = (surface.normal + (pose.getBasis() * plain) * wet).normalized();
  }
  const float snow = snowed(look_.rock, point);
  colour = mixed_colour(colour, {0.85F, 0.87F, 0.9F}, snow);
  surface.normal = (surface.normal * (1 - snow) + up_ * (0.7F * snow) +
                    (pose.getBasis() * plain) * (0.3F * snow))
                       .normalized();
  colour.setMax({0.01F, 0.01F, 0.01F});
  colour.setMin({0.9F, 0.9F, 0.9F});
  surface.colour = colour;
  return surface;
}

SurfaceLook SurfaceLooks::thing(const Hit& hit, float footprint) const {
  const Thing& thing = scene_.thing(hit);
  const ThingPoint ground{hit.at, hit.normal, thing.pose.invXform(hit.at), footprint};
  SurfaceLook surface;
  surface.colour = thing_colour(thing, ground, look_.seed);
  surface.normal = tilted(hit.normal, thing_relief(thing, ground, look_.seed));
  surface.gloss = thing_gloss(thing.material);
  if (thing.material == ThingMaterial::fines || thing.material == ThingMaterial::soil) {
    surface.colour *= 1 - 0.5F * look_.rock.wet;
  }
  if (look_.rock.snow > 0 && thing.material <= ThingMaterial::fines) {
    const float patch = layered_noise(hit.at / 0.15F, 51, 4).value;
    const float snow = smooth_step(0.3F, 0.5F, 0.5F * patch + look_.rock.snow);
    surface.colour = mixed_colour(surface.colour, {0.85F, 0.87F, 0.9F}, snow);
  }
  return surface;
}

SurfaceLook SurfaceLooks::fine(const Hit& hit, float footprint) const {
  SurfaceLook surface = scene_.is_stone(hit) ? stone(hit, footprint) : thing(hit, footprint);
  return surface;
}

Vec3 SurfaceLooks::coarse_colour(const Hit& hit) const {
  if (!scene_.is_stone(hit)) return scene_.thing(hit).colour;
  const Vec3 colour = stone_colour(hit.body);
  return mixed_colour(colour, look_.rock.dust_colour, 0.4F * look_.rock.dust);
}

}  // namespace proofstone::piles
