// Checks from a design, what measurements say of them, tallies, and how nonconformances settle
// them.
#include <gtest/gtest.h>

#include "engine/placing/check_standing.h"
#include "engine/placing/placing_design.h"

namespace proofstone {
namespace {

PlacingDesign bank_design() {
  PlacingDesign design;
  design.class_name = "Class III";
  design.layer_thickness = Length::inches(24);
  design.largest_stone = Length::inches(24);
  design.survey_points = 18;
  design.toe_depth = Length::feet(5);
  return design;
}

std::vector<std::string> ids_of(const std::vector<PlacingCheck>& checks) {
  std::vector<std::string> ids;
  for (const auto& check : checks) ids.push_back(check.id);
  return ids;
}

const PlacingCheck& check_called(const std::vector<PlacingCheck>& checks, const std::string& id) {
  for (const auto& check : checks) {
    if (check.id == id) return check;
  }
  ADD_FAILURE() << "no check " << id;
  return checks.front();
}

CheckEvidence seen(const char* when, CheckState says, int points = 0) {
  CheckEvidence evidence;
  evidence.when = when;
  evidence.says = says;
  evidence.points = points;
  return evidence;
}

Nonconformance closed_by(DispositionKind kind, const char* opened, const char* closed) {
  Nonconformance one;
  one.opened.when = opened;
  Disposition disposition;
  disposition.kind = kind;
  disposition.approved_by = kind == DispositionKind::use_as_is ? "P. Engineer" : "";
  disposition.signed_off.when = opened;
  one.disposition = disposition;
  one.closed = Observation{};
  one.closed->when = closed;
  return one;
}

TEST(PlacingChecks, FollowTheDesign) {
  const auto bare = ids_of(placing_checks(bank_design()));
  EXPECT_EQ(bare, (std::vector<std::string>{"subgrade", "toe", "bucket", "drop", "handling",
                                            "thickness", "surface"}));
  auto design = bank_design();
  design.toe_depth.reset();
  DesignedFilterLayer fabric;
  fabric.fabric = true;
  DesignedFilterLayer bedding;
  bedding.name = "Type II";
  bedding.thickness = Length::inches(6);
  design.filter = {fabric, bedding};
  design.filled = true;
  design.mix = {{"rock", "Class III", 65}, {"loam", "Loam", 35}};
  DesignedCover cover;
  cover.topsoil = Length::inches(6);
  cover.blanket = true;
  cover.stake_spacing = Length::feet(2);
  design.cover = cover;
  EXPECT_EQ(ids_of(placing_checks(design)),
            (std::vector<std::string>{"subgrade", "fabric-1", "fabric-1-laps",
                                      "bedding-2-gradation", "bedding-2", "bucket", "drop",
                                      "handling", "mix", "voids", "thickness", "surface", "topsoil",
                                      "blanket-sides", "blanket-ends", "stakes"}));
}

TEST(PlacingChecks, NumbersAreTheDesignsOwn) {
  auto design = bank_design();
  const auto checks = placing_checks(design);
  EXPECT_DOUBLE_EQ(check_called(checks, "toe").asked->feet(), 5);
  EXPECT_DOUBLE_EQ(check_called(checks, "bucket").asked->inches(), 48);
  EXPECT_DOUBLE_EQ(check_called(checks, "thickness").asked->inches(), 24);
  EXPECT_DOUBLE_EQ(check_called(checks, "subgrade").tolerance->feet(), 0.1);
  design.under_water = true;
  design.filter.resize(1);
  design.filter[0].fabric = true;
  design.filter[0].drop_height = Length::feet(1);
  const auto wet = placing_checks(design);
  EXPECT_DOUBLE_EQ(check_called(wet, "fabric-1-laps").asked->feet(), 3);
  EXPECT_DOUBLE_EQ(check_called(wet, "drop").asked->feet(), 1);
}

TEST(PlacingChecks, EveryToleranceSaysWhereItComesFrom) {
  for (const auto& check : placing_checks(bank_design())) {
    EXPECT_FALSE(check.source.document.empty()) << check.id;
    EXPECT_FALSE(check.how.empty()) << check.id;
    EXPECT_FALSE(check.design.empty()) << check.id;
  }
  auto stated = bank_design();
  stated.tolerances.from = "drawing 7";
  stated.tolerances.surface = Length::inches(2);
  const auto checks = placing_checks(stated);
  EXPECT_EQ(check_called(checks, "surface").source.standing, SourceStanding::stated);
  EXPECT_DOUBLE_EQ(check_called(checks, "surface").tolerance->inches(), 2);
  EXPECT_EQ(check_called(checks, "subgrade").source.standing, SourceStanding::published);
}

TEST(JudgedEntry, LengthsAgainstWhatIsAsked) {
  const auto checks = placing_checks(bank_design());
  const auto says = [&checks](const char* id, std::vector<Length> measured) {
    CheckEntry entry;
    entry.measured = std::move(measured);
    return judge_entry(check_called(checks, id), entry, "t").says;
  };
  EXPECT_EQ(says("toe", {Length::feet(5), Length::feet(6)}), CheckState::pass);
  EXPECT_EQ(says("toe", {Length::feet(4.9), Length::feet(6)}), CheckState::fail);
  EXPECT_EQ(says("drop", {Length::feet(2)}), CheckState::pass);
  EXPECT_EQ(says("drop", {Length::feet(4)}), CheckState::fail);
  EXPECT_EQ(says("surface", {Length::inches(-3), Length::inches(3)}), CheckState::pass);
  EXPECT_EQ(says("surface", {Length::inches(-3.2)}), CheckState::fail);
  EXPECT_EQ(says("toe", {}), CheckState::not_yet);
}

TEST(JudgedEntry, TheEyeRejectsButDoesNotMeasure) {
  const auto checks = placing_checks(bank_design());
  CheckEntry entry;
  entry.passes = false;
  entry.measured = {Length::feet(6)};
  EXPECT_EQ(judge_entry(check_called(checks, "toe"), entry, "t").says, CheckState::fail);
  entry.passes = true;
  entry.measured.clear();
  const auto& toe = check_called(checks, "toe");
  EXPECT_EQ(standing_of(toe, {judge_entry(toe, entry, "t")}, {}).state, CheckState::not_yet);
  entry.measured = {Length::feet(2)};
  EXPECT_EQ(judge_entry(toe, entry, "t").says, CheckState::fail);
}

TEST(Tally, WithinOneLoadOrFivePercent) {
  const std::vector<MixShare> mix{{"rock", "Class II", 65}, {"loam", "Loam", 35}};
  const auto holds = [&mix](int rock, int loam) {
    const auto lines = tally_lines(mix, {{"rock", rock}, {"loam", loam}}, std::nullopt);
    return lines.size() == 1 && lines[0].holds();
  };
  EXPECT_TRUE(holds(13, 7));
  EXPECT_TRUE(holds(13, 8));
  EXPECT_FALSE(holds(13, 9));
  EXPECT_TRUE(holds(1300, 735));
  EXPECT_FALSE(holds(1300, 736));
  EXPECT_TRUE(tally_lines(mix, {{"loam", 4}}, std::nullopt).empty());
}

TEST(Standing, AFailureStandsUntilItIsAnswered) {
  PlacingCheck check;
  const auto fail = seen("2026-05-02", CheckState::fail);
  const auto pass = seen("2026-05-03", CheckState::pass);
  const auto unanswered = standing_of(check, {pass, fail}, {});
  EXPECT_EQ(unanswered.state, CheckState::fail) << "a later pass hides nothing";
  EXPECT_TRUE(unanswered.failed_unanswered);

  const auto rework = closed_by(DispositionKind::rework, "2026-05-02", "2026-05-04");
  EXPECT_EQ(standing_of(check, {fail, pass}, {&rework}).state, CheckState::pass);
  const auto no_look = standing_of(check, {fail}, {&rework});
  EXPECT_EQ(no_look.state, CheckState::not_yet);
  EXPECT_TRUE(no_look.wants_new_look);

  auto open = rework;
  open.closed.reset();
  EXPECT_TRUE(standing_of(check, {fail, pass}, {&open}).answered_open);

  const auto used = closed_by(DispositionKind::use_as_is, "2026-05-02", "2026-05-04");
  const auto accepted = standing_of(check, {fail}, {&used});
  EXPECT_EQ(accepted.state, CheckState::pass);
  EXPECT_EQ(accepted.accepted_by, "P. Engineer");
  const auto fail_again = seen("2026-05-05", CheckState::fail);
  EXPECT_EQ(standing_of(check, {fail, fail_again}, {&used}).state, CheckState::fail);
}

TEST(Standing, OrderOfEntryDoesNotMatterAndPointsAddUp) {
  PlacingCheck check;
  check.measure = CheckMeasure::at_least;
  check.asked = Length::feet(1);
  check.fewest_points = 3;
  const auto first = seen("2026-05-01", CheckState::pass, 2);
  const auto second = seen("2026-05-02", CheckState::pass, 1);
  EXPECT_TRUE(standing_of(check, {first}, {}).too_few_points);
  for (const auto& order : {std::vector{first, second}, std::vector{second, first}}) {
    const auto standing = standing_of(check, order, {});
    EXPECT_EQ(standing.state, CheckState::pass);
    EXPECT_EQ(standing.points, 3);
    EXPECT_EQ(standing.passed_when, "2026-05-02");
  }
}

TEST(PlacingChecks, ALongZoneIsMeasuredAtMorePoints) {
  const auto points_of = [](std::optional<Length> length, const std::string& id) {
    PlacingDesign design;
    design.toe_depth = Length::feet(5);
    design.largest_stone = Length::feet(2);
    design.length = length;
    for (const auto& check : placing_checks(design)) {
      if (check.id == id) return check.fewest_points;
    }
    return 0;
  };
  EXPECT_EQ(points_of({}, "toe"), 3);
  EXPECT_EQ(points_of(Length::feet(200), "toe"), 3);
  EXPECT_EQ(points_of(Length::feet(520), "toe"), 6);
  EXPECT_EQ(points_of(Length::feet(520), "bucket"), 1);
}

TEST(NonconformanceCourse, WhatIsImpossibleIsNamed) {
  auto one = closed_by(DispositionKind::rework, "2026-05-02", "2026-05-04");
  EXPECT_TRUE(problems_of_course(one).empty());
  EXPECT_EQ(state_of(one), NonconformanceState::closed);
  one.closed->when = "2026-05-01";
  ASSERT_FALSE(problems_of_course(one).empty());
  EXPECT_EQ(problems_of_course(one).front().where, "/closed/when");
  one.closed->when = "2026-05-04";
  one.disposition->kind = DispositionKind::use_as_is;
  EXPECT_EQ(problems_of_course(one).front().code, "missing-approval");
  one.disposition.reset();
  EXPECT_EQ(problems_of_course(one).front().code, "closed-without-disposition");
  one.closed.reset();
  EXPECT_EQ(state_of(one), NonconformanceState::open);
}

}  // namespace
}  // namespace proofstone
