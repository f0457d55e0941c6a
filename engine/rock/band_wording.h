#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/json/field_reader.h"
#include "engine/rock/rock_class.h"

namespace proofstone {

/// Reads the band of a class, worded in exactly one of four ways: percent_windows, size_windows,
/// mass_windows, mass_percent_windows. Masses become sizes at `rock_density`, which they need.
/// Absent when something is wrong; the problems then stand in `problems`.
std::optional<GradationBand> read_band_wording(FieldReader& reader, const GradationBasis& basis,
                                               const std::optional<Density>& rock_density,
                                               Problems& problems);

/// The least sizes a class's table prints beside its band; empty where it prints none.
std::vector<StatedSize> read_stated_sizes(FieldReader& reader, Problems& problems);

/// A plain number from zero to `at_most`; absent where the field is absent or wrong.
std::optional<double> read_plain_number(FieldReader& reader, const std::string& field,
                                        double at_most);

}  // namespace proofstone
