#include "piles/tried_file.h"

#include <gtest/gtest.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace proofstone::piles {
namespace {

TriedPile one_pile() {
  TriedPile pile;
  pile.name = "guided-003";
  pile.form = "slabs";
  pile.rock = "class-type";
  pile.lies = RockLies::in_heap;
  pile.apart = true;
  pile.sizes = {{15, 0.1}, {50, 0.3}, {85, 0.5}};
  TriedPicture picture;
  picture.true_photo.size = {640, 480};
  picture.true_photo.view = PhotoView::oblique;
  picture.true_photo.off_square = Angle::radians(0.7);
  picture.true_photo.scale_error = Dimensionless::number(0.001);
  picture.true_photo.staffs = {{{10, 20}, {600, 20.25}, Length::meters(4)}};
  picture.found_photo = picture.true_photo;
  picture.true_photo.pieces = {{120, {1, 2, 15, 17}}, {88.5, {30, 40, 41, 52}}};
  picture.found_photo.outlines = {{{1, 2}, {15.5, 2}, {15, 17.25}}};
  picture.found_photo.smallest_drawn = 11;
  picture.taps = {{{91.5, 140}, 60.25, 41, 0.88}, {{274, 140}, 30, 22.5, 0.2}};
  picture.close_taps = {{{26.67, 40}, 52, 37.5, 0.66}};
  picture.matched_area = 0.93;
  picture.matched_count = 0.6;
  picture.seen_over_pile = {0.1, -0.02, 0.03};
  picture.why_not = "no-rock";
  picture.light = "sun";
  picture.dust = 0.4;
  pile.pictures = {picture};
  return pile;
}

std::string text_of(const std::vector<TriedPile>& piles) {
  std::ostringstream out;
  write_tried(out, piles);
  return out.str();
}

struct File {
  std::string path =
      (std::filesystem::temp_directory_path() / "proofstone-tried-file-test.json").string();
  explicit File(const std::string& text) { std::ofstream(path) << text; }
  ~File() { std::remove(path.c_str()); }
};

TEST(TriedFile, SaysTheSameWhenItIsReadAgain) {
  const std::string written = text_of({one_pile()});
  const File file(written);
  const auto read = read_tried(file.path);
  ASSERT_TRUE(bool(read));
  EXPECT_EQ(text_of(*read), written);
  const TriedPicture& picture = read->at(0).pictures.at(0);
  EXPECT_EQ(read->at(0).lies, RockLies::in_heap);
  EXPECT_EQ(picture.found_photo.view, PhotoView::oblique);
  ASSERT_EQ(picture.true_photo.pieces.size(), 2U);
  EXPECT_EQ(picture.true_photo.pieces[1].area, 88.5);
  ASSERT_EQ(picture.found_photo.outlines.size(), 1U);
  EXPECT_EQ(picture.found_photo.outlines[0][2].y, 17.25);
  EXPECT_EQ(picture.found_photo.staffs.at(0).length.meters(), 4);
  ASSERT_EQ(picture.taps.size(), 2U);
  EXPECT_EQ(picture.taps[0].along, 60.25);
  EXPECT_EQ(picture.taps[1].shows, 0.2);
  ASSERT_EQ(picture.close_taps.size(), 1U);
}

TEST(TriedFile, ThatIsCutOffOrMissingIsRefused) {
  const std::string written = text_of({one_pile()});
  for (const std::string& text : {std::string(), std::string("{}"), std::string("[1]"),
                                  written.substr(0, written.size() / 2)}) {
    const File file(text);
    const auto read = read_tried(file.path);
    ASSERT_FALSE(bool(read)) << text;
    EXPECT_EQ(read.problems().front().code, "spoiled-trial");
    EXPECT_EQ(read.problems().front().file, file.path);
  }
  EXPECT_FALSE(bool(read_tried("/nowhere/tried.json")));
}

}  // namespace
}  // namespace proofstone::piles
