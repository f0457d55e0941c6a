#include <algorithm>

#include "engine/site/quantity_counting.h"
#include "engine/site/zone_cover_findings.h"

namespace proofstone {
namespace {

/// What the findings on a cover count, and under which name it is ordered.
struct CoverItem {
  const char* key;
  const char* what;
  const char* how;
  const char* priced_as;
};
constexpr CoverItem cover_items[] = {
    {"topsoil", "Topsoil, in place", "area covered × thickness", "topsoil"},
    {"blanket_area", "Blanket, with what lies in trenches", "slope and trenches × length",
     "blanket"},
    {"rolls", "Rolls of blanket", "strips and rolls with their overlaps", ""},
    {"stakes", "Stakes of the blanket", "grid and edges", "stakes"},
};

std::optional<Measure> value_of(const std::vector<Finding>& findings, const char* key) {
  for (const auto& finding : findings) {
    for (const auto& value : finding.values) {
      if (value.key == key) return value.value;
    }
  }
  return std::nullopt;
}

bool has_suffix(const std::string& text, const std::string& end) {
  return text.size() >= end.size() && text.compare(text.size() - end.size(), end.size(), end) == 0;
}

}  // namespace

void count_cover(Counting& counting) {
  const auto& zone = counting.zone;
  if (!zone.cover) return;
  const auto section = counting.site.sections.find(zone.section);
  const auto findings =
      cover_findings(zone, section == counting.site.sections.end() ? nullptr : &section->second,
                     counting.water, Wording(UnitSystem::si));
  for (const auto& item : cover_items) {
    const bool drawn = item.key == std::string("topsoil") ? zone.cover->topsoil.has_value()
                                                          : zone.cover->blanket.has_value();
    const auto amount = value_of(findings, item.key);
    if (!drawn && !amount) continue;
    QuantityRow row{item.key, "", item.what, amount};
    row.how = item.how;
    row.priced_as = item.priced_as;
    add_row(counting, std::move(row));
  }
  for (const auto& finding : findings) {
    const bool counts = has_suffix(finding.id, ".quantities") || has_suffix(finding.id, ".stakes");
    if (!counts) continue;
    counting.counted.steps.append(finding.steps);
    if (finding.outcome == Outcome::not_yet_known) {
      counting.counted.missing.push_back(finding.next);
    }
  }
}

}  // namespace proofstone
