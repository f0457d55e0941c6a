#pragma once

#include <nlohmann/json.hpp>
#include <string>

namespace proofstone {

/// A small whole site for tests: one bank zone on a bend, one lot with a count in bins and a
/// material on offer. Tests change it by JSON pointer into the items.
class ExampleDocument {
 public:
  ExampleDocument();
  /// The items by collection and id, as a first revision sets them.
  nlohmann::json items;
  nlohmann::json document() const;
  std::string text() const { return document().dump(); }
};

}  // namespace proofstone
