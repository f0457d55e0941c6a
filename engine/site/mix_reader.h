#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/site.h"

namespace proofstone {

/// What one of /materials says beyond its name and gradation.
MaterialState read_material_state(FieldReader& reader, Problems& problems);

/// "price" of an item, {"amount": "18.50", "per": "ton"}, for each tonne; the money is whatever the
/// document counts in.
std::optional<double> read_tonne_price(FieldReader& item, Problems& problems);

/// One of /mixes. What it points at (class, materials) is judged later.
SiteMix read_mix(FieldReader& reader, const std::string& id, Problems& problems);

/// Where mixes and zones point at materials, classes and mixes that are not there.
Problems mix_reference_problems(const Site& site);

}  // namespace proofstone
