#include "report/request_reading.h"

#include <fmt/format.h>

#include "engine/json/problem_json.h"
#include "engine/json/strict_json.h"

namespace proofstone {
namespace {

using nlohmann::json;

constexpr int narrowest_picture = 240;
constexpr int widest_picture = 4000;
constexpr int usual_picture = 720;

}  // namespace

Answer::Answer(const json& value)
    : text_(value.dump(-1, ' ', false, json::error_handler_t::replace)) {}

Answer Answer::written(std::string json_text) {
  Answer answer;
  answer.text_ = std::move(json_text);
  return answer;
}

Answer refused(const Problems& problems) {
  return Answer(json{{"problems", problems_json(problems)}});
}

UnitSystem units_of(FieldReader& request) {
  return request.choice<UnitSystem>("units",
                                    {{"us", UnitSystem::us_customary}, {"si", UnitSystem::si}},
                                    UnitSystem::us_customary);
}

std::vector<SuppliedFile> files_of(FieldReader& request, Problems& problems) {
  std::vector<SuppliedFile> files;
  if (const auto* list = request.optional_list("files")) {
    for (std::size_t i = 0; i < list->size(); ++i) {
      FieldReader file((*list)[i], fmt::format("/files/{}", i), problems);
      SuppliedFile supplied;
      supplied.name = file.required_text("name");
      // An empty file is the reader's business to name, not ours.
      if (const auto* text = file.required("text"); text != nullptr && text->is_string()) {
        supplied.text = text->get<std::string>();
      }
      file.finish();
      files.push_back(std::move(supplied));
    }
  }
  return files;
}

Expected<Site> site_of(FieldReader& request, Problems& problems) {
  const auto* document = request.required("document");
  const auto files = files_of(request, problems);
  if (!problems.empty()) return problems;
  json parsed;
  if (document->is_string()) {
    auto strict = parse_strict_json(document->get_ref<const std::string&>());
    if (!strict) return strict.problems();
    parsed = std::move(*strict);
  } else {
    parsed = *document;
  }
  auto whole = with_files(std::move(parsed), files);
  if (!whole) return whole.problems();
  return site_from(std::move(*whole));
}

/// How wide the pictures are to be, where there are to be any.
std::optional<int> picture_width(FieldReader& request, Problems& problems) {
  const auto* wanted = request.optional("pictures");
  if (wanted == nullptr) return std::nullopt;
  FieldReader pictures(*wanted, "/pictures", problems);
  const auto width = pictures.optional_integer("width", narrowest_picture, widest_picture);
  pictures.finish();
  return width.value_or(usual_picture);
}

}  // namespace proofstone
