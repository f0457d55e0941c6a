#include "cli/arguments.h"

#include <fmt/format.h>

namespace proofstone {
namespace {

const std::set<std::string>& options_with_value() {
  static const std::set<std::string> names = {"units",
                                              "xlsx",
                                              "csv",
                                              "source",
                                              "class",
                                              "angularity",
                                              "specific-gravity",
                                              "findings",
                                              "report",
                                              "out",
                                              "elevation-unit",
                                              "vertical-datum",
                                              "starts",
                                              "energy-slope",
                                              "roughness",
                                              "roughness-field",
                                              "layer",
                                              "name-field",
                                              "left-bank-field",
                                              "right-bank-field",
                                              "surface",
                                              "runs",
                                              "zone",
                                              "lot",
                                              "day",
                                              "clock",
                                              "edge",
                                              "mass",
                                              "margin",
                                              "buckets",
                                              "scalp",
                                              "owners-risk",
                                              "producers-risk",
                                              "good-by",
                                              "stones-in-load",
                                              "alike-in-load"};
  return names;
}

const std::set<std::string>& known_flags() {
  static const std::set<std::string> names = {"json", "gate", "without-positions"};
  return names;
}

Problem usage(const std::string& what) {
  return {"usage", what, "", "",
          "--units us|si, --findings FILE, --report FILE, --json, --gate, and what `proofstone "
          "help` lists under a command"};
}

}  // namespace

std::string Arguments::value(const std::string& name, const std::string& otherwise) const {
  const auto found = values.find(name);
  return found == values.end() ? otherwise : found->second;
}

Expected<Arguments> take_apart(const std::vector<std::string>& line) {
  Arguments arguments;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const auto& word = line[i];
    if (word.rfind("--", 0) != 0) {
      if (arguments.command.empty()) {
        arguments.command = word;
      } else {
        arguments.words.push_back(word);
      }
      continue;
    }
    const auto name = word.substr(2);
    if (name == "help") {
      arguments.command = "help";
      return arguments;
    }
    if (known_flags().contains(name)) {
      arguments.flags.insert(name);
    } else if (options_with_value().contains(name)) {
      if (i + 1 == line.size()) return usage(fmt::format("{} needs a value.", word));
      if (!arguments.values.emplace(name, line[i + 1]).second) {
        return usage(fmt::format("{} stands twice.", word));
      }
      ++i;
    } else {
      return usage(fmt::format("The option {} is not known.", word));
    }
  }
  return arguments;
}

}  // namespace proofstone
