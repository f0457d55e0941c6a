#include "engine/sizing/layer_of_place.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/sizing/apron_table.h"

namespace proofstone {
namespace {

constexpr SourceStanding memory = SourceStanding::memory;

LayerRule multiple_of_d50(double multiple, Length d50, const char* where, Source source,
                          Steps& steps) {
  const Length least = multiple * d50;
  steps.given_rock("D50", "median size by which the rock is called", d50);
  steps.computed("t", fmt::format("thickness {}", where), fmt::format("{:g}·D50", multiple),
                 measure(least), source.sentence());
  return {least, fmt::format("{:g} median sizes {}", multiple, where), std::move(source)};
}

LayerRule at_pier(const LayerOfPlace& at, Length d50, Steps& steps) {
  const Source source{"FHWA HEC-23 Vol. 2 (2009)", "Design Guideline 11", memory};
  auto rule = multiple_of_d50(3, d50, "round a pier", source, steps);
  if (!(at.contraction_scour > rule.least)) return rule;
  rule.least = at.contraction_scour + at.degradation;
  rule.governed_by = "contraction scour and degradation together, round a pier";
  steps.given("ys", "contraction scour", measure(at.contraction_scour));
  steps.given("yd", "long-term lowering of the bed", measure(at.degradation));
  steps.computed("t", "thickness round a pier, since ys > 3·D50", "ys + yd", measure(rule.least),
                 source.sentence());
  return rule;
}

using RuleOfPlace = std::optional<LayerRule>;

Problem missing(const char* key, const char* what) {
  return {"missing-input", std::string("The rule of this place needs ") + what + ".", "",
          std::string("/") + key, "a length"};
}

Expected<RuleOfPlace> on_shore(const LayerOfPlace& at, Steps& steps) {
  if (!at.median_cube) return missing("median_cube", "the cube of the median mass");
  const Source source{"USACE EM 1110-2-1614; Shore Protection Manual (1984)",
                      "layer of graded riprap", memory};
  Length least = std::max(2 * *at.median_cube, Length::feet(1));
  steps.given_rock("Dn50", "cube of the median mass", *at.median_cube);
  if (at.largest_cube) {
    steps.given_rock("Dn100", "cube of the largest mass", *at.largest_cube);
    least = std::max(least, 1.25 * *at.largest_cube);
  }
  steps.computed("t", "thickness under waves", "max[2·Dn50, 1.25·Dn100, 1 ft]", measure(least),
                 source.sentence());
  return RuleOfPlace(
      LayerRule{least, "two stones under waves: max[2·Dn50, 1.25·Dn100, 1 ft]", source});
}

Expected<RuleOfPlace> by_steep_slope(const LayerOfPlace& at, Steps& steps) {
  if (!at.d100_upper) return missing("d100_upper", "the largest stone");
  const Source source{"USACE EM 1110-2-1601 (1994)", "eq. 3-5: layer of 1.5·D100", memory};
  const Length least = 1.5 * *at.d100_upper;
  steps.given_rock("D100", "largest stone, upper limit", *at.d100_upper);
  steps.computed("t", "thickness that the steep-slope equation presumes", "1.5·D100",
                 measure(least), source.sentence());
  return RuleOfPlace(LayerRule{
      least, "1.5 times the largest stone, as the steep-slope equation presumes", source});
}

/// The rules that multiply the median size; nothing where the general rule is the published one.
RuleOfPlace by_median(const LayerOfPlace& at, Length d50, Steps& steps) {
  switch (at.place) {
    case ZonePlace::pier:
      return at_pier(at, d50, steps);
    case ZonePlace::chute:
      return multiple_of_d50(
          2, d50, "on a chute",
          {"Robinson, Rice and Kadavy (1998), Trans. ASAE 41(3)", "layer", memory}, steps);
    case ZonePlace::outfall:
      return multiple_of_d50(apron_depth_over_d50(d50), d50, "below a conduit",
                             {"FHWA HEC-14 3rd ed. (2006)", "Table 10.1", memory}, steps);
    case ZonePlace::basin:
      return multiple_of_d50(2, d50, "in a basin; three on the slope the water enters by",
                             {"FHWA HEC-14 3rd ed. (2006)", "§10.1, lined at least 2·D50 thick",
                              SourceStanding::published},
                             steps);
    case ZonePlace::drop:
      return multiple_of_d50(2, d50, "on a drop",
                             {"Urban Storm Drainage Criteria Manual Vol. 1",
                              "2.0·d50 at beds and structures; a drop printed by the Colorado "
                              "Water Conservation Board has 1.75·d50",
                              memory},
                             steps);
    case ZonePlace::bank:
    case ZonePlace::bed:
    case ZonePlace::abutment:
    case ZonePlace::shore:
      break;
  }
  return std::nullopt;
}

bool general_rule_is_published(ZonePlace place) {
  return place == ZonePlace::bank || place == ZonePlace::bed || place == ZonePlace::abutment;
}

}  // namespace

Expected<std::optional<LayerRule>> layer_rule_of(const LayerOfPlace& at, Steps& steps) {
  if (at.sized_by == SizedBy::usace_steep_slope) return by_steep_slope(at, steps);
  if (at.place == ZonePlace::shore) return on_shore(at, steps);
  if (general_rule_is_published(at.place)) return RuleOfPlace();
  if (!at.d50) return missing("d50_nominal", "the median size by which the rock is called");
  return by_median(at, *at.d50, steps);
}

}  // namespace proofstone
