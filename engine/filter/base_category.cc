#include "engine/filter/base_category.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/filter/filter_bands.h"
#include "engine/quantity/rounding.h"
#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

constexpr Length millimeters(double value) { return Length::millimeters(value); }
const char* const procedure = "NRCS NEH 633 ch. 26 (from memory; confirm)";

Problem does_not_reach(const std::string& what, const std::string& allowed) {
  return {"curve-does-not-reach", what, "", "/smaller", allowed};
}

/// Control point 2 before narrowing. Where the curve starts above 15 %, d15 is smaller than its
/// first size, which is then on the safe side.
Length permeable_d15(const CurvePoints& coarsest, FilterEdition edition, Steps& steps) {
  const auto reached = size_on_curve(coarsest, 15);
  const Length d15 = reached.value_or(coarsest.front().size);
  steps.given_grain("d15",
                    reached ? "of the soil before regrading"
                            : "of the soil: smaller than its finest sieve, taken for it",
                    d15);
  const bool earlier = edition == FilterEdition::of_1994;
  const Length least = std::max((earlier ? 4 : 5) * d15, millimeters(0.1));
  steps.computed_grain("D15F", "least, to let the water out",
                       earlier ? "4·d15, not below 0.1 mm" : "5·d15, not below 0.1 mm", least,
                       earlier ? "NRCS NEH 633 ch. 26 (1994) (from memory; confirm)"
                               : "NRCS NEH 633 ch. 26 (2017) (from memory, second-hand; confirm)");
  return least;
}

void narrow(FilterLimits& limits, Steps& steps) {
  // Gap-graded bands are kept out: coarse over fine limit at most 5 at and below 60 %.
  limits.min_d15 = std::max(limits.permeable_d15, limits.max_d15 / 5);
  steps.computed_grain("D15F", "least, so that the band is no wider than five",
                       "not below D15F,max/5", limits.min_d15, procedure);
  limits.max_d10 = limits.max_d15 / 1.2;
  limits.min_d10 = limits.min_d15 / 1.2;
  limits.max_d60 = 6 * limits.max_d10;
  limits.min_d60 = limits.max_d60 / 5;
  limits.min_d5 = sieve::no_200;
  limits.max_d100 = sieve::three_inch;
  limits.max_d90 = max_filter_d90(limits.min_d10);
  steps.computed_grain("D60F", "largest", "6·D15F,max/1.2", limits.max_d60, procedure);
  steps.computed_grain("D60F", "least", "D60F,max/5", limits.min_d60, procedure);
  steps.computed_grain("D10F", "least", "D15F,min/1.2", limits.min_d10, procedure);
  steps.computed_grain("D90F", "largest, against segregation", "by the least D10F", limits.max_d90,
                       procedure);
}

int category_of(double fines) {
  if (fines > 85) return 1;
  if (fines >= 40) return 2;
  return fines >= 15 ? 3 : 4;
}

const char* retention_formula(int category, Dispersion dispersion) {
  const bool disperses = dispersion == Dispersion::yes;
  switch (category) {
    case 1:
      return disperses ? "6.5·d85, not below 0.2 mm" : "9·d85, not below 0.2 mm";
    case 2:
      return disperses ? "0.5 mm" : "0.7 mm";
    case 3:
      return "(40 − A)/25·(4·d85 − 0.7 mm) + 0.7 mm";
    default:
      return "4·d85";
  }
}

}  // namespace

CurvePoints regraded(const CurvePoints& curve) {
  const double passing = percent_on_curve(curve, sieve::no_4);
  if (passing >= 100 - rounding || !(passing > 0) || curve.front().size >= sieve::no_4) {
    return curve;
  }
  CurvePoints part;
  for (const auto& point : curve) {
    if (point.size < sieve::no_4) {
      part.push_back({point.size, std::min(100.0, 100 * point.percent_smaller / passing)});
    }
  }
  part.push_back({sieve::no_4, 100});
  return part;
}

Length max_filter_d15(double fines, Length base_d85, Dispersion dispersion) {
  const double d85 = base_d85.millimeters();
  const bool disperses = dispersion == Dispersion::yes;
  switch (category_of(fines)) {
    case 1:
      return millimeters(std::max((disperses ? 6.5 : 9.0) * d85, 0.2));
    case 2:
      return millimeters(disperses ? 0.5 : 0.7);
    case 3: {
      const double coarse_end = std::max(4 * d85, 0.7);
      return millimeters((40 - fines) / (40 - 15) * (coarse_end - 0.7) + 0.7);
    }
    default:
      return millimeters(4 * d85);
  }
}

Length max_filter_d90(Length min_d10) {
  struct Row {
    double below_d10;
    double d90;
  };
  constexpr std::array<Row, 5> rows{{{0.5, 20}, {1, 25}, {2, 30}, {5, 40}, {10, 50}}};
  for (const auto& row : rows) {
    if (min_d10.millimeters() < row.below_d10) return millimeters(row.d90);
  }
  return millimeters(60);
}

