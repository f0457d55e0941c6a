#include "engine/rock/stone_mass_method.h"

#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

constexpr const char* sphere_source = "USACE EM 1110-2-1601 (1994), eq. 3-1";
constexpr const char* axis_source = "FHWA HEC-23; gives the masses of FHWA FP-14, Table 705-1";

MethodDescription about() {
  MethodDescription about;
  about.id = "stone-mass";
  about.title = "Mass and size of a stone";
  about.purpose =
      "Turns the size of a stone into its mass and back, and one meaning of size into another. "
      "Used "
      "to compare a specification in masses with a count in sizes, or the other way round.";
  about.group = MethodGroup::evidence;
  about.sources = {
      {"USACE EM 1110-2-1601 (1994)",
       "eq. 3-1, sphere; seen in its reprint, WES Streambank Handbook "
       "(1997), eq. A.1",
       SourceStanding::published},
      {"FHWA-NHI-09-112, HEC-23 Vol. 2 (2009)", "Design Guideline 4, 0.85·γ·d³",
       SourceStanding::memory},
      {"FHWA FP-14", "Table 705-1, sizes and masses of classes 1 to 8", SourceStanding::published}};
  about.cautions = {
      "The same size means 62 % more mass as an intermediate axis than as a sphere. Use the "
      "meaning "
      "that the specification states.",
      "The mass of a single stone depends on its shape; these are means of ordinary quarry stone. "
      "Weigh stones where the mass decides."};
  return about;
}

TypedMethod<StoneMassInputs, StoneMassResult> described() {
  TypedMethod<StoneMassInputs, StoneMassResult> method(about(), &stone_mass_and_size);
  method.optional({"size", "D", "size of the stone"}, &StoneMassInputs::size, unit::inch,
                  AllowedRange::positive_to(600), "computed from the mass", LengthUse::rock);
  method.optional({"mass", "M", "mass of the stone"}, &StoneMassInputs::mass, unit::pound,
                  AllowedRange::positive_to(1e7), "computed from the size");
  std::vector<ChoiceOption<SizeMeaning>> meanings{
      {SizeMeaning::intermediate_axis, "", "the middle one of the stone's three axes"},
      {SizeMeaning::sphere, "", "diameter of the sphere of the same mass"},
      {SizeMeaning::sieve, "", "square opening that the stone passes"}};
  for (auto& meaning : meanings) meaning.key = size_meaning_name(meaning.value);
  method.choice({"size_meaning", "", "what the size is of"}, &StoneMassInputs::size_meaning,
                meanings);
  method.defaulted({"rock_density", "ρ", "density of the rock, saturated surface-dry"},
                   &StoneMassInputs::rock_density, unit::pound_mass_per_cubic_foot,
                   AllowedRange::between(60, 350));
  method.output({"mass", "M", "mass of the stone"}, &StoneMassResult::mass, unit::pound);
  method.output({"intermediate_axis", "b", "intermediate axis, also the sieve opening"},
                &StoneMassResult::intermediate_axis, unit::inch, LengthUse::rock);
  method.output({"sphere_diameter", "Ds", "diameter of the sphere of the same mass"},
                &StoneMassResult::sphere_diameter, unit::inch, LengthUse::rock);
  method.limit(
      {"Rock for protection has a density of about 2,200 to 3,200 kg/m³.", "common practice"},
      [](const StoneMassInputs& inputs) {
        const double density = inputs.rock_density.kilograms_per_cubic_meter();
        return density >= 2200 && density <= 3200;
      });
  return method;
}

}  // namespace

Expected<StoneMassResult> stone_mass_and_size(const StoneMassInputs& inputs, Steps& steps) {
  const auto& [size, mass, meaning, density] = inputs;
  if (size.has_value() == mass.has_value()) {
    return Problem{size ? "two-given" : "missing-input",
                   size ? "Size and mass are both given, and one follows from the other."
                        : "Neither the size nor the mass of the stone is given.",
                   {},
                   "/size",
                   "either a size or a mass"};
  }
  steps.given("ρ", "density of the rock", measure(density));
  const bool sphere = meaning == SizeMeaning::sphere;
  StoneMassResult result;
  if (size) {
    steps.given_rock("D", "size of the stone: " + std::string(size_meaning_name(meaning)), *size);
    result.mass = stone_mass(*size, meaning, density);
    steps.computed("M", "mass of the stone", sphere ? "(π/6)·ρ·D³" : "0.85·ρ·D³",
                   measure(result.mass), sphere ? sphere_source : axis_source);
  } else {
    steps.given("M", "mass of the stone", measure(*mass));
    result.mass = *mass;
  }
  result.intermediate_axis = stone_size(result.mass, SizeMeaning::intermediate_axis, density);
  result.sphere_diameter = stone_size(result.mass, SizeMeaning::sphere, density);
  steps.computed_rock("b", "intermediate axis", "(M/(0.85·ρ))^(1/3)", result.intermediate_axis,
                      axis_source);
  steps.computed_rock("Ds", "diameter of the sphere of the same mass", "(6·M/(π·ρ))^(1/3)",
                      result.sphere_diameter, sphere_source);
  return result;
}

const Method& stone_mass_method() {
  static const auto method = described();
  return method;
}

}  // namespace proofstone
