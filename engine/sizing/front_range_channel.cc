#include "engine/sizing/front_range_channel.h"
#include "engine/sizing/typed_sizing_method.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedFrontRangeChannel =
    TypedSizingMethod<FrontRangeChannelInputs, FrontRangeChannelResult>;

const char* const usdcm_of_front_range_channel =
    "USDCM Vol. 1, Open Channels (from memory; confirm)";

struct PrintedLimit {
  double below;
  const char* name;
  double nominal_d50_in;
};
constexpr PrintedLimit printed_limits[] = {
    {3.3, "VL", 6}, {4.0, "L", 9}, {4.6, "M", 12}, {5.6, "H", 18}, {6.4, "VH", 24}};

double velocity_in_bend(double rc_over_t) {
  return rc_over_t >= 8 ? 1.0 : -0.147 * rc_over_t + 2.176;
}

Expected<Velocity> design_velocity(const FrontRangeChannelInputs& in, Steps& steps) {
  steps.given("V", "mean velocity of the channel", measure(in.velocity));
  if (!in.bend_radius) return in.velocity;
  if (!in.top_width) {
    return Problem{"missing-input", "In a bend the top width is needed.", "", "/top_width",
                   "a length"};
  }
  const double rc_over_t = *in.bend_radius / *in.top_width;
  const double ratio = velocity_in_bend(rc_over_t);
  const Velocity raised = ratio * in.velocity;
  steps.given("rc", "centreline radius of the bend", measure(*in.bend_radius));
  steps.given("T", "top width of the water", measure(*in.top_width));
  steps.computed("V_bend/V", "velocity ratio outside of the bend",
                 "−0.147·rc/T + 2.176, 1 where rc/T ≥ 8", measure(ratio),
                 usdcm_of_front_range_channel);
  steps.computed("V_bend", "velocity to design for", "(V_bend/V)·V", measure(raised));
  return raised;
}

bool is_bank_within(const FrontRangeChannelInputs& in, double horizontal) {
  return !in.bank_angle || std::tan(in.bank_angle->radians()) < 1 / horizontal + 1e-9;
}

void explain_type(const FrontRangeChannelResult& result, Steps& steps) {
  const auto type = front_range_type(result.type_parameter);
  steps.computed("X",
                 type ? "type parameter; by the printed limits the rock is type " + type->name
                      : "type parameter; above 6.4 no letter type serves, other measures are "
                        "needed",
                 "V·S^0.17/(Ss−1)^0.66", measure(result.type_parameter),
                 usdcm_of_front_range_channel);
  if (type) {
    steps.given_rock("type " + type->name, "median size of that type", type->nominal_d50,
                     "printed limits 3.3, 4.0, 4.6, 5.6, 6.4");
  }
}

std::variant<FrontRangeChannelInputs, NotApplicable> front_range_channel_from_zone(
    const ZoneSetting& zone) {
  if (zone.turbulence == Turbulence::high) {
    return NotApplicable{
        "The equation is for channels in ordinary flow, not for structures, drops and outlets."};
  }
  FrontRangeChannelInputs in;
  in.velocity = zone.average_velocity;
  in.slope = zone.energy_slope;
  if (zone.bend_side == BendSide::outside) in.bend_radius = zone.bend_radius;
  in.top_width = zone.water_top_width;
  in.specific_gravity = zone.rock.specific_gravity;
  if (zone.place == ZonePlace::bank) in.bank_angle = zone.bank_angle;
  in.froude_number = zone.froude_number;
  return in;
}

MethodDescription describe_front_range_channel() {
  MethodDescription about;
  about.id = "front-range-channel";
  about.title = "Front Range channel equation";
  about.purpose =
      "Median size of rock that lines a channel in tranquil flow, from mean velocity and slope, "
      "and the letter type that serves; used along the Colorado Front Range.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"Urban Storm Drainage Criteria Manual (USDCM) Vol. 1",
                    "open channels, riprap lining equation and type limits",
                    SourceStanding::memory}};
  about.cautions = {
      "Use specific gravity 2.5 unless the quarry is known and better.",
      "Soil-filled rock is sized as plain rock; its voids must be full and the stones must touch.",
      "Not at structures, drops and outlets."};
  return about;
}

void describe_front_range_channel_inputs(DescribedFrontRangeChannel& method) {
  method.required({"velocity", "V", "mean velocity of the channel"},
                  &FrontRangeChannelInputs::velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60));
  method.required({"slope", "S", "slope of the channel"}, &FrontRangeChannelInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(1));
  method.optional({"bend_radius", "rc", "centreline radius, for rock outside of a bend"},
                  &FrontRangeChannelInputs::bend_radius, unit::foot, AllowedRange::positive_to(1e6),
                  "not outside of a bend");
  method.optional({"top_width", "T", "top width of the water"}, &FrontRangeChannelInputs::top_width,
                  unit::foot, AllowedRange::positive_to(1e5), "only needed in a bend");
  method.defaulted({"specific_gravity", "Ss", "specific gravity of the rock"},
                   &FrontRangeChannelInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.optional({"bank_angle", "θ", "bank angle from horizontal"},
                  &FrontRangeChannelInputs::bank_angle, unit::degree, AllowedRange::between(0, 90),
                  "its limits are not watched");
  method.optional({"froude_number", "Fr", "Froude number of the channel"},
                  &FrontRangeChannelInputs::froude_number, unit::number,
                  AllowedRange::between(0, 20), "its limit is not watched");
}

