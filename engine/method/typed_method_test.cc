#include "engine/method/typed_method.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <nlohmann/json.hpp>
#include <stdexcept>

namespace proofstone {
namespace {

using nlohmann::json;

enum class Side { left, right };

/// A made-up method with one input of every form.
struct Inputs {
  Velocity velocity;
  Length depth = Length::feet(2);
  std::optional<Slope> slope;
  std::vector<Length> sizes;
  Side side = Side::left;
};
struct Result {
  Dimensionless froude_number;
  Length largest;
};

Expected<Result> compute(const Inputs& inputs, Steps& steps) {
  if (inputs.sizes.empty()) return Problem{"no-sizes", "There are no sizes.", {}, "/sizes", {}};
  Result result;
  const double v = inputs.velocity.meters_per_second();
  result.froude_number = Dimensionless::number(v / std::sqrt(9.81 * inputs.depth.meters()));
  result.largest = *std::max_element(inputs.sizes.begin(), inputs.sizes.end());
  steps.computed("Fr", "Froude number", "V/√(g·d)", measure(result.froude_number));
  return result;
}

TypedMethod<Inputs, Result> sample() {
  MethodDescription about;
  about.id = "sample";
  about.title = "Sample method";
  TypedMethod<Inputs, Result> method(about, &compute);
  method.required({"velocity", "V", "mean velocity"}, &Inputs::velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60));
  method.defaulted({"depth", "d", "water depth"}, &Inputs::depth, unit::foot,
                   AllowedRange::positive_to(100));
  method.optional({"slope", "S", "energy slope"}, &Inputs::slope, unit::rise_per_run,
                  AllowedRange::between(0, 1), "not needed");
  method.required_list({"sizes", "D", "sizes"}, &Inputs::sizes, unit::inch,
                       AllowedRange::positive_to(100), LengthUse::rock);
  method.choice({"side", "", "side of the river"}, &Inputs::side,
                std::vector<ChoiceOption<Side>>{{Side::left, "left", "left bank"},
                                                {Side::right, "right", "right bank"}});
  method.output({"froude_number", "Fr", "Froude number"}, &Result::froude_number, unit::number);
  method.output({"largest", "Dmax", "largest size"}, &Result::largest, unit::inch, LengthUse::rock);
  method.limit({"Velocity below 20 ft/s", "made up"}, [](const Inputs& inputs) {
    return inputs.velocity < Velocity::feet_per_second(20);
  });
  return method;
}

json good() { return {{"velocity", "8 ft/s"}, {"sizes", {"6 in", "0.5 m"}}}; }

Problem only_problem(const json& inputs) {
  const auto evaluation = sample().evaluate(inputs);
  EXPECT_FALSE(evaluation) << inputs;
  if (evaluation) return {};
  EXPECT_EQ(evaluation.problems().size(), 1U) << inputs;
  return evaluation.problems().front();
}

TEST(TypedMethod, describes_itself) {
  const auto about = sample().description();
  ASSERT_EQ(about.inputs.size(), 5U);
  EXPECT_TRUE(about.inputs[0].required);
  EXPECT_EQ(about.inputs[1].default_text, "2 ft");
  EXPECT_EQ(about.inputs[2].default_text, "not needed");
  EXPECT_EQ(about.inputs[4].default_text, "left");
  EXPECT_EQ(about.inputs[4].choices.size(), 2U);
  EXPECT_EQ(about.outputs[1].length_use, LengthUse::rock);
}

TEST(TypedMethod, evaluates_and_shows_its_working) {
  const auto evaluation = sample().evaluate(good());
  ASSERT_TRUE(evaluation);
  EXPECT_NEAR(evaluation->output("froude_number").si, 2.4384 / std::sqrt(9.81 * 0.6096), 1e-12);
  EXPECT_DOUBLE_EQ(evaluation->output("largest").si, 0.5);
  EXPECT_EQ(evaluation->steps.lines().size(), 1U);
  EXPECT_TRUE(evaluation->limits_not_kept.empty());
  EXPECT_THROW(evaluation->output("nothing"), std::logic_error);
}

TEST(TypedMethod, names_the_published_limits_that_are_not_kept) {
  auto inputs = good();
  inputs["velocity"] = "30 ft/s";
  const auto evaluation = sample().evaluate(inputs);
  ASSERT_TRUE(evaluation);
  ASSERT_EQ(evaluation->limits_not_kept.size(), 1U);
  EXPECT_EQ(evaluation->limits_not_kept.front().sentence, "Velocity below 20 ft/s");
}

TEST(TypedMethod, names_what_is_missing) {
  auto inputs = good();
  inputs.erase("velocity");
  const auto problem = only_problem(inputs);
  EXPECT_EQ(problem.code, "missing-input");
  EXPECT_EQ(problem.where, "/velocity");
  EXPECT_EQ(problem.sentence(),
            "/velocity: velocity (V) is missing: mean velocity. Allowed: a velocity in ft/s, m/s, "
            "mph, km/h.");
}

TEST(TypedMethod, refuses_what_it_cannot_read) {
  const auto with = [](const char* key, const json& value) {
    auto inputs = good();
    inputs[key] = value;
    return only_problem(inputs);
  };
  EXPECT_EQ(with("velocity", "8 ft").code, "wrong-kind");
  EXPECT_EQ(with("velocity", "8 ft").where, "/velocity");
  EXPECT_EQ(with("velocity", 8).code, "not-a-quantity");
  EXPECT_EQ(with("velocity", nullptr).code, "not-a-quantity");
  EXPECT_EQ(with("velocity", json::array({"8 ft/s"})).code, "not-a-quantity");
  EXPECT_EQ(with("velocity", "NaN ft/s").code, "not-finite");
  EXPECT_EQ(with("sizes", "6 in").code, "not-a-list");
  EXPECT_EQ(with("sizes", json::array({"6 in", "6"})).where, "/sizes/1");
  EXPECT_EQ(with("side", "middle").code, "unknown-choice");
  EXPECT_EQ(with("side", "middle").allowed, "left, right");
  EXPECT_EQ(with("side", 1).code, "unknown-choice");
  EXPECT_EQ(with("sizes", json::array()).code, "no-sizes");
}

TEST(TypedMethod, refuses_what_cannot_be) {
  const auto with = [](const char* key, const json& value) {
    auto inputs = good();
    inputs[key] = value;
    return only_problem(inputs);
  };
  EXPECT_EQ(with("velocity", "0 ft/s").code, "outside-allowed");
  EXPECT_EQ(with("velocity", "-8 ft/s").code, "outside-allowed");
  EXPECT_EQ(
      with("velocity", "75 ft/s").sentence(),
      "/velocity: velocity (V) cannot be 75 ft/s. Allowed: more than 0 ft/s, at most 60 ft/s.");
  EXPECT_EQ(with("slope", "2").code, "outside-allowed");
  EXPECT_EQ(with("sizes", json::array({"6 in", "-1 in"})).code, "outside-allowed");
}

TEST(TypedMethod, refuses_what_it_does_not_know) {
  auto inputs = good();
  inputs["velocty"] = "8 ft/s";
  inputs["a/b~c"] = 1;
  const auto evaluation = sample().evaluate(inputs);
  ASSERT_FALSE(evaluation);
  ASSERT_EQ(evaluation.problems().size(), 2U);
  EXPECT_EQ(evaluation.problems()[0].where, "/a~1b~0c");
  EXPECT_EQ(evaluation.problems()[1].code, "unknown-field");
  EXPECT_EQ(evaluation.problems()[1].allowed, "velocity, depth, slope, sizes, side");
  EXPECT_EQ(only_problem(json::array()).code, "not-an-object");
  EXPECT_EQ(only_problem(nullptr).code, "not-an-object");
}

TEST(TypedMethod, only_pure_numbers_and_slopes_may_be_bare) {
  auto inputs = good();
  inputs["slope"] = 0.002;
  EXPECT_TRUE(sample().evaluate(inputs));
}

TEST(TypedMethod, names_every_problem_at_once) {
  const auto evaluation = sample().evaluate({{"velocity", "8"}, {"side", "up"}});
  ASSERT_FALSE(evaluation);
  EXPECT_EQ(evaluation.problems().size(), 3U);
}

/// The sample as what sizes rock in zones sees it.
class Opened : public TypedMethod<Inputs, Result> {
 public:
  Opened() : TypedMethod(sample()) {}
  using TypedMethod::described;
  const MethodTypes& types() const { return *this; }
};

TEST(TypedMethod, reads_choices_over_what_is_there) {
  const Opened method;
  Inputs inputs;
  inputs.velocity = Velocity::feet_per_second(5);
  const auto problems = method_inputs::read(method.described().about, method.described().slots,
                                            {{"depth", "3 ft"}}, false, &inputs);
  EXPECT_TRUE(problems.empty());
  EXPECT_EQ(inputs.velocity, Velocity::feet_per_second(5));
  EXPECT_EQ(inputs.depth, Length::feet(3));
}

TEST(TypedMethod, checks_inputs_that_were_never_text) {
  const Opened method;
  Inputs inputs;
  inputs.sizes = {Length::feet(1)};
  inputs.velocity = Velocity::feet_per_second(std::numeric_limits<double>::quiet_NaN());
  Evaluation evaluation;
  const auto read = method.described().run(method.types(), &inputs, evaluation);
  const auto unread = method.described().run_unread(method.types(), &inputs);
  ASSERT_FALSE(read);
  EXPECT_EQ(read.problems().front().code, "outside-allowed");
  ASSERT_FALSE(unread);
  EXPECT_EQ(unread.problems().front().code, "outside-allowed");
}

TEST(TypedMethod, gives_one_result_with_its_working_and_without) {
  const Opened method;
  Inputs inputs;
  inputs.sizes = {Length::feet(1)};
  inputs.velocity = Velocity::feet_per_second(8);
  Evaluation evaluation;
  const auto read = method.described().run(method.types(), &inputs, evaluation);
  const auto unread = method.described().run_unread(method.types(), &inputs);
  ASSERT_TRUE(read);
  ASSERT_TRUE(unread);
  EXPECT_EQ(static_cast<const Result*>(read->get())->froude_number,
            static_cast<const Result*>(unread->get())->froude_number);
  EXPECT_FALSE(evaluation.steps.lines().empty());
}

TEST(AllowedRange, holds_and_says_what_it_holds) {
  EXPECT_FALSE(AllowedRange::positive_to(60).holds(0));
  EXPECT_TRUE(AllowedRange::positive_to(60).holds(60));
  EXPECT_TRUE(AllowedRange::between(0, 90).holds(0));
  EXPECT_FALSE(AllowedRange::between(0, 90).holds(90.1));
  EXPECT_FALSE(AllowedRange::any().holds(std::nan("")));
  EXPECT_EQ(AllowedRange::any().sentence(unit::foot), "any value");
  EXPECT_EQ(AllowedRange::between(0, 90).sentence(unit::degree), "at least 0°, at most 90°");
}

TEST(MethodGroup, has_a_name) {
  EXPECT_EQ(group_name(MethodGroup::rock_size), "rock size");
  EXPECT_EQ(group_name(MethodGroup::evidence), "evidence");
}

}  // namespace
}  // namespace proofstone
