#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/cover/blanket_anchors.h"
#include "engine/cover/blanket_rolls.h"
#include "engine/quantity/rounding.h"
#include "engine/site/zone_cover_findings.h"

namespace proofstone {
namespace {

const char* const practice = "common practice";
const char* const guideline =
    "Installation guideline of a blanket maker, Colorado DRMS record 911390 p. 24";

AnchorPlace anchor_place(const CoveredSlope& slope, const std::vector<ShearAtEdge>& edges) {
  const bool wet = std::any_of(edges.begin(), edges.end(),
                               [](const auto& edge) { return edge.depth.meters() > 0; });
  if (wet) return AnchorPlace::channel;
  return slope.angle <= angle_of(Slope::ratio(1.0 / 3.0)) ? AnchorPlace::gentle_slope
                                                          : AnchorPlace::steep_slope;
}

int trenches_of(const ZoneCover& cover) {
  return (cover.top_trench ? 1 : 0) + (cover.water_edge_trench ? 1 : 0);
}

void judge_stake_length(const ZoneCover& cover, const CoverStakes& stakes, Finding& finding,
                        const Wording& wording) {
  if (cover.topsoil && stakes.length <= *cover.topsoil) {
    worsen(finding, Outcome::falls_short,
           fmt::format("A stake of {} stands in {} of loose topsoil alone.",
                       wording.rock(stakes.length), wording.rock(*cover.topsoil)),
           "Take stakes that reach well into the soil of the filled rock.");
  }
  const double inches = stakes.length.inches();
  const bool usual = inches > 12 - rounding && inches < 24 + rounding;
  if (stakes.form != StakeForm::staple && !usual) {
    worsen(finding, Outcome::ask_the_designer,
           fmt::format("Wooden stakes are usually {} to {} long.", wording.rock(Length::inches(12)),
                       wording.rock(Length::inches(24))),
           "Say why this length holds here.");
  }
}

void judge_count(const CoverStakes& stakes, const BlanketAnchorsResult& anchors, Finding& finding,
                 const Wording& wording) {
  finding.state("stakes", "N", "stakes in all", measure(anchors.total));
  finding.state("wanted_spacing", "g_w", "grid as dense as usual", measure(anchors.wanted_spacing));
  finding.sentence += fmt::format(
      " A grid of {} takes {} of them, {} for each square yard.", wording.ground(*stakes.spacing),
      significant(anchors.total.number(), 6), significant(anchors.per_square_yard.number(), 3));
  if (anchors.per_square_yard.number() < anchors.wanted_per_square_yard.number() - rounding) {
    worsen(
        finding, Outcome::ask_the_designer,
        fmt::format("Usual here are {}.", significant(anchors.wanted_per_square_yard.number(), 3)),
        fmt::format("Set them on a grid of {} or by the maker's pattern, or say why fewer hold.",
                    wording.ground(anchors.wanted_spacing)));
  }
  if (stakes.count && stakes.count->number() < anchors.total.number() - rounding) {
    worsen(finding, Outcome::falls_short,
           fmt::format("The document states {}.", significant(stakes.count->number(), 6)),
           "Order as many as the grid takes, and some to spare.");
  }
}

Finding stakes_finding(const Zone& zone, const CoveredSlope& slope,
                       const std::vector<ShearAtEdge>& edges, const Wording& wording) {
  Finding finding = begin_cover_finding(zone, "stakes", "Stakes");
  const ZoneCover& cover = *zone.cover;
  finding.sources = blanket_anchors_method().description().sources;
  finding.cautions = blanket_anchors_method().description().cautions;
  finding.reasons.emplace_back(
      "A biodegradable blanket over rock is held by wedge stakes cut from 2×4 timber (common "
      "practice, no source).");
  if (!cover.stakes) {
    worsen(finding, Outcome::not_yet_known, "Nothing is stated that holds the blanket.",
           "State stakes of the cover: form, length and spacing.");
    return finding;
  }
  judge_stake_length(cover, *cover.stakes, finding, wording);
  if (!cover.stakes->spacing || !slope.along) {
    worsen(finding, Outcome::not_yet_known, "How many there are cannot be told.",
           "State spacing of the stakes and the length of the cover along the stream.");
    return finding;
  }
  BlanketAnchorsInputs inputs;
  inputs.area = Area::square_meters(slope.length.meters() * slope.along->meters());
  inputs.spacing = *cover.stakes->spacing;
  inputs.place = anchor_place(slope, edges);
  if (trenches_of(cover) > 0) inputs.perimeter = *slope.along * trenches_of(cover);
  const auto anchors = blanket_anchors(inputs, finding.steps);
  if (anchors) judge_count(*cover.stakes, *anchors, finding, wording);
  return finding;
}

void judge_water_edge(const ZoneCover& cover, Finding& finding, const Wording& wording) {
  const auto& trench = *cover.water_edge_trench;
  const Length soil = cover.topsoil.value_or(Length::meters(0));
  finding.steps.given("d_w", "depth of the trench at the water's edge", measure(trench.depth));
  finding.steps.given("t_s", "topsoil over the rock", measure(soil));
  if (trench.depth.meters() > soil.meters() + rounding) {
    worsen(
        finding, Outcome::falls_short,
        fmt::format("The trench at the water's edge is {} deep under {} of topsoil: it cuts into "
                    "the rock.",
                    wording.rock(trench.depth), wording.rock(soil)),
        "Keep that trench within the topsoil, or pin the edge under the first row of rock.");
  } else {
    finding.sentence += fmt::format(
        " The trench at the water's edge, {} deep, stays in the topsoil and leaves the rock whole.",
        wording.rock(trench.depth));
  }
}

void judge_top(const AnchorTrench& trench, Finding& finding, const Wording& wording) {
  const Length least = Length::inches(6);
  const Length back = Length::feet(1);
  finding.steps.given("b", "width of the trench at the top", measure(trench.width));
  finding.steps.given("d", "its depth", measure(trench.depth));
  const double smaller = std::min(trench.width, trench.depth).meters();
  if (smaller < least.meters() - rounding) {
    worsen(finding, Outcome::falls_short,
           fmt::format("The trench at the top is {} wide and {} deep; {} to {} is asked for.",
                       wording.rock(trench.width), wording.rock(trench.depth), wording.rock(least),
                       wording.rock(Length::inches(9))),
           "Dig the trench at the top wider or deeper.");
  }
  if (!trench.back_from_crest) {
    worsen(finding, Outcome::not_yet_known,
           "How far the trench at the top stands back from the crest is not stated.",
           "State back_from_crest of the trench at the top.");
  } else if (trench.back_from_crest->meters() < back.meters() - rounding) {
    worsen(finding, Outcome::falls_short,
           fmt::format("The trench at the top stands {} back from the crest.",
                       wording.ground(*trench.back_from_crest)),
           fmt::format("Set it {} or more behind the crest.", wording.ground(back)));
  } else {
    finding.sentence += fmt::format(" The trench at the top stands {} behind the crest.",
                                    wording.ground(*trench.back_from_crest));
  }
}

Finding trenches_finding(const Zone& zone, const Wording& wording) {
  Finding finding = begin_cover_finding(zone, "trenches", "Trenches");
  const ZoneCover& cover = *zone.cover;
  finding.sources = {
      {guideline, "top trench 6 to 9 in wide and deep, 1 ft or more behind the crest",
       SourceStanding::published},
      {practice, "the trench at the water's edge does not cut the rock",
       SourceStanding::common_practice}};
  finding.cautions = {
      "An upper edge that is not held, and water behind a side edge, are how "
      "blankets are usually lost."};
  if (cover.top_trench) {
    judge_top(*cover.top_trench, finding, wording);
  } else {
    worsen(finding, Outcome::not_yet_known, "No trench is stated that holds the upper edge.",
           "State top_trench of the cover.");
  }
  if (cover.water_edge_trench) judge_water_edge(cover, finding, wording);
  return finding;
}

void count_rolls(const ZoneCover& cover, const CoveredSlope& slope, Finding& finding) {
  const CoverBlanket& blanket = *cover.blanket;
  if (!blanket.roll_width || !blanket.roll_length) {
    worsen(finding, Outcome::not_yet_known, "The size of a roll is not stated.",
           "State roll_width and roll_length of the blanket.");
    return;
  }
  BlanketRollsInputs inputs;
  inputs.height = slope.top - slope.from;
  inputs.side_slope = Dimensionless::number(
      std::sqrt(std::max(0.0, std::pow(slope.length / inputs.height, 2) - 1)));
  inputs.length = *slope.along;
  for (const auto& trench : {cover.top_trench, cover.water_edge_trench}) {
    if (trench) inputs.in_trenches = inputs.in_trenches + trench->width + trench->depth;
  }
  inputs.roll_width = *blanket.roll_width;
  inputs.roll_length = *blanket.roll_length;
  inputs.side_overlap = blanket.side_overlap.value_or(Length::inches(6));
  inputs.end_overlap = blanket.end_overlap.value_or(Length::inches(12));
  if (!blanket.side_overlap) finding.reasons.emplace_back("Overlap at the sides taken as 6 in.");
  if (!blanket.end_overlap) finding.reasons.emplace_back("Overlap at the ends taken as 12 in.");
  const auto rolls = blanket_rolls(inputs, finding.steps);
  if (!rolls) return;
  finding.state("rolls", "N", "rolls of blanket", measure(rolls->rolls));
  finding.state("blanket_area", "A", "blanket, with what lies in trenches", measure(rolls->area));
  finding.sentence +=
      fmt::format(" The blanket takes {} rolls.", significant(rolls->rolls.number(), 6));
}

Finding quantities_finding(const Zone& zone, const CoveredSlope& slope, const Wording& wording) {
  Finding finding = begin_cover_finding(zone, "quantities", "Quantities of the cover");
  finding.sources = blanket_rolls_method().description().sources;
  const ZoneCover& cover = *zone.cover;
  if (!slope.along || !(slope.length.meters() > 0)) {
    worsen(finding, Outcome::not_yet_known,
           "The area is not known: the cover has no length along the stream.",
           "State along of the zone, or length of the cover.");
    return finding;
  }
  const Area area = Area::square_meters(slope.length.meters() * slope.along->meters());
  finding.steps.given("ℓ", "length of the covered slope along the ground", measure(slope.length));
  finding.steps.given("L", "length along the stream", measure(*slope.along));
  finding.steps.computed("A", "area that is covered", "ℓ·L", measure(area));
  finding.state("area", "A", "area that is covered", measure(area));
  finding.sentence =
      fmt::format("The cover is {} up the slope and {} long: {}.", wording.ground(slope.length),
                  wording.ground(*slope.along), wording.of(area));
  if (cover.topsoil) {
    const Volume soil = Volume::cubic_meters(area.square_meters() * cover.topsoil->meters());
    finding.steps.computed("V_s", "topsoil in place", "A·t_s", measure(soil));
    finding.state("topsoil", "V_s", "topsoil in place", measure(soil));
    finding.sentence += fmt::format(" {} of topsoil takes {} in place.",
                                    wording.rock(*cover.topsoil), wording.of(soil));
  }
  if (cover.blanket) count_rolls(cover, slope, finding);
  return finding;
}

}  // namespace

std::vector<Finding> cover_making_findings(const Zone& zone, const CoveredSlope& slope,
                                           const std::vector<ShearAtEdge>& edges,
                                           const Wording& wording) {
  std::vector<Finding> findings;
  if (zone.cover->blanket) {
    findings.push_back(stakes_finding(zone, slope, edges, wording));
    findings.push_back(trenches_finding(zone, wording));
  }
  findings.push_back(quantities_finding(zone, slope, wording));
  return findings;
}

}  // namespace proofstone
