#include "report/specified_filter_html.h"

#include <fmt/format.h>

#include "engine/filter/geotextile_strength.h"
#include "engine/site/filter_pairs.h"
#include "report/html_table.h"
#include "report/markup.h"

namespace proofstone {
namespace {

std::string place_text(const FilterPlace& place, const Wording& wording) {
  auto text = place.zone;
  if (!place.from_the_soil.empty()) text += ", " + place.from_the_soil;
  if (place.thickness) {
    text += fmt::format(": {} thick, square to the slope", wording.rock(*place.thickness));
  }
  return text + (place.under_water ? ", placed under water" : ", placed in the dry");
}

std::string passing_text(const SpecifiedSieve& sieve, bool is_band) {
  const auto percent = [](double value) { return significant(value, 3) + " %"; };
  if (!is_band) return percent(sieve.least.value_or(sieve.most.value_or(0)));
  if (sieve.least && sieve.most) {
    return *sieve.least >= *sieve.most
               ? percent(*sieve.most)
               : fmt::format("{} to {}", significant(*sieve.least, 3), percent(*sieve.most));
  }
  return sieve.least ? "at least " + percent(*sieve.least)
                     : "at most " + percent(sieve.most.value_or(100));
}

std::string bedding_section(const SpecifiedBedding& bedding, const Wording& wording) {
  auto html =
      fmt::format("<section>\n<h2>{}</h2>\n<p class=\"kind\">Bedding</p>\n", escaped(bedding.name));
  std::vector<std::string> places;
  for (const auto& place : bedding.places) places.push_back(place_text(place, wording));
  html += html_list(places);
  html += bedding.is_band
              ? "<h3>Gradation</h3>\n"
              : "<h3>Gradation that the design was made with</h3>\n<p>Another one is judged anew "
                "between the soil and the rock before it is laid; the designer is to state what it "
                "may differ.</p>\n";
  std::vector<std::vector<std::string>> rows;
  for (const auto& sieve : bedding.sieves) {
    rows.push_back({grain_text(sieve.size, wording), passing_text(sieve, bedding.is_band)});
  }
  html += html_table({"Sieve", "Passing by mass"}, rows);
  html += html_list(
      {"Sieve analysis of what is delivered, washed over the No. 200 sieve, by ASTM C136 and C117 "
       "(from memory; confirm): "
       "one before the first load and one at every change of the source (common practice).",
       "Handled so that large and small stay together: spread moist, not dropped, not pushed far "
       "(common practice)."});
  return html + fmt::format("<p class=\"source\">{}</p>\n</section>\n",
                            escaped(bedding.source.sentence()));
}

const char* fabric_phrase(Fabric fabric) {
  switch (fabric) {
    case Fabric::nonwoven:
      return "nonwoven";
    case Fabric::woven_monofilament:
      return "woven of monofilament";
    case Fabric::woven_slit_film:
      break;
  }
  return "woven of slit film";
}

std::string fabric_section(const SpecifiedFabric& specified, const Wording& wording) {
  const auto& fabric = specified.fabric;
  const std::string open = "not stated: the designer is to state it";
  auto html = fmt::format("<section>\n<h2>Geotextile of {}</h2>\n<p class=\"kind\">{}</p>\n",
                          escaped(specified.place.zone), fabric_phrase(fabric.fabric));
  html += html_list({place_text(specified.place, wording)});
  html += html_table(
      {"Property", "Asked for", "By"},
      {{"Apparent opening (AOS, O95)",
        "at most " + wording.shown(measure(fabric.opening_size), LengthUse::grain),
        "ASTM D4751, largest average of a roll (from memory; confirm)"},
       {"Permittivity", fabric.permittivity ? "at least " + wording.of(*fabric.permittivity) : open,
        "ASTM D4491, least average of a roll (from memory; confirm)"},
       {"Strength",
        fabric.strength_class ? fmt::format("Class {}: {}", *fabric.strength_class,
                                            strength_text(*fabric.strength_class, fabric.fabric))
                              : open,
        "AASHTO M 288, least averages of a roll (from memory; confirm)"}});
  std::vector<std::string> rules{
      "Every roll is labelled, and its certificate states these values (common practice).",
      "Laid loose, upstream over downstream, keyed at toe and top; no stone is pushed across it."};
  if (fabric.drop_height) {
    rules.push_back(
        fmt::format("Stones fall on it from at most {}.", wording.ground(*fabric.drop_height)));
  }
  return html + html_list(rules) + "</section>\n";
}

}  // namespace

std::string specified_filters_html(const SpecifiedFilters& filters, const Wording& wording) {
  std::string html;
  for (const auto& bedding : filters.beddings) html += bedding_section(bedding, wording);
  for (const auto& fabric : filters.fabrics) html += fabric_section(fabric, wording);
  return html;
}

}  // namespace proofstone
