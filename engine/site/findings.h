#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/finding/outcome.h"
#include "engine/finding/steps.h"
#include "engine/method/method.h"
#include "engine/placing/placing_check.h"
#include "engine/site/pictures.h"
#include "engine/site/quantity_table.h"
#include "engine/site/typical_section.h"

namespace proofstone {

/// What a finding is about; ids of the document, empty where they do not apply.
struct About {
  std::string zone;
  std::string reach;
  std::string flow_case;
  std::string lot;
  std::string look;
  std::string method;
  std::string rock_class;
};

enum class Topic {
  document,
  kind,   ///< "kind of rock"
  cover,  ///< "cover"
  water,
  rock_size,
  rock_class,
  layer,
  toe,
  soil,
  filter,
  extent,
  quantities,
  submittal,
  substitution,
  gradation,
  rock_in_zone,
  remedy,
  chance,
  supply,
  placing,        ///< what was measured of placed work, and what is not as designed
  placing_check,  ///< "placing check"
  mix
};
/// "document", "rock size", "placing check": as findings and screens write it.
std::string_view topic_name(Topic topic);

/// A ratio of what is there to what is needed, with its limits; 1 just holds.
struct Margin {
  double value = 1;
  std::optional<double> low;
  std::optional<double> high;
};

/// "1.08 (1.02 to 1.15)", with the limits that are known.
std::string margin_text(const Margin& margin);

/// A value a finding states.
struct StatedValue {
  // Made, copied and let go in one file: what that takes would else be compiled in every file that
  // does.
  StatedValue();
  StatedValue(std::string_view by_key, std::string_view as_symbol, std::string_view in_words,
              Measure stated, LengthUse use = LengthUse::ground);
  StatedValue(const StatedValue&);
  StatedValue(StatedValue&&) noexcept;
  StatedValue& operator=(const StatedValue&);
  StatedValue& operator=(StatedValue&&) noexcept;
  ~StatedValue();

  std::string key;
  std::string symbol;
  std::string meaning;
  Measure value;
  LengthUse length_use = LengthUse::ground;
};

/// One statement of the engine with its outcome and everything a reviewer needs to question it.
struct Finding {
  // Made, copied and let go in one file: what that takes would else be compiled in every file that
  // does.
  Finding();
  Finding(const Finding&);
  Finding(Finding&&) noexcept;
  Finding& operator=(const Finding&);
  Finding& operator=(Finding&&) noexcept;
  ~Finding();

  std::string id;  ///< stable for one document: topic and the ids it is about, joined by dots
  Topic topic = Topic::document;
  About about;
  std::string title;
  Outcome outcome = Outcome::not_yet_known;
  std::string sentence;  ///< what was found, in one or two sentences
  std::string next;      ///< what to do now
  bool governs = false;
  std::optional<Margin> margin;
  std::optional<double> confidence;  ///< that what the finding asks for holds, 0 to 1
  std::vector<StatedValue> values;
  Steps steps;
  std::vector<std::string> reasons;
  std::vector<LimitDescription> limits_not_kept;
  std::vector<LimitDescription> limits;
  std::vector<Source> sources;
  std::vector<std::string> cautions;

  /// States a value beside the sentence.
  void state(std::string_view key, std::string_view symbol, std::string_view meaning, Measure value,
             LengthUse use = LengthUse::ground);

  /// Whether a published limit of this finding is kept.
  bool keeps(const LimitDescription& limit) const;
};

/// One check of a zone's placing as a record shows it, in words, and what is taken down of it.
struct PlacingRecordLine {
  std::string id;  ///< of the check, as a walk names it
  std::string title;
  CheckMeasure measure = CheckMeasure::by_eye;
  LengthUse length_use = LengthUse::ground;  ///< of lengths measured
  int fewest_points = 1;
  std::vector<MixShare> mix;  ///< whose loads are counted, the rock first
  bool hold_point = false;
  std::string required;
  std::string tolerance;
  std::string how;
  Outcome outcome = Outcome::not_yet_known;
  std::string state;                  ///< "pass", "fail", "not yet known", "used as it is, …"
  std::vector<std::string> evidence;  ///< in the order of time
  std::string next;                   ///< what to do about it
};
struct PlacingRecord {
  std::string zone;  ///< its name
  bool begun = false;
  std::vector<PlacingRecordLine> lines;  ///< in the order of work
};

/// Everything `assess` says about a site.
struct Findings {
  // Made, copied and let go in one file: what that takes would else be compiled in every file that
  // does.
  Findings();
  Findings(const Findings&);
  Findings(Findings&&) noexcept;
  Findings& operator=(const Findings&);
  Findings& operator=(Findings&&) noexcept;
  ~Findings();

  std::string site_name;
  std::string revision;  ///< id of the last revision assessed
  UnitSystem units = UnitSystem::us_customary;
  QuantityTable quantities;  ///< no zones where the document asks for none
  Outcome headline_outcome = Outcome::not_yet_known;
  std::string headline;
  std::vector<Finding> findings;
  std::vector<GradationPicture> gradation_pictures;
  std::vector<FilterPicture> filter_pictures;
  std::vector<SectionPicture> section_pictures;
  std::vector<PlanPicture> plan_pictures;
  std::vector<TypicalSectionPicture> typical_sections;
  std::vector<ProfilePicture> profile_pictures;
  std::vector<StonesPicture> stones_pictures;
  std::vector<MethodSizesPicture> method_sizes_pictures;
  std::vector<RunChartPicture> run_charts;
  std::vector<SequentialCountPicture> sequential_counts;
  std::vector<MixPicture> mix_pictures;
  std::vector<PlacingRecord> placing;  ///< by zone
  std::vector<std::string> cautions;

  const Finding* find(std::string_view id) const;
};

}  // namespace proofstone

extern template class std::vector<proofstone::StatedValue>;
extern template class std::vector<proofstone::Finding>;
