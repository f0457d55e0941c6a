#pragma once

#include <functional>
#include <memory>
#include <nlohmann/json_fwd.hpp>
#include <span>
#include <string>
#include <vector>

#include "engine/method/method.h"
#include "engine/method/method_inputs.h"

namespace proofstone {

/// Inputs or a result, whose type only the method knows.
using Untyped = std::shared_ptr<void>;

/// What of a method only its types know.
class MethodTypes {
 public:
  using ValueOf = std::function<double(const void* result)>;

  virtual ~MethodTypes() = default;
  virtual Untyped copy_of(const void* inputs) const = 0;
  /// Leaves the result in `result`, or returns why there is none. Without `steps` nobody will read
  /// the working.
  virtual Problems compute(const void* inputs, Steps* steps, Untyped& result) const = 0;
  /// A value of the result with the inputs at `places` set to `values`; nothing where one is not
  /// allowed or the method has no answer. Called millions of times.
  virtual std::optional<double> value_with(const void* start, std::span<const std::size_t> places,
                                           std::span<const double> values,
                                           const ValueOf& value) const = 0;
};

/// A method described and bound to the members of its structs, but blind to their types: what every
/// TypedMethod shares, compiled and shipped once.
struct UntypedMethod {
  MethodDescription about;
  MemberSlots slots;
  MemberSlots outputs;
  /// Whether inputs keep a limit, in the order of `about.limits`.
  std::vector<std::function<bool(const void* inputs)>> limits;

  UntypedMethod();
  UntypedMethod(UntypedMethod&&) noexcept;
  ~UntypedMethod();

  void add_input(std::unique_ptr<const MemberSlot> slot);
  void add_output(std::unique_ptr<const MemberSlot> slot);
  void add_limit(std::function<bool(const void* inputs)> kept);

  Expected<Untyped> run(const MethodTypes& types, const void* inputs, Evaluation& evaluation) const;
  /// The result alone, without the working.
  Expected<Untyped> run_unread(const MethodTypes& types, const void* inputs) const;
  /// As Method::evaluate, from the defaults in `start`.
  Expected<Evaluation> evaluate(const MethodTypes& types, const void* start,
                                const nlohmann::json& inputs) const;
  /// As Method::vary, from the defaults in `start`.
  Expected<std::unique_ptr<VariedOutput>> vary(const MethodTypes& types, const void* start,
                                               const nlohmann::json& inputs,
                                               const std::vector<std::string>& varied,
                                               const std::string& output) const;
  Expected<std::unique_ptr<VariedOutput>> vary_from(const MethodTypes& types, Untyped start,
                                                    const std::vector<std::string>& varied,
                                                    MethodTypes::ValueOf value) const;
  /// Sets inputs; false where one is not allowed.
  bool set(std::span<const std::size_t> places, std::span<const double> values, void* inputs) const;
};

}  // namespace proofstone
