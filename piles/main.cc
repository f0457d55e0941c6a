#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>

#include "photography/outline_weights.h"
#include "piles/noise.h"
#include "piles/options.h"
#include "piles/trial_page.h"
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
bool write_picture(const Picture& picture, const Options& options, unsigned seed,
                   const std::string& name) {
  const std::string path = (std::filesystem::path(options.out) / name).string();
  const Development& how = picture.look.development;
  const float exposure = automatic_exposure(picture.light);
  return write_jpeg(develop(picture.light, how, seed), how.jpeg_quality, path + ".jpg") &&
         write_mask_png(picture.mask, path + "-stones.png") &&
         write_json(picture_truth(picture, exposure), path + ".json") &&
         (!options.linear || write_linear_png(picture.light, exposure, path + "-linear.png"));
}

Expected<Pile> pile_of(const Options& options, RockAgainstClass against) {
  auto gradation = asked_gradation(options, against);
  if (!gradation) return gradation.problems();
  return make_pile(
      {std::move(*gradation), options.place, options.mix, options.stones, options.seed});
}

bool take(const Pile& pile, const PileSurface& surface, const Options& options,
          const PictureRequest& request, const std::string& name) {
  const auto start = std::chrono::steady_clock::now();
  const Picture picture = take_picture(pile, surface, request);
  std::printf("%s: %.1f s\n", name.c_str(), seconds_since(start));
  std::fflush(stdout);
  if (write_picture(picture, options, request.seed, name)) return true;
  std::fprintf(stderr, "%s could not be written in %s.\n", name.c_str(), options.out.c_str());
  return false;
}

int make(const Options& options) {
  auto start = std::chrono::steady_clock::now();
  const auto pile = pile_of(options, options.against);
  if (!pile) return refuse(pile.problems());
  const PileSurface surface = survey_surface(*pile);
  std::printf("pile of %d stones: %.1f s\n", options.stones, seconds_since(start));
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

/// Tries the network on every pile in a folder, and writes the page.
int make_trial(const Options& options) {
  const auto network = OutlineNetwork::read(embedded_outline_weights());
  if (!network) return refuse(network.problems());
  std::vector<std::string> folders;
  std::error_code error;
  for (const auto& entry : std::filesystem::directory_iterator(options.from, error)) {
    if (std::filesystem::exists(entry.path() / "pile.json"))
      folders.push_back(entry.path().string());
  }
  std::sort(folders.begin(), folders.end());
  std::vector<TriedPile> tried;
  for (const auto& folder : folders) {
    const auto pile = read_trial_pile(folder);
    if (!pile) return refuse(pile.problems());
    tried.push_back(try_pile(*pile, *network));
    std::printf("%s: %zu pictures\n", pile->name.c_str(), pile->pictures.size());
    std::fflush(stdout);
  }
  if (tried.empty()) {
    std::fprintf(stderr, "There is no pile in %s.\n", options.from.c_str());
    return failed;
  }
  std::ofstream page(std::filesystem::path(options.out) / "photo-outlines.md", std::ios::binary);
  page << trial_page(tried);
  page.close();
  if (page) return done;
  std::fprintf(stderr, "photo-outlines.md could not be written in %s.\n", options.out.c_str());
  return failed;
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
