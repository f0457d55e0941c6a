#include "engine/site/observation_reader.h"

#include <algorithm>
#include <cmath>

#include "engine/site/loads_reader.h"
#include "engine/site/position_reader.h"

namespace proofstone {
namespace {

constexpr std::size_t hash_digits = 64;
/// Grids of surveys reach some ten million metres from their origin.
constexpr double farthest_m = 5e7;

bool is_content_hash(const std::string& text) {
  return text.size() == hash_digits && std::all_of(text.begin(), text.end(), [](char c) {
           return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
         });
}

std::optional<GridPlace> read_place(FieldReader& observation, Problems& problems) {
  const auto* json = observation.optional("place");
  if (json == nullptr) return std::nullopt;
  FieldReader reader(*json, observation.pointer() + "/place", problems);
  GridPlace place;
  place.easting = reader.required_quantity<Length>("easting");
  place.northing = reader.required_quantity<Length>("northing");
  if (std::abs(place.easting.meters()) > farthest_m ||
      std::abs(place.northing.meters()) > farthest_m) {
    reader.report("implausible", "No grid on earth reaches there.", "", "within 50 000 km");
  }
  reader.finish();
  return place;
}

}  // namespace

std::vector<std::string> read_photos(FieldReader& reader) {
  std::vector<std::string> photos;
  const auto* list = reader.optional_list("photos");
  if (list == nullptr) return photos;
  for (std::size_t i = 0; i < list->size(); ++i) {
    const auto& value = (*list)[i];
    const auto where = "photos/" + std::to_string(i);
    const auto text = value.is_string() ? value.get<std::string>() : std::string();
    if (!is_content_hash(text)) {
      reader.report("not-a-hash", "A photo is named by the SHA-256 of its file.", where,
                    "64 of: digits, a to f");
    } else if (std::find(photos.begin(), photos.end(), text) != photos.end()) {
      reader.report("repeated", "This photo is named twice.", where, "each photo once");
    } else {
      photos.push_back(text);
    }
  }
  return photos;
}

Observation read_observation(FieldReader& reader, Problems& problems, bool signed_off) {
  Observation seen;
  seen.who = signed_off ? reader.required_text("who") : reader.optional_text("who");
  if (!signed_off || reader.required("when") != nullptr) seen.when = read_when(reader);
  seen.where = beside(reader.optional_text("where"), read_position(reader, seen.when, problems));
  seen.place = read_place(reader, problems);
  seen.instrument = reader.optional_text("instrument");
  seen.photos = read_photos(reader);
  seen.note = reader.optional_text("note");
  return seen;
}

}  // namespace proofstone
