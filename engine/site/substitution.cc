#include "engine/site/substitution.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/quantities/ordered_measure.h"
#include "engine/site/assess.h"
#include "engine/site/class_choice.h"
#include "engine/site/reach_water.h"
#include "engine/site/weighted_size.h"
#include "engine/site/zone_layer.h"

namespace proofstone {
namespace {

/// What a thickness that was only converted between units may differ by.
constexpr double rounding = 1e-9;

/// The site with this zone alone, without what other rock leaves as it is: lots, looks, papers and
/// chances.
Site reduced(const Site& site, const std::string& zone) {
  Site only = site;
  std::erase_if(only.zones, [&](const auto& entry) { return entry.first != zone; });
  only.zones.at(zone).uncertainty.clear();
  only.lots.clear();
  only.looks.clear();
  only.submittals.clear();
  return only;
}

Problems problems_of(const Site& site, const SubstituteRock& rock) {
  Problems problems;
  const auto known = [](const auto& items) {
    std::string allowed;
    for (const auto& [id, item] : items) allowed += (allowed.empty() ? "" : ", ") + id;
    return allowed;
  };
  if (!site.zones.contains(rock.zone)) {
    problems.push_back({"no-such-item", fmt::format("No zone is called \"{}\".", rock.zone), "",
                        "/zone", known(site.zones)});
  }
  if (!rock.source.empty() && !site.sources.contains(rock.source)) {
    problems.push_back({"no-such-item", fmt::format("No source is called \"{}\".", rock.source), "",
                        "/source", known(site.sources)});
  }
  if (!rock.rock_class.empty() && find_class(site, rock.rock_class) == nullptr) {
    problems.push_back({"no-such-class", fmt::format("No class is called \"{}\".", rock.rock_class),
                        "", "/class", "an id that `proofstone classes` lists, or one of the site"});
  }
  if (rock.specific_gravity &&
      !(rock.specific_gravity->number() >= 1.8 && rock.specific_gravity->number() <= 3.6)) {
    problems.push_back({"implausible", "No rock has this specific gravity.", "",
                        "/specific_gravity", "1.8 to 3.6"});
  }
  if (rock.source.empty() && rock.rock_class.empty() && !rock.angularity &&
      !rock.specific_gravity) {
    problems.push_back({"missing-field", "Nothing is substituted.", "", "",
                        "source, class, angularity or specific_gravity"});
  }
  return problems;
}

/// The zone of the reduced site with the other rock.
Site changed(const Site& original, const SubstituteRock& rock, std::vector<std::string>& notes) {
  Site other = original;
  auto& zone = other.zones.at(rock.zone);
  if (!rock.source.empty()) zone.source = rock.source;
  if (!rock.rock_class.empty()) zone.rock_class = rock.rock_class;
  auto& source = other.sources.at(zone.source);
  if (rock.specific_gravity) source.rock.specific_gravity = *rock.specific_gravity;
  if (rock.angularity && *rock.angularity != source.rock.angularity) {
    source.rock.angularity = *rock.angularity;
    if (source.rock.angle_of_repose) {
      source.rock.angle_of_repose.reset();
      notes.emplace_back(
          "The stated angle of repose was of other stones and is left out: methods take their "
          "own.");
    }
  }
  return other;
}

/// A site with its zone sized; kept in one place because the sizing points into the water.
struct Sized {
  explicit Sized(Site of, const std::string& id, const Wording& wording)
      : site(std::move(of)),
        zone(site.zones.at(id)),
        reaches(water_in_reaches(site, wording)),
        water(water_at_zone(site, zone, reaches, wording)),
        sizing(size_zone(site, zone, water, wording)),
        findings(assess(site, wording.units())) {}
  Sized(const Sized&) = delete;
  Sized& operator=(const Sized&) = delete;

