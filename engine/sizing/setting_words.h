#pragma once

#include "engine/method/typed_method.h"
#include "engine/sizing/zone_setting.h"

/// The words of a zone's setting in method inputs, each list once.
namespace proofstone {

const std::vector<ChoiceOption<ChannelForm>>& channel_form_options();
const std::vector<ChoiceOption<Angularity>>& angularity_options();
const std::vector<ChoiceOption<ZonePlace>>& zone_place_options();

}  // namespace proofstone
