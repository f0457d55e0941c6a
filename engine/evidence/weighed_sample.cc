#include "engine/evidence/weighed_sample.h"

#include <fmt/format.h>

#include "engine/evidence/evidence_sources.h"
#include "engine/evidence/measured_gradation.h"
#include "engine/method/typed_method.h"
#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

/// Carries masses through the size of the sphere; a curve straight in log D is straight in log W,
/// so the density drops out.
constexpr Density any_density = Density::kilograms_per_cubic_meter(2650);

TypedMethod<WeighedSampleInputs, WeighedSampleResult> build_weighed_sample() {
  MethodDescription about;
  about.id = "weighed-sample";
  about.title = "Sample weighed in groups by stone mass";
  about.purpose =
      "Percent lighter by mass of a sample whose stones were sorted into groups by their mass and "
      "weighed, such as a truckload spread on the ground.";
  about.group = MethodGroup::evidence;
  about.sources = {weighed_sample_source()};
  about.cautions = {
      "One large stone can be several percent of a sample: state the heaviest stone as a percent "
      "of "
      "the whole.",
      "Sorting and lifting stones is machine work; nobody stands within reach of a bucket or below "
      "a lifted stone."};
  TypedMethod<WeighedSampleInputs, WeighedSampleResult> method(std::move(about), &weighed_sample);
  method.required_list(
      {"upper_masses", "W", "heaviest stone allowed in each group, from light to heavy"},
      &WeighedSampleInputs::upper_masses, unit::pound, AllowedRange::positive_to(1e6));
  method.required_list({"group_masses", "ΣM", "mass of all stones of each group"},
                       &WeighedSampleInputs::group_masses, unit::pound,
                       AllowedRange::between(0, 2e7));
  method.required({"stone_mass", "X", "stone mass at which the percent lighter is asked"},
                  &WeighedSampleInputs::stone_mass, unit::pound, AllowedRange::positive_to(1e6));
  method.defaulted({"percent", "p", "percent lighter at which the stone mass is asked"},
                   &WeighedSampleInputs::percent, unit::percent, AllowedRange::between(0, 100));
  method.output({"percent_lighter", "F(X)", "percent of the sample in stones lighter than X"},
                &WeighedSampleResult::percent_lighter, unit::percent);
  method.output({"mass_at_percent", "Wp", "stone mass of which p is lighter"},
                &WeighedSampleResult::mass_at_percent, unit::pound);
  return method;
}

}  // namespace

Expected<WeighedSampleResult> weighed_sample(const WeighedSampleInputs& in, Steps& steps) {
  if (in.upper_masses.size() != in.group_masses.size()) {
    return Problem{"lists-differ",
                   fmt::format("There are {} upper masses and {} group masses.",
                               in.upper_masses.size(), in.group_masses.size()),
                   "", "/upper_masses", "one for each group"};
  }
  std::vector<WeighedGroup> groups;
  std::optional<Length> lower;
  for (std::size_t i = 0; i < in.upper_masses.size(); ++i) {
    if (i > 0 && !(in.upper_masses[i] > in.upper_masses[i - 1])) {
      return Problem{"out-of-order", "It is not heavier than the one before it.", "",
                     fmt::format("/upper_masses/{}", i), "masses that rise from group to group"};
    }
    const Length upper = stone_size(in.upper_masses[i], SizeMeaning::sphere, any_density);
    groups.push_back({lower, upper, in.group_masses[i], 0});
    lower = upper;
  }
  const auto measured = gradation_from_weighed(groups, SizeMeaning::sphere);
  if (!measured) return measured.problems();
  const auto& curve = measured->curve;
  for (std::size_t i = 0; i < groups.size(); ++i) {
    steps.given(fmt::format("W{}", i + 1), fmt::format("heaviest stone of group {}", i + 1),
                measure(in.upper_masses[i]));
    steps.computed(fmt::format("F{}", i + 1), "percent lighter, by mass",
                   "100·Σ M up to here / Σ M", measure(curve.points()[i].percent_smaller),
                   weighed_sample_source().sentence());
  }
  const auto size = curve.size_at(in.percent.in(unit::percent));
  if (!size) return located_under(size.problems(), "/percent");
  const Length asked = stone_size(in.stone_mass, SizeMeaning::sphere, any_density);
  if (asked < curve.points().front().size && curve.points().front().percent_smaller > 0) {
    return Problem{"curve-does-not-reach",
                   "The lightest group has no lower mass: nothing is known within it.", "",
                   "/stone_mass", "a mass from the upper one of the lightest group"};
  }
  const double percent = curve.percent_smaller(asked);
  const Mass mass = stone_mass(*size, SizeMeaning::sphere, any_density);
  steps.computed("F(X)", "percent lighter than X, by mass", "straight in log W between groups",
                 measure(percent));
  steps.computed("Wp", "stone mass of which p is lighter", "straight in log W between groups",
                 measure(mass));
  return WeighedSampleResult{Dimensionless::of(percent, unit::percent), mass};
}

const Method& weighed_sample_method() {
  static const auto method = build_weighed_sample();
  return method;
}

}  // namespace proofstone
