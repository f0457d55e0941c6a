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

/// Stones of 8 of those rocks tapped under 35 nodes on each of four photos. How they scatter from
/// rock to rock cannot be told from their sampling; the errors are those of outlines of the same
/// rock.
constexpr SizeFactor tapped_square_15{1.032, layer_square_15.error};
constexpr SizeFactor tapped_square_50{1.132, layer_square_50.error};
constexpr SizeFactor tapped_square_85{1.202, layer_square_85.error};
constexpr SizeFactor tapped_oblique_15{1.020, layer_oblique_15.error};
constexpr SizeFactor tapped_oblique_50{1.080, layer_oblique_50.error};
constexpr SizeFactor tapped_oblique_85{1.164, layer_oblique_85.error};

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
/// Deviation of the study's factors of tapped stones (.95 .88 .91).
constexpr double error_of_tapped_d50 = 0.04;

/// The study's rock was hulls of random points, the leanest of forms. Over five forms (those hulls,
/// quarried blocks, slabs, river stones, all mixed; 20 further piles, true outlines) rock is seen
/// larger for its intermediate axis by 10 %, with a deviation of 6 to 7 % from form to form; that
/// brings the study's factors of heaps to what those piles show (docs/photo-outlines.md). Stones
/// tapped in layers show the same: 1.13 where the study found 1.00.
constexpr double fuller_than_hulls = 1.10;
constexpr double error_of_form = 0.07;

double with_error_of_form(double error) { return std::hypot(error, error_of_form); }

SizeFactor of_any_form(const SizeFactor& of_hulls) {
  return {of_hulls.ratio * fuller_than_hulls, with_error_of_form(of_hulls.error)};
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

SizeFactors in_layer(const SeenAs& seen) {
  SizeFactors factors;
  if (seen.view == PhotoView::straight_on) {
    factors.at_15 = seen.tapped ? tapped_square_15 : layer_square_15;
    factors.at_50 = seen.tapped ? tapped_square_50 : layer_square_50;
    factors.at_85 = seen.tapped ? tapped_square_85 : layer_square_85;
  } else {
    factors.at_15 = seen.tapped ? tapped_oblique_15 : layer_oblique_15;
    factors.at_50 = seen.tapped ? tapped_oblique_50 : layer_oblique_50;
    factors.at_85 = seen.tapped ? tapped_oblique_85 : layer_oblique_85;
  }
  if (seen.narrow) {
    factors.at_15.error = with_error_of_form(error_of_d15);
    factors.at_50.error = with_error_of_form(error_of_d50_of_narrow_photo);
    factors.at_85.error = with_error_of_form(error_of_d85);
  }
  factors.origin =
      rendered_piles(seen.tapped ? "factors of layers by view; count of tapped stones, "
                                   "√(long·short), mostly hidden ones left out"
                                 : "factors of layers by view; visible area, equal-area "
                                   "diameter")
          .sentence();
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

SizeFactors of_tapped_in_heap(PhotoView view) {
  const double median = view == PhotoView::oblique ? 0.91 : 0.88;
  SizeFactors factors;
  factors.at_15 = of_any_form({1.01 * median, error_of_d15});
  factors.at_50 = of_any_form({median, error_of_tapped_d50});
  factors.at_85 = of_any_form({1.08 * median, error_of_d85});
  factors.origin = rendered_piles(
                       "count of tapped stones in heaps; D15 and D85 carried over from D50; 1.10 "
                       "for form")
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
  if (seen.lies == RockLies::in_layer) return in_layer(seen);
  return seen.tapped ? of_tapped_in_heap(seen.view) : of_outlines_in_heap(spread);
}

}  // namespace proofstone
