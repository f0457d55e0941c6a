#include "photography/picture_decoders.h"

#ifdef PROOFSTONE_READS_HEIC
#include <libheif/heif.h>

#include <cstdint>
#include <memory>
#include <vector>
#endif

namespace proofstone {

#ifdef PROOFSTONE_READS_HEIC

namespace {

/// No phone takes a longer side; more is refused before memory is asked for.
constexpr int longest_side = 20'000;

struct Freed {
  void operator()(heif_context* file) const { heif_context_free(file); }
  void operator()(heif_image_handle* picture) const { heif_image_handle_release(picture); }
  void operator()(heif_image* pixels) const { heif_image_release(pixels); }
};
template <class Thing>
using Held = std::unique_ptr<Thing, Freed>;

std::string damaged(const heif_error& error) {
  return "its HEIC picture is cut off or damaged: " + std::string(error.message);
}

/// The focal length alone: libheif turns the picture as its container says, and Exif would have it
/// turned once more.
CameraNotes notes_of(const heif_image_handle* picture) {
  heif_item_id id = 0;
  if (heif_image_handle_get_list_of_metadata_block_IDs(picture, "Exif", &id, 1) != 1) return {};
  std::vector<char> block(heif_image_handle_get_metadata_size(picture, id));
  if (block.size() < 4 || heif_image_handle_get_metadata(picture, id, block.data()).code != 0) {
    return {};
  }
  // Four bytes tell how far behind them the notes begin (ISO/IEC 23008-12, A.2.1).
  std::size_t from = 0;
  for (std::size_t i = 0; i < 4; ++i) from = from << 8 | static_cast<std::uint8_t>(block[i]);
  if (from >= block.size() - 4) return {};
  auto notes = read_camera_notes({block.data() + 4 + from, block.size() - 4 - from});
  notes.orientation = 1;
  return notes;
}

}  // namespace

DecodedFile decode_heif(std::string_view bytes) {
  DecodedFile file;
  const auto failed = [&file](const heif_error& error) {
    if (error.code == heif_error_Ok) return false;
    file.why_not = damaged(error);
    return true;
  };
  const Held<heif_context> context(heif_context_alloc());
  heif_context_set_maximum_image_size_limit(context.get(), longest_side);
  if (failed(heif_context_read_from_memory_without_copy(context.get(), bytes.data(), bytes.size(),
                                                        nullptr))) {
    return file;
  }
  heif_image_handle* primary = nullptr;
  if (failed(heif_context_get_primary_image_handle(context.get(), &primary))) return file;
  const Held<heif_image_handle> picture(primary);
  file.why_not =
      why_too_large(heif_image_handle_get_width(primary), heif_image_handle_get_height(primary));
  if (!file.why_not.empty()) return file;
  heif_image* decoded = nullptr;
  if (failed(heif_decode_image(primary, &decoded, heif_colorspace_RGB, heif_chroma_interleaved_RGB,
                               nullptr))) {
    return file;
  }
  const Held<heif_image> image(decoded);
  int stride = 0;
  const auto* rows = heif_image_get_plane_readonly(decoded, heif_channel_interleaved, &stride);
  const int width = heif_image_get_primary_width(decoded);
  const int height = heif_image_get_primary_height(decoded);
  if (rows == nullptr || width <= 0 || height <= 0) {
    file.why_not = "its HEIC picture holds no colours";
    return file;
  }
  file.notes = notes_of(primary);
  PhotoPixels& pixels = file.pixels.emplace();
  pixels.width = width;
  pixels.height = height;
  for (int y = 0; y < height; ++y) {
    const auto* row = rows + static_cast<std::ptrdiff_t>(y) * stride;
    pixels.rgb.insert(pixels.rgb.end(), row, row + std::ptrdiff_t{3} * width);
  }
  return file;
}

#else

DecodedFile decode_heif(std::string_view) {
  DecodedFile file;
  file.why_not = "it is a HEIC file, which this build does not read";
  return file;
}

#endif

}  // namespace proofstone
