#include "engine/site/proposed_mix.h"

#include <fmt/format.h>

#include "engine/site/designed_mix.h"

namespace proofstone {

Expected<ProposedMix> propose_mix(const Site& site, const std::string& zone,
                                  const Wording& wording) {
  std::vector<std::string> mixed;
  const Zone* wanted = nullptr;
  for (const auto& one : site.zones) {
    if (!one.second.mix.empty()) mixed.push_back(one.first);
    if (one.first == zone) wanted = &one.second;
  }
  if (wanted == nullptr || wanted->mix.empty()) {
    return Problem{"no-mix",
                   wanted == nullptr ? fmt::format("No zone is called \"{}\".", zone)
                                     : fmt::format("{} names no mix.", wanted->name),
                   "", "/zone", mixed.empty() ? "a zone that names a mix" : listed(mixed)};
  }
  const auto& kept = site.mixes.at(wanted->mix);
  if (!kept.recipe.empty()) {
    return Problem{"fixed-recipe",
                   fmt::format("{} is a published recipe: its proportions stand.", kept.name), "",
                   "/mixes/" + kept.id, "a mix with parts of its own, or without parts"};
  }
  const auto prepared = prepare_mix(site, *wanted);
  if (!prepared) return prepared.problems();
  const auto made = designed_mix(site, *wanted, *prepared);
  if (!made) return made.problems();
  Site with = site;
  SiteMix& mix = with.mixes.at(wanted->mix);
  mix.rock_parts = made->mix.mix.rock_parts;
  mix.parts.clear();
  for (std::size_t i = 0; i < made->mix.materials.size(); ++i) {
    mix.parts.push_back({made->mix.materials[i]->id, made->mix.mix.fill_parts[i]});
  }
  ProposedMix proposed{mix, mix_in_zone(with, *wanted, wording)};
  // It is what was looked for: no other is proposed beside it.
  std::erase_if(proposed.said.findings,
                [](const Finding& finding) { return finding.id.rfind("mix-proposed.", 0) == 0; });
  if (!proposed.said.findings.empty()) {
    auto& first = proposed.said.findings.front();
    first.sentence += what_is_kept(site, *wanted, *made, wording);
    first.reasons.insert(first.reasons.end(), made->left_out.begin(), made->left_out.end());
  }
  return proposed;
}

}  // namespace proofstone
