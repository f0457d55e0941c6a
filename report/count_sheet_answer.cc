#include "report/count_sheet_answer.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "engine/acceptance/sorting_sizes.h"
#include "engine/finding/quoted_text.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// Sizes are whole steps of this unit, so that the text is the size.
std::string number_text(Length size, UnitSystem units) {
  return units == UnitSystem::us_customary ? fmt::format("{:.6g}", size.inches())
                                           : fmt::format("{:.6g}", size.millimeters());
}

json bins_json(const std::vector<Length>& sizes, UnitSystem units) {
  const std::string unit = units == UnitSystem::us_customary ? "in" : "mm";
  json bins = json::array();
  std::string lower;
  for (const auto size : sizes) {
    const auto upper = number_text(size, units);
    json bin = {{"not_larger_than", upper + " " + unit}};
    if (!lower.empty()) bin["larger_than"] = lower + " " + unit;
    bin["text"] = lower.empty() ? fmt::format("up to {} {}", upper, unit)
                                : fmt::format("{} to {} {}", lower, upper, unit);
    bins.push_back(std::move(bin));
    lower = upper;
  }
  return bins;
}

json pickings_json() {
  json pickings = json::array();
  for (const auto& [word, meaning] : {
           std::pair{"grid",
                     "The stone under every knot of a net over the face of the pile, or under the "
                     "toe at every so many steps of a random walk over it"},
           std::pair{"line", "Every stone that a tape laid over the face touches"},
           std::pair{"area", "Every stone at the surface of a marked piece of the face"},
           std::pair{"whole", "Every stone of a load, or of a pile spread out"},
       }) {
    pickings.push_back({{"word", word}, {"meaning", meaning}});
  }
  return pickings;
}

}  // namespace

Problem no_such_lot(const Site& site, const std::string& lot) {
  std::string known;
  for (const auto& [id, one] : site.lots) known += (known.empty() ? "" : ", ") + id;
  return {"no-lot", fmt::format("There is no lot {}.", in_quotes(lot)), "", "/lot",
          known.empty() ? "a document with lots" : known};
}

Expected<json> count_sheet_answer(const Site& site, const std::string& lot, UnitSystem units) {
  const auto found = site.lots.find(lot);
  if (found == site.lots.end()) return no_such_lot(site, lot);
  const auto& ordered = *find_class(site, found->second.rock_class);
  return json{{"lot", lot},
              {"name", found->second.name},
              {"class", ordered.name},
              {"bins", bins_json(sorting_sizes(ordered.band, units), units)},
              {"pickings", pickings_json()}};
}

}  // namespace proofstone
