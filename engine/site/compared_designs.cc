#include "engine/site/compared_designs.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "engine/finding/outcome_order.h"
#include "engine/quantities/ordered_measure.h"
#include "engine/site/mended_filter.h"

namespace proofstone {
namespace {

ComparedRow::Cell cell_of(const Finding* finding) {
  if (finding == nullptr) return {"not looked at"};
  return {std::string(outcome_phrase(finding->outcome)), finding->margin, finding->outcome,
          *finding};
}

const QuantityRow* row_called(const QuantityTable& table, const std::string& item) {
  const auto found = std::find_if(table.totals.begin(), table.totals.end(),
                                  [&](const QuantityRow& row) { return row.item == item; });
  return found == table.totals.end() || !found->amount ? nullptr : &*found;
}

template <class Text>
void add_row(Substitution& study, const ComparedColumns& columns, std::string what, Text text) {
  ComparedRow row{std::move(what), {}};
  for (const auto* column : columns) row.cells.push_back({text(*column)});
  study.rows.push_back(std::move(row));
}

ComparedRow::Cell required_cell(const SizedSite& sized, const Wording& wording) {
  const auto& sizing = sized.sizing;
  if (!sizing.governing) return {"no method speaks"};
  const auto& asked = sizing.asked[*sizing.governing];
  ComparedRow::Cell cell{fmt::format("{}, by {}", required_text(asked.required, wording),
                                     asked.method->description().title)};
  const auto said = std::find_if(sizing.findings.begin(), sizing.findings.end(),
                                 [](const Finding& finding) { return finding.governs; });
  if (said != sizing.findings.end()) cell.finding = *said;
  return cell;
}

void compare_rock(Substitution& study, const ComparedColumns& columns, const Wording& wording) {
  add_row(study, columns, "Source",
          [](const SizedSite& sized) { return sized.site.sources.at(sized.zone.source).name; });
  add_row(study, columns, "Specific gravity", [](const SizedSite& sized) {
    return significant(sized.site.sources.at(sized.zone.source).rock.specific_gravity.number(), 4);
  });
  add_row(study, columns, "Shape", [](const SizedSite& sized) {
    return std::string(angularity_name(sized.site.sources.at(sized.zone.source).rock.angularity));
  });
  add_row(study, columns, "Class",
          [](const SizedSite& sized) { return sized.sizing.specified->name; });
  ComparedRow stones{"Stone asked for", {}};
  for (const auto* column : columns) stones.cells.push_back(required_cell(*column, wording));
  study.rows.push_back(std::move(stones));
  add_row(study, columns, "Layer thickness",
          [&](const SizedSite& sized) { return wording.rock(sized.zone.layer_thickness); });
  const auto any = [&](const auto& has) {
    return std::any_of(columns.begin(), columns.end(),
                       [&](const SizedSite* column) { return has(*column); });
  };
  if (any([](const SizedSite& sized) { return sized.zone.filter.has_value(); })) {
    add_row(study, columns, "Filter, from the soil up", [&](const SizedSite& sized) {
      return sized.zone.filter ? layers_text(sized.site, *sized.zone.filter, wording)
                               : std::string("not stated");
    });
  }
  if (any([](const SizedSite& sized) { return !sized.zone.mix.empty(); })) {
    add_row(study, columns, "Proportions of the mix", [&](const SizedSite& sized) {
      return sized.zone.mix.empty() ? std::string("no mix")
                                    : proportions_text(sized.site, sized.zone.mix);
    });
  }
}

std::string judged_matter(const Finding& finding) {
  switch (finding.topic) {
    case Topic::rock_class:
      return "Stones against the size asked for";
    case Topic::layer:
      return finding.id.rfind("layer.", 0) == 0 ? "Layer against its least thickness"
                                                : finding.title;
    default:
      return finding.title;
  }
}

/// What is judged of the zone, in the order of the original's findings; then what is judged only
/// with the other rock.
void compare_findings(Substitution& study, const ComparedColumns& columns) {
  std::set<std::string> seen;
  for (const auto* judged : columns) {
    for (const auto& finding : judged->findings.findings) {
      if (!hangs_on_the_rock(finding) || !seen.insert(finding.id).second) continue;
      ComparedRow row{judged_matter(finding), {}};
      for (const auto* column : columns) {
        const auto* said = column->findings.find(finding.id);
        auto cell = cell_of(said);
        // Another layer may lie in the place of the one that the row is called after.
        if (said != nullptr && said->topic == Topic::filter && said->title != finding.title) {
          cell.text = fmt::format("{}: {}", said->title, cell.text);
        }
        row.cells.push_back(std::move(cell));
      }
      study.rows.push_back(std::move(row));
    }
  }
}

/// A cell that opens to how the zone was counted.
ComparedRow::Cell counted_cell(const SizedSite& sized, std::string text) {
  ComparedRow::Cell cell{std::move(text)};
  if (const auto* counted = sized.findings.find("quantities." + sized.zone.id)) {
    cell.finding = *counted;
  }
  return cell;
}

void compare_quantities(Substitution& study, const ComparedColumns& columns,
                        const Wording& wording) {
  struct Row {
    const char* item;
    const char* what;
  };
  for (const Row& compared :
       {Row{"rock-toe", "Rock of the toe"}, Row{"rock-ordered", "Rock to order"}}) {
    const bool any = std::any_of(columns.begin(), columns.end(), [&](const SizedSite* column) {
      return row_called(column->findings.quantities, compared.item) != nullptr;
    });
    if (!any) continue;
    ComparedRow row{compared.what, {}};
    for (const auto* column : columns) {
      const auto* total = row_called(column->findings.quantities, compared.item);
      row.cells.push_back(counted_cell(
          *column, total == nullptr ? "not yet known"
                                    : ordered_measure(*total->amount, wording.units()).text));
    }
    study.rows.push_back(std::move(row));
  }
  if (!columns.front()->findings.quantities.cost) return;
  ComparedRow costs{"Cost of all that has a price", {}};
  for (const auto* column : columns) {
    const auto& table = column->findings.quantities;
    costs.cells.push_back(counted_cell(
        *column, table.cost ? money_text(*table.cost, table.currency) : "not yet known"));
  }
  study.rows.push_back(std::move(costs));
}

}  // namespace

bool hangs_on_the_rock(const Finding& finding) {
  if (finding.about.zone.empty()) return false;
  switch (finding.topic) {
    case Topic::rock_class:
    case Topic::layer:
    case Topic::toe:
    case Topic::filter:
    case Topic::mix:
    case Topic::cover:
      return true;
    default:
      return false;
  }
}

std::string proportions_text(const Site& site, const std::string& id) {
  const auto& mix = site.mixes.at(id);
  if (!mix.recipe.empty()) return "published recipe " + mix.recipe;
  if (mix.parts.empty()) return "to be found";
  std::vector<std::string> fills;
  for (const auto& part : mix.parts) {
    fills.push_back(
        fmt::format("{} of {}", significant(part.parts, 4), site.materials.at(part.material).name));
  }
  return fmt::format("{} of the rock to {}", significant(mix.rock_parts, 4), listed(fills));
}

void compare_designs(Substitution& study, const ComparedColumns& columns, const Wording& wording) {
  compare_rock(study, columns, wording);
  compare_findings(study, columns);
  compare_quantities(study, columns, wording);
}

std::vector<const Finding*> made_worse(const SizedSite& original, const SizedSite& other) {
  std::vector<const Finding*> worse;
  for (const auto& finding : other.findings.findings) {
    if (!hangs_on_the_rock(finding)) continue;
    const auto* before = original.findings.find(finding.id);
    if (before == nullptr || weight(finding.outcome) <= weight(before->outcome)) continue;
    worse.push_back(&finding);
  }
  return worse;
}

}  // namespace proofstone
