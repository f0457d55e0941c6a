#include "engine/hydraulics/bank.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "engine/hydraulics/section_problem.h"

namespace proofstone {

namespace {

constexpr double share_up_the_slope = 0.20;

/// A point of the ground seen from the toe: how far out towards the bank, and how high.
struct GroundPoint {
  double out = 0;
  double height = 0;  ///< above the toe
};

double distance(const GroundPoint& a, const GroundPoint& b) {
  const double along = b.out - a.out;
  const double up = b.height - a.height;
  return std::sqrt(along * along + up * up);
}

/// The lowest point; of equally low ones the nearest to the bank.
Length lowest_station(const Section& section, BankSide side) {
  const auto& points = section.points();
  const SectionPoint* lowest = &points.front();
  for (const SectionPoint& point : points) {
    const bool lower = point.elevation < lowest->elevation;
    const bool as_low_and_nearer =
        side == BankSide::right && !(point.elevation > lowest->elevation);
    if (lower || as_low_and_nearer) lowest = &point;
  }
  return lowest->station;
}

/// The ground from the toe outwards to the end of the section on that side.
std::vector<GroundPoint> ground_from_toe(const Section& section, BankSide side, Length toe,
                                         Length toe_elevation) {
  std::vector<GroundPoint> ground{{0, 0}};
  const auto add = [&](const SectionPoint& point) {
    const double out =
        side == BankSide::left ? (toe - point.station).meters() : (point.station - toe).meters();
    const double height = (point.elevation - toe_elevation).meters();
    if (out < 0) return;
    if (out > 0) {
      ground.push_back({out, height});
    } else if (height > 0) {
      ground.push_back({0, height});  // a wall that stands on the toe
    } else {
      ground.resize(1);  // the toe itself: a wall met before it stands behind the toe
    }
  };
  const auto& points = section.points();
  if (side == BankSide::right) {
    std::for_each(points.begin(), points.end(), add);
  } else {
    std::for_each(points.rbegin(), points.rend(), add);
  }
  return ground;
}

/// The first place where the ground comes up to `height`, or nothing.
std::optional<GroundPoint> reaches(const std::vector<GroundPoint>& ground, double height,
                                   std::size_t& piece) {
  for (std::size_t i = 1; i < ground.size(); ++i) {
    if (ground[i].height < height) continue;
    const GroundPoint& a = ground[i - 1];
    const GroundPoint& b = ground[i];
    const double share = (height - a.height) / (b.height - a.height);
    piece = i;
    return GroundPoint{a.out + share * (b.out - a.out), height};
  }
  return std::nullopt;
}

/// The ground from the toe to the water line, the water line included.
std::vector<GroundPoint> cut_at(const std::vector<GroundPoint>& ground, std::size_t piece,
                                const GroundPoint& end) {
  std::vector<GroundPoint> cut(ground.begin(), ground.begin() + static_cast<std::ptrdiff_t>(piece));
  cut.push_back(end);
  return cut;
}

/// The place a given length along the ground from its start.
GroundPoint along(const std::vector<GroundPoint>& ground, double length) {
  for (std::size_t i = 1; i < ground.size(); ++i) {
    const double piece = distance(ground[i - 1], ground[i]);
    if (length <= piece && piece > 0) {
      const double share = length / piece;
      return {ground[i - 1].out + share * (ground[i].out - ground[i - 1].out),
              ground[i - 1].height + share * (ground[i].height - ground[i - 1].height)};
    }
    length -= piece;
  }
  return ground.back();
}

double steepest(const std::vector<GroundPoint>& ground, double up_to) {
  double angle = 0;
  for (std::size_t i = 1; i < ground.size() && ground[i - 1].out <= up_to; ++i) {
    const double run = ground[i].out - ground[i - 1].out;
    const double rise = ground[i].height - ground[i - 1].height;
    angle = std::max(angle, std::atan2(rise, run));
  }
  return angle;
}

void explain(const BankGeometry& bank, Length water_level, Steps& steps) {
  steps.given("w", "water level", measure(water_level));
  steps.given("x_toe", "station of the toe", measure(bank.toe_station));
  steps.given("z_toe", "elevation of the toe", measure(bank.toe_elevation));
  steps.computed("d_toe", "depth at the toe", "w − z_toe", measure(bank.toe_depth));
  steps.computed("θ", "bank angle, from the toe to the water line or the top of the zone",
                 "atan(rise/run)", measure(bank.angle));
  steps.computed("L", "wet slope length, along the ground", "Σ √(Δx²+Δz²)",
                 measure(bank.wet_slope_length));
  steps.computed("d", "depth 20 % of the slope length up from the toe", "w − ground at 0.20·L",
                 measure(bank.local_depth),
                 "USACE EM 1110-2-1601; WES Streambank Handbook App. A sec. A.4.3");
}

}  // namespace

std::string_view bank_side_name(BankSide side) { return side == BankSide::left ? "left" : "right"; }

Expected<BankGeometry> bank_geometry(const Section& section, BankSide side,
                                     std::optional<Length> toe_station,
                                     std::optional<Length> top_station, Length water_level) {
  if (!std::isfinite(water_level.meters())) {
    return section_problem("not-a-number", "The water level is not a finite number.", "water_level",
                           "a finite length");
  }
  const Length toe = toe_station ? *toe_station : lowest_station(section, side);
  if (!(toe >= section.left_end() && toe <= section.right_end())) {
    return section_problem("toe-outside", "The toe lies outside the surveyed section.",
                           "toe_station", "a station inside the section");
  }
  BankGeometry bank;
  bank.toe_station = toe;
  bank.toe_elevation = section.ground_at(toe);
  bank.toe_depth = water_level - bank.toe_elevation;
  const double depth = bank.toe_depth.meters();
  if (!(depth > 0)) {
    return section_problem("dry", "The toe of the bank stands above the water at this discharge.",
                           "toe_station", "a toe below the water level");
  }
  const std::vector<GroundPoint> ground = ground_from_toe(section, side, toe, bank.toe_elevation);
  std::size_t piece = 0;
  const auto water_line = reaches(ground, depth, piece);
  if (!water_line) {
    return section_problem(
        "overtopped",
        "The surveyed ground on this side ends below the water, so the bank has no "
        "water line.",
        "section", "a survey that goes on above the water level");
  }
  GroundPoint top = *water_line;
  if (top_station) {
    const double out =
        side == BankSide::left ? (toe - *top_station).meters() : (*top_station - toe).meters();
    if (!(out >= 0) || *top_station < section.left_end() || *top_station > section.right_end()) {
      return section_problem("top-on-wrong-side",
                             "The top of the zone does not lie on the bank's side of the toe.",
                             "top_station", "a station between the toe and the end of the section");
    }
    const double height = (section.ground_at(*top_station) - bank.toe_elevation).meters();
    if (!(height > 0)) {
      return section_problem("bank-not-rising", "The top of the zone is not higher than its toe.",
                             "top_station", "a station where the ground stands above the toe");
    }
    if (out < top.out) top = {out, height};
  }

  const std::vector<GroundPoint> wet_ground = cut_at(ground, piece, *water_line);
  double length = 0;
  for (std::size_t i = 1; i < wet_ground.size(); ++i) {
    length += distance(wet_ground[i - 1], wet_ground[i]);
  }
  const GroundPoint local = along(wet_ground, share_up_the_slope * length);
  const auto station = [&](const GroundPoint& point) {
    return toe + (side == BankSide::left ? -1.0 : 1.0) * Length::meters(point.out);
  };
  bank.top_station = station(top);
  bank.top_elevation = bank.toe_elevation + Length::meters(top.height);
  bank.angle = Angle::radians(std::atan2(top.height, top.out));
  bank.steepest_angle = Angle::radians(steepest(wet_ground, top.out));
  bank.local_station = station(local);
  bank.local_depth = bank.toe_depth - Length::meters(local.height);
  bank.wet_slope_length = Length::meters(length);
  explain(bank, water_level, bank.steps);
  return bank;
}

}  // namespace proofstone
