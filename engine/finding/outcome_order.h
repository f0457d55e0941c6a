#pragma once

#include "engine/finding/outcome.h"

namespace proofstone {

/// How much an outcome stops: of several about one thing, the one that stops most is told.
constexpr int weight(Outcome outcome) {
  switch (outcome) {
    case Outcome::meets:
      return 0;
    case Outcome::not_yet_known:
      return 1;
    case Outcome::ask_the_designer:
      return 2;
    case Outcome::falls_short:
      break;
  }
  return 3;
}

}  // namespace proofstone
