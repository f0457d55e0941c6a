#pragma once

#include <vector>

#include "engine/site/filter_pairs.h"
#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// A finding on the filter of a zone, so far with nothing found.
Finding begin_filter_finding(const Zone& zone, const std::string& id, const std::string& title);

/// What a pair of layers comes to.
Finding pair_finding(const Zone& zone, const PairVerdict& pair, const std::string& id);

/// Whether every part of the zone is filled, so that the fill is the filter.
bool all_filled(const Zone& zone);

/// The layers of a zone's filter; none where none is stated.
const std::vector<FilterLayer>& layers_of(const Zone& zone);

/// The least thickness of a layer among so many granular ones.
Length least_filter_thickness(const Zone& zone, std::size_t granular, const LayerCurves& layer,
                              Steps& steps);

/// Whether a granular layer, the `number`th from the soil, is thick enough.
Finding thickness_finding(const Site& site, const Zone& zone, const GranularFilter& layer,
                          std::size_t number, const Wording& wording);

/// Adds to the reasons whether the bedding holds its own fines, where its curve is known.
void note_stability(const Site& site, const GranularFilter& layer, Finding& finding);

/// Puts into the finding of a zone what a bedding of the document passes of the No. 200 sieve: more
/// than 5 % goes to the designer; where its curve does not tell, that is named with its place.
void judge_fines(const Site& site, const GranularFilter& layer, Finding& finding);

}  // namespace proofstone
