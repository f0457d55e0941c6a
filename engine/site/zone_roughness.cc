#include "engine/site/zone_roughness.h"

#include <fmt/format.h>

#include "engine/hydraulics/rock_roughness_flow.h"
#include "engine/site/roughness_case.h"
#include "engine/sizing/rock_lined_channel.h"

namespace proofstone {
namespace {

/// K of K·D90^⅙: the faster water for velocity and rock, the deeper for level (WES Streambank
/// Handbook App. A).
constexpr Dimensionless low = Dimensionless::number(0.034);
constexpr Dimensionless high = Dimensionless::number(0.038);
constexpr double under_water = 1.15;

Finding begin_roughness_finding(const Zone& zone, const FlowCase& flow_case) {
  Finding finding;
  finding.topic = Topic::rock_size;
  finding.about.zone = zone.id;
  finding.about.flow_case = flow_case.id;
  finding.about.method = "lining-roughness-balance";
  finding.id = fmt::format("roughness.{}.{}", zone.id, flow_case.id);
  finding.title = fmt::format("{} over its own roughness, {}", zone.name, flow_case.name);
  finding.sources = {{"WES Streambank Handbook (1997)", "App. A, eq. A.2, K 0.034 and 0.038",
                      SourceStanding::published},
                     {"USACE EM 1110-2-1601 (1994)", "eq. 3-2", SourceStanding::memory}};
  finding.cautions = {
      "Only this zone's own rock is put into its section; all other ground keeps the roughness of "
      "the survey.",
      "The slope of the energy line is kept as it is without the rock: where backwater rules, look "
      "at the profile with the rock's roughness in the survey."};
  return finding;
}

void give_up(Finding& finding, const std::string& why, const std::string& next) {
  finding.outcome = Outcome::not_yet_known;
  finding.sentence = "What the rock's own roughness asks for is not known. " + why;
  finding.next = next;
}

/// The level case: the specified class with the high roughness.
struct LevelCase {
  Dimensionless roughness;
  Length level;
};

std::optional<LevelCase> level_case(const RockRoughnessCase& of, Length d90, Finding& finding) {
  finding.steps.given_rock("D90", "of the class specified, for the level", d90);
  finding.steps.given("K", "coefficient of the roughness of rock, high", measure(high),
                      rock_roughness_source());
  double n = rock_roughness(d90, high).number();
  finding.steps.computed("n", "Manning's n, high", "K·D90^⅙ (ft)", measure(n),
                         rock_roughness_source());
  if (of.zone->placement == Placement::under_water) {
    n *= under_water;
    finding.steps.computed("n", "Manning's n, high, of rock placed under water", "1.15·n",
                           measure(n), "USACE EM 1110-2-1601 (1994) (from memory; confirm)");
  }
  const auto trial = water_over_rock(of, Dimensionless::number(n), of.water->flow->water_level);
  if (!trial) {
    finding.reasons.push_back("The level with the high roughness could not be computed: " +
                              trial.problems().front().sentence());
    return std::nullopt;
  }
  finding.steps.computed("w_high", "water level over the class specified, for level and freeboard",
                         "K(w)·√S = Q", measure(trial->flow.water_level));
  return LevelCase{trial->roughness, trial->flow.water_level};
}

std::string how_many(const BalancingScales& found, Length available, const Wording& wording) {
  if (found.scales.size() == 1) return "One size balances";
  std::vector<std::string> sizes;
  for (const double scale : found.scales) sizes.push_back(wording.rock(scale * available));
  return fmt::format(
      "{} sizes balance, {}; the largest is taken, since every larger one looked at holds",
      found.scales.size(), listed(sizes));
}

/// What was found at the balance.
struct Balance {
  double scale = 1;
  Length available;  ///< of the size that the method which asks most asks for
  std::optional<LevelCase> level;
};

void judge(Finding& finding, const RockRoughnessCase& of, const Balance& balance,
           const Wording& wording) {
  const double margin = 1 / balance.scale;
  finding.margin = Margin{margin, std::nullopt, std::nullopt};
  finding.steps.computed("margin", "class over the balancing size", "", measure(margin));
  std::optional<Length> top;
  if (of.water->bank) {
    const bool left = of.zone->bank == BankSide::left;
    top = of.section->survey.ground_at(left ? of.stretch.left : of.stretch.right);
  }
  const bool keeps_wet_below = !top || !balance.level || balance.level->level <= *top;
  if (margin < 1) {
    finding.outcome = Outcome::falls_short;
    finding.next = "Choose a larger class: this one quickens the water it must stand in.";
  } else if (!balance.level) {
    finding.outcome = Outcome::not_yet_known;
    finding.next = "See why the level could not be computed.";
  } else if (!keeps_wet_below) {
    finding.outcome = Outcome::ask_the_designer;
    finding.sentence +=
        fmt::format(" That is above the top of the zone at {}.", wording.ground(*top));
    finding.next = "Carry the rock higher, or show that water above it does no harm.";
  } else {
    finding.outcome = Outcome::meets;
    finding.next = "Nothing to do; set freeboard on the higher level.";
  }
}

void tell(Finding& finding, const RockRoughnessCase& of, const RockRoughnessTrial& trial,
          const BalancingScales& found, const Balance& balance, const Wording& wording) {
  const auto symbol = "D" + percent_number(trial.answer.required->percent_smaller);
  const Length size = balance.scale * balance.available;
  finding.sentence = fmt::format(
      "With the low roughness of its own rock (n {}) the water runs at {} and {} asks for a {} of "
      "at least {}; {} has {}. {}.",
      significant(trial.roughness.number(), 3), wording.of(trial.setting.average_velocity),
      of.methods[trial.asks_most].method->description().title, symbol, wording.rock(size),
      of.specified->name, wording.rock(balance.available),
      how_many(found, balance.available, wording));
  finding.state("balancing_size", symbol.c_str(), "size that its own roughness asks for",
                measure(size), LengthUse::rock);
  finding.state("low_roughness", "n", "Manning's n, low", measure(trial.roughness));
  finding.state("low_velocity", "V", "mean velocity with it",
                measure(trial.setting.average_velocity));
  finding.state("low_level", "w", "water level with it", measure(trial.flow.water_level));
  finding.state("balancing_sizes", "N", "how many sizes balance",
                measure(static_cast<double>(found.scales.size())));
  if (!balance.level) return;
  const Length rise = balance.level->level - of.water->flow->water_level;
  finding.sentence += fmt::format(
      " With the high roughness of {} (n {}) it stands at {}, {} {} than over the ground as "
      "surveyed.",
      of.specified->name, significant(balance.level->roughness.number(), 3),
      wording.ground(balance.level->level), wording.ground(rise.si() < 0 ? -1.0 * rise : rise),
      rise.si() < 0 ? "lower" : "higher");
  finding.state("high_roughness", "n", "Manning's n, high", measure(balance.level->roughness));
  finding.state("high_level", "w_high", "water level with it", measure(balance.level->level));
}

/// The working at the balance.
void show_working(Finding& finding, const RockRoughnessCase& of, const RockRoughnessTrial& trial,
                  const BalancingScales& found) {
  Steps& steps = finding.steps;
  const double scale = found.scales.back();
  steps.given("x", "the rock covers the section from this station", measure(of.stretch.left));
  steps.given("x", "to this one", measure(of.stretch.right));
  steps.computed("s", "rock over the class specified, at the balance",
                 "size required by the water over the rock = its size", measure(scale));
  steps.computed("N", "sizes with D90 from 0.03 to 30 ft that balance; the largest is taken", "",
                 measure(static_cast<double>(found.scales.size())));
  steps.computed_rock("D90", "of the rock at the balance", "s·D90 of the class", scale * of.d90);
  steps.given("K", "coefficient of the roughness of rock, low", measure(low),
              rock_roughness_source());
  steps.computed("n", "Manning's n", "K·D90^⅙ (ft)", measure(trial.roughness),
                 rock_roughness_source());
  steps.computed("w", "water level over this rock, at the energy slope of the zone's water",
                 "K(w)·√S = Q", measure(trial.flow.water_level));
  explain_flow(trial.flow, steps);
  steps.append(trial.answer.evaluation.steps);
}

Finding balance_zone(const RockRoughnessCase& of, const CoarseStones& coarse,
                     const Wording& wording) {
  Finding finding = begin_roughness_finding(*of.zone, *of.water->flow_case);
  if (coarse.percent < 90) {
    finding.reasons.push_back(fmt::format(
        "{} does not state its smallest D90: for the velocity its smallest D{} stands in, which is "
        "smoother and so on the safe side; for the level the largest D90 it allows.",
        of.specified->name, percent_number(coarse.percent)));
  }
  const auto found = find_balancing_scales(of, low);
  if (found.scales.empty() || !found.largest_holds) {
    give_up(finding,
            found.ended_by.empty() ? "Even rock with a D90 of 30 ft asks for larger rock."
                                   : "The water over larger rock: " + found.ended_by,
            "Look at the section and its slope, or at another lining.");
    return finding;
  }
  Balance balance;
  balance.scale = found.scales.back();
  const auto trial =
      water_over_rock(of, rock_roughness(balance.scale * of.d90, low), of.water->flow->water_level);
  if (!trial) {
    give_up(finding, trial.problems().front().sentence(), "Look at the section and its slope.");
    return finding;
  }
  const AskingMethod& asks_most = of.methods[trial->asks_most];
  balance.available = asks_most.available;
  show_working(finding, of, *trial, found);
  finding.limits = asks_most.method->description().limits;
  finding.limits_not_kept = trial->answer.evaluation.limits_not_kept;
  if (!found.ended_by.empty()) {
    finding.reasons.push_back(fmt::format("Rock with a D90 above {} was not looked at: {}",
                                          wording.rock(found.largest_looked_at * of.d90),
                                          found.ended_by));
  }
  balance.level = level_case(of, coarse.for_level, finding);
  tell(finding, of, *trial, found, balance, wording);
  judge(finding, of, balance, wording);
  if (!finding.limits_not_kept.empty()) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next = "At the balance the method stands outside its published range.";
  }
  return finding;
}

}  // namespace

std::vector<Finding> roughness_findings(const Site& site, const ZoneSizing& sizing,
                                        const std::vector<ZoneWater>& water,
                                        const Wording& wording) {
  std::vector<Finding> findings;
  const Zone& zone = *sizing.zone;
  if (!in_stream(zone.place) || zone.section.empty()) return findings;
  for (const ZoneWater& at : water) {
    const bool design = at.flow_case->purpose == FlowPurpose::design;
    if (!design || !at.flow || !at.setting || zone.water.contains(at.flow_case->id)) continue;
    if (methods_that_count(sizing, at).empty()) continue;
    const auto coarse = coarse_stones(*sizing.specified, *at.setting);
    if (!coarse) {
      Finding finding = begin_roughness_finding(zone, *at.flow_case);
      give_up(finding, "The class does not state how large its coarse stones are.",
              "Choose a class that says how large its coarse stones are.");
      findings.push_back(std::move(finding));
      continue;
    }
    const auto of = roughness_case(sizing, site.sections.at(zone.section), at, *coarse);
    findings.push_back(balance_zone(of, *coarse, wording));
  }
  return findings;
}

}  // namespace proofstone
