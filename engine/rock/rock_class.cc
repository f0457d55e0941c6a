#include "engine/rock/rock_class.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "engine/rock/embedded_catalog.h"

namespace proofstone {
namespace {

/// The data come with the engine and are tested with it, so a fault in them is a fault of ours.
std::vector<RockClass> classes_of_catalog() {
  std::vector<RockClass> all;
  for (const auto& file : embedded_catalog()) {
    if (file.name.substr(0, 13) != "rock-classes-") continue;
    auto classes = read_rock_classes(file.text);
    if (!classes) {
      throw std::logic_error(std::string(file.name) + ": " + classes.problems().front().sentence());
    }
    for (auto& rock_class : *classes) all.push_back(std::move(rock_class));
  }
  return all;
}

}  // namespace

namespace {

Expected<Length> least_size_as_stated(const RockClass& rock_class, double percent) {
  const auto& stated = rock_class.stated_sizes;
  const auto printed = std::find_if(stated.begin(), stated.end(), [&](const StatedSize& size) {
    return std::abs(size.percent_smaller - percent) < 1e-9;
  });
  if (printed != stated.end()) return printed->least;
  return rock_class.band.smallest_size_at(percent);
}

}  // namespace

Expected<Length> least_size_of(const RockClass& rock_class, double percent,
                               std::optional<Density> rock) {
  auto size = least_size_as_stated(rock_class, percent);
  if (!size || !rock || !rock_class.mass_density) return size;
  return *size * std::pow(*rock_class.mass_density / *rock, 1.0 / 3);
}

const std::vector<RockClass>& class_catalog() {
  static const std::vector<RockClass> catalog = classes_of_catalog();
  return catalog;
}

const RockClass* find_rock_class(std::string_view id) {
  const auto& catalog = class_catalog();
  const auto found = std::find_if(catalog.begin(), catalog.end(),
                                  [&](const RockClass& entry) { return entry.id == id; });
  return found == catalog.end() ? nullptr : &*found;
}

}  // namespace proofstone
