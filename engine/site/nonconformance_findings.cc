#include <fmt/format.h>

#include "engine/site/placing_findings.h"

namespace proofstone {
namespace {

std::string by(const Observation& seen) { return fmt::format("{} on {}", seen.who, seen.when); }

std::string subject_of(const Site& site, const Nonconformance& one) {
  if (!one.lot.empty()) return site.lots.at(one.lot).name;
  const auto& zone = site.zones.at(one.zone).name;
  return one.check.empty() ? zone : fmt::format("{}, check \"{}\"", zone, one.check);
}

void put_notes(const Nonconformance& one, Finding& finding) {
  const auto add = [&finding](const char* what, const Observation& seen) {
    if (!seen.note.empty()) finding.reasons.push_back(fmt::format("{}: {}", what, seen.note));
    for (const auto& photo : seen.photos) {
      finding.reasons.push_back(fmt::format("{}: photo {}.", what, photo));
    }
  };
  add("Opened", one.opened);
  if (one.disposition) add("Disposition", one.disposition->signed_off);
  if (one.closed) add("Closed", *one.closed);
}

void put_course(const Nonconformance& one, Finding& finding) {
  finding.sentence += fmt::format(" Opened by {}.", by(one.opened));
  if (one.disposition) {
    finding.sentence += fmt::format(" To do: {}, by {}", disposition_word(one.disposition->kind),
                                    by(one.disposition->signed_off));
    finding.sentence += one.disposition->approved_by.empty()
                            ? "."
                            : fmt::format(", approved by {}.", one.disposition->approved_by);
  }
  if (one.closed) finding.sentence += fmt::format(" Closed by {}.", by(*one.closed));
}

}  // namespace

std::vector<Finding> nonconformance_findings(const Site& site) {
  std::vector<Finding> findings;
  for (const auto& [id, one] : site.nonconformances) {
    Finding finding;
    finding.topic = Topic::placing;
    finding.about.zone = one.zone;
    finding.about.lot = one.lot;
    finding.id = "nonconformance." + id;
    finding.title = one.name;
    finding.sentence = fmt::format("Not as designed: {}.", subject_of(site, one));
    put_course(one, finding);
    put_notes(one, finding);
    switch (state_of(one)) {
      case NonconformanceState::open:
        finding.outcome = Outcome::falls_short;
        finding.next =
            "Say what is done: rework, remove and replace, use as is with the engineer's approval, "
            "or measure further. Nothing may cover it before.";
        break;
      case NonconformanceState::disposed:
        finding.outcome = Outcome::not_yet_known;
        finding.next = "Do it, look again with photos, then close it.";
        break;
      case NonconformanceState::closed:
        finding.outcome = Outcome::meets;
        finding.next = "Keep it with the record.";
        break;
    }
    findings.push_back(std::move(finding));
  }
  return findings;
}

}  // namespace proofstone
