#pragma once

#include <vector>

#include "engine/method/check_table.h"
#include "report/handbook.h"

namespace proofstone {

/// Every expectation of every check table with what this engine computes.
std::vector<CheckOutcome> all_check_outcomes();

/// The section of a method's page with its cases: the expected value beside the computed one, both
/// in the unit of the case.
std::string cases_section(const std::vector<CheckOutcome>& outcomes, const std::string& method);

/// How many values of which standing are reproduced, the tightest, and every remark on a print.
HandbookPage validation_page(const std::vector<CheckOutcome>& outcomes);

/// Every value and formula recalled from memory, by document, to be confirmed against it.
HandbookPage memory_page(const std::vector<CheckOutcome>& outcomes);

}  // namespace proofstone
