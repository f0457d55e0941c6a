#include "engine/site/scour_reader.h"

#include <algorithm>

namespace proofstone {
namespace {

std::optional<ScourSituation> read_situation(FieldReader& reader) {
  if (!reader.has("situation")) return std::nullopt;
  return reader.choice<ScourSituation>("situation",
                                       {{"straight", ScourSituation::straight},
                                        {"moderate bend", ScourSituation::moderate_bend},
                                        {"severe bend", ScourSituation::severe_bend},
                                        {"right-angle bend", ScourSituation::right_angle_bend},
                                        {"vertical wall", ScourSituation::vertical_wall},
                                        {"pier nose", ScourSituation::pier_nose},
                                        {"guide bank nose", ScourSituation::guide_bank_nose},
                                        {"dam across river", ScourSituation::dam_across_river}},
                                       std::nullopt);
}

std::string allowed_methods() {
  std::string allowed;
  for (const auto& id : scour_method_ids()) {
    allowed += (allowed.empty() ? "\"" : ", \"") + id + "\"";
  }
  return allowed;
}

std::vector<std::string> read_methods(FieldReader& reader) {
  std::vector<std::string> methods;
  const auto* list = reader.optional_list("methods");
  if (list == nullptr) return methods;
  const auto known = scour_method_ids();
  for (std::size_t i = 0; i < list->size(); ++i) {
    const auto& value = (*list)[i];
    const std::string id = value.is_string() ? value.get<std::string>() : std::string();
    const std::string place = "methods/" + std::to_string(i);
    if (std::find(known.begin(), known.end(), id) == known.end()) {
      reader.report("unknown-method", "No method of this name estimates scour at a toe.", place,
                    allowed_methods());
    } else if (std::find(methods.begin(), methods.end(), id) != methods.end()) {
      reader.report("repeated", "This method is named twice.", place, "each method once");
    } else {
      methods.push_back(id);
    }
  }
  return methods;
}

ZoneScour read_scour(FieldReader& reader) {
  ZoneScour scour;
  scour.bed_d50 = reader.optional_positive<Length>("bed_d50");
  scour.bed_d90 = reader.optional_positive<Length>("bed_d90");
  scour.methods = read_methods(reader);
  scour.situation = read_situation(reader);
  scour.long_term = reader.optional_not_negative<Length>("long_term");
  scour.contraction = reader.optional_not_negative<Length>("contraction");
  scour.local = reader.optional_not_negative<Length>("local");
  scour.bedform_rule = reader.choice<BedformRule>(
      "bedforms", {{"added", BedformRule::added}, {"held already", BedformRule::held_already}},
      BedformRule::added);
  if (const auto factor = reader.optional_quantity<Dimensionless>("safety_factor")) {
    scour.safety_factor = *factor;
    if (!(factor->number() >= 1 && factor->number() <= 3)) {
      reader.report("outside-allowed", "This factor is outside what has a meaning.",
                    "safety_factor", "1 to 3");
    }
  }
  scour.least_depth = reader.optional_not_negative<Length>("least_depth");
  return scour;
}

ZoneToe read_toe(FieldReader& reader) {
  ZoneToe toe;
  toe.kind = reader.choice<ToeKind>("kind",
                                    {{"trench", ToeKind::trench},
                                     {"launchable", ToeKind::launchable},
                                     {"thickened", ToeKind::thickened}},
                                    std::nullopt);
  if (toe.kind == ToeKind::trench) {
    toe.depth = reader.required_positive<Length>("depth", "A trench has a depth below the bed.");
    return toe;
  }
  toe.depth = reader.optional_not_negative<Length>("depth").value_or(Length::feet(0));
  if (toe.kind == ToeKind::launchable) {
    toe.stored = reader.required_positive<Area>(
        "stored",
        "A launchable toe stores rock: its cross-section, volume for each unit of length.");
    return toe;
  }
  toe.width = reader.required_positive<Length>("width", "The thicker part has a width.");
  toe.thickness =
      reader.required_positive<Length>("thickness", "The thicker part has a thickness.");
  return toe;
}

}  // namespace

void read_scour_and_toe(FieldReader& zone_reader, Zone& zone, Problems& problems) {
  if (const auto* json = zone_reader.optional("scour")) {
    FieldReader reader(*json, zone_reader.pointer() + "/scour", problems);
    zone.scour = read_scour(reader);
    reader.finish();
  }
  if (const auto* json = zone_reader.optional("toe")) {
    FieldReader reader(*json, zone_reader.pointer() + "/toe", problems);
    zone.toe = read_toe(reader);
    reader.finish();
  }
}

}  // namespace proofstone
