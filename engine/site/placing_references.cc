#include <fmt/format.h>

#include <algorithm>

#include "engine/site/placing_design_of.h"
#include "engine/site/placing_reader.h"

namespace proofstone {
namespace {

template <class Item>
void must_exist(const std::map<std::string, Item>& items, const std::string& id,
                const std::string& pointer, const char* kind, Problems& problems) {
  if (items.contains(id)) return;
  std::string allowed;
  for (const auto& [known, item] : items) allowed += (allowed.empty() ? "" : ", ") + known;
  problems.push_back({"no-such-item", fmt::format("No {} is called \"{}\".", kind, id), "", pointer,
                      allowed.empty() ? fmt::format("there is no {} yet", kind) : allowed});
}

/// What a check of this kind cannot have.
void must_fit(const PlacingCheck& check, const CheckEntry& entry, const std::string& at,
              Problems& problems) {
  const bool takes_lengths = check.measure == CheckMeasure::at_least ||
                             check.measure == CheckMeasure::at_most ||
                             check.measure == CheckMeasure::within;
  if (!entry.measured.empty() && !takes_lengths) {
    problems.push_back(
        {"not-measured-here",
         check.measure == CheckMeasure::layer_survey
             ? "Thicknesses of the rock stand in a survey of the layer."
             : "This check takes no lengths.",
         "", at + "/measured",
         check.measure == CheckMeasure::layer_survey ? "an item of /layer_surveys" : "a result"});
  }
  if (!entry.loads.empty() && check.measure != CheckMeasure::load_tally) {
    problems.push_back({"no-loads-here", "This check counts no loads.", "", at + "/loads",
                        "loads stand at the check \"mix\""});
  }
  if (check.measure != CheckMeasure::within) {
    for (std::size_t i = 0; i < entry.measured.size(); ++i) {
      if (entry.measured[i].meters() >= 0) continue;
      problems.push_back({"negative", "A depth, thickness or lap is not negative.", "",
                          fmt::format("{}/measured/{}", at, i), "0 or more"});
    }
  }
}

}  // namespace

Problems placing_reference_problems(const Site& site) {
  Problems problems;
  for (const auto& [id, walk] : site.placing_walks) {
    const std::string at = "/placing_walks/" + id;
    must_exist(site.zones, walk.zone, at + "/zone", "zone", problems);
    const auto zone = site.zones.find(walk.zone);
    if (zone == site.zones.end()) continue;
    const auto checks = placing_checks(placing_design(site, zone->second));
    for (const auto& entry : walk.entries) {
      const auto check =
          std::find_if(checks.begin(), checks.end(),
                       [&entry](const PlacingCheck& asked) { return asked.id == entry.check; });
      // A check, or a material of its tally, that is not asked for is no problem: the design may
      // have been changed since.
      if (check == checks.end()) continue;
      must_fit(*check, entry, at + "/checks/" + entry.check, problems);
    }
  }
  for (const auto& [id, one] : site.nonconformances) {
    const std::string at = "/nonconformances/" + id;
    if (!one.lot.empty()) must_exist(site.lots, one.lot, at + "/lot", "lot", problems);
    if (!one.zone.empty()) must_exist(site.zones, one.zone, at + "/zone", "zone", problems);
  }
  return problems;
}

}  // namespace proofstone
