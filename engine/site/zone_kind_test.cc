#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"
#include "engine/site/kind_proposal.h"
#include "engine/site/slope_parts.h"

namespace proofstone {
namespace {

using nlohmann::json;

ZoneConditions sunny() {
  ZoneConditions conditions;
  conditions.light = Light::sun;
  conditions.growing = Growing::good;
  return conditions;
}

// Common practice, no source: void-filled to the active channel, soil-filled above it.
TEST(KindProposal, IsTheTypicalOutcomeOfTheTrade) {
  const auto place = sunny();
  EXPECT_EQ(propose_kind(WaterPresence::always, place).kind, RockKind::void_filled);
  EXPECT_EQ(propose_kind(WaterPresence::often, place).kind, RockKind::void_filled);
  EXPECT_EQ(propose_kind(WaterPresence::rarely, place).kind, RockKind::soil_filled);
  EXPECT_EQ(propose_kind(WaterPresence::never, place).kind, RockKind::soil_filled);
}

TEST(KindProposal, NothingGrowsUnderADeck) {
  auto place = sunny();
  place.light = Light::under_deck;
  for (const auto water : {WaterPresence::always, WaterPresence::often, WaterPresence::rarely,
                           WaterPresence::never, WaterPresence::unknown}) {
    EXPECT_EQ(propose_kind(water, place).kind, RockKind::bare);
  }
  place.access = Access::walk_on;
  EXPECT_EQ(propose_kind(WaterPresence::rarely, place).kind, RockKind::void_filled);
}

TEST(KindProposal, WavesTakeTheFillAsFarAsWaterReaches) {
  auto place = sunny();
  place.waves = WaveAction::some;
  EXPECT_EQ(propose_kind(WaterPresence::rarely, place).kind, RockKind::bare);
  EXPECT_EQ(propose_kind(WaterPresence::never, place).kind, RockKind::soil_filled);
}

TEST(KindProposal, SoilOnASteepSlopeIsToldToSlide) {
  const auto said = [](double rise_per_run) {
    const auto reasons = propose_kind(WaterPresence::rarely, sunny(), rise_per_run).reasons;
    return std::any_of(reasons.begin(), reasons.end(), [](const std::string& reason) {
      return reason.find("steeper than 2H:1V") != std::string::npos;
    });
  };
  EXPECT_TRUE(said(1 / 1.5));
  EXPECT_FALSE(said(0.5));
  EXPECT_FALSE(said(1.0 / 3));
}

TEST(KindProposal, BareServesOnASmallPlaceWhereNobodyWalks) {
  auto place = sunny();
  EXPECT_FALSE(propose_kind(WaterPresence::often, place).bare_serves);
  place.extent = WorkExtent::small_and_local;
  EXPECT_TRUE(propose_kind(WaterPresence::often, place).bare_serves);
  place.access = Access::walk_on;
  EXPECT_FALSE(propose_kind(WaterPresence::often, place).bare_serves);
}

TEST(KindProposal, WhatIsNotKnownIsNamed) {
  const auto above = propose_kind(WaterPresence::rarely, {});
  EXPECT_FALSE(above.kind);
  EXPECT_EQ(above.missing.size(), 2u);
  const auto nowhere = propose_kind(WaterPresence::unknown, sunny());
  EXPECT_FALSE(nowhere.kind);
  EXPECT_EQ(nowhere.missing.size(), 1u);
  auto barren = sunny();
  barren.growing = Growing::none;
  const auto none = propose_kind(WaterPresence::rarely, barren);
  EXPECT_EQ(none.kind, RockKind::void_filled);
  EXPECT_TRUE(none.bare_serves);
}

/// The example with a frequent flow, plants that can grow, and the typical kinds.
ExampleDocument with_kinds() {
  ExampleDocument example;
  example.items["flow_cases"]["often"] = {
      {"name", "Frequent flow"}, {"purpose", "frequent"}, {"discharge", "1250 ft³/s"}};
  auto& zone = example.items["zones"]["bank"];
  zone["kinds"] = {{{"kind", "void-filled"}, {"up_to", "often"}},
                   {{"kind", "soil-filled"}, {"up_to", "top"}}};
  zone["conditions"] = {{"light", "sun"}, {"growing", "good"}};
  return example;
}

Findings assessed(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, UnitSystem::us_customary) : Findings{};
}

std::map<std::string, Outcome> kinds_in(const Findings& findings) {
  std::map<std::string, Outcome> outcomes;
  for (const auto& finding : findings.findings) {
    if (finding.topic == Topic::kind) outcomes[finding.id] = finding.outcome;
  }
  return outcomes;
}

using Outcomes = std::map<std::string, Outcome>;

TEST(ZoneKinds, TheTypicalChoiceMeetsWhatIsUsualInEveryPart) {
  const auto findings = assessed(with_kinds());
  EXPECT_EQ(kinds_in(findings), (Outcomes{{"kind.bank.always-wet", Outcome::meets},
                                          {"kind.bank.often-wet", Outcome::meets},
                                          {"kind.bank.rarely-wet", Outcome::meets},
                                          {"kind.bank.dry", Outcome::meets}}));
  const auto* often = findings.find("kind.bank.often-wet");
  EXPECT_FALSE(often->reasons.empty());
  EXPECT_NE(often->reasons.front().find("common practice, no source"), std::string::npos);
  EXPECT_EQ(often->sources.front().standing, SourceStanding::common_practice);
}

TEST(ZoneKinds, AZoneThatStatesNothingIsToldWhatIsUsual) {
  auto example = with_kinds();
  example.items["zones"]["bank"].erase("kinds");
  const auto findings = assessed(example);
  EXPECT_EQ(kinds_in(findings), (Outcomes{{"kind.bank", Outcome::not_yet_known}}));
  const auto sentence = findings.find("kind.bank")->sentence;
  EXPECT_NE(sentence.find("Void-filled rock is usual up to"), std::string::npos) << sentence;
  EXPECT_NE(sentence.find("Soil-filled rock is usual up to"), std::string::npos) << sentence;
}

TEST(ZoneKinds, SoilWhereWaterAlwaysRunsWashesOut) {
  auto example = with_kinds();
  auto& kinds = example.items["zones"]["bank"]["kinds"];
  kinds = {{{"kind", "soil-filled"}, {"up_to", "top"}}};
  auto findings = assessed(example);
  const auto* wet = findings.find("kind.bank.always-wet");
  ASSERT_NE(wet, nullptr);
  EXPECT_EQ(wet->outcome, Outcome::falls_short);
  EXPECT_TRUE(wet->governs);
  EXPECT_NE(findings.headline.find("where water always stands"), std::string::npos);
  EXPECT_EQ(findings.find("kind.bank.often-wet")->outcome, Outcome::ask_the_designer);
  // With a reason it still goes to the designer where it would wash out, and stands elsewhere.
  kinds[0]["reason"] = "Clay with a stiff root mat, as on the reach upstream.";
  findings = assessed(example);
  EXPECT_EQ(findings.find("kind.bank.always-wet")->outcome, Outcome::ask_the_designer);
  const auto* often = findings.find("kind.bank.often-wet");
  EXPECT_EQ(often->outcome, Outcome::meets);
  EXPECT_NE(often->sentence.find("stands against it: Clay"), std::string::npos);
}

TEST(ZoneKinds, AKindThatEndsBelowWhereItBeginsIsNamed) {
  auto example = with_kinds();
  auto& kinds = example.items["zones"]["bank"]["kinds"];
  kinds = {{{"kind", "void-filled"}, {"up_to", "112 ft"}},
           {{"kind", "soil-filled"}, {"up_to", "106 ft"}}};
  const auto findings = assessed(example);
  const auto* misplaced = findings.find("kind.bank.misplaced.2");
  ASSERT_NE(misplaced, nullptr);
  EXPECT_EQ(misplaced->outcome, Outcome::ask_the_designer);
  EXPECT_NE(misplaced->sentence.find("Soil-filled rock is stated up to 106.00 ft"),
            std::string::npos)
      << misplaced->sentence;
  kinds[1]["up_to"] = "top";
  EXPECT_EQ(assessed(example).find("kind.bank.misplaced.2"), nullptr);
}

TEST(ZoneKinds, ADesignersChoiceNeedsAReason) {
  auto example = with_kinds();
  auto& kinds = example.items["zones"]["bank"]["kinds"];
  kinds = {{{"kind", "bare"}, {"up_to", "top"}}};
  EXPECT_EQ(assessed(example).find("kind.bank.often-wet")->outcome, Outcome::ask_the_designer);
  kinds[0]["reason"] = "Boats land here.";
  EXPECT_EQ(assessed(example).find("kind.bank.often-wet")->outcome, Outcome::meets);
  kinds[0]["kind"] = "grouted";
  EXPECT_EQ(assessed(example).find("kind.bank.often-wet")->outcome, Outcome::ask_the_designer);
}

TEST(ZoneKinds, UnderADeckBareIsUsualAndSoilFallsShort) {
  auto example = with_kinds();
  example.items["zones"]["bank"]["conditions"]["light"] = "under a deck";
  EXPECT_EQ(assessed(example).find("kind.bank.rarely-wet")->outcome, Outcome::falls_short);
  example.items["zones"]["bank"]["kinds"] = {{{"kind", "bare"}, {"up_to", "top"}}};
  for (const auto& [id, outcome] : kinds_in(assessed(example))) {
    EXPECT_EQ(outcome, Outcome::meets) << id;
  }
}

TEST(ZoneKinds, WhatNoKindReachesIsNotYetKnown) {
  auto example = with_kinds();
  example.items["zones"]["bank"]["kinds"] = {{{"kind", "void-filled"}, {"up_to", "108 ft"}}};
  const auto kinds = kinds_in(assessed(example));
  EXPECT_EQ(kinds.at("kind.bank.often-wet"), Outcome::meets);
  EXPECT_EQ(kinds.at("kind.bank.often-wet.2"), Outcome::not_yet_known);
  EXPECT_EQ(kinds.at("kind.bank.dry"), Outcome::not_yet_known);
}

TEST(ZoneKinds, WithoutAFrequentFlowTheLineIsNotKnown) {
  auto example = with_kinds();
  example.items["flow_cases"].erase("often");
  example.items["zones"]["bank"]["kinds"][0]["up_to"] = "110 ft";
  const auto kinds = kinds_in(assessed(example));
  EXPECT_EQ(kinds.at("kind.bank.always-wet"), Outcome::meets);
  EXPECT_EQ(kinds.at("kind.bank.not-known"), Outcome::not_yet_known);
}

TEST(ZoneKinds, ABedIsOnePartAndOtherPlacesGoToTheDesigner) {
  auto example = with_kinds();
  auto& zone = example.items["zones"]["bank"];
  zone["place"] = "bed";
  for (const char* field : {"bank", "bend"}) zone.erase(field);
  EXPECT_EQ(kinds_in(assessed(example)), (Outcomes{{"kind.bank", Outcome::meets}}));
  zone["kinds"] = {{{"kind", "soil-filled"}, {"up_to", "top"}}};
  EXPECT_EQ(kinds_in(assessed(example)), (Outcomes{{"kind.bank", Outcome::falls_short}}));
  zone["cover"] = {{"stream", "dry swale"}};
  EXPECT_EQ(kinds_in(assessed(example)), (Outcomes{{"kind.bank", Outcome::meets}}));
  zone["place"] = "chute";
  zone.erase("section");
  EXPECT_EQ(kinds_in(assessed(example)), (Outcomes{{"kind.bank", Outcome::ask_the_designer}}));
}

TEST(SlopeParts, TouchEachOtherAndLieInsideTheSlope) {
  FlowCase base{"b", "b", FlowPurpose::base, {}, {}, {}};
  FlowCase often{"o", "o", FlowPurpose::frequent, {}, {}, {}};
  FlowCase flood{"f", "f", FlowPurpose::design, {}, {}, {}};
  const auto at = [](const FlowCase& flow_case, double level) {
    ZoneWater water;
    water.flow_case = &flow_case;
    ZoneSetting setting;
    setting.stated.water_level = Length::meters(level);
    water.setting = setting;
    return water;
  };
  for (const double frequent : {-1.0, 0.5, 1.5, 2.0, 9.0}) {
    const std::vector<ZoneWater> waters{at(base, 1), at(often, frequent), at(flood, 3)};
    const auto bands = slope_bands(Length::meters(0), Length::meters(4), waters);
    ASSERT_FALSE(bands.empty());
    EXPECT_DOUBLE_EQ(bands.front().bottom.meters(), 0);
    EXPECT_DOUBLE_EQ(bands.back().top.meters(), 4);
    for (std::size_t i = 1; i < bands.size(); ++i) {
      EXPECT_DOUBLE_EQ(bands[i - 1].top.meters(), bands[i].bottom.meters());
    }
  }
}

}  // namespace
}  // namespace proofstone
