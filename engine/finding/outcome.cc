#include "engine/finding/outcome.h"

namespace proofstone {

std::string_view outcome_phrase(Outcome outcome) {
  switch (outcome) {
    case Outcome::meets:
      return "meets";
    case Outcome::falls_short:
      return "falls short";
    case Outcome::not_yet_known:
      return "not yet known";
    case Outcome::ask_the_designer:
      return "ask the designer";
  }
  return {};
}

}  // namespace proofstone
