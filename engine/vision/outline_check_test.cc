#include "engine/vision/outline_check.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "engine/vision/check_nodes.h"
#include "engine/vision/drawn_boards.h"
#include "engine/vision/drawn_photos.h"

namespace proofstone {
namespace {

CheckedOutline answered(const CheckNode& node, CheckAnswer answer) {
  const auto at = node.at;
  return {node.photo, answer, {at, false, at, at, at, at}};
}

/// Axes of these lengths in pixels from a node towards the middle of the picture.
CheckedOutline tapped(const CheckNode& node, double along, double across) {
  const auto at = node.at;
  const double right = at.x < 2000 ? along : -along;
  const double down = at.y < 1500 ? across : -across;
  return {node.photo,
          CheckAnswer::other_axes,
          {at, false, at, {at.x + right, at.y}, at, {at.x, at.y + down}}};
}

PhotoSet checked(CheckAnswer answer) {
  auto set = set_of({outlined_photo(1), outlined_photo(2)});
  for (const auto& node : check_nodes(set.photos)) set.check.push_back(answered(node, answer));
  return set;
}

Expected<OutlineCheck> check_of(const PhotoSet& set) {
  Steps steps;
  return check_outlines(set, steps);
}

std::string code_of(const PhotoSet& set) {
  const auto check = check_of(set);
  return check ? "" : check.problems().front().code;
}

const std::vector<PhotoPoint>& outline_round(const PhotoSet& set, const CheckedOutline& node) {
  const auto& outlines = set.photos[static_cast<std::size_t>(node.photo - 1)].outlines;
  return *std::find_if(outlines.begin(), outlines.end(),
                       [&](const auto& outline) { return encloses(outline, node.stone.node); });
}

TEST(CheckNodes, LieOnStonesAllOverEachPhoto) {
  const auto photos = {outlined_photo(1), outlined_photo(2), outlined_photo(3), outlined_photo(4)};
  const auto nodes = check_nodes(photos);
  ASSERT_EQ(nodes.size(), 30U);
  int quarter[4] = {0, 0, 0, 0};
  int on_photo[4] = {0, 0, 0, 0};
  for (const auto& node : nodes) {
    const auto& photo = *(photos.begin() + (node.photo - 1));
    EXPECT_TRUE(std::any_of(photo.outlines.begin(), photo.outlines.end(),
                            [&](const auto& outline) { return encloses(outline, node.at); }));
    ++quarter[(node.at.x > 2000 ? 1 : 0) + (node.at.y > 1500 ? 2 : 0)];
    ++on_photo[node.photo - 1];
  }
  for (const int here : quarter) EXPECT_GE(here, 5);
  EXPECT_EQ(on_photo[0], 8);
  EXPECT_EQ(on_photo[3], 7);
}

TEST(CheckNodes, MeetStonesByTheirArea) {
  auto photo = photo_with_staff();
  photo.outlines = {stone_outline({1000, 1500}, 1600), stone_outline({3000, 1500}, 800)};
  int large = 0;
  for (const auto& node : check_nodes({photo})) large += node.at.x < 2000 ? 1 : 0;
  EXPECT_NEAR(large, 24, 2);  // four fifths of the area
}

TEST(CheckNodes, LeaveOutMarksAndWhatTheEdgeCuts) {
  auto photo = photo_with_staff();
  photo.outlines = {stone_outline({1000, 1500}, 500)};
  photo.balls = {{{1000, 1500}, 260, Length::inches(12)}};
  EXPECT_TRUE(check_nodes({photo}).empty());
  photo.balls.clear();
  EXPECT_EQ(check_nodes({photo}).size(), 30U);
  photo.outlines = {{{0, 0}, {800, 0}, {800, 900}, {0, 900}}};
  EXPECT_TRUE(check_nodes({photo}).empty());
  EXPECT_TRUE(check_nodes({}).empty());
  photo.size = {0, 0};
  EXPECT_TRUE(check_nodes({photo}).empty());
}

TEST(OutlineCheck, OfOutlinesThatAreRightIsOne) {
  const auto check = check_of(checked(CheckAnswer::right));
  ASSERT_TRUE(check) << check.problems().front().sentence();
  EXPECT_EQ(check->right, 30);
  EXPECT_EQ(check->ratio, 1);
  // 3 % for each stone that was looked at, over √30, by Student's t.
  EXPECT_NEAR(check->error, 0.03 / std::sqrt(30.0) * 1.6991 / 1.6449, 1e-5);
  // None wrong of 30: 1 − 0.05^(1/30).
  EXPECT_NEAR(check->wrong_at_most, 1 - std::pow(0.05, 1.0 / 30), 1e-6);
}

/// Twelve-cornered stones are as wide as they are long: axes that are half as long again everywhere
/// make the ratio, and it does not scatter.
TEST(OutlineCheck, TellsTheRatioOfWhatWasTapped) {
  auto set = checked(CheckAnswer::right);
  for (auto& node : set.check) {
    const auto sides = tightest_rectangle(outline_round(set, node));
    node = tapped({node.photo, node.stone.node}, 1.8 * sides.longest, 1.25 * sides.shortest);
  }
  const auto check = check_of(set);
  ASSERT_TRUE(check);
  EXPECT_EQ(check->corrected, 30);
  EXPECT_NEAR(check->ratio, 1.5, 1e-9);
  EXPECT_NEAR(check->error, 0.03 / std::sqrt(30.0) * 1.6991 / 1.6449, 1e-5);
  EXPECT_LT(check->low(), 1.5);
  EXPECT_GT(check->high(), 1.5);
}

TEST(OutlineCheck, OfAFewMistakesScatters) {
  auto set = checked(CheckAnswer::right);
  for (std::size_t i = 0; i < 6; ++i) {
    const auto sides = tightest_rectangle(outline_round(set, set.check[5 * i]));
    auto& node = set.check[5 * i];
    node = tapped({node.photo, node.stone.node}, 2 * sides.longest, 2 * sides.shortest);
  }
  const auto check = check_of(set);
  ASSERT_TRUE(check);
  EXPECT_NEAR(check->ratio, std::pow(2.0, 0.2), 1e-9);
  // Six of 30 at ln 2, 24 at 0: their standard deviation over √30.
  const double deviation = std::log(2.0) * std::sqrt(0.2 * 0.8 * 30 / 29);
  EXPECT_NEAR(check->error, std::hypot(deviation, 0.03) / std::sqrt(30.0) * 1.6991 / 1.6449, 1e-5);
}

TEST(OutlineCheck, CountsWhatIsNoRockAsOutlinedAlone) {
  auto set = checked(CheckAnswer::right);
  std::size_t smallest = 0;
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < set.check.size(); ++i) {
    const auto sides = tightest_rectangle(outline_round(set, set.check[i]));
    if (sides.longest < least) {
      least = sides.longest;
      smallest = i;
    }
  }
  set.check[smallest].answer = CheckAnswer::not_rock;
  const auto check = check_of(set);
  ASSERT_TRUE(check);
  EXPECT_EQ(check->not_rock, 1);
  EXPECT_GT(check->ratio, 1);
  set.check[smallest].answer = CheckAnswer::mostly_hidden;
  const auto hidden = check_of(set);
  ASSERT_TRUE(hidden);
  EXPECT_EQ(hidden->mostly_hidden, 1);
  EXPECT_EQ(hidden->ratio, 1);
}

TEST(OutlineCheck, RefusesWhatTellsNothing) {
  auto set = checked(CheckAnswer::mostly_hidden);
  EXPECT_EQ(code_of(set), "too-few-nodes");
  EXPECT_EQ(code_of(checked(CheckAnswer::not_rock)), "too-few-nodes");
  set = checked(CheckAnswer::right);
  set.check[3].photo = 3;
  EXPECT_EQ(code_of(set), "no-photo");
  set = checked(CheckAnswer::right);
  set.check[3] = set.check[2];
  EXPECT_EQ(code_of(set), "repeated");
  set = checked(CheckAnswer::right);
  set.check[3].stone.node.x = std::nan("");
  EXPECT_EQ(code_of(set), "outside-picture");
  set = checked(CheckAnswer::right);
  set.check[3] = tapped({1, set.check[3].stone.node}, 0, 20);
  EXPECT_EQ(code_of(set), "no-area");
  set = checked(CheckAnswer::right);
  set.photos[0].staffs.clear();
  EXPECT_EQ(code_of(set), "no-scale");
  set = checked(CheckAnswer::right);
  for (auto& photo : set.photos) photo.outlines.clear();
  EXPECT_EQ(code_of(set), "too-few-nodes");
}

}  // namespace
}  // namespace proofstone
