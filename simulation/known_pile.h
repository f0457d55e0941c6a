#pragma once

#include <vector>

#include "engine/evidence/measured_gradation.h"
#include "simulation/draws.h"

namespace proofstone {

/// A pile whose rock is known. By mass its stones are log-normal in size around a median that goes
/// from one end of the pile to the other, and coarse rock lies at one end.
struct KnownPile {
  Length median = Length::millimeters(300);
  /// Standard deviation of ln(size) by mass at one place: 0.4 is D85/D15 of 2.3.
  double spread = 0.4;
  /// ln of the median at the coarse end over the median in the middle.
  double segregation = 0;

  /// Of the whole pile, by mass.
  double percent_smaller(Length size) const;
  Length size_at(double percent) const;
};

/// How an observer works and errs.
struct Observer {
  StonePicking picking = StonePicking::grid;
  int stones = 100;
  double reading_error = 0;  ///< standard deviation of ln(read size)
  Length rounding;           ///< readings are rounded to multiples of this; none where 0
  /// Stones are sorted into bins whose edges are this much apart; measured where 1 or less.
  double bin_ratio = 1;
  /// The stones of a load are sorted into such bins and each bin is weighed; a stone of one size
  /// weighs now more and now less, by its shape.
  bool weighed = false;
  bool one_end = false;  ///< stones are taken from the coarse third of the pile only
};

/// What the observer makes of the pile.
MeasuredGradation look_at(const KnownPile& pile, const Observer& observer, Draws& draws);

/// Sizes of stones as the observer reads them.
std::vector<Length> read_stones(const KnownPile& pile, const Observer& observer, Draws& draws);

}  // namespace proofstone
