#pragma once

#include <string>
#include <string_view>

namespace proofstone {

/// The one way every shell asks the engine: a JSON request in, a JSON answer out.
/// report/README.md lists what can be asked. An answer that is not possible is {"problems": […]}.
/// Never throws.
std::string answer_request(std::string_view json_text);

}  // namespace proofstone
