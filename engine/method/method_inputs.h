#pragma once

#include <memory>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/finding/problem.h"
#include "engine/method/description.h"
#include "engine/method/member_slot.h"

namespace proofstone {

using MemberSlots = std::vector<std::unique_ptr<const MemberSlot>>;

/// What an input is called, for the binding functions of TypedMethod, which copy the texts.
struct Naming {
  std::string_view key;
  std::string_view symbol;
  std::string_view meaning;
};

/// What reading and checking the inputs of every method shares. `slots` stand in the order of
/// `about.inputs`; `inputs` is the struct whose members they are.
namespace method_inputs {

/// Adds an input to the description, not yet with a default.
InputDescription& describe(MethodDescription& about, const Naming& name, InputForm form,
                           QuantityKind kind, const Unit& unit, AllowedRange allowed,
                           LengthUse use);

void describe_output(MethodDescription& about, const Naming& name, QuantityKind kind,
                     const Unit& unit, LengthUse use);

/// Makes an input that is absent stand for `start`.
void describe_default(InputDescription& input, Measure start);

/// Adds a word to an input of form `choice`.
void describe_option(InputDescription& input, std::string_view key, std::string_view meaning);

void describe_limit(MethodDescription& about, std::string_view sentence, std::string_view source);

/// Reads a JSON object of input texts over what `inputs` holds. With `complete`, a required input
/// that is absent is a Problem; without, what `inputs` held stands in for it. Problems are located
/// by JSON pointer.
Problems read(const MethodDescription& about, const MemberSlots& slots, const nlohmann::json& texts,
              bool complete, void* inputs);

/// The value, in its published unit, that stands outside what input `index` allows.
std::optional<double> outside(const MethodDescription& about, const MemberSlots& slots,
                              std::size_t index, const void* inputs);

/// A Problem for every input that stands outside what it allows.
Problems not_allowed(const MethodDescription& about, const MemberSlots& slots, const void* inputs);

/// The required inputs that still stand at a starting value that is not allowed: nobody gave them.
Problems not_given(const MethodDescription& about, const MemberSlots& slots, const void* inputs,
                   const void* start);

/// The number of the quantity input called `key`, or the Problem that there is none.
Expected<std::size_t> quantity_called(const MethodDescription& about, const std::string& key);

Problem unknown_output(const MethodDescription& about, const std::string& key);

}  // namespace method_inputs
}  // namespace proofstone
