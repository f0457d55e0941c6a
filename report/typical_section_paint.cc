#include "report/typical_section_paint.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace proofstone {

namespace {

constexpr double smallest_stone = 5;  // pixels
constexpr std::size_t most_stones_of_typical_section = 900;
constexpr std::size_t most_grains = 2500;

/// Small marks in the voids of an area: grains of a mix, or strokes of soil. So that kinds differ
/// by more than their shade.
void fill_voids(SvgCanvas& canvas, const std::vector<PixelPoint>& outline, SectionRole role,
                const std::string& seed) {
  PixelBox box{outline[0].x, outline[0].y, outline[0].x, outline[0].y};
  for (const auto& point : outline) {
    box.left = std::min(box.left, point.x);
    box.right = std::max(box.right, point.x);
    box.top = std::min(box.top, point.y);
    box.bottom = std::max(box.bottom, point.y);
  }
  const double area = std::max(1.0, (box.right - box.left) * (box.bottom - box.top));
  const double apart = std::max(5.0, std::sqrt(area / static_cast<double>(most_grains)));
  SteadyNumbers numbers(seed);
  std::string marks;
  const auto rows = static_cast<int>((box.bottom - box.top) / apart) + 1;
  const auto columns = static_cast<int>((box.right - box.left) / apart) + 1;
  for (int row = 0; row < rows; ++row) {
    for (int column = 0; column < columns; ++column) {
      const double shift_x = numbers.between(0, 1);
      const double shift_y = numbers.between(0, 1);
      const double x = box.left + (column + shift_x) * apart;
      const double y = box.top + (row + shift_y) * apart;
      if (role == SectionRole::soil_filled_rock) {
        marks += fmt::format("M{} {}l3 -3", svg_number(x), svg_number(y));
      } else {
        marks += fmt::format("M{} {}h2v2h-2z", svg_number(x), svg_number(y));
      }
    }
  }
  if (role == SectionRole::soil_filled_rock) {
    canvas.path(marks, {Ink::none, 1, Ink::muted, 1, {}, "soil-fill"});
  } else {
    canvas.path(marks, {Ink::stone_3, 1, Ink::none, 0, {}, "grain-fill"});
  }
}

Ink void_ink(SectionRole role) {
  switch (role) {
    case SectionRole::soil_filled_rock:
      return Ink::stone_2;
    case SectionRole::void_filled_rock:
      return Ink::stone_1;
    case SectionRole::grouted_rock:
      return Ink::stone_3;
    default:
      return Ink::paper;
  }
}

/// Tufts of grass along the topsoil.
void draw_plants(SvgCanvas& canvas, const std::vector<PixelPoint>& soil) {
  std::string tufts;
  const std::size_t half = soil.size() / 2;
  for (std::size_t i = 0; i + 1 < half; ++i) {
    const double run = std::hypot(soil[i + 1].x - soil[i].x, soil[i + 1].y - soil[i].y);
    const int number = static_cast<int>(std::clamp(run / 16, 0.0, 200.0));
    for (int k = 0; k < number; ++k) {
      const double share = (k + 0.5) / number;
      const double x = soil[i].x + share * (soil[i + 1].x - soil[i].x);
      const double y = soil[i].y + share * (soil[i + 1].y - soil[i].y);
      tufts += fmt::format("M{0} {1}l-3 -7M{0} {1}v-9M{0} {1}l3 -7", svg_number(x), svg_number(y));
    }
  }
  canvas.path(tufts, {Ink::none, 1, Ink::muted, 1, {}, "plants"});
}

}  // namespace

void draw_rock(SvgCanvas& canvas, const RockStretch& rock, const SectionView& view, double median,
               Angularity angularity, const std::string& seed) {
  const auto outline = view.line(rock.outline);
  canvas.polygon(outline, {void_ink(rock.role), 1, Ink::none, 0, {}, "voids"});
  canvas.begin_clipped_group("rock", outline);
  const bool filled =
      rock.role == SectionRole::soil_filled_rock || rock.role == SectionRole::void_filled_rock;
  if (filled) fill_voids(canvas, outline, rock.role, seed + "/voids");
  const bool seen = median * view.pixels_across >= smallest_stone &&
                    expected_stones(rock.strip, rock.from, rock.to, median) <=
                        static_cast<double>(most_stones_of_typical_section);
  if (seen) {
    std::size_t number = 0;
    constexpr Ink inks[] = {Ink::stone_2, Ink::stone_1, Ink::paper};
    for (auto stone : stones_in(rock, median, most_stones_of_typical_section, seed)) {
      SectionPlace middle;
      for (const auto& place : stone) {
        middle.x += place.x / static_cast<double>(stone.size());
        middle.z += place.z / static_cast<double>(stone.size());
      }
      // What fills the voids must be seen between the stones.
      const double kept = filled ? 0.8 : 1.0;
      for (auto& place : stone) {
        place = {middle.x + kept * (place.x - middle.x), middle.z + kept * (place.z - middle.z)};
      }
      const Ink ink = rock.role == SectionRole::soil_filled_rock ? Ink::paper : inks[number % 3];
      ++number;
      canvas.path(stone_path(view.line(stone), angularity), {ink, 1, Ink::ink, 0.75, {}, "stone"});
    }
  }
  canvas.end_group();
  canvas.polygon(outline, {Ink::none, 1, Ink::ink, 1.25, {}, "layer"});
}

void draw_shape(SvgCanvas& canvas, const SectionShape& shape, const SectionView& view,
                bool seeded) {
  const auto points = view.line(shape.points);
  switch (shape.role) {
    case SectionRole::bedding:
      canvas.polygon(points, {Ink::stone_1, 1, Ink::ink, 1, {}, "bedding"});
      canvas.begin_clipped_group("bedding", points);
      fill_voids(canvas, points, SectionRole::bedding, "bedding");
      canvas.end_group();
      break;
    case SectionRole::fabric:
      canvas.polyline(points, {Ink::none, 1, Ink::ochre, 3, "9 4", "fabric"});
      break;
    case SectionRole::topsoil:
      canvas.polygon(points, {Ink::stone_3, 0.6, Ink::ink, 1, {}, "topsoil"});
      if (seeded) draw_plants(canvas, points);
      break;
    case SectionRole::blanket:
      canvas.polyline(points, {Ink::none, 1, Ink::ochre, 2.5, "3 2", "blanket"});
      break;
    case SectionRole::stake:
      canvas.polygon(points, {Ink::paper, 1, Ink::ink, 1, {}, "stake"});
      break;
    case SectionRole::structure:
      if (shape.closed) {
        canvas.polygon(points, {Ink::stone_1, 1, Ink::ink, 2, {}, "structure"});
      } else {
        canvas.polyline(points, {Ink::none, 1, Ink::ink, 2, {}, "structure"});
      }
      break;
    case SectionRole::flow:
      canvas.polyline(points, {Ink::none, 1, Ink::river, 2, {}, "flow"});
      break;
    case SectionRole::trench:
      canvas.polygon(points, {Ink::stone_2, 1, Ink::ink, 1, "3 2", "trench"});
      break;
    default:
      break;
  }
}

}  // namespace proofstone
