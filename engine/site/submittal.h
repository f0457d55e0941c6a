#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/rock/gradation.h"
#include "engine/rock/rock_requirements.h"

namespace proofstone {

/// Results of one test of a submittal.
struct SubmittedTest {
  RockTest test = RockTest::specific_gravity;
  RockTestManner manner;
  std::vector<double> results;  ///< in SI
};

/// What a supplier hands in of the rock of a source.
struct Submittal {
  std::string id;
  std::string name;
  std::string source;
  std::string rock_class;
  std::string date;  ///< as written, YYYY-MM-DD
  std::string from;  ///< laboratory or supplier
  std::vector<SubmittedTest> tests;
  std::optional<Gradation> gradation;  ///< as certified
};

/// What the document asks of rock, its sampling and its placing.
struct Requirements {
  std::string set;                ///< id out of requirement_catalog(); empty: none chosen
  std::vector<RockLimit> limits;  ///< the document's own, beside the set
  std::string exposure;           ///< "severe", "moderate", "mild"; empty: not said
  std::vector<std::string> frequency;
  std::vector<std::string> placing;
};

/// The limits that hold: those of the chosen set and of the document; of every published set where
/// the document has neither. Limits for another exposure than the document's are left out.
std::vector<RockLimit> limits_in_force(const Requirements& requirements);

/// Whether a set or limits of its own are chosen.
bool has_chosen(const Requirements& requirements);

}  // namespace proofstone
