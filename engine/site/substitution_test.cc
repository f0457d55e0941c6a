#include "engine/site/substitution.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/site/example_document.h"

namespace proofstone {
namespace {

Expected<Substitution> study(const SubstituteRock& rock) {
  ExampleDocument example;
  example.items["sources"]["field"] = {
      {"name", "Field stone"}, {"specific_gravity", "2.55"}, {"angularity", "rounded"}};
  const auto site = site_from(example.document());
  EXPECT_TRUE(site);
  return study_substitution(*site, rock, Wording(UnitSystem::us_customary));
}

const ComparedRow* row(const Substitution& study, const std::string& what) {
  for (const auto& one : study.rows) {
    if (one.what.rfind(what, 0) == 0) return &one;
  }
  return nullptr;
}

double class_margin_in(const Substitution& study, std::size_t column) {
  const auto* found = row(study, "Stones against");
  EXPECT_NE(found, nullptr);
  if (found == nullptr || found->cells.size() <= column || !found->cells[column].margin) return 0;
  return found->cells[column].margin->value;
}

TEST(Substitution, LighterRockLeavesLessAndTakesALargerClass) {
  SubstituteRock rock;
  rock.zone = "bank";
  rock.specific_gravity = Dimensionless::number(2.3);
  const auto lighter = study(rock);
  ASSERT_TRUE(lighter);
  ASSERT_EQ(lighter->columns.size(), 3U);
  EXPECT_LT(class_margin_in(*lighter, 1), class_margin_in(*lighter, 0));
  EXPECT_GE(class_margin_in(*lighter, 2), class_margin_in(*lighter, 0) * (1 - 1e-9));
  EXPECT_EQ(row(*lighter, "Class")->cells[1].text, "Class III");
  EXPECT_NE(row(*lighter, "Class")->cells[2].text, "Class III");
  EXPECT_NE(lighter->finding.next.find("For the same safety specify"), std::string::npos);
}

TEST(Substitution, RoundedRockLeavesLessAndIsSaidToRollMoreReadily) {
  SubstituteRock rock;
  rock.zone = "bank";
  rock.angularity = Angularity::rounded;
  const auto rounded = study(rock);
  ASSERT_TRUE(rounded);
  EXPECT_LT(class_margin_in(*rounded, 1), class_margin_in(*rounded, 0));
}

TEST(Substitution, AnotherSourceBringsItsOwnRock) {
  SubstituteRock rock;
  rock.zone = "bank";
  rock.source = "field";
  const auto field = study(rock);
  ASSERT_TRUE(field);
  EXPECT_EQ(row(*field, "Source")->cells[1].text, "Field stone");
  EXPECT_EQ(row(*field, "Shape")->cells[1].text, "rounded");
  EXPECT_EQ(row(*field, "Specific gravity")->cells[1].text, "2.55");
}

TEST(Substitution, ANextClassUpLeavesMoreAndMayAskForAThickerLayer) {
  SubstituteRock rock;
  rock.zone = "bank";
  rock.rock_class = "fhwa-4";
  const auto up = study(rock);
  ASSERT_TRUE(up);
  EXPECT_GT(class_margin_in(*up, 1), class_margin_in(*up, 0));
  // Class IV has stones of 30 in, and the layer is 24 in thick.
  EXPECT_EQ(up->finding.outcome, Outcome::falls_short);
  EXPECT_NE(up->finding.sentence.find("too thin"), std::string::npos);
  EXPECT_EQ(row(*up, "Layer thickness")->cells[2].text, "30.0 in");
}

TEST(Substitution, WhatCannotBeStudiedIsNamed) {
  const auto code = [](const SubstituteRock& rock) {
    const auto asked = study(rock);
    return asked ? std::string() : asked.problems().front().code;
  };
  SubstituteRock rock;
  EXPECT_EQ(code(rock), "no-such-item");
  rock.zone = "bank";
  EXPECT_EQ(code(rock), "missing-field");
  rock.source = "moon";
  EXPECT_EQ(code(rock), "no-such-item");
  rock.source.clear();
  rock.rock_class = "feather";
  EXPECT_EQ(code(rock), "no-such-class");
  rock.rock_class.clear();
  rock.specific_gravity = Dimensionless::number(9);
  EXPECT_EQ(code(rock), "implausible");
}

}  // namespace
}  // namespace proofstone
