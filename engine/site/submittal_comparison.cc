#include "engine/site/submittal_comparison.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/site/judged_limit.h"
#include "engine/site/submittal_review.h"

namespace proofstone {
namespace {

/// A submittal with all that its review says.
struct Reviewed {
  const Submittal* submittal = nullptr;
  std::vector<Finding> findings;

  const Finding* find(const std::string& what) const {
    const auto id = fmt::format("submittal.{}{}", submittal->id, what.empty() ? "" : "." + what);
    const auto found = std::find_if(findings.begin(), findings.end(),
                                    [&](const Finding& finding) { return finding.id == id; });
    return found == findings.end() ? nullptr : &*found;
  }
};

ComparedRow limit_row(const RockLimit& limit, const std::vector<Reviewed>& all,
                      const Wording& wording) {
  const auto& kind = kind_of(limit.test);
  ComparedRow row{fmt::format("{} ({})", kind.name, kind.standards), {}};
  row.cells.push_back({fmt::format("{}, {}", limit_text(limit, wording.units()), limit.from)});
  for (const auto& one : all) {
    const auto judged = judge_limit(limit, *one.submittal);
    ComparedRow::Cell cell{judged.result
                               ? rock_test_text(limit.test, *judged.result, wording.units())
                               : std::string("no result speaks of this")};
    cell.outcome = judged.outcome;
    if (judged.margin) cell.margin = Margin{*judged.margin, std::nullopt, std::nullopt};
    if (const auto* finding = one.find(kind.id)) cell.finding = *finding;
    row.cells.push_back(std::move(cell));
  }
  return row;
}

/// What stands in the review of each submittal under `what`, in the words of its finding.
ComparedRow finding_row(std::string title, std::string required, const std::string& what,
                        const std::vector<Reviewed>& all) {
  ComparedRow row{std::move(title), {{std::move(required)}}};
  for (const auto& one : all) {
    const auto* finding = one.find(what);
    if (finding == nullptr) {
      row.cells.push_back({"no result speaks of this", {}, Outcome::not_yet_known});
      continue;
    }
    row.cells.push_back({finding->sentence, finding->margin, finding->outcome, *finding});
  }
  return row;
}

/// "Class III", or both where two submittals are for two classes.
std::string classes_of(const Site& site, const std::vector<Reviewed>& all) {
  std::vector<std::string> names;
  for (const auto& one : all) {
    const auto& name = find_class(site, one.submittal->rock_class)->name;
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
  }
  return listed(names);
}

}  // namespace

Expected<SubmittalComparison> compare_submittals(const Site& site, const std::string& source,
                                                 const Wording& wording) {
  const auto known = site.sources.find(source);
  if (known == site.sources.end()) {
    std::vector<std::string> ids;
    for (const auto& [id, one] : site.sources) ids.push_back(id);
    return Problem{"no-such-item", fmt::format("No source is called \"{}\".", source), "",
                   "/source", ids.empty() ? "there is no source yet" : listed(ids)};
  }
  std::vector<Reviewed> all;
  for (const auto& [id, submittal] : site.submittals) {
    if (submittal.source != source) continue;
    all.push_back({&submittal, review_submittal(site, submittal, wording)});
  }
  if (all.empty()) {
    return Problem{"no-submittal",
                   fmt::format("No submittal of {} has been handed in.", known->second.name), "",
                   "/submittals", "a submittal that names this source"};
  }
  SubmittalComparison comparison;
  comparison.columns.emplace_back("Required");
  for (const auto& one : all) {
    comparison.columns.push_back(one.submittal->name);
    if (const auto* together = one.find("")) comparison.findings.push_back(*together);
  }
  const auto limits = limits_in_force(site.requirements);
  for (const auto& kind : rock_test_kinds()) {
    for (const auto& limit : limits) {
      if (limit.test == kind.test) comparison.rows.push_back(limit_row(limit, all, wording));
    }
  }
  comparison.rows.push_back(
      finding_row("Certified gradation", "the band of " + classes_of(site, all), "gradation", all));
  comparison.rows.push_back(
      finding_row("Specific gravity against the design",
                  fmt::format("{} or more, as the design took",
                              significant(known->second.rock.specific_gravity.number(), 4)),
                  "design", all));
  return comparison;
}

}  // namespace proofstone
