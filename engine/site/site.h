#pragma once

#include <map>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/evidence/decision_risks.h"
#include "engine/hydraulics/bank.h"
#include "engine/hydraulics/centreline.h"
#include "engine/hydraulics/section_flow.h"
#include "engine/json/held_json.h"
#include "engine/placing/nonconformance.h"
#include "engine/placing/placing_tolerances.h"
#include "engine/placing/placing_walk.h"
#include "engine/reliability/stated_spread.h"
#include "engine/rock/rock_class.h"
#include "engine/site/ordering.h"
#include "engine/site/site_conflict.h"
#include "engine/site/site_loads.h"
#include "engine/site/site_look.h"
#include "engine/site/site_mix.h"
#include "engine/site/site_reach.h"
#include "engine/site/submittal.h"
#include "engine/site/zone_cover.h"
#include "engine/site/zone_filter.h"
#include "engine/site/zone_kinds.h"
#include "engine/site/zone_near_structure.h"
#include "engine/site/zone_scour.h"
#include "engine/sizing/layer_thickness.h"
#include "engine/sizing/zone_setting.h"

namespace proofstone {

/// What a flow case is for.
enum class FlowPurpose {
  design,    ///< the rock must hold it
  frequent,  ///< decides where plants, soil and blankets can stand
  base,      ///< always there
};

struct FlowCase {
  std::string id;
  std::string name;
  FlowPurpose purpose = FlowPurpose::design;
  Discharge discharge;
  std::optional<Dimensionless> return_period_years;  ///< of annual greatest floods
  std::optional<Dimensionless> days_per_year;        ///< at or above the discharge
};

/// A surveyed section with what is needed to run water through it.
struct SiteSection {
  std::string id;
  std::string name;
  Section survey;
  /// Stations of the bank tops: between them lies the main channel.
  Length left_bank;
  Length right_bank;
  Slope energy_slope;  ///< taken as uniform flow
  CompositeRoughness composite_roughness = CompositeRoughness::horton;
};

/// The course of a channel in plan.
struct SiteCentreline {
  std::string id;
  std::string name;
  Centreline course;
};

/// A quarry or pit and what is known of its rock.
struct RockSource {
  std::string id;
  std::string name;
  RockProperties rock;  ///< specific gravity is the mean of the tests where there are tests
  std::vector<Dimensionless> specific_gravity_tests;
};

struct Bend {
  BendSide side = BendSide::outside;
  Length radius;  ///< of the centreline
};

/// Where along a centreline a zone lies, from its first point downstream.
struct AlongCentreline {
  std::string centreline;
  Length from;
  Length to;
};

/// How the methods that apply are brought to one answer.
enum class GoverningPolicy {
  envelope,  ///< the largest size any of them asks for
  chosen,    ///< the one method the designer named; the others are shown beside it
  weighted,  ///< a mean by weights that the owner states, each shown with its size
};

/// A part of the works with one lining.
struct Zone {
  std::string id;
  std::string name;
  std::string section;  ///< empty where the zone lies outside streams and states its water itself
  ZonePlace place = ZonePlace::bank;
  BankSide bank = BankSide::left;
  std::optional<Length> toe_station;
  std::optional<Length> top_station;
  std::optional<Bend> bend;  ///< as stated; stands before the centreline's
  std::optional<AlongCentreline> along;
  ChannelForm channel_form = ChannelForm::natural;
  Turbulence turbulence = Turbulence::low;
  std::map<std::string, StatedWater> water;  ///< by flow case
  std::optional<NearStructure> near_structure;
  std::string rock_class;
  std::string source;
  Length layer_thickness;
  std::string mix;  ///< what fills the rock; empty: nothing stated
  Placement placement = Placement::dry;
  std::string soil;                  ///< id; empty: not stated
  std::optional<ZoneFilter> filter;  ///< absent: not stated
  ZoneExtent extent;
  std::optional<ZoneScour> scour;
  std::optional<ZoneToe> toe;
  std::vector<KindUpSlope> kinds;  ///< from the toe up; empty: nothing stated
  ZoneConditions conditions;
  std::optional<ZoneKey> top_key;
  std::optional<ZoneCover> cover;
  /// Rule and choices for the freeboard method, as the document writes them; empty: none wanted.
  HeldJson freeboard;
  GoverningPolicy policy = GoverningPolicy::envelope;
  std::string chosen_method;
  std::map<std::string, double> weights;  ///< by method; of the weighted policy
  HeldJson method_choices;
  std::map<std::string, StatedUncertainty> uncertainty;  ///< by sizing method
};

/// Rock judged together.
struct Lot {
  std::string id;
  std::string name;
  std::string source;
  std::string rock_class;  ///< what was ordered
  std::vector<std::string> zones;
  std::optional<SupplyPlan> supply;
  bool reference = false;                 ///< accepted rock that other lots are held against
  std::optional<Mass> available;          ///< what there is of it, for zones and blends
  std::optional<double> price_per_tonne;  ///< in the document's money, delivered
};

/// Another material on offer, to blend with a pile or to fill rock with, by its certified
/// gradation.
struct Material {
  std::string id;
  std::string name;
  Gradation gradation;
  MaterialState state = {};
};

/// What the owner asks of evidence.
struct EvidencePolicy {
  double confidence = 0.95;              ///< of limits that are shown, and of comparisons
  std::optional<double> owners_risk;     ///< absent: one minus the confidence
  std::optional<double> producers_risk;  ///< absent: one minus the confidence
  /// Rock that keeps a limit by so much of its mass is good beyond doubt: a counting plan turns it
  /// away no more often than the producer's risk.
  double good_by = 0.10;
  bool good_by_stated = false;
  /// Replace the factors that photos are read with.
  std::vector<PhotoCalibration> photo_calibrations{};

