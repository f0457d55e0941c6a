#include "engine/hydraulics/section_problem.h"

#include <fmt/format.h>

#include <cmath>

namespace proofstone {

std::string in_both_systems(Measure measure) {
  return fmt::format("{} ({})", display(measure, UnitSystem::us_customary).text,
                     display(measure, UnitSystem::si).text);
}

Problems discharge_problems(const Section& section, const std::vector<Length>& divisions,
                            Discharge discharge) {
  Problems problems;
  if (!(discharge.si() > 0) || !std::isfinite(discharge.si())) {
    problems.push_back({"discharge-not-positive", "The discharge is not a positive number.", "",
                        "discharge", "a discharge above 0"});
  }
  for (std::size_t i = 0; i < divisions.size(); ++i) {
    const bool inside = divisions[i] >= section.left_end() && divisions[i] <= section.right_end();
    const bool in_order = i == 0 || divisions[i] > divisions[i - 1];
    if (inside && in_order) continue;
    problems.push_back({"division-outside",
                        inside ? "The division lines are not in order from left to right."
                               : "A division line lies outside the section.",
                        "", fmt::format("division {}", i + 1),
                        "stations inside the section, from left to right"});
  }
  return problems;
}

Problem overtopped(const Section& section, Discharge discharge, const std::string& because) {
  return {"overtopped",
          fmt::format("The section cannot hold {}: {} below the lower of its two ends, at "
                      "elevation {}.",
                      in_both_systems(measure(discharge)), because,
                      in_both_systems(measure(section.lower_end()))),
          "", "section", "survey the section further up both banks, or a smaller discharge"};
}

}  // namespace proofstone
