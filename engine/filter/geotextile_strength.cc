#include "engine/filter/geotextile_strength.h"

#include <fmt/format.h>

#include "engine/method/typed_method.h"
#include "engine/quantity/rounding.h"

namespace proofstone {
namespace {

constexpr double heavy_stone = 100;  // kg
constexpr double high_drop = 1;      // m

TypedMethod<GeotextileStrengthInputs, GeotextileStrengthResult> build_geotextile_strength() {
  MethodDescription about;
  about.id = "geotextile-strength";
  about.title = "Strength class of a geotextile";
  about.purpose = "Which strength class a fabric needs to survive the placing of rock on it.";
  about.group = MethodGroup::filter;
  about.sources = {
      {"AASHTO M 288", "classes for permanent erosion control", SourceStanding::memory}};
  about.cautions = {
      "Stones above 100 kg want a cushion of 4 to 6 in of bedding on the fabric "
      "(common practice).",
      "At least half the strength must be left after 500 hours of ultraviolet light "
      "(from memory)."};
  TypedMethod<GeotextileStrengthInputs, GeotextileStrengthResult> method(about,
                                                                         &geotextile_strength);
  method.required({"stone_mass", "M", "of the largest stones"},
                  &GeotextileStrengthInputs::stone_mass, unit::kilogram,
                  AllowedRange::positive_to(50000));
  method.defaulted({"drop_height", "h", "from which stones fall"},
                   &GeotextileStrengthInputs::drop_height, unit::foot,
                   AllowedRange::between(0, 30));
  method.choice({"fabric", "", "kind of fabric"}, &GeotextileStrengthInputs::fabric,
                {ChoiceOption<Fabric>{Fabric::nonwoven, "nonwoven", "nonwoven"},
                 {Fabric::woven_monofilament, "woven-monofilament", "woven, monofilament"},
                 {Fabric::woven_slit_film, "woven-slit-film", "woven, slit film: not allowed"}});
  method.choice({"bedding", "", "a layer of bedding between fabric and rock"},
                &GeotextileStrengthInputs::bedding,
                {ChoiceOption<GeotextileStrengthInputs::Bedding>{
                     GeotextileStrengthInputs::Bedding::no, "no", "rock on the fabric"},
                 {GeotextileStrengthInputs::Bedding::yes, "yes", "bedding on the fabric"}});
  method.output({"strength_class", "", "class needed; 1 is the strongest"},
                &GeotextileStrengthResult::strength_class, unit::number);
  return method;
}

}  // namespace

const std::array<StrengthClass, 3>& strength_classes() {
  static const std::array<StrengthClass, 3> classes{
      {{1, {1400, 900}, {1260, 810}, {500, 350}, {2750, 1925}},
       {2, {1100, 700}, {990, 630}, {400, 250}, {2200, 1375}},
       {3, {800, 500}, {720, 450}, {300, 180}, {1650, 990}}}};
  return classes;
}

std::string strength_text(int strength_class, Fabric fabric) {
  const auto& row = strength_classes().at(static_cast<std::size_t>(strength_class - 1));
  const std::size_t column = fabric == Fabric::nonwoven ? 1 : 0;
  const bool relaxed = strength_class == 2 && fabric == Fabric::woven_monofilament;
  return fmt::format("grab {} N, sewn seam {} N, tear {} N, puncture {} N", row.grab.at(column),
                     row.seam.at(column), relaxed ? 250 : row.tear.at(column),
                     row.puncture.at(column));
}

Expected<GeotextileStrengthResult> geotextile_strength(const GeotextileStrengthInputs& in,
                                                       Steps& steps) {
  if (in.fabric == Fabric::woven_slit_film) {
    return Problem{"not-allowed", "Woven slit film is not allowed under permanent rock.", "",
                   "/fabric", "nonwoven, or woven of monofilament"};
  }
  const bool light = in.stone_mass.kilograms() <= heavy_stone * (1 + rounding);
  const bool gentle = in.drop_height.meters() <= high_drop * (1 + rounding);
  const bool relaxed = in.bedding == GeotextileStrengthInputs::Bedding::yes || (light && gentle);
  const int needed = in.fabric == Fabric::woven_monofilament || relaxed ? 2 : 1;
  steps.given("M", "mass of the largest stones", measure(in.stone_mass));
  steps.given("h", "drop", measure(in.drop_height));
  steps.computed("class", "class needed",
                 "2 for woven monofilament, on bedding, or up to 100 kg dropped up to 1 m; else 1",
                 measure(static_cast<double>(needed)),
                 geotextile_strength_method().description().sources.front().sentence());
  return GeotextileStrengthResult{Dimensionless::number(needed)};
}

const Method& geotextile_strength_method() {
  static const TypedMethod<GeotextileStrengthInputs, GeotextileStrengthResult> method =
      build_geotextile_strength();
  return method;
}

}  // namespace proofstone
