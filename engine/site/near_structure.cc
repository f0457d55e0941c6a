#include "engine/site/near_structure.h"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/sizing/bend_velocity.h"

namespace proofstone {
namespace {

/// A choice as it is published.
struct Multiplier {
  double factor = 1;
  bool on_mean_velocity = false;
  const char* words = "";
  Source source;
};

Multiplier multiplier_of(const NearStructure& near) {
  const Source piers{"FHWA HEC-23 Vol. 2, 3rd ed. (2009)", "Design Guideline 11, K1 with K2 = 1",
                     SourceStanding::memory};
  switch (near.choice) {
    case NearbyStructure::impinging_flow:
      return {1.6,
              true,
              "where braided or oblique flow runs at the rock",
              {"WES Streambank Handbook (1997)", "App. A, p. A-26", SourceStanding::published}};
    case NearbyStructure::round_pier:
      return {1.5, false, "beside a pier with a round nose", piers};
    case NearbyStructure::square_pier:
      return {1.7, false, "beside a pier with a square face", piers};
    case NearbyStructure::stated:
      break;
  }
  return {near.factor.number(),
          near.on_mean_velocity,
          "as stated",
          {near.from, "", SourceStanding::stated}};
}

/// At the outer bank of a bend; zero elsewhere.
Velocity bend_velocity(const ZoneSetting& setting) {
  if (setting.bend_side != BendSide::outside || !setting.bend_radius) return {};
  return setting.average_velocity *
         bend_velocity_ratio(setting.channel_form, *setting.bend_radius, setting.water_top_width)
             .number();
}

}  // namespace

std::optional<NearStructure> read_near_structure(FieldReader& zone, bool in_stream,
                                                 Problems& problems) {
  const auto* json = zone.optional("near_structure");
  if (json == nullptr) return std::nullopt;
  if (!in_stream) {
    zone.report("not-here", "Only zones on a bank or bed take a structure nearby.",
                "near_structure", "a zone whose place is bank or bed");
    return std::nullopt;
  }
  FieldReader reader(*json, zone.pointer() + "/near_structure", problems);
  NearStructure near;
  near.choice = reader.choice<NearbyStructure>("choice",
                                               {{"impinging flow", NearbyStructure::impinging_flow},
                                                {"round pier", NearbyStructure::round_pier},
                                                {"square pier", NearbyStructure::square_pier},
                                                {"stated", NearbyStructure::stated}},
                                               std::nullopt);
  if (near.choice == NearbyStructure::stated) {
    near.factor = reader.required_quantity<Dimensionless>("factor");
    if (!(near.factor.number() >= 1 && near.factor.number() <= 5)) {
      reader.report("out-of-range", "A structure nearby raises the velocity.", "factor", "1 to 5");
    }
    near.on_mean_velocity = reader.choice<bool>(
        "on", {{"mean velocity", true}, {"local velocity", false}}, std::nullopt);
    near.from = reader.required_text("from");
  }
  reader.finish();
  return near;
}

HeldJson choices_near_structure(const Zone& zone, Velocity at_rock) {
  const std::string velocity = exact_text(measure(at_rock), unit::meter_per_second);
  const bool impinges = zone.near_structure->choice == NearbyStructure::impinging_flow;
  nlohmann::json put_in = {
      {"usace-bank-and-bed", {{"local_velocity", velocity}}},
      {"fhwa-revetment", {{"local_velocity", velocity}}},
      {"california-bank-and-shore", {{"velocity", velocity}, {"attack", "as-given"}}},
      {"isbash", {{"velocity", velocity}, {"velocity_ratio", "1"}}},
      {"escarameia-may", {{"average_velocity", velocity}}},
      {"pilarczyk", {{"velocity", velocity}}}};
  if (impinges) {
    put_in["usace-bank-and-bed"]["attack"] = "impinging";
    put_in["fhwa-revetment"]["attack"] = "impinging";
  }
  nlohmann::json choices = *zone.method_choices;
  for (const auto& [method, inputs] : put_in.items()) {
    auto& chosen = choices[method];
    if (chosen.is_null()) chosen = nlohmann::json::object();
    if (!chosen.is_object()) continue;
    for (const auto& [key, value] : inputs.items()) {
      if (!chosen.contains(key)) chosen[key] = value;
    }
  }
  return HeldJson(choices);
}

void take_near_structure(ZoneWater& water, const Zone& zone, const Wording& wording) {
  if (!zone.near_structure || !water.setting) return;
  ZoneSetting& setting = *water.setting;
  Finding& finding = water.finding;
  const Multiplier multiplier = multiplier_of(*zone.near_structure);
  const Velocity round_bend = bend_velocity(setting);
  // Where the zone states its velocity that is the local one.
  const Velocity local =
      std::max(water.slice_velocity.value_or(setting.average_velocity), round_bend);
  const Velocity base = multiplier.on_mean_velocity ? setting.average_velocity : local;
  const Velocity raised = base * multiplier.factor;
  finding.sources.push_back(multiplier.source);
  finding.steps.given("k_s", fmt::format("factor on the velocity, {}", multiplier.words),
                      measure(multiplier.factor), multiplier.source.sentence());
  finding.steps.computed(
      "V_n", "velocity at the rock near the structure",
      multiplier.on_mean_velocity ? "k_s·V, V of the main channel" : "k_s·max(V_s, V_SS)",
      measure(raised));
  if (raised < round_bend) {
    finding.cautions.push_back(
        fmt::format("The structure nearby would give {}; the bend gives {}, which stands.",
                    wording.of(raised), wording.of(round_bend)));
    return;
  }
  water.velocity_at_rock = raised;
  water.choices = choices_near_structure(zone, raised);
  setting.method_choices = &*water.choices;
  finding.values.push_back({"near_structure_velocity", "V_n",
                            "velocity at the rock near the structure", measure(raised),
                            LengthUse::ground});
  finding.sentence += fmt::format(
      " Near the structure it runs at {} at the rock, {} times {}, {}.", wording.of(raised),
      significant(multiplier.factor, 3),
      multiplier.on_mean_velocity ? "the mean velocity" : "the velocity at the zone's place",
      multiplier.words);
  const auto choice = zone.near_structure->choice;
  if (choice == NearbyStructure::round_pier || choice == NearbyStructure::square_pier) {
    finding.cautions.emplace_back(
        "The factor is the guideline's for rock round the pier itself; for a bank or bed beside it "
        "the designer answers.");
  }
  finding.cautions.emplace_back(
      "Methods that size by shear or by depth alone do not see the structure nearby; read those "
      "that size by the velocity at the rock.");
}

}  // namespace proofstone
