#include "engine/vision/outline_network.h"

#include <gtest/gtest.h>
#include <png.h>

#include <opencv2/dnn.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>
#include <fstream>
#include <map>
#include <sstream>

#include "engine/vision/drawn_photos.h"
#include "engine/vision/outline_photo.h"
#include "engine/vision/stone_regions.h"
#include "photography/outline_weights.h"
#include "photography/photograph_file.h"

namespace proofstone {
namespace {

const OutlineNetwork& network() {
  static const auto read = OutlineNetwork::read(embedded_outline_weights());
  return *read;
}

PhotoPixels picture(const std::string& name) {
  std::ifstream file(PROOFSTONE_SOURCE_FOLDER "/photography/pictures/" + name, std::ios::binary);
  std::ostringstream bytes;
  bytes << file.rdbuf();
  return read_photograph(bytes.str(), name)->pixels;
}

PhotoPixels part_of(const PhotoPixels& photo, int width, int height) {
  PhotoPixels part{width, height, {}};
  for (int y = 0; y < height; ++y) {
    const auto row = photo.rgb.begin() + static_cast<std::ptrdiff_t>(y) * photo.width * 3;
    part.rgb.insert(part.rgb.end(), row, row + static_cast<std::ptrdiff_t>(width) * 3);
  }
  return part;
}

/// The same network put together in OpenCV, from the same file read in another way.
class LibraryNetwork {
 public:
  LibraryNetwork() {
    const auto weights = embedded_outline_weights();
    std::uint32_t wide = 0;
    std::memcpy(&wide, weights.data() + 8, 4);
    at_ = weights.data() + 12;
    const int width = static_cast<int>(wide);
    int last = 0;
    std::vector<int> kept;
    int before = 3;
    for (int level = 0; level < 5; ++level) {
      if (level > 0) last = pooled(last);
      last = pair(last, before, width << level);
      before = width << level;
      kept.push_back(last);
    }
    for (int level = 3; level >= 0; --level) {
      last = joined(doubled(last), kept[static_cast<std::size_t>(level)]);
      last = pair(last, before + (width << level), width << level);
      before = width << level;
    }
    convolution(last, width, 3, 1);
  }

  cv::Mat maps(const PhotoPixels& photo) {
    const int sizes[] = {1, 3, photo.height, photo.width};
    cv::Mat input(4, sizes, CV_32F);
    for (int y = 0; y < photo.height; ++y) {
      for (int x = 0; x < photo.width; ++x) {
        for (int c = 0; c < 3; ++c) {
          const int place[] = {0, c, y, x};
          const auto pixel = photo.rgb[static_cast<std::size_t>((y * photo.width + x) * 3 + c)];
          input.at<float>(place) = (static_cast<float>(pixel) / 255.0F - 0.45F) * 4.0F;
        }
      }
    }
    net_.setPreferableBackend(cv::dnn::DNN_BACKEND_OPENCV);
    net_.setInput(input);
    return net_.forward().clone();
  }

 private:
  int added(const std::string& type, cv::dnn::LayerParams& params, const std::vector<int>& from) {
    params.type = type;
    params.name = type + std::to_string(++count_);
    const int id = net_.addLayer(params.name, type, params);
    for (std::size_t i = 0; i < from.size(); ++i) net_.connect(from[i], 0, id, static_cast<int>(i));
    return id;
  }
  int convolution(int from, int inputs, int outputs, int kernel) {
    const int sizes[] = {outputs, inputs, kernel, kernel};
    const int count = outputs * inputs * kernel * kernel;
    cv::Mat halves(1, count, CV_16F, const_cast<char*>(at_));
    cv::Mat weights;
    halves.convertTo(weights, CV_32F);
    at_ += 2 * count;
    std::vector<float> bias(static_cast<std::size_t>(outputs));
    std::memcpy(bias.data(), at_, 4 * bias.size());
    at_ += 4 * outputs;
    cv::dnn::LayerParams params;
    params.set("kernel_size", kernel);
    params.set("pad", kernel / 2);
    params.set("num_output", outputs);
    params.blobs = {weights.reshape(1, 4, sizes).clone(), cv::Mat(bias, true)};
    return added("Convolution", params, {from});
  }
  int pair(int from, int inputs, int outputs) {
    for (int i = 0; i < 2; ++i) {
      from = convolution(from, i == 0 ? inputs : outputs, outputs, 3);
      cv::dnn::LayerParams params;
      from = added("ReLU", params, {from});
    }
    return from;
  }
  int pooled(int from) {
    cv::dnn::LayerParams params;
    params.set("pool", "max");
    params.set("kernel_size", 2);
    params.set("stride", 2);
    return added("Pooling", params, {from});
  }
  int doubled(int from) {
    cv::dnn::LayerParams params;
    params.set("zoom_factor", 2);
    params.set("interpolation", "nearest");
    return added("Resize", params, {from});
  }
  int joined(int one, int other) {
    cv::dnn::LayerParams params;
    return added("Concat", params, {one, other});
  }

