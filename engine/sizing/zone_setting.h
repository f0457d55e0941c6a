#pragma once

#include <map>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/quantity/quantity.h"
#include "engine/rock/rock_properties.h"

namespace proofstone {

/// The part of the works a zone protects.
enum class ZonePlace {
  bank,      ///< of a stream or channel
  bed,       ///< of a stream or channel
  chute,     ///< a steep lining that water runs down: rundown, spillway, overtopped slope
  outfall,   ///< apron below a conduit
  basin,     ///< scour hole lined with rock below a conduit
  drop,      ///< sloping drop or riffle across a channel
  pier,      ///< around a bridge pier
  abutment,  ///< at a bridge abutment
  shore,     ///< a slope that waves run at
};

/// Every place with its word in documents and sentences, in the order above.
const std::vector<std::pair<std::string, ZonePlace>>& zone_place_words();

/// "bank", "pier" …
const std::string& zone_place_word(ZonePlace place);

/// Whether the place is lined by the water of a surveyed section: bank and bed.
bool in_stream(ZonePlace place);

/// What the designer states of the water at a zone in one flow case, because another computation or
/// an observation gives it. What is stated stands before what is computed.
struct StatedWater {
  std::string from;  ///< who or what says so
  std::optional<Discharge> discharge;
  std::optional<Velocity> velocity;  ///< depth-averaged, at the zone
  std::optional<Length> depth;       ///< at the zone
  std::optional<Length> tailwater_depth;
  std::optional<Length> water_level;
  std::optional<Length> wave_height;  ///< significant, at the toe of the slope
};

/// How the channel's bend curves were measured, which decides the bend velocity curve.
enum class ChannelForm { natural, trapezoidal };

/// Which side of a bend a zone lies on.
enum class BendSide { straight, outside, inside };

/// How rough the water is where the rock lies.
enum class Turbulence {
  low,   ///< ordinary channel flow
  high,  ///< below stilling basins, drops and gates
};

/// Everything a sizing method may ask of a zone in one flow case: the water that attacks it, the
/// ground it lies on, and the rock on offer. Outside streams a value that nothing gives is zero. A
/// sizing method takes what it needs and says what is missing; it never looks anywhere else.
struct ZoneSetting {
  std::string zone;
  std::string flow_case;

  ZonePlace place = ZonePlace::bank;
  Angle bank_angle;  ///< from horizontal; zero on a bed
  ChannelForm channel_form = ChannelForm::natural;
  BendSide bend_side = BendSide::straight;
  std::optional<Length> bend_radius;  ///< centreline; absent on a straight reach

  Velocity average_velocity;  ///< main channel, Q/A
  Length water_top_width;     ///< main channel water surface
  Length mean_depth;          ///< main channel, area over top width
  Length toe_depth;           ///< depth at the zone's toe, its deepest point
  Length local_depth;         ///< 20 % up the slope from the toe on a bank, the depth on a bed
  Slope energy_slope;
  Dimensionless froude_number;
  Turbulence turbulence = Turbulence::low;

  StatedWater stated;  ///< empty where nothing is stated for this flow case

  RockProperties rock;

  /// The designer's own choices, by method id and input key, as the document writes them.
  const nlohmann::json* method_choices = nullptr;
};

}  // namespace proofstone
