#include "engine/hydraulics/section_flow.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "engine/hydraulics/bracketed_root.h"
#include "engine/hydraulics/wet_pieces.h"

namespace proofstone {

namespace {

constexpr double g = standard_gravity.meters_per_second_squared();

/// One part of a section at one level, in SI, with its rates of change with the level.
struct PartState {
  double area = 0;
  double perimeter = 0;
  double width = 0;  ///< also d(area)/d(level)
  double conveyance = 0;
  double conveyance_growth = 0;  ///< d(conveyance)/d(level) / conveyance
};

double conveyance_of(double area, double perimeter, double n) {
  return area * std::pow(area / perimeter, 2.0 / 3.0) / n;
}

/// Σ of a power of n over the wetted perimeter, and its rate of change with the level.
struct WeightedRoughness {
  double sum = 0;
  double growth = 0;
  void add(const WetPiece& piece, double weight) {
    sum += piece.perimeter * weight;
    growth += piece.perimeter_growth * weight;
  }
};

/// Neighbouring ground of one roughness, for Lotter's sum.
struct Strip {
  double area = 0;
  double perimeter = 0;
  double perimeter_growth = 0;
  double width = 0;
  double n = 0;
};

class PartSums {
 public:
  explicit PartSums(CompositeRoughness composite) : composite_(composite) {}

  void add(const WetPiece& piece) {
    area_ += piece.area;
    perimeter_ += piece.perimeter;
    width_ += piece.width;
    perimeter_growth_ += piece.perimeter_growth;
    const double n = piece.roughness;
    switch (composite_) {
      case CompositeRoughness::horton:
        weighted_.add(piece, n * std::sqrt(n));
        break;
      case CompositeRoughness::pavlovskii:
        weighted_.add(piece, n * n);
        break;
      case CompositeRoughness::lotter:
        add_to_strip(piece);
        break;
    }
  }

  PartState state() {
    PartState part;
    if (!(area_ > 0)) return part;
    part.area = area_;
    part.perimeter = perimeter_;
    part.width = width_;
    switch (composite_) {
      case CompositeRoughness::horton:
        // With n = (Σ P·n^1.5 / P)^⅔ the perimeter falls out of A·R^⅔/n.
        part.conveyance = std::pow(area_, 5.0 / 3.0) / std::pow(weighted_.sum, 2.0 / 3.0);
        part.conveyance_growth =
            5.0 / 3.0 * width_ / area_ - 2.0 / 3.0 * weighted_.growth / weighted_.sum;
        break;
      case CompositeRoughness::pavlovskii:
        part.conveyance = conveyance_of(area_, perimeter_, std::sqrt(weighted_.sum / perimeter_));
        part.conveyance_growth = 5.0 / 3.0 * width_ / area_ - perimeter_growth_ / perimeter_ / 6.0 -
                                 weighted_.growth / weighted_.sum / 2.0;
        break;
      case CompositeRoughness::lotter:
        close_strip();
        part.conveyance = strips_conveyance_;
        part.conveyance_growth = strips_growth_ / strips_conveyance_;
        break;
    }
    return part;
  }

 private:
  void add_to_strip(const WetPiece& piece) {
    const bool wall = !(piece.width > 0);
    if (!wall && strip_.width > 0 && std::abs(strip_.n - piece.roughness) > 1e-12) close_strip();
    strip_.area += piece.area;
    strip_.perimeter += piece.perimeter;
    strip_.perimeter_growth += piece.perimeter_growth;
    strip_.width += piece.width;
    if (!wall) strip_.n = piece.roughness;
  }
  void close_strip() {
    if (!(strip_.area > 0)) return;
    const double conveyance = conveyance_of(strip_.area, strip_.perimeter, strip_.n);
    strips_conveyance_ += conveyance;
    strips_growth_ += conveyance * (5.0 / 3.0 * strip_.width / strip_.area -
                                    2.0 / 3.0 * strip_.perimeter_growth / strip_.perimeter);
    strip_ = {};
  }

  CompositeRoughness composite_;
  double area_ = 0;
  double perimeter_ = 0;
  double width_ = 0;
  double perimeter_growth_ = 0;
  WeightedRoughness weighted_;
  Strip strip_;
  double strips_conveyance_ = 0;
  double strips_growth_ = 0;
};

/// The stations that bound the parts, the ends of the section included.
std::vector<Length> part_bounds(const Section& section, std::vector<Length> divisions) {
  std::sort(divisions.begin(), divisions.end());
  std::vector<Length> bounds{section.left_end()};
  for (const Length division : divisions) {
    if (division > bounds.back() && division < section.right_end()) bounds.push_back(division);
  }
  bounds.push_back(section.right_end());
  return bounds;
}

/// A divided section, ready to be asked at many levels.
class DividedSection {
 public:
  DividedSection(const Section& section, const std::vector<Length>& divisions,
                 CompositeRoughness composite)
      : section_(section), bounds_(part_bounds(section, divisions)), composite_(composite) {}

