#include "engine/sizing/setting_words.h"

namespace proofstone {

const std::vector<ChoiceOption<ChannelForm>>& channel_form_options() {
  static const std::vector<ChoiceOption<ChannelForm>> options{
      {ChannelForm::natural, "natural", "natural channel"},
      {ChannelForm::trapezoidal, "trapezoidal", "trapezoidal channel"}};
  return options;
}

const std::vector<ChoiceOption<Angularity>>& angularity_options() {
  static const std::vector<ChoiceOption<Angularity>> options{
      {Angularity::angular, "angular", "broken faces, sharp edges"},
      {Angularity::rounded, "rounded", "river cobbles and worn boulders"}};
  return options;
}

const std::vector<ChoiceOption<ZonePlace>>& zone_place_options() {
  static const std::vector<ChoiceOption<ZonePlace>> options{
      {ZonePlace::bank, "bank", "of a stream or channel"},
      {ZonePlace::bed, "bed", "of a stream or channel"},
      {ZonePlace::chute, "chute", "a steep lining that water runs down"},
      {ZonePlace::outfall, "outfall", "apron below a conduit"},
      {ZonePlace::basin, "basin", "scour hole lined with rock below a conduit"},
      {ZonePlace::drop, "drop", "sloping drop or riffle across a channel"},
      {ZonePlace::pier, "pier", "around a bridge pier"},
      {ZonePlace::abutment, "abutment", "at a bridge abutment"},
      {ZonePlace::shore, "shore", "a slope that waves run at"}};
  return options;
}

}  // namespace proofstone
