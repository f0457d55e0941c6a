#include "piles/options.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <functional>
#include <map>
#include <optional>

#include "engine/quantity/measure.h"

namespace proofstone::piles {

const char* const help_text =
    R"(piles: heaps of rock whose every stone is known, and pictures of them

  piles make [--layer | --heap | --truck] --out DIR     a pile, its pictures and what is true of them
  piles reference --class ID --out DIR                  rock inside a class, too fine and too coarse,
                                                        beside a one-foot rule
  piles trial --from DIR --out DIR                      outlines found by the network against what is true of
                                                        the piles in DIR; writes photo-outlines.md,
                                                        tried.json and, to be fitted, pictures.csv and
                                                        pieces.csv
  piles trial --tried FILE --out DIR                    the same page from tried.json, without the piles
  piles help                                            this text

What the pile is made of
  --class ID          a class of `proofstone classes`; with --rock inside | too-fine | too-coarse
  --spread WORD       very-uniform | class-type | broad | very-broad, with --d50 "12 in"
  --mix WORD          quarried | slabs | river | mixed | splinters
  --stones N          20 to 5000 (500)
  --slope "2H:1V"     of a layer, spread flat and then tilted
  --seed N            another pile

Pictures
  --pictures N        0 to 100 (2), in turn square to the face and oblique
  --view WORD         straight | oblique | both
  --weather WORD      any | sun | overcast | dusty | wet | snow | mossy
  --frame N           width of a picture in D50, 3 to 30 (7.5)
  --width N           pixels, 64 to 4096 (1024); the height is three quarters of it
  --samples N         rays a pixel, 1 to 256 (12)
  --threads N         1 to 64 (1)
  --linear            also writes each picture in linear light, 16 bits a channel
  --no-balls          leaves the 12-inch balls away
  --apart             a layer with as many stones as it takes for four pictures of a kind of view side by side

Trial
  --weights FILE      another network than the one that is built in
)";

