#include "engine/rock/rock_requirements.h"

#include <fmt/format.h>

#include <algorithm>
#include <stdexcept>

#include "engine/rock/embedded_catalog.h"
#include "engine/rock/rock_requirements_reader.h"

namespace proofstone {

const std::vector<RockTestKind>& rock_test_kinds() {
  using enum QuantityKind;
  static const std::vector<RockTestKind> kinds = {
      {RockTest::specific_gravity, "specific-gravity", "Specific gravity",
       "ASTM C127, D6473; AASHTO T 85", dimensionless, 1.5, 4},
      {RockTest::absorption, "absorption", "Absorption", "ASTM C127, D6473; AASHTO T 85",
       dimensionless, 0, 0.5},
      {RockTest::sulfate_soundness, "sulfate-soundness", "Loss in sulfate soundness",
       "ASTM C88, D5240; AASHTO T 104", dimensionless, 0, 1},
      {RockTest::abrasion, "abrasion", "Loss in Los Angeles abrasion",
       "ASTM C131, C535; AASHTO T 96", dimensionless, 0, 1},
      {RockTest::freeze_thaw, "freeze-thaw", "Loss in freezing and thawing",
       "ASTM D5312; AASHTO T 103", dimensionless, 0, 1},
      {RockTest::micro_deval, "micro-deval", "Loss in micro-Deval", "AASHTO T 327", dimensionless,
       0, 1},
      {RockTest::point_load, "point-load", "Point load index Is50", "ASTM D5731", stress, 0, 5e7},
      {RockTest::compressive_strength, "compressive-strength", "Compressive strength of cores",
       "AASHTO T 24", stress, 0, 1e9},
      {RockTest::shape_share, "shape-share", "Share of slender stones", "ASTM D4791", dimensionless,
       0, 1},
      {RockTest::shape_largest, "shape-largest", "Length over thickness of the most slender stone",
       "measured at the stones", dimensionless, 1, 100},
  };
  return kinds;
}

const RockTestKind& kind_of(RockTest test) {
  const auto& kinds = rock_test_kinds();
  return *std::find_if(kinds.begin(), kinds.end(),
                       [test](const RockTestKind& kind) { return kind.test == test; });
}

std::string rock_test_text(RockTest test, double si, UnitSystem units) {
  if (kind_of(test).kind == QuantityKind::stress) {
    return units == UnitSystem::si
               ? significant(si / unit::megapascal.si_factor, 3) + " MPa"
               : significant(si / unit::pound_per_square_inch.si_factor, 3) + " psi";
  }
  if (test == RockTest::specific_gravity || test == RockTest::shape_largest) {
    return significant(si, 3);
  }
  return significant(100 * si, 3) + " %";
}

std::string limit_text(const RockLimit& limit, UnitSystem units) {
  std::string text;
  if (limit.least) text += "at least " + rock_test_text(limit.test, *limit.least, units);
  if (limit.most) {
    text +=
        (text.empty() ? "" : ", ") + ("at most " + rock_test_text(limit.test, *limit.most, units));
  }
  const auto& manner = limit.manner;
  if (manner.above) text += fmt::format(" above {}:1", significant(*manner.above, 3));
  if (!manner.salt.empty()) text += ", " + manner.salt + " sulfate";
  if (manner.cycles) text += fmt::format(", {} cycles", *manner.cycles);
  text += limit.of_each ? ", each result" : ", on average";
  if (!limit.exposure.empty()) text += ", in " + limit.exposure + " exposure";
  return text;
}

const RequirementCatalog& requirement_catalog() {
  static const RequirementCatalog catalog = [] {
    for (const auto& file : embedded_catalog()) {
      if (file.name != "rock-requirements.json") continue;
      // The data come with the engine and are tested with it: a fault in them is a fault of ours.
      auto read = read_requirement_catalog(file.text);
      if (!read) throw std::logic_error(read.problems().front().sentence());
      return *read;
    }
    throw std::logic_error("rock-requirements.json is missing");
  }();
  return catalog;
}

}  // namespace proofstone
