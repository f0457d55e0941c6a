#pragma once

#include <string_view>

namespace proofstone {

/// The weights of the outline network (`OutlineNetwork::read`) that this program carries within.
std::string_view embedded_outline_weights();

}  // namespace proofstone
