#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/site.h"

namespace proofstone {

/// Reads a member of /soils.
std::optional<Soil> read_soil(FieldReader& reader, const std::string& id, Problems& problems);

/// Reads the soil and the filter of a zone into it.
void read_soil_and_filter(FieldReader& zone_reader, Zone& zone, Problems& problems);

/// Reads the points of a gradation, [{"size": …, "smaller": …}, …]; absent where something is
/// wrong, which then stands in `problems`. Percents that look retained are named so.
std::optional<Gradation> read_gradation(FieldReader& reader, const GradationBasis& basis,
                                        Problems& problems);

/// Zones whose soil or bedding is called by a name that nothing has.
Problems filter_reference_problems(const Site& site, const Zone& zone);

}  // namespace proofstone
