#include "report/handbook.h"

#include <fmt/format.h>

#include <map>
#include <nlohmann/json.hpp>

#include "engine/method/check_table.h"
#include "engine/method/registry.h"
#include "engine/rock/embedded_catalog.h"
#include "engine/rock/rock_class.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// Text inside a Markdown table cell.
std::string cell(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '|') out += '\\';
    out += c == '\n' ? ' ' : c;
  }
  return out;
}

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
                        input.required ? " (must be given)" : "", cell(input.symbol),
                        cell(input.meaning), input.unit.symbol, cell(input_notes(input)));
  }
  page += "\n## Outputs\n\n| key | symbol | meaning | unit |\n|---|---|---|---|\n";
  for (const auto& output : about.outputs) {
    page += fmt::format("| `{}` | {} | {} | {} |\n", output.key, cell(output.symbol),
                        cell(output.meaning), output.unit.symbol);
  }
}

std::string inputs_in_words(const json& inputs) {
  std::string words;
  for (const auto& [key, value] : inputs.items()) {
    words += fmt::format("{}{} {}", words.empty() ? "" : ", ", key,
                         value.is_string() ? value.get<std::string>() : value.dump());
  }
  return words;
}

/// What was computed for each case of a table, by case id.
std::map<std::string, std::string> computed_by_case(const EmbeddedFile& file) {
  std::map<std::string, std::string> computed;
  const auto outcomes = run_check_table(file.text);
  if (!outcomes) return computed;
  for (const auto& outcome : *outcomes) {
    auto& words = computed[outcome.case_id];
    words += fmt::format("{}{}{}", words.empty() ? "" : "; ", outcome.sentence,
                         outcome.passed ? "" : " **missed**");
  }
  return computed;
}

void add_checks(std::string& page, const std::string& id) {
  for (const auto& file : embedded_checks()) {
    if (file.name != id + ".json") continue;
    const auto table = json::parse(file.text, nullptr, false);
    if (table.is_discarded()) continue;
    const auto computed = computed_by_case(file);
    page +=
        "\n## Published cases\n\n| case | inputs | expected and computed | source "
        "|\n|---|---|---|---|\n";
    for (const auto& one : table["cases"]) {
      const auto case_id = one["id"].get<std::string>();
      const auto& source = one["source"];
      const auto found = computed.find(case_id);
      page += fmt::format(
          "| {}: {}{} | {} | {} | {}, {} ({}) |\n", cell(case_id),
          cell(one.value("about", std::string())),
          one.contains("remark") ? " *" + cell(one["remark"].get<std::string>()) + "*" : "",
          cell(inputs_in_words(one["inputs"])), found == computed.end() ? "" : cell(found->second),
          cell(source.value("document", std::string())), cell(source.value("place", std::string())),
          source.value("standing", std::string()));
    }
  }
}

HandbookPage method_page(const MethodDescription& about) {
  std::string page = fmt::format("# {}\n\n{}\n", about.title, about.purpose);
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
  add_checks(page, about.id);
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
                        cell(limits), cell(known.source.sentence()));
  }
  return {"rock-classes.md", page};
}

HandbookPage index_page() {
  std::string page =
      "# Handbook\n\nMade by `proofstone handbook` from the code and the check tables; do not edit "
      "by hand.\n\nFindings support, and never replace, the judgement of the licensed engineer "
      "responsible and the criteria that hold at the place.\n";
  std::string group;
  for (const auto* method : all_methods()) {
    const auto& about = method->description();
    if (const std::string now(group_name(about.group)); now != group) {
      group = now;
      page += fmt::format("\n## {}\n\n", group);
    }
    page += fmt::format("- [{}]({}.md): {}\n", about.title, about.id, about.purpose);
  }
  page += "\n## Catalog\n\n- [Rock classes](rock-classes.md)\n";
  return {"README.md", page};
}

}  // namespace

std::vector<HandbookPage> handbook() {
  std::vector<HandbookPage> pages = {index_page()};
  for (const auto* method : all_methods()) pages.push_back(method_page(method->description()));
  pages.push_back(classes_page());
  return pages;
}

}  // namespace proofstone
