#pragma once

#include <string>

#include "engine/hydraulics/profile.h"
#include "engine/site/findings.h"
#include "engine/site/site.h"

namespace proofstone {

/// How a sentence names a section of a profile.
std::string shown_name(const Site& site, const ProfileSection& section);

/// What the sections have to tell, each sentence once with the sections it holds for; what leaves
/// the level in doubt stands among the reasons.
void tell_notes(Finding& finding, const Site& site, const WaterProfile& profile);

/// Ground that rises downstream is computed as it stands; often it is a slip of a survey.
void tell_rising_bed(Finding& finding, const Site& site, const WaterProfile& profile);

/// A regime that the document chose leaves the other one out.
void tell_regime(Finding& finding, ProfileRegime regime);

}  // namespace proofstone
