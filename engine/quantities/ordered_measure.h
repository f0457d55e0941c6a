#pragma once

#include <string>

#include "engine/quantity/measure.h"

namespace proofstone {

/// An amount as it is ordered: areas in yd² or m², volumes in yd³ or m³, masses in tons or tonnes,
/// whatever their size, to whole units from 100 and to three figures below.
DisplayedMeasure ordered_measure(const Measure& amount, UnitSystem system);

/// Money in whole units of the currency with its thousands apart: "71 280 USD" (with narrow
/// no-break spaces).
std::string money_text(double amount, const std::string& currency);

}  // namespace proofstone
