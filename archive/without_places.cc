#include "archive/without_places.h"

#include <nlohmann/json.hpp>
#include <regex>
#include <utility>

namespace proofstone {
namespace {

using nlohmann::ordered_json;

bool is_position(const ordered_json& value) {
  return value.is_object() && value.contains("latitude");
}

/// Takes the positions out of a value; whether there were any.
bool strip(ordered_json& value) {
  bool found = false;
  if (value.is_array()) {
    for (auto& inner : value) found = strip(inner) || found;
  } else if (value.is_object()) {
    const auto position = value.find("position");
    if (position != value.end() && is_position(*position)) {
      value.erase(position);
      found = true;
    }
    for (auto& [key, inner] : value.items()) found = strip(inner) || found;
  }
  return found;
}

/// Whether a change is of a position alone: put there, made otherwise, taken away.
bool is_of_position(const ordered_json& change) {
  static const std::regex of_position("/position(/|$)");
  for (const auto* field : {"set", "remove"}) {
    const auto pointer = change.find(field);
    if (pointer != change.end() && pointer->is_string()) {
      return std::regex_search(pointer->get_ref<const std::string&>(), of_position);
    }
  }
  return false;
}

bool strip_revision(ordered_json& revision) {
  const auto changes = revision.find("changes");
  if (changes == revision.end() || !changes->is_array()) return false;
  ordered_json kept = ordered_json::array();
  bool found = false;
  for (auto& change : *changes) {
    if (is_of_position(change)) {
      found = true;
      continue;
    }
    found = strip(change) || found;
    kept.push_back(std::move(change));
  }
  *changes = std::move(kept);
  return found;
}

constexpr unsigned start_of_image = 0xd8;
constexpr unsigned end_of_image = 0xd9;
constexpr unsigned start_of_scan = 0xda;
constexpr unsigned exif_segment = 0xe1;
constexpr unsigned profile_segment = 0xe2;

unsigned byte_at(std::string_view bytes, std::size_t at) {
  return at < bytes.size() ? static_cast<unsigned char>(bytes[at]) : 0;
}

/// "Exif", big-endian, one entry, the orientation: as the screens write it.
bool is_orientation_alone(std::string_view content) {
  using namespace std::string_view_literals;
  constexpr auto head = "Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0"sv;
  constexpr std::size_t whole = 32;
  return content.size() == whole && content.starts_with(head) &&
         content.substr(head.size() + 1) == "\0\0\0\0\0\0"sv;
}

bool says_nothing(unsigned marker, std::string_view content) {
  using namespace std::string_view_literals;
  constexpr unsigned comment = 0xfe;
  constexpr unsigned transform_segment = 0xee;
  if (marker == comment) return false;
  if (marker == exif_segment) return is_orientation_alone(content);
  if (marker == profile_segment) return content.starts_with("ICC_PROFILE\0"sv);
  const bool application = marker >= 0xe0 && marker <= 0xef;
  return !application || marker == 0xe0 || marker == transform_segment;
}

/// Where the data of a scan end: at the next marker that is no part of them.
std::size_t end_of_scan(std::string_view bytes, std::size_t at) {
  for (; at + 1 < bytes.size(); ++at) {
    const auto next = byte_at(bytes, at + 1);
    if (byte_at(bytes, at) == 0xff && next != 0 && next != 0xff &&
        !(next >= 0xd0 && next <= 0xd7)) {
      return at;
    }
  }
  return bytes.size();
}

}  // namespace

std::string without_positions(const std::string& document) {
  auto json = ordered_json::parse(document);
  const auto revisions = json.find("revisions");
  if (revisions == json.end() || !revisions->is_array()) return document;
  bool found = false;
  for (auto& revision : *revisions) found = strip_revision(revision) || found;
  return found ? json.dump(2) + "\n" : document;
}

ordered_json revision_without_positions(ordered_json revision) {
  strip_revision(revision);
  return revision;
}

bool may_tell_place(std::string_view photo) {
  if (byte_at(photo, 0) != 0xff || byte_at(photo, 1) != start_of_image) return true;
  std::size_t at = 2;
  while (at + 1 < photo.size()) {
    if (byte_at(photo, at) != 0xff) return true;
    const auto marker = byte_at(photo, at + 1);
    // What follows the end may say anything.
    if (marker == end_of_image) return at + 2 != photo.size();
    const auto length = 256 * byte_at(photo, at + 2) + byte_at(photo, at + 3);
    if (length < 2 || at + 2 + length > photo.size()) return true;
    if (!says_nothing(marker, photo.substr(at + 4, length - 2))) return true;
    at += 2 + length;
    if (marker == start_of_scan) at = end_of_scan(photo, at);
  }
  return true;
}

WithoutPlaces without_places(PackedSite site) {
  WithoutPlaces result;
  const auto all = site.photos.size();
  std::erase_if(site.photos, [](const PackedFile& photo) { return may_tell_place(photo.bytes); });
  result.photos_left_out = all - site.photos.size();
  site.document = without_positions(site.document);
  result.site = std::move(site);
  return result;
}

}  // namespace proofstone
