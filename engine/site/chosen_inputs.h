#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/site/zone_sizing.h"

namespace proofstone {

/// A quantity above zero that the designer chose under method_choices as an input called one of
/// `keys`: of the method that governs, else of others that were asked, else of any. Without a
/// sizing of any.
std::optional<Length> chosen_length(const Zone& zone, const ZoneSizing* sizing,
                                    const std::vector<std::string>& keys);
std::optional<Slope> chosen_slope(const Zone& zone, const ZoneSizing* sizing);
std::optional<Angle> chosen_slope_angle(const Zone& zone, const ZoneSizing* sizing);
std::optional<Duration> chosen_period(const Zone& zone, const ZoneSizing* sizing);

}  // namespace proofstone
