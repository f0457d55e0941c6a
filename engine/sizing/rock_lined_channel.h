#pragma once

#include <optional>

#include "engine/hydraulics/rock_roughness_flow.h"
#include "engine/sizing/setting_words.h"
#include "engine/sizing/usace_bank_and_bed.h"

namespace proofstone {

/// A trapezoidal channel lined with rock on bottom and banks, as the methods that size the rock
/// from its own water read it.
struct RockLinedChannelInputs {
  Length bottom_width;
  Slope side_slope;
  Slope bed_slope;
  Discharge discharge;
  ZonePlace place = ZonePlace::bank;  ///< bank or bed
  ChannelForm channel_form = ChannelForm::trapezoidal;
  std::optional<Length> bend_radius;
  std::optional<Dimensionless> velocity_ratio;  ///< V_SS/V read by hand
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Angularity angularity = Angularity::angular;
  Dimensionless safety_factor = Dimensionless::number(1.1);

  RockLinedChannel channel() const { return {bottom_width, side_slope, bed_slope, discharge}; }
};

/// The water over rock of one roughness, and the rock it asks for.
struct RockLinedTrial {
  Dimensionless roughness;
  RockLinedFlow flow;
  Length local_depth;
  Velocity attacking_velocity;
  Length required_d30;
};

/// Uniform flow at Manning's n, and by usace_bank_and_bed the size it asks for. Problems: those of
/// rock_lined_flow and usace_bank_and_bed.
Expected<RockLinedTrial> trial_at(const RockLinedChannelInputs& inputs, Dimensionless roughness,
                                  Steps& steps);

/// n = K·D90^⅙ put down in steps; see rock_roughness.
Dimensionless roughness_of(Length d90, Dimensionless k, Steps& steps);

/// Where the roughness is printed, for steps.
const char* rock_roughness_source();

template <class Inputs, class Result>
void describe_rock_lined_channel(TypedMethod<Inputs, Result>& method) {
  using Number = Dimensionless Inputs::*;
  method.required({"bottom_width", "b", "bottom width of the channel"},
                  static_cast<Length Inputs::*>(&Inputs::bottom_width), unit::foot,
                  AllowedRange::between(0, 1e5));
  method.required({"side_slope", "1/z", "slope of its sides"},
                  static_cast<Slope Inputs::*>(&Inputs::side_slope), unit::rise_per_run,
                  AllowedRange::between(0.02, 5));
  method.required({"bed_slope", "S", "slope of the bed"},
                  static_cast<Slope Inputs::*>(&Inputs::bed_slope), unit::rise_per_run,
                  AllowedRange::positive_to(0.5));
  method.required({"discharge", "Q", "discharge"},
                  static_cast<Discharge Inputs::*>(&Inputs::discharge), unit::cubic_foot_per_second,
                  AllowedRange::positive_to(1e7));
  method.choice({"place", "", "where the rock lies"},
                static_cast<ZonePlace Inputs::*>(&Inputs::place),
                {ChoiceOption<ZonePlace>{ZonePlace::bank, "bank", "on the sides"},
                 {ZonePlace::bed, "bed", "on the bottom"}});
  method.choice({"channel_form", "", "which bend curve"},
                static_cast<ChannelForm Inputs::*>(&Inputs::channel_form), channel_form_options());
  method.optional({"bend_radius", "R", "centreline radius of the bend"},
                  static_cast<std::optional<Length> Inputs::*>(&Inputs::bend_radius), unit::foot,
                  AllowedRange::positive_to(1e6), "a straight channel");
  method.optional({"velocity_ratio", "V_SS/V", "read by hand, in place of the bend curve"},
                  static_cast<std::optional<Dimensionless> Inputs::*>(&Inputs::velocity_ratio),
                  unit::number, AllowedRange::positive_to(3), "the bend curve");
  method.defaulted({"specific_gravity", "γs/γw", "specific gravity of the rock"},
                   static_cast<Number>(&Inputs::specific_gravity), unit::number,
                   AllowedRange::between(1.5, 4));
  method.choice({"angularity", "Cs", "how worn the stones are"},
                static_cast<Angularity Inputs::*>(&Inputs::angularity), angularity_options());
  method.defaulted({"safety_factor", "Sf", "safety factor"},
                   static_cast<Number>(&Inputs::safety_factor), unit::number,
                   AllowedRange::between(1, 3));
  method.limit({"Bed slope below 2 %", "WES Streambank Handbook (1997) App. A, p. A-3"},
               [](const Inputs& in) { return in.bed_slope.ratio() < 0.02; });
  method.limit({"Banks no steeper than 1V:1.5H", "WES Streambank Handbook (1997) App. A"},
               [](const Inputs& in) {
                 return in.place == ZonePlace::bed || in.side_slope.ratio() <= 1 / 1.5 + 1e-9;
               });
}

}  // namespace proofstone
