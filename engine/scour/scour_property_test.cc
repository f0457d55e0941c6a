#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "engine/scour/clear_water_contraction_scour.h"
#include "engine/scour/competent_depth.h"
#include "engine/scour/competent_velocity.h"
#include "engine/scour/lacey_scour.h"
#include "engine/scour/maynord_bend_scour.h"
#include "engine/scour/pier_scour.h"
#include "engine/scour/thorne_bend_scour.h"
#include "engine/scour/toe_depth.h"

namespace proofstone {
namespace {

constexpr double rounding = 1e-12;

double between(double low, double high) {
  constexpr int steps = 100'000;
  const int step = *rc::gen::inRange(0, steps + 1);
  return low + (high - low) * step / steps;
}

LaceyScourInputs any_reach() {
  LaceyScourInputs in;
  in.discharge = Discharge::cubic_feet_per_second(between(10, 1e5));
  in.bed_grain = Length::millimeters(between(0.1, 2));
  in.situation = *rc::gen::element(ScourSituation::straight, ScourSituation::severe_bend);
  return in;
}

template <class Inputs, class Function>
double scour_of(Function&& function, const Inputs& inputs) {
  Steps steps;
  const auto result = function(inputs, steps);
  RC_ASSERT(static_cast<bool>(result));
  return result->scour.feet();
}

RC_GTEST_PROP(ScourProperties, MoreWaterOrFinerBedNeverScoursLess, ()) {
  const auto in = any_reach();
  auto more = in;
  more.discharge = between(1, 3) * in.discharge;
  auto finer = in;
  finer.bed_grain = between(0.3, 1) * in.bed_grain;
  const double scour = scour_of(lacey_scour, in);
  RC_ASSERT(scour_of(lacey_scour, more) >= scour * (1 - rounding));
  RC_ASSERT(scour_of(lacey_scour, finer) >= scour * (1 - rounding));
}

// The two procedures are one where the existing depth is the regime depth and the second factor is
// the first plus 1.
RC_GTEST_PROP(ScourProperties, TheProceduresMeetAtTheRegimeDepth, ()) {
  auto in = any_reach();
  Steps steps;
  const auto below_bed = lacey_scour(in, steps);
  RC_ASSERT(static_cast<bool>(below_bed));
  in.procedure = RegimeProcedure::from_water_level;
  in.factor = Dimensionless::number(1 + below_bed->factor.number());
  in.existing_depth = below_bed->regime_depth;
  const double from_water = scour_of(lacey_scour, in);
  RC_ASSERT(std::abs(from_water - below_bed->scour.feet()) < 1e-9);
}

RC_GTEST_PROP(ScourProperties, ASharperBendNeverScoursLess, ()) {
  const Length width = Length::feet(between(20, 1000));
  const double ratio = between(2.01, 22);
  const double sharper = 2.001 + (ratio - 2.001) * between(0, 1);
  MaynordBendInputs maynord;
  maynord.width = width;
  maynord.crossing_depth = width / between(20, 125);
  maynord.bend_radius = ratio * width;
  auto maynord_sharper = maynord;
  maynord_sharper.bend_radius = sharper * width;
  RC_ASSERT(scour_of(maynord_bend_scour, maynord_sharper) >=
            scour_of(maynord_bend_scour, maynord) - rounding);
  for (const auto form : {ThorneForm::extra_depth, ThorneForm::total_depth}) {
    const ThorneBendInputs thorne{ratio * width, width, maynord.crossing_depth, form};
    auto thorne_sharper = thorne;
    thorne_sharper.bend_radius = sharper * width;
    RC_ASSERT(scour_of(thorne_bend_scour, thorne_sharper) >=
              scour_of(thorne_bend_scour, thorne) - rounding);
  }
}

// Maynord's and Thorne's ratios have no unit in them: lengths scale as lengths.
RC_GTEST_PROP(ScourProperties, BendScourScalesWithTheChannel, ()) {
  const double scale = between(0.1, 10);
  MaynordBendInputs in;
  in.width = Length::feet(between(20, 1000));
  in.crossing_depth = in.width / between(10, 150);
  in.bend_radius = between(1, 20) * in.width;
  auto scaled = in;
  scaled.width = scale * in.width;
  scaled.crossing_depth = scale * in.crossing_depth;
  scaled.bend_radius = scale * in.bend_radius;
  RC_ASSERT(std::abs(scour_of(maynord_bend_scour, scaled) -
                     scale * scour_of(maynord_bend_scour, in)) < 1e-9 * scale * in.width.feet());
}

RC_GTEST_PROP(ScourProperties, AFasterFlowNeverScoursAPierLess, ()) {
  PierScourInputs in;
  in.depth = Length::feet(between(1, 50));
  in.velocity = Velocity::feet_per_second(between(1, 20));
  in.pier_width = Length::feet(between(1, 20));
  in.pier_length = between(1, 20) * in.pier_width;
  in.attack_angle = Angle::degrees(between(0, 60));
  auto faster = in;
  faster.velocity = between(1, 2) * in.velocity;
  RC_ASSERT(scour_of(pier_scour, faster) >= scour_of(pier_scour, in) * (1 - rounding));
}

// At the competent depth the water runs at the critical velocity of that depth.
RC_GTEST_PROP(ScourProperties, TheCompetentDepthIsWhereTheBedComesToRest, ()) {
  CompetentDepthInputs in;
  in.depth = Length::feet(between(1, 40));
  in.bed_grain = Length::feet(between(0.001, 1));
  in.unit_discharge = UnitDischarge::square_feet_per_second(between(1, 500));
  Steps steps;
  const auto result = competent_depth(in, steps);
  RC_ASSERT(static_cast<bool>(result));
  const Length depth = result->competent_depth;
  const double velocity = in.unit_discharge.square_feet_per_second() / depth.feet();
  RC_ASSERT(std::abs(velocity / critical_velocity(depth, in.bed_grain).feet_per_second() - 1) <
            1e-9);
}

RC_GTEST_PROP(ScourProperties, ATighterContractionNeverScoursLess, ()) {
  ClearWaterContractionInputs in;
  in.contracted_discharge = Discharge::cubic_meters_per_second(between(1, 1000));
  in.contracted_width = Length::meters(between(2, 200));
  in.existing_depth = Length::meters(between(0.2, 5));
  in.bed_grain = Length::millimeters(between(0.3, 100));
  auto tighter = in;
  tighter.contracted_width = between(0.3, 1) * in.contracted_width;
  RC_ASSERT(scour_of(clear_water_contraction_scour, tighter) >=
            scour_of(clear_water_contraction_scour, in) - rounding);
}

RC_GTEST_PROP(ScourProperties, AFurtherAllowanceNeverRaisesTheToe, ()) {
  ToeDepthInputs in;
  in.general = {Length::feet(between(0, 10))};
  in.safety_factor = Dimensionless::number(between(1, 2));
  auto further = in;
  const Length allowance = Length::feet(between(0, 10));
  switch (*rc::gen::inRange(0, 5)) {
    case 0:
      further.bend = {allowance};
      break;
    case 1:
      further.contraction = {allowance};
      break;
    case 2:
      further.bedform = {allowance};
      break;
    case 3:
      further.whole = {allowance};
      break;
    default:
      further.long_term = allowance;
  }
  Steps steps;
  const auto before = toe_depth(in, steps);
  const auto after = toe_depth(further, steps);
  RC_ASSERT(before && after);
  RC_ASSERT(after->depth >= before->depth);
}

}  // namespace
}  // namespace proofstone
