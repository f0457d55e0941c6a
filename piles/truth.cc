#include "piles/truth.h"

#include <array>
#include <cmath>
#include <map>

#include "piles/silhouette.h"

namespace proofstone::piles {
namespace {

using Json = nlohmann::ordered_json;

Json numbers(const Vec3& vector) {
  Json list = Json::array();
  for (int axis = 0; axis < 3; ++axis) list.push_back(vector[axis]);
  return list;
}

Json curve(const std::vector<const Stone*>& stones) {
  Json sizes = Json::object();
  for (const int percent : {0, 5, 10, 15, 30, 50, 70, 85, 90, 100}) {
    // The curve ends at the smallest and at the largest stone.
    sizes["D" + std::to_string(percent)] = size_at(stones, percent);
  }
  return {{"stones", stones.size()}, {"size_at_percent_smaller_by_mass", sizes}};
}

const char* kind_name(PileKind kind) {
  switch (kind) {
    case PileKind::layer:
      return "layer";
    case PileKind::heap:
      return "heap";
    case PileKind::truck:
      return "truck";
  }
  return "";
}

Json asked_curve(const Gradation& gradation) {
  Json points = Json::array();
  for (const GradationPoint& point : gradation.points()) {
    points.push_back({{"size", point.size.meters()}, {"percent_smaller", point.percent_smaller}});
  }
  return points;
}

Json stone_truth(const Pile& pile, std::size_t index) {
  const Stone& stone = pile.stones[index];
  const btQuaternion turn = pile.poses[index].getRotation();
  Json turned = Json::array();
  for (int i = 0; i < 4; ++i) turned.push_back(turn[i]);
  return {{"stone", index + 1},   {"shape", rock_shape_name(stone.body.shape())},
          {"a", stone.measure.a}, {"b", stone.measure.b},
          {"c", stone.measure.c}, {"volume", stone.measure.volume},
          {"size", stone.size},   {"centroid", numbers(pile.centre(index))},
          {"turned_xyzw", turned}};
}

Json look_truth(const PictureLook& look) {
  const RockLook& rock = look.rock;
  return {{"rock", rock.rock},       {"stains", rock.stains},
          {"veins", rock.veins},     {"dust", rock.dust},
          {"moss", rock.moss},       {"wet", rock.wet},
          {"snow", rock.snow},       {"fines", look.fines},
          {"sun", look.light.sunny}, {"sun_elevation_radians", look.light.sun_elevation},
          {"boots", look.boots},     {"grass", look.grass},
          {"fabric", look.fabric}};
}

Json object_truth(const ScaleObject& object, const Camera& camera) {
  Json points = Json::array();
  Json pixels = Json::array();
  for (const Vec3& point : object.points) {
    points.push_back(numbers(point));
    const auto seen = camera.seen_at(point);
    if (!seen) continue;
    Json pixel = Json::array();
    pixel.push_back(seen->x());
    pixel.push_back(seen->y());
    pixels.push_back(pixel);
  }
  return {{"kind", object.kind}, {"size", object.size}, {"points", points}, {"pixels", pixels}};
}

}  // namespace

nlohmann::ordered_json pile_truth(const Pile& pile, const PileSurface& surface) {
  const PileRequest& request = pile.request;
  Json stones = Json::array();
  for (std::size_t i = 0; i < pile.stones.size(); ++i) stones.push_back(stone_truth(pile, i));
  return {{"proofstone", "pile"},
          {"seed", request.seed},
          {"kind", kind_name(request.place.kind)},
          {"rock", request.gradation.words()},
          {"size_means", size_meaning_name(request.gradation.curve().basis().size)},
          {"slope_radians", request.place.slope},
          {"length_along_x", request.place.length},
          {"length_along_y", request.place.width},
          {"up", numbers(pile.up())},
          {"asked", asked_curve(request.gradation.curve())},
          {"whole_pile", curve(pile.all())},
          {"surface", curve(surface_stones(pile, surface))},
          {"stones", stones}};
}

nlohmann::ordered_json picture_truth(const Pile& pile, const Picture& picture,
                                     float linear_exposure) {
  const View& view = picture.view;
  const Camera& camera = view.camera;
  std::map<std::size_t, int> pixels;
  for (const std::uint16_t stone : picture.mask.stones) {
    if (stone != 0) ++pixels[stone];
  }
  Json visible = Json::array();
  for (const auto& [stone, count] : pixels) {
    const double alone =
        silhouette_area(pile.stones.at(stone - 1), pile.poses.at(stone - 1), camera);
    visible.push_back({{"stone", stone}, {"pixels", count}, {"alone", std::round(alone)}});
  }
  Json objects = Json::array();
  for (const ScaleObject& object : picture.objects) {
    objects.push_back(object_truth(object, camera));
  }
  Json truth{{"proofstone", "pile picture"},
             {"camera",
              {{"position", numbers(camera.position)},
               {"right", numbers(camera.right)},
               {"down", numbers(camera.down)},
               {"forward", numbers(camera.forward)},
               {"focal_pixels", camera.focal_pixels},
               {"width", camera.width},
               {"height", camera.height}}},
             {"mean_plane",
              {{"point", numbers(view.plane.point)},
               {"normal", numbers(view.plane.normal)},
               {"view_angle_radians", view.angle},
               {"distance", view.distance}}},
             {"linear_exposure", linear_exposure},
             {"look", look_truth(picture.look)},
             {"scale_objects", objects},
             {"stones_in_view", visible}};
  if (view.quarter) truth["quarter"] = *view.quarter;
  return truth;
}

}  // namespace proofstone::piles
