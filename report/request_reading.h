#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <utility>
#include <vector>

#include "engine/json/field_reader.h"
#include "engine/quantity/measure.h"
#include "engine/site/site.h"
#include "formats/site_files.h"

namespace proofstone {

/// The answer that is not possible, and why.
nlohmann::json refused(const Problems& problems);

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
template <class Answer>
nlohmann::json answer_on_site(FieldReader& request, Problems& problems, Answer answer) {
  const auto site = site_of(request, problems);
  request.finish();
  if (!problems.empty()) return refused(problems);
  if (!site) return refused(site.problems());
  return answer(*site);
}

/// An answer under its name, or why there is none.
inline nlohmann::json answer_named(const char* name, Expected<nlohmann::json> answer) {
  if (!answer) return refused(answer.problems());
  return {{name, std::move(*answer)}};
}

}  // namespace proofstone
