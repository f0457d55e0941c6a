#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/json/field_reader.h"
#include "engine/quantity/measure.h"
#include "engine/site/site.h"
#include "formats/site_files.h"

namespace proofstone {

/// What a question is answered with, as JSON text.
class Answer {
 public:
  /// An answer that holds little, as a value.
  explicit Answer(const nlohmann::json& value);
  /// An answer that was written down as JSON text.
  static Answer written(std::string json_text);

  const std::string& text() const { return text_; }

 private:
  Answer() = default;

  std::string text_;
};

/// The answer that is not possible, and why.
Answer refused(const Problems& problems);

/// `units` of a request: "us" or "si".
UnitSystem units_of(FieldReader& request);

/// `files` of a request.
std::vector<SuppliedFile> files_of(FieldReader& request, Problems& problems);

/// `document` of a request, text or JSON, with its files.
Expected<Site> site_of(FieldReader& request, Problems& problems);

/// How wide the pictures are to be, where there are to be any.
std::optional<int> picture_width(FieldReader& request, Problems& problems);

/// What `answer(site)` says of the site of a request whose other fields are read already; refused
/// where something in the request does not read.
template <class AnswerFrom>
Answer answer_on_site(FieldReader& request, Problems& problems, AnswerFrom answer) {
  const auto site = site_of(request, problems);
  request.finish();
  if (!problems.empty()) return refused(problems);
  if (!site) return refused(site.problems());
  return answer(*site);
}

/// An answer under its name, or why there is none.
inline Answer answer_named(const char* name, const Expected<nlohmann::json>& answer) {
  if (!answer) return refused(answer.problems());
  return Answer(nlohmann::json{{name, *answer}});
}

}  // namespace proofstone
