#include <png.h>

#include "photography/picture_decoders.h"

namespace proofstone {

DecodedFile decode_png(std::string_view bytes) {
  DecodedFile file;
  png_image image{};
  image.version = PNG_IMAGE_VERSION;
  if (png_image_begin_read_from_memory(&image, bytes.data(), bytes.size()) == 0) {
    file.why_not = "it is damaged: " + std::string(image.message);
    return file;
  }
  file.why_not = why_too_large(image.width, image.height);
  if (file.why_not.empty()) {
    image.format = PNG_FORMAT_RGB;
    PhotoPixels& pixels = file.pixels.emplace();
    pixels.width = static_cast<int>(image.width);
    pixels.height = static_cast<int>(image.height);
    pixels.rgb.resize(PNG_IMAGE_SIZE(image));
    const png_color white{255, 255, 255};
    if (png_image_finish_read(&image, &white, pixels.rgb.data(), 0, nullptr) == 0) {
      file.why_not = "it is cut off or damaged: " + std::string(image.message);
      file.pixels.reset();
    }
  }
  png_image_free(&image);
  return file;
}

}  // namespace proofstone
