#pragma once

#include <memory>
#include <nlohmann/json_fwd.hpp>
#include <string>
#include <vector>

#include "engine/finding/steps.h"
#include "engine/method/description.h"
#include "engine/method/varied_output.h"

namespace proofstone {

/// One value a method returns.
struct OutputValue {
  std::string key;
  Measure value;
};

/// What a method returns: its values, its working, and the published limits it stood outside of.
struct Evaluation {
  std::vector<OutputValue> outputs;
  Steps steps;
  std::vector<LimitDescription> limits_not_kept;

  /// The value of `key`. Precondition: the method describes such an output.
  const Measure& output(std::string_view key) const;
};

/// One published formula or procedure, callable by name. The typed function behind it is declared
/// in the header named after the method; this face is what lists, documents and checks use.
class Method {
 public:
  virtual ~Method() = default;
  virtual const MethodDescription& description() const = 0;
  /// Evaluates from a JSON object of input texts, e.g. {"velocity": "8 ft/s", "placement":
  /// "angular"}. Unknown, missing, unreadable and impossible inputs are Problems located by JSON
  /// pointer under `inputs`.
  virtual Expected<Evaluation> evaluate(const nlohmann::json& inputs) const = 0;
  /// One output as a function of the inputs named in `varied`, the others held at `inputs`.
  /// Problems: those of reading the inputs, an input that is no quantity, an output that is not
  /// there.
  virtual Expected<std::unique_ptr<VariedOutput>> vary(const nlohmann::json& inputs,
                                                       const std::vector<std::string>& varied,
                                                       const std::string& output) const = 0;
};

}  // namespace proofstone