  const std::vector<Length>& bounds() const { return bounds_; }

  PartState part(std::size_t index, double level) const {
    PartSums sums(composite_);
    visit_wet_pieces(section_, bounds_[index], bounds_[index + 1], Length::meters(level),
                     [&](const WetPiece& piece) { sums.add(piece); });
    return sums.state();
  }

  double conveyance(double level) const {
    double sum = 0;
    for (std::size_t i = 0; i + 1 < bounds_.size(); ++i) sum += part(i, level).conveyance;
    return sum;
  }

  /// dE/d(level) of E = level + α·Q²/(2g·A²), α changing with the level.
  double energy_growth(double level, double discharge) const {
    double area = 0, width = 0, conveyance = 0, conveyance_growth = 0, cubes = 0, cubes_growth = 0;
    for (std::size_t i = 0; i + 1 < bounds_.size(); ++i) {
      const PartState p = part(i, level);
      if (!(p.area > 0)) continue;
      const double k = p.conveyance;
      const double cube = k * k * k / (p.area * p.area);
      area += p.area;
      width += p.width;
      conveyance += k;
      conveyance_growth += k * p.conveyance_growth;
      cubes += cube;
      cubes_growth += cube * (3 * p.conveyance_growth - 2 * p.width / p.area);
    }
    const double alpha = cubes * area * area / (conveyance * conveyance * conveyance);
    const double alpha_growth =
        alpha * (cubes_growth / cubes + 2 * width / area - 3 * conveyance_growth / conveyance);
    const double velocity = discharge / area;
    return 1 - alpha * velocity * velocity * width / (g * area) +
           velocity * velocity / (2 * g) * alpha_growth;
  }

