#include "cli/engine_question.h"

#include <nlohmann/json.hpp>

#include "report/request.h"

namespace proofstone {

using nlohmann::json;

json ask(const json& request) {
  // Words of a command line may hold any bytes; what is no UTF-8 is then refused by the engine.
  return json::parse(answer_request(request.dump(-1, ' ', false, json::error_handler_t::replace)));
}

}  // namespace proofstone
