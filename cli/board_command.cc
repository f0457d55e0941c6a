#include "cli/board_command.h"

#include <fmt/format.h>

#include <charconv>

#include "cli/exit_codes.h"
#include "cli/output.h"
#include "cli/site_folder.h"
#include "engine/quantity/measure.h"
#include "report/marker_sheet.h"

namespace proofstone {

int board_command(const Arguments& arguments) {
  const auto path = arguments.value("out");
  if (path.empty()) {
    return refuse({{"usage", "A board needs a file to write.", "", "", "--out FILE.svg"}},
                  exit_usage);
  }
  const auto& word = arguments.words.front();
  int board = 0;
  const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), board);
  if (error != std::errc{} || end != word.data() + word.size()) board = 0;
  const auto edge =
      parse_quantity<Length>(arguments.value("edge", fmt::format("{} mm", usual_marker_edge_mm)));
  if (!edge) return refuse(edge.problems(), exit_problems);
  const auto sheet = marker_sheet(board, *edge);
  if (!sheet) return refuse(sheet.problems(), exit_problems);
  const auto problems = write_text_file(path, *sheet);
  if (!problems.empty()) return refuse(problems, exit_failed);
  print(fmt::format(
      "Marker board {} stands in {}. Print it at full size and measure the edge of a marker.\n",
      board, path));
  return exit_done;
}

}  // namespace proofstone
