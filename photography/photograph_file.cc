#include "photography/photograph_file.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <utility>

#include "photography/picture_decoders.h"

namespace proofstone {
namespace {

struct KnownStart {
  std::size_t at;
  std::string_view bytes;
  const char* kind;
};

constexpr KnownStart heif_starts[] = {
    {4, "ftypheic", "HEIC"}, {4, "ftypheix", "HEIC"}, {4, "ftypmif1", "HEIC"}};

constexpr KnownStart not_read[] = {
    {4, "ftypavif", "AVIF"},  {8, "WEBP", "WebP"}, {0, "GIF8", "GIF"}, {0, "II*", "TIFF or raw"},
    {0, "MM", "TIFF or raw"}, {0, "BM", "BMP"},    {0, "%PDF", "PDF"}};

Problem refused(const std::string& code, const std::string& what, const std::string& file) {
  return {code, what, file, "",
          fmt::format("a JPEG, PNG or HEIC file of up to {} megapixels", most_megapixels)};
}

/// The pixel of a picture as stored that belongs at a place of it upright (Exif 2.3, tag 274).
std::size_t stored_place(int orientation, const PhotoPixels& stored, int x, int y) {
  const bool turned = orientation >= 5;
  const bool from_right =
      orientation == 2 || orientation == 3 || orientation == 7 || orientation == 8;
  const bool from_bottom =
      orientation == 3 || orientation == 4 || orientation == 6 || orientation == 7;
  const int along = turned ? y : x;
  const int down = turned ? x : y;
  const int column = from_right ? stored.width - 1 - along : along;
  const int row = from_bottom ? stored.height - 1 - down : down;
  return static_cast<std::size_t>(row) * static_cast<std::size_t>(stored.width) +
         static_cast<std::size_t>(column);
}

PhotoPixels upright(PhotoPixels stored, int orientation) {
  if (orientation == 1) return stored;
  PhotoPixels result{stored.width, stored.height, {}};
  if (orientation >= 5) std::swap(result.width, result.height);
  result.rgb.reserve(stored.rgb.size());
  for (int y = 0; y < result.height; ++y) {
    for (int x = 0; x < result.width; ++x) {
      const std::size_t from = 3 * stored_place(orientation, stored, x, y);
      for (std::size_t channel = 0; channel < 3; ++channel) {
        result.rgb.push_back(stored.rgb[from + channel]);
      }
    }
  }
  return result;
}

bool begins_as(const KnownStart& known, std::string_view bytes) {
  return bytes.size() > known.at && bytes.substr(known.at, known.bytes.size()) == known.bytes;
}

bool is_heif(std::string_view bytes) {
  return std::any_of(std::begin(heif_starts), std::end(heif_starts),
                     [bytes](const KnownStart& known) { return begins_as(known, bytes); });
}

}  // namespace

Expected<Photograph> read_photograph(std::string_view bytes, const std::string& file) {
  const bool jpeg = bytes.substr(0, 3) == "\xFF\xD8\xFF";
  const bool png = bytes.substr(0, 8) == "\x89PNG\r\n\x1A\n";
  const bool heif = is_heif(bytes);
  if (!jpeg && !png && !heif) {
    for (const auto& known : not_read) {
      if (!begins_as(known, bytes)) continue;
      return refused("kind-not-read",
                     fmt::format("This is a {} file, which is not read.", known.kind), file);
    }
    return refused("not-a-photo", "This is no photograph.", file);
  }
  auto decoded = jpeg ? decode_jpeg(bytes) : png ? decode_png(bytes) : decode_heif(bytes);
  if (!decoded.pixels) {
    return refused("unreadable-photo",
                   fmt::format("The photograph cannot be read: {}.", decoded.why_not), file);
  }
  return Photograph{upright(std::move(*decoded.pixels), decoded.notes.orientation),
                    decoded.notes.focal_length};
}

}  // namespace proofstone
