#pragma once

#include <string>

#include "engine/method/method.h"

namespace proofstone {

/// A picture of a method: its main output (the size it asks for, where it sizes rock) against its
/// main variable, the rest held as in the first of its check cases that can be computed; the case
/// itself is marked. Empty where no quantity of the method is a single number, or the case does not
/// hold one.
std::string method_plot(const Method& method, double width);

}  // namespace proofstone
