#include "engine/scour/toe_depth.h"

#include <algorithm>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

const char* const page_of_toe_depth = "NRCS NEH 654 TS14B (2007) (from memory; confirm)";

constexpr Length none = Length::feet(0);

/// One kind of allowance and the estimates of it.
struct Allowance {
  const char* symbol;
  const char* name;
  const std::vector<Length>* estimates;
};

/// The largest estimate, put down with how many there were; what nobody estimated is put down too.
Length largest_of(const Allowance& allowance, ToeDepthResult& result, Steps& steps) {
  const auto& estimates = *allowance.estimates;
  const std::string name = allowance.name;
  if (estimates.empty()) {
    result.left_out.push_back(name);
    steps.given(allowance.symbol, name + ": left out, counted as nothing", measure(none));
    return none;
  }
  const Length largest = *std::max_element(estimates.begin(), estimates.end());
  steps.given(allowance.symbol,
              estimates.size() > 1
                  ? name + ", the largest of " + std::to_string(estimates.size()) + " estimates"
                  : name,
              measure(largest));
  return largest;
}

void take_larger(Length other, const char* why, ToeDepthResult& result) {
  if (!(other > result.depth)) return;
  result.depth = other;
  result.governed_by = why;
}

Length bed_of_the_reach(const ToeDepthInputs& in, ToeDepthResult& result, Steps& steps) {
  if (in.general.empty() && in.bend.empty()) {
    result.left_out.emplace_back("general scour and bend scour");
    steps.given("z_b", "general scour and bend scour: left out, counted as nothing", measure(none));
    return none;
  }
  // Of these two a missing one is no gap: the other stands for it.
  ToeDepthResult unused;
  const Length general =
      in.general.empty() ? none : largest_of({"z_g", "general scour", &in.general}, unused, steps);
  const Length bend =
      in.bend.empty() ? none : largest_of({"z_b", "bend scour", &in.bend}, unused, steps);
  const Length larger = std::max(general, bend);
  steps.computed("z_gb", "general scour or bend scour: the larger, since general scour holds bends",
                 "max(z_g, z_b)", measure(larger), page_of_toe_depth);
  return larger;
}

Length bedforms(const ToeDepthInputs& in, ToeDepthResult& result, Steps& steps) {
  if (in.bedform_rule == BedformRule::added) {
    return largest_of({"z_bf", "troughs of bedforms", &in.bedform}, result, steps);
  }
  steps.given("z_bf", "troughs of bedforms: held by the general scour already, as stated",
              measure(none));
  return none;
}

void describe_toe_depth_inputs(TypedMethod<ToeDepthInputs, ToeDepthResult>& method) {
  const auto depth = AllowedRange::between(0, 200);
  const char* const left_out = "left out, and said so";
  method.optional({"long_term", "z_ad", "lowering of the bed over the years"},
                  &ToeDepthInputs::long_term, unit::foot, depth, left_out);
  method.optional_list({"contraction", "z_c", "contraction scour; of several the largest"},
                       &ToeDepthInputs::contraction, unit::foot, depth, left_out);
  method.optional_list({"general", "z_g", "general scour by regime formulas, with their factor"},
                       &ToeDepthInputs::general, unit::foot, depth, left_out);
  method.optional_list({"bend", "z_b", "bend scour; of several the largest"}, &ToeDepthInputs::bend,
                       unit::foot, depth, left_out);
  method.optional_list({"bedform", "z_bf", "troughs of dunes or antidunes"},
                       &ToeDepthInputs::bedform, unit::foot, depth, left_out);
  method.optional_list({"local", "z_s", "local scour at piers, wall ends, spurs and drops"},
                       &ToeDepthInputs::local, unit::foot, depth, left_out);
  method.optional_list({"whole", "", "estimates of the whole toe depth, compared with the sum"},
                       &ToeDepthInputs::whole, unit::foot, depth, "none");
  method.choice(
      {"bedform_rule", "", "whether the general scour holds the troughs already"},
      &ToeDepthInputs::bedform_rule,
      {ChoiceOption<BedformRule>{BedformRule::added, "added", "troughs are added"},
       {BedformRule::held_already, "held-already", "the general scour holds them already"}});
  method.defaulted({"safety_factor", "FS", "factor on the sum of the allowances"},
                   &ToeDepthInputs::safety_factor, unit::number, AllowedRange::between(1, 3));
  method.optional({"least_depth", "", "least toe depth that local criteria ask"},
                  &ToeDepthInputs::least_depth, unit::foot, depth, "none");
}

