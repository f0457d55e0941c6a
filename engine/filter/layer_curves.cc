#include "engine/filter/layer_curves.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

CurvePoints sieved(const CurvePoints& points, SizeMeaning meaning) {
  CurvePoints converted;
  converted.reserve(points.size());
  for (const auto& point : points) {
    converted.push_back(
        {convert_size(point.size, meaning, SizeMeaning::sieve), point.percent_smaller});
  }
  return converted;
}

bool same_sizes(const CurvePoints& one, const CurvePoints& other) {
  return std::equal(one.begin(), one.end(), other.begin(), other.end(),
                    [](const auto& a, const auto& b) { return a.size == b.size; });
}

std::optional<Length> size_at(const CurvePoints& curve, double percent) {
  return curve.empty() ? std::nullopt : size_on_curve(curve, percent);
}

}  // namespace

LayerCurves::LayerCurves(std::string name, const Gradation& curve)
    : name_(std::move(name)),
      is_band_(false),
      coarse_(sieved(curve.points(), curve.basis().size)),
      fine_(coarse_) {}

LayerCurves::LayerCurves(std::string name, const GradationBand& band)
    : name_(std::move(name)),
      is_band_(true),
      coarse_(sieved(band.coarse_limit(), band.basis().size)),
      fine_(sieved(band.fine_limit(), band.basis().size)) {}

std::optional<Length> LayerCurves::coarsest(double percent) const {
  return size_at(coarse_, percent);
}

std::optional<Length> LayerCurves::finest(double percent) const { return size_at(fine_, percent); }

std::optional<Length> LayerCurves::middle(double percent) const {
  if (is_band_ && same_sizes(coarse_, fine_)) {
    CurvePoints mean = coarse_;
    for (std::size_t i = 0; i < mean.size(); ++i) {
      mean[i].percent_smaller = (coarse_[i].percent_smaller + fine_[i].percent_smaller) / 2;
    }
    return size_at(mean, percent);
  }
  const auto large = coarsest(percent);
  const auto small = finest(percent);
  if (!large || !small) return std::nullopt;
  return *small * std::sqrt(*large / *small);
}

}  // namespace proofstone
