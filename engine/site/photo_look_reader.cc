#include "engine/site/photo_look_reader.h"

#include <fmt/format.h>

#include <cmath>

#include "engine/vision/marker_code.h"

namespace proofstone {
namespace {

constexpr double most_pixels = 1e6;

/// A number of pixels; a problem and 0 where it is none.
double read_pixels(const nlohmann::json* value, FieldReader& reader, const std::string& field) {
  if (value != nullptr && value->is_number()) {
    const double number = value->get<double>();
    if (std::abs(number) <= most_pixels) return number;
  }
  if (value != nullptr) {
    reader.report("not-pixels", "This is not a number of pixels.", field,
                  "a number such as 1204.5, without a unit");
  }
  return 0;
}

std::vector<double> read_numbers(const nlohmann::json* value, std::size_t count,
                                 FieldReader& reader, const std::string& field) {
  std::vector<double> numbers(count, 0);
  if (value == nullptr) return numbers;
  if (!value->is_array() || value->size() != count) {
    reader.report("not-pixels", fmt::format("{} numbers belong here.", count), field,
                  count == 2 ? "[x, y] in pixels" : "[left, top, right, bottom] in pixels");
    return numbers;
  }
  for (std::size_t i = 0; i < count; ++i) {
    numbers[i] = read_pixels(&(*value)[i], reader, fmt::format("{}/{}", field, i));
  }
  return numbers;
}

PhotoPoint read_point(const nlohmann::json* value, FieldReader& reader, const std::string& field) {
  const auto numbers = read_numbers(value, 2, reader, field);
  return {numbers[0], numbers[1]};
}

PhotoPoint required_point(FieldReader& reader, const std::string& field) {
  return read_point(reader.required(field), reader, field);
}

/// Both ends of an axis: [[x, y], [x, y]].
std::pair<PhotoPoint, PhotoPoint> read_ends(FieldReader& reader, const std::string& field) {
  const auto* value = reader.required(field);
  if (value == nullptr) return {};
  if (!value->is_array() || value->size() != 2) {
    reader.report("not-pixels", "Both ends of an axis belong here.", field, "[[x, y], [x, y]]");
    return {};
  }
  const auto from = read_point(&(*value)[0], reader, field + "/0");
  const auto to = read_point(&(*value)[1], reader, field + "/1");
  return {from, to};
}

/// Calls `read(reader)` for each object of a list.
template <class Read>
void each_of(FieldReader& parent, const std::string& field, Problems& problems, Read read) {
  const auto* list = parent.optional_list(field);
  for (std::size_t i = 0; list != nullptr && i < list->size(); ++i) {
    FieldReader row((*list)[i], fmt::format("{}/{}/{}", parent.pointer(), field, i), problems);
    read(row);
    row.finish();
  }
}

PhotoView read_view(FieldReader& reader) {
  return reader.choice<PhotoView>(
      "view", {{"straight on", PhotoView::straight_on}, {"oblique", PhotoView::oblique}},
      std::nullopt);
}

RockLies read_lies(FieldReader& reader) {
  return reader.choice<RockLies>(
      "lies", {{"layer", RockLies::in_layer}, {"heap", RockLies::in_heap}}, std::nullopt);
}

void read_outlines(FieldReader& picture, Photo& photo) {
  const auto* list = picture.optional_list("outlines");
  for (std::size_t i = 0; list != nullptr && i < list->size(); ++i) {
    const auto field = fmt::format("outlines/{}", i);
    const auto& corners = (*list)[i];
    if (!corners.is_array()) {
      picture.report("not-an-outline", "The corners of an outline belong here.", field,
                     "[[x, y], [x, y], [x, y], …]");
      continue;
    }
    std::vector<PhotoPoint> outline;
    outline.reserve(corners.size());
    for (std::size_t k = 0; k < corners.size(); ++k) {
      outline.push_back(read_point(&corners[k], picture, fmt::format("{}/{}", field, k)));
    }
    photo.outlines.push_back(std::move(outline));
  }
}

TappedStone read_tapped(FieldReader& node) {
  TappedStone stone;
  stone.node = required_point(node, "at");
  if (node.has("skip")) {
    stone.mostly_hidden = node.choice<bool>("skip", {{"mostly hidden", true}}, std::nullopt);
    stone.long_from = stone.long_to = stone.short_from = stone.short_to = stone.node;
    return stone;
  }
  std::tie(stone.long_from, stone.long_to) = read_ends(node, "long");
  std::tie(stone.short_from, stone.short_to) = read_ends(node, "short");
  return stone;
}

CheckedOutline read_checked(FieldReader& row) {
  CheckedOutline node;
  if (row.required("picture") != nullptr) {
    node.photo = row.optional_integer("picture", 1, 1000).value_or(1);
  }
  if (row.has("found")) {
    node.answer = row.choice<CheckAnswer>("found",
                                          {{"as outlined", CheckAnswer::right},
                                           {"mostly hidden", CheckAnswer::mostly_hidden},
                                           {"not rock", CheckAnswer::not_rock}},
                                          std::nullopt);
    node.stone.node = required_point(row, "at");
    node.stone.long_from = node.stone.long_to = node.stone.node;
    node.stone.short_from = node.stone.short_to = node.stone.node;
    return node;
  }
  node.answer = CheckAnswer::other_axes;
  node.stone = read_tapped(row);
  return node;
}

SeenMarker read_marker_seen(FieldReader& row) {
  SeenMarker marker;
  marker.number = row.optional_integer("number", 0, known_markers - 1).value_or(0);
  row.required("number");
  const auto* corners = row.required("corners");
  if (corners == nullptr) return marker;
  if (!corners->is_array() || corners->size() != marker.corners.size()) {
    row.report("not-pixels", "The four corners of a marker belong here.", "corners",
               "[[x, y], [x, y], [x, y], [x, y]], from its own upper left clockwise");
    return marker;
  }
  for (std::size_t i = 0; i < marker.corners.size(); ++i) {
    marker.corners[i] = read_point(&(*corners)[i], row, fmt::format("corners/{}", i));
  }
  return marker;
}

void read_scale(FieldReader& picture, Photo& photo, Problems& problems) {
  each_of(picture, "balls", problems, [&](FieldReader& row) {
    ScaleBall ball;
    ball.middle = required_point(row, "middle");
    ball.radius = read_pixels(row.required("radius"), row, "radius");
    ball.diameter = row.required_positive<Length>("diameter", "A ball has a diameter.");
    photo.balls.push_back(ball);
  });
  each_of(picture, "staffs", problems, [&](FieldReader& row) {
    ScaleStaff staff;
    staff.from = required_point(row, "from");
    staff.to = required_point(row, "to");
    staff.length = row.required_positive<Length>("length", "A staff has a length.");
    photo.staffs.push_back(staff);
  });
  each_of(picture, "boards", problems, [&](FieldReader& row) {
    ScaleBoard board;
    board.edge = row.required_positive<Length>("edge", "A marker has an edge.");
    each_of(row, "markers", problems,
            [&](FieldReader& marker) { board.markers.push_back(read_marker_seen(marker)); });
    photo.boards.push_back(std::move(board));
  });
  photo.scale_error = picture.optional_quantity<Dimensionless>("scale_error");
}

bool is_file_name(const std::string& text) {
  return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

Photo read_photo_of(FieldReader& picture, Problems& problems) {
  Photo photo;
  photo.file = picture.optional_text("file");
  if (!photo.file.empty() && !is_file_name(photo.file)) {
    picture.report("not-a-digest", "A photo is named by the SHA-256 of its file.", "file",
                   "64 of 0 to 9 and a to f");
  }
  photo.size.width = read_pixels(picture.required("width"), picture, "width");
  photo.size.height = read_pixels(picture.required("height"), picture, "height");
  photo.view = read_view(picture);
  photo.off_square = picture.optional_quantity<Angle>("off_square");
  photo.focal_length = picture.optional_quantity<Length>("focal_length");
  read_scale(picture, photo, problems);
  if (picture.has("smallest_drawn")) {
    photo.smallest_drawn =
        std::max(8.0, read_pixels(picture.required("smallest_drawn"), picture, "smallest_drawn"));
  }
  read_outlines(picture, photo);
  each_of(picture, "pieces", problems, [&](FieldReader& row) {
    VisiblePiece piece;
    piece.area = read_pixels(row.required("area"), row, "area");
    const auto box = read_numbers(row.required("box"), 4, row, "box");
    piece.box = {box[0], box[1], box[2], box[3]};
    photo.pieces.push_back(piece);
  });
  each_of(picture, "nodes", problems,
          [&](FieldReader& row) { photo.tapped.push_back(read_tapped(row)); });
  return photo;
}

void read_largest(FieldReader& look, PhotoSet& set, Problems& problems) {
  const auto* json = look.optional("largest");
  if (json == nullptr) return;
  FieldReader largest(*json, look.pointer() + "/largest", problems);
  if (largest.has("tape")) {
    set.taped_largest = largest.required_positive<Length>("tape", "A stone has a size.");
  }
  if (largest.has("picture") || !largest.has("tape")) {
    TappedLargest tapped;
    if (largest.required("picture") != nullptr) {
      tapped.photo = largest.optional_integer("picture", 1, 1000).value_or(1);
    }
    std::tie(tapped.from, tapped.to) = read_ends(largest, "ends");
    set.tapped_largest = tapped;
  }
  largest.finish();
}

}  // namespace

PhotoSet read_photo_set(FieldReader& look, Problems& problems) {
  PhotoSet set;
  set.lies = read_lies(look);
  if (look.has("spread")) {
    set.spread = look.choice<SizeSpread>("spread",
                                         {{"very uniform", SizeSpread::very_uniform},
                                          {"class", SizeSpread::class_like},
                                          {"broad", SizeSpread::broad},
                                          {"very broad", SizeSpread::very_broad}},
                                         std::nullopt);
  }
  if (look.required("pictures") != nullptr) {
    each_of(look, "pictures", problems,
            [&](FieldReader& row) { set.photos.push_back(read_photo_of(row, problems)); });
    if (set.photos.empty()) {
      look.report("empty", "No picture was taken.", "pictures", "at least one picture");
    }
  }
  read_largest(look, set, problems);
  each_of(look, "check", problems,
          [&](FieldReader& row) { set.check.push_back(read_checked(row)); });
  return set;
}

std::vector<PhotoCalibration> read_photo_calibrations(FieldReader& evidence, Problems& problems) {
  std::vector<PhotoCalibration> calibrations;
  each_of(evidence, "photo_calibrations", problems, [&](FieldReader& row) {
    PhotoCalibration one;
    one.from = row.required_text("from");
    one.view = read_view(row);
    one.lies = read_lies(row);
    one.of_tapped_stones =
        row.choice<bool>("of", {{"outlines", false}, {"taps", true}}, std::nullopt);
    const auto factor = [&row](const char* field) {
      const auto ratio = row.required_quantity<Dimensionless>(field);
      if (!(ratio.number() >= 0.3 && ratio.number() <= 3)) {
        row.report("implausible", "A photo is not wrong by so much.", field, "0.3 to 3");
      }
      return ratio;
    };
    one.d15 = factor("d15");
    one.d50 = factor("d50");
    one.d85 = factor("d85");
    one.error = row.required_quantity<Dimensionless>("error");
    if (!(one.error.number() > 0 && one.error.number() <= 0.5)) {
      row.report("implausible", "No calibration leaves such an error.", "error",
                 "above 0 and up to 50 %");
    }
    calibrations.push_back(std::move(one));
  });
  return calibrations;
}

}  // namespace proofstone
