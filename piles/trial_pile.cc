#include "piles/trial_pile.h"

#include <png.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "photography/photograph_file.h"
#include "piles/camera.h"

namespace proofstone::piles {
namespace {

using Json = nlohmann::json;

Problem spoiled(const std::filesystem::path& path, const std::string& what) {
  return {"spoiled-pile", what, path.string(), "", "a folder that `piles make` wrote"};
}

Expected<std::string> bytes_of(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream bytes;
  bytes << file.rdbuf();
  if (!file) return spoiled(path, "The file cannot be read.");
  return bytes.str();
}

Expected<StoneRegions> read_mask(const std::filesystem::path& path) {
  png_image image{};
  image.version = PNG_IMAGE_VERSION;
  if (png_image_begin_read_from_file(&image, path.c_str()) == 0) {
    return spoiled(path, "The numbers of the stones cannot be read.");
  }
  image.format = PNG_FORMAT_LINEAR_Y;
  std::vector<std::uint16_t> numbers(std::size_t{image.width} * image.height);
  if (png_image_finish_read(&image, nullptr, numbers.data(), 0, nullptr) == 0) {
    return spoiled(path, "The numbers of the stones are cut off.");
  }
  StoneRegions regions{static_cast<int>(image.width), static_cast<int>(image.height), 0, {}};
  regions.stone.assign(numbers.begin(), numbers.end());
  regions.stones = *std::max_element(regions.stone.begin(), regions.stone.end());
  return regions;
}

Vec3 vector_of(const Json& numbers) {
  return {numbers.at(0).get<float>(), numbers.at(1).get<float>(), numbers.at(2).get<float>()};
}

/// A staff across the picture at a height of it, whose length is that of its
/// pixels on the mean plane of the rock.
ScaleStaff exact_staff(const Json& truth, double y) {
  const Json& camera = truth.at("camera");
  const Json& plane = truth.at("mean_plane");
  const double focal = camera.at("focal_pixels").get<double>();
  const double width = camera.at("width").get<double>();
  const Vec3 forward = vector_of(camera.at("forward"));
  const auto rise = static_cast<float>((y - camera.at("height").get<double>() / 2) / focal);
  const Vec3 ray = forward + vector_of(camera.at("down")) * rise;
  const Vec3 normal = vector_of(plane.at("normal"));
  const Vec3 to_plane = vector_of(plane.at("point")) - vector_of(camera.at("position"));
  // The ray has length 1 along the camera's axis, so this is the distance along
  // it.
  const double away = to_plane.dot(normal) / ray.dot(normal);
  return {{0.2 * width, y}, {0.8 * width, y}, Length::meters(0.6 * width * away / focal)};
}

Photo bare_photo(const Json& truth) {
  const Json& camera = truth.at("camera");
  Photo photo;
  photo.size = {camera.at("width").get<double>(), camera.at("height").get<double>()};
  const double angle = truth.at("mean_plane").at("view_angle_radians").get<double>();
  photo.view = angle > 0.52 ? PhotoView::oblique : PhotoView::straight_on;
  photo.off_square = Angle::radians(angle);
  photo.staffs = {exact_staff(truth, 0.85 * photo.size.height),
                  exact_staff(truth, 0.15 * photo.size.height)};
  photo.scale_error = Dimensionless::number(0.001);
  return photo;
}

Expected<TrialPicture> read_picture(const std::filesystem::path& folder, const std::string& name) {
  TrialPicture picture;
  picture.name = name;
  const auto jpeg = folder / (name + ".jpg");
  const auto bytes = bytes_of(jpeg);
  if (!bytes) return bytes.problems();
  auto photograph = read_photograph(*bytes, jpeg.string());
  if (!photograph) return photograph.problems();
  picture.pixels = std::move(photograph->pixels);
  auto mask = read_mask(folder / (name + "-stones.png"));
  if (!mask) return mask.problems();
  picture.stones = std::move(*mask);
  const auto path = folder / (name + ".json");
  const auto text = bytes_of(path);
  if (!text) return text.problems();
  const Json truth = Json::parse(*text, nullptr, false);
  if (truth.is_discarded()) return spoiled(path, "The truth of the picture is no JSON.");
  picture.photo = bare_photo(truth);
  picture.alone.assign(static_cast<std::size_t>(picture.stones.stones), 0);
  for (const Json& stone : truth.at("stones_in_view")) {
    picture.alone.at(stone.at("stone").get<std::size_t>() - 1) = stone.at("alone").get<double>();
  }
  picture.weather = truth.at("look").at("sun").get<bool>() ? "sun" : "overcast";
  picture.dust = truth.at("look").at("dust").get<double>();
  picture.apart = truth.contains("quarter");
  return picture;
}

/// In words, what most stones of a pile are.
std::string form_of(std::map<std::string, double>& shapes, double stones) {
  if (shapes["rounded"] > 0.8 * stones) return "river stones";
  if (shapes["splinter"] > 0.8 * stones) return "hulls of random points";
  if (shapes["slabby"] > 0.5 * stones) return "slabs";
  return shapes["rounded"] > 0.1 * stones ? "mixed forms" : "quarried blocks";
}

}  // namespace

Expected<TrialPile> read_trial_pile(const std::string& folder) {
  const std::filesystem::path path(folder);
  const auto text = bytes_of(path / "pile.json");
  if (!text) return text.problems();
  const Json truth = Json::parse(*text, nullptr, false);
  if (truth.is_discarded()) return spoiled(path / "pile.json", "The truth of the pile is no JSON.");
  TrialPile pile;
  pile.name = path.filename().string();
  std::map<std::string, double> shapes;
  for (const Json& stone : truth.at("stones")) {
    pile.stone_sizes.push_back(stone.at("size").get<double>());
    shapes[stone.at("shape").get<std::string>()] += 1;
  }
  pile.form = form_of(shapes, static_cast<double>(pile.stone_sizes.size()));
  pile.rock = truth.at("rock").get<std::string>();
  pile.heap = truth.at("kind") == "heap";
  const Json& sizes = truth.at("whole_pile").at("size_at_percent_smaller_by_mass");
  for (const int percent : {15, 50, 85}) {
    pile.sizes[percent] = sizes.at("D" + std::to_string(percent)).get<double>();
  }
  for (int number = 1;
       std::filesystem::exists(path / ("picture-" + std::to_string(number) + ".jpg")); ++number) {
    auto picture = read_picture(path, "picture-" + std::to_string(number));
    if (!picture) return picture.problems();
    pile.pictures.push_back(std::move(*picture));
  }
  return pile;
}

std::vector<VisiblePiece> pieces_of(const StoneRegions& regions) {
  std::vector<VisiblePiece> pieces(static_cast<std::size_t>(regions.stones));
  for (int y = 0; y < regions.height; ++y) {
    for (int x = 0; x < regions.width; ++x) {
      const int stone = regions.stone[static_cast<std::size_t>(y * regions.width + x)];
      if (stone == 0) continue;
      auto& [area, box] = pieces[static_cast<std::size_t>(stone - 1)];
      if (area == 0) box = {double(x), double(y), x + 1.0, y + 1.0};
      area += 1;
      box = {std::min(box.left, double(x)), std::min(box.top, double(y)),
             std::max(box.right, x + 1.0), std::max(box.bottom, y + 1.0)};
    }
  }
  return pieces;
}

}  // namespace proofstone::piles
