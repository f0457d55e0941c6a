#include "engine/waves/wave_run_up.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace proofstone {
namespace {

const char* const em1614 = "USACE EM 1110-2-1614 (from memory; confirm)";
const char* const cem_of_wave_run_up = "USACE EM 1110-2-1100 Part VI Ch. 5 (from memory; confirm)";

void explain_wave(const WaveOnSlope& wave, const char* height, const char* period, double xi,
                  Steps& steps) {
  steps.given(height, "significant wave height at the toe", measure(wave.height));
  steps.given(period, "wave period", measure(wave.period));
  steps.given("α", "angle of the slope", measure(wave.slope));
  steps.computed("ξ", "surf similarity", "tanα/√(2π·H/(g·T²))", measure(xi));
}

TypedMethod<WaveOnSlope, RevetmentRunUp> build_revetment() {
  MethodDescription about;
  about.id = "revetment-run-up";
  about.title = "Run-up on rough riprap";
  about.purpose = "Height above still water that the highest wave reaches on a riprap slope.";
  about.group = MethodGroup::water;
  about.sources = {{"USACE EM 1110-2-1614, Design of Coastal Revetments, Seawalls, and Bulkheads",
                    "maximum run-up on riprap, a 1.022, b 0.247", SourceStanding::memory}};
  about.cautions = {"Wind setup and surge come on top, and freeboard on top of those."};
  TypedMethod<WaveOnSlope, RevetmentRunUp> method(about, &revetment_run_up);
  method.required({"height", "Hm0", "significant wave height at the toe"}, &WaveOnSlope::height,
                  unit::foot, AllowedRange::positive_to(60));
  method.required({"period", "Tp", "peak period"}, &WaveOnSlope::period, unit::second,
                  AllowedRange::positive_to(30));
  method.required({"slope", "θ", "angle of the slope"}, &WaveOnSlope::slope, unit::degree,
                  AllowedRange::positive_to(60));
  method.output({"surf_similarity", "ξ", "surf similarity"}, &RevetmentRunUp::surf_similarity,
                unit::number);
  method.output({"run_up", "Rmax", "largest run-up above still water"}, &RevetmentRunUp::run_up,
                unit::foot);
  return method;
}

TypedMethod<RockSlopeRunUpInputs, RockSlopeRunUp> build_rock_slope() {
  using Inputs = RockSlopeRunUpInputs;
  MethodDescription about;
  about.id = "rock-slope-run-up";
  about.title = "Run-up of 2 % of the waves on a rock slope";
  about.purpose = "Height above still water that one wave in fifty passes on a slope of rock.";
  about.group = MethodGroup::water;
  about.sources = {{"USACE EM 1110-2-1100, Coastal Engineering Manual, Part VI Chapter 5",
                    "run-up on rock-armored slopes, coefficients for 2 %", SourceStanding::memory}};
  about.cautions = {"The period is the mean one; with a peak period the result is too high."};
  TypedMethod<Inputs, RockSlopeRunUp> method(about, &rock_slope_run_up);
  method.required({"height", "Hs", "significant wave height at the toe"}, &Inputs::height,
                  unit::foot, AllowedRange::positive_to(60));
  method.required({"period", "Tm", "mean period"}, &Inputs::period, unit::second,
                  AllowedRange::positive_to(30));
  method.required({"slope", "α", "angle of the slope"}, &Inputs::slope, unit::degree,
                  AllowedRange::positive_to(60));
  method.choice({"core", "P", "what lies below the rock"}, &Inputs::core,
                {{Inputs::Core::impermeable, "impermeable", "a dam, a dike or a soil bank"},
                 {Inputs::Core::permeable, "permeable", "rock all through: at most 1.97·Hs"}});
  method.output({"surf_similarity", "ξ", "surf similarity"}, &RockSlopeRunUp::surf_similarity,
                unit::number);
  method.output({"run_up", "Ru2%", "run-up that 2 % of the waves pass"}, &RockSlopeRunUp::run_up,
                unit::foot);
  method.limit({"Surf similarity above 1.0", cem_of_wave_run_up}, [](const Inputs& in) {
    return surf_similarity({in.height, in.period, in.slope}) > 1;
  });
  return method;
}

}  // namespace

double surf_similarity(const WaveOnSlope& wave) {
  const double T = wave.period.seconds();
  const double steepness = 2 * std::numbers::pi * wave.height.meters() / (g_si * T * T);
  return std::tan(wave.slope.radians()) / std::sqrt(steepness);
}

Expected<RevetmentRunUp> revetment_run_up(const WaveOnSlope& wave, Steps& steps) {
  const double xi = surf_similarity(wave);
  RevetmentRunUp result;
  result.surf_similarity = Dimensionless::number(xi);
  result.run_up = 1.022 * xi / (1 + 0.247 * xi) * wave.height;
  explain_wave(wave, "Hm0", "Tp", xi, steps);
  steps.computed("Rmax", "largest run-up on rough riprap", "Hm0·1.022·ξ/(1 + 0.247·ξ)",
                 measure(result.run_up), em1614);
  return result;
}

Expected<RockSlopeRunUp> rock_slope_run_up(const RockSlopeRunUpInputs& inputs, Steps& steps) {
  const WaveOnSlope wave{inputs.height, inputs.period, inputs.slope};
  const double xi = surf_similarity(wave);
  double ratio = xi <= 1.5 ? 0.96 * xi : 1.17 * std::pow(xi, 0.46);
  const bool permeable = inputs.core == RockSlopeRunUpInputs::Core::permeable;
  if (permeable) ratio = std::min(ratio, 1.97);
  RockSlopeRunUp result;
  result.surf_similarity = Dimensionless::number(xi);
  result.run_up = ratio * wave.height;
  explain_wave(wave, "Hs", "Tm", xi, steps);
  steps.computed("Ru2%", "run-up that 2 % of the waves pass",
                 permeable ? "Hs·0.96·ξ to ξ = 1.5, Hs·1.17·ξ^0.46 above, at most 1.97·Hs"
                           : "Hs·0.96·ξ to ξ = 1.5, Hs·1.17·ξ^0.46 above",
                 measure(result.run_up), cem_of_wave_run_up);
  return result;
}

const Method& revetment_run_up_method() {
  static const auto method = build_revetment();
  return method;
}

const Method& rock_slope_run_up_method() {
  static const auto method = build_rock_slope();
  return method;
}

}  // namespace proofstone
