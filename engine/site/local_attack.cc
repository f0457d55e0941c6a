#include "engine/site/local_attack.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/hydraulics/slice_flow.h"
#include "engine/hydraulics/water_weight.h"
#include "engine/sizing/bend_velocity.h"
#include "engine/sizing/hec15_curves.h"
#include "engine/sizing/superelevation.h"

namespace proofstone {
namespace {

/// Each part of the flow is cut into at least this many slices.
constexpr double slices_across_part = 60;

const char* const hec15_bend = "FHWA HEC-15 3rd ed. (2005) eqs. 3.6 and 3.7 (from memory; confirm)";

/// 20 % up the slope on a bank; the deepest place on a bed.
Length place_of(const ZoneWater& water, const SiteSection& section) {
  if (water.bank) return water.bank->local_station;
  const auto& points = section.survey.points();
  return std::min_element(
             points.begin(), points.end(),
             [](const SectionPoint& a, const SectionPoint& b) { return a.elevation < b.elevation; })
      ->station;
}

/// The part of the flow that holds a station.
const FlowPart* part_at(const SectionFlow& flow, Length station) {
  for (const FlowPart& part : flow.parts) {
    if (part.left <= station && station <= part.right && part.area.si() > 0) return &part;
  }
  return nullptr;
}

void explain_slice(const FlowSlice& slice, const FlowPart& part, Length station, Steps& steps) {
  steps.given("x", "station of the zone's own place", measure(station),
              "20 % up the slope on a bank, the deepest place on a bed");
  steps.given("Q_p", "discharge of its part of the section", measure(part.discharge));
  steps.computed("a", "area of the slice there", "Σ Δx·(d₁+d₂)/2", measure(slice.area));
  steps.computed("p", "ground under it", "Σ √(Δx²+Δz²)", measure(slice.wetted_perimeter));
  steps.computed("V_s", "velocity of the slice", "(Q_p/ΣK)·K/a, K = a·(a/p)^⅔/n",
                 measure(slice.velocity), slice_flow_source().sentence());
  steps.computed("q", "discharge for each unit of width", "V_s·a/T", measure(slice.unit_discharge));
  steps.computed("τ", "shear on its ground", "γ·(a/p)·S, γ = 62.4 lb/ft³", measure(slice.shear));
  steps.computed("Fr_s", "Froude number of the slice", "V_s/√(g·a/T)",
                 measure(slice.froude_number));
}

void state_slice(Finding& finding, const FlowSlice& slice) {
  finding.state("slice_velocity", "V_s", "velocity at the zone's own place, straight reach",
                measure(slice.velocity));
  finding.state("unit_discharge", "q", "discharge for each unit of width there",
                measure(slice.unit_discharge));
  finding.state("slice_shear", "τ", "shear on the ground there, straight reach",
                measure(slice.shear));
  finding.state("slice_froude_number", "Fr_s", "Froude number there", measure(slice.froude_number));
}

/// Velocity and shear at the outer bank.
void add_bend(Finding& finding, const ZoneSetting& setting, const Wording& wording) {
  const Length radius = *setting.bend_radius;
  const Length width = setting.water_top_width;
  const Dimensionless ratio = bend_velocity_ratio(setting.channel_form, radius, width);
  const Velocity velocity = setting.average_velocity * ratio.number();
  const double kb = hec15::bend_factor(radius / width);
  const Stress straight =
      Stress::pascals(water_unit_weight.newtons_per_cubic_meter() * setting.toe_depth.meters() *
                      setting.energy_slope.ratio());
  const Stress shear = straight * kb;
  const Length rise = rise_at_zone(setting);
  Steps& steps = finding.steps;
  steps.given("R", "centreline radius of the bend", measure(radius));
  steps.computed("V_SS/V", "bank velocity over mean velocity",
                 bend_velocity_formula(setting.channel_form), measure(ratio),
                 bend_velocity_source().sentence());
  steps.computed("V_SS", "velocity at the outer bank", "(V_SS/V)·V", measure(velocity));
  steps.computed("Kb", "bend factor on shear, by R/T",
                 "2.38 − 0.206·r + 0.0073·r², 2.00 where r ≤ 2, 1.05 where r ≥ 10", measure(kb),
                 hec15_bend);
  steps.computed("τ_b", "greatest shear in the bend", "Kb·γ·y·S, y at the toe", measure(shear));
  steps.computed("Δy", "rise of the water at the outer bank",
                 setting.froude_number.number() < 1 ? "0.5·V²·W/(g·R)" : "1.0·V²·W/(g·R)",
                 measure(rise), superelevation_source().sentence());
  finding.state("bend_velocity", "V_SS", "velocity at the outer bank of the bend",
                measure(velocity));
  finding.state("bend_shear", "τ_b", "greatest shear in the bend", measure(shear));
  finding.state("superelevation", "Δy", "rise of the water at the outer bank", measure(rise));
  finding.sentence += fmt::format(
      " Round the bend the outer bank meets {} and {}, and the water stands {} higher there.",
      wording.of(velocity), wording.of(shear), wording.ground(rise));
}

}  // namespace

Length rise_at_zone(const ZoneSetting& setting) {
  if (setting.bend_side != BendSide::outside || !setting.bend_radius) return {};
  if (!(setting.water_top_width.meters() > 0)) return {};
  return superelevation_rise(setting.average_velocity, setting.water_top_width,
                             *setting.bend_radius, setting.froude_number.number() >= 1);
}

std::vector<FlowSlice> slices_across(const SiteSection& section, const SectionFlow& flow,
                                     Slope energy_slope) {
  std::vector<FlowSlice> all;
  for (const FlowPart& part : flow.parts) {
    if (!(part.discharge.si() > 0)) continue;
    const auto slices =
        slice_flow(section.survey, {part.left, part.right, part.top_width / slices_across_part},
                   {flow.water_level, part.discharge, energy_slope});
    if (slices) all.insert(all.end(), slices->begin(), slices->end());
  }
  return all;
}

void add_local_attack(ZoneWater& water, const Zone& zone, const SiteSection& section,
                      const Wording& wording) {
  if (!water.flow || !water.setting || water.setting->stated.velocity) return;
  Finding& finding = water.finding;
  const Length station = place_of(water, section);
  const FlowPart* part = part_at(*water.flow, station);
  if (part == nullptr) return;
  const auto slices = slices_across(section, *water.flow, water.setting->energy_slope);
  const FlowSlice* slice = slice_at(slices, station);
  if (slice == nullptr) return;
  explain_slice(*slice, *part, station, finding.steps);
  state_slice(finding, *slice);
  water.slice_velocity = slice->velocity;
  finding.sources.push_back(slice_flow_source());
  finding.sentence += fmt::format(
      " At the zone's own place a straight reach would run at {} with a "
      "shear of {}.",
      wording.of(slice->velocity), wording.of(slice->shear));
  if (zone.place == ZonePlace::bank && water.setting->bend_radius &&
      water.setting->bend_side == BendSide::outside) {
    add_bend(finding, *water.setting, wording);
  }
}

}  // namespace proofstone
