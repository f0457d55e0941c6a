#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// What a plan that counts stones on the wrong side of a limit is to tell apart, and how often it
/// may be mistaken.
struct ShareRisks {
  Dimensionless acceptable = Dimensionless::number(0.10);    ///< share that is still good rock
  Dimensionless unacceptable = Dimensionless::number(0.30);  ///< share that must not be accepted
  Dimensionless producers_risk = Dimensionless::number(0.05);
  Dimensionless owners_risk = Dimensionless::number(0.10);
};

/// A Problem when the unacceptable share is not above the acceptable one, or the risks leave no
/// room for a decision.
Problems problems_of(const ShareRisks& risks);

template <class Inputs, class Result>
void describe_share_risks(TypedMethod<Inputs, Result>& method) {
  method.defaulted({"acceptable", "p1", "share on the wrong side of the limit that is still good"},
                   static_cast<Dimensionless Inputs::*>(&Inputs::acceptable), unit::percent,
                   AllowedRange::between(0.01, 99));
  method.defaulted({"unacceptable", "p2", "share that must not be accepted"},
                   static_cast<Dimensionless Inputs::*>(&Inputs::unacceptable), unit::percent,
                   AllowedRange::between(0.02, 99.9));
  method.defaulted({"producers_risk", "α", "chance that good rock is turned away"},
                   static_cast<Dimensionless Inputs::*>(&Inputs::producers_risk), unit::percent,
                   AllowedRange::between(0.1, 49));
  method.defaulted({"owners_risk", "β", "chance that bad rock is accepted"},
                   static_cast<Dimensionless Inputs::*>(&Inputs::owners_risk), unit::percent,
                   AllowedRange::between(0.1, 49));
}

}  // namespace proofstone
