#include "engine/site/zone_in_plan.h"

#include <fmt/format.h>

#include <cmath>

#include "engine/sizing/bend_velocity.h"

namespace proofstone {
namespace {

/// A stated radius further from the centreline's than this share is worth a word.
constexpr double notable_difference = 0.10;

BendSide side_of(const PlanBend& bend, const Zone& zone) {
  return bend.outer_bank == zone.bank ? BendSide::outside : BendSide::inside;
}

/// How far below its end the outer bank still feels a bend.
Length reach_of(const PlanBend& bend, const Zone& zone, Length width) {
  return bend_effect_ends(bend_velocity_ratio(zone.channel_form, bend.least_radius, width), width);
}

void explain(const ZoneBend& found, const SiteCentreline& centreline, ZoneSetting& setting,
             Finding& finding) {
  const std::string origin = fmt::format("centreline {}", centreline.name);
  finding.steps.given("W", "water's width, for the bends of the centreline",
                      measure(setting.water_top_width));
  finding.steps.computed("r_min", "least radius of the bend",
                         "|ab|·|bc|·|ca|/(4·area) at W/4, smoothed over W",
                         measure(found.bend.least_radius), origin);
  finding.steps.computed("r_mean", "mean radius of the bend", "(s₂ − s₁)/φ",
                         measure(found.bend.mean_radius), origin);
  finding.steps.computed("φ", "turn of the bend", "∫ ds/r", measure(found.bend.turn), origin);
}

/// Below a bend: the published decay is shown, the zone is sized as in the bend.
void tell_decay(const ZoneBend& found, const Zone& zone, const ZoneSetting& setting,
                Finding& finding, const Wording& wording) {
  const Length width = setting.water_top_width;
  const auto in_bend = bend_velocity_ratio(zone.channel_form, found.bend.least_radius, width);
  const auto here = bend_ratio_below(in_bend, found.below, width);
  finding.steps.given("x", "from the end of the bend to the zone", measure(found.below));
  finding.steps.computed("r_x", "bank velocity over mean velocity there, for comparison",
                         "held for one width, then 0.1 less for each width, at least 1",
                         measure(here), bend_decay_source().sentence());
  finding.sources.push_back(bend_decay_source());
  finding.values.push_back({"bend_ratio_here", "r_x",
                            "bank velocity over mean velocity, decayed below the bend",
                            measure(here), LengthUse::ground});
  finding.cautions.push_back(fmt::format(
      "The zone begins {} below the end of a bend that it still feels: there the bank velocity has "
      "come down from {} to {} of the mean. It is sized as if it lay in the bend, on the safe "
      "side.",
      wording.ground(found.below), significant(in_bend.number(), 3),
      significant(here.number(), 3)));
}

void note_difference(const ZoneBend& found, const Zone& zone, Finding& finding,
                     const Wording& wording) {
  const double ratio = zone.bend->radius / found.bend.least_radius;
  if (zone.bend->side != found.side) {
    finding.cautions.push_back(
        "The zone states the other side of the bend than its centreline gives. The stated side "
        "stands; see which is right.");
  }
  if (std::abs(ratio - 1) <= notable_difference) return;
  finding.cautions.push_back(fmt::format(
      "The stated radius of {} stands; the centreline gives {} at the sharpest place and {} on "
      "average.",
      wording.ground(zone.bend->radius), wording.ground(found.bend.least_radius),
      wording.ground(found.bend.mean_radius)));
}

}  // namespace

Expected<std::optional<ZoneBend>> bend_of_zone(const SiteCentreline& centreline, const Zone& zone,
                                               Length width) {
  const auto curve = curvature_along(centreline.course, width);
  if (!curve) return curve.problems();
  std::optional<ZoneBend> found;
  for (const PlanBend& bend : bends_along(*curve, width)) {
    if (bend.begin > zone.along->to) break;
    const Length below = std::max(Length(), zone.along->from - bend.end);
    if (below.meters() > 0 && below > reach_of(bend, zone, width)) continue;
    const bool in_bend = !(below.meters() > 0);
    const bool in_sharper = found && !(found->below.meters() > 0) &&
                            (!in_bend || found->bend.least_radius < bend.least_radius);
    if (!in_sharper) found = ZoneBend{bend, side_of(bend, zone), below};
  }
  return found;
}

void take_bend_from_plan(ZoneSetting& setting, const Site& site, const Zone& zone, Finding& finding,
                         const Wording& wording) {
  if (!zone.along || zone.place != ZonePlace::bank) return;
  const SiteCentreline& centreline = site.centrelines.at(zone.along->centreline);
  const auto found = bend_of_zone(centreline, zone, setting.water_top_width);
  if (!found) {
    finding.cautions.push_back("The centreline gives no bend here: " +
                               found.problems().front().sentence());
    return;
  }
  if (!*found) return;
  const ZoneBend& bend = **found;
  explain(bend, centreline, setting, finding);
  if (zone.bend) {
    note_difference(bend, zone, finding, wording);
    return;
  }
  setting.bend_side = bend.side;
  setting.bend_radius = bend.bend.least_radius;
  if (!(bend.below.meters() > 0)) return;
  tell_decay(bend, zone, setting, finding, wording);
}

}  // namespace proofstone
