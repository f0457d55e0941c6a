#pragma once

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>

#include "report/request.h"

/// Requests about the example site, for tests.
namespace proofstone {

inline std::string example_file(const std::string& name) {
  std::ifstream stream(PROOFSTONE_SOURCE_FOLDER "/examples/sorrel-creek/" + name, std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

/// The answer to `request` about the example, or about the document that the request brings.
inline nlohmann::json ask_example(nlohmann::json request) {
  if (!request.contains("document")) request["document"] = example_file("site.json");
  request["files"] = nlohmann::json::array();
  for (const char* name :
       {"section-0240.csv", "count-first-deliveries.csv", "weighed-first-deliveries.csv",
        "count-mended-pile.csv", "centreline.csv", "bank-soil.csv", "crushed-bedding.csv"}) {
    request["files"].push_back({{"name", name}, {"text", example_file(name)}});
  }
  return nlohmann::json::parse(answer_request(request.dump()));
}

}  // namespace proofstone
