#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "engine/quantity/measure.h"

namespace proofstone {
namespace {

/// Any finite size from far too small to far too large for the trade, of either sign.
rc::Gen<double> any_number() {
  return rc::gen::map(
      rc::gen::pair(rc::gen::inRange(-999999999, 1000000000), rc::gen::inRange(-20, 10)),
      [](const std::pair<int, int>& parts) { return parts.first * std::pow(10.0, parts.second); });
}

RC_GTEST_PROP(ParseMeasure, reads_every_spelling_of_every_unit, ()) {
  const auto& entry = *rc::gen::elementOf(unit_spellings());
  const double value = *any_number();
  const std::string gap = *rc::gen::element<std::string>("", " ", "  ");
  const auto text = exact_text({value, QuantityKind::dimensionless}, unit::number) + gap +
                    std::string(entry.spelling);
  const auto parsed = parse_measure(text, entry.unit.kind);
  RC_ASSERT(static_cast<bool>(parsed));
  RC_ASSERT(parsed->si == value * entry.unit.si_factor);
  RC_ASSERT(parsed->kind == entry.unit.kind);
}

RC_GTEST_PROP(ExactText, reads_back_to_the_same_double, ()) {
  const auto& entry = *rc::gen::elementOf(unit_spellings());
  const Measure measure{*any_number(), entry.unit.kind};
  const auto parsed = parse_measure(exact_text(measure, entry.unit), entry.unit.kind);
  RC_ASSERT(static_cast<bool>(parsed));
  RC_ASSERT(parsed->si == measure.si);
}

RC_GTEST_PROP(Display, is_within_half_a_step_or_two_figures, ()) {
  const auto& entry = *rc::gen::elementOf(unit_spellings());
  const Measure measure{*any_number(), entry.unit.kind};
  const auto system = *rc::gen::element(UnitSystem::us_customary, UnitSystem::si);
  const auto use = *rc::gen::element(LengthUse::ground, LengthUse::rock);
  const auto shown = display(measure, system, use);
  const auto read_back = parse_measure(shown.text, entry.unit.kind);
  RC_ASSERT(static_cast<bool>(read_back));
  // Two figures are within a twentieth, ten whole steps within half a step of nine and a half; what
  // is below a millionth of its unit may read as zero.
  const double unit_value = std::abs(shown.value) > 0 ? measure.si / shown.value : 1;
  RC_ASSERT(std::abs(read_back->si - measure.si) <=
            (0.5 / 9.5 + 1e-9) * std::abs(measure.si) + 1e-6 * std::abs(unit_value));
}

RC_GTEST_PROP(Display, belongs_to_the_system_asked_for, ()) {
  const auto& entry = *rc::gen::elementOf(unit_spellings());
  const auto system = *rc::gen::element(UnitSystem::us_customary, UnitSystem::si);
  const auto shown = display({*any_number(), entry.unit.kind}, system);
  const auto& spellings = unit_spellings();
  const bool at_home =
      shown.unit.empty() || std::any_of(spellings.begin(), spellings.end(), [&](const auto& s) {
        return s.unit.kind == entry.unit.kind && s.unit.symbol == shown.unit &&
               (s.unit.system == system || s.unit.system == UnitSystem::both);
      });
  RC_ASSERT(at_home);
}

RC_GTEST_PROP(ParseMeasure, survives_any_bytes, (const std::string& text)) {
  for (const auto& entry : unit_spellings()) {
    const auto parsed = parse_measure(text, entry.unit.kind);
    if (parsed) {
      RC_ASSERT(std::isfinite(parsed->si));
    } else {
      RC_ASSERT(!parsed.problems().front().code.empty());
    }
  }
}

RC_GTEST_PROP(ParseMeasure, bank_reads_alike_both_ways_round, ()) {
  const int vertical = *rc::gen::inRange(1, 1000);
  const int horizontal = *rc::gen::inRange(1, 1000);
  const auto v = std::to_string(vertical) + "V";
  const auto h = std::to_string(horizontal) + "H";
  const auto one = parse_quantity<Slope>(v + ":" + h);
  const auto other = parse_quantity<Slope>(h + ":" + v);
  const auto angle = parse_quantity<Angle>(v + ":" + h);
  RC_ASSERT(one && other && angle);
  RC_ASSERT(*one == *other);
  RC_ASSERT(std::abs(slope_of(*angle).ratio() / one->ratio() - 1) < 1e-12);
}

}  // namespace
}  // namespace proofstone
