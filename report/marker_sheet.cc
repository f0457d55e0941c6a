#include "report/marker_sheet.h"

#include <fmt/format.h>

#include "engine/vision/marker_board.h"
#include "engine/vision/marker_code.h"
#include "report/markup.h"

namespace proofstone {
namespace {

constexpr int known_boards = known_markers / markers_of_board;
constexpr double foot_mm = 26;  // of the sheet, for the rule and the words
constexpr double rule_mm = 100;

std::string marker_path(int number, double left, double top, double module) {
  std::string path;
  for (int row = 0; row < marker_modules; ++row) {
    for (int column = 0; column < marker_modules; ++column) {
      if (!marker_module_is_dark(number, column, row)) continue;
      // One run of dark modules at a time: seams between squares would print as hairlines.
      int end = column + 1;
      while (end < marker_modules && marker_module_is_dark(number, end, row)) ++end;
      path += fmt::format("M{:.3f} {:.3f}h{:.3f}v{:.3f}h{:.3f}z", left + column * module,
                          top + row * module, (end - column) * module, module,
                          -(end - column) * module);
      column = end;
    }
  }
  return path;
}

std::string text(double x, double y, double size, const std::string& words) {
  return fmt::format(
      "<text x=\"{:.2f}\" y=\"{:.2f}\" font-size=\"{:.2f}\" font-family=\"sans-serif\">{}</text>\n",
      x, y, size, escaped(words));
}

}  // namespace

Expected<std::string> marker_sheet(int board, Length edge) {
  const double side = edge.millimeters();
  if (board < 1 || board > known_boards) {
    return Problem{"no-board", "There is no such board.", "", "/board",
                   fmt::format("1 to {}", known_boards)};
  }
  if (!(side >= 20 && side <= 500)) {
    return Problem{"no-board", "A marker of that edge is not printed.", "", "/edge",
                   "20 mm to 500 mm; 65 mm fits a sheet of Letter or A4"};
  }
  const double gap = board_gap * side;
  const double width = board_columns * (side + gap) + gap;
  const double height = board_rows * (side + gap) + gap;
  std::string path;
  for (int i = 0; i < markers_of_board; ++i) {
    const int number = (board - 1) * markers_of_board + i;
    const auto place = place_on_board(number);
    path += marker_path(number, gap + place.x * side, gap + place.y * side, side / marker_modules);
  }
  std::string svg = fmt::format(
      "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0:.2f}mm\" height=\"{1:.2f}mm\" "
      "viewBox=\"0 0 {0:.2f} {1:.2f}\">\n<title>Marker board {2}</title>\n"
      "<rect width=\"{0:.2f}\" height=\"{1:.2f}\" fill=\"#fff\"/>\n<path fill=\"#000\" "
      "d=\"{3}\"/>\n",
      width, height + foot_mm, board, path);
  svg += fmt::format(
      "<path fill=\"none\" stroke=\"#000\" stroke-width=\"0.3\" d=\"M{0:.2f} "
      "{1:.2f}v3h{2:.2f}v-3\"/>\n",
      gap, height, rule_mm > width - 2 * gap ? side : rule_mm);
  svg += text(gap, height + 8, 3.6,
              fmt::format("Marker board {}. This line is {:g} mm long if it was printed at full "
                          "size; each marker then has an edge of {:g} mm.",
                          board, rule_mm > width - 2 * gap ? side : rule_mm, side));
  svg += text(gap, height + 14, 3.6,
              "Measure the edge of a black square on the print and state that. Glue the sheet on a "
              "stiff, flat plate; keep it dull and clean.");
  svg +=
      text(gap, height + 20, 3.6,
           "Lay it flat on the rock. A view from one side needs two boards, one low and one high "
           "on the picture.");
  return svg + "</svg>\n";
}

}  // namespace proofstone
