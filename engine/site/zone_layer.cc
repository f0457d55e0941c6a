#include "engine/site/zone_layer.h"

#include <fmt/format.h>

#include "engine/quantity/rounding.h"

namespace proofstone {
namespace {

bool governed_by_steep_slope(const ZoneSizing& sizing) {
  return sizing.governing &&
         sizing.asked[*sizing.governing].method->description().id == "usace-steep-slope";
}

LayerThicknessInputs layer_of(const ZoneSizing& sizing, const RockClass& rock_class) {
  const Zone& zone = *sizing.zone;
  LayerOfPlace at;
  at.place = zone.place;
  if (governed_by_steep_slope(sizing)) at.sized_by = SizedBy::usace_steep_slope;
  if (zone.scour) {
    at.contraction_scour = zone.scour->contraction.value_or(Length{});
    at.degradation = zone.scour->long_term.value_or(Length{});
  }
  return layer_of_class(rock_class, zone.placement, at);
}

Finding begin_finding(const Zone& zone, const RockClass& specified) {
  Finding finding;
  finding.topic = Topic::layer;
  finding.about.zone = zone.id;
  finding.about.rock_class = specified.id;
  finding.about.method = layer_thickness_method().description().id;
  finding.id = "layer." + zone.id;
  finding.title = fmt::format("Layer thickness in {}", zone.name);
  return finding;
}

/// What the rule of the place leaves open.
void caution_of_place(const Zone& zone, Finding& finding) {
  if (zone.place == ZonePlace::pier && !(zone.scour && zone.scour->contraction)) {
    finding.cautions.push_back(
        "Contraction scour is not stated for this pier; where it is deeper than three median sizes "
        "it and the long-term lowering of the bed make the layer.");
  } else if (zone.place == ZonePlace::basin) {
    finding.cautions.push_back("The slope that the water enters the basin by takes 3·D50.");
  } else if (zone.place == ZonePlace::chute) {
    finding.cautions.push_back(
        "Where a method leaves water running inside the rock, see the thickness that it asks for.");
  }
}

}  // namespace

Expected<LayerThicknessResult> least_layer(const ZoneSizing& sizing, const RockClass& rock_class,
                                           Steps& steps) {
  return layer_thickness(layer_of(sizing, rock_class), steps);
}

Finding layer_finding(const ZoneSizing& sizing, const Wording& wording) {
  const Zone& zone = *sizing.zone;
  Finding finding = begin_finding(zone, *sizing.specified);
  const auto layer = least_layer(sizing, *sizing.specified, finding.steps);
  if (!layer) {
    finding.outcome = Outcome::not_yet_known;
    for (const auto& problem : layer.problems()) finding.reasons.push_back(problem.sentence());
    finding.sentence = "The least thickness could not be found. " + finding.reasons.front();
    finding.next = "Give the class its largest stone.";
    return finding;
  }
  finding.sources.push_back(layer->source);
  const double margin = zone.layer_thickness / layer->least;
  finding.steps.given_rock("T", "specified thickness", zone.layer_thickness, "document");
  finding.margin = Margin{margin, std::nullopt, std::nullopt};
  finding.values.push_back({"least_thickness", "T min", "least layer thickness",
                            measure(layer->least), LengthUse::rock});
  const bool thick_enough = margin >= 1 - rounding;
  finding.outcome = thick_enough ? Outcome::meets : Outcome::falls_short;
  finding.sentence = fmt::format("{} is specified; at least {} is needed, governed by {}.",
                                 wording.rock(zone.layer_thickness), wording.rock(layer->least),
                                 layer->governed_by);
  finding.next = thick_enough ? "Nothing to do."
                              : fmt::format("Draw the layer {} thick.", wording.rock(layer->least));
  caution_of_place(zone, finding);
  return finding;
}

}  // namespace proofstone
