#include "engine/site/item_reader.h"

#include <algorithm>

namespace proofstone {

namespace {
constexpr std::size_t longest_id = 64;
}  // namespace

bool is_item_id(const std::string& text) {
  if (text.empty() || text.size() > longest_id) return false;
  return std::all_of(text.begin(), text.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
  });
}

void add_located(Problems& problems, const Problems& more, const std::string& pointer) {
  for (auto problem : more) {
    problem.what =
        problem.where.empty() ? problem.what : fmt::format("{}: {}", problem.where, problem.what);
    problem.where = pointer;
    problems.push_back(std::move(problem));
  }
}

bool is_unread_file(FieldReader& reader, const std::string& field, const nlohmann::json& value) {
  if (!value.is_object() || !value.contains("file")) return false;
  reader.report("file-not-read",
                fmt::format("The file {} was not read into the document.", value["file"].dump()),
                field, "supply the file beside the document");
  return true;
}

}  // namespace proofstone
