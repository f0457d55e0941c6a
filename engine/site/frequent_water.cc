#include "engine/site/frequent_water.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/hydrology/flood_frequency.h"
#include "engine/site/zone_slope.h"

namespace proofstone {
namespace {

/// Years above which the two ways to count floods differ by less than their return period is known.
constexpr double rarely = 10;

bool has_lesser_flow(const std::vector<ZoneWater>& waters) {
  return std::any_of(waters.begin(), waters.end(), [](const ZoneWater& water) {
    return water.flow_case->purpose != FlowPurpose::design;
  });
}

/// "about 5 days a year", "about every 1.44 years", or nothing.
std::string how_often(const FlowCase& flow_case, Steps& steps) {
  std::string words;
  if (flow_case.days_per_year) {
    steps.given("days", "days a year at or above " + flow_case.name,
                measure(*flow_case.days_per_year));
    words = fmt::format("{} days a year", significant(flow_case.days_per_year->number(), 2));
  }
  if (flow_case.return_period_years && flow_case.return_period_years->number() > 1) {
    const double annual = flow_case.return_period_years->number();
    words += words.empty() ? "" : ", ";
    if (annual > rarely) {
      return words + fmt::format("about every {} years", significant(annual, 3));
    }
    const double years = partial_duration_years(annual);
    steps.computed("T_p", "mean years between floods like " + flow_case.name,
                   "1/(ln T_a − ln(T_a − 1))", measure(Dimensionless::number(years)),
                   "Langbein 1949 (from memory; confirm)");
    words += years < 1 ? fmt::format("about {} times a year", significant(1 / years, 2))
                       : fmt::format("about every {} years", significant(years, 2));
  }
  return words;
}

/// How one flow stands on the slope.
std::string stage(const ZoneWater& water, const ZoneSlope& slope, Finding& finding,
                  const Wording& wording) {
  const FlowCase& flow_case = *water.flow_case;
  const Length height = water.flow->water_level - slope.toe_elevation;
  if (!(height.meters() > 0)) {
    return fmt::format("{} stays {} below the toe", flow_case.name, wording.ground(-1.0 * height));
  }
  const double wet = water.bank ? std::min(1.0, water.bank->wet_slope_length / slope.length) : 1.0;
  const std::string key = flow_case.id;
  finding.steps.computed("h", "height above the toe, " + flow_case.name, "w − z_toe",
                         measure(height));
  finding.steps.computed("wet", "share of the slope under water, " + flow_case.name,
                         "wet length/length, along the ground",
                         measure(Dimensionless::number(wet)));
  finding.values.push_back({"height." + key, "h", "height above the toe, " + flow_case.name,
                            measure(height), LengthUse::ground});
  finding.values.push_back({"wet_share." + key, "",
                            "share of the slope under water, " + flow_case.name,
                            measure(Dimensionless::number(wet)), LengthUse::ground});
  const std::string often = how_often(flow_case, finding.steps);
  return fmt::format("{} stands {} above the toe and wets {} % of the slope{}", flow_case.name,
                     wording.ground(height), std::lround(100 * wet),
                     often.empty() ? "" : " (" + often + ")");
}

}  // namespace

std::optional<Finding> frequent_water(const Zone& zone, const SiteSection& section,
                                      const std::vector<ZoneWater>& waters,
                                      const Wording& wording) {
  if (zone.place != ZonePlace::bank || !has_lesser_flow(waters)) return std::nullopt;
  const auto slope = slope_of_zone(zone, section);
  if (!slope) return std::nullopt;
  Finding finding;
  finding.topic = Topic::water;
  finding.about.zone = zone.id;
  finding.id = "stages." + zone.id;
  finding.title = fmt::format("How high the water stands on {}", zone.name);
  finding.outcome = Outcome::meets;
  finding.steps.given("z_toe", "elevation of the toe", measure(slope->toe_elevation));
  finding.steps.given("z_top", "elevation of the top of the slope", measure(slope->top_elevation));
  finding.steps.computed("L", "length of the slope along the ground", "Σ √(Δx²+Δz²)",
                         measure(slope->length));
  std::vector<std::string> stages;
  std::vector<std::string> unknown;
  for (const ZoneWater& water : waters) {
    if (!water.flow) continue;
    stages.push_back(stage(water, *slope, finding, wording));
    const FlowCase& flow_case = *water.flow_case;
    const bool said = flow_case.days_per_year || flow_case.return_period_years;
    if (!said && flow_case.purpose == FlowPurpose::frequent) unknown.push_back(flow_case.name);
  }
  if (stages.empty()) return std::nullopt;
  for (const std::string& words : stages) {
    finding.sentence += (finding.sentence.empty() ? "" : " ") + words + ".";
  }
  finding.next =
      unknown.empty()
          ? "Nothing to do; soil, plants and blankets are chosen by these heights."
          : fmt::format(
                "State days_per_year or return_period_years of {}: how long the slope is "
                "under water decides what can grow on it.",
                listed(unknown));
  finding.sources.push_back({"Langbein, Annual floods and the partial-duration flood series (1949)",
                             "", SourceStanding::memory});
  finding.cautions.push_back(
      "The return period of a bankfull flow differs from stream to stream, often by more than the "
      "usual 1 to 2.5 years: go by marks in the field and a gauge.");
  return finding;
}

}  // namespace proofstone
