#include "simulation/draws.h"

#include "engine/evidence/confidence.h"

namespace proofstone {

double Draws::normal() { return normal_quantile(uniform()); }

}  // namespace proofstone
