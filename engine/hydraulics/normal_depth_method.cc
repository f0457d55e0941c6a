#include "engine/hydraulics/normal_depth_method.h"

#include "engine/hydraulics/section_inputs.h"

namespace proofstone {

namespace {

struct NormalDepthInputs : SectionInputs {
  Discharge discharge;
  Slope slope;
};

struct NormalDepthResult {
  Length depth;
  Length water_level;
  Area area;
  Length wetted_perimeter;
  Length top_width;
  Velocity velocity;
  Dimensionless froude_number;
  Dimensionless energy_coefficient;
  Dimensionless levels_found;
};

Expected<NormalDepthResult> compute_normal_depth(const NormalDepthInputs& inputs, Steps& steps) {
  const auto section = section_of(inputs);
  if (!section) return section.problems();
  const auto flow = normal_flow(*section, inputs.divisions, inputs.discharge, inputs.slope,
                                inputs.composite, steps);
  if (!flow) return flow.problems();
  NormalDepthResult result;
  result.depth = flow->wet.deepest;
  result.water_level = flow->water_level;
  result.area = flow->wet.area;
  result.wetted_perimeter = flow->wet.wetted_perimeter;
  result.top_width = flow->wet.top_width;
  result.velocity = flow->mean_velocity();
  result.froude_number = flow->froude_number;
  result.energy_coefficient = flow->energy_coefficient;
  result.levels_found = Dimensionless::number(1 + static_cast<double>(flow->further_levels.size()));
  return result;
}

TypedMethod<NormalDepthInputs, NormalDepthResult> build_normal_depth() {
  MethodDescription about;
  about.id = "normal-depth";
  about.title = "Normal depth in a surveyed section";
  about.purpose =
      "The water level at which a discharge runs uniformly down a slope, by Manning's equation "
      "and conveyance, with the velocity, top width and Froude number there.";
  about.group = MethodGroup::water;
  about.sources = {{"Chow, Open-Channel Hydraulics (1959)", "chs. 5 and 6", SourceStanding::memory},
                   {"USACE WES Streambank Handbook (1997), App. A",
                    "Example 2, Table A.2 (reproduced)", SourceStanding::published}};
  about.cautions = {
      "Uniform flow is an assumption: near bridges, drops, bends and tributaries the level comes "
      "from a profile calculation.",
      "When more than one level is found the lowest is given; divide the section at the bank tops "
      "first."};
  TypedMethod<NormalDepthInputs, NormalDepthResult> method(about, &compute_normal_depth);
  describe_ground(method);
  method.required({"discharge", "Q", "discharge"}, &NormalDepthInputs::discharge,
                  unit::cubic_foot_per_second, AllowedRange::positive_to(1e8));
  method.required({"slope", "S", "slope of the bed and of the energy line"},
                  &NormalDepthInputs::slope, unit::rise_per_run, AllowedRange::positive_to(1));
  describe_division(method);
  method.output({"depth", "d", "greatest depth"}, &NormalDepthResult::depth, unit::foot);
  method.output({"water_level", "w", "lowest water level that carries the discharge"},
                &NormalDepthResult::water_level, unit::foot);
  method.output({"area", "A", "wet area"}, &NormalDepthResult::area, unit::square_foot);
  method.output({"wetted_perimeter", "P", "wetted perimeter"}, &NormalDepthResult::wetted_perimeter,
                unit::foot);
  method.output({"top_width", "T", "top width"}, &NormalDepthResult::top_width, unit::foot);
  method.output({"velocity", "V", "mean velocity"}, &NormalDepthResult::velocity,
                unit::foot_per_second);
  method.output({"froude_number", "Fr", "Froude number, with α"}, &NormalDepthResult::froude_number,
                unit::number);
  method.output({"energy_coefficient", "α", "energy coefficient"},
                &NormalDepthResult::energy_coefficient, unit::number);
  method.output({"levels_found", "", "how many levels carry the discharge"},
                &NormalDepthResult::levels_found, unit::number);
  method.limit({"Slope below about 10 %: steeper, depth must be measured square to the bed",
                "common practice"},
               [](const NormalDepthInputs& in) { return in.slope.ratio() < 0.10; });
  return method;
}

}  // namespace

const Method& normal_depth_method() {
  static const TypedMethod<NormalDepthInputs, NormalDepthResult> method = build_normal_depth();
  return method;
}

}  // namespace proofstone
