#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/evidence/observation.h"
#include "engine/finding/problem.h"

namespace proofstone {

/// What is done about work that is not as designed.
enum class DispositionKind {
  rework,
  remove_and_replace,
  use_as_is,  ///< only with the approval of the engineer
  measure_further,
};

/// "rework", "remove and replace", "use as is", "measure further".
std::string_view disposition_word(DispositionKind kind);

struct Disposition {
  DispositionKind kind = DispositionKind::rework;
  std::string approved_by;  ///< the engineer, by name
  Observation signed_off;
};

/// Work or rock that is not as designed, from its finding to its closing.
struct Nonconformance {
  std::string id;
  std::string name;
  std::string zone;   ///< a zone, or a lot
  std::string check;  ///< of the zone; empty: the zone as a whole
  std::string lot;
  Observation opened;
  std::optional<Disposition> disposition;
  std::optional<Observation> closed;
};

enum class NonconformanceState { open, disposed, closed };
NonconformanceState state_of(const Nonconformance& one);

/// What is impossible in its course: closed before it is disposed of, a clock that runs backwards,
/// used as it is without the engineer's name. Located at its fields: "/closed/when".
Problems problems_of_course(const Nonconformance& one);

}  // namespace proofstone