  cv::dnn::Net net_;
  const char* at_ = nullptr;
  int count_ = 0;
};

TEST(OutlineNetwork, AgreesWithAGeneralLibrary) {
  LibraryNetwork library;
  const auto photo = part_of(picture("rendered.jpg"), 256, 192);
  const auto own = network().raw_maps(photo);
  const cv::Mat theirs = library.maps(photo);
  double worst = 0;
  double largest = 0;
  for (int y = 0; y < photo.height; ++y) {
    for (int x = 0; x < photo.width; ++x) {
      for (int c = 0; c < 3; ++c) {
        const int place[] = {0, c, y, x};
        const double other = static_cast<double>(theirs.at<float>(place));
        worst = std::max(worst, std::abs(static_cast<double>(own.at(x, y)[c]) - other));
        largest = std::max(largest, std::abs(other));
      }
    }
  }
  EXPECT_LT(worst, 1e-4);
  EXPECT_GT(largest, 3);
}

double weighted_median_size(std::vector<double> areas) {
  std::sort(areas.begin(), areas.end());
  double all = 0;
  for (const double area : areas) all += area;
  double below = 0;
  for (const double area : areas) {
    below += area;
    if (below >= all / 2) return equal_area_diameter(area);
  }
  return 0;
}

std::vector<double> areas_of(const OutlinedPhoto& found) {
  std::vector<double> areas;
  for (const auto& outline : found.outlines) areas.push_back(piece_of_outline(outline, "")->area);
  return areas;
}

/// The number of the stone at each pixel.
StoneRegions true_stones(const std::string& name) {
  png_image image{};
  image.version = PNG_IMAGE_VERSION;
  png_image_begin_read_from_file(
      &image, (PROOFSTONE_SOURCE_FOLDER "/photography/pictures/" + name).c_str());
  image.format = PNG_FORMAT_LINEAR_Y;
  std::vector<std::uint16_t> numbers(std::size_t{image.width} * image.height);
  png_image_finish_read(&image, nullptr, numbers.data(), 0, nullptr);
  StoneRegions regions{static_cast<int>(image.width), static_cast<int>(image.height), 0, {}};
  regions.stone.assign(numbers.begin(), numbers.end());
  regions.stones = *std::max_element(regions.stone.begin(), regions.stone.end());
  return regions;
}

std::vector<double> areas_of(const StoneRegions& regions) {
  std::vector<double> areas(static_cast<std::size_t>(regions.stones) + 1, 0);
  for (const int stone : regions.stone) areas[static_cast<std::size_t>(stone)] += 1;
  areas[0] = 0;
  return areas;
}

/// Share of the true stones' area whose stone was found at an overlap above one half.
double matched_area(const StoneRegions& truth, const StoneRegions& found) {
  const auto true_areas = areas_of(truth);
  const auto found_areas = areas_of(found);
  std::map<std::pair<int, int>, double> common;
  for (std::size_t i = 0; i < truth.stone.size(); ++i) ++common[{truth.stone[i], found.stone[i]}];
  double matched = 0;
  double all = 0;
  for (const double area : true_areas) all += area;
  for (const auto& [pair, area] : common) {
    const auto [stone, other] = pair;
    if (stone == 0 || other == 0) continue;
    const double one = true_areas[static_cast<std::size_t>(stone)];
    if (area > 0.5 * (one + found_areas[static_cast<std::size_t>(other)] - area)) matched += one;
  }
  return matched / all;
}

// A picture of a pile that was never trained on; its true outlines lie beside it.
TEST(OutlinePhoto, FindsTheStonesOfARenderedPile) {
  const auto photo = picture("rendered.jpg");
  const auto truth = true_stones("rendered-stones.png");
  const auto regions = stone_regions(network().maps(photo));
  EXPECT_GT(matched_area(truth, regions), 0.95);
  const auto found = outline_photo(photo, network(), "rendered.jpg");
  ASSERT_TRUE(bool(found));
  EXPECT_EQ(found->working_pixel, 1);
  const auto bare = std::count(truth.stone.begin(), truth.stone.end(), 0);
  EXPECT_NEAR(found->rock_share,
              1 - static_cast<double>(bare) / static_cast<double>(truth.stone.size()), 0.05);
  EXPECT_NEAR(weighted_median_size(areas_of(*found)) / weighted_median_size(areas_of(truth)), 1,
              0.05);
}

// The real gravel: the reference study found an area-weighted median of 17.7 to 19.2 pixels with a
// network of its own, at one to three times the size; no true size is known.
TEST(OutlinePhoto, FindsTheStonesOfRealGravel) {
  const auto photo = picture("gravel.png");
  const auto found = outline_photo(photo, network(), "gravel.png");
  ASSERT_TRUE(bool(found));
  EXPECT_GT(found->outlines.size(), 900U);
  const double once = weighted_median_size(areas_of(*found));
  EXPECT_GT(once, 16.5);
  EXPECT_LT(once, 20.5);
  const auto part = part_of(photo, 256, 256);
  const auto larger = outline_photo(resized(part, 512, 512), network(), "gravel.png");
  ASSERT_TRUE(bool(larger));
  EXPECT_NEAR(weighted_median_size(areas_of(*larger)) / 2 / once, 1, 0.1);
}

/// What is no rock, drawn: bricks in courses, lines of strokes, blades of grass.
PhotoPixels drawn(int which) {
  PhotoPixels photo{640, 480, {}};
  photo.rgb.assign(std::size_t{640} * 480 * 3, which == 1 ? 235 : 60);
  const auto fill = [&](double left, double top, double right, double bottom,
                        std::array<int, 3> colour) {
    for (int y = std::max(0, int(top)); y < std::min(480.0, bottom); ++y) {
      for (int x = std::max(0, int(left)); x < std::min(640.0, right); ++x) {
        for (std::size_t c = 0; c < 3; ++c) {
          photo.rgb[static_cast<std::size_t>(y * 640 + x) * 3 + c] =
              static_cast<std::uint8_t>(colour[c]);
        }
      }
    }
  };
  const auto draw = [](int i) { return part_of_one(static_cast<std::uint64_t>(i)); };
  for (int i = 0; which == 0 && i < 16 * 9; ++i) {
    const double x = 80.0 * (i % 9) - 40.0 * (i / 9 % 2);
    const int tone = int(40 * draw(i));
    fill(x, 30.0 * (i / 9), x + 75, 30.0 * (i / 9) + 26, {140 + tone, 60 + tone, 45 + tone});
  }
  for (int i = 0; which == 1 && i < 24 * 60; ++i) {
    const double x = 10 * (i % 60) + 20;
    const double y = 20.0 * (i / 60) + 4;
    if (draw(i) < 0.15) continue;
    fill(x + 6 * draw(i + 5000), y, x + 6 * draw(i + 5000) + 2, y + 12, {20, 20, 20});
    fill(x, y + 10 * draw(i + 9000), x + 7, y + 10 * draw(i + 9000) + 2, {20, 20, 20});
  }
  for (int i = 0; which == 2 && i < 20'000; ++i) {
    const double x = 640 * draw(3 * i);
    const double y = 480 * draw(3 * i + 1);
    const double lean = draw(3 * i + 2) - 0.5;
    const int tone = int(120 * draw(7 * i + 11));
    for (int k = 0; k < 14; ++k)
      fill(x + lean * k, y - k, x + lean * k + 1.5, y - k + 1, {tone / 2, 40 + tone, 20});
  }
  return photo;
}

/// Measured on the picture by hand; the upper ball is cut by the edge.
TEST(FindBalls, FindsThoseOfARenderedPileAndNoneOnGravel) {
  const auto balls = find_balls(picture("rendered.jpg"));
  ASSERT_EQ(balls.size(), 2U);
  for (const auto& ball : balls) {
    const bool upper = ball.middle.y < 100;
    EXPECT_NEAR(ball.middle.x, upper ? 509 : 266, 3);
    EXPECT_NEAR(ball.middle.y, upper ? 6 : 352, 3);
    EXPECT_NEAR(ball.radius, 74.5, 2);
  }
  EXPECT_TRUE(find_balls(picture("gravel.png")).empty());
}

TEST(OutlinePhoto, FindsNoStonesInAWallAPageOrALawn) {
  for (const int which : {0, 1, 2}) {
    const auto found = outline_photo(drawn(which), network(), "a.jpg");
    ASSERT_FALSE(bool(found)) << which;
    EXPECT_EQ(found.problems().front().code, "no-rock") << which;
  }
}

}  // namespace
}  // namespace proofstone
