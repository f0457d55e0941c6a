#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/finding/source.h"
#include "engine/quantity/measure.h"

namespace proofstone {

/// What a reader may enter for an input: a quantity, a list of quantities, or one of some words.
enum class InputForm { quantity, quantity_list, choice };

/// One word an input of form `choice` accepts.
struct ChoiceDescription {
  std::string key;
  std::string meaning;
};

/// Hard limits of an input in its published unit: outside them there is no meaning, only a mistake.
/// (The published range of validity of the whole formula is a matter of Limit.)
struct AllowedRange {
  std::optional<double> above;     ///< value must be greater
  std::optional<double> at_least;  ///< value must not be smaller
  std::optional<double> at_most;   ///< value must not be greater

  static AllowedRange any() { return {}; }
  static AllowedRange positive_to(double largest) { return {0.0, std::nullopt, largest}; }
  static AllowedRange between(double low, double high) { return {std::nullopt, low, high}; }
  bool holds(double value) const;
  /// "more than 0, at most 60 ft/s"
  std::string sentence(const Unit& unit) const;
};

struct InputDescription {
  std::string key;      ///< "local_depth", as documents and commands write it
  std::string symbol;   ///< "d", as the source writes it
  std::string meaning;  ///< "water depth above the stone, 20 % up the slope from the toe"
  InputForm form = InputForm::quantity;
  QuantityKind kind = QuantityKind::dimensionless;
  Unit unit = unit::number;  ///< the published unit
  LengthUse length_use = LengthUse::ground;
  AllowedRange allowed;
  bool required = true;
  std::string default_text;  ///< how the default reads; empty when there is none
  std::vector<ChoiceDescription> choices;
};

struct OutputDescription {
  std::string key;     ///< "d30"
  std::string symbol;  ///< "D30"
  std::string meaning;
  QuantityKind kind = QuantityKind::dimensionless;
  Unit unit = unit::number;
  LengthUse length_use = LengthUse::ground;
};

/// A published limit of validity, in words, and where it is stated.
struct LimitDescription {
  std::string sentence;
  std::string source;
};

/// What a method is good for; groups the lists of screens and handbook.
enum class MethodGroup {
  rock_size,
  layer,
  toe,
  scour,
  soil,
  filter,
  mix,
  cover,
  quantities,
  water,
  evidence,
  reliability
};
std::string_view group_name(MethodGroup group);

/// Everything about one published method that is not its arithmetic. Registry, command line,
/// screens, handbook and reports are driven by it.
struct MethodDescription {
  MethodDescription();
  MethodDescription(const MethodDescription&);
  MethodDescription(MethodDescription&&) noexcept;
  MethodDescription& operator=(const MethodDescription&);
  MethodDescription& operator=(MethodDescription&&) noexcept;
  ~MethodDescription();

  std::string id;       ///< "usace-bank-and-bed"; also the name of checks/<id>.json
  std::string title;    ///< "USACE bank and bed equation"
  std::string purpose;  ///< one or two sentences: what it answers and where it is used
  MethodGroup group = MethodGroup::rock_size;
  std::vector<Source> sources;
  std::vector<InputDescription> inputs;
  std::vector<OutputDescription> outputs;
  std::vector<LimitDescription> limits;
  std::vector<std::string> cautions;
};

}  // namespace proofstone
