#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/cover/bare_soil_shear.h"
#include "engine/cover/blanket_shear.h"
#include "engine/cover/blanket_types.h"
#include "engine/cover/cover_line.h"
#include "engine/cover/lining_limits.h"
#include "engine/hydraulics/slice_flow.h"
#include "engine/site/local_attack.h"
#include "engine/site/zone_cover_findings.h"

namespace proofstone {
namespace {

Finding begin_cover_finding(const Zone& zone, const ShearAtEdge& edge, const char* part,
                            const char* title, const Wording& wording) {
  const FlowCase& flow_case = *edge.water->flow_case;
  Finding finding = begin_cover_finding(zone, fmt::format("{}.{}", flow_case.id, part), title);
  finding.about.flow_case = flow_case.id;
  finding.title += fmt::format(" in the {}", flow_case.name);
  finding.cautions = cover_line_method().description().cautions;
  finding.sources = cover_line_method().description().sources;
  if (!(edge.depth.meters() > 0)) {
    finding.sentence = edge.depth.meters() > -0.01
                           ? fmt::format("{} just reaches the lower edge.", flow_case.name)
                           : fmt::format("{} stays {} below the cover.", flow_case.name,
                                         wording.ground(-1.0 * edge.depth));
    return finding;
  }
  finding.values.push_back({"depth", "y", "depth of water over the lower edge of the cover",
                            measure(edge.depth), LengthUse::ground});
  finding.values.push_back(
      {"shear", "τ", "shear at the lower edge", measure(edge.shear), LengthUse::ground});
  finding.sentence =
      fmt::format("At its lower edge {} stands {} deep and pulls with {}.", flow_case.name,
                  wording.ground(edge.depth), wording.of(edge.shear));
  return finding;
}

void explain_line(const CoveredSlope& slope, const ShearAtEdge& edge, Stress borne,
                  std::optional<Stress> until_grown, Finding& finding, const Wording& wording) {
  const CoverLineInputs inputs{edge.depth,  edge.water->setting->energy_slope,
                               slope.angle, edge.bend_factor,
                               borne,       until_grown};
  const auto line = cover_line(inputs, finding.steps);
  if (!line) return;
  const Length height = until_grown ? line->new_height : line->established_height;
  const Length level = slope.from + height;
  finding.values.push_back({"survives_from", "z_s", "elevation from which it would survive",
                            measure(level), LengthUse::ground});
  if (height.meters() > 0) {
    finding.next += fmt::format(" From {} up it would survive.", wording.ground(level));
  }
}

/// Velocity of the water at the lower edge, as in a straight reach.
std::optional<Velocity> velocity_at_edge(const Zone& zone, const SiteSection& section,
                                         const CoveredSlope& slope, const ZoneWater& water) {
  if (!water.flow || water.setting->stated.velocity) return water.setting->stated.velocity;
  Length station = section.survey.points().front().station;
  if (zone.place == ZonePlace::bank) {
    const auto bank = bank_geometry(section.survey, zone.bank, zone.toe_station, std::nullopt,
                                    slope.from + Length::millimeters(2));
    if (!bank) return std::nullopt;
    station = bank->top_station;
  } else {
    const auto& points = section.survey.points();
    station = std::min_element(points.begin(), points.end(), [](const auto& a, const auto& b) {
                return a.elevation < b.elevation;
              })->station;
  }
  const auto slices = slices_across(section, *water.flow, water.setting->energy_slope);
  const FlowSlice* slice = slice_at(slices, station);
  if (slice == nullptr) return std::nullopt;
  return slice->velocity;
}

/// One figure against a careful and a bold limit.
template <class Q>
void judge_range(const char* what, Q applied, Q low, Q high, Finding& finding,
                 const Wording& wording) {
  const std::string range = fmt::format("{} to {}", wording.of(low), wording.of(high));
  if (applied > high) {
    worsen(finding, Outcome::falls_short,
           fmt::format("The {} of {} is more than it bears, {}.", what, wording.of(applied), range),
           "Leave the rock uncovered, or void-filled, below where the cover survives.");
  } else if (applied > low) {
    worsen(finding, Outcome::ask_the_designer,
           fmt::format("The {} of {} lies within what is said of it, {}.", what,
                       wording.of(applied), range),
           "Let the designer judge between the careful and the bold figure.");
  } else {
    finding.sentence +=
        fmt::format(" It bears a {} of {}, {} here.", what, range, wording.of(applied));
  }
}

Finding grown_finding(const Zone& zone, const SiteSection& section, const CoveredSlope& slope,
                      const ShearAtEdge& edge, const Wording& wording) {
  Finding finding = begin_cover_finding(zone, edge, "grown", "Grown cover", wording);
  if (!(edge.depth.meters() > 0)) return finding;
  const auto& rows = lining_limit_rows();
  const auto row = std::find_if(rows.begin(), rows.end(), [&](const LiningLimit& one) {
    return one.key == zone.cover->plants;
  });
  if (row == rows.end()) {
    worsen(finding, Outcome::not_yet_known, "What grows on it is not stated.",
           "State plants of the cover: a row of the method lining-limits.");
    return finding;
  }
  LiningLimitsInputs inputs;
  inputs.lining = static_cast<int>(row - rows.begin());
  const auto limits = lining_limits(inputs, finding.steps);
  if (!limits) return finding;
  const auto& about = lining_limits_method().description();
  finding.sources.insert(finding.sources.end(), about.sources.begin(), about.sources.end());
  judge_range("shear", edge.shear, limits->shear_low, limits->shear_high, finding, wording);
  if (const auto velocity = velocity_at_edge(zone, section, slope, *edge.water)) {
    finding.values.push_back({"velocity", "V", "velocity at the lower edge, straight reach",
                              measure(*velocity), LengthUse::ground});
    judge_range("velocity", *velocity, limits->velocity_low, limits->velocity_high, finding,
                wording);
  }
  finding.margin = Margin{limits->shear_low / edge.shear, std::nullopt, std::nullopt};
  explain_line(slope, edge, limits->shear_low, std::nullopt, finding, wording);
  return finding;
}

/// Permissible shear of the topsoil alone; nothing where the document does not tell.
std::optional<Stress> topsoil_shear(const ZoneCover& cover, Finding& finding) {
  if (cover.soil->empty()) return std::nullopt;
  const auto evaluation = bare_soil_shear_method().evaluate(*cover.soil);
  if (!evaluation) {
    for (const auto& problem : evaluation.problems()) {
      finding.reasons.push_back("Soil of the cover: " + problem.sentence());
    }
    return std::nullopt;
  }
  finding.steps.append(evaluation->steps);
  return evaluation->output("permissible_shear").unchecked_as<Stress>();
}

void judge_bare_soil(const CoveredSlope& slope, const ShearAtEdge& edge, std::optional<Stress> soil,
                     Finding& finding, const Wording& wording) {
  if (!soil) {
    worsen(finding, Outcome::not_yet_known, "No blanket protects it, and its soil is not stated.",
           "State soil of the cover, or a blanket.");
    return;
  }
  if (edge.shear > *soil) {
    worsen(finding, Outcome::falls_short,
           fmt::format("No blanket protects it, and the soil alone bears {}.", wording.of(*soil)),
           "Lay a blanket, or begin the cover higher.");
  } else {
    finding.sentence += fmt::format(" The soil alone bears {}.", wording.of(*soil));
  }
  explain_line(slope, edge, *soil, *soil, finding, wording);
}

/// Formula and table are both told: they lie far apart.
void judge_blanket(const CoverBlanket& blanket, const BlanketType& type, const CoveredSlope& slope,
                   const ShearAtEdge& edge, std::optional<Stress> soil, Finding& finding,
                   const Wording& wording) {
  finding.sources.push_back(type.source);
  const Stress table = blanket.tested_shear.value_or(type.tabulated_shear);
  finding.values.push_back({"tabulated_shear", "τ_tab",
                            "permissible shear of the type by the table",
                            measure(type.tabulated_shear), LengthUse::ground});
  if (!type.months && !blanket.tested_shear) {
    worsen(finding, Outcome::not_yet_known,
           "The table's shear of a permanent mat holds once plants have grown through it.",
           "State tested_shear of the mat without plants.");
    return;
  }
  if (!soil) {
    const bool over = edge.shear > table;
    worsen(finding, over ? Outcome::falls_short : Outcome::not_yet_known,
           fmt::format("By the table a blanket {} bears {}; what its seed bed bears is not known.",
                       type.id, wording.of(table)),
           over ? "Begin the cover higher, or take another blanket."
                : "State soil of the cover: the seed bed goes long before the table's shear.");
    return;
  }
  const BlanketShearInputs inputs{table, *soil, table, edge.shear, BlanketFactor::si};
  const auto borne = blanket_shear(inputs, finding.steps);
  if (!borne) return;
  const auto& about = blanket_shear_method().description();
  finding.sources.insert(finding.sources.end(), about.sources.begin(), about.sources.end());
  finding.values.push_back({"formula_shear", "τp", "permissible shear of blanket and seed bed",
                            measure(borne->permissible_shear), LengthUse::ground});
  finding.margin = Margin{borne->permissible_shear / edge.shear, std::nullopt, std::nullopt};
  const auto both = fmt::format("A blanket {} bears {} by its seed bed and {} by the table.",
                                type.id, wording.of(borne->permissible_shear), wording.of(table));
  if (edge.shear > table) {
    worsen(finding, Outcome::falls_short, both, "Begin the cover higher, or take another blanket.");
  } else if (edge.shear > borne->permissible_shear) {
    worsen(finding, Outcome::ask_the_designer, both,
           "The table is kept and the seed bed is not: let the designer judge.");
  } else {
    finding.sentence += " " + both;
  }
  explain_line(slope, edge, borne->permissible_shear, borne->permissible_shear, finding, wording);
}

Finding new_finding(const Zone& zone, const CoveredSlope& slope, const ShearAtEdge& edge,
                    const Wording& wording) {
  Finding finding = begin_cover_finding(zone, edge, "new", "New cover", wording);
  if (!(edge.depth.meters() > 0)) return finding;
  const auto soil = topsoil_shear(*zone.cover, finding);
  if (zone.cover->blanket) {
    const auto& blanket = *zone.cover->blanket;
    judge_blanket(blanket, *find_blanket_type(blanket.type), slope, edge, soil, finding, wording);
  } else {
    judge_bare_soil(slope, edge, soil, finding, wording);
  }
  return finding;
}

}  // namespace

std::vector<Finding> cover_water_findings(const Zone& zone, const SiteSection& section,
                                          const CoveredSlope& slope, const ShearAtEdge& edge,
                                          const Wording& wording) {
  std::vector<Finding> findings;
  findings.push_back(new_finding(zone, slope, edge, wording));
  findings.push_back(grown_finding(zone, section, slope, edge, wording));
  return findings;
}

}  // namespace proofstone
