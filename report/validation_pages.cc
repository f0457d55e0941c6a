#include "report/validation_pages.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "engine/method/registry.h"
#include "engine/rock/embedded_catalog.h"
#include "engine/rock/rock_class.h"
#include "report/markdown.h"

namespace proofstone {
namespace {

std::string link_to(const std::string& method) {
  const auto* found = find_method(method);
  return fmt::format("[{}]({}.md)", found ? found->description().title : method, method);
}

std::string expected_of(const CheckOutcome& outcome) {
  if (outcome.output.empty()) return fmt::format("refused: `{}`", outcome.expected_text);
  return fmt::format("{} {}", outcome.output, outcome.expected_text);
}

std::string computed_of(const CheckOutcome& outcome) {
  if (outcome.output.empty()) return outcome.passed ? "refused" : "**missed**";
  return outcome.computed_text + (outcome.passed ? "" : " **missed**");
}

/// Values of one standing.
struct Tally {
  int values = 0;
  int reproduced = 0;
  const CheckOutcome* tightest = nullptr;

  void add(const CheckOutcome& outcome) {
    ++values;
    if (outcome.passed) ++reproduced;
    if (tightest == nullptr || outcome.strain() > tightest->strain()) tightest = &outcome;
  }
};

std::string percent_of_allowed(const CheckOutcome& outcome) {
  return fmt::format("{:.0f} %", 100 * outcome.strain());
}

void add_tallies(std::string& page, const std::vector<CheckOutcome>& outcomes) {
  std::map<SourceStanding, Tally> tallies;
  Tally refusals;
  for (const auto& outcome : outcomes) {
    if (outcome.output.empty()) {
      refusals.add(outcome);
    } else {
      tallies[outcome.source.standing].add(outcome);
    }
  }
  page +=
      "| standing | values | reproduced | largest difference over the one allowed |\n"
      "|---|---|---|---|\n";
  for (const auto& [standing, tally] : tallies) {
    page += fmt::format("| {} | {} | {} | {}: {}, {} |\n", standing_name(standing), tally.values,
                        tally.reproduced, percent_of_allowed(*tally.tightest),
                        link_to(tally.tightest->method), tally.tightest->case_id);
  }
  page += fmt::format("| what cannot be computed is refused by name | {} | {} | |\n",
                      refusals.values, refusals.reproduced);
}

void add_methods(std::string& page, const std::vector<CheckOutcome>& outcomes) {
  page +=
      "\n## By method\n\n| method | published | from memory | computed | refused | missed | "
      "largest "
      "difference over the one allowed |\n|---|---|---|---|---|---|---|\n";
  for (const auto* method : all_methods()) {
    const auto& id = method->description().id;
    int published = 0;
    int memory = 0;
    int computed = 0;
    int refused = 0;
    int missed = 0;
    double strain = 0;
    for (const auto& outcome : outcomes) {
      if (outcome.method != id) continue;
      if (!outcome.passed) ++missed;
      strain = std::max(strain, outcome.strain());
      if (outcome.output.empty()) {
        ++refused;
      } else if (outcome.source.standing == SourceStanding::published) {
        ++published;
      } else if (outcome.source.standing == SourceStanding::memory) {
        ++memory;
      } else {
        ++computed;
      }
    }
    page += fmt::format("| {} | {} | {} | {} | {} | {} | {:.0f} % |\n", link_to(id), published,
                        memory, computed, refused, missed, 100 * strain);
  }
}

/// The remarks of the tables, each once: on values that stand in a document, or on computed ones.
void add_remarks(std::string& page, const std::vector<CheckOutcome>& outcomes, bool on_computed) {
  std::set<std::string> told;
  for (const auto& outcome : outcomes) {
    const bool computed = outcome.source.standing == SourceStanding::computed;
    if (outcome.remark.empty() || computed != on_computed) continue;
    const auto line =
        fmt::format("- {}, {} ({}, {}): {}\n", link_to(outcome.method), outcome.case_id,
                    outcome.source.document, outcome.source.place, outcome.remark);
    if (told.insert(line).second) page += line;
  }
}

/// What is recalled of one document.
struct Recalled {
  std::set<std::string> formulas;
  std::set<std::string> values;
};

std::map<std::string, Recalled> recalled_by_document(const std::vector<CheckOutcome>& outcomes) {
  std::map<std::string, Recalled> documents;
  for (const auto* method : all_methods()) {
    const auto& about = method->description();
    for (const auto& source : about.sources) {
      if (source.standing != SourceStanding::memory) continue;
      documents[source.document].formulas.insert(
          fmt::format("{}: {}", link_to(about.id), source.place));
    }
  }
  for (const auto& known : class_catalog()) {
    if (known.source.standing != SourceStanding::memory) continue;
    documents[known.source.document].formulas.insert(
        fmt::format("[rock classes](rock-classes.md), {}: {}", known.family, known.source.place));
  }
  for (const auto& outcome : outcomes) {
    if (outcome.source.standing != SourceStanding::memory || outcome.output.empty()) continue;
    documents[outcome.source.document].values.insert(
        fmt::format("{}, {}: {} ({}); computed here: {}", link_to(outcome.method), outcome.case_id,
                    expected_of(outcome), outcome.source.place, outcome.computed_text));
  }
  return documents;
}

}  // namespace

std::vector<CheckOutcome> all_check_outcomes() {
  std::vector<CheckOutcome> all;
  for (const auto& file : embedded_checks()) {
    auto outcomes = run_check_table(file.text);
    if (!outcomes) continue;  // a table that cannot be read fails its own test
    std::move(outcomes->begin(), outcomes->end(), std::back_inserter(all));
  }
  return all;
}

std::string cases_section(const std::vector<CheckOutcome>& outcomes, const std::string& method) {
  std::string section =
      "\n## Published cases\n\n| case | inputs | expected | computed here | allowed | source "
      "|\n|---|---|---|---|---|---|\n";
  for (std::size_t i = 0; i < outcomes.size(); ++i) {
    const auto& first = outcomes[i];
    if (first.method != method) continue;
    // The outputs of one case stand in one row.
    std::string expected = expected_of(first);
    std::string computed = computed_of(first);
    std::string allowed = first.allowed_text;
    while (i + 1 < outcomes.size() && outcomes[i + 1].method == method &&
           outcomes[i + 1].case_id == first.case_id) {
      ++i;
      expected += "<br>" + expected_of(outcomes[i]);
      computed += "<br>" + computed_of(outcomes[i]);
      allowed += "<br>" + outcomes[i].allowed_text;
    }
    section +=
        fmt::format("| {}: {}{} | {} | {} | {} | {} | {}, {} ({}) |\n",
                    markdown_cell(first.case_id), markdown_cell(first.about),
                    first.remark.empty() ? "" : " *" + markdown_cell(first.remark) + "*",
                    markdown_cell(first.inputs), markdown_cell(expected), markdown_cell(computed),
                    markdown_cell(allowed), markdown_cell(first.source.document),
                    markdown_cell(first.source.place), standing_name(first.source.standing));
  }
  return section;
}

HandbookPage validation_page(const std::vector<CheckOutcome>& outcomes) {
  std::string page =
      "# Validation\n\nEvery value of the check tables beside what this engine computes. "
      "\"Published\" values were read in the document named; \"memory\" values are recalled from "
      "it "
      "and stand in [a list of their own](from-memory.md); \"computed\" values were worked from "
      "the "
      "formula, apart from this engine, and prove the arithmetic but not the source.\n\n";
  add_tallies(page, outcomes);
  add_methods(page, outcomes);
  page +=
      "\n## Where a print and the computation part\n\nRounding in the source, misprints and "
      "constants of different sharpness, as the tables remark them.\n\n";
  add_remarks(page, outcomes, false);
  page += "\n## Remarks on computed cases\n\n";
  add_remarks(page, outcomes, true);
  return {"validation.md", page};
}

HandbookPage memory_page(const std::vector<CheckOutcome>& outcomes) {
  std::string page =
      "# From memory\n\nFormulas and values recalled from the documents named, to be confirmed "
      "against them before they decide anything.\n";
  for (const auto& [document, recalled] : recalled_by_document(outcomes)) {
    page += fmt::format("\n## {}\n\n", document);
    for (const auto& formula : recalled.formulas) page += fmt::format("- {}\n", formula);
    for (const auto& value : recalled.values) page += fmt::format("- {}\n", value);
  }
  return {"from-memory.md", page};
}

}  // namespace proofstone
