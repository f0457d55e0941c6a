#include "report/stone_shape.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace proofstone {

namespace {

constexpr double full_turn_of_stone = 2 * std::numbers::pi;

PixelPoint middle_of(PixelPoint a, PixelPoint b) { return {(a.x + b.x) / 2, (a.y + b.y) / 2}; }

}  // namespace

SteadyNumbers::SteadyNumbers(std::string_view seed) : state_(0xCBF29CE484222325ULL) {
  for (const char c : seed) {  // FNV-1a
    state_ ^= static_cast<unsigned char>(c);
    state_ *= 0x100000001B3ULL;
  }
}

double SteadyNumbers::between(double low, double high) {
  state_ += 0x9E3779B97F4A7C15ULL;
  std::uint64_t mixed = state_;
  mixed = (mixed ^ (mixed >> 30U)) * 0xBF58476D1CE4E5B9ULL;
  mixed = (mixed ^ (mixed >> 27U)) * 0x94D049BB133111EBULL;
  mixed ^= mixed >> 31U;
  const double share = static_cast<double>(mixed >> 11U) * 0x1.0p-53;
  return low + share * (high - low);
}

std::vector<PixelPoint> stone_outline(PixelPoint foot, double height, SteadyNumbers& numbers) {
  constexpr int corners = 9;
  std::vector<PixelPoint> outline;
  for (int i = 0; i < corners; ++i) {
    const double angle = full_turn_of_stone * (i + numbers.between(-0.32, 0.32)) / corners;
    const double radius = numbers.between(0.84, 1.0);
    outline.push_back({1.12 * radius * std::cos(angle), radius * std::sin(angle)});
  }
  const auto [top, bottom] = std::minmax_element(
      outline.begin(), outline.end(), [](const auto& a, const auto& b) { return a.y < b.y; });
  const auto [left, right] = std::minmax_element(
      outline.begin(), outline.end(), [](const auto& a, const auto& b) { return a.x < b.x; });
  const double scale = height / (bottom->y - top->y);
  const double low = bottom->y;
  const double centre = (left->x + right->x) / 2;
  for (auto& point : outline) {
    point = {foot.x + scale * (point.x - centre), foot.y + scale * (point.y - low)};
  }
  return outline;
}

std::string stone_path(const std::vector<PixelPoint>& outline, Angularity angularity) {
  if (angularity == Angularity::angular || outline.size() < 3) return path_through(outline, true);
  const auto written = [](PixelPoint p) { return svg_number(p.x) + " " + svg_number(p.y); };
  std::string data = "M" + written(middle_of(outline.back(), outline.front()));
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const PixelPoint next = outline[(i + 1) % outline.size()];
    data += "Q" + written(outline[i]) + " " + written(middle_of(outline[i], next));
  }
  return data + "Z";
}

}  // namespace proofstone
