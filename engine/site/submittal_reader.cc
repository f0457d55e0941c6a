#include "engine/site/submittal_reader.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/rock/rock_requirements_reader.h"
#include "engine/site/filter_reader.h"
#include "engine/site/item_reader.h"

namespace proofstone {
namespace {

constexpr std::size_t most_tests = 200;

std::vector<std::string> read_sentences(FieldReader& reader, const char* field) {
  std::vector<std::string> sentences;
  const auto* list = reader.optional_list(field);
  if (list == nullptr) return sentences;
  for (std::size_t i = 0; i < list->size(); ++i) {
    const auto& one = (*list)[i];
    if (one.is_string() && !one.get_ref<const std::string&>().empty()) {
      sentences.push_back(one.get<std::string>());
    } else {
      reader.report("not-a-text", "A sentence belongs here.", fmt::format("{}/{}", field, i),
                    "a text");
    }
  }
  return sentences;
}

void read_limits(FieldReader& reader, Requirements& requirements, Problems& problems) {
  const auto* list = reader.optional_list("limits");
  const auto from = list == nullptr ? reader.optional_text("from") : reader.required_text("from");
  if (list == nullptr) return;
  for (std::size_t i = 0; i < list->size(); ++i) {
    FieldReader one((*list)[i], fmt::format("/requirements/limits/{}", i), problems);
    requirements.limits.push_back(read_rock_limit(one, {from, "document", SourceStanding::stated}));
    requirements.limits.back().from = from;
    one.finish();
  }
}

/// Results of one test; FieldReader reads each as a field "results" of its own.
std::vector<double> read_results(FieldReader& reader, RockTest test, Problems& problems) {
  std::vector<double> results;
  if (reader.required("results") == nullptr) return results;
  const auto* list = reader.optional_list("results");
  if (list == nullptr) return results;
  if (list->empty() || list->size() > most_tests) {
    reader.report("outside-allowed", "A test has results.", "results", "1 to 200 of them");
    return results;
  }
  for (std::size_t i = 0; i < list->size(); ++i) {
    const nlohmann::json wrapped = {{fmt::format("{}", i), (*list)[i]}};
    FieldReader one(wrapped, reader.pointer() + "/results", problems);
    if (const auto result = read_result(one, fmt::format("{}", i), test)) {
      results.push_back(*result);
    }
  }
  return results;
}

bool is_date(const std::string& text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  for (const std::size_t i : {0U, 1U, 2U, 3U, 5U, 6U, 8U, 9U}) {
    if (text[i] < '0' || text[i] > '9') return false;
  }
  const auto month = text.substr(5, 2);
  const auto day = text.substr(8, 2);
  return month >= "01" && month <= "12" && day >= "01" && day <= "31";
}

}  // namespace

Requirements read_requirements(FieldReader& state, Problems& problems) {
  Requirements requirements;
  const auto* json = state.optional("requirements");
  if (json == nullptr) return requirements;
  FieldReader reader(*json, "/requirements", problems);
  requirements.set = reader.optional_text("set");
  const auto& sets = requirement_catalog().sets;
  const bool known = requirements.set.empty() ||
                     std::any_of(sets.begin(), sets.end(), [&](const RequirementSet& set) {
                       return set.id == requirements.set;
                     });
  if (!known) {
    std::string allowed;
    for (const auto& set : sets) allowed += (allowed.empty() ? "" : ", ") + set.id;
    reader.report("unknown-word", "No set of requirements is called this.", "set", allowed);
  }
  if (reader.has("exposure")) {
    requirements.exposure = reader.choice<std::string_view>(
        "exposure", {{"severe", "severe"}, {"moderate", "moderate"}, {"mild", "mild"}},
        std::nullopt);
  }
  read_limits(reader, requirements, problems);
  requirements.frequency = read_sentences(reader, "frequency");
  requirements.placing = read_sentences(reader, "placing");
  reader.finish();
  return requirements;
}

std::optional<Submittal> read_submittal(FieldReader& reader, const std::string& id,
                                        Problems& problems) {
  Submittal submittal;
  submittal.id = id;
  submittal.name = reader.required_text("name");
  submittal.source = reader.required_text("source");
  submittal.rock_class = reader.required_text("class");
  submittal.date = reader.required_text("date");
  submittal.from = reader.optional_text("from");
  if (!submittal.date.empty() && !is_date(submittal.date)) {
    reader.report("not-a-date", "This is not a date.", "date", "YYYY-MM-DD");
  }
  if (reader.required("tests") != nullptr) {
    const auto* list = reader.optional_list("tests");
    for (std::size_t i = 0; list != nullptr && i < list->size(); ++i) {
      FieldReader one((*list)[i], fmt::format("{}/tests/{}", reader.pointer(), i), problems);
      SubmittedTest test;
      const auto before = problems.size();
      test.test = read_rock_test(one);
      if (problems.size() != before) continue;  // what is allowed hangs on the test
      test.manner = read_manner(one, test.test);
      test.results = read_results(one, test.test, problems);
      one.finish();
      submittal.tests.push_back(std::move(test));
    }
  }
  GradationBasis basis;
  basis.size = reader.choice<SizeMeaning>("size_meaning",
                                          {{"intermediate axis", SizeMeaning::intermediate_axis},
                                           {"sphere", SizeMeaning::sphere},
                                           {"sieve", SizeMeaning::sieve}},
                                          SizeMeaning::intermediate_axis);
  basis.percent = reader.choice<PercentOf>(
      "percent_of", {{"mass", PercentOf::mass}, {"count", PercentOf::count}}, PercentOf::mass);
  if (reader.has("gradation")) {
    submittal.gradation = read_gradation(reader, basis, problems);
    if (!submittal.gradation) return std::nullopt;
  }
  return submittal;
}

bool has_chosen(const Requirements& requirements) {
  return !requirements.set.empty() || !requirements.limits.empty();
}

std::vector<RockLimit> limits_in_force(const Requirements& requirements) {
  std::vector<RockLimit> limits;
  const auto add = [&](const std::vector<RockLimit>& more) {
    for (const auto& limit : more) {
      const bool other_exposure = !limit.exposure.empty() && !requirements.exposure.empty() &&
                                  limit.exposure != requirements.exposure;
      if (!other_exposure) limits.push_back(limit);
    }
  };
  for (const auto& set : requirement_catalog().sets) {
    if (!has_chosen(requirements) || set.id == requirements.set) add(set.limits);
  }
  add(requirements.limits);
  return limits;
}

}  // namespace proofstone
