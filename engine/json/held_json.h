#pragma once

#include <memory>
#include <nlohmann/json_fwd.hpp>

namespace proofstone {

/// A JSON value that a struct carries without its header knowing the JSON library, which costs each
/// file that includes it seconds of compiling. Never changed, so copies share it; at first an empty
/// object.
class HeldJson {
 public:
  HeldJson();
  explicit HeldJson(const nlohmann::json& value);

  const nlohmann::json& operator*() const { return *value_; }
  const nlohmann::json* operator->() const { return value_.get(); }

 private:
  std::shared_ptr<const nlohmann::json> value_;
};

}  // namespace proofstone
