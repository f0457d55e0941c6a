#include "engine/cover/grass_lining.h"

namespace proofstone {

namespace {

using DescribedGrassLining = TypedMethod<GrassLiningInputs, GrassLiningResult>;

MethodDescription describe_grass_lining() {
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

void describe_grass(DescribedGrassLining& method) {
  method.required({"stem_height", "h", "height of the stems"}, &GrassLiningInputs::stem_height,
                  unit::meter, AllowedRange::positive_to(3));
  method.choice({"condition", "", "condition of the stand"}, &GrassLiningInputs::condition,
                {{GrassCondition::excellent, "excellent", "Cs 580"},
                 {GrassCondition::very_good, "very-good", "Cs 290"},
                 {GrassCondition::good, "good", "Cs 106"},
                 {GrassCondition::fair, "fair", "Cs 24"},
                 {GrassCondition::poor, "poor", "Cs 8.6"}});
  method.choice({"growth", "", "how it grows"}, &GrassLiningInputs::growth,
                {{GrassGrowth::sod, "sod", "spreading, closed turf"},
                 {GrassGrowth::bunch, "bunch", "in clumps"},
                 {GrassGrowth::mixed, "mixed", "both"}});
  method.optional({"stiffness", "Cs", "density and stiffness, SI"}, &GrassLiningInputs::stiffness,
                  unit::number, AllowedRange::positive_to(10'000), "by the condition");
}

void describe_grass_lining_inputs(DescribedGrassLining& method) {
  method.required({"discharge", "Q", "discharge"}, &GrassLiningInputs::discharge,
                  unit::cubic_meter_per_second, AllowedRange::positive_to(1000));
  method.required({"bottom_width", "B", "bottom width; 0 for a V"},
                  &GrassLiningInputs::bottom_width, unit::meter, AllowedRange::between(0, 1000));
  method.defaulted({"side_slope", "Z", "horizontal for 1 vertical"}, &GrassLiningInputs::side_slope,
                   unit::number, AllowedRange::between(0.5, 50));
  method.required({"slope", "S", "slope of the channel"}, &GrassLiningInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(0.5));
  describe_grass(method);
  describe_cover_soil(method);
}

DescribedGrassLining build_grass_lining() {
  DescribedGrassLining method(describe_grass_lining(), &grass_lining);
  describe_grass_lining_inputs(method);
  method.output({"roughness_coefficient", "Cn", "roughness coefficient of the grass"},
                &GrassLiningResult::roughness_coefficient, unit::number);
  method.output({"depth", "d", "depth"}, &GrassLiningResult::depth, unit::meter);
  method.output({"hydraulic_radius", "R", "hydraulic radius"}, &GrassLiningResult::hydraulic_radius,
                unit::meter);
  method.output({"mean_shear", "τo", "mean shear"}, &GrassLiningResult::mean_shear, unit::pascal);
  method.output({"roughness", "n", "roughness"}, &GrassLiningResult::roughness, unit::number);
  method.output({"velocity", "V", "velocity"}, &GrassLiningResult::velocity,
                unit::meter_per_second);
  method.output({"greatest_shear", "τd", "greatest shear"}, &GrassLiningResult::greatest_shear,
                unit::pascal);
  method.output({"cover", "Cf", "cover factor"}, &GrassLiningResult::cover, unit::number);
  method.output({"effective_shear", "τe", "shear that reaches the soil"},
                &GrassLiningResult::effective_shear, unit::pascal);
  method.output({"permissible_shear", "τp", "permissible shear"},
                &GrassLiningResult::permissible_shear, unit::pascal);
  method.output({"margin", "τp/τd", "permissible over greatest shear"}, &GrassLiningResult::margin,
                unit::number);
  method.limit({"Permissible shear at least the greatest shear",
                "FHWA HEC-15 3rd ed. (2005) ch. 4 (from memory; confirm)"},
               [](const GrassLiningInputs& in) {
                 Steps unread;
                 const auto result = grass_lining(in, unread);
                 return result && result->margin.number() > 1 - 1e-9;
               });
  return method;
}

}  // namespace

const Method& grass_lining_method() {
  static const DescribedGrassLining method = build_grass_lining();
  return method;
}

}  // namespace proofstone
