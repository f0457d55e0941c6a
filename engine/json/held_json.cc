#include "engine/json/held_json.h"

#include <nlohmann/json.hpp>

namespace proofstone {

HeldJson::HeldJson() {
  static const auto empty = std::make_shared<const nlohmann::json>(nlohmann::json::object());
  value_ = empty;
}

HeldJson::HeldJson(const nlohmann::json& value)
    : value_(std::make_shared<const nlohmann::json>(value)) {}

}  // namespace proofstone
