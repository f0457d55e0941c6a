#pragma once

#include <string>
#include <vector>

#include "piles/picture.h"

namespace proofstone::piles {

/// A command line of `piles` that was understood.
struct Options {
  enum class Command { help, make, reference, trial };
  Command command = Command::help;
  std::string out;
  std::string from;     ///< folder of piles to try the outlines on
  std::string weights;  ///< file of another network than the one that is built in; may be empty
  std::string tried;    ///< file of a trial to judge again; may be empty

  std::string rock_class;
  RockAgainstClass against = RockAgainstClass::inside;
  std::string spread = "class-type";
  Length d50 = Length::inches(12);
  Place place;
  RockMix mix = RockMix::quarried;
  int stones = 500;
  unsigned seed = 1;

  int pictures = 2;
  bool straight = true;
  bool oblique = true;
  std::string weather = "any";
  ViewRequest view;
  RenderEffort effort;
  bool linear = false;
  bool balls = true;
  bool apart = false;  ///< pictures of one kind of view lie side by side, four to a layer
};

/// What `piles help` says.
extern const char* const help_text;

/// Problems: an unknown command or option, an option without its value, a value that is not
/// allowed.
Expected<Options> read_options(const std::vector<std::string>& line);

/// What the pile of these options is made of.
Expected<AskedGradation> asked_gradation(const Options& options, RockAgainstClass against);

}  // namespace proofstone::piles
