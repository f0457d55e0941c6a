#include "engine/rock/rock_requirements_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/json/strict_json.h"

namespace proofstone {
namespace {

constexpr int most_cycles = 1000;

bool has_salt(RockTest test) { return test == RockTest::sulfate_soundness; }
bool has_cycles(RockTest test) { return has_salt(test) || test == RockTest::freeze_thaw; }

Source read_source(FieldReader& parent, Problems& problems) {
  Source source;
  const auto* json = parent.required("source");
  if (json == nullptr) return source;
  FieldReader reader(*json, parent.pointer() + "/source", problems);
  source.document = reader.required_text("document");
  source.place = reader.required_text("place");
  if (const auto known = standing_called(reader.required_text("standing"))) {
    source.standing = *known;
  } else {
    reader.report("unknown-word", "This standing is not known.", "standing",
                  "published, memory, computed, common practice");
  }
  reader.finish();
  return source;
}

/// Every element of a list as one object.
template <class Read>
void read_each(FieldReader& parent, const std::string& field, Problems& problems, Read read) {
  const auto* list = parent.optional_list(field);
  if (list == nullptr) return;
  for (std::size_t i = 0; i < list->size(); ++i) {
    FieldReader reader((*list)[i], fmt::format("{}/{}/{}", parent.pointer(), field, i), problems);
    read(reader);
    reader.finish();
  }
}

std::vector<SourcedRule> read_rules(FieldReader& parent, const char* field, Problems& problems) {
  std::vector<SourcedRule> rules;
  read_each(parent, field, problems, [&](FieldReader& reader) {
    SourcedRule rule;
    rule.what = reader.required_text("what");
    rule.source = read_source(reader, problems);
    rules.push_back(std::move(rule));
  });
  return rules;
}

RequirementSet read_set(FieldReader& reader, Problems& problems) {
  RequirementSet set;
  set.id = reader.required_text("id");
  set.name = reader.required_text("name");
  set.source = read_source(reader, problems);
  read_each(reader, "limits", problems, [&](FieldReader& one) {
    set.limits.push_back(read_rock_limit(one, set.source));
    set.limits.back().from = set.name;
  });
  if (const auto* notes = reader.optional_list("notes")) {
    for (const auto& note : *notes) set.notes.push_back(note.get<std::string>());
  }
  return set;
}

}  // namespace

RockTest read_rock_test(FieldReader& reader) {
  std::vector<std::pair<std::string, RockTest>> words;
  for (const auto& kind : rock_test_kinds()) words.emplace_back(kind.id, kind.test);
  return reader.choice<RockTest>("test", words, std::nullopt);
}

RockTestManner read_manner(FieldReader& reader, RockTest test) {
  RockTestManner manner;
  if (has_salt(test) && reader.has("salt")) {
    const bool sodium = reader.choice<bool>("salt", {{"sodium", true}, {"magnesium", false}}, true);
    manner.salt = sodium ? "sodium" : "magnesium";
  }
  if (has_cycles(test)) {
    if (const auto cycles = reader.optional_quantity<Dimensionless>("cycles")) {
      const double number = cycles->number();
      if (number >= 1 && number <= most_cycles) {
        manner.cycles = static_cast<int>(number);
      } else {
        reader.report("outside-allowed", "No test has so many cycles.", "cycles", "1 to 1000");
      }
    }
  }
  if (test == RockTest::shape_share) {
    if (const auto above = reader.optional_quantity<Dimensionless>("above")) {
      manner.above = above->number();
    } else {
      reader.report("missing-field", "A share of slender stones says from where they are counted.",
                    "above", "length over thickness, such as \"3\"");
    }
  }
  return manner;
}

std::optional<double> read_result(FieldReader& reader, const std::string& field, RockTest test) {
  const auto& kind = kind_of(test);
  std::optional<double> si;
  if (kind.kind == QuantityKind::stress) {
    if (const auto stress = reader.optional_quantity<Stress>(field)) si = stress->si();
  } else if (const auto number = reader.optional_quantity<Dimensionless>(field)) {
    si = number->si();
  }
  if (si && (*si < kind.least || *si > kind.most)) {
    reader.report("implausible", fmt::format("No rock has this as its {}.", kind.name), field,
                  fmt::format("{} to {}", rock_test_text(test, kind.least, UnitSystem::si),
                              rock_test_text(test, kind.most, UnitSystem::si)));
    return std::nullopt;
  }
  return si;
}

RockLimit read_rock_limit(FieldReader& reader, const Source& source) {
  RockLimit limit;
  limit.test = read_rock_test(reader);
  limit.manner = read_manner(reader, limit.test);
  limit.of_each = reader.choice<bool>("of", {{"each", true}, {"average", false}}, std::nullopt);
  limit.least = read_result(reader, "least", limit.test);
  limit.most = read_result(reader, "most", limit.test);
  if (!reader.has("least") && !reader.has("most")) {
    reader.report("missing-field", "A limit limits something.", "least", "least or most");
  }
  limit.exposure = reader.optional_text("exposure");
  if (!limit.exposure.empty() && limit.exposure != "severe" && limit.exposure != "moderate" &&
      limit.exposure != "mild") {
    reader.report("unknown-word", "This exposure is not known.", "exposure",
                  "severe, moderate, mild");
  }
  limit.source = source;
  limit.source.place = reader.optional_text("place", source.place);
  if (const auto standing = reader.optional_text("standing"); !standing.empty()) {
    limit.source.standing = standing_called(standing).value_or(source.standing);
  }
  return limit;
}

Expected<RequirementCatalog> read_requirement_catalog(std::string_view json_text) {
  const auto json = parse_strict_json(json_text);
  if (!json) return json.problems();
  Problems problems;
  RequirementCatalog catalog;
  FieldReader reader(*json, "", problems);
  reader.required_text("proofstone");
  reader.required("format");
  read_each(reader, "sets", problems,
            [&](FieldReader& one) { catalog.sets.push_back(read_set(one, problems)); });
  catalog.placing = read_rules(reader, "placing", problems);
  catalog.sampling = read_rules(reader, "sampling", problems);
  reader.finish();
  if (!problems.empty()) return problems;
  return catalog;
}

}  // namespace proofstone
