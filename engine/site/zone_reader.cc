#include "engine/site/zone_reader.h"

#include <fmt/format.h>

#include "engine/method/registry.h"
#include "engine/site/cover_reader.h"
#include "engine/site/filter_reader.h"
#include "engine/site/kinds_reader.h"
#include "engine/site/near_structure.h"
#include "engine/site/ordering_reader.h"
#include "engine/site/scour_reader.h"
#include "engine/site/uncertainty_reader.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {
namespace {

std::optional<Bend> read_bend(FieldReader& zone, Problems& problems) {
  const auto* json = zone.optional("bend");
  if (json == nullptr) return std::nullopt;
  FieldReader reader(*json, zone.pointer() + "/bend", problems);
  Bend bend;
  bend.side = reader.choice<BendSide>(
      "side", {{"outside", BendSide::outside}, {"inside", BendSide::inside}}, std::nullopt);
  bend.radius = reader.required_positive<Length>("radius", "A bend radius is more than zero.");
  reader.finish();
  return bend;
}

std::optional<AlongCentreline> read_along(FieldReader& zone, Problems& problems) {
  const auto* json = zone.optional("along");
  if (json == nullptr) return std::nullopt;
  FieldReader reader(*json, zone.pointer() + "/along", problems);
  AlongCentreline along;
  along.centreline = reader.required_text("centreline");
  along.from = reader.required_quantity<Length>("from");
  along.to = reader.required_quantity<Length>("to");
  if (along.from.meters() < 0 || along.to < along.from) {
    reader.report("bad-stretch", "The stretch does not run downstream from the first point.", "to",
                  "0 or more, from before to");
  }
  reader.finish();
  return along;
}

/// The choices are read by the method itself when the water is known.
void read_freeboard(FieldReader& reader, Zone& zone) {
  const auto* json = reader.optional("freeboard");
  if (json == nullptr) return;
  if (!json->is_object() || !json->contains("rule")) {
    reader.report("not-a-rule", "A freeboard names its rule.", "freeboard",
                  "{ \"rule\": \"usace-riprap\" }, or another rule of the freeboard method");
    return;
  }
  zone.freeboard = HeldJson(*json);
}

StatedWater read_stated_water(FieldReader& reader) {
  StatedWater water;
  water.from = reader.required_text("from");
  water.discharge = reader.optional_quantity<Discharge>("discharge");
  water.velocity = reader.optional_quantity<Velocity>("velocity");
  water.depth = reader.optional_quantity<Length>("depth");
  water.tailwater_depth = reader.optional_quantity<Length>("tailwater_depth");
  water.water_level = reader.optional_quantity<Length>("water_level");
  water.wave_height = reader.optional_quantity<Length>("wave_height");
  const auto not_negative = [&reader](const char* field, const auto& value) {
    if (value && value->si() < 0) {
      reader.report("negative", "This is never less than zero.", field, "0 or more");
    }
  };
  not_negative("discharge", water.discharge);
  not_negative("velocity", water.velocity);
  not_negative("depth", water.depth);
  not_negative("tailwater_depth", water.tailwater_depth);
  not_negative("wave_height", water.wave_height);
  return water;
}

void read_stated_waters(FieldReader& zone_reader, Zone& zone, Problems& problems) {
  const auto* json = zone_reader.optional("water");
  if (json == nullptr) return;
  if (!json->is_object()) {
    zone_reader.report("not-an-object", "Stated water under the ids of flow cases belongs here.",
                       "water", "{ \"flow case id\": { \"from\": …, \"velocity\": … } }");
    return;
  }
  for (const auto& [flow_case, value] : json->items()) {
    FieldReader reader(value, zone_reader.pointer() + "/water/" + flow_case, problems);
    zone.water[flow_case] = read_stated_water(reader);
    reader.finish();
  }
}

/// Weights are the owner's and stand in the document by name; none is ever supposed.
void read_weights(FieldReader& reader, Zone& zone) {
  const auto* weights = reader.required("weights");
  if (weights == nullptr) return;
  if (!weights->is_object() || weights->empty()) {
    reader.report("not-an-object", "Weights under the ids of sizing methods belong here.",
                  "weights", "{ \"method id\": a number above zero }");
    return;
  }
  for (const auto& [id, weight] : weights->items()) {
    if (find_sizing_method(id) == nullptr) {
      reader.report("unknown-method", fmt::format("No sizing method is called \"{}\".", id),
                    "weights/" + id, "the id of a sizing method");
    } else if (!weight.is_number() || !(weight.get<double>() > 0) ||
               !(weight.get<double>() <= 1e6)) {
      reader.report("not-a-number", "A weight is a number above zero.", "weights/" + id,
                    "more than 0, at most 1000000");
    } else {
      zone.weights[id] = weight.get<double>();
    }
  }
}

void read_policy(FieldReader& reader, Zone& zone) {
  const auto policy = reader.optional_text("governing", "envelope");
  if (policy == "envelope") return;
  if (policy == "weighted") {
    zone.policy = GoverningPolicy::weighted;
    read_weights(reader, zone);
    return;
  }
  zone.policy = GoverningPolicy::chosen;
  zone.chosen_method = policy;
  if (find_sizing_method(policy) != nullptr) return;
  std::string allowed = "\"envelope\", \"weighted\"";
  for (const auto* method : sizing_methods()) allowed += ", \"" + method->description().id + "\"";
  reader.report("unknown-word", "This is not a way to govern the size.", "governing", allowed);
}

void read_method_choices(FieldReader& reader, Zone& zone) {
  const auto* choices = reader.optional("method_choices");
  if (choices == nullptr) return;
  if (!choices->is_object()) {
    reader.report("not-an-object", "Choices under method ids belong here.", "method_choices",
                  "{ \"method id\": { \"input\": \"value\" } }");
    return;
  }
  for (const auto& [id, value] : choices->items()) {
    if (find_method(id) == nullptr) {
      reader.report("unknown-method", fmt::format("No method is called \"{}\".", id),
                    "method_choices/" + id, "the id of a sizing method");
    }
  }
  zone.method_choices = HeldJson(*choices);
}

}  // namespace

