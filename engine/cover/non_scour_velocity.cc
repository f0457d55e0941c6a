#include "engine/cover/non_scour_velocity.h"

#include <cstddef>

namespace proofstone {

namespace {

const char* const hds6 = "FHWA HDS 6, Table 3.5";

constexpr double depths_ft[] = {1.3, 3.3, 6.6, 9.8};
constexpr std::size_t columns = 4;
/// ft/s, a row for each material in the order of ScourMaterial.
constexpr double velocities[][columns] = {
    {15.1, 16.7, 19.0, 20.3}, {11.8, 13.4, 15.4, 16.4}, {7.5, 8.9, 10.2, 11.2},
    {5.2, 6.2, 7.2, 8.2},     {4.1, 4.7, 5.4, 6.1},     {3.3, 3.7, 4.1, 4.6},
    {2.6, 3.0, 3.3, 3.8},     {2.2, 2.5, 2.8, 3.1},     {1.8, 2.1, 2.4, 2.7},
    {1.5, 1.8, 2.1, 2.3},     {1.2, 1.5, 1.8, 2.0},     {0.98, 1.3, 1.6, 1.8},
    {3.3, 3.9, 4.6, 4.9},     {3.1, 3.9, 4.6, 4.9},     {2.6, 3.3, 3.9, 4.3}};

double on_the_line(const double (&row)[columns], double depth) {
  std::size_t right = 1;
  while (right + 1 < columns && depth > depths_ft[right]) ++right;
  const double share = (depth - depths_ft[right - 1]) / (depths_ft[right] - depths_ft[right - 1]);
  return row[right - 1] + share * (row[right] - row[right - 1]);
}

MethodDescription describe_non_scour_velocity() {
  MethodDescription about;
  about.id = "non-scour-velocity";
  about.title = "Velocity that does not scour a bed";
  about.purpose =
      "Mean velocity that a bed or bank material bears at a depth; tells what bare ground beside "
      "the rock, or a cover on it, survives.";
  about.group = MethodGroup::cover;
  about.sources = {{"FHWA HDS 6, River Engineering for Highway Encroachments (2001)", "Table 3.5",
                    SourceStanding::published}};
  about.cautions = {"For straight channels and mean velocity; bends and turbulence take less."};
  return about;
}

TypedMethod<NonScourVelocityInputs, NonScourVelocityResult> build_non_scour_velocity() {
  TypedMethod<NonScourVelocityInputs, NonScourVelocityResult> method(describe_non_scour_velocity(),
                                                                     &non_scour_velocity);
  method.choice({"material", "", "the material"}, &NonScourVelocityInputs::material,
                {{ScourMaterial::boulders, "boulders", "above 256 mm"},
                 {ScourMaterial::large_cobbles, "large-cobbles", "128–256 mm"},
                 {ScourMaterial::small_cobbles, "small-cobbles", "64–128 mm"},
                 {ScourMaterial::very_coarse_gravel, "very-coarse-gravel", "32–64 mm"},
                 {ScourMaterial::coarse_gravel, "coarse-gravel", "16–32 mm"},
                 {ScourMaterial::medium_gravel, "medium-gravel", "8–16 mm"},
                 {ScourMaterial::fine_gravel, "fine-gravel", "4–8 mm"},
                 {ScourMaterial::very_fine_gravel, "very-fine-gravel", "2–4 mm"},
                 {ScourMaterial::very_coarse_sand, "very-coarse-sand", "1–2 mm"},
                 {ScourMaterial::coarse_sand, "coarse-sand", "0.5–1 mm"},
                 {ScourMaterial::medium_sand, "medium-sand", "0.25–0.5 mm"},
                 {ScourMaterial::fine_sand, "fine-sand", "0.125–0.25 mm"},
                 {ScourMaterial::heavy_sandy_loam, "heavy-sandy-loam", "heavy sandy loam"},
                 {ScourMaterial::light_sandy_loam, "light-sandy-loam", "light sandy loam"},
                 {ScourMaterial::settled_loess, "settled-loess", "settled loess"}});
  method.required({"mean_depth", "d", "mean depth"}, &NonScourVelocityInputs::mean_depth,
                  unit::foot, AllowedRange::positive_to(200));
  method.output({"velocity", "V", "velocity that does not scour"},
                &NonScourVelocityResult::velocity, unit::foot_per_second);
  return method;
}

}  // namespace

Expected<NonScourVelocityResult> non_scour_velocity(const NonScourVelocityInputs& inputs,
                                                    Steps& steps) {
  const double depth = inputs.mean_depth.feet();
  constexpr double slack = 1e-9;
  if (depth < depths_ft[0] - slack || depth > depths_ft[columns - 1] + slack) {
    return Problem{"outside-table", "The table goes from a mean depth of 1.3 ft to 9.8 ft.", "",
                   "/mean_depth", "a depth from 1.3 to 9.8 ft (0.4 to 3.0 m)"};
  }
  NonScourVelocityResult result;
  result.velocity = Velocity::feet_per_second(
      on_the_line(velocities[static_cast<std::size_t>(inputs.material)], depth));
  steps.given("d", "mean depth", measure(inputs.mean_depth));
  steps.computed("V", "velocity that does not scour", "straight line between the table's depths",
                 measure(result.velocity), hds6);
  return result;
}

const Method& non_scour_velocity_method() {
  static const TypedMethod<NonScourVelocityInputs, NonScourVelocityResult> method =
      build_non_scour_velocity();
  return method;
}

}  // namespace proofstone
