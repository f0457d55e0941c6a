#include "cli/outline_command.h"

#include <fmt/format.h>

#include <map>
#include <nlohmann/json.hpp>
#include <vector>

#include "cli/exit_codes.h"
#include "cli/output.h"
#include "cli/site_folder.h"
#include "engine/quantity/measure.h"
#include "engine/vision/marker_finder.h"
#include "engine/vision/outline_photo.h"
#include "photography/outline_weights.h"
#include "photography/photo_digest.h"
#include "photography/photograph_file.h"
#include "report/outline_answers.h"

namespace proofstone {
namespace {

using Json = nlohmann::ordered_json;

/// The boards as a picture of a document has them; `edge` is that of a marker.
Json scale_boards(const std::map<int, std::vector<SeenMarker>>& boards, const std::string& edge) {
  Json list = Json::array();
  for (const auto& board : boards_json(boards)) {
    list.push_back({{"edge", edge}, {"markers", board["markers"]}});
  }
  return list;
}

Json picture_json(const Photograph& photograph, const OutlinedPhoto& found,
                  const std::string& digest) {
  Json picture = {
      {"file", digest}, {"width", photograph.pixels.width}, {"height", photograph.pixels.height}};
  if (photograph.focal_length) {
    picture["focal_length"] = fmt::format("{:g} mm", *photograph.focal_length);
  }
  picture["smallest_drawn"] = smallest_drawn(found);
  picture["outlines"] = outlines_in_tenths(found.outlines);
  return picture;
}

constexpr const char* what_is_left =
    "Look at the outlines over the photograph before they count. To make them a look of a site, "
    "state for each picture its view and its scale (balls, staffs, marker boards), and how the "
    "rock lies.\n";

}  // namespace

int outline_command(const Arguments& arguments) {
  const auto network = OutlineNetwork::read(embedded_outline_weights());
  if (!network) return refuse(network.problems(), exit_failed);
  const auto edge = arguments.value("edge");
  if (const auto length = parse_quantity<Length>(edge); !edge.empty() && !length) {
    return refuse(located_under(length.problems(), "--edge"), exit_problems);
  }
  Json pictures = Json::array();
  std::string summary;
  for (const auto& path : arguments.words) {
    const auto bytes = read_text_file(path);
    if (!bytes) return refuse(bytes.problems(), exit_failed);
    const auto photograph = read_photograph(*bytes, path);
    if (!photograph) return refuse(photograph.problems(), exit_problems);
    const auto found = outline_photo(photograph->pixels, *network, path);
    if (!found) return refuse(found.problems(), exit_problems);
    auto picture = picture_json(*photograph, *found, photo_digest(*bytes));
    const auto boards = find_boards(photograph->pixels);
    if (!boards.empty() && !edge.empty()) picture["boards"] = scale_boards(boards, edge);
    pictures.push_back(std::move(picture));
    summary +=
        fmt::format("{}: {} stones on {:.0f} % of the picture; none under {:.0f} pixels.\n", path,
                    found->outlines.size(), 100 * found->rock_share, smallest_drawn(*found));
    for (const auto& [number, markers] : boards) {
      summary += fmt::format(
          "  Marker board {} is in sight, {} of its {} markers{}.\n", number, markers.size(),
          markers_of_board,
          edge.empty() ? "; --edge \"65 mm\", measured on the print, takes it as scale" : "");
    }
    for (const auto& caution : found->cautions) summary += fmt::format("  {}\n", caution);
  }
  const Json answer = {{"pictures", std::move(pictures)}};
  if (const auto path = arguments.value("out"); !path.empty()) {
    const auto problems = write_text_file(path, answer.dump() + "\n");
    if (!problems.empty()) return refuse(problems, exit_failed);
    summary += fmt::format("The outlines stand in {}.\n", path);
  }
  print(arguments.has("json") ? answer.dump() + "\n" : summary + what_is_left);
  return exit_done;
}

}  // namespace proofstone
