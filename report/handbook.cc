#include "report/handbook.h"

#include <fmt/format.h>

#include "engine/method/registry.h"
#include "engine/rock/families_not_held.h"
#include "engine/rock/rock_class.h"
#include "report/field_pages.h"
#include "report/markdown.h"
#include "report/method_plot.h"
#include "report/operating_curves.h"
#include "report/validation_pages.h"

namespace proofstone {
namespace {

void add_list(std::string& page, const std::string& title, const std::vector<std::string>& lines) {
  if (lines.empty()) return;
  page += fmt::format("\n## {}\n\n", title);
  for (const auto& line : lines) page += fmt::format("- {}\n", line);
}

std::string input_notes(const InputDescription& input) {
  std::string notes;
  if (input.form == InputForm::choice) {
    for (const auto& choice : input.choices) {
      notes += fmt::format("{}`{}`: {}", notes.empty() ? "" : "; ", choice.key, choice.meaning);
    }
  } else {
    notes = input.allowed.sentence(input.unit);
  }
  if (!input.default_text.empty()) {
    notes += fmt::format("{}otherwise {}", notes.empty() ? "" : "; ", input.default_text);
  }
  return notes;
}

void add_inputs(std::string& page, const MethodDescription& about) {
  page += "\n## Inputs\n\n| key | symbol | meaning | unit | allowed |\n|---|---|---|---|---|\n";
  for (const auto& input : about.inputs) {
    page += fmt::format("| `{}`{} | {} | {} | {} | {} |\n", input.key,
                        input.required ? " (must be given)" : "", markdown_cell(input.symbol),
                        markdown_cell(input.meaning), input.unit.symbol,
                        markdown_cell(input_notes(input)));
  }
  page += "\n## Outputs\n\n| key | symbol | meaning | unit |\n|---|---|---|---|\n";
  for (const auto& output : about.outputs) {
    page += fmt::format("| `{}` | {} | {} | {} |\n", output.key, markdown_cell(output.symbol),
                        markdown_cell(output.meaning), output.unit.symbol);
  }
}

/// The picture of a method as a page of its own.
HandbookPage plot_page(const Method& method) {
  constexpr double width = 640;
  return {"plot-" + method.description().id + ".svg", method_plot(method, width)};
}

HandbookPage method_page(const MethodDescription& about, const std::vector<CheckOutcome>& outcomes,
                         const std::string& plot) {
  std::string page = fmt::format("# {}\n\n{}\n", about.title, about.purpose);
  if (!plot.empty())
    page += fmt::format("\n![{} against its main variable]({})\n", about.title, plot);
  add_inputs(page, about);
  std::vector<std::string> limits;
  for (const auto& limit : about.limits) {
    limits.push_back(fmt::format("{} ({})", limit.sentence, limit.source));
  }
  add_list(page, "Limits", limits);
  std::vector<std::string> sources;
  for (const auto& source : about.sources) sources.push_back(source.sentence());
  add_list(page, "Sources", sources);
  add_list(page, "Cautions", about.cautions);
  page += cases_section(outcomes, about.id);
  return {about.id + ".md", page};
}

HandbookPage classes_page() {
  std::string page =
      "# Rock classes\n\nEach table states its basis: what \"size\" means and whether percents "
      "count mass or stones. The two are never mixed silently.\n";
  std::string family;
  for (const auto& known : class_catalog()) {
    if (known.family != family) {
      family = known.family;
      page += fmt::format("\n## {}\n\nPercent smaller by {}; size as {}.\n\n", family,
                          percent_of_name(known.band.basis().percent),
                          size_meaning_name(known.band.basis().size));
      page += "| class | id | nominal D50 | limits | source |\n|---|---|---|---|---|\n";
    }
    std::string limits;
    for (const auto& condition : known.band.conditions()) {
      limits += (limits.empty() ? "" : "; ") + condition.wording;
    }
    const auto nominal =
        display(measure(known.nominal_d50), UnitSystem::us_customary, LengthUse::rock);
    page += fmt::format("| {} | `{}` | {} | {} | {} |\n", known.name, known.id, nominal.text,
                        markdown_cell(limits), markdown_cell(known.source.sentence()));
  }
  page +=
      "\n## Published families whose limits are not held\n\n" + what_to_do_without_limits() + "\n";
  page += "\n| family | document | what is known |\n|---|---|---|\n";
  for (const auto& missing : families_not_held()) {
    page += fmt::format("| {} | {} | {} |\n", missing.family,
                        markdown_cell(missing.source.document + ", " + missing.source.place),
                        markdown_cell(missing.known));
  }
  return {"rock-classes.md", page};
}

HandbookPage index_page() {
  std::string page =
      "# Handbook\n\nMade by `proofstone handbook` from the code and the check tables; do not edit "
      "by hand.\n\nFindings support, and never replace, the judgement of the licensed engineer "
      "responsible and the criteria that hold at the place.\n";
  page +=
      "\n## First\n\n- [In the field](field.md): counting, looking, weighing, loads, walks, "
      "problems\n"
      "- [What the words mean](words.md)\n";
  std::string group;
  for (const auto* method : all_methods()) {
    const auto& about = method->description();
    if (const std::string now(group_name(about.group)); now != group) {
      group = now;
      page += fmt::format("\n## {}\n\n", group);
    }
    page += fmt::format("- [{}]({}.md): {}\n", about.title, about.id, about.purpose);
  }
  page +=
      "\n## Catalog\n\n- [Rock classes](rock-classes.md)\n\n## How far to trust it\n\n"
      "- [Validation](validation.md): every check value beside the computed one\n"
      "- [Simulated piles](simulation.md): how often what is stated of a count holds\n"
      "- [Stones outlined on photographs](photo-outlines.md): how well they are found, and what "
      "they "
      "say of the pile\n"
      "- [Where photographs of rock fail](photo-failures.md): what is outlined wrongly or refused\n"
      "- [From memory](from-memory.md): what must be confirmed against its document\n";
  return {"README.md", page};
}

}  // namespace

std::vector<HandbookPage> handbook() {
  const auto outcomes = all_check_outcomes();
  std::vector<HandbookPage> pages = {index_page(), field_page(), words_page()};
  for (const auto* method : all_methods()) {
    auto plot = plot_page(*method);
    const bool drawn = !plot.text.empty();
    pages.push_back(
        method_page(method->description(), outcomes, drawn ? plot.file_name : std::string()));
    if (drawn) pages.push_back(std::move(plot));
  }
  pages.push_back({"operating-characteristic.svg", operating_characteristic_picture({}, 720)});
  pages.push_back({"average-stones.svg", average_stones_picture({}, 720)});
  pages.push_back(classes_page());
  pages.push_back(validation_page(outcomes));
  pages.push_back(memory_page(outcomes));
  return pages;
}

}  // namespace proofstone
