#include "engine/site/zone_cover_findings.h"

#include <fmt/format.h>

#include "engine/cover/cover_line.h"

namespace proofstone {
namespace {

constexpr Length covers_touching = Length::millimeters(1);

void state_source(Finding& finding) {
  finding.sources.push_back(
      {"common practice",
       "no topsoil on the bottom of a perennial stream; across the bottom of a dry swale",
       SourceStanding::common_practice});
}

/// A perennial stream: nothing that soil and plants are made of lies under base flow.
void judge_perennial(const Zone& zone, const CoveredSlope& slope, std::optional<Length> base,
                     Finding& finding, const Wording& wording) {
  if (zone.place == ZonePlace::bed) {
    worsen(finding, Outcome::falls_short,
           "The stream is perennial: no topsoil goes on its bottom, and blanket only on the banks.",
           "Take the cover off the bed.");
    return;
  }
  if (!base) {
    worsen(finding, Outcome::not_yet_known,
           "The stream is perennial; how high it always stands is not known.",
           "Give a flow case of purpose \"base\".");
    return;
  }
  finding.steps.given("z_b", "water that always stands", measure(*base));
  if (*base - slope.from > covers_touching) {
    worsen(finding, Outcome::falls_short,
           fmt::format("The stream always stands at {}: topsoil and blanket below that are lost.",
                       wording.ground(*base)),
           fmt::format("Begin the cover at {} or higher.", wording.ground(*base)));
    return;
  }
  finding.sentence +=
      fmt::format(" The stream always stands at {}, below it.", wording.ground(*base));
}

void judge_dry_swale(const Zone& zone, const CoveredSlope& slope, std::optional<Length> base,
                     Finding& finding) {
  if (base && *base - slope.from > covers_touching) {
    worsen(finding, Outcome::ask_the_designer,
           "The cover is said to lie in a dry swale, and a base flow stands on it.",
           "Say which holds: a dry swale, or a base flow.");
    return;
  }
  const bool whole = zone.cover->topsoil && zone.cover->blanket;
  const bool to_the_toe = zone.cover->from.flow_case.empty() && !zone.cover->from.elevation;
  if (whole && (zone.place == ZonePlace::bed || to_the_toe)) {
    finding.sentence += " In a dry swale topsoil and blanket go across the bottom, as here.";
    return;
  }
  worsen(finding, Outcome::ask_the_designer,
         "In a dry swale topsoil and blanket go across the bottom; here they do not.",
         "Carry topsoil and blanket across the bottom, or say why not.");
}

Finding not_placed(const Zone& zone) {
  Finding finding = begin_cover_finding(zone, "bottom", "Cover");
  state_source(finding);
  finding.outcome = Outcome::not_yet_known;
  finding.sentence =
      "The cover is judged on banks and beds with a section, and on shores, where the level it "
      "begins at is known.";
  finding.next = "Give the zone a section, and a level of known water to begin the cover at.";
  return finding;
}

Finding without_frequent_flow(const Zone& zone) {
  Finding finding = begin_cover_finding(zone, "water", "Cover");
  finding.sources = cover_line_method().description().sources;
  finding.outcome = Outcome::not_yet_known;
  finding.sentence =
      "Whether topsoil and seed survive is not known: no frequent flow is known at the zone.";
  finding.next = "Add a flow case of purpose \"frequent\", such as the bankfull or 2-year flow.";
  return finding;
}

}  // namespace

Finding cover_bottom_finding(const Zone& zone, const CoveredSlope& slope,
                             const std::vector<ZoneWater>& waters, const Wording& wording) {
  Finding finding = begin_cover_finding(zone, "bottom", "Lower edge of the cover");
  state_source(finding);
  finding.steps.given("z_c", "elevation from which the cover goes up", measure(slope.from));
  finding.values.push_back({"from", "z_c", "elevation from which the cover goes up",
                            measure(slope.from), LengthUse::ground});
  finding.sentence = fmt::format("The cover begins at {}.", wording.ground(slope.from));
  const auto base = highest_level(waters, FlowPurpose::base);
  const auto stream = zone.cover->stream;
  if (stream == StreamWater::dry_swale) {
    judge_dry_swale(zone, slope, base, finding);
  } else if (stream == StreamWater::perennial || base) {
    judge_perennial(zone, slope, base, finding, wording);
  } else {
    worsen(finding, Outcome::not_yet_known, "Whether the stream is perennial is not known.",
           "State stream of the cover, or give a flow case of purpose \"base\".");
  }
  return finding;
}

std::vector<Finding> cover_findings(const Zone& zone, const SiteSection* section,
                                    const std::vector<ZoneWater>& waters, const Wording& wording) {
  if (!zone.cover) return {};
  if (zone.place == ZonePlace::shore) return shore_cover_findings(zone, waters, wording);
  const auto slope = covered_slope(zone, section, waters);
  if (!slope) return {not_placed(zone)};
  std::vector<Finding> findings{cover_bottom_finding(zone, *slope, waters, wording)};
  const auto edges = shear_at_edge(*slope, waters);
  if (edges.empty()) findings.push_back(without_frequent_flow(zone));
  for (const auto& edge : edges) {
    auto two = cover_water_findings(zone, *section, *slope, edge, wording);
    for (auto& one : two) findings.push_back(std::move(one));
  }
  findings.push_back(blanket_finding(zone, *slope, edges, wording));
  for (auto& one : cover_making_findings(zone, *slope, edges, wording)) {
    findings.push_back(std::move(one));
  }
  return findings;
}

}  // namespace proofstone
