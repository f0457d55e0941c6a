#include <fmt/format.h>

#include <algorithm>

#include "engine/cover/blanket_types.h"
#include "engine/quantity/rounding.h"
#include "engine/site/zone_cover_findings.h"

namespace proofstone {
namespace {

Stress greatest_shear(const std::vector<ShearAtEdge>& edges) {
  Stress greatest;
  for (const auto& edge : edges) greatest = std::max(greatest, edge.shear);
  return greatest;
}

bool steep_enough(const BlanketType& type, Angle angle) {
  return type.steepest.radians() >= angle.radians() - rounding;
}

/// The types that suit slope, time and shear, the weakest first; none that stays for ever.
std::vector<std::string> types_that_serve(Angle angle, Dimensionless months, Stress shear) {
  std::vector<std::string> ids;
  for (const BlanketType& type : blanket_types()) {
    const bool serves = type.months && *type.months >= months && steep_enough(type, angle) &&
                        type.tabulated_shear >= shear;
    if (serves) ids.push_back(type.id);
  }
  return ids;
}

void state_type(const BlanketType& type, Finding& finding) {
  finding.steps.given("θ_max", "steepest slope the type is meant for",
                      measure(slope_of(type.steepest)), type.source.sentence());
  finding.steps.given("τ_tab", "its permissible shear by the table", measure(type.tabulated_shear),
                      type.source.sentence());
  if (type.months) {
    finding.steps.given("months", "how long it lasts", measure(*type.months),
                        type.source.sentence());
  }
  finding.sources.push_back(type.source);
}

void judge_time(const ZoneCover& cover, const BlanketType& type, Finding& finding) {
  if (!type.months) {
    worsen(finding, Outcome::ask_the_designer,
           "It does not rot; topsoil over rock calls for a blanket that does.",
           "Take a biodegradable type, or let the designer say why not.");
    return;
  }
  if (!cover.months_to_establish) {
    worsen(finding, Outcome::not_yet_known, "How long plants need until they hold is not stated.",
           "State months_to_establish of the cover.");
    return;
  }
  const double needed = cover.months_to_establish->number();
  if (type.months->number() < needed - rounding) {
    worsen(finding, Outcome::falls_short,
           fmt::format("It lasts {} months; plants need {} to hold.",
                       significant(type.months->number(), 3), significant(needed, 3)),
           "Take a type that lasts longer.");
  } else {
    finding.sentence += fmt::format(" It lasts {} months; plants need {}.",
                                    significant(type.months->number(), 3), significant(needed, 3));
  }
}

void name_types(const ZoneCover& cover, const CoveredSlope& slope, Stress shear, Finding& finding) {
  if (!cover.months_to_establish) return;
  const auto ids = types_that_serve(slope.angle, *cover.months_to_establish, shear);
  finding.reasons.push_back(
      ids.empty() ? "No type of the table that rots suits this slope, time and shear."
                  : fmt::format("Types of the table that suit this slope, time and shear: {}.",
                                listed(ids)));
}

}  // namespace

Finding blanket_finding(const Zone& zone, const CoveredSlope& slope,
                        const std::vector<ShearAtEdge>& edges, const Wording& wording) {
  Finding finding = begin_cover_finding(zone, "blanket", "Blanket");
  const ZoneCover& cover = *zone.cover;
  finding.sources.push_back({"common practice",
                             "topsoil over rock calls for a biodegradable blanket",
                             SourceStanding::common_practice});
  finding.steps.given("θ", "slope of the ground", measure(slope_of(slope.angle)));
  const Stress shear = greatest_shear(edges);
  name_types(cover, slope, shear, finding);
  if (!cover.blanket) {
    if (cover.topsoil) {
      worsen(finding, Outcome::ask_the_designer, "Topsoil lies over the rock without a blanket.",
             "Lay a biodegradable blanket over it, or say why none is needed.");
    } else {
      finding.sentence = "There is no topsoil to hold.";
    }
    return finding;
  }
  const BlanketType& type = *find_blanket_type(cover.blanket->type);
  state_type(type, finding);
  finding.sentence = fmt::format("Type {}, {}.", type.id, type.name);
  if (!steep_enough(type, slope.angle)) {
    worsen(finding, Outcome::falls_short,
           fmt::format("It is meant for slopes up to {}; this one stands at {}.",
                       wording.of(type.steepest), wording.of(slope.angle)),
           "Take a type for this slope.");
  }
  judge_time(cover, type, finding);
  if (shear > type.tabulated_shear) {
    worsen(finding, Outcome::falls_short,
           fmt::format("Its table gives {}; the frequent flow pulls with {}.",
                       wording.of(type.tabulated_shear), wording.of(shear)),
           "Take a stronger type, or begin the cover higher.");
  }
  return finding;
}

}  // namespace proofstone
