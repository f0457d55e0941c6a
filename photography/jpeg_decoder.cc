#include <csetjmp>
#include <cstdio>

// The JPEG header takes size_t and FILE for granted.
#include <jerror.h>
#include <jpeglib.h>

#include "photography/picture_decoders.h"

namespace proofstone {
namespace {

constexpr std::string_view exif_mark("Exif\0\0", 6);

/// Comes back to where reading began, and remembers whether what was read can be trusted.
struct Troubles {
  jpeg_error_mgr base;
  std::jmp_buf back;
  char said[JMSG_LENGTH_MAX];
  bool damaged;
};

Troubles& troubles_of(j_common_ptr codec) { return *reinterpret_cast<Troubles*>(codec->err); }

[[noreturn]] void give_up(j_common_ptr codec) {
  Troubles& troubles = troubles_of(codec);
  troubles.base.format_message(codec, troubles.said);
  std::longjmp(troubles.back, 1);
}

void take_note(j_common_ptr codec, int level) {
  // Some cameras leave bytes between two parts; all else that is warned of spoils the picture.
  if (level < 0 && codec->err->msg_code != JWRN_EXTRANEOUS_DATA) troubles_of(codec).damaged = true;
}

/// Reads into `file`. Nothing here has a destructor that a jump back would pass over.
void read_all(jpeg_decompress_struct& codec, Troubles& troubles, DecodedFile& file) {
  jpeg_save_markers(&codec, JPEG_APP0 + 1, 0xFFFF);
  jpeg_read_header(&codec, TRUE);
  file.why_not = why_too_large(codec.image_width, codec.image_height);
  if (!file.why_not.empty()) return;
  for (jpeg_saved_marker_ptr marker = codec.marker_list; marker != nullptr; marker = marker->next) {
    const std::string_view bytes(reinterpret_cast<const char*>(marker->data), marker->data_length);
    if (bytes.substr(0, exif_mark.size()) == exif_mark) {
      file.notes = read_camera_notes(bytes.substr(exif_mark.size()));
    }
  }
  codec.out_color_space = JCS_RGB;
  jpeg_start_decompress(&codec);
  PhotoPixels& pixels = file.pixels.emplace();
  pixels.width = static_cast<int>(codec.output_width);
  pixels.height = static_cast<int>(codec.output_height);
  const std::size_t row = static_cast<std::size_t>(codec.output_width) * 3;
  pixels.rgb.resize(row * codec.output_height);
  while (codec.output_scanline < codec.output_height && !troubles.damaged) {
    JSAMPROW line = pixels.rgb.data() + codec.output_scanline * row;
    jpeg_read_scanlines(&codec, &line, 1);
  }
  if (!troubles.damaged) jpeg_finish_decompress(&codec);
}

}  // namespace

std::string why_too_large(double width, double height) {
  const double megapixels = width * height / 1e6;
  if (megapixels <= most_megapixels) return {};
  return "it has " + std::to_string(static_cast<long>(megapixels)) + " megapixels";
}

DecodedFile decode_jpeg(std::string_view bytes) {
  DecodedFile file;
  jpeg_decompress_struct codec{};
  Troubles troubles{};
  codec.err = jpeg_std_error(&troubles.base);
  troubles.base.error_exit = give_up;
  troubles.base.emit_message = take_note;
  if (setjmp(troubles.back) == 0) {  // NOLINT: the library's own way out
    jpeg_create_decompress(&codec);
    jpeg_mem_src(&codec, reinterpret_cast<const unsigned char*>(bytes.data()),
                 static_cast<unsigned long>(bytes.size()));
    read_all(codec, troubles, file);
    if (troubles.damaged) file.why_not = "it is cut off or damaged";
  } else {
    file.why_not = "it is damaged: " + std::string(troubles.said);
  }
  jpeg_destroy_decompress(&codec);
  if (!file.why_not.empty()) file.pixels.reset();
  return file;
}

}  // namespace proofstone
