#pragma once

#include "engine/site/zone_sizing.h"

namespace proofstone {

/// The least layer of a class in the zone, by the rule of its place. A zone that states contraction
/// scour and long-term lowering at a pier is judged with them.
Expected<LayerThicknessResult> least_layer(const ZoneSizing& sizing, const RockClass& rock_class,
                                           Steps& steps);

/// Whether the layer that is specified for a zone is as thick as the rule of its place asks for
/// with the class that is specified.
Finding layer_finding(const ZoneSizing& sizing, const Wording& wording);

}  // namespace proofstone
