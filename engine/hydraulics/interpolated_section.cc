#include "engine/hydraulics/interpolated_section.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace proofstone {

namespace {

constexpr double same_place = 1e-9;

/// A point of the ground between two joined places, at a share of the width between them.
struct PlacedPoint {
  double share = 0;
  double station = 0;
  double elevation = 0;
  double n = 0;  ///< from here to the next
};
using Ground = std::vector<PlacedPoint>;

/// The ground between stations `from` and `to`. Where they are one (a wall), the shares are those
/// of the height. A wall at `from` counts only with `from_wall`; else it belongs to the ground
/// before.
Ground ground_between(const Section& section, double from, double to, bool from_wall) {
  const auto& points = section.points();
  Ground ground;
  const auto add = [&](double station, double elevation, double n) {
    ground.push_back({0, station, elevation, n});
  };
  double n_before = points.front().roughness.number();
  for (std::size_t i = 0; i < points.size(); ++i) {
    const double x = points[i].station.meters();
    const double z = points[i].elevation.meters();
    if (x > from + same_place && ground.empty()) {
      add(from, section.ground_at(Length::meters(from)).meters(), n_before);
    }
    if (x > to + same_place) break;
    if (x >= from - same_place) add(x, z, points[i].roughness.number());
    n_before = points[i].roughness.number();
  }
  if (ground.back().station < to - same_place) {
    add(to, section.ground_at(Length::meters(to)).meters(), n_before);
  }
  while (!from_wall && ground.size() > 1 && ground[1].station <= from + same_place) {
    ground.erase(ground.begin());
  }
  const double width = to - from;
  double height = 0;
  for (std::size_t i = 1; i < ground.size(); ++i) {
    height += std::abs(ground[i].elevation - ground[i - 1].elevation);
  }
  double climbed = 0;
  for (std::size_t i = 0; i < ground.size(); ++i) {
    if (i > 0) climbed += std::abs(ground[i].elevation - ground[i - 1].elevation);
    if (width > same_place) {
      ground[i].share = std::clamp((ground[i].station - from) / width, 0.0, 1.0);
    } else {
      ground[i].share = height > 0 ? climbed / height : 0;
    }
  }
  if (!(width > same_place)) ground.back().share = 1;
  return ground;
}

/// The ground at a share, just left or just right of it where a wall stands.
PlacedPoint at_share(const Ground& ground, double share, bool right_of_wall) {
  const auto holds = [&](const PlacedPoint& p) {
    return right_of_wall ? p.share > share + same_place : p.share >= share - same_place;
  };
  const auto after = std::find_if(ground.begin(), ground.end(), holds);
  if (after == ground.end()) return ground.back();
  if (after == ground.begin()) return ground.front();
  const PlacedPoint& before = *(after - 1);
  const double span = after->share - before.share;
  const double part = span > same_place ? std::clamp((share - before.share) / span, 0.0, 1.0) : 0;
  return {share, before.station + part * (after->station - before.station),
          before.elevation + part * (after->elevation - before.elevation), before.n};
}

/// Appends the ground between two joined places, `share` of the way from `a` to `b`.
void append_between(const Ground& a, const Ground& b, double share,
                    std::vector<PlacedPoint>& into) {
  std::vector<double> places;
  for (const auto& p : a) places.push_back(p.share);
  for (const auto& p : b) places.push_back(p.share);
  std::sort(places.begin(), places.end());
  places.erase(std::unique(places.begin(), places.end(),
                           [](double one, double next) { return next - one < same_place; }),
               places.end());
  const auto mix = [&](double of_a, double of_b) { return of_a + share * (of_b - of_a); };
  for (const double place : places) {
    for (const bool right : {false, true}) {
      const PlacedPoint pa = at_share(a, place, right);
      const PlacedPoint pb = at_share(b, place, right);
      into.push_back(
          {place, mix(pa.station, pb.station), mix(pa.elevation, pb.elevation), mix(pa.n, pb.n)});
    }
  }
}

/// Takes out repeated points and all but the first and last of those at one station.
std::vector<SectionPoint> tidied(const std::vector<PlacedPoint>& points) {
  std::vector<PlacedPoint> kept;
  for (const PlacedPoint& p : points) {
    if (!kept.empty() && p.station - kept.back().station < same_place) {
      if (std::abs(p.elevation - kept.back().elevation) < same_place) {
        kept.back().n = p.n;
        continue;
      }
      const std::size_t n = kept.size();
      if (n >= 2 && p.station - kept[n - 2].station < same_place) kept.pop_back();
      PlacedPoint wall = p;
      wall.station = kept.back().station;
      kept.push_back(wall);
      continue;
    }
    kept.push_back(p);
  }
  std::vector<SectionPoint> section;
  section.reserve(kept.size());
  for (const PlacedPoint& p : kept) {
    section.push_back(
        {Length::meters(p.station), Length::meters(p.elevation), Dimensionless::number(p.n)});
  }
  return section;
}

/// Ends, banks and the lowest ground of the channel, left to right.
std::vector<double> joined_places(const ReachSection& section) {
  const Section& ground = section.section;
  const Length left = section.left_bank.value_or(ground.left_end());
  const Length right = section.right_bank.value_or(ground.right_end());
  Length lowest = left;
  for (const SectionPoint& p : ground.points()) {
    const bool in_channel = p.station >= left && p.station <= right;
    if (in_channel && p.elevation < ground.ground_at(lowest)) lowest = p.station;
  }
  return {ground.left_end().meters(), left.meters(), lowest.meters(), right.meters(),
          ground.right_end().meters()};
}

std::optional<Length> between(std::optional<Length> a, std::optional<Length> b, double share) {
  if (!a || !b) return std::nullopt;
  return *a + share * (*b - *a);
}

std::vector<IneffectivePart> ineffective_between(const ReachSection& a, const ReachSection& b,
                                                 double share) {
  if (a.ineffective.size() != b.ineffective.size()) {
    return share < 0.5 ? a.ineffective : b.ineffective;
  }
  std::vector<IneffectivePart> parts;
  for (std::size_t i = 0; i < a.ineffective.size(); ++i) {
    const IneffectivePart& one = a.ineffective[i];
    const IneffectivePart& other = b.ineffective[i];
    parts.push_back({one.left + share * (other.left - one.left),
                     one.right + share * (other.right - one.right),
                     one.until + share * (other.until - one.until)});
  }
  return parts;
}

}  // namespace

