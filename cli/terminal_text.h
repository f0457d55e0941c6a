#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>

namespace proofstone {

/// Answers of the request interface as text for a terminal, at most 100 columns where it can be.
std::string findings_text(const nlohmann::json& findings);
/// One finding to its last step, source and limit.
std::string finding_text(const nlohmann::json& finding);
std::string problems_text(const nlohmann::json& problems);
std::string methods_text(const nlohmann::json& methods);
std::string method_text(const nlohmann::json& method);
std::string classes_text(const nlohmann::json& all);
std::string evaluation_text(const nlohmann::json& answer);
std::string blend_text(const nlohmann::json& blend);
std::string count_plan_text(const nlohmann::json& plan);
std::string quantities_text(const nlohmann::json& quantities);
std::string substitution_text(const nlohmann::json& study);
std::string checks_text(const nlohmann::json& checks);

/// Breaks a text into lines of at most `columns` characters, each after `indent` spaces.
std::string wrapped(const std::string& text, int indent, int columns = 100);

}  // namespace proofstone
