#pragma once

#include <string>

#include "engine/acceptance/share_risks.h"

namespace proofstone {

/// The chance that rock is accepted against its true share on the wrong side, by the single plan of
/// these risks and by the count stone by stone; exact for both. The two risks are marked. Empty
/// where the risks have no plan.
std::string operating_characteristic_picture(const ShareRisks& risks, double width);

/// The stones counted on average against the true share, by both plans. Empty as above.
std::string average_stones_picture(const ShareRisks& risks, double width);

}  // namespace proofstone
