#pragma once

#include <string>
#include <vector>

namespace proofstone {

/// One page of the handbook, in Markdown, or a picture on one, in SVG.
struct HandbookPage {
  std::string file_name;  ///< "usace-bank-and-bed.md", "plot-usace-bank-and-bed.svg"
  std::string text;
};

/// The handbook: an index, a page for every method with a plot, its inputs, limits, sources and
/// published checks beside what this engine computes, a page of the rock classes, one of the
/// validation and one of what is recalled from memory. Made from the descriptions in the code and
/// the check tables, so that it cannot fall behind them.
std::vector<HandbookPage> handbook();

}  // namespace proofstone
