#include "report/validation_pages.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "engine/method/registry.h"
#include "report/method_plot.h"

namespace proofstone {
namespace {

/// Every check case of every table, computed once for all tests.
const std::vector<CheckOutcome>& outcomes_of_all_checks() {
  static const auto outcomes = all_check_outcomes();
  return outcomes;
}

const CheckOutcome* find(const std::vector<CheckOutcome>& outcomes, const std::string& method,
                         const std::string& id) {
  const auto found = std::find_if(outcomes.begin(), outcomes.end(), [&](const auto& outcome) {
    return outcome.method == method && outcome.case_id == id;
  });
  return found == outcomes.end() ? nullptr : &*found;
}

TEST(ValidationPages, AValueIsComputedInTheUnitOfItsCase) {
  const auto& outcomes = outcomes_of_all_checks();
  const auto* si = find(outcomes, "usace-bank-and-bed", "straight-bed-si");
  const auto* us = find(outcomes, "usace-bank-and-bed", "straight-bed");
  ASSERT_NE(si, nullptr);
  ASSERT_NE(us, nullptr);
  EXPECT_EQ(si->expected_text, "0.0815 m");
  EXPECT_TRUE(si->computed_text.ends_with(" m")) << si->computed_text;
  EXPECT_TRUE(us->computed_text.ends_with(" ft")) << us->computed_text;
  EXPECT_LE(si->strain(), 1);
}

TEST(ValidationPages, EveryMethodAndEveryValueIsCounted) {
  const auto& outcomes = outcomes_of_all_checks();
  const auto page = validation_page(outcomes).text;
  for (const auto* method : all_methods()) {
    EXPECT_NE(page.find("(" + method->description().id + ".md)"), std::string::npos)
        << method->description().id;
    EXPECT_TRUE(std::any_of(outcomes.begin(), outcomes.end(), [&](const auto& outcome) {
      return outcome.method == method->description().id;
    })) << method->description().id;
  }
  const auto published = std::count_if(outcomes.begin(), outcomes.end(), [](const auto& outcome) {
    return !outcome.output.empty() && outcome.source.standing == SourceStanding::published;
  });
  const auto row = "| published | " + std::to_string(published) + " | ";
  EXPECT_NE(page.find(row), std::string::npos) << row;
}

TEST(ValidationPages, WhatIsRecalledIsListedUnderItsDocument) {
  const auto page = memory_page(outcomes_of_all_checks()).text;
  const auto document = page.find("## USACE Hydraulic Design Criteria");
  ASSERT_NE(document, std::string::npos);
  EXPECT_NE(page.find("(isbash.md)", document), std::string::npos);
  // A page that was read is nothing to confirm.
  const auto& usace = find_method("usace-bank-and-bed")->description();
  const auto& read = usace.sources[1];
  ASSERT_EQ(read.standing, SourceStanding::published);
  EXPECT_EQ(page.find("(usace-bank-and-bed.md): " + read.place), std::string::npos);
}

TEST(MethodPlot, ShowsTheSizeAgainstTheVelocity) {
  const auto plot = method_plot(*find_method("isbash"), 640);
  EXPECT_NE(plot.find("d50 from half to twice the velocity"), std::string::npos) << plot;
  EXPECT_NE(plot.find("<path"), std::string::npos);
}

}  // namespace
}  // namespace proofstone
