#include <gtest/gtest.h>

#include "photography/photograph_file.h"

#ifdef PROOFSTONE_READS_HEIC
#include <libheif/heif.h>

/// What LeakSanitizer asks a program for: libx265, with which these tests write a picture, frees
/// not all it took. The product only reads pictures and links no encoder.
// NOLINTNEXTLINE(*-reserved-identifier): the sanitizer's name
extern "C" const char* __lsan_default_suppressions() { return "leak:libx265\n"; }
#endif

namespace proofstone {
namespace {

#ifdef PROOFSTONE_READS_HEIC

/// Exif notes of a quarter turn and 26 mm, as TIFF.
std::string quarter_turn_notes() {
  const unsigned char bytes[] = {'M', 'M', 0, 42, 0, 0, 0, 8,  0, 2,  // two entries
                                 1,   18,  0, 3,  0, 0, 0, 1,  0, 6,  0, 0, 135, 105, 0, 4,
                                 0,   0,   0, 1,  0, 0, 0, 38, 0, 0,  0, 0, 0,   1,  // one entry
                                 164, 5,   0, 3,  0, 0, 0, 1,  0, 26, 0, 0, 0,   0,   0, 0};
  return {reinterpret_cast<const char*>(bytes), sizeof bytes};
}

heif_error append(heif_context*, const void* data, std::size_t size, void* text) {
  static_cast<std::string*>(text)->append(static_cast<const char*>(data), size);
  return {heif_error_Ok, heif_suberror_Unspecified, ""};
}

/// A HEIC file of 96 by 64 pixels whose left upper quarter is red, all else blue, to be shown a
/// quarter turn clockwise; empty where no encoder is there.
std::string turned_heic() {
  heif_context* context = heif_context_alloc();
  heif_encoder* encoder = nullptr;
  if (heif_context_get_encoder_for_format(context, heif_compression_HEVC, &encoder).code != 0) {
    heif_context_free(context);
    return {};
  }
  heif_encoder_set_lossy_quality(encoder, 90);
  heif_image* image = nullptr;
  heif_image_create(96, 64, heif_colorspace_RGB, heif_chroma_interleaved_RGB, &image);
  heif_image_add_plane(image, heif_channel_interleaved, 96, 64, 8);
  int stride = 0;
  std::uint8_t* rows = heif_image_get_plane(image, heif_channel_interleaved, &stride);
  for (int y = 0; y < 64; ++y) {
    for (int x = 0; x < 96; ++x) {
      const bool red = x < 48 && y < 32;
      std::uint8_t* pixel = rows + y * stride + 3 * x;
      pixel[0] = red ? 220 : 10;
      pixel[1] = 10;
      pixel[2] = red ? 10 : 220;
    }
  }
  heif_encoding_options* options = heif_encoding_options_alloc();
  options->image_orientation = heif_orientation_rotate_90_cw;
  heif_image_handle* handle = nullptr;
  heif_context_encode_image(context, image, encoder, options, &handle);
  const auto notes = quarter_turn_notes();
  heif_context_add_exif_metadata(context, handle, notes.data(), static_cast<int>(notes.size()));
  std::string bytes;
  heif_writer writer{1, append};
  heif_context_write(context, &writer, &bytes);
  heif_image_handle_release(handle);
  heif_encoding_options_free(options);
  heif_image_release(image);
  heif_encoder_release(encoder);
  heif_context_free(context);
  return bytes;
}

/// The container and Exif both say that it is turned: it is turned once.
TEST(HeicPhotograph, IsTurnedUprightOnceAndTellsItsFocalLength) {
  const auto bytes = turned_heic();
  if (bytes.empty()) GTEST_SKIP() << "libheif has no encoder here";
  const auto photo = read_photograph(bytes, "a.heic");
  ASSERT_TRUE(bool(photo)) << photo.problems().front().sentence();
  EXPECT_EQ(photo->pixels.width, 64);
  EXPECT_EQ(photo->pixels.height, 96);
  ASSERT_TRUE(photo->focal_length.has_value());
  EXPECT_EQ(*photo->focal_length, 26);
  const auto is_red = [&](int x, int y) {
    const auto at = 3 * static_cast<std::size_t>(y * 64 + x);
    return photo->pixels.rgb[at] > photo->pixels.rgb[at + 2];
  };
  EXPECT_TRUE(is_red(48, 20));
  EXPECT_FALSE(is_red(16, 20));
  EXPECT_FALSE(is_red(48, 76));
  EXPECT_FALSE(is_red(16, 76));
}

TEST(HeicPhotograph, ThatIsCutOffIsRefused) {
  const auto bytes = turned_heic();
  if (bytes.empty()) GTEST_SKIP() << "libheif has no encoder here";
  for (const double share : {0.1, 0.5, 0.9}) {
    const auto size = static_cast<std::size_t>(share * static_cast<double>(bytes.size()));
    const auto photo = read_photograph(std::string_view(bytes).substr(0, size), "a.heic");
    ASSERT_FALSE(bool(photo)) << share;
    EXPECT_EQ(photo.problems().front().code, "unreadable-photo");
  }
}

#endif

TEST(HeicPhotograph, ThatIsNoneIsRefusedInASentence) {
  const auto photo = read_photograph(std::string("\0\0\0\x18", 4) + "ftypheic0000", "a.heic");
  ASSERT_FALSE(bool(photo));
  EXPECT_NE(photo.problems().front().sentence().find("HEIC"), std::string::npos);
}

}  // namespace
}  // namespace proofstone
