#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/zone_water.h"

namespace proofstone {

/// Reads `near_structure` of a zone on a bank or bed:
///
///   {"choice": "impinging flow" | "round pier" | "square pier"}
///   {"choice": "stated", "factor": "1.4", "on": "mean velocity" | "local velocity", "from": "…"}
std::optional<NearStructure> read_near_structure(FieldReader& zone, bool in_stream,
                                                 Problems& problems);

/// The zone's choices for its methods, with the velocity at the rock put in for those that take
/// one; what the designer chose for a method himself stays.
HeldJson choices_near_structure(const Zone& zone, Velocity at_rock);

/// Raises the velocity at the rock of a zone that names a structure nearby; methods that size by a
/// velocity at the rock then take it. The velocity of a bend stands where it is greater.
///
///  - impinging flow: 1.6 × the mean velocity of the main channel (WES Streambank Handbook 1997,
///    App. A)
///  - beside a pier: 1.5 (round nose) or 1.7 (square face) × the local velocity (FHWA HEC-23 DG 11,
///    K1 with K2 = 1; from memory)
void take_near_structure(ZoneWater& water, const Zone& zone, const Wording& wording);

}  // namespace proofstone
