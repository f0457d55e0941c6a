#include "engine/hydraulics/section_inputs.h"

#include <fmt/format.h>

namespace proofstone {

Expected<Section> section_of(const SectionInputs& inputs) {
  const std::size_t count = inputs.stations.size();
  Problems problems;
  if (inputs.elevations.size() != count) {
    problems.push_back(
        {"lists-differ",
         fmt::format("There are {} stations but {} elevations.", count, inputs.elevations.size()),
         "", "/elevations", "one elevation for each station"});
  }
  const bool one_for_all = inputs.roughness.size() == 1;
  if (!one_for_all && inputs.roughness.size() != count) {
    problems.push_back({"lists-differ",
                        fmt::format("There are {} stations but {} values of roughness.", count,
                                    inputs.roughness.size()),
                        "", "/roughness", "one value for each station, or one for all"});
  }
  if (!problems.empty()) return problems;
  std::vector<SectionPoint> points;
  points.reserve(count);
  for (std::size_t i = 0; i < count; ++i) {
    points.push_back({inputs.stations[i], inputs.elevations[i],
                      one_for_all ? inputs.roughness.front() : inputs.roughness[i]});
  }
  return Section::make(std::move(points));
}

}  // namespace proofstone
