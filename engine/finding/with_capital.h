#pragma once

#include <string>

namespace proofstone {

/// "Void-filled rock", of "void-filled rock": the first letter as at the head of a sentence.
inline std::string with_capital(std::string text) {
  if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
    text.front() = static_cast<char>(text.front() - 'a' + 'A');
  }
  return text;
}

}  // namespace proofstone
