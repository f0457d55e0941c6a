#include "engine/placing/nonconformance.h"

namespace proofstone {
namespace {

void must_follow(const std::string& earlier, const Observation& later, const std::string& what,
                 const std::string& where, Problems& problems) {
  if (earlier.empty() || later.when.empty() || later.when >= earlier) return;
  problems.push_back({"clock-backwards",
                      what + " before that; a clock is wrong or two are mixed up.", "",
                      where + "/when", "a time from " + earlier + " on"});
}

}  // namespace

std::string_view disposition_word(DispositionKind kind) {
  switch (kind) {
    case DispositionKind::rework:
      return "rework";
    case DispositionKind::remove_and_replace:
      return "remove and replace";
    case DispositionKind::use_as_is:
      return "use as is";
    case DispositionKind::measure_further:
      return "measure further";
  }
  return "rework";
}

NonconformanceState state_of(const Nonconformance& one) {
  if (one.closed) return NonconformanceState::closed;
  return one.disposition ? NonconformanceState::disposed : NonconformanceState::open;
}

Problems problems_of_course(const Nonconformance& one) {
  Problems problems;
  if (one.disposition) {
    const auto& disposition = *one.disposition;
    must_follow(one.opened.when, disposition.signed_off,
                "It is disposed of before it is opened; it stands", "/disposition", problems);
    if (disposition.kind == DispositionKind::use_as_is && disposition.approved_by.empty()) {
      problems.push_back({"missing-approval", "Work is used as it is without the engineer's name.",
                          "", "/disposition/approved_by",
                          "the name of the licensed engineer who approves"});
    }
  }
  if (!one.closed) return problems;
  if (!one.disposition) {
    problems.push_back({"closed-without-disposition",
                        "It is closed, but nobody said what is done about it.", "", "/disposition",
                        "rework, remove and replace, use as is, measure further"});
  } else {
    must_follow(one.disposition->signed_off.when, *one.closed,
                "It is closed before it is disposed of,", "/closed", problems);
  }
  must_follow(one.opened.when, *one.closed, "It is closed before it is opened; it stands",
              "/closed", problems);
  return problems;
}

}  // namespace proofstone
