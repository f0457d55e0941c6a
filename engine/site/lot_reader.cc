#include "engine/site/lot_reader.h"

#include "engine/site/loads_reader.h"
#include "engine/site/mix_reader.h"

namespace proofstone {

Lot read_lot(FieldReader& reader, const std::string& id, Problems& problems) {
  Lot lot;
  lot.id = id;
  lot.name = reader.required_text("name");
  lot.source = reader.required_text("source");
  lot.rock_class = reader.required_text("class");
  if (reader.required("zones") != nullptr) {
    if (const auto* zones = reader.optional_list("zones")) {
      for (const auto& zone : *zones) {
        if (zone.is_string()) {
          lot.zones.push_back(zone.get<std::string>());
        } else {
          reader.report("not-a-text", "The id of a zone belongs here.", "zones", "a zone id");
        }
      }
    }
  }
  lot.supply = read_supply(reader, problems);
  lot.reference = reader.choice<bool>("reference", {{"yes", true}, {"no", false}}, false);
  if (reader.has("available")) {
    lot.available = reader.required_positive<Mass>("available", "A lot is more than nothing.");
  }
  lot.price_per_tonne = read_tonne_price(reader, problems);
  return lot;
}

}  // namespace proofstone
