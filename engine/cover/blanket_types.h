#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/finding/problem.h"
#include "engine/finding/source.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// A type of rolled erosion control product, as the catalog states it.
struct BlanketType {
  std::string id;  ///< "3.B"
  std::string name;
  std::optional<Dimensionless> months;  ///< how long it lasts; absent: permanent
  Angle steepest;                       ///< slope it is meant for
  Stress tabulated_shear;               ///< permissible shear; of a permanent mat when fully grown
  bool degrades = true;                 ///< biodegradable, as far as the type says
  Source source;
};

/// The types of catalog/blankets.json, in its order.
const std::vector<BlanketType>& blanket_types();

/// The type called `id`; nullptr otherwise.
const BlanketType* find_blanket_type(std::string_view id);

/// Reads a catalog of types (schema/blankets.schema.json).
Expected<std::vector<BlanketType>> read_blanket_types(std::string_view json_text);

}  // namespace proofstone
