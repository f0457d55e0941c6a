#include "engine/site/fold.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "engine/site/conflict_findings.h"

namespace proofstone {
namespace {

using nlohmann::json;

Change set(const std::string& pointer, json to) {
  return {Change::Action::set, pointer, std::move(to)};
}

Change removal(const std::string& pointer) { return {Change::Action::remove, pointer, {}}; }

Revision revision(const std::string& id, const std::vector<std::string>& after, int minute,
                  std::vector<Change> changes) {
  Revision one;
  one.id = id;
  one.after = after;
  one.time = "2026-05-04T15:" + std::to_string(10 + minute) + ":00Z";
  one.author = "author of " + id;
  one.changes = std::move(changes);
  return one;
}

/// A zone and a lot, upon which two people work.
Revision layout() {
  json zone;
  zone["name"] = "Bank";
  zone["class"] = "x";
  json lot;
  lot["name"] = "Pile";
  return revision("r1", {}, 0, {set("/zones/bank", zone), set("/lots/pile", lot)});
}

/// The fold of two sides upon the layout, which does not depend on whose copy comes first.
Folded fold_of(const Revision& one, const Revision& other) {
  const auto folded = fold({layout(), one, other});
  const auto turned = fold({layout(), other, one});
  EXPECT_TRUE(folded) << (folded ? "" : folded.problems().front().sentence());
  EXPECT_TRUE(turned);
  EXPECT_EQ(folded->state, turned->state);
  EXPECT_EQ(folded->last, turned->last);
  EXPECT_EQ(folded->conflicts.size(), turned->conflicts.size());
  return *folded;
}

TEST(Fold, KeepsBothSidesThatDoNotCross) {
  const auto folded = fold_of(revision("a", {"r1"}, 1, {set("/zones/bank/class", "y")}),
                              revision("b", {"r1"}, 2, {set("/lots/pile/class", "z")}));
  EXPECT_EQ(folded.state["zones"]["bank"]["class"], "y");
  EXPECT_EQ(folded.state["lots"]["pile"]["class"], "z");
  EXPECT_TRUE(folded.conflicts.empty());
  EXPECT_EQ(folded.heads.size(), 2U);
}

TEST(Fold, OfTwoValuesTheLaterStandsAndBothAreTold) {
  const auto folded = fold_of(revision("a", {"r1"}, 1, {set("/zones/bank/class", "y")}),
                              revision("b", {"r1"}, 2, {set("/zones/bank/class", "z")}));
  EXPECT_EQ(folded.state["zones"]["bank"]["class"], "z");
  ASSERT_EQ(folded.conflicts.size(), 1U);
  const auto& conflict = folded.conflicts.front();
  EXPECT_EQ(conflict.pointer, "/zones/bank/class");
  EXPECT_EQ(conflict.stands.author, "author of b");
  EXPECT_EQ(conflict.stands.change.value, "z");
  EXPECT_EQ(conflict.passed_over.change.value, "y");
}

TEST(Fold, TheSameValueTwiceIsNoConflict) {
  const auto folded = fold_of(revision("a", {"r1"}, 1, {set("/zones/bank/class", "y")}),
                              revision("b", {"r1"}, 2, {set("/zones/bank/class", "y")}));
  EXPECT_TRUE(folded.conflicts.empty());
}

TEST(Fold, WhatBothRemoveIsGoneOnce) {
  const auto folded = fold_of(revision("a", {"r1"}, 1, {removal("/lots/pile")}),
                              revision("b", {"r1"}, 2, {removal("/lots/pile")}));
  EXPECT_FALSE(folded.state["lots"].contains("pile"));
  EXPECT_TRUE(folded.conflicts.empty());
}

TEST(Fold, WhatOneSideEditsTheOtherDoesNotRemoveUnseen) {
  for (const int minute : {1, 3}) {
    const auto folded = fold_of(revision("a", {"r1"}, minute, {removal("/lots/pile/name")}),
                                revision("b", {"r1"}, 2, {set("/lots/pile/name", "Heap")}));
    EXPECT_EQ(folded.state["lots"]["pile"]["name"], "Heap") << minute;
    ASSERT_EQ(folded.conflicts.size(), 1U);
    EXPECT_EQ(folded.conflicts.front().stands.revision, "b");
  }
}

TEST(Fold, AnEditInsideWhatTheOtherRemovesIsTold) {
  // The removal is played first: there is nothing left to edit.
  const auto gone = fold_of(revision("a", {"r1"}, 1, {removal("/lots/pile")}),
                            revision("b", {"r1"}, 2, {set("/lots/pile/name", "Heap")}));
  EXPECT_FALSE(gone.state["lots"].contains("pile"));
  ASSERT_EQ(gone.conflicts.size(), 1U);
  EXPECT_EQ(gone.conflicts.front().pointer, "/lots/pile/name");
  EXPECT_EQ(gone.conflicts.front().passed_over.revision, "b");
  // The edit is played first: the item stays.
  const auto kept = fold_of(revision("a", {"r1"}, 3, {removal("/lots/pile")}),
                            revision("b", {"r1"}, 2, {set("/lots/pile/name", "Heap")}));
  EXPECT_EQ(kept.state["lots"]["pile"]["name"], "Heap");
  ASSERT_EQ(kept.conflicts.size(), 1U);
  EXPECT_EQ(kept.conflicts.front().passed_over.revision, "a");
}

TEST(Fold, ARewrittenItemAgainstAnEditInsideItIsTold) {
  const auto folded = fold_of(revision("a", {"r1"}, 1, {set("/lots/pile/name", "Heap")}),
                              revision("b", {"r1"}, 2, {set("/lots/pile", json::object())}));
  EXPECT_TRUE(folded.state["lots"]["pile"].empty());
  ASSERT_EQ(folded.conflicts.size(), 1U);
  EXPECT_EQ(folded.conflicts.front().passed_over.change.value, "Heap");
}

TEST(Fold, ASideThatRewritesTheWholeCrossesOnce) {
  json bank;
  bank["name"] = "Bank";
  bank["class"] = "whole";
  const auto inner = revision("a", {"r1"}, 1, {set("/zones/bank/class", "y")});
  const auto whole = revision("a2", {"a"}, 3, {set("/zones/bank", bank)});
  // The other side is played before, between and after them.
  for (const int minute : {0, 2, 4}) {
    const auto other = revision("b", {"r1"}, minute, {set("/zones/bank/class", "z")});
    const auto folded = fold({layout(), inner, whole, other});
    ASSERT_TRUE(folded);
    ASSERT_EQ(folded->conflicts.size(), 1U) << minute;
    const auto& conflict = folded->conflicts.front();
    EXPECT_EQ(conflict.pointer, "/zones/bank/class") << minute;
    const auto& own = conflict.stands.revision == "b" ? conflict.passed_over : conflict.stands;
    EXPECT_EQ(own.revision, "a2") << minute;
  }
}

TEST(Fold, WhatTheRewritingSideLeftAloneStillCrosses) {
  json bank;
  bank["name"] = "Bank";
  const auto other =
      revision("b", {"r1"}, 2, {set("/zones/bank/class", "z"), set("/zones/bank/name", "Shore")});
  const auto folded = fold({layout(), revision("a", {"r1"}, 1, {set("/zones/bank/class", "y")}),
                            revision("a2", {"a"}, 3, {set("/zones/bank", bank)}), other});
  ASSERT_TRUE(folded);
  EXPECT_EQ(folded->conflicts.size(), 2U);
}

TEST(Fold, CrossingEntriesAreNamedAsThePlanNamesThem) {
  const auto folded =
      fold_of(revision("a", {"r1"}, 1, {set("/zones/bank/layer_thickness", "2 ft")}),
              revision("b", {"r1"}, 2, {set("/zones/bank/layer_thickness", "3 ft")}));
  const auto words = in_words(folded.conflicts, folded.state);
  ASSERT_EQ(words.size(), 1U);
  EXPECT_EQ(words.front().place, "Bank, layer thickness");
  EXPECT_EQ(words.front().stands.what, "set Bank, layer thickness to \"3 ft\"");
  // What was removed has no name any more; its id stands for it.
  const auto gone = fold_of(revision("a", {"r1"}, 1, {removal("/lots/pile")}),
                            revision("b", {"r1"}, 2, {set("/lots/pile/name", "Heap")}));
  EXPECT_EQ(in_words(gone.conflicts, gone.state).front().place, "lots pile, name");
}

TEST(Fold, ARevisionUponBothSettlesByWritingOrBySayingSo) {
  const auto a = revision("a", {"r1"}, 1, {set("/zones/bank/class", "y")});
  const auto b = revision("b", {"r1"}, 2, {set("/zones/bank/class", "z")});
  const auto left = [&](const Revision& after) {
    const auto folded = fold({layout(), a, b, after});
    EXPECT_TRUE(folded);
    return folded->conflicts.size();
  };
  EXPECT_EQ(left(revision("c", {"a", "b"}, 3, {set("/zones/bank/class", "y")})), 0U);
  EXPECT_EQ(left(revision("c", {"a", "b"}, 3, {removal("/zones/bank")})), 0U);
  EXPECT_EQ(left(revision("c", {"a", "b"}, 3, {set("/zones/bank/name", "Left")})), 1U);
  auto says = revision("c", {"a", "b"}, 3, {});
  says.settles = {"/zones/bank/class"};
  EXPECT_EQ(left(says), 0U);
  says.after = {"b"};
  EXPECT_EQ(left(says), 1U) << "it did not know of the other side";
}

TEST(Fold, ASideGoesOnBesideTheOther) {
  const auto folded =
      fold({layout(), revision("a", {"r1"}, 1, {removal("/lots/pile")}),
            revision("b", {"r1"}, 2, {set("/lots/pile/name", "Heap")}),
            revision("b2", {"b"}, 3, {set("/lots/pile/name", "Mound"), removal("/lots/pile")})});
  ASSERT_TRUE(folded);
  EXPECT_FALSE(folded->state["lots"].contains("pile"));
}

TEST(Fold, ARevisionThatNamesNoneStandsUponTheOneBefore) {
  const auto folded = fold({layout(), revision("r2", {}, 1, {set("/zones/bank/class", "y")}),
                            revision("r3", {}, 0, {set("/zones/bank/class", "z")})});
  ASSERT_TRUE(folded);
  EXPECT_EQ(folded->state["zones"]["bank"]["class"], "z");
  EXPECT_TRUE(folded->conflicts.empty());
  EXPECT_EQ(folded->heads, std::vector<std::string>{"r3"});
}

TEST(Fold, EveryOrderOfThreeSidesLeavesTheSame) {
  std::vector<Revision> sides = {
      revision("a", {"r1"}, 1, {set("/zones/bank/class", "y"), removal("/lots/pile")}),
      revision("b", {"r1"}, 1, {set("/zones/bank", json::object()), set("/name", "Site")}),
      revision("c", {"r1"}, 2, {set("/lots/pile/name", "Heap"), set("/zones/bank/class", "w")})};
  const auto by_id = [](const Revision& one, const Revision& other) { return one.id < other.id; };
  const auto first = fold({layout(), sides[0], sides[1], sides[2]});
  ASSERT_TRUE(first);
  int orders = 0;
  do {
    const auto folded = fold({layout(), sides[0], sides[1], sides[2]});
    ASSERT_TRUE(folded);
    EXPECT_EQ(folded->state, first->state);
    EXPECT_EQ(folded->conflicts.size(), first->conflicts.size());
    ++orders;
  } while (std::next_permutation(sides.begin(), sides.end(), by_id));
  EXPECT_EQ(orders, 6);
}

}  // namespace
}  // namespace proofstone
