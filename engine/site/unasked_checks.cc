#include "engine/site/unasked_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <string>

#include "engine/site/placing_design_of.h"
#include "engine/site/wording.h"

namespace proofstone {
namespace {

/// Who took down what, in words, by check.
using TakenDown = std::map<std::string, std::vector<std::string>>;

TakenDown taken_down_of(const Site& site, const Zone& zone) {
  TakenDown taken;
  for (const auto& [id, walk] : site.placing_walks) {
    if (walk.zone != zone.id) continue;
    for (const auto& entry : walk.entries) taken[entry.check].push_back(walk.name);
  }
  for (const auto& [id, one] : site.nonconformances) {
    if (one.zone == zone.id && !one.check.empty()) taken[one.check].push_back(one.name);
  }
  return taken;
}

}  // namespace

std::vector<Finding> unasked_check_findings(const Site& site) {
  std::vector<Finding> findings;
  for (const auto& [id, zone] : site.zones) {
    auto taken = taken_down_of(site, zone);
    if (taken.empty()) continue;
    std::vector<std::string> asked;
    for (const auto& check : placing_checks(placing_design(site, zone))) {
      asked.push_back(check.id);
      taken.erase(check.id);
    }
    if (taken.empty()) continue;
    Finding finding;
    finding.topic = Topic::placing;
    finding.about.zone = id;
    finding.id = "unasked-checks." + id;
    finding.title = "Checks of " + zone.name + " that its design does not ask for";
    finding.outcome = Outcome::ask_the_designer;
    std::vector<std::string> names;
    for (const auto& [check, by] : taken) {
      names.push_back(fmt::format("\"{}\"", check));
      finding.reasons.push_back(fmt::format("\"{}\" is named by: {}.", check, listed(by)));
    }
    finding.sentence = fmt::format(
        "Something was taken down at {}, which the design of {} does not ask for. It is kept and "
        "counts for no check.",
        listed(names), zone.name);
    finding.next = fmt::format(
        "If the design was changed since, let the designer say what becomes of the work that was "
        "checked; if a name is wrong, write one of: {}.",
        fmt::join(asked, ", "));
    findings.push_back(std::move(finding));
  }
  return findings;
}

}  // namespace proofstone
