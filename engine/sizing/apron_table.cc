#include "engine/sizing/apron_table.h"

#include "engine/quantity/rounding.h"

namespace proofstone {
namespace {

constexpr ApronClass apron_classes[] = {{1, 5, 4, 3.5},  {2, 6, 4, 3.3},  {3, 10, 5, 2.4},
                                        {4, 14, 6, 2.2}, {5, 20, 7, 2.0}, {6, 22, 8, 2.0}};

}  // namespace

std::optional<ApronClass> apron_class_for(Length d50) {
  for (const auto& row : apron_classes) {
    if (d50.inches() <= row.d50_in + rounding) return row;
  }
  return std::nullopt;
}

double apron_depth_over_d50(Length d50) {
  double depth = apron_classes[0].depth_over_d50;
  for (const auto& row : apron_classes) {
    if (d50.inches() > row.d50_in - rounding) depth = row.depth_over_d50;
  }
  return depth;
}

}  // namespace proofstone
