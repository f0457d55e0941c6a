#pragma once

#include <optional>
#include <vector>

#include "engine/sizing/setting_words.h"
#include "engine/sizing/sizing_method.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

/// How the water meets the rock: decides the velocity that attacks it and the coefficient for the
/// vertical distribution of velocity, Cv.
enum class WaterAttack {
  straight_or_inside,      ///< straight reach, or the inside of a bend: Cv 1.0
  outside_of_bend,         ///< V_SS by the bend curve, Cv by R/W
  below_concrete_channel,  ///< Cv 1.25
  end_of_dike,             ///< Cv 1.25
  impinging,  ///< braided or oblique flow that runs at the bank: 1.6 × average, Cv 1.25
};

/// Its words in method inputs.
const std::vector<ChoiceOption<WaterAttack>>& water_attack_options();

/// What the USACE bank and bed equation and the guideline that takes it over read of the water, the
/// ground and the rock.
struct BankAndBedFlow {
  WaterAttack attack = WaterAttack::straight_or_inside;
  ChannelForm channel_form = ChannelForm::natural;
  Velocity average_velocity;               ///< main channel, upstream end of the bend
  std::optional<Velocity> local_velocity;  ///< V itself, when it is known
  std::optional<Length> bend_radius;       ///< centreline
  std::optional<Length> top_width;         ///< water surface of the main channel
  /// From the end of the bend down to the rock, where the rock lies below it.
  std::optional<Length> distance_below_bend;
  Length local_depth;  ///< on a bank, 20 % up the slope from the toe
  Angle bank_angle;    ///< from horizontal; 0 on a bed
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Angularity angularity = Angularity::angular;
  Dimensionless safety_factor = Dimensionless::number(1.1);
  Dimensionless thickness_coefficient = Dimensionless::number(1.0);
  std::optional<Slope> channel_slope;          ///< only to watch the limit
  std::optional<Dimensionless> froude_number;  ///< only to watch the limit
};

/// Fills it from a zone in a stream.
void take_bank_and_bed_flow(const ZoneSetting& zone, BankAndBedFlow& flow);

/// Whether the bank is no steeper than 1V:1.5H, the steepest that is published.
bool bank_within_published_slope(const BankAndBedFlow& flow);

/// Describes its inputs and the limits that they are watched by.
template <class Inputs, class Result>
void describe_bank_and_bed_flow(TypedSizingMethod<Inputs, Result>& method) {
  using Flow = BankAndBedFlow;
  using Number = Dimensionless Inputs::*;
  using OptionalLength = std::optional<Length> Inputs::*;
  method.choice({"attack", "", "how the water meets the rock"},
                static_cast<WaterAttack Inputs::*>(&Flow::attack), water_attack_options());
  method.choice({"channel_form", "", "which bend curve: natural or trapezoidal channel"},
                static_cast<ChannelForm Inputs::*>(&Flow::channel_form), channel_form_options());
  method.required({"average_velocity", "V_AVG",
                   "average velocity of the main channel, at the upstream end of a bend"},
                  static_cast<Velocity Inputs::*>(&Flow::average_velocity), unit::foot_per_second,
                  AllowedRange::positive_to(60));
  method.optional({"local_velocity", "V_SS",
                   "depth-averaged velocity at the rock, on a bank 20 % up the slope"},
                  static_cast<std::optional<Velocity> Inputs::*>(&Flow::local_velocity),
                  unit::foot_per_second, AllowedRange::positive_to(60),
                  "from the average velocity");
  method.optional({"bend_radius", "R", "centreline radius of the bend"},
                  static_cast<OptionalLength>(&Flow::bend_radius), unit::foot,
                  AllowedRange::positive_to(1e6), "only needed outside of a bend");
  method.optional({"top_width", "W", "water-surface width of the main channel"},
                  static_cast<OptionalLength>(&Flow::top_width), unit::foot,
                  AllowedRange::positive_to(1e5), "only needed outside of a bend");
  method.optional({"distance_below_bend", "x",
                   "from the end of the bend down to the rock; the bend velocity fades by 0.1 of "
                   "the average for each width after the first"},
                  static_cast<OptionalLength>(&Flow::distance_below_bend), unit::foot,
                  AllowedRange::between(0, 1e6), "in the bend itself");
  method.required({"local_depth", "d",
                   "water depth at the rock; on a bank 20 % of the slope length up from the toe"},
                  static_cast<Length Inputs::*>(&Flow::local_depth), unit::foot,
                  AllowedRange::positive_to(300));
  method.required({"bank_angle", "θ", "bank angle from horizontal; 0° on a bed"},
                  static_cast<Angle Inputs::*>(&Flow::bank_angle), unit::degree,
                  AllowedRange::between(0, 90));
  method.defaulted({"specific_gravity", "γs/γw", "specific gravity of the rock"},
                   static_cast<Number>(&Flow::specific_gravity), unit::number,
                   AllowedRange::between(1.5, 4));
  method.choice({"angularity", "Cs", "angular rock takes Cs 0.30, rounded rock 0.375"},
                static_cast<Angularity Inputs::*>(&Flow::angularity), angularity_options());
  method.defaulted({"safety_factor", "Sf", "safety factor on size"},
                   static_cast<Number>(&Flow::safety_factor), unit::number,
                   AllowedRange::between(1, 5));
  method.safety_margin("safety_factor", 1);
  method.defaulted({"thickness_coefficient", "CT",
                    "1 for a layer of least thickness; smaller for thicker layers, by Plate B-40"},
                   static_cast<Number>(&Flow::thickness_coefficient), unit::number,
                   AllowedRange::positive_to(1));
  method.optional({"channel_slope", "S", "slope of the channel"},
                  static_cast<std::optional<Slope> Inputs::*>(&Flow::channel_slope),
                  unit::rise_per_run, AllowedRange::between(0, 1), "its limit is not watched");
  method.optional({"froude_number", "Fr", "Froude number of the channel"},
                  static_cast<std::optional<Dimensionless> Inputs::*>(&Flow::froude_number),
                  unit::number, AllowedRange::between(0, 20), "its limit is not watched");
  method.limit(
      {"Channel slope below 2 %", "WES Streambank Handbook (1997) App. A, p. A-3"},
      [](const Flow& in) { return !in.channel_slope || in.channel_slope->ratio() < 0.02; });
  method.limit({"Bank not steeper than 1V:1.5H", "WES Streambank Handbook (1997) App. A"},
               &bank_within_published_slope);
  method.limit({"Tranquil flow (Froude number below 1)", "WES Streambank Handbook (1997) App. A"},
               [](const Flow& in) { return !in.froude_number || in.froude_number->number() < 1; });
}

}  // namespace proofstone
