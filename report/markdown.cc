#include "report/markdown.h"

namespace proofstone {

std::string markdown_cell(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '|') out += '\\';
    out += c == '\n' ? ' ' : c;
  }
  return out;
}

}  // namespace proofstone
