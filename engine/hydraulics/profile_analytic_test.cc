// Steady flows with a known solution: the depth is chosen and the bed that goes with it worked out,
//   S₀ = S_f + h′·(1 − Q²T/(gA³)) − Q²·B′h/(gA³),   z = ∫ S₀ dx
// (MacDonald, Baines, Nichols & Samuels 1997, J. Hydraul. Eng. 123(11); Delestre et al. 2013, Int.
// J. Numer. Meth. Fluids 72; formulas from memory). Rectangular channels, n and Q as there; beds at
// the upstream end were also worked out apart from this engine.
#include <gtest/gtest.h>

#include <algorithm>

#include "engine/hydraulics/reach_example.h"

namespace proofstone {
namespace {

using namespace reach_example;

constexpr double g = standard_gravity.meters_per_second_squared();
constexpr double discharge = 20;
const double unit_critical = std::pow(4 / g, 1.0 / 3.0);  // hc of 2 m²/s

using Curve = double (*)(double);

struct KnownFlow {
  double length = 0;
  double n = 0;
  double break_at = 0;  ///< where the second curve takes over
  Curve first = nullptr;
  Curve second = nullptr;
  Curve width = [](double) { return 10.0; };

  double depth(double x) const { return x <= break_at ? first(x) : second(x); }
};

double derivative(Curve f, double x) {
  const double d = 0.02;
  return (f(x - 2 * d) - 8 * f(x - d) + 8 * f(x + d) - f(x + 2 * d)) / (12 * d);
}

double bed_slope(const KnownFlow& known, Curve curve, double x) {
  const double h = curve(x);
  const double b = known.width(x);
  const double area = b * h;
  const double radius = area / (b + 2 * h);
  const double friction = std::pow(known.n * discharge / area, 2) / std::pow(radius, 4.0 / 3.0);
  const double inertia = discharge * discharge / (g * area * area * area);
  return friction + derivative(curve, x) * (1 - inertia * b) -
         inertia * derivative(known.width, x) * h;
}

/// Fall of the bed from `from` to `to`, which lie on one curve: Gauss's five-point rule.
double fall(const KnownFlow& known, Curve curve, double from, double to) {
  if (!(to > from)) return 0;
  constexpr int parts = 4;
  constexpr double points[] = {-0.9061798459386640, -0.5384693101056831, 0, 0.5384693101056831,
                               0.9061798459386640};
  constexpr double weights[] = {0.2369268850561891, 0.4786286704993665, 0.5688888888888889,
                                0.4786286704993665, 0.2369268850561891};
  double sum = 0;
  const double half = (to - from) / parts / 2;
  for (int part = 0; part < parts; ++part) {
    const double middle = from + (2 * part + 1) * half;
    for (int i = 0; i < 5; ++i) {
      sum += half * weights[i] * bed_slope(known, curve, middle + half * points[i]);
    }
  }
  return sum;
}

/// Beds at the ends of `steps` equal steps, the last one 0.
std::vector<double> beds(const KnownFlow& known, int steps) {
  const double step = known.length / steps;
  std::vector<double> z(steps + 1, 0.0);
  for (int i = steps; i-- > 0;) {
    const double from = i * step;
    const double to = (i + 1) * step;
    const double change = std::clamp(known.break_at, from, to);
    z[i] =
        z[i + 1] + fall(known, known.first, from, change) + fall(known, known.second, change, to);
  }
  return z;
}

WaterProfile computed(const KnownFlow& known, int steps) {
  const double step = known.length / steps;
  const auto z = beds(known, steps);
  std::vector<ReachSection> sections;
  for (int i = 0; i <= steps; ++i) {
    sections.push_back(trapezoid(known.width(i * step), 0, z[i], known.n, step));
  }
  ProfileCase flow_case =
      flow(discharge, Boundary::known(Length::meters(known.depth(known.length))),
           Boundary::known(Length::meters(z[0] + known.depth(0))));
  flow_case.friction = FrictionMean::arithmetic;
  return solved(std::move(sections), flow_case);
}

std::vector<double> errors(const KnownFlow& known, const WaterProfile& profile) {
  std::vector<double> all;
  for (const auto& section : profile.sections) {
    all.push_back(
        std::abs(section.flow.wet.deepest.meters() - known.depth(section.distance.meters())));
  }
  return all;
}

double greatest(const std::vector<double>& all) {
  return *std::max_element(all.begin(), all.end());
}

double mean(const std::vector<double>& all) {
  double sum = 0;
  for (const double one : all) sum += one;
  return sum / static_cast<double>(all.size());
}

KnownFlow tranquil() {
  const Curve h = [](double x) {
    const double part = x / 1000 - 0.5;
    return unit_critical * (1 + 0.5 * std::exp(-16 * part * part));
  };
  return {1000, 0.03, 1000, h, h};
}

KnownFlow tranquil_to_rapid() {
  const Curve first = [](double x) {
    return unit_critical * (1 - std::tanh(3 * (x / 1000 - 0.5)) / 3);
  };
  const Curve second = [](double x) {
    return unit_critical * (1 - std::tanh(6 * (x / 1000 - 0.5)) / 6);
  };
  return {1000, 0.02, 500, first, second};
}

KnownFlow rapid_to_tranquil() {
  const Curve first = [](double x) { return unit_critical * (0.9 - std::exp(-x / 250) / 6); };
  const Curve second = [](double x) {
    const double part = x / 1000 - 0.5;
    double sum = 1 + 0.8 * std::exp(x / 1000 - 1);
    const double a[] = {-0.348427, 0.552264, -0.55558};
    for (int k = 1; k <= 3; ++k) sum += a[k - 1] * std::exp(-20 * k * part);
    return unit_critical * sum;
  };
  return {1000, 0.02, 500, first, second};
}

KnownFlow through_rapid_flow() {
  const Curve first = [](double x) {
    return unit_critical * (4.0 / 3 - x / 100) - 9 * x / 1000 * (x / 100 - 2.0 / 3);
  };
  const Curve second = [](double x) {
    const double p = x / 100 - 2.0 / 3;
    const double a1 = 0.674202, a2 = 21.7112, a3 = 14.492, a4 = 1.4305;
    return unit_critical * (a1 * p * p * p * p + a1 * p * p * p - a2 * p * p + a3 * p + a4);
  };
  return {100, 0.03, 200.0 / 3, first, second};
}

KnownFlow jump_in_a_narrowing() {
  const Curve first = [](double x) { return 0.7 + 0.3 * (std::exp(x / 200) - 1); };
  const Curve second = [](double x) {
    const double p = (x - 120) / 80;
    return std::exp(-0.1 * (x - 120)) * (-0.154375 - 0.108189 * p - 2.014310 * p * p) +
           1.5 * std::exp(0.1 * (x / 200 - 1));
  };
  KnownFlow known{200, 0.03, 120, first, second};
  known.width = [](double x) {
    const double part = x / 200 - 0.5;
    return 10 - 5 * std::exp(-10 * part * part);
  };
  return known;
}

TEST(AnalyticProfile, BedsAreThoseWorkedOutElsewhere) {
  EXPECT_NEAR(beds(tranquil(), 100).front(), 7.08426894, 1e-7);
  EXPECT_NEAR(beds(tranquil_to_rapid(), 100).front(), 5.63024096, 1e-7);
  EXPECT_NEAR(beds(rapid_to_tranquil(), 101).front(), 5.67185351, 1e-7);
  EXPECT_NEAR(beds(through_rapid_flow(), 101).front(), 2.59700508, 1e-7);
  EXPECT_NEAR(beds(jump_in_a_narrowing(), 101).front(), 3.42516435, 1e-6);
}

TEST(AnalyticProfile, TranquilFlowConvergesWithTheSquareOfTheStep) {
  const double expected[] = {1.568892e-3, 3.926966e-4, 9.823700e-5, 2.456741e-5, 6.141943e-6};
  double before = 0;
  for (int i = 0; i < 5; ++i) {
    const int steps = 25 << i;
    const auto profile = computed(tranquil(), steps);
    const double error = greatest(errors(tranquil(), profile));
    EXPECT_NEAR(error / expected[i], 1, 1e-4) << steps;
    if (i > 0) {
      EXPECT_NEAR(std::log2(before / error), 2, 0.003) << steps;
    }
    before = error;
    EXPECT_TRUE(profile.jumps.empty());
  }
}

TEST(AnalyticProfile, TheChangeToRapidFlowIsFoundAndConverges) {
  double before = 0;
  for (const int steps : {50, 100, 200, 400}) {
    const auto profile = computed(tranquil_to_rapid(), steps);
    const double error = mean(errors(tranquil_to_rapid(), profile));
    if (before > 0) {
      EXPECT_GT(std::log2(before / error), 0.95) << steps;
    }
    before = error;
    EXPECT_TRUE(profile.jumps.empty());
    for (const auto& section : profile.sections) {
      const double x = section.distance.meters();
      if (x < 480) {
        EXPECT_EQ(section.regime, FlowRegime::subcritical) << x;
      }
      if (x > 520) {
        EXPECT_EQ(section.regime, FlowRegime::supercritical) << x;
      }
    }
  }
  EXPECT_LT(before, 1e-4);
}

void expect_jump(const KnownFlow& known, const std::vector<int>& meshes) {
  std::vector<double> mean_errors;
  for (const int steps : meshes) {
    const auto profile = computed(known, steps);
    ASSERT_EQ(profile.jumps.size(), 1u) << steps;
    const double step = known.length / steps;
    EXPECT_NEAR(profile.jumps[0].distance.meters(), known.break_at, step) << steps;
    EXPECT_GT(profile.jumps[0].energy_lost.meters(), 0);
    // Apart from the step in which it jumps the flow is the known one.
    auto all = errors(known, profile);
    std::vector<double> smooth;
    for (std::size_t i = 0; i < all.size(); ++i) {
      const double x = profile.sections[i].distance.meters();
      if (std::abs(x - known.break_at) > 2 * step) smooth.push_back(all[i]);
    }
    EXPECT_LT(mean(smooth), 0.6 * step / known.length) << steps;
    mean_errors.push_back(mean(all));
  }
  // First order in the mean, because of the step with the jump: eight times finer, eight times
  // nearer, give or take where in its step the jump lies.
  EXPECT_LT(mean_errors.back(), mean_errors.front() / 4);
}

TEST(AnalyticProfile, RapidFlowJumpsWhereItShould) {
  expect_jump(rapid_to_tranquil(), {51, 101, 201, 401});
}

TEST(AnalyticProfile, TranquilFlowTurnsRapidAndJumpsBack) {
  expect_jump(through_rapid_flow(), {50, 100, 200, 400});
}

TEST(AnalyticProfile, AJumpInAChannelOfVaryingWidth) {
  expect_jump(jump_in_a_narrowing(), {51, 101, 201, 401});
}

}  // namespace
}  // namespace proofstone
