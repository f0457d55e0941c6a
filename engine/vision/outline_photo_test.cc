#include "engine/vision/outline_photo.h"

#include <gtest/gtest.h>

#include <cstring>

#include "engine/vision/drawn_photos.h"

namespace proofstone {
namespace {

template <class Number>
void put(std::string& bytes, Number number, std::size_t size) {
  for (std::size_t i = 0; i < size; ++i) bytes += static_cast<char>(number >> (8 * i) & 255U);
}

std::uint32_t fnv(const std::string& bytes) {
  std::uint32_t value = 0x811C9DC5U;
  for (const char c : bytes) value = (value ^ static_cast<unsigned char>(c)) * 0x01000193U;
  return value;
}

/// Weights of a network 8 wide: `weight` as a 16-bit float everywhere, no bias.
std::string weights_file(std::uint32_t weight, std::uint32_t width = 8) {
  std::string bytes = "PSOUTL01";
  put(bytes, width, 4);
  const int shapes[][3] = {{3, 8, 9},    {8, 8, 9},   {8, 16, 9},  {16, 16, 9},  {16, 32, 9},
                           {32, 32, 9},  {32, 64, 9}, {64, 64, 9}, {64, 128, 9}, {128, 128, 9},
                           {192, 64, 9}, {64, 64, 9}, {96, 32, 9}, {32, 32, 9},  {48, 16, 9},
                           {16, 16, 9},  {24, 8, 9},  {8, 8, 9},   {8, 3, 1}};
  for (const auto& [inputs, outputs, taps] : shapes) {
    for (int i = 0; i < inputs * outputs * taps; ++i) put(bytes, weight, 2);
    for (int i = 0; i < outputs; ++i) put(bytes, 0U, 4);
  }
  put(bytes, fnv(bytes), 4);
  return bytes;
}

std::string code_of(const std::string& bytes) {
  const auto network = OutlineNetwork::read(bytes);
  return network ? "read" : network.problems().front().what;
}

PhotoPixels plain_photo(int width, int height, std::uint8_t tone) {
  return {width, height,
          std::vector<std::uint8_t>(static_cast<std::size_t>(width * height) * 3, tone)};
}

PhotoPixels speckled_photo(int width, int height, int brightest) {
  auto photo = plain_photo(width, height, 0);
  for (std::size_t i = 0; i < photo.rgb.size(); ++i) {
    photo.rgb[i] = static_cast<std::uint8_t>(part_of_one(i) * brightest);
  }
  return photo;
}

TEST(OutlineNetwork, ReadsItsWeightsOrSaysWhatIsWrong) {
  const std::string good = weights_file(0x3C00);
  EXPECT_EQ(code_of(good), "read");
  EXPECT_EQ(code_of(""), "These are no weights.");
  EXPECT_EQ(code_of("PSOUTL01"), "The weights are cut off.");
  EXPECT_EQ(code_of(good.substr(0, good.size() - 1)),
            "The weights are cut off, or longer than they may be.");
  EXPECT_EQ(code_of(good + "x"), "The weights are cut off, or longer than they may be.");
  std::string damaged = good;
  damaged[1000] = static_cast<char>(damaged[1000] ^ 1);
  EXPECT_EQ(code_of(damaged), "The weights are damaged.");
  EXPECT_EQ(code_of(weights_file(0x7C00)), "Some of the weights are no numbers.");
  EXPECT_EQ(code_of(weights_file(0x3C00, 9)),
            "The weights are of a network whose width is not known here.");
}

TEST(OutlineNetwork, MapsHaveTheSizeOfThePhotoThoughItIsNoWholeNumberOfBlocks) {
  const auto network = OutlineNetwork::read(weights_file(0));
  ASSERT_TRUE(bool(network));
  const auto maps = network->maps(plain_photo(20, 17, 100));
  EXPECT_EQ(maps.width, 20);
  EXPECT_EQ(maps.height, 17);
  ASSERT_EQ(maps.rock.size(), 340U);
  for (const float value : maps.rock) EXPECT_EQ(value, 0.5F);
}

TEST(Resized, KeepsWhatIsPlainAndTheMeanOfWhatIsNot) {
  const auto plain = resized(plain_photo(100, 60, 77), 37, 91);
  for (const auto value : plain.rgb) EXPECT_EQ(value, 77);
  const auto speckled = speckled_photo(400, 300, 255);
  const auto small = resized(speckled, 40, 30);
  ASSERT_EQ(small.rgb.size(), 3600U);
  const auto mean = [](const PhotoPixels& photo) {
    double sum = 0;
    for (const auto value : photo.rgb) sum += value;
    return sum / static_cast<double>(photo.rgb.size());
  };
  EXPECT_NEAR(mean(small), mean(speckled), 1.5);
}

TEST(OutlinePhoto, SaysWhyAPhotoCannotBeUsed) {
  const auto network = OutlineNetwork::read(weights_file(0x0001));
  ASSERT_TRUE(bool(network));
  const auto why = [&](const PhotoPixels& photo) {
    const auto found = outline_photo(photo, *network, "a.jpg");
    if (found) return std::string("used");
    EXPECT_EQ(found.problems().front().where, "a.jpg");
    return found.problems().front().code;
  };
  EXPECT_EQ(why({}), "not-a-photo");
  EXPECT_EQ(why({100, 100, {1, 2, 3}}), "not-a-photo");
  EXPECT_EQ(why({-5, 100, {}}), "not-a-photo");
  EXPECT_EQ(why(plain_photo(200, 900, 120)), "too-small");
  EXPECT_EQ(why(speckled_photo(300, 260, 30)), "too-dark");
  EXPECT_EQ(why(plain_photo(300, 260, 120)), "no-contrast");
  EXPECT_EQ(why(speckled_photo(300, 260, 255)), "too-few-stones");
}

}  // namespace
}  // namespace proofstone