Zone read_zone(FieldReader& reader, const std::string& id, Problems& problems) {
  Zone zone;
  zone.id = id;
  zone.name = reader.required_text("name");
  zone.place = reader.choice<ZonePlace>("place", zone_place_words(), std::nullopt);
  zone.section =
      in_stream(zone.place) ? reader.required_text("section") : reader.optional_text("section");
  if (zone.place == ZonePlace::bank) {
    zone.bank = reader.choice<BankSide>(
        "bank", {{"left", BankSide::left}, {"right", BankSide::right}}, std::nullopt);
  }
  zone.toe_station = reader.optional_quantity<Length>("toe_station");
  zone.top_station = reader.optional_quantity<Length>("top_station");
  zone.bend = read_bend(reader, problems);
  zone.along = read_along(reader, problems);
  read_freeboard(reader, zone);
  zone.channel_form = reader.choice<ChannelForm>(
      "channel_form",
      {{"natural", ChannelForm::natural}, {"trapezoidal", ChannelForm::trapezoidal}},
      ChannelForm::natural);
  zone.turbulence = reader.choice<Turbulence>(
      "turbulence", {{"low", Turbulence::low}, {"high", Turbulence::high}}, Turbulence::low);
  read_stated_waters(reader, zone, problems);
  zone.near_structure = read_near_structure(reader, in_stream(zone.place), problems);
  zone.rock_class = reader.required_text("class");
  zone.source = reader.required_text("source");
  zone.layer_thickness =
      reader.required_positive<Length>("layer_thickness", "A layer has a thickness.");
  zone.placement = reader.choice<Placement>(
      "placement", {{"dry", Placement::dry}, {"under water", Placement::under_water}},
      Placement::dry);
  read_soil_and_filter(reader, zone, problems);
  zone.mix = reader.optional_text("mix");
  zone.extent = read_extent(reader, problems);
  read_scour_and_toe(reader, zone, problems);
  read_kinds(reader, zone, problems);
  zone.cover = read_cover(reader, problems);
  read_policy(reader, zone);
  read_method_choices(reader, zone);
  zone.uncertainty = read_uncertainty(reader, problems);
  return zone;
}

}  // namespace proofstone
