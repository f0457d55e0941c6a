// The standard step method against an integration of the differential equation of gradually varied
// flow, dy/dx = (S₀ − S_f)/(1 − Q²T/(gA³)), by a library and from formulas of the trapezoid alone.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <boost/numeric/odeint.hpp>
#include <cmath>
#include <utility>

#include "engine/hydraulics/prismatic_channel.h"
#include "engine/hydraulics/profile.h"

namespace proofstone {
namespace {

constexpr double g = standard_gravity.meters_per_second_squared();

double between(double low, double high) {
  constexpr int steps = 100'000;
  const int step = *rc::gen::inRange(0, steps + 1);
  return low + (high - low) * step / steps;
}

struct Trapezoid {
  double b, z, n, q;
  double area(double y) const { return (b + z * y) * y; }
  double width(double y) const { return b + 2 * z * y; }
  double friction(double y) const {
    const double radius = area(y) / (b + 2 * y * std::sqrt(1 + z * z));
    const double root = q * n / (area(y) * std::pow(radius, 2.0 / 3.0));
    return root * root;
  }
  double froude_square(double y) const {
    return q * q * width(y) / (g * area(y) * area(y) * area(y));
  }
  /// The depth at which `falls(y)` turns from true to false.
  template <class Falls>
  double depth_where(Falls&& falls) const {
    double low = 1e-6, high = 1e4;
    for (int i = 0; i < 200; ++i) {
      const double middle = std::sqrt(low * high);
      (falls(middle) ? low : high) = middle;
    }
    return high;
  }
};

/// Depth after `distance` along the profile from `depth`; negative distances run upstream.
double integrated(const Trapezoid& channel, double slope, double depth, double distance) {
  using namespace boost::numeric::odeint;
  double y = depth;
  const auto growth = [&](const double& at, double& rate, double) {
    rate = (slope - channel.friction(at)) / (1 - channel.froude_square(at));
  };
  auto stepper = make_controlled(1e-12, 1e-12, runge_kutta_dopri5<double>());
  integrate_adaptive(stepper, growth, y, 0.0, distance, distance / 1000);
  return y;
}

double stepped(const Trapezoid& channel, double slope, double depth, double distance, int steps) {
  const bool upstream = distance < 0;
  const double length = std::abs(distance);
  const TrapezoidalChannel shape{Length::meters(channel.b), Dimensionless::number(channel.z),
                                 Dimensionless::number(channel.n)};
  std::vector<ReachSection> sections;
  for (int i = 0; i <= steps; ++i) {
    auto one = trapezoidal_section(shape, Length::meters(slope * length * (steps - i) / steps),
                                   Length::meters(100));
    RC_ASSERT(static_cast<bool>(one));
    one->to_next = ReachLengths::all(Length::meters(length / steps));
    one->losses = {Dimensionless::number(0), Dimensionless::number(0)};
    sections.push_back(std::move(*one));
  }
  const auto reach = Reach::make(std::move(sections));
  RC_ASSERT(static_cast<bool>(reach));
  ProfileCase flow_case;
  flow_case.discharge = Discharge::cubic_meters_per_second(channel.q);
  flow_case.friction = FrictionMean::arithmetic;
  flow_case.regime = upstream ? ProfileRegime::subcritical : ProfileRegime::supercritical;
  if (upstream) {
    flow_case.downstream = Boundary::known(Length::meters(depth));
  } else {
    flow_case.upstream = Boundary::known(Length::meters(slope * length + depth));
  }
  const auto profile = water_profile(*reach, flow_case);
  RC_ASSERT(static_cast<bool>(profile));
  return (upstream ? profile->sections.front() : profile->sections.back())
      .flow.wet.deepest.meters();
}

RC_GTEST_PROP(ProfileAgainstIntegration, TheStandardStepTendsToTheDifferentialEquation, ()) {
  const double b = between(1, 30);
  const double z = between(0, 4);
  const double n = between(0.012, 0.08);
  const double q = b * between(0.2, 8);
  const Trapezoid channel{b, z, n, q};
  const double slope = std::pow(10.0, between(-3.7, -1.3));
  const double critical =
      channel.depth_where([&](double y) { return channel.froude_square(y) > 1; });
  const double normal = channel.depth_where([&](double y) { return channel.friction(y) > slope; });
  const bool tranquil = *rc::gen::arbitrary<bool>();
  // Well away from critical, where the equation has no answer.
  const double depth = critical * (tranquil ? between(1.15, 3) : between(0.4, 0.85));
  if (depth > 90 || normal > 90) RC_DISCARD("deeper than the channel");
  double distance = between(1, 10) * depth;
  if (tranquil) distance = -distance;
  // A profile may run into critical depth: keep to those that stay clear of it.
  const bool towards_critical = tranquil ? normal < 1.1 * critical : normal > 0.9 * critical;
  const double rate =
      (slope - channel.friction(depth)) / (1 - channel.froude_square(depth)) * distance;
  if (towards_critical && std::abs(rate) > 0.2 * std::abs(depth - critical)) {
    RC_DISCARD("comes near critical depth");
  }
  const double exact = integrated(channel, slope, depth, distance);
  const double coarse = stepped(channel, slope, depth, distance, 40);
  const double fine = stepped(channel, slope, depth, distance, 80);
  RC_ASSERT(std::abs(fine - exact) < 1e-4 * depth);
  // The method is of second order: one extrapolation takes out the leading error.
  const double extrapolated = fine + (fine - coarse) / 3;
  RC_ASSERT(std::abs(extrapolated - exact) < 2e-6 * depth);
}

}  // namespace
}  // namespace proofstone
