#pragma once

#include <nlohmann/json.hpp>

#include "piles/picture.h"

namespace proofstone::piles {

/// What is true of a pile: what was asked, every stone, the mass curves of all and of the surface.
/// Lengths in metres, volumes in cubic metres.
nlohmann::ordered_json pile_truth(const Pile& pile, const PileSurface& surface);

/// What is true of a picture: camera, mean plane of the rock, things for scale, stones in view with
/// the pixels that they show and those that they would cover alone.
nlohmann::ordered_json picture_truth(const Pile& pile, const Picture& picture,
                                     float linear_exposure);

}  // namespace proofstone::piles
