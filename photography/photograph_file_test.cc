#include "photography/photograph_file.h"

#include <gtest/gtest.h>
#include <png.h>

#include <cstdio>
// The JPEG header takes size_t and FILE for granted.
#include <jpeglib.h>

#include <cstdlib>
#include <memory>

#include "photography/photo_digest.h"

namespace proofstone {
namespace {

/// A picture whose left upper quarter is red, all else blue.
PhotoPixels red_corner(int width, int height) {
  PhotoPixels photo{width, height, {}};
  for (int y = 0; y < height; ++y) {
    for (int x = 0; x < width; ++x) {
      const bool red = x < width / 2 && y < height / 2;
      for (const int value : {red ? 220 : 10, 10, red ? 10 : 220}) {
        photo.rgb.push_back(static_cast<std::uint8_t>(value));
      }
    }
  }
  return photo;
}

/// With Exif notes of this orientation and 26 mm, in the byte order asked for.
std::string exif_notes(int orientation, bool big_first) {
  std::string bytes = std::string("Exif\0\0", 6) + (big_first ? "MM" : "II");
  const auto put = [&](unsigned value, int size) {
    for (int i = 0; i < size; ++i) {
      bytes += static_cast<char>(value >> (8 * (big_first ? size - 1 - i : i)) & 255U);
    }
  };
  const auto entry = [&](unsigned tag, unsigned type, unsigned value) {
    put(tag, 2);
    put(type, 2);
    put(1, 4);
    put(value, type == 3 ? 2 : 4);
    if (type == 3) put(0, 2);
  };
  put(42, 2);
  put(8, 4);
  put(2, 2);
  entry(274, 3, static_cast<unsigned>(orientation));
  entry(34665, 4, 38);
  put(0, 4);
  put(1, 2);
  entry(41989, 3, 26);
  put(0, 4);
  return bytes;
}

std::string jpeg_of(const PhotoPixels& photo, const std::string& notes = {}) {
  jpeg_compress_struct codec{};
  jpeg_error_mgr errors{};
  codec.err = jpeg_std_error(&errors);
  jpeg_create_compress(&codec);
  unsigned char* bytes = nullptr;
  unsigned long size = 0;
  jpeg_mem_dest(&codec, &bytes, &size);
  codec.image_width = static_cast<JDIMENSION>(photo.width);
  codec.image_height = static_cast<JDIMENSION>(photo.height);
  codec.input_components = 3;
  codec.in_color_space = JCS_RGB;
  jpeg_set_defaults(&codec);
  jpeg_set_quality(&codec, 95, TRUE);
  jpeg_start_compress(&codec, TRUE);
  if (!notes.empty()) {
    jpeg_write_marker(&codec, JPEG_APP0 + 1, reinterpret_cast<const JOCTET*>(notes.data()),
                      static_cast<unsigned>(notes.size()));
  }
  while (codec.next_scanline < codec.image_height) {
    auto* row = const_cast<JSAMPLE*>(photo.rgb.data() +
                                     std::size_t{codec.next_scanline} * codec.image_width * 3);
    jpeg_write_scanlines(&codec, &row, 1);
  }
  jpeg_finish_compress(&codec);
  jpeg_destroy_compress(&codec);
  std::string result(reinterpret_cast<const char*>(bytes), size);
  std::free(bytes);
  return result;
}

std::string png_of(const PhotoPixels& photo) {
  png_image image{};
  image.version = PNG_IMAGE_VERSION;
  image.width = static_cast<png_uint_32>(photo.width);
  image.height = static_cast<png_uint_32>(photo.height);
  image.format = PNG_FORMAT_RGB;
  png_alloc_size_t size = PNG_IMAGE_PNG_SIZE_MAX(image);
  std::string bytes(size, '\0');
  png_image_write_to_memory(&image, bytes.data(), &size, 0, photo.rgb.data(), 0, nullptr);
  bytes.resize(size);
  return bytes;
}

std::string why_not(const std::string& bytes) {
  const auto photograph = read_photograph(bytes, "a.jpg");
  if (photograph) return "read";
  EXPECT_EQ(photograph.problems().front().file, "a.jpg");
  return photograph.problems().front().what;
}

bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

bool red_at(const PhotoPixels& photo, int x, int y) {
  return photo.rgb[static_cast<std::size_t>(y * photo.width + x) * 3] > 128;
}

TEST(Photograph, ComesOutOfPngAsItWentIn) {
  const auto photo = red_corner(33, 21);
  const auto read = read_photograph(png_of(photo), "a.png");
  ASSERT_TRUE(bool(read));
  EXPECT_EQ(read->pixels.rgb, photo.rgb);
  EXPECT_FALSE(read->focal_length);
}

// Exif 2.3, tag 274: where the 0th row and the 0th column of what is stored belong.
TEST(Photograph, StandsUprightHoweverTheCameraWasHeld) {
  const auto photo = red_corner(64, 32);
  struct Held {
    int orientation;
    bool right;
    bool bottom;
  };
  for (const auto& [orientation, right, bottom] :
       {Held{1, false, false}, Held{2, true, false}, Held{3, true, true}, Held{4, false, true},
        Held{5, false, false}, Held{6, true, false}, Held{7, true, true}, Held{8, false, true}}) {
    for (const bool big_first : {false, true}) {
      const auto read =
          read_photograph(jpeg_of(photo, exif_notes(orientation, big_first)), "a.jpg");
      ASSERT_TRUE(bool(read)) << orientation;
      const auto& pixels = read->pixels;
      EXPECT_EQ(pixels.width, orientation < 5 ? 64 : 32);
      EXPECT_EQ(pixels.height, orientation < 5 ? 32 : 64);
      const int x = right ? pixels.width - 6 : 5;
      const int y = bottom ? pixels.height - 6 : 5;
      EXPECT_TRUE(red_at(pixels, x, y)) << orientation;
      EXPECT_FALSE(red_at(pixels, pixels.width - 1 - x, y)) << orientation;
      EXPECT_FALSE(red_at(pixels, x, pixels.height - 1 - y)) << orientation;
      EXPECT_EQ(read->focal_length, 26);
    }
  }
}

TEST(Photograph, NotesThatAreSpoiledAreLeftUnknown) {
  const auto whole = exif_notes(6, false);
  for (std::size_t size = 6; size < whole.size(); ++size) {
    const auto read = read_photograph(jpeg_of(red_corner(16, 16), whole.substr(0, size)), "a.jpg");
    EXPECT_TRUE(bool(read)) << size;
  }
}

TEST(Photograph, IsRefusedInASentence) {
  EXPECT_EQ(why_not(""), "This is no photograph.");
  EXPECT_EQ(why_not("station,elevation\n0,119\n"), "This is no photograph.");
  EXPECT_TRUE(contains(why_not(std::string("\0\0\0\x18", 4) + "ftypheic0000"), "HEIC"));
  EXPECT_TRUE(contains(why_not("RIFF1234WEBPVP8 "), "WebP"));
  EXPECT_TRUE(contains(why_not("GIF89a"), "GIF"));
  EXPECT_TRUE(contains(why_not("\xFF\xD8\xFF"), "cannot be read"));
  EXPECT_TRUE(contains(why_not("\x89PNG\r\n\x1A\n"), "cannot be read"));
}

TEST(Photograph, ThatIsCutOffAnywhereIsRefused) {
  const auto jpeg = jpeg_of(red_corner(160, 120), exif_notes(1, true));
  const auto png = png_of(red_corner(160, 120));
  for (const double share : {0.05, 0.3, 0.6, 0.9}) {
    for (const auto& whole : {jpeg, png}) {
      const auto size = static_cast<std::size_t>(share * static_cast<double>(whole.size()));
      EXPECT_TRUE(contains(why_not(whole.substr(0, size)), "cannot be read")) << share;
    }
  }
}

/// A picture that says of itself that it is far larger than its bytes could hold.
TEST(Photograph, OfTwoHundredMegapixelsIsRefusedBeforeItIsUnpacked) {
  auto jpeg = jpeg_of(red_corner(64, 64));
  const auto frame = jpeg.find("\xFF\xC0");
  ASSERT_NE(frame, std::string::npos);
  for (const std::size_t at : {frame + 5, frame + 7}) {
    jpeg[at] = '\x38';
    jpeg[at + 1] = '\x40';
  }
  EXPECT_TRUE(contains(why_not(jpeg), "207 megapixels"));
  auto png = png_of(red_corner(64, 64));
  for (const std::size_t at : {16U, 20U}) png.replace(at, 4, std::string("\0\0\x38\x40", 4));
  // Its checksum no longer fits; either sentence refuses it.
  EXPECT_TRUE(contains(why_not(png), "cannot be read"));
}

// FIPS 180-4 examples, as published with the standard (from memory of "abc" and the empty text).
TEST(PhotoDigest, IsSha256) {
  EXPECT_EQ(photo_digest("abc"),
            "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  EXPECT_EQ(photo_digest(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  EXPECT_EQ(photo_digest("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
            "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
}

}  // namespace
}  // namespace proofstone
