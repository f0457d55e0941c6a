#include "engine/method/check_table.h"

#include <gtest/gtest.h>

#include <set>

#include "engine/method/registry.h"
#include "engine/rock/embedded_catalog.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {
namespace {

std::string sentences(const Problems& problems) {
  std::string all;
  for (const auto& problem : problems) all += problem.sentence() + "\n";
  return all;
}

bool has_code(const Problems& problems, const std::string& code) {
  for (const auto& problem : problems) {
    if (problem.code == code) return true;
  }
  return false;
}

TEST(PublishedChecks, EveryCaseOfEveryTableIsMet) {
  ASSERT_FALSE(embedded_checks().empty());
  for (const auto& file : embedded_checks()) {
    const auto outcomes = run_check_table(file.text);
    if (!outcomes) {
      ADD_FAILURE() << file.name << ": " << sentences(outcomes.problems());
      continue;
    }
    EXPECT_FALSE(outcomes->empty()) << file.name;
    for (const auto& outcome : *outcomes) {
      EXPECT_TRUE(outcome.passed) << file.name << ", " << outcome.case_id << ": "
                                  << outcome.sentence;
      EXPECT_EQ(file.name, outcome.method + ".json");
    }
  }
}

TEST(PublishedChecks, EveryMethodHasATable) {
  std::set<std::string> tables;
  for (const auto& file : embedded_checks()) tables.insert(std::string(file.name));
  for (const Method* method : all_methods()) {
    EXPECT_TRUE(tables.count(method->description().id + ".json"))
        << method->description().id << " has no published checks";
  }
}

TEST(Registry, IdsAreUniqueAndFound) {
  std::set<std::string> ids;
  for (const Method* method : all_methods()) {
    const auto& id = method->description().id;
    EXPECT_TRUE(ids.insert(id).second) << id;
    EXPECT_EQ(find_method(id), method);
  }
  EXPECT_EQ(find_method("no-such-method"), nullptr);
  for (const Method* method : sizing_methods()) {
    EXPECT_EQ(find_method(method->description().id), method);
  }
}

TEST(Registry, EveryMethodIsDescribed) {
  for (const Method* method : all_methods()) {
    const auto& about = method->description();
    EXPECT_FALSE(about.title.empty()) << about.id;
    EXPECT_FALSE(about.purpose.empty()) << about.id;
    EXPECT_FALSE(about.sources.empty()) << about.id;
    EXPECT_FALSE(about.inputs.empty()) << about.id;
    EXPECT_FALSE(about.outputs.empty()) << about.id;
    for (const auto& input : about.inputs) EXPECT_FALSE(input.meaning.empty()) << about.id;
  }
}

const char* const isbash_start = R"({"method":"isbash","cases":[{"id":"a","about":"b",)"
                                 R"("source":{"document":"d","place":"p","standing":"computed"},)"
                                 R"("inputs":{"velocity":"10 ft/s"},)";

std::string isbash_table(const std::string& rest) { return isbash_start + rest + "}]}"; }

TEST(CheckTable, AMissIsAnOutcomeAndSaysBothValues) {
  const auto outcomes =
      run_check_table(isbash_table(R"("expect":{"d50":{"value":"1 ft","within":"0.1 ft"}})"));
  ASSERT_TRUE(outcomes) << sentences(outcomes.problems());
  ASSERT_EQ(outcomes->size(), 1u);
  EXPECT_FALSE(outcomes->front().passed);
  EXPECT_EQ(outcomes->front().output, "d50");
  EXPECT_NEAR(outcomes->front().expected_si, 0.3048, 1e-12);
  EXPECT_NE(outcomes->front().sentence.find("expected 1 ft ± 0.1 ft, computed 0.65"),
            std::string::npos)
      << outcomes->front().sentence;
}

TEST(CheckTable, AnUnexpectedProblemAndAnUnexpectedValueAreMisses) {
  const auto value = run_check_table(isbash_table(R"("expect_problem":"missing-input")"));
  ASSERT_TRUE(value) << sentences(value.problems());
  EXPECT_FALSE(value->front().passed);
  const std::string table =
      R"({"method":"isbash","cases":[{"id":"a","about":"b",)"
      R"("source":{"document":"d","place":"p","standing":"computed"},"inputs":{},)"
      R"("expect":{"d50":{"value":"1 ft","within":"0.1 ft"}}}]})";
  const auto problem = run_check_table(table);
  ASSERT_TRUE(problem) << sentences(problem.problems());
  EXPECT_FALSE(problem->front().passed);
}

struct BadTable {
  const char* code;
  std::string text;
};

TEST(CheckTable, UnreadableTablesAreNamed) {
  const std::string good = R"("expect":{"d50":{"value":"1 ft","within":"0.1 ft"}})";
  const BadTable tables[] = {
      {"unknown-method", R"({"method":"guess","cases":[{}]})"},
      {"no-cases", R"({"method":"isbash","cases":[]})"},
      {"missing-field", isbash_table(R"("remark":"nothing expected")")},
      {"nothing-expected", isbash_table(R"("expect":{})")},
      {"unknown-output", isbash_table(R"("expect":{"weight":{"value":"1 ft","within":"0.1 ft"}})")},
      {"tolerance", isbash_table(R"("expect":{"d50":{"value":"1 ft"}})")},
      {"tolerance",
       isbash_table(R"("expect":{"d50":{"value":"1 ft","within":"0.1 ft","relative":0.1}})")},
      {"tolerance", isbash_table(R"("expect":{"d50":{"value":"1 ft","within":"0 ft"}})")},
      {"tolerance", isbash_table(R"("expect":{"d50":{"value":"1 ft","relative":-1}})")},
      {"tolerance", isbash_table(R"("expect":{"d50":{"value":"1 ft","relative":"much"}})")},
      {"unknown-field", isbash_table(R"("tolerance":"1 ft",)" + good)},
      {"two-expectations", isbash_table(R"("expect_problem":"dry",)" + good)},
  };
  for (const auto& table : tables) {
    const auto outcomes = run_check_table(table.text);
    ASSERT_FALSE(outcomes) << table.text;
    EXPECT_TRUE(has_code(outcomes.problems(), table.code))
        << table.code << " not among: " << sentences(outcomes.problems());
  }
}

TEST(CheckTable, HostileTextIsAProblem) {
  for (const std::string text : {"", "{", "[]", "null", "\xff\xfe", "{\"method\":1}"}) {
    EXPECT_FALSE(run_check_table(text)) << text;
  }
  EXPECT_FALSE(run_check_table(std::string(100000, '[')));
}

}  // namespace
}  // namespace proofstone
