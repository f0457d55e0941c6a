#include "engine/cover/lining_limits.h"

#include <cstddef>

namespace proofstone {

namespace {

using DescribedLiningLimits = TypedMethod<LiningLimitsInputs, LiningLimitsResult>;

const char* const fischenich =
    "Fischenich (2001), ERDC TN-EMRRP-SR-29, Table 2 (rows from memory; confirm)";

const LiningLimit& row_of(const LiningLimitsInputs& in) {
  return lining_limit_rows()[static_cast<std::size_t>(in.lining)];
}

MethodDescription describe_lining_limits() {
  MethodDescription about;
  about.id = "lining-limits";
  about.title = "Shear and velocity that linings bear";
  about.purpose =
      "Published ranges of permissible shear and velocity of soils, grasses, mats, plantings and "
      "rock; tells where a cover of topsoil and plants survives beside rock.";
  about.group = MethodGroup::cover;
  about.sources = {
      {"Fischenich (2001), Stability Thresholds for Stream Restoration Materials, ERDC "
       "TN-EMRRP-SR-29",
       "Table 2: ranges of the groups", SourceStanding::published},
      {"Fischenich (2001), Stability Thresholds for Stream Restoration Materials, ERDC "
       "TN-EMRRP-SR-29",
       "Table 2: single rows", SourceStanding::memory}};
  about.cautions = {
      "For straight uniform flow of short duration; long floods and bends take much less.",
      "The row of a rock size is a rule of thumb, no design of rock."};
  return about;
}

void describe_lining_limits_inputs(DescribedLiningLimits& method) {
  std::vector<ChoiceOption<int>> options;
  for (std::size_t i = 0; i < lining_limit_rows().size(); ++i) {
    const LiningLimit& row = lining_limit_rows()[i];
    options.push_back({static_cast<int>(i), row.key, row.name});
  }
  method.choice({"lining", "", "the lining"}, &LiningLimitsInputs::lining, options);
  method.optional({"applied_shear", "τ", "shear of the flow on it"},
                  &LiningLimitsInputs::applied_shear, unit::pound_per_square_foot,
                  AllowedRange::between(0, 100), "not compared");
  method.optional({"applied_velocity", "V", "velocity of the flow"},
                  &LiningLimitsInputs::applied_velocity, unit::foot_per_second,
                  AllowedRange::between(0, 100), "not compared");
}

void describe_limits(DescribedLiningLimits& method) {
  method.limit({"Shear of the flow at most the careful figure", fischenich},
               [](const LiningLimitsInputs& in) {
                 return !in.applied_shear ||
                        in.applied_shear->pounds_per_square_foot() < row_of(in).shear_low + 1e-9;
               });
  method.limit({"Velocity of the flow at most the careful figure", fischenich},
               [](const LiningLimitsInputs& in) {
                 return !in.applied_velocity ||
                        in.applied_velocity->feet_per_second() < row_of(in).velocity_low + 1e-9;
               });
}

DescribedLiningLimits build_lining_limits() {
  DescribedLiningLimits method(describe_lining_limits(), &lining_limits);
  describe_lining_limits_inputs(method);
  method.output({"shear_low", "τ", "permissible shear, the careful figure"},
                &LiningLimitsResult::shear_low, unit::pound_per_square_foot);
  method.output({"shear_high", "τ", "permissible shear, the bold figure"},
                &LiningLimitsResult::shear_high, unit::pound_per_square_foot);
  method.output({"velocity_low", "V", "permissible velocity, the careful figure"},
                &LiningLimitsResult::velocity_low, unit::foot_per_second);
  method.output({"velocity_high", "V", "permissible velocity, the bold figure"},
                &LiningLimitsResult::velocity_high, unit::foot_per_second);
  describe_limits(method);
  return method;
}

}  // namespace

const std::vector<LiningLimit>& lining_limit_rows() {
  static const std::vector<LiningLimit> rows{
      {"fine-colloidal-sand", "fine colloidal sand", 0.02, 0.03, 1.5, 1.5},
      {"sandy-loam", "sandy loam, without colloids", 0.03, 0.04, 1.75, 1.75},
      {"alluvial-silt", "alluvial silt, without colloids", 0.045, 0.05, 2, 2},
      {"silty-loam", "silty loam, without colloids", 0.045, 0.05, 1.75, 2.25},
      {"firm-loam", "firm loam, fine gravel", 0.075, 0.075, 2.5, 2.5},
      {"stiff-clay", "stiff clay", 0.26, 0.26, 3, 4.5},
      {"colloidal-silt", "alluvial silt with colloids", 0.26, 0.26, 3.75, 3.75},
      {"graded-loam-to-cobbles", "graded loam to cobbles", 0.38, 0.38, 3.75, 3.75},
      {"graded-silt-to-cobbles", "graded silt to cobbles", 0.43, 0.43, 4, 4},
      {"shale-and-hardpan", "shale and hardpan", 0.67, 0.67, 6, 6},
      {"gravel-1-in", "gravel of 1 in", 0.33, 0.33, 2.5, 5},
      {"gravel-2-in", "gravel of 2 in", 0.67, 0.67, 3, 6},
      {"cobble-6-in", "cobbles of 6 in", 2.0, 2.0, 4, 7.5},
      {"cobble-12-in", "cobbles of 12 in", 4.0, 4.0, 5.5, 12},
      {"turf-class-a", "turf, retardance class A", 3.7, 3.7, 6, 8},
      {"turf-class-b", "turf, retardance class B", 2.1, 2.1, 4, 7},
      {"turf-class-c", "turf, retardance class C", 1.0, 1.0, 3.5, 3.5},
      {"long-native-grass", "long native grasses", 1.2, 1.7, 4, 6},
      {"short-native-grass", "short native and bunch grass", 0.7, 0.95, 3, 4},
      {"jute-net", "jute net", 0.45, 0.45, 1, 2.5},
      {"straw-with-net", "straw with net", 1.5, 1.65, 1, 3},
      {"coconut-with-net", "coconut fibre with net", 2.25, 2.25, 3, 4},
      {"fibreglass-roving", "fibreglass roving", 2.0, 2.0, 2.5, 7},
      {"mat-bare", "turf-reinforcement mat without plants", 3.0, 3.0, 5, 7},
      {"mat-partly-grown", "turf-reinforcement mat, partly grown", 4, 6, 7.5, 15},
      {"mat-grown", "turf-reinforcement mat, fully grown", 8, 8, 8, 21},
      {"coir-roll", "coir roll", 3, 5, 8, 8},
      {"coir-mat-grown", "coir mat with plants", 4, 8, 9.5, 9.5},
      {"live-stakes", "live stakes", 2.1, 3.1, 3, 10},
      {"brush-mattress-initial", "brush mattress, newly laid", 0.4, 4.1, 4, 4},
      {"brush-mattress-grown", "brush mattress, grown", 3.9, 8.2, 12, 12},
      {"riprap-6-in", "riprap, D50 6 in", 2.5, 2.5, 5, 10},
      {"riprap-9-in", "riprap, D50 9 in", 3.8, 3.8, 7, 11},
      {"riprap-12-in", "riprap, D50 12 in", 5.1, 5.1, 10, 13},
      {"riprap-18-in", "riprap, D50 18 in", 7.6, 7.6, 12, 16},
      {"riprap-24-in", "riprap, D50 24 in", 10.1, 10.1, 14, 18},
      {"gabions", "gabions", 10, 10, 14, 19}};
  return rows;
}

Expected<LiningLimitsResult> lining_limits(const LiningLimitsInputs& inputs, Steps& steps) {
  const LiningLimit& row = row_of(inputs);
  LiningLimitsResult result;
  result.shear_low = Stress::pounds_per_square_foot(row.shear_low);
  result.shear_high = Stress::pounds_per_square_foot(row.shear_high);
  result.velocity_low = Velocity::feet_per_second(row.velocity_low);
  result.velocity_high = Velocity::feet_per_second(row.velocity_high);
  steps.given("τ", "permissible shear of " + row.name + ", the careful figure",
              measure(result.shear_low), fischenich);
  steps.given("τ", "the bold figure", measure(result.shear_high), fischenich);
  steps.given("V", "permissible velocity, the careful figure", measure(result.velocity_low),
              fischenich);
  steps.given("V", "the bold figure", measure(result.velocity_high), fischenich);
  return result;
}

const Method& lining_limits_method() {
  static const DescribedLiningLimits method = build_lining_limits();
  return method;
}

}  // namespace proofstone
