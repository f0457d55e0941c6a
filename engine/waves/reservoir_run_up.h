#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Face of a dam or shore that a wave runs up.
enum class FaceOfSlope { riprap, smooth };

/// Run-up and wind setup of the Bureau of Reclamation (ACER TM-2, from memory).
struct ReservoirRunUpInputs {
  Length height;  ///< significant
  Duration period;
  Angle slope;
  FaceOfSlope face = FaceOfSlope::riprap;
  std::optional<Velocity> wind;  ///< for the setup, with the two below
  std::optional<Length> fetch;   ///< for the setup; usually twice the effective fetch
  std::optional<Length> depth;   ///< mean depth along it
  Length freeboard;              ///< above run-up and setup, named by the owner
};

struct ReservoirRunUpResult {
  Length wave_length;
  Length run_up;
  Length setup;
  Length crest;  ///< least height of the protection above still water
};

Expected<ReservoirRunUpResult> reservoir_run_up(const ReservoirRunUpInputs& inputs, Steps& steps);

const Method& reservoir_run_up_method();

}  // namespace proofstone
