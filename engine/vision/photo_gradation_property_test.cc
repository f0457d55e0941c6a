// What must hold for every set of photos, whatever is drawn on it.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <functional>

#include "engine/vision/drawn_photos.h"
#include "engine/vision/photo_gradation.h"
#include "engine/vision/surface_share.h"

namespace proofstone {
namespace {

void holds(const std::string& what, const std::function<void()>& property) {
  EXPECT_TRUE(rc::check(what, property));
}

Photo some_photo() {
  const auto seed = static_cast<std::uint64_t>(*rc::gen::inRange(0, 1000));
  const bool tapped = *rc::gen::arbitrary<bool>();
  const double median = *rc::gen::inRange(30, 60);
  const double deviation = *rc::gen::inRange(25, 46) / 100.0;
  return tapped ? tapped_photo(seed, median, deviation) : outlined_photo(seed, median, deviation);
}

TEST(PhotoGradationProperty, TwiceTheScaleIsTwiceEverySize) {
  holds("scale", [] {
    auto set = set_of({some_photo()});
    const auto once = gradation_from_photos(set);
    set.photos[0].staffs[0].length = 2 * set.photos[0].staffs[0].length;
    const auto twice = gradation_from_photos(set);
    RC_ASSERT(once && twice);
    RC_ASSERT(once->sizes.size() == twice->sizes.size());
    for (std::size_t i = 0; i < once->sizes.size(); ++i) {
      RC_ASSERT(std::abs(twice->sizes[i].size / once->sizes[i].size - 2) < 1e-9);
      RC_ASSERT(std::abs(twice->sizes[i].low() / once->sizes[i].low() - 2) < 1e-9);
      RC_ASSERT(std::abs(twice->sizes[i].error() - once->sizes[i].error()) < 1e-9);
    }
  });
}

PhotoPoint quarter_turned(PhotoPoint point, const PictureSize& before) {
  return {before.height - point.y, point.x};
}

TEST(PhotoGradationProperty, AQuarterTurnChangesNoSize) {
  holds("rotation", [] {
    const auto photo = some_photo();
    auto turned = photo;
    turned.size = {photo.size.height, photo.size.width};
    const auto turn = [&](PhotoPoint& point) { point = quarter_turned(point, photo.size); };
    for (auto& outline : turned.outlines) std::for_each(outline.begin(), outline.end(), turn);
    for (auto& staff : turned.staffs) {
      turn(staff.from);
      turn(staff.to);
    }
    for (auto& stone : turned.tapped) {
      for (auto* point :
           {&stone.node, &stone.long_from, &stone.long_to, &stone.short_from, &stone.short_to}) {
        turn(*point);
      }
    }
    const auto before = gradation_from_photos(set_of({photo}));
    const auto after = gradation_from_photos(set_of({turned}));
    RC_ASSERT(before && after);
    RC_ASSERT(before->sizes.size() == after->sizes.size());
    for (std::size_t i = 0; i < before->sizes.size(); ++i) {
      RC_ASSERT(std::abs(after->sizes[i].size / before->sizes[i].size - 1) < 1e-9);
    }
  });
}

TEST(PhotoGradationProperty, AnEqualPhotoMoreChangesNoShare) {
  holds("pooling", [] {
    std::vector<SeenStone> stones;
    const auto count = static_cast<std::uint64_t>(*rc::gen::inRange(2, 200));
    const auto seed = static_cast<std::uint64_t>(*rc::gen::inRange(0, 1'000'000));
    for (std::uint64_t i = 0; i < count; ++i) {
      stones.push_back(
          {Length::meters(lognormal(seed + i, 0.3, 0.5)), part_of_one(seed + 10'000 + i), i % 12});
    }
    auto both = stones;
    for (auto stone : stones) {
      stone.block += 12;
      both.push_back(stone);
    }
    const SurfaceShare one(stones);
    const SurfaceShare two(both);
    // Each stone's step of the curve is halved about its own size: between sizes nothing moves by
    // more than that.
    double largest = 0;
    double sum = 0;
    for (const auto& stone : stones) {
      largest = std::max(largest, stone.weight);
      sum += stone.weight;
    }
    for (const double percent : {5.0, 15.0, 50.0, 85.0, 95.0}) {
      const double there = two.percent_smaller(one.size_at(percent));
      RC_ASSERT(std::abs(there - percent) <= 100 * largest / sum + 1e-9);
    }
  });
}

TEST(PhotoGradationProperty, LimitsLieAboutTheSizeAndTheCurveRises) {
  holds("limits", [] {
    auto photo = some_photo();
    if (*rc::gen::arbitrary<bool>()) photo.scale_error = Dimensionless::number(0.2);
    auto set = set_of({photo});
    set.lies = *rc::gen::arbitrary<bool>() ? RockLies::in_layer : RockLies::in_heap;
    const auto result = gradation_from_photos(set);
    RC_ASSERT(result);
    for (const auto& size : result->sizes) {
      RC_ASSERT(size.low() < size.size);
      RC_ASSERT(size.size < size.high());
    }
    const auto& measured = result->measured;
    RC_ASSERT(measured.effective_at_points.size() == measured.curve.points().size());
    for (std::size_t i = 0; i < measured.effective_at_points.size(); ++i) {
      RC_ASSERT(measured.effective_at_points[i] > 0);
      RC_ASSERT(measured.effective_at_points[i] <= measured.stones + 1e-6);
      RC_ASSERT(measured.lasting_at_points[i] * measured.effective_at_points[i] <= 1 + 1e-9);
    }
  });
}

}  // namespace
}  // namespace proofstone
