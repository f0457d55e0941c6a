#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/finding/source.h"
#include "engine/quantity/measure.h"

namespace proofstone {

/// What is tested of the rock of a source.
enum class RockTest {
  specific_gravity,
  absorption,
  sulfate_soundness,
  abrasion,
  freeze_thaw,
  micro_deval,
  point_load,
  compressive_strength,
  shape_share,    ///< share of stones whose length is above so many thicknesses
  shape_largest,  ///< length over thickness of the most slender stone
};

/// How a test is called, by which standards it is done and what its results are.
struct RockTestKind {
  RockTest test;
  std::string id;         ///< "sulfate-soundness"
  std::string name;       ///< "Loss in sulfate soundness"
  std::string standards;  ///< "ASTM C88, D5240; AASHTO T 104"
  QuantityKind kind;
  double least = 0;  ///< a result below or above these, in SI, is not believed
  double most = 0;
};
const std::vector<RockTestKind>& rock_test_kinds();
const RockTestKind& kind_of(RockTest test);

/// A result or limit as it is read: "2.62", "6.1 %", "5 MPa".
std::string rock_test_text(RockTest test, double si, UnitSystem units);

/// How a test was done; two results or limits that differ here do not speak of the same thing.
struct RockTestManner {
  std::string salt;             ///< of soundness: "sodium", "magnesium"; empty: not said
  std::optional<int> cycles;    ///< of soundness and freeze–thaw
  std::optional<double> above;  ///< of shape_share: length over thickness
};

/// One limit on one test.
struct RockLimit {
  RockTest test = RockTest::specific_gravity;
  RockTestManner manner;
  bool of_each = false;  ///< each result keeps it; otherwise their average
  std::optional<double> least;
  std::optional<double> most;
  std::string exposure;  ///< "severe", "moderate", "mild"; empty: any
  std::string from;      ///< name of the set
  Source source;
};

/// "at most 10 % loss (sodium, 5 cycles), on average, in severe exposure"
std::string limit_text(const RockLimit& limit, UnitSystem units);

/// A published or stated set of limits.
struct RequirementSet {
  std::string id;
  std::string name;
  Source source;
  std::vector<RockLimit> limits;
  std::vector<std::string> notes;
};

/// A rule in words with its source.
struct SourcedRule {
  std::string what;
  Source source;
};

struct RequirementCatalog {
  std::vector<RequirementSet> sets;
  std::vector<SourcedRule> placing;
  std::vector<SourcedRule> sampling;
};

/// catalog/rock-requirements.json, read once.
const RequirementCatalog& requirement_catalog();

}  // namespace proofstone
