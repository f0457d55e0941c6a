#include "engine/finding/json_pointer.h"

namespace proofstone {

std::string pointer_step(std::string_view field) {
  std::string step;
  for (const char c : field) {
    if (c == '~') {
      step += "~0";
    } else if (c == '/') {
      step += "~1";
    } else {
      step += c;
    }
  }
  return step;
}

}  // namespace proofstone
