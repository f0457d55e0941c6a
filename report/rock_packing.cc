#include "report/rock_packing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace proofstone {

namespace {

constexpr double full_turn_of_packing = 2 * std::numbers::pi;

double squared(double v) { return v * v; }

double distance(SectionPlace a, SectionPlace b) {
  return std::sqrt(squared(b.x - a.x) + squared(b.z - a.z));
}

/// Unit vector into the ground, square to the line from a to b (left to right).
SectionPlace into_ground(SectionPlace a, SectionPlace b) {
  const double length = distance(a, b);
  return {(b.z - a.z) / length, -(b.x - a.x) / length};
}

/// A stone before it meets its neighbours.
struct Seed {
  SectionPlace centre;
  double along = 0;
  double radius = 0;
};

int row_count(const LayerStrip& strip, double median) {
  return static_cast<int>(std::lround(std::clamp(strip.thickness() / (0.86 * median), 1.0, 1e6)));
}

std::vector<Seed> seeds_in(const LayerStrip& strip, double from, double to, double median,
                           std::size_t most, SteadyNumbers& numbers) {
  std::vector<Seed> seeds;
  const int rows = row_count(strip, median);
  const double row_height = strip.thickness() / rows;
  for (int row = 0; row < rows; ++row) {
    double along = from + numbers.between(-0.5, 0.5) * median;
    while (along < to + 0.5 * median && seeds.size() < most) {
      const double size = median * numbers.between(0.6, 1.4);
      const double wander = numbers.between(-0.16, 0.16);
      const double down = std::clamp((row + 0.5 + wander) * row_height, 0.0, strip.thickness());
      const double place = along + size / 2;
      seeds.push_back({strip.at(std::clamp(place, 0.0, strip.length()), down), place, size / 2});
      along += size;
    }
  }
  std::sort(seeds.begin(), seeds.end(),
            [](const Seed& a, const Seed& b) { return a.along < b.along; });
  return seeds;
}

/// How much farther a place is from the surface of `a` than from that of `b` (power distances).
double nearer_to_other(SectionPlace place, const Seed& a, const Seed& b) {
  const auto power = [&](const Seed& seed) {
    return squared(place.x - seed.centre.x) + squared(place.z - seed.centre.z) -
           squared(seed.radius);
  };
  return power(a) - power(b);
}

/// What is left of a convex outline of stone `a` after its neighbour `b` takes its side.
std::vector<SectionPlace> without_side_of(const std::vector<SectionPlace>& outline, const Seed& a,
                                          const Seed& b) {
  std::vector<SectionPlace> kept;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const SectionPlace p = outline[i];
    const SectionPlace q = outline[(i + 1) % outline.size()];
    const double at_p = nearer_to_other(p, a, b);
    const double at_q = nearer_to_other(q, a, b);
    if (at_p <= 0) kept.push_back(p);
    if ((at_p < 0) != (at_q < 0)) {
      const double share = std::clamp(at_p / (at_p - at_q), 0.0, 1.0);
      kept.push_back({p.x + share * (q.x - p.x), p.z + share * (q.z - p.z)});
    }
  }
  return kept;
}

/// A rough round of a seed, larger than the seed so that it reaches its neighbours.
std::vector<SectionPlace> rough_round(const Seed& seed, SteadyNumbers& numbers) {
  constexpr int corners = 9;
  const double turn = numbers.between(0, full_turn_of_packing);
  std::vector<SectionPlace> outline;
  for (int i = 0; i < corners; ++i) {
    const double angle = turn + full_turn_of_packing * i / corners;
    const double radius = seed.radius * numbers.between(1.12, 1.36);
    outline.push_back(
        {seed.centre.x + radius * std::cos(angle), seed.centre.z + radius * std::sin(angle)});
  }
  return outline;
}

/// Drawn a little smaller, so that joints show.
void open_joints(std::vector<SectionPlace>& outline) {
  constexpr double kept = 0.93;
  SectionPlace middle;
  for (const auto& place : outline) {
    middle.x += place.x / static_cast<double>(outline.size());
    middle.z += place.z / static_cast<double>(outline.size());
  }
  for (auto& place : outline) {
    place = {middle.x + kept * (place.x - middle.x), middle.z + kept * (place.z - middle.z)};
  }
}

}  // namespace

