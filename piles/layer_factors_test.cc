#include "piles/layer_factors.h"

#include <gtest/gtest.h>

#include <cmath>

#include "engine/vision/drawn_photos.h"
#include "piles/trial_page.h"

namespace proofstone::piles {
namespace {

/// ln of what is seen over what is there: of four rocks, and how far their two layers lie from it.
constexpr double of_rock[] = {-0.06, -0.02, 0.02, 0.06};
constexpr double of_layer = 0.01;

TriedPicture picture_of(std::uint64_t seed, PhotoView view) {
  TriedPicture picture;
  picture.found_photo = outlined_photo(seed);
  picture.found_photo.view = view;
  picture.true_photo = picture.found_photo;
  picture.matched_area = 0.93;
  picture.matched_count = 0.6;
  picture.light = "sun";
  return picture;
}

/// A layer whose photos show its sizes times exp(`log_ratio`).
TriedPile layer_seen(int number, double log_ratio) {
  TriedPile pile;
  pile.name = "guided-" + std::to_string(number);
  pile.form = "slabs";
  pile.rock = "rock " + std::to_string(number / 2);
  pile.apart = true;
  std::vector<Photo> straight;
  for (int i = 0; i < 8; ++i) {
    const auto view = i < 4 ? PhotoView::straight_on : PhotoView::oblique;
    pile.pictures.push_back(picture_of(static_cast<std::uint64_t>(i + 1), view));
    if (i < 4) straight.push_back(pile.pictures.back().found_photo);
  }
  const auto said = sizes_said(pile, straight);
  for (const auto& [percent, size] : said->sizes) {
    pile.sizes[percent] = size.as_photographed.meters() / std::exp(log_ratio);
  }
  return pile;
}

std::vector<TriedPile> four_rocks() {
  std::vector<TriedPile> piles;
  for (int rock = 0; rock < 4; ++rock) {
    piles.push_back(layer_seen(2 * rock, of_rock[rock] - of_layer));
    piles.push_back(layer_seen(2 * rock + 1, of_rock[rock] + of_layer));
  }
  return piles;
}

TEST(LayerFactors, TellRocksFromLayersOfOneRock) {
  const auto piles = four_rocks();
  const LayerFactors layers(piles);
  const auto all = layers.without(nullptr, PhotoView::straight_on, 50);
  ASSERT_TRUE(all);
  EXPECT_EQ(all->rocks, 4U);
  EXPECT_NEAR(all->ratio, 1, 1e-9);
  // Two values 0.02 apart: variance 0.0002. The means: 0.008/3, of which half of that is theirs.
  EXPECT_NEAR(all->between_layers, std::sqrt(0.0002), 1e-9);
  EXPECT_NEAR(all->between_rocks, std::sqrt(0.008 / 3 - 0.0001), 1e-9);
  EXPECT_GT(all->sampling, 0);
  // t of 3 degrees of freedom with 5 % above it is 2.3534, of the normal distribution 1.6449
  // (tables of Student's distribution).
  EXPECT_NEAR(all->error(), all->between_rocks * std::sqrt(1.25) * 2.3534 / 1.6449, 1e-5);
}

TEST(LayerFactors, OfOtherRocksLeaveBothLayersOfARockOut) {
  const auto piles = four_rocks();
  const LayerFactors layers(piles);
  for (const std::size_t layer : {0U, 1U}) {
    const auto others = layers.without(&piles[layer], PhotoView::straight_on, 50);
    ASSERT_TRUE(others);
    EXPECT_EQ(others->rocks, 3U);
    EXPECT_NEAR(std::log(others->ratio), 0.02, 1e-9);
  }
}

TEST(LayerFactors, AreNotMadeOfTooFewRocksOrOfLayersWithoutTheirFellow) {
  auto piles = four_rocks();
  piles.erase(piles.begin());
  EXPECT_TRUE(LayerFactors(piles).without(nullptr, PhotoView::straight_on, 50));
  EXPECT_FALSE(LayerFactors(piles).without(&piles[2], PhotoView::straight_on, 50));
  EXPECT_FALSE(LayerFactors({}).without(nullptr, PhotoView::straight_on, 50));
}

TEST(TrialPage, SaysWhatWasTriedAndWhatItLeaves) {
  auto piles = four_rocks();
  piles[3].pictures[0].why_not = "no-rock";
  const std::string page = trial_page(piles);
  const auto has = [&page](const char* text) { return page.find(text) != std::string::npos; };
  EXPECT_TRUE(has("8 layers, 64 pictures of 1024 × 768"));
  EXPECT_TRUE(has("1 picture was refused (1 of them as `no-rock`)"));
  EXPECT_TRUE(has("| all | 63 | 93 % | 60 % | 1.00 / 0 % | 1.00 / 0 % | 1.00 / 0 % |")) << page;
  // The second rock has no four photos square to the face any more.
  EXPECT_TRUE(has("| straight on | D50 | 3 | 1.007 | 6.0 % | 1.4 % |")) << page;
  EXPECT_TRUE(has("four, straight on, calibrated"));
}

}  // namespace
}  // namespace proofstone::piles
