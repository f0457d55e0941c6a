#include "engine/placing/placing_design.h"

namespace proofstone {

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
