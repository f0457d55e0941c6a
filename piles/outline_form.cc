#include "piles/outline_form.h"

#include <algorithm>
#include <cmath>

namespace proofstone::piles {
namespace {

double area_of(const std::vector<PhotoPoint>& outline) {
  const auto piece = piece_of_outline(outline, "");
  return piece ? piece->area : 0;
}

}  // namespace

OutlineForm form_of_outline(const std::vector<PhotoPoint>& outline, double area) {
  const auto sides = tightest_rectangle(outline);
  OutlineForm form;
  form.box_fill = std::min(1.0, area / (sides.longest * sides.shortest));
  form.elongation = std::log(sides.longest / sides.shortest);
  form.solidity = std::min(1.0, area / area_of(convex_hull(outline)));
  return form;
}

}  // namespace proofstone::piles
