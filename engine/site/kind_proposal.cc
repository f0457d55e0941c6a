#include "engine/site/kind_proposal.h"

namespace proofstone {
namespace {

/// Rise over run above which loose soil and seed slide.
constexpr double steepest_for_seed = 0.5;

void because(KindProposal& proposal, const char* reason) {
  proposal.reasons.push_back(std::string(reason) + " (common practice, no source)");
}

bool walked_on(const ZoneConditions& conditions) { return conditions.access == Access::walk_on; }

void under_a_deck(const ZoneConditions& conditions, KindProposal& proposal) {
  because(proposal, "Nothing grows under a deck, so no roots would hold soil in the voids");
  if (walked_on(conditions)) {
    proposal.kind = RockKind::void_filled;
    because(proposal, "People walk on it, and open voids catch a foot");
    return;
  }
  proposal.kind = RockKind::bare;
  because(proposal, "Bare rock is usual under a bridge deck");
}

void in_waves(const ZoneConditions& conditions, KindProposal& proposal) {
  proposal.kind = RockKind::bare;
  because(proposal, "Waves draw water through the voids and take the fill with it");
  if (walked_on(conditions)) {
    because(proposal, "People walk on it: give them a way round, open voids catch a foot");
  }
}

void in_frequent_water(WaterPresence water, const ZoneConditions& conditions,
                       KindProposal& proposal) {
  proposal.kind = RockKind::void_filled;
  if (water == WaterPresence::always) {
    because(proposal,
            "Water runs here all year and plants cannot hold: soil in the voids would wash out");
  } else {
    because(proposal, "The frequent flow would take soil before plants hold it");
  }
  because(proposal,
          "Void-filled rock goes up to the bankfull or active-channel level, soil-filled above it");
  if (conditions.extent == WorkExtent::small_and_local && !walked_on(conditions)) {
    proposal.bare_serves = true;
    because(
        proposal,
        "On a small, local place bare rock on bedding is simpler than mixing a fill, and serves");
  }
}

void above_frequent_water(WaterPresence water, const ZoneConditions& conditions,
                          KindProposal& proposal) {
  const auto plants = plants_can_grow(conditions);
  if (!plants) {
    if (!conditions.light) proposal.missing.emplace_back("conditions/light");
    if (!conditions.growing) proposal.missing.emplace_back("conditions/growing");
    return;
  }
  if (!*plants) {
    proposal.kind = RockKind::void_filled;
    proposal.bare_serves = !walked_on(conditions);
    because(proposal, "Nothing grows here, so soil in the voids would not be held by roots");
    return;
  }
  proposal.kind = RockKind::soil_filled;
  because(proposal, water == WaterPresence::never
                        ? "No flood of the design reaches here and plants can grow"
                        : "Water comes here rarely, and between floods plants can grow and hold");
  if (conditions.growing == Growing::poor) {
    because(proposal, "Growing is poor: choose soil and seed with one who knows the plants");
  }
}

}  // namespace

std::optional<bool> plants_can_grow(const ZoneConditions& conditions) {
  if (conditions.light == Light::under_deck) return false;
  if (conditions.growing == Growing::none) return false;
  if (conditions.light && conditions.growing) return true;
  return std::nullopt;
}

KindProposal propose_kind(WaterPresence water, const ZoneConditions& conditions,
                          double rise_per_run) {
  KindProposal proposal;
  if (conditions.waves == WaveAction::some && water != WaterPresence::never) {
    in_waves(conditions, proposal);
  } else if (conditions.light == Light::under_deck) {
    under_a_deck(conditions, proposal);
  } else if (water == WaterPresence::unknown) {
    proposal.missing.emplace_back("a flow case of purpose \"frequent\"");
  } else if (water == WaterPresence::always || water == WaterPresence::often) {
    in_frequent_water(water, conditions, proposal);
  } else {
    above_frequent_water(water, conditions, proposal);
    if (proposal.kind == RockKind::soil_filled && rise_per_run > steepest_for_seed) {
      because(proposal,
              "The slope is steeper than 2H:1V: topsoil and seed slide on it until roots hold, so "
              "keep the soil in the voids, cover it with a blanket, or lay the slope back");
    }
  }
  return proposal;
}

}  // namespace proofstone
