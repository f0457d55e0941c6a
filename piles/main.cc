#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <mutex>
#include <sstream>
#include <thread>

#include "photography/outline_weights.h"
#include "piles/noise.h"
#include "piles/options.h"
#include "piles/piece_table.h"
#include "piles/trial_page.h"
#include "piles/tried_file.h"
#include "piles/truth.h"

namespace proofstone::piles {
namespace {

enum PilesExit { done = 0, failed = 1, wrong_usage = 2 };

int refuse(const Problems& problems) {
  for (const Problem& problem : problems) std::fprintf(stderr, "%s\n", problem.sentence().c_str());
  return wrong_usage;
}

double seconds_since(std::chrono::steady_clock::time_point start) {
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

bool write_json(const nlohmann::ordered_json& json, const std::filesystem::path& path) {
  std::ofstream file(path);
  file << json.dump(1) << "\n";
  return file.good();
}

/// Writes NAME.jpg, NAME-stones.png, NAME.json and, where asked, NAME-linear.png.
bool write_picture(const Pile& pile, const Picture& picture, const Options& options, unsigned seed,
                   const std::string& name) {
  const std::string path = (std::filesystem::path(options.out) / name).string();
  const Development& how = picture.look.development;
  const float exposure = automatic_exposure(picture.light);
  return write_jpeg(develop(picture.light, how, seed), how.jpeg_quality, path + ".jpg") &&
         write_mask_png(picture.mask, path + "-stones.png") &&
         write_json(picture_truth(pile, picture, exposure), path + ".json") &&
         (!options.linear || write_linear_png(picture.light, exposure, path + "-linear.png"));
}

/// A layer on which four frames lie side by side: its length is their width and what lies beyond
/// the last three of a hundred stones.
int stones_under_four_frames(const AskedGradation& gradation, const Options& options) {
  const float length = (2 * options.view.frame_in_d50 / 0.97F + 1);
  return stones_in_layer_of(length, gradation, options.mix, options.seed);
}

Expected<Pile> pile_of(const Options& options, RockAgainstClass against) {
  auto gradation = asked_gradation(options, against);
  if (!gradation) return gradation.problems();
  const int stones = options.apart ? stones_under_four_frames(*gradation, options) : options.stones;
  std::printf("%d stones fall\n", stones);
  std::fflush(stdout);
  return make_pile({std::move(*gradation), options.place, options.mix, stones, options.seed});
}

bool take(const Pile& pile, const PileSurface& surface, const Options& options,
          const PictureRequest& request, const std::string& name) {
  const auto start = std::chrono::steady_clock::now();
  const Picture picture = take_picture(pile, surface, request);
  std::printf("%s: %.1f s\n", name.c_str(), seconds_since(start));
  std::fflush(stdout);
  if (write_picture(pile, picture, options, request.seed, name)) return true;
  std::fprintf(stderr, "%s could not be written in %s.\n", name.c_str(), options.out.c_str());
  return false;
}

int make(const Options& options) {
  auto start = std::chrono::steady_clock::now();
  const auto pile = pile_of(options, options.against);
  if (!pile) return refuse(pile.problems());
  const PileSurface surface = survey_surface(*pile);
  std::printf("pile: %.1f s\n", seconds_since(start));
  if (!write_json(pile_truth(*pile, surface), std::filesystem::path(options.out) / "pile.json")) {
    std::fprintf(stderr, "pile.json could not be written in %s.\n", options.out.c_str());
    return failed;
  }
  for (int number = 1; number <= options.pictures; ++number) {
    PictureRequest request;
    request.seed = mixed_seed(options.seed, 9000 + static_cast<unsigned>(number));
    request.view = options.view;
    const bool straight = options.straight && (!options.oblique || number % 2 == 1);
    request.view.kind = straight ? ViewKind::straight : ViewKind::oblique;
    if (options.apart) {
      const bool in_turn = options.straight && options.oblique;
      request.view.quarter = (number - 1) / (in_turn ? 2 : 1) % 4;
    }
    request.look = draw_look(options.weather, request.seed);
    request.look.balls = options.balls;
    request.effort = options.effort;
    if (!take(*pile, surface, options, request, "picture-" + std::to_string(number))) return failed;
  }
  return done;
}

/// The three piles in one scale: the frame is as wide as that of rock inside the band.
int make_reference(const Options& options) {
  const auto inside = asked_gradation(options, RockAgainstClass::inside);
  if (!inside) return refuse(inside.problems());
  const Length frame = inside->d50() * static_cast<double>(options.view.frame_in_d50);
  const std::pair<RockAgainstClass, const char*> rocks[] = {
      {RockAgainstClass::inside, "inside"},
      {RockAgainstClass::too_fine, "too-fine"},
      {RockAgainstClass::too_coarse, "too-coarse"}};
  for (const auto& [against, name] : rocks) {
    const auto pile = pile_of(options, against);
    if (!pile) return refuse(pile.problems());
    PictureRequest request;
    request.seed = options.seed;
    request.view = options.view;
    request.view.frame_in_d50 = static_cast<float>(frame.meters()) / pile->d50();
    request.look = plain_look(options.seed);
    request.effort = options.effort;
    const PileSurface surface = survey_surface(*pile);
    if (!take(*pile, surface, options, request, name)) return failed;
    const std::filesystem::path truth = std::filesystem::path(options.out) / name;
    if (!write_json(pile_truth(*pile, surface), truth.string() + "-pile.json")) return failed;
  }
  return done;
}

/// The network to try: the one that is built in, or that of a file.
Expected<OutlineNetwork> network_of(const Options& options) {
  if (options.weights.empty()) return OutlineNetwork::read(embedded_outline_weights());
  std::ifstream file(options.weights, std::ios::binary);
  std::ostringstream bytes;
  bytes << file.rdbuf();
  return OutlineNetwork::read(bytes.str());
}

std::vector<std::string> pile_folders(const std::string& from) {
  std::vector<std::string> folders;
  std::error_code error;
  for (const auto& entry : std::filesystem::directory_iterator(from, error)) {
    if (std::filesystem::exists(entry.path() / "pile.json"))
      folders.push_back(entry.path().string());
  }
  std::sort(folders.begin(), folders.end());
  return folders;
}

/// Tries the network on each pile, as many at once as there are threads.
Expected<std::vector<TriedPile>> tried_piles(const std::vector<std::string>& folders,
                                             const OutlineNetwork& network, int threads) {
  std::vector<TriedPile> tried(folders.size());
  Problems problems;
  std::mutex reporting;
  std::atomic<std::size_t> next{0};
  const auto work = [&] {
    for (std::size_t i = next++; i < folders.size(); i = next++) {
      const auto pile = read_trial_pile(folders[i]);
      if (pile) tried[i] = try_pile(*pile, network);
      const std::scoped_lock lock(reporting);
      if (pile) {
        std::printf("%s: %zu pictures\n", pile->name.c_str(), pile->pictures.size());
        std::fflush(stdout);
      } else {
        problems.insert(problems.end(), pile.problems().begin(), pile.problems().end());
      }
    }
  };
  {
    std::vector<std::jthread> workers;
    for (int i = 0; i < threads; ++i) workers.emplace_back(work);
  }
  if (!problems.empty()) return problems;
  return tried;
}

/// Writes a file of the trial by `write`; says so where it cannot.
template <class Write>
bool write_of_trial(const Options& options, const char* name, Write write) {
  std::ofstream file(std::filesystem::path(options.out) / name, std::ios::binary);
  write(file);
  file.close();
  if (file) return true;
  std::fprintf(stderr, "%s could not be written in %s.\n", name, options.out.c_str());
  return false;
}

/// Tries the network on every pile in the folder that is named.
Expected<std::vector<TriedPile>> piles_tried(const Options& options) {
  const auto network = network_of(options);
  if (!network) return network.problems();
  const auto folders = pile_folders(options.from);
  if (folders.empty()) {
    return Problem{"no-piles", "There is no pile in the folder.", options.from, "",
                   "a folder of folders that `piles make` wrote"};
  }
  return tried_piles(folders, *network, options.effort.threads);
}

/// Judges what was tried, now or before, and writes the page and the tables.
int make_trial(const Options& options) {
  const auto tried = options.tried.empty() ? piles_tried(options) : read_tried(options.tried);
  if (!tried) return refuse(tried.problems());
  const bool page = write_of_trial(options, "photo-outlines.md",
                                   [&](std::ostream& out) { out << trial_page(*tried); });
  if (!page || !options.tried.empty()) return page ? done : failed;
  const bool written =
      write_of_trial(options, "tried.json", [&](std::ostream& out) { write_tried(out, *tried); }) &&
      write_of_trial(options, "pictures.csv",
                     [&](std::ostream& out) { write_pictures(out, *tried); }) &&
      write_of_trial(options, "pieces.csv", [&](std::ostream& out) { write_pieces(out, *tried); });
  return written ? done : failed;
}

int run(const std::vector<std::string>& line) {
  const auto options = read_options(line);
  if (!options) return refuse(options.problems());
  if (options->command == Options::Command::help) {
    std::fputs(help_text, stdout);
    return done;
  }
  std::error_code error;
  std::filesystem::create_directories(options->out, error);
  if (error) {
    std::fprintf(stderr, "The folder %s cannot be made.\n", options->out.c_str());
    return failed;
  }
  if (options->command == Options::Command::trial) return make_trial(*options);
  return options->command == Options::Command::make ? make(*options) : make_reference(*options);
}

}  // namespace
}  // namespace proofstone::piles

int main(int count, char** words) {
  return proofstone::piles::run(std::vector<std::string>(words + 1, words + count));
}
