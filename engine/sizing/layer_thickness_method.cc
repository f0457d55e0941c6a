#include "engine/method/typed_method.h"
#include "engine/sizing/layer_thickness.h"
#include "engine/sizing/setting_words.h"

namespace proofstone {

namespace {

/// A member that stands in the part all places share.
template <class T>
T LayerThicknessInputs::* at(T LayerOfPlace::* shared) {
  return shared;
}

TypedMethod<LayerThicknessInputs, LayerThicknessResult> build_layer_thickness() {
  MethodDescription about;
  about.id = "layer-thickness";
  about.title = "Thickness of a rock layer";
  about.purpose =
      "Least thickness of a layer of rock, from its sizes and by the rule of its place.";
  about.group = MethodGroup::layer;
  about.sources = {
      {"USACE EM 1110-2-1601 (1970)",
       "riprap gradation criteria, layer thickness (1): D100 and "
       "1.5·D50",
       SourceStanding::published},
      {"USACE EM 1110-2-1601 (1994)", "para. 3-2h: 12 in, under water", SourceStanding::memory},
      {"FHWA HEC-23 Vol. 2 (2009)", "Design Guidelines 4, 11 (piers) and 14 (abutments)",
       SourceStanding::memory},
      {"FHWA HEC-14 3rd ed. (2006)", "§10.1: basins lined at least 2·D50 thick",
       SourceStanding::published},
      {"FHWA HEC-14 3rd ed. (2006)", "Table 10.1: aprons; §10.1: 3·D50 on a basin's entry slope",
       SourceStanding::memory},
      {"Robinson, Rice and Kadavy (1998), Trans. ASAE 41(3)", "chutes: 2·D50",
       SourceStanding::memory},
      {"Urban Storm Drainage Criteria Manual Vol. 1", "drops: 2.0·d50", SourceStanding::memory},
      {"Colorado Water Conservation Board, file 60182", "a drop printed with 1.75·d50",
       SourceStanding::published},
      {"USACE EM 1110-2-1614; Shore Protection Manual (1984)", "layers under waves",
       SourceStanding::memory},
      {"trade", "layers of 1.75 to 2 median sizes", SourceStanding::common_practice}};
  about.cautions = {
      "Add 6 to 12 in, and larger stone with it, where heavy debris, ice or waves strike.",
      "Quarry-run rock in place of graded rock takes 1.5 to 2 times the thickness.",
      "In a basin the slope that the water enters by takes 3·D50. On chutes a local practice takes "
      "1.25·D100; below overtopped faces the water inside the rock can ask for more.",
      "The manuals give the factor for placing under water for banks, piers and abutments; "
      "elsewhere it is taken over from there."};
  TypedMethod<LayerThicknessInputs, LayerThicknessResult> method(about, &layer_thickness);
  method.choice({"place", "", "where the layer lies"}, at(&LayerThicknessInputs::place),
                zone_place_options());
  method.optional({"d50_upper", "D50", "median size, upper limit of the band"},
                  &LayerThicknessInputs::d50_upper, unit::foot, AllowedRange::positive_to(30),
                  "not known", LengthUse::rock);
  method.optional({"d100_upper", "D100", "largest stone, upper limit of the band"},
                  at(&LayerThicknessInputs::d100_upper), unit::foot, AllowedRange::positive_to(50),
                  "not known", LengthUse::rock);
  method.optional({"d50_nominal", "D50", "median size the class is named by"},
                  at(&LayerThicknessInputs::d50), unit::foot, AllowedRange::positive_to(30),
                  "not known", LengthUse::rock);
  method.optional({"median_cube", "Dn50", "side of the cube of the median mass, for waves"},
                  at(&LayerThicknessInputs::median_cube), unit::foot, AllowedRange::positive_to(30),
                  "not known", LengthUse::rock);
  method.optional({"largest_cube", "Dn100", "side of the cube of the largest mass, for waves"},
                  at(&LayerThicknessInputs::largest_cube), unit::foot,
                  AllowedRange::positive_to(50), "not known", LengthUse::rock);
  method.optional({"stated_multiple", "k", "multiple of the nominal D50 in the class's own manual"},
                  &LayerThicknessInputs::stated_multiple, unit::number, AllowedRange::between(1, 5),
                  "the general rule");
  method.defaulted({"contraction_scour", "ys", "contraction scour, at a pier"},
                   at(&LayerThicknessInputs::contraction_scour), unit::foot,
                   AllowedRange::between(0, 200));
  method.defaulted({"degradation", "yd", "long-term lowering of the bed, at a pier"},
                   at(&LayerThicknessInputs::degradation), unit::foot,
                   AllowedRange::between(0, 200));
  method.choice(
      {"sized_by", "", "equation that sized the rock"}, at(&LayerThicknessInputs::sized_by),
      {ChoiceOption<SizedBy>{SizedBy::any, "any", "any that asks for no layer of its own"},
       {SizedBy::usace_steep_slope, "usace-steep-slope", "which presumes 1.5·D100"}});
  method.choice({"placement", "", "where the rock is placed"}, &LayerThicknessInputs::placement,
                {ChoiceOption<Placement>{Placement::dry, "dry", "above water"},
                 {Placement::under_water, "under-water", "through water"}});
  method.output({"general", "t", "least thickness by the general rule, in the dry"},
                &LayerThicknessResult::general, unit::foot);
  method.output({"least", "t", "least layer thickness"}, &LayerThicknessResult::least, unit::foot);
  method.output({"common_low", "t", "usual thickness, from 1.75 median sizes"},
                &LayerThicknessResult::common_low, unit::foot);
  method.output({"common_high", "t", "usual thickness, to 2 median sizes"},
                &LayerThicknessResult::common_high, unit::foot);
  return method;
}

}  // namespace

const Method& layer_thickness_method() {
  static const TypedMethod<LayerThicknessInputs, LayerThicknessResult> method =
      build_layer_thickness();
  return method;
}

}  // namespace proofstone
