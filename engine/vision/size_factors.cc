#include "engine/vision/size_factors.h"

#include <fmt/format.h>

#include <cmath>

#include "engine/vision/vision_sources.h"

namespace proofstone {
namespace {

/// Outlines of rock in a layer, photographed 12 to 14 D50 wide: 16 rocks of five forms and six
/// gradations, each laid twice. The errors are what they leave on a rock not seen yet, from rock to
/// rock, by Student's t (docs/photo-outlines.md, "error left").
constexpr SizeFactor layer_square_15{0.857, 0.039};
constexpr SizeFactor layer_square_50{1.023, 0.038};
constexpr SizeFactor layer_square_85{1.172, 0.035};
constexpr SizeFactor layer_oblique_15{0.847, 0.063};
constexpr SizeFactor layer_oblique_50{0.993, 0.046};
constexpr SizeFactor layer_oblique_85{1.126, 0.035};

/// What is left of the scatter of D15 and D85 when photos of the first study are many:
/// (SD₆² − SD₁²/6)/(1 − 1/6) of one photo and of six pooled, 15 and 11 %, 13 and 9 %.
constexpr double error_of_d15 = 0.10;
constexpr double error_of_d85 = 0.08;
/// Deviation of the factors of the views other than straight on to a layer (.83 .81 .89), and of
/// four gradations straight on (.92 .89 .89 .95).
constexpr double error_of_d50_in_heap = 0.05;
constexpr double error_of_d50_of_narrow_photo = 0.03;
/// Deviation of the factors of D15 over the views (.79 .77 .73 .72), once the spread is known.
constexpr double error_of_d15_of_known_spread = 0.05;
/// Deviation of the factors of tapped stones square to layers of four gradations (.92 .89 .89 .95).
constexpr double error_of_tapped_d50_square_layer = 0.03;
/// Deviation of the factors of tapped stones (.95 .88 .91).
constexpr double error_of_tapped_d50_else = 0.04;

/// The study's rock was hulls of random points, the leanest of forms. Over five forms (those hulls,
/// quarried blocks, slabs, river stones, all mixed; 20 further piles, true outlines) rock is seen
/// larger for its intermediate axis by 10 %, with a deviation of 6 to 7 % from form to form; that
/// brings the study's factors of heaps to what those piles show (docs/photo-outlines.md).
constexpr double fuller_than_hulls = 1.10;
constexpr double error_of_form = 0.07;

double with_error_of_form(double error) { return std::hypot(error, error_of_form); }

SizeFactor of_any_form(const SizeFactor& of_hulls) {
  return {of_hulls.ratio * fuller_than_hulls, with_error_of_form(of_hulls.error)};
}

bool square_to_layer(PhotoView view, RockLies lies) {
  return view == PhotoView::straight_on && lies == RockLies::in_layer;
}

double d15_ratio_of(SizeSpread spread) {
  switch (spread) {
    case SizeSpread::very_uniform:
      return 0.70;
    case SizeSpread::class_like:
      return 0.76;
    case SizeSpread::broad:
      return 0.83;
    case SizeSpread::very_broad:
      break;
  }
  return 0.87;
}

SizeFactors of_outlines_in_layer(PhotoView view, bool narrow) {
  SizeFactors factors;
  const bool square = view == PhotoView::straight_on;
  factors.at_15 = square ? layer_square_15 : layer_oblique_15;
  factors.at_50 = square ? layer_square_50 : layer_oblique_50;
  factors.at_85 = square ? layer_square_85 : layer_oblique_85;
  if (narrow) {
    factors.at_15.error = with_error_of_form(error_of_d15);
    factors.at_50.error = with_error_of_form(error_of_d50_of_narrow_photo);
    factors.at_85.error = with_error_of_form(error_of_d85);
  }
  factors.origin =
      rendered_piles("factors of layers by view; visible area, equal-area diameter").sentence();
  return factors;
}

SizeFactors of_outlines_in_heap(const std::optional<SizeSpread>& spread) {
  SizeFactors factors;
  // The factors by spread were found square to a layer; heaps lie lower by 0.76/0.79.
  factors.at_15 = of_any_form(
      spread ? SizeFactor{d15_ratio_of(*spread) * 0.76 / 0.79, error_of_d15_of_known_spread}
             : SizeFactor{0.76, error_of_d15});
  factors.at_50 = of_any_form({0.85, error_of_d50_in_heap});
  factors.at_85 = of_any_form({1.00, error_of_d85});
  factors.origin =
      rendered_piles("factors of heaps; visible area, equal-area diameter; 1.10 for form")
          .sentence();
  return factors;
}

SizeFactors of_tapped(PhotoView view, RockLies lies) {
  double median = 1.00;
  if (lies == RockLies::in_heap) {
    median = view == PhotoView::oblique ? 0.91 : 0.88;
  } else if (view == PhotoView::oblique) {
    median = 0.95;
  }
  SizeFactors factors;
  factors.at_15 = {1.01 * median, error_of_d15};
  factors.at_50 = {median, square_to_layer(view, lies) ? error_of_tapped_d50_square_layer
                                                       : error_of_tapped_d50_else};
  factors.at_85 = {1.08 * median, error_of_d85};
  factors.origin =
      rendered_piles(square_to_layer(view, lies)
                         ? "count of tapped stones, √(long·short), mostly hidden ones left out"
                         : "count of tapped stones; D15 and D85 carried over from D50")
          .sentence();
  return factors;
}

SizeFactor between(const SizeFactor& low, const SizeFactor& high, double part) {
  return {low.ratio + part * (high.ratio - low.ratio), low.error + part * (high.error - low.error)};
}

}  // namespace

SizeFactor SizeFactors::at(double percent) const {
  if (percent <= 15) return at_15;
  if (percent < 50) return between(at_15, at_50, (percent - 15) / 35);
  if (percent < 85) return between(at_50, at_85, (percent - 50) / 35);
  return at_85;
}

void SizeFactors::say(Steps& steps) const {
  for (const int percent : {15, 50, 85}) {
    const auto factor = at(percent);
    steps.given(fmt::format("k{}", percent),
                fmt::format("D{} as photographed over D{} of the whole pile", percent, percent),
                measure(factor.ratio), origin);
    steps.given(fmt::format("e_k{}", percent), "its error, which more photos do not reduce",
                measure(factor.error), origin);
  }
}

SizeFactors size_factors(const SeenAs& seen, const std::optional<SizeSpread>& spread,
                         const PhotoCalibration* calibration) {
  if (calibration != nullptr) {
    const double error = calibration->error.number();
    return {{calibration->d15.number(), error},
            {calibration->d50.number(), error},
            {calibration->d85.number(), error},
            "calibration of this site: " + calibration->from};
  }
  if (seen.tapped) return of_tapped(seen.view, seen.lies);
  if (seen.lies == RockLies::in_heap) return of_outlines_in_heap(spread);
  return of_outlines_in_layer(seen.view, seen.narrow);
}

}  // namespace proofstone
