#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/site/chosen_inputs.h"
#include "engine/site/shore_slope.h"
#include "engine/site/zone_cover_findings.h"
#include "engine/waves/wave_run_up.h"

namespace proofstone {
namespace {

/// How high the waves of one case reach on the slope.
struct WaveReach {
  const ZoneWater* water = nullptr;
  Length still;
  Length crest;                  ///< half a wave above the still water
  std::optional<Length> run_up;  ///< above the still water; absent without a period
};

std::vector<WaveReach> wave_reaches(const std::vector<ZoneWater>& waters, const ShoreSlope& shore,
                                    std::optional<Duration> period, Steps& steps) {
  std::vector<WaveReach> reaches;
  for (const auto& at : waters) {
    if (!at.setting) continue;
    const auto& stated = at.setting->stated;
    if (!stated.wave_height || !(stated.wave_height->meters() > 0)) continue;
    WaveReach reach{&at, stated.water_level.value_or(shore.still), 0.5 * *stated.wave_height, {}};
    if (period) {
      WaveOnSlope inputs;
      inputs.height = *stated.wave_height;
      inputs.period = *period;
      inputs.slope = shore.angle;
      if (const auto result = revetment_run_up(inputs, steps)) reach.run_up = result->run_up;
    }
    reaches.push_back(reach);
  }
  return reaches;
}

void judge_reach(const WaveReach& reach, Length from, bool frequent_known, Finding& finding,
                 const Wording& wording) {
  const auto& flow_case = *reach.water->flow_case;
  const bool decides = flow_case.purpose != FlowPurpose::design || !frequent_known;
  const Length sure = reach.still + reach.run_up.value_or(reach.crest);
  const auto what = reach.run_up ? "run up to" : "stand up to";
  if (from < sure) {
    const auto sentence = fmt::format(
        "Waves of the {} {} {}, above its lower edge: soil and seed below that are "
        "washed out.",
        flow_case.name, what, wording.ground(sure));
    worsen(finding, decides ? Outcome::falls_short : Outcome::ask_the_designer, sentence,
           decides ? fmt::format("Begin the cover at {} or higher.", wording.ground(sure))
                   : fmt::format("Begin it at {} or higher, or say that it is made anew after such "
                                 "a storm: the rock below bears it.",
                                 wording.ground(sure)));
    return;
  }
  if (reach.run_up) {
    finding.sentence += fmt::format(" Waves of the {} run up to {}, below it.", flow_case.name,
                                    wording.ground(sure));
    return;
  }
  worsen(finding, Outcome::not_yet_known,
         fmt::format("How far up the waves of the {} run is not known without their period.",
                     flow_case.name),
         "Give the period of the waves under method_choices: revetment-run-up.");
}

/// What soil and plants are made of lies above the reach of the waves.
Finding lower_edge(const Zone& zone, const CoveredSlope& slope, const ShoreSlope& shore,
                   const std::vector<ZoneWater>& waters, const Wording& wording) {
  Finding finding = begin_cover_finding(zone, "bottom", "Lower edge of the cover");
  finding.sources = revetment_run_up_method().description().sources;
  finding.sources.push_back({"common practice",
                             "topsoil, seed and blanket only above the reach of the waves",
                             SourceStanding::common_practice});
  finding.steps.given("z_c", "elevation from which the cover goes up", measure(slope.from));
  finding.values.push_back({"from", "z_c", "elevation from which the cover goes up",
                            measure(slope.from), LengthUse::ground});
  finding.sentence = fmt::format("The cover begins at {}.", wording.ground(slope.from));
  const auto reaches = wave_reaches(waters, shore, chosen_period(zone, nullptr), finding.steps);
  const bool frequent_known = std::any_of(reaches.begin(), reaches.end(), [](const auto& reach) {
    return reach.water->flow_case->purpose == FlowPurpose::frequent;
  });
  if (reaches.empty()) {
    worsen(finding, Outcome::not_yet_known, "No waves are stated at the shore.",
           "State wave_height under water of the zone.");
  }
  for (const auto& reach : reaches) {
    judge_reach(reach, slope.from, frequent_known, finding, wording);
  }
  if (!frequent_known && !reaches.empty()) {
    finding.reasons.emplace_back(
        "No waves of a frequent case are stated: those of the design case are taken, which reach "
        "higher.");
  }
  return finding;
}

}  // namespace

std::vector<Finding> shore_cover_findings(const Zone& zone, const std::vector<ZoneWater>& waters,
                                          const Wording& wording) {
  const auto shore = slope_of_shore(zone, waters, nullptr);
  const auto from =
      shore ? elevation_of(zone.cover->from, waters, shore->foot) : std::optional<Length>();
  if (!from || (zone.cover->from.elevation && !shore->level_stated)) {
    Finding finding = begin_cover_finding(zone, "bottom", "Cover");
    finding.outcome = Outcome::not_yet_known;
    finding.sources.push_back({"common practice",
                               "topsoil, seed and blanket only above the reach of the waves",
                               SourceStanding::common_practice});
    finding.sentence = "Whether the cover lies above the reach of the waves is not known.";
    finding.next =
        "State wave_height and water_level under water of the zone, the slope under "
        "method_choices, and an elevation that the cover begins at.";
    return {std::move(finding)};
  }
  const Length low = std::clamp(*from, shore->foot, shore->top);
  const auto along = zone.cover->length ? zone.cover->length : zone.extent.length;
  const CoveredSlope slope{low, shore->top, shore->angle,
                           (shore->top - low) / std::sin(shore->angle.radians()), along};
  std::vector<Finding> findings{lower_edge(zone, slope, *shore, waters, wording)};
  if (!shore->top_stated) {
    findings.front().reasons.emplace_back(
        "Where the rock ends is not stated: it is taken as one wave height above the still water. "
        "State slope_length under extent.");
  }
  findings.push_back(blanket_finding(zone, slope, {}, wording));
  for (auto& one : cover_making_findings(zone, slope, {}, wording)) {
    findings.push_back(std::move(one));
  }
  return findings;
}

}  // namespace proofstone
