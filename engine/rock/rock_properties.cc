#include "engine/rock/rock_properties.h"

namespace proofstone {

std::string_view angularity_name(Angularity angularity) {
  switch (angularity) {
    case Angularity::angular:
      return "angular";
    case Angularity::rounded:
      return "rounded";
  }
  return {};
}

}  // namespace proofstone