TypedMethod<ToeDepthInputs, ToeDepthResult> build_toe_depth() {
  MethodDescription about;
  about.id = "toe-depth";
  about.title = "Depth of the toe";
  about.purpose =
      "How deep below the bed the toe of a lining must reach or launch: the allowances for scour "
      "put together, with what was left out.";
  about.group = MethodGroup::toe;
  about.sources = {{"NRCS National Engineering Handbook Part 654 (2007)",
                    "Technical Supplement 14B, total scour and its factor of about 1.3",
                    SourceStanding::memory}};
  about.cautions = {
      "An allowance nobody gave counts as nothing: the list of what was left out is part of the "
      "result.",
      "Rock or another layer that does not scour may end the toe earlier: that is for the "
      "responsible engineer."};
  TypedMethod<ToeDepthInputs, ToeDepthResult> method(about, &toe_depth);
  describe_toe_depth_inputs(method);
  method.output({"sum", "Σz", "sum of the allowances"}, &ToeDepthResult::sum, unit::foot);
  method.output({"build_up", "zt", "sum with its factor"}, &ToeDepthResult::build_up, unit::foot);
  method.output({"depth", "d_t", "toe depth below the existing bed"}, &ToeDepthResult::depth,
                unit::foot);
  return method;
}

}  // namespace

Expected<ToeDepthResult> toe_depth(const ToeDepthInputs& inputs, Steps& steps) {
  const bool any = inputs.long_term || !inputs.contraction.empty() || !inputs.general.empty() ||
                   !inputs.bend.empty() || !inputs.bedform.empty() || !inputs.local.empty() ||
                   !inputs.whole.empty();
  if (!any) {
    return Problem{"missing-input", "No allowance for scour is given.", "", "/general",
                   "at least one of long_term, contraction, general, bend, bedform, local, whole"};
  }
  ToeDepthResult result;
  std::vector<Length> long_term;
  if (inputs.long_term) long_term.push_back(*inputs.long_term);
  result.sum =
      largest_of({"z_ad", "lowering of the bed over the years", &long_term}, result, steps);
  result.sum =
      result.sum + largest_of({"z_c", "contraction scour", &inputs.contraction}, result, steps);
  result.sum = result.sum + bed_of_the_reach(inputs, result, steps);
  result.sum = result.sum + bedforms(inputs, result, steps);
  result.sum = result.sum + largest_of({"z_s", "local scour", &inputs.local}, result, steps);
  result.build_up = inputs.safety_factor.number() * result.sum;
  result.depth = result.build_up;
  result.governed_by = "the sum of the allowances with its factor";
  steps.computed("Σz", "sum of the allowances", "z_ad + z_c + z_gb + z_bf + z_s",
                 measure(result.sum), page_of_toe_depth);
  steps.given("FS", "factor on the sum", measure(inputs.safety_factor), page_of_toe_depth);
  steps.computed("zt", "sum with its factor", "FS·Σz", measure(result.build_up), page_of_toe_depth);
  if (!inputs.whole.empty()) {
    const Length whole = *std::max_element(inputs.whole.begin(), inputs.whole.end());
    steps.given("d_w", "largest estimate of the whole toe depth", measure(whole));
    take_larger(whole, "the estimate of the whole toe depth", result);
  }
  if (inputs.least_depth) {
    steps.given("d_min", "least toe depth that local criteria ask", measure(*inputs.least_depth));
    take_larger(*inputs.least_depth, "the least depth that local criteria ask", result);
  }
  steps.computed("d_t", "toe depth below the existing bed, governed by " + result.governed_by, "",
                 measure(result.depth));
  return result;
}

const Method& toe_depth_method() {
  static const TypedMethod<ToeDepthInputs, ToeDepthResult> method = build_toe_depth();
  return method;
}

}  // namespace proofstone
