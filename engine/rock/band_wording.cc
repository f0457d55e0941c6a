#include "engine/rock/band_wording.h"

#include <array>
#include <nlohmann/json.hpp>
#include <utility>

namespace proofstone {
namespace {

constexpr std::array wordings{"percent_windows", "size_windows", "mass_windows",
                              "mass_percent_windows"};

double read_percent(FieldReader& reader, const std::string& field) {
  if (!reader.required(field)) return 0;
  return read_plain_number(reader, field, 100).value_or(0);
}

/// The percents of a window that is stated at a size or a mass; percents larger are turned round.
template <class Window>
void read_percents(FieldReader& reader, Window& window) {
  window.worded_as_larger = reader.has("min_percent_larger") || reader.has("max_percent_larger");
  if (window.worded_as_larger) {
    const double least_larger = read_percent(reader, "min_percent_larger");
    const double most_larger = read_percent(reader, "max_percent_larger");
    window.min_percent = 100 - most_larger;
    window.max_percent = 100 - least_larger;
  } else {
    window.min_percent = read_percent(reader, "min_percent");
    window.max_percent = read_percent(reader, "max_percent");
  }
  if (reader.has("percent_of")) {
    window.percent_of = reader.choice<PercentOf>(
        "percent_of",
        {{std::string(percent_of_name(PercentOf::mass)), PercentOf::mass},
         {std::string(percent_of_name(PercentOf::count)), PercentOf::count}},
        std::nullopt);
  }
}

PercentWindow read_percent_window(FieldReader& reader) {
  PercentWindow window;
  window.size = reader.required_quantity<Length>("size");
  read_percents(reader, window);
  return window;
}

MassPercentWindow read_mass_percent_window(FieldReader& reader) {
  MassPercentWindow window;
  window.mass = reader.required_quantity<Mass>("mass");
  read_percents(reader, window);
  return window;
}

SizeWindow read_size_window(FieldReader& reader) {
  SizeWindow window;
  window.percent = read_percent(reader, "percent");
  window.min_size = reader.optional_quantity<Length>("min_size");
  window.max_size = reader.optional_quantity<Length>("max_size");
  return window;
}

MassWindow read_mass_window(FieldReader& reader) {
  MassWindow window;
  window.percent = read_percent(reader, "percent");
  window.min_mass = reader.optional_quantity<Mass>("min_mass");
  window.max_mass = reader.optional_quantity<Mass>("max_mass");
  return window;
}

StatedSize read_stated_size(FieldReader& reader) {
  StatedSize stated;
  stated.percent_smaller = read_percent(reader, "percent");
  stated.least = reader.required_positive<Length>("min_size", "This size is not above zero.");
  return stated;
}

template <class Window>
std::vector<Window> read_list(FieldReader& reader, const std::string& field,
                              Window (*read)(FieldReader&), Problems& problems) {
  std::vector<Window> windows;
  const auto* list = reader.optional_list(field);
  if (!list) return windows;
  for (std::size_t i = 0; i < list->size(); ++i) {
    FieldReader window((*list)[i], reader.pointer() + "/" + field + "/" + std::to_string(i),
                       problems);
    windows.push_back(read(window));
    window.finish();
  }
  return windows;
}

/// The wording a class uses, when it is exactly one and its masses have a density.
std::optional<std::string> wording_used(FieldReader& reader,
                                        const std::optional<Density>& rock_density,
                                        Problems& problems) {
  std::optional<std::string> used;
  int count = 0;
  for (const char* wording : wordings) {
    if (!reader.has(wording)) continue;
    used = wording;
    ++count;
  }
  if (reader.is_object() && count != 1) {
    problems.push_back({"one-band",
                        "A class states its band in exactly one way.",
                        {},
                        reader.pointer(),
                        "one of percent_windows, size_windows, mass_windows, "
                        "mass_percent_windows"});
  }
  for (const char* wording : {"mass_windows", "mass_percent_windows"}) {
    if (!reader.has(wording) || rock_density) continue;
    problems.push_back({"missing-field",
                        "Masses need the density of the rock.",
                        {},
                        reader.pointer() + "/" + wording,
                        "rock_density beside the classes"});
  }
  return used;
}

}  // namespace

std::optional<double> read_plain_number(FieldReader& reader, const std::string& field,
                                        double at_most) {
  const auto* value = reader.optional(field);
  if (!value) return std::nullopt;
  if (value->is_number() && value->get<double>() >= 0 && value->get<double>() <= at_most) {
    return value->get<double>();
  }
  reader.report("not-a-number", "A plain number belongs here.", field,
                "a number from 0 to " + significant(at_most, 4));
  return std::nullopt;
}

std::vector<StatedSize> read_stated_sizes(FieldReader& reader, Problems& problems) {
  return read_list(reader, "stated_sizes", read_stated_size, problems);
}

std::optional<GradationBand> read_band_wording(FieldReader& reader, const GradationBasis& basis,
                                               const std::optional<Density>& rock_density,
                                               Problems& problems) {
  const std::size_t problems_before = problems.size();
  auto percents = read_list(reader, "percent_windows", read_percent_window, problems);
  auto sizes = read_list(reader, "size_windows", read_size_window, problems);
  const auto masses = read_list(reader, "mass_windows", read_mass_window, problems);
  const auto mass_percents =
      read_list(reader, "mass_percent_windows", read_mass_percent_window, problems);
  const auto used = wording_used(reader, rock_density, problems);
  if (problems.size() > problems_before || !used) return std::nullopt;

  const Density density = rock_density.value_or(Density{});
  auto band = [&]() -> Expected<GradationBand> {
    if (*used == "percent_windows") {
      return GradationBand::from_percent_windows(std::move(percents), basis);
    }
    if (*used == "size_windows") return GradationBand::from_size_windows(std::move(sizes), basis);
    if (*used == "mass_windows") {
      return GradationBand::from_mass_windows(masses, density, basis.percent);
    }
    return GradationBand::from_mass_percent_windows(mass_percents, density, basis.percent);
  }();
  if (band) return *band;
  for (auto& problem : located_under(band.problems(), reader.pointer() + "/" + *used)) {
    problems.push_back(std::move(problem));
  }
  return std::nullopt;
}

}  // namespace proofstone