 private:
  const Section& section_;
  std::vector<Length> bounds_;
  CompositeRoughness composite_;
};

/// Levels, rising, from just above the lowest ground to `ceiling`, at which a function of the level
/// is looked at before roots are refined. Between two neighbouring elevations of the ground such a
/// function is smooth; it may turn quickly just above a berm, so the levels stand closest there.
std::vector<double> scan_levels(const Section& section, double ceiling) {
  constexpr std::size_t most_intervals = 400;
  constexpr std::size_t wanted_levels = 400;
  std::vector<double> breaks;
  for (const SectionPoint& point : section.points()) {
    if (point.elevation.meters() < ceiling) breaks.push_back(point.elevation.meters());
  }
  breaks.push_back(ceiling);
  std::sort(breaks.begin(), breaks.end());
  breaks.erase(
      std::unique(breaks.begin(), breaks.end(), [](double a, double b) { return b - a < 1e-9; }),
      breaks.end());
  if (breaks.size() < 2) return {};
  // Thousands of survey points stand closer than the scan needs; keep an even selection.
  const std::size_t stride = 1 + (breaks.size() - 2) / most_intervals;
  std::vector<double> levels;
  const std::size_t intervals = (breaks.size() - 1 + stride - 1) / stride;
  const std::size_t in_each = std::clamp<std::size_t>(wanted_levels / intervals, 4, 48);
  for (std::size_t i = 0; i + 1 < breaks.size(); i += stride) {
    const double from = breaks[i];
    const double to = breaks[std::min(i + stride, breaks.size() - 1)];
    levels.push_back(from + 1e-6 * (to - from));
    for (std::size_t j = 1; j < in_each; ++j) {
      const double share = static_cast<double>(j) / static_cast<double>(in_each);
      levels.push_back(from + share * share * (to - from));
    }
    levels.push_back(to);
  }
  return levels;
}

/// Every level at which `rises` turns from false to true while the level goes up from the ground.
template <class Rises>
std::vector<double> turning_levels(const Section& section, Rises&& rises) {
  std::vector<double> found;
  double below = section.lowest().meters();
  bool risen_below = false;
  for (const double level : scan_levels(section, section.lower_end().meters())) {
    const bool risen = rises(level);
    if (risen && !risen_below) found.push_back(turning_point(below, level, rises));
    below = level;
    risen_below = risen;
  }
  return found;
}

std::string in_both_systems(Measure measure) {
  return fmt::format("{} ({})", display(measure, UnitSystem::us_customary).text,
                     display(measure, UnitSystem::si).text);
}

Problems discharge_problems(const Section& section, const std::vector<Length>& divisions,
                            Discharge discharge) {
  Problems problems;
  if (!(discharge.si() > 0) || !std::isfinite(discharge.si())) {
    problems.push_back({"discharge-not-positive", "The discharge is not a positive number.", "",
                        "discharge", "a discharge above 0"});
  }
  for (std::size_t i = 0; i < divisions.size(); ++i) {
    const bool inside = divisions[i] >= section.left_end() && divisions[i] <= section.right_end();
    const bool in_order = i == 0 || divisions[i] > divisions[i - 1];
    if (inside && in_order) continue;
    problems.push_back({"division-outside",
                        inside ? "The division lines are not in order from left to right."
                               : "A division line lies outside the section.",
                        "", fmt::format("division {}", i + 1),
                        "stations inside the section, from left to right"});
  }
  return problems;
}

Problem overtopped(const Section& section, Discharge discharge, const std::string& because) {
  return {"overtopped",
          fmt::format("The section cannot hold {}: {} below the lower of its two ends, at "
                      "elevation {}.",
                      in_both_systems(measure(discharge)), because,
                      in_both_systems(measure(section.lower_end()))),
          "", "section", "survey the section further up both banks, or a smaller discharge"};
}

}  // namespace

Velocity SectionFlow::mean_velocity() const {
  if (!(wet.area.si() > 0)) return {};
  return Velocity::meters_per_second(discharge.si() / wet.area.si());
}

Length SectionFlow::hydraulic_radius() const {
  if (!(wet.area.si() > 0)) return {};
  return Length::meters(wet.area.si() / wet.wetted_perimeter.si());
}

Length SectionFlow::specific_energy() const {
  const double v = mean_velocity().meters_per_second();
  return wet.deepest + Length::meters(energy_coefficient.number() * v * v / (2 * g));
}

std::string_view composite_roughness_name(CompositeRoughness composite) {
  switch (composite) {
    case CompositeRoughness::horton:
      return "horton";
    case CompositeRoughness::pavlovskii:
      return "pavlovskii";
    case CompositeRoughness::lotter:
      return "lotter";
  }
  return "";
}

SectionFlow flow_at_level(const Section& section, const std::vector<Length>& divisions,
                          Length water_level, CompositeRoughness composite) {
  const DividedSection divided(section, divisions, composite);
  SectionFlow flow;
  flow.water_level = water_level;
  flow.wet = section.wet(water_level);
  double cubes = 0;
  for (std::size_t i = 0; i + 1 < divided.bounds().size(); ++i) {
    const PartState state = divided.part(i, water_level.meters());
    FlowPart part;
    part.left = divided.bounds()[i];
    part.right = divided.bounds()[i + 1];
    part.area = Area::square_meters(state.area);
    part.wetted_perimeter = Length::meters(state.perimeter);
    part.top_width = Length::meters(state.width);
    part.conveyance_si = state.conveyance;
    if (state.area > 0) {
      const double with_n_of_one = conveyance_of(state.area, state.perimeter, 1);
      part.roughness = Dimensionless::number(with_n_of_one / state.conveyance);
      cubes += state.conveyance * state.conveyance * state.conveyance / (state.area * state.area);
    }
    flow.conveyance_si += state.conveyance;
    flow.parts.push_back(part);
  }
  if (flow.conveyance_si > 0) {
    const double area = flow.wet.area.si();
    const double k = flow.conveyance_si;
    flow.energy_coefficient = Dimensionless::number(cubes * area * area / (k * k * k));
  }
  return flow;
}

SectionFlow carrying(SectionFlow flow, Discharge discharge) {
  flow.discharge = discharge;
  if (!(flow.conveyance_si > 0)) return flow;
  for (FlowPart& part : flow.parts) {
    part.discharge = discharge * (part.conveyance_si / flow.conveyance_si);
    if (part.area.si() > 0) {
      part.velocity = Velocity::meters_per_second(part.discharge.si() / part.area.si());
    }
  }
  const double hydraulic_depth = flow.wet.area.si() / flow.wet.top_width.si();
  flow.froude_number =
      Dimensionless::number(flow.mean_velocity().meters_per_second() /
                            std::sqrt(g * hydraulic_depth / flow.energy_coefficient.number()));
  return flow;
}

Expected<SectionFlow> normal_flow(const Section& section, const std::vector<Length>& divisions,
                                  Discharge discharge, Slope slope, CompositeRoughness composite,
                                  Steps& steps) {
  Problems problems = discharge_problems(section, divisions, discharge);
  if (!(slope.ratio() > 0) || !std::isfinite(slope.ratio())) {
    problems.push_back({"slope-not-positive",
                        "The slope is not a positive number; without a fall there is no uniform "
                        "flow.",
                        "", "slope", "a slope above 0"});
  }
  if (!problems.empty()) return problems;

  const DividedSection divided(section, divisions, composite);
  const double wanted = discharge.si() / std::sqrt(slope.ratio());
  const auto levels =
      turning_levels(section, [&](double level) { return divided.conveyance(level) >= wanted; });
  if (levels.empty()) {
    const double holds =
        divided.conveyance(section.lower_end().meters()) * std::sqrt(slope.ratio());
    return overtopped(
        section, discharge,
        fmt::format("at this slope it carries {}",
                    in_both_systems(measure(Discharge::cubic_meters_per_second(holds)))));
  }
  SectionFlow flow = carrying(
      flow_at_level(section, divisions, Length::meters(levels.front()), composite), discharge);
  for (std::size_t i = 1; i < levels.size(); ++i) {
    flow.further_levels.push_back(Length::meters(levels[i]));
  }

  steps.given("Q", "discharge", measure(discharge));
  steps.given("S", "slope of the energy line, equal to the bed's in uniform flow", measure(slope));
  steps.computed("w", "lowest water level that carries the discharge", "K(w)·√S = Q",
                 measure(flow.water_level), "bracketed root finding");
  for (const Length level : flow.further_levels) {
    steps.computed("w'", "a higher level that would carry it too; conveyance falls between them",
                   "K(w')·√S = Q", measure(level), "bracketed root finding");
  }
  explain_flow(flow, steps);
  return flow;
}

Expected<std::vector<SectionFlow>> critical_flows(const Section& section,
                                                  const std::vector<Length>& divisions,
                                                  Discharge discharge,
                                                  CompositeRoughness composite) {
  const Problems problems = discharge_problems(section, divisions, discharge);
  if (!problems.empty()) return problems;

  const DividedSection divided(section, divisions, composite);
  const auto levels = turning_levels(
      section, [&](double level) { return divided.energy_growth(level, discharge.si()) >= 0; });
  if (levels.empty()) {
    return overtopped(section, discharge, "its specific energy is still falling at every level");
  }
  std::vector<SectionFlow> flows;
  for (const double level : levels) {
    flows.push_back(
        carrying(flow_at_level(section, divisions, Length::meters(level), composite), discharge));
  }
  std::stable_sort(flows.begin(), flows.end(), [](const SectionFlow& a, const SectionFlow& b) {
    return a.specific_energy() < b.specific_energy();
  });
  return flows;
}

void explain_flow(const SectionFlow& flow, Steps& steps) {
  const std::string manning = "Manning's equation, k = 1 in SI";
  steps.computed("d", "greatest depth", "w − lowest ground", measure(flow.wet.deepest));
  const bool divided = flow.parts.size() > 1;
  for (std::size_t i = 0; i < flow.parts.size(); ++i) {
    const FlowPart& part = flow.parts[i];
    if (!(part.area.si() > 0)) continue;
    const std::string mark = divided ? fmt::format("{}", i + 1) : std::string();
    const std::string of = divided ? fmt::format(" of part {}", i + 1) : std::string();
    steps.computed("A" + mark, "wet area" + of, "Σ Δx·(d₁+d₂)/2", measure(part.area));
    steps.computed("P" + mark, "wetted perimeter" + of, "Σ √(Δx²+Δz²)",
                   measure(part.wetted_perimeter));
    steps.computed("n" + mark, "roughness" + of, "", measure(part.roughness));
    steps.computed("K" + mark, "conveyance" + of, "A·(A/P)^⅔/n",
                   measure(Discharge::cubic_meters_per_second(part.conveyance_si)), manning);
    if (divided && part.discharge.si() > 0) {
      steps.computed("V" + mark, "mean velocity" + of, "Q·(K/ΣK)/A", measure(part.velocity));
    }
  }
  steps.computed("A", "wet area", divided ? "Σ Aᵢ" : "", measure(flow.wet.area));
  steps.computed("T", "top width", "Σ Δx", measure(flow.wet.top_width));
  if (divided) {
    steps.computed("α", "energy coefficient", "Σ(Kᵢ³/Aᵢ²)/(K³/A²)",
                   measure(flow.energy_coefficient));
  }
  if (!(flow.discharge.si() > 0)) return;
  steps.computed("V", "mean velocity", "Q/A", measure(flow.mean_velocity()));
  steps.computed("Fr", "Froude number", "V/√(g·(A/T)/α), g = 9.80665 m/s²",
                 measure(flow.froude_number));
}

}  // namespace proofstone
