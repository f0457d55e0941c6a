#include "engine/finding/source.h"

#include <gtest/gtest.h>

#include "engine/finding/outcome.h"
#include "engine/finding/steps.h"

namespace proofstone {
namespace {

TEST(Source, sentence_says_how_well_it_is_known) {
  EXPECT_EQ((Source{"USACE EM 1110-2-1601 (1994)", "eq. 3-3", SourceStanding::memory}.sentence()),
            "USACE EM 1110-2-1601 (1994), eq. 3-3 (from memory; confirm)");
  EXPECT_EQ((Source{"FHWA FP-14", "Table 705-1", SourceStanding::published}.sentence()),
            "FHWA FP-14, Table 705-1");
  EXPECT_EQ((Source{"FHWA FP-14", "", SourceStanding::computed}.sentence()),
            "FHWA FP-14 (computed)");
  EXPECT_EQ((Source{"", "", SourceStanding::common_practice}.sentence()), "(common practice)");
}

TEST(Source, standings_are_called_by_their_names) {
  for (const auto standing : {SourceStanding::published, SourceStanding::memory,
                              SourceStanding::computed, SourceStanding::common_practice}) {
    EXPECT_EQ(standing_called(standing_name(standing)), standing);
  }
  EXPECT_FALSE(standing_called("hearsay"));
}

TEST(Outcome, has_four_plain_phrases) {
  EXPECT_EQ(outcome_phrase(Outcome::meets), "meets");
  EXPECT_EQ(outcome_phrase(Outcome::falls_short), "falls short");
  EXPECT_EQ(outcome_phrase(Outcome::not_yet_known), "not yet known");
  EXPECT_EQ(outcome_phrase(Outcome::ask_the_designer), "ask the designer");
}

TEST(Steps, keep_their_order_and_how_lengths_are_read) {
  Steps steps;
  steps.given("V", "velocity", measure(Velocity::feet_per_second(8)), "from the document");
  steps.computed_rock("D30", "required size", "…", Length::feet(0.27), "eq. 3-3");
  steps.append(steps);
  ASSERT_EQ(steps.lines().size(), 4U);
  EXPECT_EQ(steps.lines()[0].symbol, "V");
  EXPECT_EQ(steps.lines()[0].source, "from the document");
  EXPECT_TRUE(steps.lines()[0].formula.empty());
  EXPECT_EQ(steps.lines()[3].symbol, "D30");
  EXPECT_EQ(steps.lines()[3].length_use, LengthUse::rock);
  EXPECT_EQ(steps.lines()[3].value.si, Length::feet(0.27).si());
}

}  // namespace
}  // namespace proofstone