  DecisionRisks risks() const {
    return {owners_risk.value_or(1 - confidence), producers_risk.value_or(1 - confidence)};
  }
};

/// The state of a site: what the last revision leaves.
struct Site {
  // Made, copied and let go in one file: what that takes would else be compiled in every file that
  // does.
  Site();
  Site(const Site&);
  Site(Site&&) noexcept;
  Site& operator=(const Site&);
  Site& operator=(Site&&) noexcept;
  ~Site();

  std::string name;
  std::string note;
  std::string revision;                 ///< id of the last revision
  std::string recorded;                 ///< time of the latest revision
  std::vector<SiteConflict> conflicts;  ///< of the record, not settled yet
  std::map<std::string, FlowCase> flow_cases;
  std::map<std::string, SiteSection> sections;
  std::map<std::string, SiteCentreline> centrelines;
  std::map<std::string, SiteReach> reaches;
  std::map<std::string, RockSource> sources;
  std::map<std::string, Soil> soils;
  std::map<std::string, RockClass> classes;  ///< the user's own
  Ordering ordering;
  std::optional<Prices> prices;
  Requirements requirements;
  std::map<std::string, Submittal> submittals;
  std::map<std::string, Zone> zones;
  std::map<std::string, Lot> lots;
  std::map<std::string, Look> looks;
  std::map<std::string, Load> loads;
  std::map<std::string, LayerSurvey> layer_surveys;
  std::map<std::string, PlacingWalk> placing_walks;
  std::map<std::string, Nonconformance> nonconformances;
  PlacingTolerances placing_tolerances;
  std::map<std::string, Material> materials;
  std::map<std::string, SiteMix> mixes;
  EvidencePolicy evidence;
};

/// The class called `id`: one of the document's own, else one of the catalog; nullptr otherwise.
const RockClass* find_class(const Site& site, const std::string& id);

/// Reads a whole site document: envelope, fold, state. All problems at once; those of the state are
/// located by JSON pointer in the folded state. schema/site.schema.json describes the format.
Expected<Site> read_site(std::string_view json_text);

/// As read_site, from a document that is parsed already.
Expected<Site> site_from(nlohmann::json document);

}  // namespace proofstone
