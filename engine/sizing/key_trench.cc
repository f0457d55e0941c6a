#include "engine/sizing/key_trench.h"

#include <algorithm>
#include <cmath>

namespace proofstone {
namespace {

constexpr double layers_deep = 2;
constexpr double layers_wide = 2;
constexpr Length least_width = Length::feet(3);

const char* const practice_of_key_trench = "common practice; no published figure is held here";
const char* const handbook = "WES Streambank Handbook (1997) §7.1.4.5";
const char* const drainage_manual =
    "common practice; Urban Storm Drainage Criteria Manual Vol. 1: ends over 3 ft at least (from "
    "memory; confirm)";

TypedMethod<KeyTrenchInputs, KeyTrenchResult> build_key_trench() {
  MethodDescription about;
  about.id = "key-trench";
  about.title = "Keys into the bank";
  about.purpose =
      "Depth, width, rock and spacing of the trenches that key a bank's layer in at its ends and "
      "between them.";
  about.group = MethodGroup::layer;
  about.sources = {
      {"WES Stream Investigation and Streambank Stabilization Handbook (1997)",
       "§7.1.4.5: tiebacks of a stone toe at 1 to 2 channel widths, at least one at the downstream "
       "end",
       SourceStanding::published},
      {"Urban Storm Drainage Criteria Manual Vol. 1", "ends half as thick again over at least 3 ft",
       SourceStanding::memory},
      {"trade", "keys twice as deep and twice as wide as the layer is thick, sides 1V:1H",
       SourceStanding::common_practice}};
  about.cautions = {
      "The downstream end is the more critical one. At the toe a key goes as deep as the toe does.",
      "Training slides of unknown author show keys angled 20 to 30° to the high flow.",
      "Where the bank may be worn back behind an end, carry the key as far into the bank as that; "
      "it is not in these figures.",
      "A trench beside a bank can bring the bank down: slope or shore it, and keep people out of "
      "unshored trenches."};
  TypedMethod<KeyTrenchInputs, KeyTrenchResult> method(about, &key_trench);
  method.required({"layer_thickness", "T", "thickness of the layer"},
                  &KeyTrenchInputs::layer_thickness, unit::foot, AllowedRange::positive_to(30));
  method.required({"slope_length", "Ls", "along the bank, from the toe to the top of the rock"},
                  &KeyTrenchInputs::slope_length, unit::foot, AllowedRange::positive_to(1000));
  method.optional({"channel_width", "W", "width of the water in the channel"},
                  &KeyTrenchInputs::channel_width, unit::foot, AllowedRange::positive_to(1e5),
                  "no spacing is given");
  method.optional({"protected_length", "L", "length of the layer along the bank, ends included"},
                  &KeyTrenchInputs::protected_length, unit::foot, AllowedRange::positive_to(1e6),
                  "the keys are not counted");
  method.optional({"key_depth", "dk", "depth of a key from the layer's surface, square to it"},
                  &KeyTrenchInputs::key_depth, unit::foot, AllowedRange::positive_to(100), "2·T");
  method.optional({"bottom_width", "bk", "width of its bottom, along the bank"},
                  &KeyTrenchInputs::bottom_width, unit::foot, AllowedRange::positive_to(100),
                  "max(2·T, 3 ft)");
  method.defaulted({"trench_slope", "1/zk", "slope of the trench's sides"},
                   &KeyTrenchInputs::trench_slope, unit::rise_per_run,
                   AllowedRange::between(0.2, 20));
  method.defaulted({"spacing_widths", "k", "channel widths between keys"},
                   &KeyTrenchInputs::spacing_widths, unit::number, AllowedRange::between(0.1, 20));
  method.output({"depth", "dk", "depth of a key from the layer's surface"}, &KeyTrenchResult::depth,
                unit::foot);
  method.output({"bottom_width", "bk", "width of its bottom"}, &KeyTrenchResult::bottom_width,
                unit::foot);
  method.output({"top_width", "Bk", "width at the underside of the layer"},
                &KeyTrenchResult::top_width, unit::foot);
  method.output({"cross_section", "Ak", "rock of a key below the layer, for each unit of length"},
                &KeyTrenchResult::cross_section, unit::square_foot);
  method.output({"volume", "Vk", "rock of one key"}, &KeyTrenchResult::volume, unit::cubic_yard);
  method.output({"spacing", "sk", "between keys, at most; 0 where no width is given"},
                &KeyTrenchResult::spacing, unit::foot);
  method.output({"keys", "N", "keys, both ends counted; 0 where no length is given"},
                &KeyTrenchResult::keys, unit::number);
  method.output({"total_volume", "V", "rock of all keys"}, &KeyTrenchResult::total_volume,
                unit::cubic_yard);
  method.limit({"One to two channel widths between keys", handbook}, [](const KeyTrenchInputs& in) {
    const double k = in.spacing_widths.number();
    return k > 1 - 1e-9 && k < 2 + 1e-9;
  });
  return method;
}

/// Spacing, number and all their rock, as far as width and length are known.
void space_keys(const KeyTrenchInputs& in, KeyTrenchResult& result, Steps& steps) {
  if (!in.channel_width) return;
  result.spacing = in.spacing_widths.number() * *in.channel_width;
  steps.given("W", "width of the water in the channel", measure(*in.channel_width));
  steps.given("k", "channel widths between keys: one or two", measure(in.spacing_widths), handbook);
  steps.computed("sk", "between keys, at most", "k·W", measure(result.spacing));
  if (!in.protected_length) return;
  // The last digit of a length that divides evenly must not add a key.
  const double between = std::ceil(*in.protected_length / result.spacing - 1e-9);
  result.keys = Dimensionless::number(between + 1);
  result.total_volume = result.keys.number() * result.volume;
  steps.given("L", "length of the layer along the bank", measure(*in.protected_length));
  steps.computed("N", "keys, one at each end", "⌈L/sk⌉ + 1", measure(result.keys));
  steps.computed("V", "rock of all keys", "N·Vk", measure(result.total_volume));
}

}  // namespace

Expected<KeyTrenchResult> key_trench(const KeyTrenchInputs& inputs, Steps& steps) {
  const Length T = inputs.layer_thickness;
  KeyTrenchResult result;
  result.depth = inputs.key_depth.value_or(layers_deep * T);
  result.bottom_width = inputs.bottom_width.value_or(std::max(layers_wide * T, least_width));
  if (!(result.depth > T)) {
    return Problem{"outside-allowed", "The key is no deeper than the layer itself.", "",
                   "/key_depth", "more than layer_thickness"};
  }
  const double below = (result.depth - T).feet();
  const double b = result.bottom_width.feet();
  const double z = 1 / inputs.trench_slope.ratio();
  result.top_width = Length::feet(b + 2 * z * below);
  result.cross_section = Area::square_feet((b + z * below) * below);
  result.volume =
      Volume::cubic_feet(result.cross_section.square_feet() * inputs.slope_length.feet());

  steps.given("T", "thickness of the layer", measure(T));
  steps.given("Ls", "along the bank, from the toe to the top of the rock",
              measure(inputs.slope_length));
  steps.computed("dk", "depth of a key from the layer's surface",
                 inputs.key_depth ? "as given" : "2·T", measure(result.depth),
                 practice_of_key_trench);
  steps.computed("bk", "width of its bottom", inputs.bottom_width ? "as given" : "max(2·T, 3 ft)",
                 measure(result.bottom_width), drainage_manual);
  steps.given("1/zk", "slope of the trench's sides", measure(inputs.trench_slope),
              practice_of_key_trench);
  steps.computed("Ak", "rock of a key below the layer, for each unit of length",
                 "(bk + zk·(dk − T))·(dk − T)", measure(result.cross_section));
  steps.computed("Vk", "rock of one key", "Ak·Ls", measure(result.volume));
  space_keys(inputs, result, steps);
  return result;
}

const Method& key_trench_method() {
  static const TypedMethod<KeyTrenchInputs, KeyTrenchResult> method = build_key_trench();
  return method;
}

}  // namespace proofstone
