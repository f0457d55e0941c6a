#pragma once

#include "engine/evidence/blend.h"
#include "engine/evidence/measured_gradation.h"

namespace proofstone {

/// What the looks at one rock say of its blend with another, whose gradation is taken as exact (a
/// certificate states no uncertainty; the caution says so).
///
/// A share of the blend is F = w·F₁ + (1−w)·F₂ with sampling variance w²·F₁(1−F₁)/n. It is stated
/// as if n/w stones of the blend itself had been counted, whose variance w·F(1−F)/n is never
/// smaller (F(1−F) ≥ w·F₁(1−F₁), the law of total variance): the careful side.
///
/// `option` is one that two_pile_blends returned for the curve of `measured`.
MeasuredGradation evidence_of_blend(const MeasuredGradation& measured, const BlendOption& option);

}  // namespace proofstone
