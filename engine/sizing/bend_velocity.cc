#include "engine/sizing/bend_velocity.h"

#include <algorithm>
#include <cmath>

namespace proofstone {

Dimensionless bend_velocity_ratio(ChannelForm form, Length bend_radius, Length top_width) {
  const double r_w = bend_radius / top_width;
  if (form == ChannelForm::natural) {
    return Dimensionless::number(r_w > 26 ? 1.0 : 1.74 - 0.52 * std::log10(r_w));
  }
  return Dimensionless::number(r_w > 8 ? 1.0 : 1.71 - 0.78 * std::log10(r_w));
}

std::string bend_velocity_formula(ChannelForm form) {
  return form == ChannelForm::natural ? "1.74 − 0.52·log₁₀(R/W), 1 where R/W > 26"
                                      : "1.71 − 0.78·log₁₀(R/W), 1 where R/W > 8";
}

const Source& bend_velocity_source() {
  static const Source source{"USACE EM 1110-2-1601 (1994)",
                             "Plate B-33, by the fits printed in FHWA HEC-23 (2009) DG4",
                             SourceStanding::memory};
  return source;
}

Dimensionless bend_ratio_below(Dimensionless ratio_in_bend, Length distance, Length top_width) {
  const double ratio = ratio_in_bend.number();
  const double widths_after_first = std::max(0.0, distance / top_width - 1);
  const double lowered = ratio - 0.1 * widths_after_first;
  return Dimensionless::number(std::max(lowered, std::min(ratio, 1.0)));
}

Length bend_effect_ends(Dimensionless ratio_in_bend, Length top_width) {
  const double above_one = std::max(0.0, ratio_in_bend.number() - 1);
  return above_one > 0 ? top_width * (1 + above_one / 0.1) : Length();
}

const Source& bend_decay_source() {
  static const Source source{"WES Streambank Handbook (1997)", "App. A sec. A.3",
                             SourceStanding::published};
  return source;
}

}  // namespace proofstone
