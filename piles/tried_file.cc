#include "piles/tried_file.h"

#include <cmath>
#include <fstream>
#include <nlohmann/json.hpp>

namespace proofstone::piles {
namespace {

using Json = nlohmann::ordered_json;

/// A hundredth of a pixel is enough.
double rounded(double pixels) { return std::round(100 * pixels) / 100; }

Json point_json(const PhotoPoint& point) {
  return Json::array({rounded(point.x), rounded(point.y)});
}

PhotoPoint point_of(const Json& json) {
  return {json.at(0).get<double>(), json.at(1).get<double>()};
}

/// A picture as it was taken: what true and found outlines share.
Json photo_json(const Photo& photo) {
  Json staffs = Json::array();
  for (const auto& staff : photo.staffs) {
    staffs.push_back({{"from", point_json(staff.from)},
                      {"to", point_json(staff.to)},
                      {"length", staff.length.meters()}});
  }
  return {{"width", photo.size.width},
          {"height", photo.size.height},
          {"straight_on", photo.view == PhotoView::straight_on},
          {"off_square", photo.off_square->radians()},
          {"scale_error", photo.scale_error->number()},
          {"staffs", staffs}};
}

Photo photo_of(const Json& json) {
  Photo photo;
  photo.size = {json.at("width").get<double>(), json.at("height").get<double>()};
  photo.view = json.at("straight_on").get<bool>() ? PhotoView::straight_on : PhotoView::oblique;
  photo.off_square = Angle::radians(json.at("off_square").get<double>());
  photo.scale_error = Dimensionless::number(json.at("scale_error").get<double>());
  for (const Json& staff : json.at("staffs")) {
    photo.staffs.push_back({point_of(staff.at("from")), point_of(staff.at("to")),
                            Length::meters(staff.at("length").get<double>())});
  }
  return photo;
}

/// Node, the two axes and how much of the stone shows; a hundredth is enough.
Json taps_json(const std::vector<SeenTap>& taps) {
  Json all = Json::array();
  for (const auto& tap : taps) {
    all.push_back(Json::array({rounded(tap.node.x), rounded(tap.node.y), rounded(tap.along),
                               rounded(tap.across), rounded(tap.shows)}));
  }
  return all;
}

std::vector<SeenTap> taps_of(const Json& json) {
  std::vector<SeenTap> taps;
  for (const Json& tap : json) {
    const auto number = [&tap](std::size_t i) { return tap.at(i).get<double>(); };
    taps.push_back({{number(0), number(1)}, number(2), number(3), number(4)});
  }
  return taps;
}

Json picture_json(const TriedPicture& picture) {
  Json pieces = Json::array();
  for (const auto& [area, box] : picture.true_photo.pieces) {
    pieces.push_back(Json::array({area, box.left, box.top, box.right, box.bottom}));
  }
  Json outlines = Json::array();
  for (const auto& outline : picture.found_photo.outlines) {
    Json corners = Json::array();
    for (const PhotoPoint& corner : outline) corners.push_back(point_json(corner));
    outlines.push_back(std::move(corners));
  }
  return {{"photo", photo_json(picture.true_photo)},
          {"why_not", picture.why_not},
          {"light", picture.light},
          {"dust", picture.dust},
          {"matched_area", picture.matched_area},
          {"matched_count", picture.matched_count},
          {"seen_over_pile", picture.seen_over_pile},
          {"true_pieces", std::move(pieces)},
          {"taps", taps_json(picture.taps)},
          {"close_taps", taps_json(picture.close_taps)},
          {"smallest_drawn", picture.found_photo.smallest_drawn},
          {"outlines", std::move(outlines)}};
}

TriedPicture picture_of(const Json& json) {
  TriedPicture picture;
  picture.true_photo = picture.found_photo = photo_of(json.at("photo"));
  picture.why_not = json.at("why_not").get<std::string>();
  picture.light = json.at("light").get<std::string>();
  picture.dust = json.at("dust").get<double>();
  picture.matched_area = json.at("matched_area").get<double>();
  picture.matched_count = json.at("matched_count").get<double>();
  picture.seen_over_pile = json.at("seen_over_pile").get<std::array<double, 3>>();
  for (const Json& piece : json.at("true_pieces")) {
    const auto number = [&piece](std::size_t i) { return piece.at(i).get<double>(); };
    picture.true_photo.pieces.push_back({number(0), {number(1), number(2), number(3), number(4)}});
  }
  picture.taps = taps_of(json.at("taps"));
  picture.close_taps = taps_of(json.at("close_taps"));
  picture.found_photo.smallest_drawn = json.at("smallest_drawn").get<double>();
  for (const Json& corners : json.at("outlines")) {
    auto& outline = picture.found_photo.outlines.emplace_back();
    for (const Json& corner : corners) outline.push_back(point_of(corner));
  }
  return picture;
}

Json pile_json(const TriedPile& pile) {
  Json sizes;
  for (const auto& [percent, size] : pile.sizes) sizes["D" + std::to_string(percent)] = size;
  Json pictures = Json::array();
  for (const auto& picture : pile.pictures) pictures.push_back(picture_json(picture));
  return {{"name", pile.name},
          {"form", pile.form},
          {"rock", pile.rock},
          {"heap", pile.lies == RockLies::in_heap},
          {"apart", pile.apart},
          {"sizes", sizes},
          {"pictures", std::move(pictures)}};
}

TriedPile pile_of(const Json& json) {
  TriedPile pile;
  pile.name = json.at("name").get<std::string>();
  pile.form = json.at("form").get<std::string>();
  pile.rock = json.at("rock").get<std::string>();
  pile.lies = json.at("heap").get<bool>() ? RockLies::in_heap : RockLies::in_layer;
  pile.apart = json.at("apart").get<bool>();
  for (const int percent : tried_percents) {
    pile.sizes[percent] = json.at("sizes").at("D" + std::to_string(percent)).get<double>();
  }
  for (const Json& picture : json.at("pictures")) pile.pictures.push_back(picture_of(picture));
  return pile;
}

}  // namespace

void write_tried(std::ostream& out, const std::vector<TriedPile>& piles) {
  Json all = Json::array();
  for (const auto& pile : piles) all.push_back(pile_json(pile));
  out << Json{{"proofstone", "tried piles"}, {"piles", std::move(all)}}.dump() << "\n";
}

Expected<std::vector<TriedPile>> read_tried(const std::string& path) {
  const Problem spoiled{"spoiled-trial", "What was tried cannot be read.", path, "",
                        "tried.json as `piles trial` wrote it"};
  std::ifstream file(path);
  if (!file) return spoiled;
  try {
    std::vector<TriedPile> piles;
    const Json all = Json::parse(file);
    for (const Json& pile : all.at("piles")) piles.push_back(pile_of(pile));
    return piles;
  } catch (const nlohmann::json::exception&) {
    return spoiled;
  }
}

}  // namespace proofstone::piles
