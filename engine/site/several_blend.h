#pragma once

#include "engine/evidence/blend.h"
#include "engine/site/rock_in_zone.h"

namespace proofstone {

/// Whether a material is rock that could stand in a class: less than a tenth of it finer than
/// 25 mm (common practice); soil and bedding are no remedy for a pile.
bool is_rock(const Material& material);

/// A blend of the lot with two or more materials on offer, in whole loads: the one that keeps the
/// class and the size asked for at the least cost of what is added or, where a price is not known,
/// with the least added. Nothing where fewer than two materials are on offer, where no such blend
/// serves, or where one material alone does as well.
std::optional<Finding> several_blend(const Site& site, const LotEvidence& evidence,
                                     const MeasuredMargin& asks, const Wording& wording);

/// Puts what is added to a load of the blend, at the prices of the document, into a finding;
/// nothing where the price is not known.
void state_cost(Finding& finding, const Material& material, const BlendOption& option);

/// Puts those that serve before the others and, where all have a cost, the cheapest first.
void rank_by_cost(std::vector<Finding>& blends);

}  // namespace proofstone
