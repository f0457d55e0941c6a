#include "engine/soil/gradation_inputs.h"

#include <fmt/format.h>

#include "engine/soil/soil_curve.h"

namespace proofstone {

Expected<Gradation> gradation_from(const GradationInputs& inputs) {
  if (inputs.sizes.size() != inputs.smaller.size()) {
    return Problem{"lists-differ",
                   fmt::format("There are {} sizes and {} percents smaller.", inputs.sizes.size(),
                               inputs.smaller.size()),
                   "", "/smaller", "one for each size"};
  }
  std::vector<GradationPoint> points;
  for (std::size_t i = 0; i < inputs.sizes.size(); ++i) {
    points.push_back({inputs.sizes[i], inputs.smaller[i].in(unit::percent)});
  }
  const bool retained = look_retained(points);
  auto curve = Gradation::make(std::move(points), sieved_by_mass);
  if (curve) return curve;
  auto problems = curve.problems();
  for (auto& problem : problems) {
    problem.what = problem.where.empty() ? problem.what : problem.where + ": " + problem.what;
    problem.where = "/smaller";
    if (retained) problem.allowed = "percents passing; these look retained: give 100 less each";
  }
  return problems;
}

GradationInputs inputs_of(const std::vector<GradationPoint>& points) {
  GradationInputs inputs;
  for (const auto& point : points) {
    inputs.sizes.push_back(point.size);
    inputs.smaller.push_back(Dimensionless::of(point.percent_smaller, unit::percent));
  }
  return inputs;
}

}  // namespace proofstone