std::optional<LayerStrip> LayerStrip::make(const SectionPicture::RockLayer& layer) {
  LayerStrip strip;
  strip.thickness_ = layer.thickness.meters();
  for (const auto& point : layer.surface) {
    const SectionPlace place{point.station.meters(), point.elevation.meters()};
    if (!std::isfinite(place.x) || !std::isfinite(place.z)) continue;
    if (!strip.surface_.empty() && !(distance(strip.surface_.back(), place) > 1e-6)) continue;
    strip.surface_.push_back(place);
  }
  auto& surface = strip.surface_;
  if (surface.size() < 2 || !std::isfinite(strip.thickness_) || !(strip.thickness_ > 0)) {
    return std::nullopt;
  }
  if (surface.front().x > surface.back().x) std::reverse(surface.begin(), surface.end());

  strip.distance_.push_back(0);
  for (std::size_t i = 0; i + 1 < surface.size(); ++i) {
    strip.distance_.push_back(strip.distance_.back() + distance(surface[i], surface[i + 1]));
  }
  for (std::size_t i = 0; i < surface.size(); ++i) {
    const SectionPlace before = into_ground(surface[i == 0 ? 0 : i - 1], surface[i == 0 ? 1 : i]);
    const std::size_t last = surface.size() - 1;
    const SectionPlace after =
        into_ground(surface[i == last ? i - 1 : i], surface[i == last ? i : i + 1]);
    // Where the ground bends, the underside bends on the line that halves the angle.
    const double cosine = before.x * after.x + before.z * after.z;
    const double share = 1 / std::max(1 + cosine, 0.6);
    strip.down_.push_back({share * (before.x + after.x), share * (before.z + after.z)});
  }
  return strip;
}

SectionPlace LayerStrip::at(double along, double down) const {
  const auto upper = std::upper_bound(distance_.begin(), distance_.end(), along);
  const auto index = std::clamp<std::ptrdiff_t>(upper - distance_.begin(), 1,
                                                static_cast<std::ptrdiff_t>(distance_.size()) - 1);
  const auto to = static_cast<std::size_t>(index);
  const std::size_t from = to - 1;
  const double share =
      std::clamp((along - distance_[from]) / (distance_[to] - distance_[from]), 0.0, 1.0);
  const auto between = [&](double a, double b) { return a + share * (b - a); };
  return {between(surface_[from].x, surface_[to].x) + down * between(down_[from].x, down_[to].x),
          between(surface_[from].z, surface_[to].z) + down * between(down_[from].z, down_[to].z)};
}

std::vector<SectionPlace> LayerStrip::outline() const {
  std::vector<SectionPlace> line = surface_;
  for (std::size_t i = surface_.size(); i-- > 0;) {
    line.push_back(
        {surface_[i].x + thickness_ * down_[i].x, surface_[i].z + thickness_ * down_[i].z});
  }
  return line;
}

std::optional<std::pair<double, double>> LayerStrip::stretch_in(const SectionWindow& window) const {
  constexpr int samples = 400;
  std::optional<std::pair<double, double>> stretch;
  for (int i = 0; i <= samples; ++i) {
    const double along = length() * i / samples;
    if (!window.holds(at(along, thickness_ / 2), thickness_)) continue;
    if (!stretch) stretch = {along, along};
    stretch->second = along;
  }
  return stretch;
}

double expected_stones(const LayerStrip& strip, double from, double to, double median) {
  return row_count(strip, median) * ((to - from) / median + 1);
}

std::vector<std::vector<SectionPlace>> packed_stones(const LayerStrip& strip, double from,
                                                     double to, double median, std::size_t most,
                                                     SteadyNumbers& numbers) {
  const auto seeds = seeds_in(strip, from, to, median, most, numbers);
  std::vector<std::vector<SectionPlace>> stones;
  const double reach = 2.2 * median;
  for (std::size_t i = 0; i < seeds.size(); ++i) {
    auto outline = rough_round(seeds[i], numbers);
    std::size_t first = i;
    while (first > 0 && seeds[i].along - seeds[first - 1].along < reach) --first;
    for (std::size_t j = first; j < seeds.size() && seeds[j].along - seeds[i].along < reach; ++j) {
      if (j != i) outline = without_side_of(outline, seeds[i], seeds[j]);
    }
    if (outline.size() < 3) continue;  // wholly hidden by its neighbours
    open_joints(outline);
    stones.push_back(std::move(outline));
  }
  return stones;
}

}  // namespace proofstone
