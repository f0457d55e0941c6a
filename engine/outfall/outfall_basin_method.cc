#include "engine/outfall/outfall_basin.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using Inputs = OutfallBasinInputs;
using Result = OutfallBasinResult;
using Described = TypedSizingMethod<Inputs, Result>;

const char* const memory = "FHWA HEC-14 3rd ed. (2006) §10.1 (from memory; confirm)";

std::variant<Inputs, NotApplicable> from_zone(const ZoneSetting& zone) {
  Inputs in;
  if (zone.stated.discharge) in.discharge = *zone.stated.discharge;
  in.tailwater = zone.stated.tailwater_depth;
  return in;
}

MethodDescription describe() {
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

void describe_inputs(Described& method) {
  method.choice({"shape", "", "shape of the conduit"}, &Inputs::shape,
                {{ConduitShape::circular, "circular", "a pipe: ye is (A/2)^½"},
                 {ConduitShape::box, "box", "a box: ye is the brink depth"}});
  method.required({"discharge", "Q", "discharge of the conduit"}, &Inputs::discharge,
                  unit::cubic_foot_per_second, AllowedRange::positive_to(1e6));
  method.required({"width", "Wo", "diameter of the pipe, or width of the box"}, &Inputs::width,
                  unit::foot, AllowedRange::positive_to(200));
  method.required({"brink_depth", "yo", "depth of the flow where it leaves the conduit"},
                  &Inputs::brink_depth, unit::foot, AllowedRange::positive_to(100));
  method.optional({"flow_area", "A", "area of flow at the brink"}, &Inputs::flow_area,
                  unit::square_foot, AllowedRange::positive_to(10'000), "from shape and depth");
  method.optional({"tailwater", "TW", "depth of the water below the outlet, above its invert"},
                  &Inputs::tailwater, unit::foot, AllowedRange::between(0, 1000),
                  "unknown: none, which digs deepest");
  method.required({"d50", "D50", "median size of the rock tried"}, &Inputs::d50, unit::foot,
                  AllowedRange::positive_to(20), LengthUse::rock);
}

void describe_outputs(Described& method) {
  method.output({"flow_area", "A", "area of flow at the brink"}, &Result::flow_area,
                unit::square_foot);
  method.output({"outlet_velocity", "Vo", "velocity there"}, &Result::outlet_velocity,
                unit::foot_per_second);
  method.output({"equivalent_depth", "ye", "equivalent depth"}, &Result::equivalent_depth,
                unit::foot);
  method.output({"froude_number", "Fr", "Froude number there"}, &Result::froude_number,
                unit::number);
  method.output({"size_over_depth", "D50/ye", "size over equivalent depth"},
                &Result::size_over_depth, unit::number);
  method.output({"tailwater_over_depth", "TW/ye", "tailwater over equivalent depth"},
                &Result::tailwater_over_depth, unit::number);
  method.output({"tailwater_term", "Co", "tailwater term"}, &Result::tailwater_term, unit::number);
  method.output({"scour_depth", "hs", "scour depth"}, &Result::scour_depth, unit::foot);
  method.output({"scour_over_size", "hs/D50", "scour depth over size"}, &Result::scour_over_size,
                unit::number);
  method.output({"pool_length", "Ls", "length of the pool"}, &Result::pool_length, unit::foot);
  method.output({"basin_length", "LB", "length of the basin"}, &Result::basin_length, unit::foot);
  method.output({"basin_width", "WB", "width at its end"}, &Result::basin_width, unit::foot);
  method.output({"critical_depth", "yc", "critical depth at its end"}, &Result::critical_depth,
                unit::foot);
  method.output({"exit_velocity", "Vc", "velocity there"}, &Result::exit_velocity,
                unit::foot_per_second);
  method.output({"entry_thickness", "t", "thickness on the entry slope"}, &Result::entry_thickness,
                unit::foot);
  method.output({"floor_thickness", "t", "thickness elsewhere"}, &Result::floor_thickness,
                unit::foot);
  method.output({"d50", "D50", "the rock tried"}, &Result::d50, unit::foot, LengthUse::rock);
}

bool holds_for(const Inputs& in, bool (*kept)(const Result&)) {
  Steps unread;
  const auto result = outfall_basin(in, unread);
  return result && kept(*result);
}

Described build() {
  Described method(describe(), &outfall_basin, &from_zone,
                   [](const Result& result) { return RequiredSize{50, result.d50}; },
                   {ZonePlace::basin});
  describe_inputs(method);
  describe_outputs(method);
  method.limit({"D50/ye between 0.1 and 0.7", memory}, [](const Inputs& in) {
    return holds_for(in, [](const Result& result) {
      const double share = result.size_over_depth.number();
      return share > 0.1 && share < 0.7;
    });
  });
  return method;
}

}  // namespace

const SizingMethod& outfall_basin_method() {
  static const Described method = build();
  return method;
}

}  // namespace proofstone
