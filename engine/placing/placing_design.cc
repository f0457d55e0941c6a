#include "engine/placing/placing_design.h"

#include <algorithm>
#include <cmath>

namespace proofstone {
namespace {

/// More points where the zone is long; what one machine or one glance decides stays.
void measure_along(const PlacingDesign& design, PlacingCheck& check) {
  const bool measured = check.measure == CheckMeasure::at_least ||
                        check.measure == CheckMeasure::at_most ||
                        check.measure == CheckMeasure::within;
  if (!design.length || !measured || check.fewest_points <= 1) return;
  const auto along = static_cast<int>(std::ceil(*design.length / length_for_a_point - 1e-9));
  check.fewest_points = std::max(check.fewest_points, along);
}

}  // namespace

std::vector<PlacingCheck> placing_checks(const PlacingDesign& design) {
  std::vector<PlacingCheck> checks;
  int stage = 0;
  std::size_t done = 0;
  const auto end_stage = [&] {
    for (; done < checks.size(); ++done) checks[done].stage = stage;
    ++stage;
  };
  add_ground_checks(design, checks);
  end_stage();
  for (std::size_t i = 0; i < design.filter.size(); ++i) {
    add_filter_checks(design, i, checks);
    end_stage();
  }
  add_rock_checks(design, checks);
  end_stage();
  if (design.cover) add_cover_checks(design, checks);
  end_stage();
  for (auto& check : checks) measure_along(design, check);
  return checks;
}

Source usual(const std::string& what) { return {"trade", what, SourceStanding::common_practice}; }

void put_tolerance(PlacingCheck& check, const PlacingTolerances& tolerances,
                   const std::optional<Length>& stated, const std::optional<Length>& published,
                   Source source) {
  check.tolerance = stated ? stated : published;
  check.source = stated
                     ? Source{tolerances.from, "tolerances of the document", SourceStanding::stated}
                     : std::move(source);
}

}  // namespace proofstone
