#include "engine/method/method.h"

#include <algorithm>
#include <stdexcept>

namespace proofstone {

const Measure& Evaluation::output(std::string_view key) const {
  const auto found = std::find_if(outputs.begin(), outputs.end(),
                                  [&](const OutputValue& output) { return output.key == key; });
  if (found == outputs.end()) throw std::logic_error("no output called " + std::string(key));
  return found->value;
}

}  // namespace proofstone
