#include "engine/site/zone_mix.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "engine/hydraulics/water_weight.h"
#include "engine/site/designed_mix.h"
#include "engine/site/mix_picture_of.h"
#include "engine/site/mix_stability.h"
#include "engine/site/mix_verdict.h"

namespace proofstone {
namespace {

Finding begin_finding(const Zone& zone, const char* what, std::string title) {
  Finding finding;
  finding.topic = Topic::mix;
  finding.about.zone = zone.id;
  finding.id = fmt::format("{}.{}", what, zone.id);
  finding.title = std::move(title);
  return finding;
}

/// "13 parts", or "13 buckets" where the mix states its bucket.
std::string parts_text(double parts, const SiteMix& mix) {
  const auto word = mix.bucket ? "bucket" : "part";
  return fmt::format("{} {}{}", significant(parts, 4), word, std::abs(parts - 1) < 1e-9 ? "" : "s");
}

std::string ratio_text(const PreparedMix& prepared) {
  const auto& mix = prepared.mix;
  std::vector<std::string> fills;
  for (std::size_t i = 0; i < mix.fills.size(); ++i) {
    fills.push_back(fmt::format("{} of {}", parts_text(mix.fill_parts[i], *prepared.site_mix),
                                mix.fills[i].name));
  }
  return fmt::format("{} of {} to {}", parts_text(mix.rock_parts, *prepared.site_mix),
                     prepared.rock_class->name, listed(fills));
}

void state_balance(const PreparedMix& prepared, const MixBalance& balance, Finding& finding) {
  auto& steps = finding.steps;
  steps.given("n", "voids of the rock", measure(prepared.mix.rock.voids), "document");
  for (std::size_t i = 0; i < prepared.mix.fills.size(); ++i) {
    const auto& fill = prepared.mix.fills[i];
    steps.computed("r", "loose " + fill.name + " to rock", "its parts over those of the rock",
                   measure(prepared.mix.fill_parts[i] / prepared.mix.rock_parts));
    if (fill.in_place_over_loose) {
      steps.given("c", fill.name + ", in place over loose", measure(*fill.in_place_over_loose),
                  prepared.materials[i] == nullptr ? "catalog" : "document");
    }
    if (fill.porosity) {
      steps.given("n_f", "porosity in place of " + fill.name, measure(*fill.porosity),
                  prepared.materials[i] == nullptr ? "catalog" : "document");
    }
  }
  const bool one = prepared.mix.fills.size() == 1;
  steps.computed("V_f", "fill in place for each volume of rock",
                 one ? "r·c" : "solids of all fills over the density they pack to together",
                 measure(balance.fill_in_place), one ? "" : "de Larrard (1999), K = 4.5");
  steps.computed("S", "degree of filling", "V_f/n", measure(balance.filling));
  steps.computed("", "volume of the mix over that of its rock", "1 + V_f − n, not below 1",
                 measure(balance.bulking));
  finding.state("filling", "S", "degree of filling: 1 is full", measure(balance.filling));
  finding.state("bulking", "", "volume of the mix over that of its rock", measure(balance.bulking));
  if (!balance.dilation) return;
  steps.computed("Φ", "solids share of the mix, mixed before placing",
                 "compressible packing of all sizes, K = 4.5",
                 measure(balance.mix_density.value_or(0)),
                 "de Larrard (1999) (from memory; confirm)");
  steps.computed("", "dilation of the rock", "φ_rock/(Φ·y_rock)", measure(*balance.dilation));
  finding.state("dilation", "", "dilation of the rock if mixed before placing",
                measure(*balance.dilation));
}

/// Loose volumes and masses for one unit volume of the layer.
void state_quantities(const Site& site, const Zone& zone, const PreparedMix& prepared,
                      const MixBalance& balance, const Wording& wording, Finding& finding) {
  const bool si = wording.units() == UnitSystem::si;
  const Volume unit = si ? Volume::cubic_meters(1) : Volume::cubic_yards(1);
  const std::string each = si ? " for each m³ of layer" : " for each yd³ of layer";
  const Volume rock = unit / balance.bulking;
  const double gravity = site.sources.at(zone.source).rock.specific_gravity.number();
  const Density bulk = gravity * (1 - prepared.mix.rock.voids) * water_density;
  finding.state("rock_volume", "", "rock" + each, measure(rock));
  finding.state("rock_mass", "", "mass of that rock",
                measure(Mass::kilograms(bulk.kilograms_per_cubic_meter() * rock.cubic_meters())));
  for (std::size_t i = 0; i < prepared.mix.fills.size(); ++i) {
    const auto& fill = prepared.mix.fills[i];
    const auto key = fmt::format("fill_{}", i + 1);
    const Volume loose = prepared.mix.fill_parts[i] / prepared.mix.rock_parts * rock;
    finding.state(key + "_loose", "", "loose " + fill.name + each, measure(loose));
    const auto* material = prepared.materials[i];
    if (material != nullptr && material->state.loose_over_bank) {
      finding.state(key + "_bank", "", fill.name + " as it lies in the ground",
                    measure(loose / material->state.loose_over_bank->number()));
    }
    if (material == nullptr || !material->state.specific_gravity || balance.solids.size() <= i) {
      continue;
    }
    const Mass mass = Mass::kilograms(material->state.specific_gravity->number() *
                                      water_density.kilograms_per_cubic_meter() *
                                      balance.solids[i] * rock.cubic_meters());
    finding.state(key + "_mass", "", "dry mass of that " + fill.name, measure(mass));
    if (material->state.load) {
      finding.state(key + "_loads", "", "loads of " + fill.name + " for a hundred times as much",
                    measure(100 * mass.kilograms() / material->state.load->kilograms()));
    }
    if (material->state.price_per_tonne) {
      finding.state(key + "_cost", "", "cost of that " + fill.name + ", dry",
                    measure(mass.tonnes() * *material->state.price_per_tonne));
    }
  }
  if (!prepared.site_mix->bucket) return;
  const Volume of_rock = prepared.mix.rock_parts * *prepared.site_mix->bucket;
  finding.state("batch_in_place", "", "layer that one batch of buckets makes",
                measure(balance.bulking * of_rock));
}

void add_sources(const PreparedMix& prepared, Finding& finding) {
  finding.sources.push_back(
      {"volume balance of rock, voids and fill", "S = r·c/n", SourceStanding::computed});
  finding.sources.push_back({"F. de Larrard, Concrete Mixture Proportioning (1999)",
                             "compressible packing model", SourceStanding::memory});
  finding.sources.push_back({"trade", "a dilation above 1.05 loses the contact of the rock",
                             SourceStanding::common_practice});
  if (prepared.recipe != nullptr) {
    finding.sources.push_back(prepared.recipe->source);
    for (const auto& note : prepared.recipe->notes) finding.reasons.push_back(note);
  }
  finding.cautions.push_back(
      "Voids and shrinking are known by weighing and by a box test, not by tables: make a trial "
      "batch before the layer is placed.");
}

Finding mix_finding(const Site& site, const Zone& zone, const PreparedMix& prepared,
                    const Expected<MixBalance>& balance, const Wording& wording) {
  auto finding =
      begin_finding(zone, "mix", fmt::format("{} in {}", prepared.site_mix->name, zone.name));
  finding.governs = true;
  add_sources(prepared, finding);
  if (prepared.rock_class->id != zone.rock_class) {
    finding.outcome = Outcome::ask_the_designer;
    finding.sentence = fmt::format("The mix is made of {}, and the zone asks for another class.",
                                   prepared.rock_class->name);
    finding.next = "Name the class of the zone in the mix, or make the zone of the mix's class.";
    return finding;
  }
  if (!balance) {
    finding.outcome = Outcome::not_yet_known;
    finding.sentence = "What the mix comes to is not known.";
    for (const auto& problem : balance.problems()) finding.reasons.push_back(problem.sentence());
    finding.next = advice_beyond_packing(balance.problems());
    if (finding.next.empty()) {
      finding.next =
          "State of each fill its porosity in place and its loose_over_bank and "
          "in_place_over_bank.";
    }
    return finding;
  }
  state_balance(prepared, *balance, finding);
  judge_mix(prepared, *balance, ratio_text(prepared), finding);
  state_quantities(site, zone, prepared, *balance, wording, finding);
  return finding;
}

/// Proportions in whole buckets that fit, of the materials to design with.
Finding design_finding(const Site& site, const Zone& zone, const PreparedMix& prepared,
                       const Expected<DesignedMix>& made, const Wording& wording) {
  auto finding =
      begin_finding(zone, "mix-proposed", fmt::format("Proportions that fit in {}", zone.name));
  add_sources(prepared, finding);
  if (!made) {
    finding.outcome = Outcome::not_yet_known;
    finding.sentence = "No proportions could be found.";
    for (const auto& problem : made.problems()) finding.reasons.push_back(problem.sentence());
    finding.next = advice_beyond_packing(made.problems());
    if (finding.next.empty()) {
      finding.next = "Give what is missing of the materials, or offer others.";
    }
    return finding;
  }
  const auto balance = balance_of(made->mix.mix);
  if (!balance) return finding;
  state_balance(made->mix, *balance, finding);
  judge_mix(made->mix, *balance, ratio_text(made->mix), finding);
  finding.sentence += what_is_kept(site, zone, *made, wording);
  const auto advice = advice_on_kept(zone, made->design);
  if (finding.outcome == Outcome::meets && !advice.empty()) finding.next += " " + advice;
  finding.reasons.insert(finding.reasons.end(), made->left_out.begin(), made->left_out.end());
  return finding;
}

}  // namespace

ZoneMix mix_in_zone(const Site& site, const Zone& zone, const Wording& wording) {
  ZoneMix result;
  if (zone.mix.empty()) return result;
  const auto prepared = prepare_mix(site, zone);
  if (!prepared) {
    auto finding = begin_finding(zone, "mix",
                                 fmt::format("{} in {}", site.mixes.at(zone.mix).name, zone.name));
    finding.governs = true;
    finding.sentence = "What the mix comes to is not known.";
    for (const auto& problem : prepared.problems()) finding.reasons.push_back(problem.sentence());
    finding.next = prepared.problems().front().sentence();
    result.findings.push_back(std::move(finding));
    return result;
  }
  const bool to_design = prepared->mix.fills.empty();
  if (!to_design) {
    const auto balance = balance_of(prepared->mix);
    result.findings.push_back(mix_finding(site, zone, *prepared, balance, wording));
    if (balance) {
      result.picture = mix_picture(zone, *prepared, *balance);
      if (auto stability = mix_stability(site, zone, *prepared, *balance, wording)) {
        result.findings.push_back(std::move(*stability));
      }
    }
    if (result.findings.front().outcome == Outcome::meets) return result;
  }
  const auto made = designed_mix(site, zone, *prepared);
  auto proposed = design_finding(site, zone, *prepared, made, wording);
  proposed.governs = to_design;
  result.findings.push_back(std::move(proposed));
  if (!to_design || !made) return result;
  const auto balance = balance_of(made->mix.mix);
  if (!balance) return result;
  result.picture = mix_picture(zone, made->mix, *balance);
  if (auto stability = mix_stability(site, zone, made->mix, *balance, wording)) {
    result.findings.push_back(std::move(*stability));
  }
  return result;
}

}  // namespace proofstone
