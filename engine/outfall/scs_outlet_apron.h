#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Which constant and which q the size is computed with.
enum class ScsSizeForm {
  scs,  ///< 0.016·q^1.33/TW
  epa,  ///< 0.02·q^(4/3)/TW
};

/// Apron below a pipe outlet in the form quoted as SCS practice, US units; q = Q/Wo, the discharge
/// for each unit of conduit width.
struct ScsOutletApronInputs {
  Discharge discharge;
  Length diameter;                  ///< Do = Wo
  std::optional<Length> tailwater;  ///< absent: 0.2·Do
  ScsSizeForm form = ScsSizeForm::scs;
};

struct ScsOutletApronResult {
  UnitDischarge unit_discharge;
  Length tailwater_used;
  Length d50;
  Length apron_length;
  Length end_width;
};

Expected<ScsOutletApronResult> scs_outlet_apron(const ScsOutletApronInputs& inputs, Steps& steps);

const SizingMethod& scs_outlet_apron_method();

}  // namespace proofstone
