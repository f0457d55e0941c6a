#include "engine/placing/placing_design.h"

namespace proofstone {

std::vector<PlacingCheck> placing_checks(const PlacingDesign& design) {
  std::vector<PlacingCheck> checks;
  add_ground_checks(design, checks);
  add_filter_checks(design, checks);
  add_rock_checks(design, checks);
  if (design.cover) add_cover_checks(design, checks);
  return checks;
}

Source usual(std::string what) {
  return {"trade", std::move(what), SourceStanding::common_practice};
}

void put_tolerance(PlacingCheck& check, const PlacingTolerances& tolerances,
                   const std::optional<Length>& stated, const std::optional<Length>& published,
                   Source source) {
  check.tolerance = stated ? stated : published;
  check.source = stated
                     ? Source{tolerances.from, "tolerances of the document", SourceStanding::stated}
                     : std::move(source);
}

}  // namespace proofstone