  Site site;
  const Zone& zone;
  std::vector<ReachWater> reaches;
  std::vector<ZoneWater> water;
  ZoneSizing sizing;
  Findings findings;
};

/// What a class leaves under the zone's policy; absent where nothing counts.
std::optional<double> margin_of(const RockClass& rock_class, const ZoneSizing& sizing) {
  if (sizing.zone->policy == GoverningPolicy::weighted) {
    const auto weighted = weigh_sizes(sizing, rock_class);
    return weighted ? std::optional<double>(weighted->margin) : std::nullopt;
  }
  std::optional<double> least;
  for (const auto& asked : sizing.asked) {
    if (!counts(*sizing.zone, asked)) continue;
    const double margin = class_margin(rock_class, asked).value_or(0);
    if (!least || margin < *least) least = margin;
  }
  return least;
}

/// The class itself where it leaves `margin`, else the smallest of its family that does.
const RockClass* class_with(const Site& site, const ZoneSizing& sizing, double margin) {
  const auto enough = [&](const RockClass& candidate) {
    return margin_of(candidate, sizing).value_or(0) >= margin * (1 - rounding);
  };
  if (enough(*sizing.specified)) return sizing.specified;
  for (const auto& family : class_families(site)) {
    if (family.name != sizing.specified->family) continue;
    for (const auto* candidate : family.classes) {
      if (enough(*candidate)) return candidate;
    }
  }
  return nullptr;
}

ComparedRow::Cell cell_of(const Finding* finding) {
  if (finding == nullptr) return {"not looked at", std::nullopt, std::nullopt};
  return {std::string(outcome_phrase(finding->outcome)), finding->margin, finding->outcome};
}

const QuantityRow* row_called(const QuantityTable& table, const std::string& item) {
  const auto found = std::find_if(table.totals.begin(), table.totals.end(),
                                  [&](const QuantityRow& row) { return row.item == item; });
  return found == table.totals.end() || !found->amount ? nullptr : &*found;
}

using Columns = std::vector<const Sized*>;

template <class Text>
void add_row(Substitution& study, const Columns& columns, std::string what, Text text) {
  ComparedRow row{std::move(what), {}};
  for (const auto* column : columns) row.cells.push_back({text(*column), {}, {}});
  study.rows.push_back(std::move(row));
}

std::string required_cell(const Sized& sized, const Wording& wording) {
  if (!sized.sizing.governing) return "no method speaks";
  const auto& asked = sized.sizing.asked[*sized.sizing.governing];
  return fmt::format("{}, by {}", required_text(asked.required, wording),
                     asked.method->description().title);
}

void compare_rock(Substitution& study, const Columns& columns, const Wording& wording) {
  add_row(study, columns, "Source",
          [](const Sized& sized) { return sized.site.sources.at(sized.zone.source).name; });
  add_row(study, columns, "Specific gravity", [](const Sized& sized) {
    return significant(sized.site.sources.at(sized.zone.source).rock.specific_gravity.number(), 4);
  });
  add_row(study, columns, "Shape", [](const Sized& sized) {
    return std::string(angularity_name(sized.site.sources.at(sized.zone.source).rock.angularity));
  });
  add_row(study, columns, "Class", [](const Sized& sized) { return sized.sizing.specified->name; });
  add_row(study, columns, "Stone asked for",
          [&](const Sized& sized) { return required_cell(sized, wording); });
  add_row(study, columns, "Layer thickness",
          [&](const Sized& sized) { return wording.rock(sized.zone.layer_thickness); });
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

/// What is judged of the zone, in the order of the original's findings.
void compare_findings(Substitution& study, const Columns& columns) {
  for (const auto& finding : columns.front()->findings.findings) {
    const bool of_design = finding.topic == Topic::rock_class || finding.topic == Topic::layer ||
                           finding.topic == Topic::toe;
    if (!of_design || finding.about.zone.empty()) continue;
    ComparedRow row{judged_matter(finding), {}};
    for (const auto* column : columns)
      row.cells.push_back(cell_of(column->findings.find(finding.id)));
    study.rows.push_back(std::move(row));
  }
}

void compare_quantities(Substitution& study, const Columns& columns, const Wording& wording) {
  struct Row {
    const char* item;
    const char* what;
  };
  for (const Row& compared :
       {Row{"rock-toe", "Rock of the toe"}, Row{"rock-ordered", "Rock to order"}}) {
    const bool any = std::any_of(columns.begin(), columns.end(), [&](const Sized* column) {
      return row_called(column->findings.quantities, compared.item) != nullptr;
    });
    if (!any) continue;
    add_row(study, columns, compared.what, [&](const Sized& sized) {
      const auto* row = row_called(sized.findings.quantities, compared.item);
      return row == nullptr ? "not yet known" : ordered_measure(*row->amount, wording.units()).text;
    });
  }
  if (!columns.front()->findings.quantities.cost) return;
  add_row(study, columns, "Cost of all that has a price", [](const Sized& sized) {
    const auto& table = sized.findings.quantities;
    return table.cost ? money_text(*table.cost, table.currency) : "not yet known";
  });
}

/// The substitute with the class and the layer that leave what the original leaves.
std::optional<Site> made_as_safe(const Sized& original, const Sized& offered) {
  const double wanted = margin_of(*original.sizing.specified, original.sizing).value_or(1);
  const auto* needed = class_with(offered.site, offered.sizing, wanted);
  if (needed == nullptr) return std::nullopt;
  Site safe = offered.site;
  auto& zone = safe.zones.at(offered.zone.id);
  zone.rock_class = needed->id;
  Steps not_shown;
  const auto least = least_layer(offered.sizing, *needed, not_shown);
  // A layer that is thin already is no thinner in proportion.
  if (least && zone.layer_thickness < least->least) zone.layer_thickness = least->least;
  return safe;
}

void conclude(Finding& finding, const Sized& original, const Sized& offered, const Sized* safe,
              const Wording& wording) {
  const auto before = margin_of(*original.sizing.specified, original.sizing);
  const auto after = margin_of(*offered.sizing.specified, offered.sizing);
  if (!before || !after) {
    finding.outcome = Outcome::ask_the_designer;
    finding.sentence = "No sizing method speaks for this zone within its published range.";
    finding.next = "Ask the designer which method governs here.";
    return;
  }
  finding.margin = Margin{*after, std::nullopt, std::nullopt};
  finding.steps.computed("m", "margin of the class as specified",
                         "size of the class / size asked for", measure(*before));
  finding.steps.computed("m'", "margin of the class with the other rock",
                         "size of the class / size asked for", measure(*after));
  finding.sentence = fmt::format("The margin of the stones goes from {} to {}.",
                                 margin_text(*before), margin_text(*after));
  const auto* layer = offered.findings.find("layer." + offered.zone.id);
  const bool layer_holds = layer != nullptr && layer->outcome == Outcome::meets;
  finding.outcome = *after >= 1 && layer_holds ? Outcome::meets : Outcome::falls_short;
  if (!layer_holds) finding.sentence += " The layer as drawn is too thin for its stones.";
  if (safe == nullptr) {
    finding.next = "No class of this family leaves the original margin: keep the rock specified.";
  } else if (*after >= *before * (1 - rounding) && layer_holds) {
    finding.next = "Nothing to change: the other rock leaves no less.";
  } else {
    finding.next = fmt::format(
        "For the same safety specify {} in a layer of {}; look at toe and filter again.",
        safe->sizing.specified->name, wording.rock(safe->zone.layer_thickness));
  }
}

}  // namespace

Expected<Substitution> study_substitution(const Site& site, const SubstituteRock& substitute,
                                          const Wording& wording) {
  auto problems = problems_of(site, substitute);
  if (!problems.empty()) return problems;
  Substitution study;
  auto& finding = study.finding;
  finding.topic = Topic::substitution;
  finding.about.zone = substitute.zone;
  finding.id = "substitution." + substitute.zone;
  const Sized original(reduced(site, substitute.zone), substitute.zone, wording);
  const Sized offered(changed(original.site, substitute, finding.reasons), substitute.zone,
                      wording);
  const auto safe_site = made_as_safe(original, offered);
  std::optional<Sized> safe;
  if (safe_site) safe.emplace(*safe_site, substitute.zone, wording);
  finding.title = fmt::format("Other rock for {}", original.zone.name);
  finding.about.rock_class = offered.sizing.specified->id;
  Columns columns{&original, &offered};
  study.columns = {"As specified", "Substitute as offered"};
  if (safe) {
    columns.push_back(&*safe);
    study.columns.emplace_back("Substitute made as safe");
  }
  compare_rock(study, columns, wording);
  compare_findings(study, columns);
  compare_quantities(study, columns, wording);
  conclude(finding, original, offered, safe ? &*safe : nullptr, wording);
  if (offered.sizing.governing) {
    const auto& asked = offered.sizing.asked[*offered.sizing.governing];
    finding.sources = asked.method->description().sources;
    finding.steps.append(asked.evaluation.steps);
  }
  finding.cautions = {
      "Only what the sizing methods know of shape and density is compared. Durability is another "
      "question: see the submittal.",
      "Rounded stones interlock less and roll more readily under foot and in placing than the "
      "formulas show."};
  return study;
}

}  // namespace proofstone