namespace {

using Setting = std::function<bool(Options&, const std::string&)>;

std::optional<double> number_in(const std::string& text, double low, double high) {
  const auto parsed = parse_measure(text, QuantityKind::dimensionless);
  if (!parsed || !(parsed->si >= low && parsed->si <= high)) return std::nullopt;
  return parsed->si;
}

/// Puts a whole number from low to high where `member` says.
template <class Member>
Setting whole(double low, double high, Member member) {
  return [=](Options& options, const std::string& text) {
    const auto number = number_in(text, low, high);
    if (!number || *number != static_cast<double>(static_cast<long>(*number))) return false;
    member(options, static_cast<int>(*number));
    return true;
  };
}

/// Puts what a word stands for where `member` says.
template <class Value, std::size_t count, class Member>
Setting word(std::array<std::pair<const char*, Value>, count> words, Member member) {
  return [=](Options& options, const std::string& text) {
    for (const auto& [name, value] : words) {
      if (text != name) continue;
      member(options) = value;
      return true;
    }
    return false;
  };
}

bool set_slope(Options& options, const std::string& text) {
  const auto slope = parse_measure(text, QuantityKind::slope);
  if (!slope || !(slope->si >= 0 && slope->si <= 1)) return false;
  options.place.slope = static_cast<float>(std::atan(slope->si));
  return true;
}

bool set_d50(Options& options, const std::string& text) {
  const auto size = parse_quantity<Length>(text);
  if (!size || !(size->meters() >= 0.02 && size->meters() <= 3)) return false;
  options.d50 = *size;
  return true;
}

bool set_view(Options& options, const std::string& text) {
  options.straight = text != "oblique";
  options.oblique = text != "straight";
  return text == "straight" || text == "oblique" || text == "both";
}

bool set_weather(Options& options, const std::string& text) {
  options.weather = text;
  constexpr std::array<const char*, 7> words{"any", "sun",  "overcast", "dusty",
                                             "wet", "snow", "mossy"};
  return std::find(words.begin(), words.end(), text) != words.end();
}

bool set_width(Options& options, int pixels) {
  options.view.width = pixels;
  options.view.height = pixels * 3 / 4;
  return true;
}

const std::map<std::string, Setting>& settings() {
  using Against = RockAgainstClass;
  static const std::map<std::string, Setting> all{
      {"out",
       [](Options& o, const std::string& text) {
         o.out = text;
         return !text.empty();
       }},
      {"from",
       [](Options& o, const std::string& text) {
         o.from = text;
         return !text.empty();
       }},
      {"weights",
       [](Options& o, const std::string& text) {
         o.weights = text;
         return !text.empty();
       }},
      {"tried",
       [](Options& o, const std::string& text) {
         o.tried = text;
         return !text.empty();
       }},
      {"class",
       [](Options& o, const std::string& text) {
         o.rock_class = text;
         return find_rock_class(text) != nullptr;
       }},
      {"rock", word(std::array{std::pair{"inside", Against::inside},
                               std::pair{"too-fine", Against::too_fine},
                               std::pair{"too-coarse", Against::too_coarse}},
                    [](Options& o) -> Against& { return o.against; })},
      {"spread",
       [](Options& o, const std::string& text) {
         o.spread = text;
         return bool(AskedGradation::of_spread(text, o.d50));
       }},
      {"d50", set_d50},
      {"mix",
       word(std::array{std::pair{"quarried", RockMix::quarried}, std::pair{"slabs", RockMix::slabs},
                       std::pair{"river", RockMix::river}, std::pair{"mixed", RockMix::mixed},
                       std::pair{"splinters", RockMix::splinters}},
            [](Options& o) -> RockMix& { return o.mix; })},
      {"stones", whole(20, 5000, [](Options& o, int n) { o.stones = n; })},
      {"slope", set_slope},
      {"seed", whole(0, 2000000000, [](Options& o, int n) { o.seed = static_cast<unsigned>(n); })},
      {"pictures", whole(0, 100, [](Options& o, int n) { o.pictures = n; })},
      {"view", set_view},
      {"weather", set_weather},
      {"frame",
       [](Options& o, const std::string& text) {
         const auto number = number_in(text, 3, 30);
         if (number) o.view.frame_in_d50 = static_cast<float>(*number);
         return number.has_value();
       }},
      {"width", whole(64, 4096, set_width)},
      {"samples", whole(1, 256, [](Options& o, int n) { o.effort.samples = n; })},
      {"threads", whole(1, 64, [](Options& o, int n) { o.effort.threads = n; })},
  };
  return all;
}

/// Options that stand by themselves.
bool set_flag(Options& options, const std::string& name) {
  if (name == "layer")
    options.place.kind = PileKind::layer;
  else if (name == "heap")
    options.place.kind = PileKind::heap;
  else if (name == "truck")
    options.place.kind = PileKind::truck;
  else if (name == "linear")
    options.linear = true;
  else if (name == "no-balls")
    options.balls = false;
  else if (name == "apart")
    options.apart = true;
  else
    return false;
  return true;
}

Problem usage(const std::string& what) {
  return {"usage", what, "", "", "what `piles help` lists"};
}

std::optional<Options::Command> command_of(const std::string& word) {
  if (word == "make") return Options::Command::make;
  if (word == "reference") return Options::Command::reference;
  if (word == "trial") return Options::Command::trial;
  if (word == "help" || word == "--help") return Options::Command::help;
  return std::nullopt;
}

}  // namespace

Expected<Options> read_options(const std::vector<std::string>& line) {
  Options options;
  if (line.empty()) return options;
  const auto command = command_of(line[0]);
  if (!command) return usage("The command \"" + line[0] + "\" is not known.");
  options.command = *command;
  for (std::size_t i = 1; i < line.size(); ++i) {
    const std::string name = line[i].rfind("--", 0) == 0 ? line[i].substr(2) : "";
    if (set_flag(options, name)) continue;
    const auto setting = settings().find(name);
    if (setting == settings().end()) return usage("\"" + line[i] + "\" is not known.");
    if (i + 1 == line.size()) return usage("--" + name + " needs a value.");
    const std::string& value = line[++i];
    if (!setting->second(options, value)) {
      return usage("--" + name + " cannot be \"" + value + "\".");
    }
  }
  if (options.command == Options::Command::help) return options;
  if (options.out.empty()) return usage("--out DIR says where to write; it is missing.");
  if (options.command == Options::Command::trial && options.from.empty() == options.tried.empty()) {
    return usage(
        "`piles trial` needs --from DIR, a folder of piles with their pictures, or --tried FILE, "
        "and not both.");
  }
  if (options.command == Options::Command::reference && options.rock_class.empty()) {
    return usage("`piles reference` needs --class ID.");
  }
  if (options.place.slope > 0 && options.place.kind != PileKind::layer) {
    return usage("--slope goes with --layer.");
  }
  if (options.apart && options.place.kind != PileKind::layer) {
    return usage("--apart goes with --layer.");
  }
  return options;
}

Expected<AskedGradation> asked_gradation(const Options& options, RockAgainstClass against) {
  if (options.rock_class.empty()) return AskedGradation::of_spread(options.spread, options.d50);
  return AskedGradation::of_class(*find_rock_class(options.rock_class), against);
}

}  // namespace proofstone::piles
