#pragma once

#include <optional>
#include <string>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Front Range (USDCM Vol. 1) equation for rock linings of channels, US units.
struct FrontRangeChannelInputs {
  Velocity velocity;  ///< mean of the channel
  Slope slope;
  std::optional<Length> bend_radius;  ///< centreline; absent where the rock is not outside a bend
  std::optional<Length> top_width;
  Dimensionless specific_gravity = Dimensionless::number(2.5);
  std::optional<Angle> bank_angle;             ///< only to watch the limits
  std::optional<Dimensionless> froude_number;  ///< only to watch the limit
};

struct FrontRangeChannelResult {
  Velocity design_velocity;
  Dimensionless type_parameter;  ///< X, which the printed limits of the letter types are stated in
  Length d50;
};

/// X = V·S^0.17/(Ss−1)^0.66 (ft/s), for channels and drops alike.
Dimensionless front_range_type_parameter(Velocity velocity, Slope slope,
                                         Dimensionless specific_gravity);

/// A letter type of rock by the printed limits of X: VL below 3.3, L below 4.0, M below 4.6, H
/// below 5.6, VH up to 6.4; nothing above.
struct FrontRangeType {
  std::string name;
  Length nominal_d50;
};
std::optional<FrontRangeType> front_range_type(Dimensionless type_parameter);

/// Problems: a bend without the top width.
Expected<FrontRangeChannelResult> front_range_channel(const FrontRangeChannelInputs& inputs,
                                                      Steps& steps);

const SizingMethod& front_range_channel_method();

}  // namespace proofstone