namespace {

/// Category, d85 and the largest D15 of one sample.
Expected<FilterLimits> retention_limits(const FilterBase& base, const FilterChoices& choices,
                                        Steps& steps) {
  const auto passing_no_4 = known_percent(base.finest, sieve::no_4);
  if (!passing_no_4 && choices.regrading == Regrading::by_rule) {
    return does_not_reach("The curve does not tell what passes the No. 4 sieve.",
                          "the percent passing 4.75 mm");
  }
  const bool regrade = choices.regrading == Regrading::by_rule;
  const auto fine = regrade ? regraded(base.finest) : base.finest;
  const auto fines = known_percent(fine, sieve::no_200);
  if (!fines) {
    return does_not_reach("The curve does not tell what passes the No. 200 sieve.",
                          "the percent passing 0.075 mm: wash the soil over the No. 200 sieve");
  }
  const auto d85 = size_on_curve(fine, 85);
  FilterLimits limits;
  limits.fines = *fines;
  limits.category = category_of(*fines);
  // In category 2 the limit does not hang on d85; elsewhere it must be known.
  if (!d85 && limits.category != 2) {
    return does_not_reach("The curve does not reach d85 of the soil.",
                          "percents smaller down to below and up to above 85 %");
  }
  limits.base_d85 = d85.value_or(fine.front().size);
  if (regrade && *passing_no_4 < 100) {
    steps.given("P4", "passes the No. 4 sieve",
                Measure{*passing_no_4 / 100, QuantityKind::dimensionless});
  }
  steps.computed("A", "passes the No. 200 sieve, of what passes No. 4",
                 regrade ? "P200·100/P4" : "P200",
                 measure(Dimensionless::of(*fines, unit::percent)), procedure);
  steps.computed("cat", "category of the base soil",
                 "A > 85: 1; 40 to 85: 2; 15 to 40: 3; below: 4",
                 measure(static_cast<double>(limits.category)), procedure);
  if (d85) steps.computed_grain("d85", "of the regraded soil", "", limits.base_d85);
  limits.max_d15 = max_filter_d15(*fines, limits.base_d85, choices.dispersion);
  steps.computed_grain("D15F", "largest, to hold the soil",
                       retention_formula(limits.category, choices.dispersion), limits.max_d15,
                       procedure);
  return limits;
}

}  // namespace

Expected<FilterLimits> filter_limits(const FilterBase& base, const FilterChoices& choices,
                                     Steps& steps) {
  return filter_limits(std::vector<FilterBase>{base}, choices, steps);
}

Expected<FilterLimits> filter_limits(const std::vector<FilterBase>& samples,
                                     const FilterChoices& choices, Steps& steps) {
  std::optional<FilterLimits> strictest;
  Steps retention;
  Steps drainage;
  Length least;
  std::size_t drained = 0;
  for (std::size_t i = 0; i < samples.size(); ++i) {
    Steps own;
    auto limits = retention_limits(samples[i], choices, own);
    if (!limits) return limits.problems();
    limits->retained = i;
    if (!strictest || limits->max_d15 < strictest->max_d15) {
      strictest = *limits;
      retention = std::move(own);
    }
    Steps permeability;
    const Length permeable = permeable_d15(samples[i].coarsest, choices.edition, permeability);
    if (i > 0 && permeable <= least) continue;
    least = permeable;
    drained = i;
    drainage = std::move(permeability);
  }
  FilterLimits limits = strictest.value_or(FilterLimits{});
  limits.permeable_d15 = least;
  limits.drained = drained;
  steps.append(retention);
  steps.append(drainage);
  if (limits.permeable_d15 > limits.max_d15) {
    return Problem{
        "no-filter-fits",
        fmt::format("To let the water out D15 must be {} mm or more, to hold the soil {} "
                    "mm or less.",
                    significant(limits.permeable_d15.millimeters(), 3),
                    significant(limits.max_d15.millimeters(), 3)),
        "", "", "finer sieving or a hydrometer test of the soil; a geotextile"};
  }
  narrow(limits, steps);
  return limits;
}

FilterLimits narrowed_to(const FilterLimits& limits, Length max_d15) {
  FilterLimits narrower = limits;
  narrower.max_d15 = std::min(limits.max_d15, max_d15);
  Steps not_shown;
  narrow(narrower, not_shown);
  return narrower;
}

Expected<GradationBand> filter_band_of(const FilterLimits& limits) {
  // The fine side goes on as straight as from its D15 to its D60.
  const double to_the_end = (100.0 - 60) / (60 - 15);
  const Length fine_end = std::min(
      limits.min_d60 * std::pow(limits.min_d60 / limits.min_d15, to_the_end), limits.max_d100);
  return GradationBand::from_size_windows(
      {{5, std::min(limits.min_d5, limits.min_d15), std::nullopt},
       {15, limits.min_d15, limits.max_d15},
       {60, limits.min_d60, std::min(limits.max_d60, limits.max_d90)},
       {90, std::nullopt, limits.max_d90},
       {100, fine_end, limits.max_d100}},
      sieved_by_mass);
}

}  // namespace proofstone
