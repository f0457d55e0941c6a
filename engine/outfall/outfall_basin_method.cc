#include "engine/outfall/outfall_basin.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedOutfallBasin = TypedSizingMethod<OutfallBasinInputs, OutfallBasinResult>;

const char* const memory = "FHWA HEC-14 3rd ed. (2006) §10.1 (from memory; confirm)";

std::variant<OutfallBasinInputs, NotApplicable> outfall_basin_from_zone(const ZoneSetting& zone) {
  OutfallBasinInputs in;
  if (zone.stated.discharge) in.discharge = *zone.stated.discharge;
  in.tailwater = zone.stated.tailwater_depth;
  return in;
}

MethodDescription describe_outfall_basin() {
  MethodDescription about;
  about.id = "outfall-basin";
  about.title = "Rock basin at a culvert outlet";
  about.purpose =
      "Depth, length and width of a rock basin shaped like the hole the jet would scour, for rock "
      "of a size to be tried; refuses where no such hole forms.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"FHWA HEC-14 3rd ed. (2006), FHWA-NHI-06-086", "§10.1, eq. 10.1", SourceStanding::memory},
      {"A local storm-drainage manual (2006) after FHWA HEC-14 2nd ed. (1983)",
       "section 4.7.5: pool and basin lengths, equivalent depth", SourceStanding::published}};
  about.cautions = {"Try sizes until hs/D50 lies between 2 and 4; D50/ye of 0.25 to 0.45 is best.",
                    "The local manual prints the equivalent depth with the exponent 1.5; it is a "
                    "misprint of 0.5, "
                    "as the units show.",
                    "With tailwater above 0.75·ye the jet runs on over the basin: rock is needed "
                    "beyond it, sized "
                    "for the velocity that the jet keeps."};
  return about;
}

void describe_outfall_basin_inputs(DescribedOutfallBasin& method) {
  method.choice({"shape", "", "shape of the conduit"}, &OutfallBasinInputs::shape,
                {{ConduitShape::circular, "circular", "a pipe: ye is (A/2)^½"},
                 {ConduitShape::box, "box", "a box: ye is the brink depth"}});
  method.required({"discharge", "Q", "discharge of the conduit"}, &OutfallBasinInputs::discharge,
                  unit::cubic_foot_per_second, AllowedRange::positive_to(1e6));
  method.required({"width", "Wo", "diameter of the pipe, or width of the box"},
                  &OutfallBasinInputs::width, unit::foot, AllowedRange::positive_to(200));
  method.required({"brink_depth", "yo", "depth of the flow where it leaves the conduit"},
                  &OutfallBasinInputs::brink_depth, unit::foot, AllowedRange::positive_to(100));
  method.optional({"flow_area", "A", "area of flow at the brink"}, &OutfallBasinInputs::flow_area,
                  unit::square_foot, AllowedRange::positive_to(10'000), "from shape and depth");
  method.optional({"tailwater", "TW", "depth of the water below the outlet, above its invert"},
                  &OutfallBasinInputs::tailwater, unit::foot, AllowedRange::between(0, 1000),
                  "unknown: none, which digs deepest");
  method.required({"d50", "D50", "median size of the rock tried"}, &OutfallBasinInputs::d50,
                  unit::foot, AllowedRange::positive_to(20), LengthUse::rock);
}

void describe_outfall_basin_outputs(DescribedOutfallBasin& method) {
  method.output({"flow_area", "A", "area of flow at the brink"}, &OutfallBasinResult::flow_area,
                unit::square_foot);
  method.output({"outlet_velocity", "Vo", "velocity there"}, &OutfallBasinResult::outlet_velocity,
                unit::foot_per_second);
  method.output({"equivalent_depth", "ye", "equivalent depth"},
                &OutfallBasinResult::equivalent_depth, unit::foot);
  method.output({"froude_number", "Fr", "Froude number there"}, &OutfallBasinResult::froude_number,
                unit::number);
  method.output({"size_over_depth", "D50/ye", "size over equivalent depth"},
                &OutfallBasinResult::size_over_depth, unit::number);
  method.output({"tailwater_over_depth", "TW/ye", "tailwater over equivalent depth"},
                &OutfallBasinResult::tailwater_over_depth, unit::number);
  method.output({"tailwater_term", "Co", "tailwater term"}, &OutfallBasinResult::tailwater_term,
                unit::number);
  method.output({"scour_depth", "hs", "scour depth"}, &OutfallBasinResult::scour_depth, unit::foot);
  method.output({"scour_over_size", "hs/D50", "scour depth over size"},
                &OutfallBasinResult::scour_over_size, unit::number);
  method.output({"pool_length", "Ls", "length of the pool"}, &OutfallBasinResult::pool_length,
                unit::foot);
  method.output({"basin_length", "LB", "length of the basin"}, &OutfallBasinResult::basin_length,
                unit::foot);
  method.output({"basin_width", "WB", "width at its end"}, &OutfallBasinResult::basin_width,
                unit::foot);
  method.output({"critical_depth", "yc", "critical depth at its end"},
                &OutfallBasinResult::critical_depth, unit::foot);
  method.output({"exit_velocity", "Vc", "velocity there"}, &OutfallBasinResult::exit_velocity,
                unit::foot_per_second);
  method.output({"entry_thickness", "t", "thickness on the entry slope"},
                &OutfallBasinResult::entry_thickness, unit::foot);
  method.output({"floor_thickness", "t", "thickness elsewhere"},
                &OutfallBasinResult::floor_thickness, unit::foot);
  method.output({"d50", "D50", "the rock tried"}, &OutfallBasinResult::d50, unit::foot,
                LengthUse::rock);
}

bool holds_for(const OutfallBasinInputs& in, bool (*kept)(const OutfallBasinResult&)) {
  Steps unread;
  const auto result = outfall_basin(in, unread);
  return result && kept(*result);
}

DescribedOutfallBasin build_outfall_basin() {
  DescribedOutfallBasin method(
      describe_outfall_basin(), &outfall_basin, &outfall_basin_from_zone,
      [](const OutfallBasinResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::basin});
  describe_outfall_basin_inputs(method);
  describe_outfall_basin_outputs(method);
  method.limit({"D50/ye between 0.1 and 0.7", memory}, [](const OutfallBasinInputs& in) {
    return holds_for(in, [](const OutfallBasinResult& result) {
      const double share = result.size_over_depth.number();
      return share > 0.1 && share < 0.7;
    });
  });
  return method;
}

}  // namespace

const SizingMethod& outfall_basin_method() {
  static const DescribedOutfallBasin method = build_outfall_basin();
  return method;
}

}  // namespace proofstone
