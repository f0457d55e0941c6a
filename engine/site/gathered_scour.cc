#include "engine/site/gathered_scour.h"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

namespace proofstone {
namespace {

ScourWater scour_water(const Zone& zone, const ZoneWater& at) {
  const auto& setting = *at.setting;
  ScourWater water;
  const auto known = [](auto quantity) {
    using Q = decltype(quantity);
    return quantity.si() > 0 ? std::optional<Q>(quantity) : std::nullopt;
  };
  water.velocity = known(setting.average_velocity);
  water.toe_depth = known(setting.toe_depth);
  water.top_width = known(setting.water_top_width);
  water.energy_slope = known(setting.energy_slope);
  if (at.channel) {
    water.discharge = at.channel->discharge;
    water.mean_depth =
        Length::meters(at.channel->area.square_meters() / at.channel->top_width.meters());
  }
  if (setting.stated.discharge) water.discharge = setting.stated.discharge;
  if (setting.bend_side == BendSide::outside) water.bend_radius = setting.bend_radius;
  water.bed_d50 = zone.scour->bed_d50;
  water.bed_d90 = zone.scour->bed_d90;
  water.situation = zone.scour->situation;
  return water;
}

void add_stated(const ZoneScour& scour, GatheredScour& gathered, Steps& steps) {
  const auto take = [&](const std::optional<Length>& stated, const char* symbol,
                        const char* meaning, auto put) {
    if (!stated) return;
    put(*stated);
    steps.given(symbol, meaning, measure(*stated), "document");
    gathered.any = true;
  };
  auto& toe = gathered.toe;
  take(scour.long_term, "z_ad", "lowering of the bed over the years, stated",
       [&](Length depth) { toe.long_term = std::max(toe.long_term.value_or(depth), depth); });
  take(scour.contraction, "z_c", "contraction scour, stated",
       [&](Length depth) { toe.contraction.push_back(depth); });
  take(scour.local, "z_s", "local scour, stated",
       [&](Length depth) { toe.local.push_back(depth); });
}

/// Methods share some of their cautions; each is said once.
void add_cautions(Finding& finding, const std::vector<std::string>& cautions) {
  auto& said = finding.cautions;
  for (const auto& caution : cautions) {
    if (std::find(said.begin(), said.end(), caution) == said.end()) said.push_back(caution);
  }
}

void gather(const Zone& zone, const ScourWater& water, GatheredScour& gathered, Finding& finding,
            const Wording& wording) {
  for (const auto& id : zone.scour->methods) {
    const auto own = zone.method_choices->find(id);
    const auto estimate =
        estimate_scour(id, water, own == zone.method_choices->end() ? nullptr : &*own);
    if (!estimate) {
      gathered.not_computed.push_back(
          fmt::format("{} could not be computed: {}", id, estimate.problems().front().sentence()));
      continue;
    }
    const auto& about = estimate->method->description();
    finding.steps.append(estimate->evaluation.steps);
    finding.sources.insert(finding.sources.end(), about.sources.begin(), about.sources.end());
    add_cautions(finding, about.cautions);
    const auto says = fmt::format("{}: {}", about.title, wording.ground(estimate->depth));
    const auto& not_kept = estimate->evaluation.limits_not_kept;
    if (!not_kept.empty()) {
      finding.limits_not_kept.insert(finding.limits_not_kept.end(), not_kept.begin(),
                                     not_kept.end());
      finding.limits.insert(finding.limits.end(), not_kept.begin(), not_kept.end());
      gathered.outside_limits.push_back(
          fmt::format("{}, outside its published range and not counted.", says));
      continue;
    }
    finding.reasons.push_back(says + ".");
    add_estimate(gathered.toe, *estimate);
    gathered.any = true;
  }
}

}  // namespace

GatheredScour gather_scour(const Zone& zone, const ZoneWater& at, Finding& finding,
                           const Wording& wording) {
  GatheredScour gathered;
  gathered.toe.bedform_rule = zone.scour->bedform_rule;
  gathered.toe.safety_factor = zone.scour->safety_factor;
  gathered.toe.least_depth = zone.scour->least_depth;
  if (at.setting) {
    gather(zone, scour_water(zone, at), gathered, finding, wording);
  } else {
    gathered.not_computed.emplace_back("The water at this zone is not known.");
  }
  add_stated(*zone.scour, gathered, finding.steps);
  return gathered;
}

}  // namespace proofstone
