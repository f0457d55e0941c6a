#pragma once

#include <string_view>

namespace proofstone {

/// The four things a finding can come to.
enum class Outcome { meets, falls_short, not_yet_known, ask_the_designer };

/// "meets", "falls short", "not yet known", "ask the designer".
std::string_view outcome_phrase(Outcome outcome);

}  // namespace proofstone