Expected<ReachSection> interpolated_section(const ReachSection& upstream,
                                            const ReachSection& downstream, double share) {
  const auto places_a = joined_places(upstream);
  const auto places_b = joined_places(downstream);
  std::vector<PlacedPoint> points;
  for (std::size_t i = 0; i + 1 < places_a.size(); ++i) {
    append_between(ground_between(upstream.section, places_a[i], places_a[i + 1], i == 0),
                   ground_between(downstream.section, places_b[i], places_b[i + 1], i == 0), share,
                   points);
  }
  auto section = Section::make(tidied(points));
  if (!section) return section.problems();
  ReachSection between_them{fmt::format("{} + {:.0f} %", upstream.name, 100 * share),
                            std::move(*section)};
  between_them.left_bank = between(upstream.left_bank, downstream.left_bank, share);
  between_them.right_bank = between(upstream.right_bank, downstream.right_bank, share);
  between_them.ineffective = ineffective_between(upstream, downstream, share);
  between_them.losses = upstream.losses;
  between_them.composite = upstream.composite;
  if (upstream.energy_coefficient && downstream.energy_coefficient) {
    between_them.energy_coefficient =
        *upstream.energy_coefficient +
        share * (*downstream.energy_coefficient - *upstream.energy_coefficient);
  }
  between_them.interpolated = true;
  return between_them;
}

}  // namespace proofstone
