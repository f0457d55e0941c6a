#include "engine/cover/grass_lining.h"

namespace proofstone {

namespace {

using Inputs = GrassLiningInputs;
using Result = GrassLiningResult;
using Described = TypedMethod<Inputs, Result>;

MethodDescription describe() {
  MethodDescription about;
  about.id = "grass-lining";
  about.title = "Grass lining";
  about.purpose =
      "Depth of flow over grass in a channel or swale, the shear that reaches the soil, and "
      "whether "
      "grass and soil bear it; for the frequent flow it tells where a topsoil cover survives.";
  about.group = MethodGroup::cover;
  about.sources = {
      {"FHWA HEC-15 3rd ed. (2005), FHWA-NHI-05-114", "ch. 4", SourceStanding::memory}};
  about.cautions = {
      "It holds for uniform, established stands: until then a blanket must carry the shear.",
      "Trails, shade, bare spots and sediment take away what the cover factor counts on."};
  return about;
}

void describe_grass(Described& method) {
  method.required({"stem_height", "h", "height of the stems"}, &Inputs::stem_height, unit::meter,
                  AllowedRange::positive_to(3));
  method.choice({"condition", "", "condition of the stand"}, &Inputs::condition,
                {{GrassCondition::excellent, "excellent", "Cs 580"},
                 {GrassCondition::very_good, "very-good", "Cs 290"},
                 {GrassCondition::good, "good", "Cs 106"},
                 {GrassCondition::fair, "fair", "Cs 24"},
                 {GrassCondition::poor, "poor", "Cs 8.6"}});
  method.choice({"growth", "", "how it grows"}, &Inputs::growth,
                {{GrassGrowth::sod, "sod", "spreading, closed turf"},
                 {GrassGrowth::bunch, "bunch", "in clumps"},
                 {GrassGrowth::mixed, "mixed", "both"}});
  method.optional({"stiffness", "Cs", "density and stiffness, SI"}, &Inputs::stiffness,
                  unit::number, AllowedRange::positive_to(10'000), "by the condition");
}

void describe_inputs(Described& method) {
  method.required({"discharge", "Q", "discharge"}, &Inputs::discharge, unit::cubic_meter_per_second,
                  AllowedRange::positive_to(1000));
  method.required({"bottom_width", "B", "bottom width; 0 for a V"}, &Inputs::bottom_width,
                  unit::meter, AllowedRange::between(0, 1000));
  method.defaulted({"side_slope", "Z", "horizontal for 1 vertical"}, &Inputs::side_slope,
                   unit::number, AllowedRange::between(0.5, 50));
  method.required({"slope", "S", "slope of the channel"}, &Inputs::slope, unit::rise_per_run,
                  AllowedRange::positive_to(0.5));
  describe_grass(method);
  describe_cover_soil(method);
}

Described build() {
  Described method(describe(), &grass_lining);
  describe_inputs(method);
  method.output({"roughness_coefficient", "Cn", "roughness coefficient of the grass"},
                &Result::roughness_coefficient, unit::number);
  method.output({"depth", "d", "depth"}, &Result::depth, unit::meter);
  method.output({"hydraulic_radius", "R", "hydraulic radius"}, &Result::hydraulic_radius,
                unit::meter);
  method.output({"mean_shear", "τo", "mean shear"}, &Result::mean_shear, unit::pascal);
  method.output({"roughness", "n", "roughness"}, &Result::roughness, unit::number);
  method.output({"velocity", "V", "velocity"}, &Result::velocity, unit::meter_per_second);
  method.output({"greatest_shear", "τd", "greatest shear"}, &Result::greatest_shear, unit::pascal);
  method.output({"cover", "Cf", "cover factor"}, &Result::cover, unit::number);
  method.output({"effective_shear", "τe", "shear that reaches the soil"}, &Result::effective_shear,
                unit::pascal);
  method.output({"permissible_shear", "τp", "permissible shear"}, &Result::permissible_shear,
                unit::pascal);
  method.output({"margin", "τp/τd", "permissible over greatest shear"}, &Result::margin,
                unit::number);
  method.limit({"Permissible shear at least the greatest shear",
                "FHWA HEC-15 3rd ed. (2005) ch. 4 (from memory; confirm)"},
               [](const Inputs& in) {
                 Steps unread;
                 const auto result = grass_lining(in, unread);
                 return result && result->margin.number() > 1 - 1e-9;
               });
  return method;
}

}  // namespace

const Method& grass_lining_method() {
  static const Described method = build();
  return method;
}

}  // namespace proofstone
