#include "engine/specification/specified_mix.h"

#include <algorithm>
#include <numeric>

#include "engine/site/designed_mix.h"
#include "engine/site/mix_verdict.h"

namespace proofstone {
namespace {

/// Fill in place grows with its parts, so that the limits of filling are factors on them. Mixed
/// before placing more fill also holds the stones further apart: none is allowed beyond the parts.
FillTolerance tolerance_of(const FilledMix& mix, const MixBalance& balance) {
  const bool washed = mix.placing == MixPlacing::washed_in;
  return {std::min(1.0, least_filling / balance.filling), washed ? 1 / balance.filling : 1.0};
}

SpecifiedFill fill_of(const PreparedMix& prepared, std::size_t i, double loose_total,
                      double bulking) {
  const auto& fill = prepared.mix.fills[i];
  const double parts = prepared.mix.fill_parts[i];
  SpecifiedFill specified{fill.name, parts, parts / loose_total, {}, {}, {}, {}, fill.gradation};
  specified.loose = Dimensionless::number(parts / prepared.mix.rock_parts / bulking);
  const auto* material = prepared.materials[i];
  if (material != nullptr && material->state.loose_over_bank) {
    specified.bank = specified.loose / material->state.loose_over_bank->number();
  }
  if (fill.in_place_over_loose) {
    specified.in_place_over_loose = Dimensionless::number(*fill.in_place_over_loose);
  }
  if (fill.porosity) specified.porosity = Dimensionless::number(*fill.porosity);
  return specified;
}

void take_verdict(const PreparedMix& prepared, const MixBalance& balance, SpecifiedMix& specified) {
  Finding finding;
  judge_mix(prepared, balance, "The stated parts are", finding);
  specified.outcome = finding.outcome;
  // The first sentence only names the parts, which stand in the table.
  const auto end = finding.sentence.find(". ");
  specified.sentence = end == std::string::npos ? "" : finding.sentence.substr(end + 2);
  specified.next = finding.next;
  if (finding.outcome == Outcome::meets) {
    specified.tolerance = tolerance_of(prepared.mix, balance);
  }
}

void fill_in(const PreparedMix& prepared, const MixBalance& balance, SpecifiedMix& specified) {
  const auto& mix = prepared.mix;
  const double loose_total =
      std::accumulate(mix.fill_parts.begin(), mix.fill_parts.end(), mix.rock_parts);
  specified.rock_parts = mix.rock_parts;
  specified.rock_share = mix.rock_parts / loose_total;
  specified.rock_voids = Dimensionless::number(mix.rock.voids);
  specified.rock = Dimensionless::number(1 / balance.bulking);
  specified.filling = Dimensionless::number(balance.filling);
  if (balance.dilation) specified.dilation = Dimensionless::number(*balance.dilation);
  for (std::size_t i = 0; i < mix.fills.size(); ++i) {
    specified.fills.push_back(fill_of(prepared, i, loose_total, balance.bulking));
  }
  if (specified.bucket) {
    specified.batch_in_place = balance.bulking * mix.rock_parts * *specified.bucket;
  }
  if (prepared.recipe != nullptr) {
    specified.recipe = prepared.recipe->source;
    specified.notes = prepared.recipe->notes;
  }
  take_verdict(prepared, balance, specified);
}

template <class T>
bool failed(const Expected<T>& value, SpecifiedMix& specified) {
  if (value) return false;
  for (const auto& problem : value.problems()) specified.problems.push_back(problem.sentence());
  return true;
}

SpecifiedMix begin_mix(const Site& site, const SiteMix& stated, const std::string& class_id) {
  SpecifiedMix specified;
  specified.id = stated.id;
  specified.name = stated.name;
  specified.kind = mix_kind_word(stated.kind);
  specified.rock_class = class_id;
  specified.rock_name = find_class(site, class_id)->name;
  specified.placing = stated.placing;
  specified.bucket = stated.bucket;
  return specified;
}

/// Proportions that are found for the materials on offer, beside stated ones that do not meet.
void offer_beside(const Site& site, const Zone& zone, const PreparedMix& stated,
                  SpecifiedMix& specified) {
  const auto take_reasons = [&](const Problems& problems) {
    for (const auto& problem : problems) specified.none_beside.push_back(problem.sentence());
  };
  const auto found = designed_mix(site, zone, stated);
  if (!found) return take_reasons(found.problems());
  const auto balance = balance_of(found->mix.mix);
  if (!balance) return take_reasons(balance.problems());
  auto beside = begin_mix(site, *stated.site_mix, specified.rock_class);
  beside.designed = true;
  fill_in(found->mix, *balance, beside);
  specified.beside.push_back(std::move(beside));
}

SpecifiedMix specify(const Site& site, const Zone& zone, const std::string& class_id) {
  auto specified = begin_mix(site, site.mixes.at(zone.mix), class_id);
  specified.soil = zone.soil;
  auto prepared = prepare_mix(site, zone);
  if (failed(prepared, specified)) return specified;
  specified.designed = prepared->mix.fills.empty();
  if (specified.designed) {
    const auto made = designed_mix(site, zone, *prepared);
    if (failed(made, specified)) return specified;
    prepared = made->mix;
  }
  const auto balance = balance_of(prepared->mix);
  if (failed(balance, specified)) return specified;
  fill_in(*prepared, *balance, specified);
  if (!specified.designed && specified.outcome != Outcome::meets) {
    offer_beside(site, zone, *prepared, specified);
  }
  return specified;
}

}  // namespace

std::vector<SpecifiedMix> specified_mixes(const Site& site) {
  std::vector<SpecifiedMix> mixes;
  for (const auto& entry : site.zones) {
    const Zone& zone = entry.second;
    if (zone.mix.empty()) continue;
    const auto& stated = site.mixes.at(zone.mix).rock_class;
    const auto& class_id = stated.empty() ? zone.rock_class : stated;
    if (find_class(site, class_id) == nullptr) continue;
    auto found = std::find_if(mixes.begin(), mixes.end(), [&](const SpecifiedMix& known) {
      // Proportions are found for the soil that the mix lies on.
      const bool found_here = known.designed || !known.beside.empty();
      return known.id == zone.mix && known.rock_class == class_id &&
             (!found_here || known.soil == zone.soil);
    });
    if (found == mixes.end()) {
      mixes.push_back(specify(site, zone, class_id));
      found = mixes.end() - 1;
    }
    found->zones.push_back(zone.name);
  }
  return mixes;
}

}  // namespace proofstone
