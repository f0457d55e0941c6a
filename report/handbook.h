#pragma once

#include <string>
#include <vector>

namespace proofstone {

/// One page of the handbook, in Markdown.
struct HandbookPage {
  std::string file_name;  ///< "usace-bank-and-bed.md"
  std::string text;
};

/// The handbook: an index, a page for every method with its inputs, limits, sources and published
/// checks beside what this engine computes, and a page of the rock classes. Made from the
/// descriptions in the code and the check tables, so that it cannot fall behind them.
std::vector<HandbookPage> handbook();

}  // namespace proofstone
