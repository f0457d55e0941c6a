#include "engine/site/fold.h"

#include <gtest/gtest.h>

namespace proofstone {
namespace {

using nlohmann::json;

json envelope(const json& revisions) {
  return {{"proofstone", "site"}, {"format", 1}, {"revisions", revisions}};
}

json revision(const std::string& id, const json& changes, const json& after = json::array()) {
  return {{"id", id},
          {"after", after},
          {"time", "2026-05-04T15:10:00Z"},
          {"author", "A. Tester"},
          {"changes", changes}};
}

std::string first_code(const json& document) {
  const auto read = read_revisions(document);
  if (!read) return read.problems().front().code;
  const auto state = fold(*read);
  return state ? "good" : state.problems().front().code;
}

TEST(Revision, FoldPlaysChangesInOrder) {
  const auto read = read_revisions(
      envelope({revision("r1", {{{"set", "/zones/a"}, {"to", {{"name", "A"}, {"class", "x"}}}},
                                {{"set", "/zones/b"}, {"to", {{"name", "B"}}}}}),
                revision("r2", {{{"set", "/zones/a/class"}, {"to", "y"}}, {{"remove", "/zones/b"}}},
                         json::array({"r1"}))}));
  ASSERT_TRUE(read);
  EXPECT_EQ((*read)[1].author, "A. Tester");
  const auto state = fold(*read);
  ASSERT_TRUE(state);
  EXPECT_EQ(state->state, json::parse(R"({"zones": {"a": {"name": "A", "class": "y"}}})"));
}

TEST(Revision, FoldOfAPrefixIsAnEarlierState) {
  const auto document =
      envelope({revision("r1", {{{"set", "/name"}, {"to", "first"}}}),
                revision("r2", {{{"set", "/name"}, {"to", "second"}}}, json::array({"r1"}))});
  auto read = read_revisions(document);
  ASSERT_TRUE(read);
  read->pop_back();
  EXPECT_EQ(fold(*read)->state["name"], "first");
}

TEST(Revision, NamesWhatCannotBePlayed) {
  const auto one = [](const json& change) {
    return envelope(json::array({revision("r1", json::array({change}))}));
  };
  EXPECT_EQ(first_code(one({{"set", "/zones/a/b/c"}, {"to", 1}})), "no-such-place");
  EXPECT_EQ(first_code(one({{"remove", "/zones/a"}})), "no-such-place");
  EXPECT_EQ(first_code(one({{"set", "zones"}, {"to", 1}})), "bad-pointer");
  EXPECT_EQ(first_code(one({{"set", "/a~9"}, {"to", 1}})), "bad-pointer");
  EXPECT_EQ(first_code(one({{"set", "/name"}})), "missing-field");
  EXPECT_EQ(first_code(envelope({revision("r1", json::array()), revision("r1", json::array())})),
            "repeated-id");
  EXPECT_EQ(first_code(envelope(json::array({revision("r2", json::array(), json::array({"r1"}))}))),
            "unknown-revision");
}

TEST(Revision, NamesAWrongEnvelope) {
  EXPECT_EQ(first_code(json::array()), "not-an-object");
  EXPECT_EQ(first_code({{"proofstone", "findings"}, {"format", 1}, {"revisions", json::array()}}),
            "not-a-site");
  EXPECT_EQ(first_code({{"proofstone", "site"}, {"format", 2}, {"revisions", json::array()}}),
            "unknown-format");
  EXPECT_EQ(first_code(envelope(json::array())), "empty");
  auto late = revision("r1", json::array());
  late["time"] = "yesterday";
  EXPECT_EQ(first_code(envelope(json::array({late}))), "bad-time");
  late["time"] = "2026-13-40T99:00:00Z";
  EXPECT_EQ(first_code(envelope(json::array({late}))), "bad-time");
  auto extra = revision("r1", json::array());
  extra["colour"] = "blue";
  EXPECT_EQ(first_code(envelope(json::array({extra}))), "unknown-field");
}

}  // namespace
}  // namespace proofstone
