#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <fmt/format.h>
#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <string>

#include "engine/method/registry.h"
#include "engine/sizing/guide_bank.h"
#include "engine/sizing/pier_riprap_layout.h"
#include "engine/sizing/side_slope_stability_factor.h"
#include "engine/sizing/usace_steep_slope.h"

namespace proofstone {
namespace {

double between(double low, double high) {
  constexpr int steps = 100'000;
  const int step = *rc::gen::inRange(0, steps + 1);
  return low + (high - low) * step / steps;
}

/// One quantity written in both systems.
struct Written {
  std::string us;
  std::string si;
};
Written velocity(double feet_per_second) {
  return {fmt::format("{:.17g} ft/s", feet_per_second),
          fmt::format("{:.17g} m/s", feet_per_second * 0.3048)};
}
Written length(double feet) {
  return {fmt::format("{:.17g} ft", feet), fmt::format("{:.17g} m", feet * 0.3048)};
}

using Inputs = std::map<std::string, Written>;

void same_in_both_systems(const char* method, const Inputs& inputs, const char* output) {
  nlohmann::json us;
  nlohmann::json si;
  for (const auto& [key, written] : inputs) {
    us[key] = written.us;
    si[key] = written.si;
  }
  const auto from_us = find_method(method)->evaluate(us);
  const auto from_si = find_method(method)->evaluate(si);
  RC_ASSERT(static_cast<bool>(from_us) && static_cast<bool>(from_si));
  RC_ASSERT(std::abs(from_us->output(output).si / from_si->output(output).si - 1) < 1e-11);
}

RC_GTEST_PROP(StreamMethodProperties, UsAndSiInputsGiveTheSameSize, ()) {
  const Written V = velocity(between(1, 20));
  const Written d = length(between(3, 30));
  const Written bank{"1V:2.5H", "1V:2.5H"};
  const auto S = fmt::format("{:.17g}", between(0.0005, 0.02));
  const Written slope{S, S};
  same_in_both_systems("fhwa-revetment",
                       {{"average_velocity", V},
                        {"top_width", length(80)},
                        {"local_depth", d},
                        {"bank_angle", bank}},
                       "d50");
  same_in_both_systems("fhwa-stability-factor-revetment",
                       {{"average_velocity", V}, {"average_depth", d}, {"bank_angle", bank}},
                       "d50");
  same_in_both_systems("side-slope-stability-factor",
                       {{"reference_velocity", V}, {"bank_angle", bank}}, "d50");
  same_in_both_systems("tractive-force", {{"depth", d}, {"slope", slope}, {"bank_angle", bank}},
                       "d75");
  same_in_both_systems("stilling-basin-riprap", {{"average_velocity", V}}, "d50");
  same_in_both_systems("pilarczyk", {{"velocity", V}, {"depth", d}, {"bank_angle", bank}}, "dn50");
  same_in_both_systems("escarameia-may", {{"average_velocity", V}}, "dn50");
  same_in_both_systems("california-bank-and-shore", {{"velocity", V}, {"face_angle", bank}},
                       "mass");
  same_in_both_systems("pier-riprap", {{"average_velocity", V}}, "d50");
  same_in_both_systems("abutment-riprap", {{"velocity", V}, {"depth", d}}, "d50");
}

RC_GTEST_PROP(UsaceSteepSlopeProperties, ScalesAsFroudeSaysAndMoreWaterNeedsLargerRock, ()) {
  UsaceSteepSlopeInputs in;
  in.unit_discharge = UnitDischarge::square_feet_per_second(between(0.5, 50));
  in.slope = Slope::ratio(between(0.02, 0.20));
  Steps steps;
  const auto base = usace_steep_slope(in, steps);
  const double scale = between(0.1, 3);
  auto scaled = in;
  scaled.unit_discharge = std::pow(scale, 1.5) * in.unit_discharge;
  const auto other = usace_steep_slope(scaled, steps);
  RC_ASSERT(std::abs(other->d30 / base->d30 / scale - 1) < 1e-9);
  auto steeper = in;
  steeper.slope = between(1, 2) * in.slope;
  RC_ASSERT(usace_steep_slope(steeper, steps)->d30 >= base->d30);
}

StabilityCase any_case() {
  StabilityCase at;
  at.eta = between(0.01, 1.5);
  at.theta = Angle::degrees(between(2, 33)).radians();
  at.phi = Angle::degrees(between(36, 44)).radians();
  at.lambda = Angle::degrees(between(-60, 60)).radians();
  return at;
}

RC_GTEST_PROP(StabilityProperties, TurningTheFlowDownTheSlopeNeverHelps, ()) {
  const auto at = any_case();
  auto down = at;
  down.lambda = at.lambda + Angle::degrees(between(0, 20)).radians();
  RC_ASSERT(stability_moments(down).factor <= stability_moments(at).factor * (1 + 1e-12));
}

RC_GTEST_PROP(StabilityProperties, ALevelBedIsTheFormOfStevensAndSimons, ()) {
  auto at = any_case();
  const double general = stability_moments(at).factor;
  const double tan_phi = std::tan(at.phi);
  const double beta = std::atan2(std::cos(at.lambda),
                                 2 * std::sin(at.theta) / (at.eta * tan_phi) + std::sin(at.lambda));
  const double eta_side = at.eta * (1 + std::sin(at.lambda + beta)) / 2;
  const double factor =
      std::cos(at.theta) * tan_phi / (eta_side * tan_phi + std::sin(at.theta) * std::cos(beta));
  RC_ASSERT(std::abs(general / factor - 1) < 1e-12);
}

RC_GTEST_PROP(StabilityProperties, MoreWaterOnLevelFlowNeverHelps, ()) {
  auto at = any_case();
  at.lambda = 0;
  auto more = at;
  more.eta = between(1, 2) * at.eta;
  RC_ASSERT(stability_moments(more).factor <= stability_moments(at).factor * (1 + 1e-12));
}

RC_GTEST_PROP(PierRiprapLayoutProperties, ScalesWithThePier, ()) {
  PierRiprapLayoutInputs in;
  in.d50 = Length::feet(between(0.3, 3));
  in.pier_width = Length::feet(between(1, 20));
  in.pier_length = Length::feet(between(5, 80));
  in.skew = Angle::degrees(between(0, 90));
  in.contraction_scour = Length::feet(between(0, 10));
  in.degradation = Length::feet(between(0, 10));
  const double scale = between(0.1, 3);
  auto scaled = in;
  scaled.d50 = scale * in.d50;
  scaled.pier_width = scale * in.pier_width;
  scaled.pier_length = scale * in.pier_length;
  scaled.contraction_scour = scale * in.contraction_scour;
  scaled.degradation = scale * in.degradation;
  Steps steps;
  const auto a = pier_riprap_layout(in, steps);
  const auto b = pier_riprap_layout(scaled, steps);
  RC_ASSERT(std::abs(b->extent / a->extent / scale - 1) < 1e-9);
  // A layer whose scour lies on the limit of the two rules may fall to either side by rounding.
  const double margin = in.contraction_scour / (3 * in.d50);
  if (std::abs(margin - 1) < 1e-9) return;
  RC_ASSERT(std::abs(b->thickness / a->thickness / scale - 1) < 1e-9);
  RC_ASSERT(std::abs(b->volume / a->volume / std::pow(scale, 3) - 1) < 1e-9);
}

RC_GTEST_PROP(GuideBankProperties, EveryPointLiesOnTheEllipse, ()) {
  GuideBankInputs in;
  in.length = Length::feet(between(50, 250));
  in.distance = between(0, 1) * in.length;
  Steps steps;
  const auto bank = guide_bank(in, steps);
  const double x = in.distance / in.length;
  const double y = bank->offset / bank->largest_offset;
  RC_ASSERT(std::abs(x * x + y * y - 1) < 1e-12);
}

}  // namespace
}  // namespace proofstone
