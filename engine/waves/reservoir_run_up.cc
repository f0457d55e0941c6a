#include "engine/waves/reservoir_run_up.h"

#include <cmath>

namespace proofstone {
namespace {

const char* const acer = "USBR ACER TM-2 and Design Standard 13 (from memory; confirm)";

MethodDescription describe_reservoir_run_up() {
  MethodDescription about;
  about.id = "reservoir-run-up";
  about.title = "Run-up, setup and crest on a reservoir";
  about.purpose =
      "Run-up on a riprapped or smooth slope, wind setup, and how high the protection must stand "
      "above still water.";
  about.group = MethodGroup::water;
  about.sources = {{"USBR ACER TM-2 (1981) and Design Standard 13", "run-up and wind setup",
                    SourceStanding::memory},
                   {"USBR, Design of Small Dams",
                    "freeboard on riprapped slopes by fetch: 4 ft (normal) and 3 ft (least) below "
                    "1 mi, 5 and 4 at 1 mi, 6 and 5 at 2.5 mi, 8 and 6 at 5 mi, 10 and 7 at 10 mi",
                    SourceStanding::memory}};
  about.cautions = {
      "The freeboard is the owner's: name it. Tabulated freeboards of small dams already hold "
      "run-up and setup and are not added to them.",
      "At dams, nothing here settles their safety."};
  return about;
}

TypedMethod<ReservoirRunUpInputs, ReservoirRunUpResult> build_reservoir_run_up() {
  TypedMethod<ReservoirRunUpInputs, ReservoirRunUpResult> method(describe_reservoir_run_up(),
                                                                 &reservoir_run_up);
  method.required({"height", "Hs", "significant wave height"}, &ReservoirRunUpInputs::height,
                  unit::foot, AllowedRange::positive_to(60));
  method.required({"period", "T", "wave period"}, &ReservoirRunUpInputs::period, unit::second,
                  AllowedRange::positive_to(30));
  method.required({"slope", "θ", "angle of the slope"}, &ReservoirRunUpInputs::slope, unit::degree,
                  AllowedRange::positive_to(60));
  method.choice({"face", "", "face of the slope"}, &ReservoirRunUpInputs::face,
                {{FaceOfSlope::riprap, "riprap", "rough"},
                 {FaceOfSlope::smooth, "smooth", "half as much again"}});
  method.optional({"wind", "U", "wind speed over water"}, &ReservoirRunUpInputs::wind,
                  unit::mile_per_hour, AllowedRange::positive_to(250), "no setup is computed");
  method.optional({"fetch", "F", "fetch for the setup, usually twice the effective fetch"},
                  &ReservoirRunUpInputs::fetch, unit::mile, AllowedRange::positive_to(1000),
                  "no setup is computed");
  method.optional({"depth", "D", "mean depth along that fetch"}, &ReservoirRunUpInputs::depth,
                  unit::foot, AllowedRange::positive_to(3000), "no setup is computed");
  method.defaulted({"freeboard", "f", "freeboard above run-up and setup"},
                   &ReservoirRunUpInputs::freeboard, unit::foot, AllowedRange::between(0, 50));
  method.output({"wave_length", "L", "wave length in deep water"},
                &ReservoirRunUpResult::wave_length, unit::foot);
  method.output({"run_up", "Rs", "run-up of the significant wave"}, &ReservoirRunUpResult::run_up,
                unit::foot);
  method.output({"setup", "S", "wind setup"}, &ReservoirRunUpResult::setup, unit::foot);
  method.output({"crest", "hc", "crest of the protection above still water"},
                &ReservoirRunUpResult::crest, unit::foot);
  return method;
}

/// All three or none: half an answer would pass for a whole one.
Expected<Length> wind_setup(const ReservoirRunUpInputs& in, Steps& steps) {
  const int known = (in.wind ? 1 : 0) + (in.fetch ? 1 : 0) + (in.depth ? 1 : 0);
  if (known == 0) return Length{};
  if (known < 3) {
    return Problem{"missing-input", "The setup needs wind, fetch and depth together.", "",
                   !in.wind ? "/wind" : (!in.fetch ? "/fetch" : "/depth"), "a quantity"};
  }
  const double U = in.wind->miles_per_hour();
  const Length setup = Length::feet(U * U * in.fetch->miles() / (1400 * in.depth->feet()));
  steps.given("U", "wind speed over water", measure(*in.wind));
  steps.given("F", "fetch for the setup", measure(*in.fetch));
  steps.given("D", "mean depth along it", measure(*in.depth));
  steps.computed("S", "wind setup", "U²·F/(1400·D) (mph, mi, ft)", measure(setup), acer);
  return setup;
}

}  // namespace

Expected<ReservoirRunUpResult> reservoir_run_up(const ReservoirRunUpInputs& inputs, Steps& steps) {
  const double T = inputs.period.seconds();
  const double Hs = inputs.height.feet();
  const double L = 5.12 * T * T;
  const double cot = 1 / std::tan(inputs.slope.radians());
  const double smooth = inputs.face == FaceOfSlope::smooth ? 1.5 : 1;

  ReservoirRunUpResult result;
  result.wave_length = Length::feet(L);
  result.run_up = Length::feet(smooth * Hs / (0.4 + std::sqrt(Hs / L) * cot));
  steps.given("Hs", "significant wave height", measure(inputs.height));
  steps.given("T", "wave period", measure(inputs.period));
  steps.given("θ", "angle of the slope", measure(inputs.slope));
  steps.computed("L", "wave length in deep water", "5.12·T² (ft, s)", measure(result.wave_length),
                 acer);
  steps.computed("Rs", "run-up of the significant wave",
                 inputs.face == FaceOfSlope::smooth ? "1.5·Hs/[0.4 + (Hs/L)^½·cotθ]"
                                                    : "Hs/[0.4 + (Hs/L)^½·cotθ]",
                 measure(result.run_up), acer);
  const auto setup = wind_setup(inputs, steps);
  if (!setup) return setup.problems();
  result.setup = *setup;
  result.crest = result.run_up + result.setup + inputs.freeboard;
  steps.given("f", "freeboard, named by the owner", measure(inputs.freeboard));
  steps.computed("hc", "crest of the protection above still water", "Rs + S + f",
                 measure(result.crest));
  return result;
}

const Method& reservoir_run_up_method() {
  static const TypedMethod<ReservoirRunUpInputs, ReservoirRunUpResult> method =
      build_reservoir_run_up();
  return method;
}

}  // namespace proofstone
