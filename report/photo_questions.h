#pragma once

#include <string>
#include <string_view>

namespace proofstone {

/// What is asked of photos while they are measured, as JSON text in and out. `ask` is `scale`,
/// which answers `cautions` of what tells the scale (photos are numbered from `first`, 1 if
/// absent), or `check`, which answers `nodes` [{picture, at}] where outlines are looked at; `lies`
/// and `pictures` are those of a photo look. The answer may hold `problems` instead.
std::string answer_photo_question(std::string_view json_text);

}  // namespace proofstone
