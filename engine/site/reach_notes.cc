#include "engine/site/reach_notes.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/site/wording.h"

namespace proofstone {
namespace {

/// Notes that leave the level in doubt.
bool is_doubtful(ProfileNote note) {
  return note == ProfileNote::critical_assumed || note == ProfileNote::section_extended ||
         note == ProfileNote::ineffective_height || note == ProfileNote::boundary_not_used;
}

}  // namespace

std::string shown_name(const Site& site, const ProfileSection& section) {
  if (section.interpolated) return "between sections, at " + section.name;
  return site.sections.at(section.name).name;
}

void tell_notes(Finding& finding, const Site& site, const WaterProfile& profile) {
  std::vector<std::pair<ProfileNote, std::vector<std::string>>> told;
  for (const ProfileSection& section : profile.sections) {
    for (const ProfileNote note : section.notes) {
      auto known = std::find_if(told.begin(), told.end(),
                                [note](const auto& entry) { return entry.first == note; });
      if (known == told.end()) known = told.insert(told.end(), {note, {}});
      known->second.push_back(shown_name(site, section));
    }
  }
  constexpr std::size_t most_named = 6;
  for (auto& [note, names] : told) {
    std::string where;
    if (names.size() > most_named) {
      where = fmt::format("{} sections, from {} to {}", names.size(), names.front(), names.back());
    } else {
      where = listed(names);
    }
    const auto sentence = fmt::format("{}: {}", where, profile_note_sentence(note));
    if (is_doubtful(note)) {
      finding.reasons.push_back(sentence);
    } else {
      finding.cautions.push_back(sentence);
    }
  }
}

void tell_rising_bed(Finding& finding, const Site& site, const WaterProfile& profile) {
  const ProfileSection* before = nullptr;
  const auto bed = [](const ProfileSection& section) {
    return section.flow.water_level - section.flow.wet.deepest;
  };
  for (const ProfileSection& section : profile.sections) {
    if (section.interpolated) continue;
    if (before != nullptr && bed(section) > bed(*before)) {
      finding.cautions.push_back(fmt::format(
          "The bed rises downstream, from {} to {}: an adverse slope. See that the sections stand "
          "in order and on one datum.",
          shown_name(site, *before), shown_name(site, section)));
    }
    before = &section;
  }
}

void tell_regime(Finding& finding, ProfileRegime regime) {
  if (regime == ProfileRegime::mixed) return;
  const bool tranquil = regime == ProfileRegime::subcritical;
  finding.cautions.push_back(fmt::format(
      "Computed as {0} flow only, as the document chose: where no {0} level balances the energy "
      "the critical one is put, and no jump is looked for.",
      tranquil ? "tranquil" : "rapid"));
}

}  // namespace proofstone
