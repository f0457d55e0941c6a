#include "piles/picture.h"

#include <gtest/gtest.h>
#include <png.h>

#include <cstdio>
#include <filesystem>

#include "piles/options.h"
#include "piles/truth.h"

namespace proofstone::piles {
namespace {

/// A heap and one small picture of it with all that may lie around, made once.
struct Small {
  Pile pile = make_pile({*AskedGradation::of_spread("class-type", Length::inches(12)),
                         {PileKind::heap},
                         RockMix::quarried,
                         60,
                         3});
  PileSurface surface = survey_surface(pile);
  PictureRequest request;
  Picture picture;

  Small() {
    request.view.width = 96;
    request.view.height = 72;
    request.look = draw_look("sun", 5);
    request.look.board = request.look.boots = request.look.grass = request.look.fabric = true;
    request.effort.samples = 2;
    picture = take_picture(pile, surface, request);
  }
};

const Small& small() {
  static const Small made;
  return made;
}

TEST(Picture, ThreadsDoNotChangeIt) {
  PictureRequest request = small().request;
  request.effort.threads = 2;
  const Picture again = take_picture(small().pile, small().surface, request);
  for (std::size_t i = 0; i < again.light.pixels.size(); ++i) {
    ASSERT_EQ(again.light.pixels[i], small().picture.light.pixels[i]);
  }
  EXPECT_EQ(again.mask.stones, small().picture.mask.stones);
}

TEST(Picture, ABallHidesTheStonesBehindIt) {
  const Picture& picture = small().picture;
  int balls = 0;
  for (const ScaleObject& object : picture.objects) {
    if (object.kind != "ball") continue;
    ++balls;
    EXPECT_NEAR(object.size, 0.3048, 1e-6);
    const auto seen = picture.view.camera.seen_at(object.points[0]);
    ASSERT_TRUE(seen);
    if (seen->x() < 0 || seen->x() >= 96 || seen->y() < 0 || seen->y() >= 72) continue;
    const int pixel = static_cast<int>(seen->y()) * 96 + static_cast<int>(seen->x());
    EXPECT_EQ(picture.mask.stones[static_cast<std::size_t>(pixel)], 0);
  }
  EXPECT_EQ(balls, 2);
}

TEST(PictureFile, AMaskReadAgainIsTheSame) {
  const StoneMask& mask = small().picture.mask;
  const auto path = std::filesystem::temp_directory_path() / "proofstone-pile-mask.png";
  ASSERT_TRUE(write_mask_png(mask, path.string()));
  png_image image{};
  image.version = PNG_IMAGE_VERSION;
  ASSERT_NE(png_image_begin_read_from_file(&image, path.c_str()), 0);
  ASSERT_EQ(image.format, static_cast<png_uint_32>(PNG_FORMAT_LINEAR_Y));
  std::vector<std::uint16_t> values(static_cast<std::size_t>(image.width) * image.height);
  ASSERT_NE(png_image_finish_read(&image, nullptr, values.data(), 0, nullptr), 0);
  std::filesystem::remove(path);
  EXPECT_EQ(values, mask.stones);
}

TEST(PictureFile, AFolderThatIsMissingIsSaid) {
  const DevelopedPicture developed = develop(small().picture.light, {}, 1);
  EXPECT_FALSE(write_jpeg(developed, 90, "/nowhere/at/all.jpg"));
  EXPECT_FALSE(write_mask_png(small().picture.mask, "/nowhere/at/all.png"));
}

TEST(Develop, AMiddleGreyComesOutInTheMiddle) {
  LinearPicture grey{8, 8, std::vector<Vec3>(64, Vec3(2, 2, 2))};
  Development how;
  how.noise = 0;
  how.vignette = 0;
  const DevelopedPicture developed = develop(grey, how, 1);
  for (const std::uint8_t value : developed.bytes) EXPECT_NEAR(value, 114, 3);
}

TEST(Truth, CountsEveryPixelOfTheMask) {
  const auto truth = picture_truth(small().pile, small().picture, 1);
  std::size_t pixels = 0;
  for (const auto& stone : truth["stones_in_view"]) pixels += stone["pixels"].get<std::size_t>();
  const auto& mask = small().picture.mask.stones;
  EXPECT_EQ(pixels,
            mask.size() - static_cast<std::size_t>(std::count(mask.begin(), mask.end(), 0)));
  const auto pile = pile_truth(small().pile, small().surface);
  EXPECT_EQ(pile["stones"].size(), 60U);
  EXPECT_NEAR(pile["whole_pile"]["size_at_percent_smaller_by_mass"]["D50"].get<double>(),
              size_at(small().pile.all(), 50), 1e-6);
}

TEST(Options, AreReadAndRefused) {
  const auto good = read_options({"make", "--layer", "--slope", "2H:1V", "--class", "fhwa-3",
                                  "--rock", "too-fine", "--stones", "300", "--out", "x"});
  ASSERT_TRUE(good);
  EXPECT_NEAR(good->place.slope, std::atan(0.5), 1e-6);
  EXPECT_EQ(good->against, RockAgainstClass::too_fine);
  EXPECT_EQ(good->stones, 300);
  for (const std::vector<std::string>& bad :
       {std::vector<std::string>{"dance"},
        {"make"},
        {"make", "--out"},
        {"make", "--colour", "red"},
        {"make", "--stones", "2.5", "--out", "x"},
        {"make", "--stones", "5", "--out", "x"},
        {"make", "--class", "none", "--out", "x"},
        {"reference", "--out", "x"},
        {"make", "--heap", "--slope", "2H:1V", "--out", "x"},
        {"make", "--heap", "--apart", "--out", "x"},
        {"trial", "--out", "x"},
        {"trial", "--from", "y", "--tried", "z", "--out", "x"},
        {"make", "--weather", "hail", "--out", "x"}}) {
    const auto refused = read_options(bad);
    ASSERT_FALSE(refused) << bad.back();
    EXPECT_EQ(refused.problems()[0].code, "usage");
  }
}

}  // namespace
}  // namespace proofstone::piles
