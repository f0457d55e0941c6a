// What the screens of the field ask before and between looks.
#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "report/request.h"

namespace proofstone {
namespace {

using nlohmann::json;

json revision(const char* id, json after, json changes) {
  return {{"id", id},
          {"after", std::move(after)},
          {"time", "2026-05-04T15:10:00Z"},
          {"author", "A"},
          {"changes", std::move(changes)}};
}

json document_of(json revisions) {
  return {{"proofstone", "site"}, {"format", 1}, {"revisions", std::move(revisions)}};
}

json ask(json request) { return json::parse(answer_request(request.dump())); }

json lots_document(json lot) {
  return document_of(json::array({revision(
      "r1", json::array(),
      json::array(
          {json{{"set", "/name"}, {"to", "Invented"}},
           json{{"set", "/sources/quarry"},
                {"to",
                 {{"name", "Quarry"}, {"specific_gravity", "2.65"}, {"angularity", "angular"}}}},
           json{{"set", "/lots/pile"}, {"to", std::move(lot)}}}))}));
}

TEST(CountSheet, GivesBinsThatTheDocumentTakes) {
  for (const char* units : {"us", "si"}) {
    const auto document = lots_document(
        {{"name", "Pile"}, {"source", "quarry"}, {"class", "fhwa-3"}, {"zones", json::array()}});
    const auto answer =
        ask({{"ask", "count-sheet"}, {"document", document}, {"lot", "pile"}, {"units", units}});
    ASSERT_TRUE(answer.contains("count_sheet")) << answer.dump();
    auto bins = answer["count_sheet"]["bins"];
    ASSERT_GE(bins.size(), 6U);
    EXPECT_FALSE(bins[0].contains("larger_than"));
    for (std::size_t i = 1; i < bins.size(); ++i) {
      EXPECT_EQ(bins[i]["larger_than"], bins[i - 1]["not_larger_than"]);
    }
    for (auto& bin : bins) {
      bin.erase("text");
      bin["stones"] = 4;
    }
    auto counted = document;
    counted["revisions"].push_back(
        revision("r2", json::array({"r1"}),
                 json::array({json{{"set", "/looks/count"},
                                   {"to",
                                    {{"name", "Count"},
                                     {"kind", "stone count"},
                                     {"lot", "pile"},
                                     {"picking", answer["count_sheet"]["pickings"][0]["word"]},
                                     {"stones", {{"bins", bins}}}}}}})));
    const auto said =
        ask({{"ask", "lot"}, {"document", counted}, {"lot", "pile"}, {"units", units}});
    EXPECT_TRUE(said.contains("findings")) << said.dump();
  }
}

TEST(CountSheet, NamesALotThatIsNotThere) {
  const auto document = lots_document(
      {{"name", "Pile"}, {"source", "quarry"}, {"class", "fhwa-3"}, {"zones", json::array()}});
  const auto missing = ask({{"ask", "count-sheet"}, {"document", document}, {"lot", "heap"}});
  EXPECT_TRUE(missing.contains("problems"));
}

TEST(State, IsTheFoldWithItsHistory) {
  const auto document = document_of(json::array(
      {revision("r1", json::array(), json::array({json{{"set", "/name"}, {"to", "First"}}})),
       revision("r2", json::array({"r1"}), json::array({json{{"set", "/name"}, {"to", "Second"}}})),
       revision("r3", json::array({"r1"}), json::array({json{{"remove", "/name"}}}))}));
  const auto answer = ask({{"ask", "state"}, {"document", document.dump()}});
  ASSERT_TRUE(answer.contains("state")) << answer.dump();
  EXPECT_EQ(answer["state"]["name"], "Second") << "what one edits, another does not remove unseen";
  ASSERT_EQ(answer["conflicts"].size(), 1U);
  EXPECT_EQ(answer["conflicts"][0]["pointer"], "/name");
  EXPECT_EQ(answer["conflicts"][0]["stands"]["to"], "Second");
  EXPECT_EQ(answer["conflicts"][0]["passed_over"]["remove"], "/name");
  EXPECT_EQ(answer["heads"], json::array({"r2", "r3"}));
  EXPECT_EQ(answer["revisions"][1]["touches"], json::array({"/name"}));
}

TEST(State, RefusesWhatIsNoSite) {
  EXPECT_TRUE(ask({{"ask", "state"}, {"document", "[1, 2"}}).contains("problems"));
  EXPECT_TRUE(ask({{"ask", "state"}, {"document", 5}}).contains("problems"));
  EXPECT_TRUE(ask({{"ask", "state"}}).contains("problems"));
}

}  // namespace
}  // namespace proofstone
