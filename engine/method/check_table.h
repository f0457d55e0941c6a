#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/finding/problem.h"
#include "engine/finding/source.h"

namespace proofstone {

/// What came of one expectation of one check case.
struct CheckOutcome {
  std::string method;
  std::string case_id;
  std::string output;  ///< key of the output; empty where a problem was expected
  bool passed = false;
  double expected_si = 0;
  double computed_si = 0;
  std::string sentence;  ///< "d30: expected 0.62 ft ± 0.01 ft, computed 0.6241 ft"

  std::string about;          ///< what the case is
  std::string inputs;         ///< "velocity 10 ft/s, turbulence high"
  std::string remark;         ///< why print and computation differ, where they do
  Source source;              ///< where the expected value stands
  double tolerance_si = 0;    ///< 0 where a problem was expected
  std::string expected_text;  ///< "0.62 ft", or the code of the problem
  std::string allowed_text;   ///< "0.01 ft" or "0.2 %"
  std::string computed_text;  ///< in the unit of the expected value: "0.6241 ft"

  /// Difference from the expected value over the difference allowed.
  double strain() const;
};

/// Reads a table of published check cases and evaluates each of them by its method.
///
/// A table is `{"method": id, "cases": [...]}`. A case has "id", "about", "source" (document,
/// place, standing), "inputs" as the method reads them, an optional "remark", and one of
///  - "expect": for each output key {"value": text, "within": text} (the difference allowed, as a
///    quantity of the same kind) or {"value": text, "relative": number};
///  - "expect_problem": the code of a Problem that must be among those returned.
///
/// Problems: unreadable or unknown fields, an unknown method or output, a tolerance that is not
/// positive, a repeated case id. A case that misses is an outcome, not a Problem.
Expected<std::vector<CheckOutcome>> run_check_table(std::string_view json_text);

}  // namespace proofstone
