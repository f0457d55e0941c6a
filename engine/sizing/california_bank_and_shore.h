#pragma once

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// How the water runs at the face: its velocity over the average of the channel.
enum class FaceAttack {
  parallel,   ///< along the face, 0.67 × average
  impinging,  ///< at the face, as on the outside of a bend, 1.33 × average
  as_given,   ///< the velocity given is that at the face
};

/// Mass of stone of the California bank and shore method (FHWA-CA-TL-95-10, 3rd internet ed.,
/// 2000): W = 0.00002·V⁶·Sg / [(Sg−1)³·sin³(70° − a)], W in lb the least stone of the outer layer,
/// V in ft/s at the face, a the face angle, 70° for stone placed at random.
struct CaliforniaBankAndShoreInputs {
  Velocity velocity;
  FaceAttack attack = FaceAttack::parallel;
  Angle face_angle;
  Dimensionless specific_gravity = Dimensionless::number(2.65);
};

struct CaliforniaBankAndShoreResult {
  Velocity face_velocity;
  Mass mass;
  Length diameter;  ///< sphere of that mass
};

/// Problems: a face of 70° or steeper.
Expected<CaliforniaBankAndShoreResult> california_bank_and_shore(
    const CaliforniaBankAndShoreInputs& inputs, Steps& steps);

const SizingMethod& california_bank_and_shore_method();

}  // namespace proofstone
