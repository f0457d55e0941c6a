#pragma once

#include "engine/finding/problem.h"

namespace proofstone {

/// Problems of one file, at most twenty of them and then how many more: a table with a wrong unit
/// has one mistake and a thousand wrong rows.
class ProblemList {
 public:
  void add(Problem problem);
  void add(const Problems& problems);
  bool empty() const { return problems_.empty(); }
  /// The problems, closed by the number of those left out. Precondition: not empty.
  Problems take();

 private:
  Problems problems_;
  int left_out_ = 0;
};

}  // namespace proofstone
