#include "engine/vision/photo_reading.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/evidence/size_ranges.h"
#include "engine/vision/covering_marks.h"
#include "engine/vision/repeated_photos.h"

namespace proofstone {
namespace {

constexpr std::size_t blocks_along = 4;
constexpr std::size_t blocks_across = 3;
/// A piece this wide would be seen whole by so few pictures that one stands for very many.
constexpr double widest_part = 0.8;
static_assert(blocks_along * blocks_across == blocks_of_photo);

std::size_t block_at(PhotoPoint point, const PictureSize& picture) {
  const bool wide = picture.width >= picture.height;
  const std::size_t columns = wide ? blocks_along : blocks_across;
  const std::size_t rows = wide ? blocks_across : blocks_along;
  const auto part = [](double at, double whole, std::size_t parts) {
    const double place = std::clamp(at / whole, 0.0, 1.0) * static_cast<double>(parts);
    return std::min(parts - 1, static_cast<std::size_t>(place));
  };
  return part(point.y, picture.height, rows) * columns + part(point.x, picture.width, columns);
}

/// Stones of one photo while they are gathered.
class PhotoReading {
 public:
  PhotoReading(const Photo& photo, std::size_t index, StonesOnPhotos& seen, Problems& problems)
      : photo_(photo),
        where_(photo_name(index)),
        first_block_(index * blocks_of_photo),
        scale_(seen.scales[index]),
        marks_(photo),
        seen_(seen),
        problems_(problems) {}

  void read_outlines() {
    for (std::size_t i = 0; i < photo_.outlines.size(); ++i) {
      const auto here = fmt::format("{}, outline {}", where_, i + 1);
      auto piece = piece_of_outline(photo_.outlines[i], here);
      if (!piece) {
        problems_.push_back(piece.problems().front());
      } else if (!is_mark(marks_.share_of(photo_.outlines[i]))) {
        add_piece(*piece, here);
      }
    }
    for (std::size_t i = 0; i < photo_.pieces.size(); ++i) {
      if (is_mark(marks_.share_of(photo_.pieces[i].box))) continue;
      add_piece(photo_.pieces[i], fmt::format("{}, piece {}", where_, i + 1));
    }
    report_repeated(pieces_, problems_);
  }

  void read_tapped() {
    for (std::size_t i = 0; i < photo_.tapped.size(); ++i) {
      add_tapped(photo_.tapped[i], fmt::format("{}, node {}", where_, i + 1));
    }
    report_repeated(nodes_, problems_);
  }

 private:
  bool is_mark(double covered) {
    if (!(covered > most_covered)) return false;
    ++seen_.on_marks;
    return true;
  }

  void add_piece(const VisiblePiece& piece, const std::string& where) {
    if (auto wrong = problems_of_piece(piece, photo_.size, where); !wrong.empty()) {
      problems_.insert(problems_.end(), wrong.begin(), wrong.end());
      return;
    }
    pieces_.push_back(
        {where, {piece.area, piece.box.left, piece.box.top, piece.box.right, piece.box.bottom}});
    if (is_cut_by_edge(piece, photo_.size)) {
      ++seen_.cut_by_edge;
      return;
    }
    if (piece.box.width() > widest_part * photo_.size.width ||
        piece.box.height() > widest_part * photo_.size.height) {
      problems_.push_back({"fills-picture", "One stone fills nearly the whole picture.", "", where,
                           "photos from farther away"});
      return;
    }
    const auto at = piece.box.middle();
    const Length pixel = scale_.pixel_at(at.y);
    // What a stone shows of the surface, in square metres of rock.
    const double area = piece.area * pixel.meters() * pixel.meters();
    add(equal_area_diameter(piece.area), area * edge_weight(piece, photo_.size), at, where);
  }

  void add_tapped(const TappedStone& stone, const std::string& where) {
    for (const auto point :
         {stone.node, stone.long_from, stone.long_to, stone.short_from, stone.short_to}) {
      if (is_on_picture(point, photo_.size)) continue;
      problems_.push_back(
          {"outside-picture", "A tap is outside the picture.", "", where, "taps on the picture"});
      return;
    }
    nodes_.push_back({where, {stone.node.x, stone.node.y}});
    if (stone.mostly_hidden) {
      ++seen_.mostly_hidden;
      return;
    }
    const double along = pixels_between(stone.long_from, stone.long_to);
    const double across = pixels_between(stone.short_from, stone.short_to);
    if (!(along >= 1 && across >= 1)) {
      problems_.push_back({"no-area", "Both ends of an axis are at one place.", "", where,
                           "two taps at the ends of each visible axis"});
      return;
    }
    add(std::sqrt(along * across), 1, stone.node, where);
  }

  void add(double pixels, double weight, PhotoPoint at, const std::string& where) {
    const Length pixel = scale_.pixel_at(at.y);
    const Length size = pixels * pixel;
    if (!(pixel.meters() > 0)) {
      problems_.push_back({"beyond-horizon",
                           "By the scale of the photo the rock does not reach up there.", "", where,
                           "marks of the scale that fit the whole picture"});
    } else if (auto wrong = problem_of_size(size, where)) {
      problems_.push_back(std::move(*wrong));
    } else {
      seen_.stones.push_back({size, weight, first_block_ + block_at(at, photo_.size)});
      seen_.sizes_in_pixels.push_back(pixels);
      seen_.smallest_resolved = std::max(seen_.smallest_resolved, photo_.smallest_drawn * pixel);
    }
  }

  const Photo& photo_;
  std::string where_;
  std::size_t first_block_;
  const PhotoScale& scale_;
  CoveringMarks marks_;
  StonesOnPhotos& seen_;
  Problems& problems_;
  std::vector<DrawnThing> pieces_;
  std::vector<DrawnThing> nodes_;
};

}  // namespace

void read_photo(const Photo& photo, std::size_t index, StonesOnPhotos& seen, Problems& problems) {
  PhotoReading reading(photo, index, seen, problems);
  reading.read_outlines();
  reading.read_tapped();
}

}  // namespace proofstone