void describe_limits(DescribedFrontRangeChannel& method) {
  method.limit({"Froude number below 0.8", usdcm_of_front_range_channel},
               [](const FrontRangeChannelInputs& in) {
                 return !in.froude_number || in.froude_number->number() < 0.8;
               });
  method.limit(
      {"Specific gravity at least 2.5", usdcm_of_front_range_channel},
      [](const FrontRangeChannelInputs& in) { return in.specific_gravity.number() > 2.5 - 1e-9; });
  method.limit({"Bank not steeper than 1V:2.5H", usdcm_of_front_range_channel},
               [](const FrontRangeChannelInputs& in) { return is_bank_within(in, 2.5); });
  method.limit({"Bank of plain rock not steeper than 1V:3H; steeper only as an exception",
                usdcm_of_front_range_channel},
               [](const FrontRangeChannelInputs& in) { return is_bank_within(in, 3); });
  method.limit({"Bend radius at least twice the top width", usdcm_of_front_range_channel},
               [](const FrontRangeChannelInputs& in) {
                 return !in.bend_radius || !in.top_width ||
                        *in.bend_radius / *in.top_width > 2 - 1e-9;
               });
  method.limit({"Type parameter at most 6.4; above it the manual asks for other measures",
                usdcm_of_front_range_channel},
               [](const FrontRangeChannelInputs& in) {
                 Steps unread;
                 const auto result = front_range_channel(in, unread);
                 return result && front_range_type(result->type_parameter).has_value();
               });
}

DescribedFrontRangeChannel build_front_range_channel() {
  DescribedFrontRangeChannel method(
      describe_front_range_channel(), &front_range_channel, &front_range_channel_from_zone,
      [](const FrontRangeChannelResult& result) { return RequiredSize{50, result.d50}; });
  describe_front_range_channel_inputs(method);
  method.output({"design_velocity", "V", "velocity to design for, raised in a bend"},
                &FrontRangeChannelResult::design_velocity, unit::foot_per_second);
  method.output({"type_parameter", "X", "the parameter of the printed type limits"},
                &FrontRangeChannelResult::type_parameter, unit::number);
  method.output({"d50", "d50", "required median size"}, &FrontRangeChannelResult::d50, unit::foot,
                LengthUse::rock);
  describe_limits(method);
  return method;
}

}  // namespace

Dimensionless front_range_type_parameter(Velocity velocity, Slope slope,
                                         Dimensionless specific_gravity) {
  const double V = velocity.feet_per_second();
  const double S = slope.ratio();
  const double Ss = specific_gravity.number();
  return Dimensionless::number(V * std::pow(S, 0.17) / std::pow(Ss - 1, 0.66));
}

std::optional<FrontRangeType> front_range_type(Dimensionless type_parameter) {
  const double x = type_parameter.number();
  for (const PrintedLimit& limit : printed_limits) {
    const bool last = &limit == &printed_limits[4];
    if (x < limit.below || (last && x <= limit.below)) {
      return FrontRangeType{limit.name, Length::inches(limit.nominal_d50_in)};
    }
  }
  return std::nullopt;
}

Expected<FrontRangeChannelResult> front_range_channel(const FrontRangeChannelInputs& inputs,
                                                      Steps& steps) {
  const auto design = design_velocity(inputs, steps);
  if (!design) return design.problems();

  FrontRangeChannelResult result;
  result.design_velocity = *design;
  result.type_parameter =
      front_range_type_parameter(*design, inputs.slope, inputs.specific_gravity);

  // V·S^0.17 / (d50^0.5·(Ss−1)^0.66) = 4.5
  const double d50 = std::pow(result.type_parameter.number() / 4.5, 2);

  result.d50 = Length::feet(d50);
  steps.given("S", "slope", measure(inputs.slope));
  steps.given("Ss", "specific gravity of the rock", measure(inputs.specific_gravity));
  steps.computed_rock("d50", "required median size", "[V·S^0.17/(4.5·(Ss−1)^0.66)]² (ft, ft/s)",
                      result.d50, usdcm_of_front_range_channel);
  explain_type(result, steps);
  return result;
}

const SizingMethod& front_range_channel_method() {
  static const DescribedFrontRangeChannel method = build_front_range_channel();
  return method;
}

}  // namespace proofstone
