#include "cli/terminal_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <sstream>

namespace proofstone {
namespace {

using nlohmann::json;

std::string text_of(const json& object, const char* field) {
  const auto found = object.find(field);
  return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

/// Characters, not bytes: continuation bytes of UTF-8 take no column.
std::size_t columns_of(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
  }));
}

std::string padded(const std::string& text, std::size_t columns) {
  const auto width = columns_of(text);
  return width >= columns ? text + " " : text + std::string(columns - width, ' ');
}

void add_list(std::string& out, const char* title, const json& list) {
  if (list.empty()) return;
  out += fmt::format("\n  {}\n", title);
  for (const auto& line : list) {
    out += wrapped("- " + line.get<std::string>(), 4);
  }
}

std::string step_line(const json& step) {
  const auto formula = text_of(step, "formula");
  const auto source = text_of(step, "source");
  std::string line = "    " + padded(text_of(step, "symbol"), 14) +
                     padded("= " + text_of(step, "text"), 18) + text_of(step, "meaning") + "\n";
  if (!formula.empty()) line += "                    " + formula + "\n";
  if (!source.empty()) line += "                    [" + source + "]\n";
  return line;
}

std::string quantity_rows(const json& rows) {
  std::string out;
  for (const auto& row : rows) {
    auto amount = row.contains("text") ? text_of(row, "text") : "not yet known";
    if (row.contains("text") && row["partial"].get<bool>()) amount += ", in part";
    out += "  " + padded(text_of(row, "what"), 48) + padded(amount, 18);
    const auto cost = text_of(row, "cost_text");
    out += (cost.empty() ? text_of(row, "how") : padded(cost, 16) + text_of(row, "price")) + "\n";
  }
  return out;
}

std::string mark_of(const json& finding) { return finding.value("governs", false) ? "» " : "  "; }

}  // namespace

std::string wrapped(const std::string& text, int indent, int columns) {
  const std::string margin(static_cast<std::size_t>(indent), ' ');
  const auto room = static_cast<std::size_t>(columns - indent);
  std::string out;
  std::string line;
  std::istringstream words(text);
  std::string word;
  while (words >> word) {
    if (!line.empty() && columns_of(line) + 1 + columns_of(word) > room) {
      out += margin + line + "\n";
      line.clear();
    }
    line += (line.empty() ? "" : " ") + word;
  }
  if (!line.empty()) out += margin + line + "\n";
  return out;
}

std::string findings_text(const json& findings) {
  std::string out;
  out += fmt::format("{}  (revision {}, engine {})\n", text_of(findings["site"], "name"),
                     text_of(findings["site"], "revision"), text_of(findings, "engine"));
  out += fmt::format("{}\n", text_of(findings["headline"], "outcome"));
  out += wrapped(text_of(findings["headline"], "sentence"), 0);
  std::string topic;
  for (const auto& finding : findings["findings"]) {
    if (const auto now = text_of(finding, "topic"); now != topic) {
      topic = now;
      out += fmt::format("\n{}\n", topic);
    }
    out += mark_of(finding) + padded(text_of(finding, "outcome"), 18) + text_of(finding, "title") +
           "\n";
    out += wrapped(text_of(finding, "sentence"), 6);
    const auto next = text_of(finding, "next");
    if (!next.empty() && next != "Nothing to do.") out += wrapped("Next: " + next, 6);
    out += fmt::format("      ({})\n", text_of(finding, "id"));
  }
  out += "\n» governs. To see one finding to its last step: proofstone explain SITE FINDING\n\n";
  for (const auto& caution : findings["cautions"]) out += wrapped(caution.get<std::string>(), 0);
  return out;
}

std::string finding_text(const json& finding) {
  std::string out =
      fmt::format("{}\n  {}\n", text_of(finding, "title"), text_of(finding, "outcome"));
  out += wrapped(text_of(finding, "sentence"), 2);
  out += wrapped("Next: " + text_of(finding, "next"), 2);
  if (finding.contains("margin")) {
    out += fmt::format("  Margin {}\n", text_of(finding["margin"], "text"));
  }
  if (finding.contains("confidence")) {
    out += fmt::format("  Confidence that it holds: {}\n", text_of(finding["confidence"], "text"));
  }
  add_list(out, "Reasons", finding["reasons"]);
  if (!finding["steps"].empty()) {
    out += "\n  Steps\n";
    for (const auto& step : finding["steps"]) out += step_line(step);
  }
  if (!finding["limits"].empty()) {
    out += "\n  Limits of the method\n";
    for (const auto& limit : finding["limits"]) {
      out += wrapped(fmt::format("- {}: {} [{}]", limit["kept"].get<bool>() ? "kept" : "NOT KEPT",
                                 text_of(limit, "sentence"), text_of(limit, "source")),
                     4);
    }
  }
  if (!finding["sources"].empty()) {
    out += "\n  Sources\n";
    for (const auto& source : finding["sources"]) {
      out += wrapped("- " + text_of(source, "sentence"), 4);
    }
  }
  add_list(out, "Cautions", finding["cautions"]);
  return out;
}

std::string problems_text(const json& problems) {
  std::string out;
  for (const auto& problem : problems) out += wrapped("- " + text_of(problem, "sentence"), 0);
  return out;
}

std::string methods_text(const json& methods) {
  std::string out;
  std::string group;
  for (const auto& method : methods) {
    if (const auto now = text_of(method, "group"); now != group) {
      group = now;
      out += fmt::format("{}{}\n", out.empty() ? "" : "\n", group);
    }
    out += "  " + padded(text_of(method, "id"), 26) + text_of(method, "title") + "\n";
  }
  return out;
}

std::string method_text(const json& method) {
  std::string out = fmt::format("{}\n", text_of(method, "title"));
  out += wrapped(text_of(method, "purpose"), 2);
  out += "\n  Inputs\n";
  for (const auto& input : method["inputs"]) {
    out += "    " + padded(text_of(input, "key"), 24) + padded(text_of(input, "symbol"), 8) +
           text_of(input, "meaning") + "\n";
    const auto allowed = text_of(input, "allowed");
    const auto preset = text_of(input, "default");
    std::string note = allowed;
    for (const auto& choice : input["choices"]) {
      note += (note.empty() ? "" : "; ") + text_of(choice, "key") + " (" +
              text_of(choice, "meaning") + ")";
    }
    if (!preset.empty()) note += (note.empty() ? "" : "; ") + ("otherwise " + preset);
    if (input["required"].get<bool>()) note += note.empty() ? "must be given" : "; must be given";
    out += wrapped(note, 8);
  }
  out += "\n  Outputs\n";
  for (const auto& output : method["outputs"]) {
    out += "    " + padded(text_of(output, "key"), 24) + padded(text_of(output, "symbol"), 8) +
           text_of(output, "meaning") + "\n";
  }
  if (!method["limits"].empty()) out += "\n  Limits\n";
  for (const auto& limit : method["limits"]) {
    out +=
        wrapped(fmt::format("- {} [{}]", text_of(limit, "sentence"), text_of(limit, "source")), 4);
  }
  out += "\n  Sources\n";
  for (const auto& source : method["sources"])
    out += wrapped("- " + text_of(source, "sentence"), 4);
  add_list(out, "Cautions", method["cautions"]);
  return out;
}

std::string classes_text(const json& all) {
  std::string out;
  std::string family;
  for (const auto& known : all["classes"]) {
    if (const auto now = text_of(known, "family"); now != family) {
      family = now;
      out += fmt::format("{}{}\n  percent smaller by {}, size as {}\n  [{}]\n",
                         out.empty() ? "" : "\n", family, text_of(known, "percent_of"),
                         text_of(known, "size_meaning"), text_of(known["source"], "sentence"));
    }
    out += "  " + padded(text_of(known, "id"), 18) + padded(text_of(known, "name"), 14) +
           "median " + text_of(known["nominal_d50"], "text") + "\n";
    for (const auto& condition : known["conditions"]) {
      out += wrapped(condition.get<std::string>(), 8);
    }
  }
  for (const auto& missing : all["not_held"]) {
    out += fmt::format("\n{}: limits not held\n", text_of(missing, "family"));
    out += wrapped(
        fmt::format("[{}, {}] {} {}", text_of(missing, "document"), text_of(missing, "place"),
                    text_of(missing, "known"), text_of(missing, "next")),
        2);
  }
  return out;
}

namespace {

std::string shares_line(const json& shares) {
  std::string line;
  for (const auto& share : shares) {
    if (!(share["value"].get<double>() > 0)) continue;
    line += (line.empty() ? "" : " · ") + text_of(share, "name") + " " + text_of(share, "text");
  }
  return line;
}

std::string plan_text(const json& plan, const char* word) {
  std::string line;
  for (const auto& one : plan["loads"]) {
    const int number = one["number"].get<int>();
    if (number == 0) continue;
    line += fmt::format("{}{} {} of {}", line.empty() ? "" : " · ", number,
                        word + std::string(number == 1 ? "" : "s"), text_of(one, "name"));
  }
  return line + fmt::format(" (margin {}{})", text_of(plan, "margin_text"),
                            plan["proven"].get<bool>() ? "; nothing better exists" : "");
}

}  // namespace

std::string blend_text(const json& blend) {
  std::string out = wrapped(text_of(blend, "sentence"), 0);
  for (const auto& why : blend["why"]) out += wrapped(why.get<std::string>(), 2);
  for (const auto& material : blend["materials"]) {
    if (!material.contains("range_text")) continue;
    out += "  " + padded(text_of(material, "name"), 34) + text_of(material, "range_text") + "\n";
  }
  for (const auto& one : blend["blends"]) {
    out += fmt::format("\n{} (margin {}{})\n", text_of(one, "kind"), text_of(one, "margin_text"),
                       one.contains("cost")
                           ? fmt::format(", {:.2f} for each {}", one["cost"].get<double>(),
                                         text_of(one, "cost_per"))
                           : "");
    out += wrapped(shares_line(one["shares"]), 2);
    for (const auto& binds : one["binding"]) {
      out += wrapped("held by: " + binds.get<std::string>(), 4);
    }
  }
  if (blend.contains("nearest")) {
    out += "\nnearest\n" + wrapped(shares_line(blend["nearest"]["shares"]), 2);
  }
  if (blend.contains("recipe")) {
    out += "\nby whole buckets\n" + wrapped(plan_text(blend["recipe"], "bucket"), 2);
  }
  if (blend.contains("loads")) {
    const auto& loads = blend["loads"];
    out += fmt::format(
        "\nby whole truckloads, {}{}\n", text_of(loads["mass"], "text"),
        loads.contains("cost") ? fmt::format(", {:.2f} in all", loads["cost"].get<double>()) : "");
    out += wrapped(plan_text(loads, "load"), 2);
  }
  for (const auto& name : blend["cut_short"]) {
    out += wrapped("The curve of " + name.get<std::string>() +
                       " ends inside the band and was taken on the careful side.",
                   0);
  }
  return out;
}

std::string count_plan_text(const json& plan) {
  const int stones = plan["stones"].get<int>();
  const int loads = plan["loads"].get<int>();
  std::string out = wrapped(
      fmt::format("{}: count {} stones{}. Owner's risk {:g} %, producer's risk {:g} %; good rock "
                  "keeps each limit by {:g} % of its mass.",
                  text_of(plan, "class"), stones,
                  loads < stones ? fmt::format(" from {} loads", loads) : "",
                  100 * plan["owners_risk"].get<double>(),
                  100 * plan["producers_risk"].get<double>(), 100 * plan["good_by"].get<double>()),
      0);
  out += "\n";
  for (const auto& one : plan["limits"]) {
    out += wrapped(text_of(one, "condition"), 0);
    out += wrapped(
        fmt::format("all at once: {} stones, at most {} of them {}", one["stones"].get<int>(),
                    one["accept_at_most"].get<int>(), text_of(one, "wrong")),
        2);
    out += wrapped(
        fmt::format(
            "one by one: from stone {} on; {:.0f} on average where the rock is good, {:.0f} "
            "where it lies at the limit",
            one["first_acceptance"].get<int>(), one["average_when_good"].get<double>(),
            one["average_at_limit"].get<double>()),
        2);
  }
  for (const auto& caution : plan["cautions"]) out += wrapped(caution.get<std::string>(), 0);
  return out;
}

std::string evaluation_text(const json& answer) {
  std::string out;
  for (const auto& output : answer["outputs"]) {
    out += padded(text_of(output, "symbol"), 14) + padded("= " + text_of(output, "text"), 18) +
           text_of(output, "meaning") + "\n";
  }
  out += "\nSteps\n";
  for (const auto& step : answer["steps"]) out += step_line(step);
  for (const auto& limit : answer["limits_not_kept"]) {
    out += wrapped("Outside the published range: " + text_of(limit, "sentence"), 0);
  }
  return out;
}

std::string substitution_text(const json& study) {
  std::string out;
  for (const auto& row : study["rows"]) {
    out += text_of(row, "what") + "\n";
    for (std::size_t i = 0; i < row["cells"].size(); ++i) {
      const auto& cell = row["cells"][i];
      const auto margin = text_of(cell, "margin");
      out += "    " + padded(study["columns"][i].get<std::string>(), 26) + text_of(cell, "text") +
             (margin.empty() ? "" : ", margin " + margin) + "\n";
    }
  }
  return out + "\n" + finding_text(study["finding"]);
}

std::string quantities_text(const json& quantities) {
  std::string out =
      fmt::format("{}  (revision {}, engine {})\n", text_of(quantities["site"], "name"),
                  text_of(quantities["site"], "revision"), text_of(quantities, "engine"));
  if (quantities["zones"].empty()) {
    return out + "Nothing to count: state ordering, prices, or the extent of a zone.\n";
  }
  for (const auto& zone : quantities["zones"]) {
    out += fmt::format("\n{}\n", text_of(zone, "name")) + quantity_rows(zone["rows"]);
    for (const auto& missing : zone["missing"]) out += wrapped(missing.get<std::string>(), 2);
    for (const auto& note : zone["notes"]) out += wrapped(note.get<std::string>(), 2);
  }
  out += "\nAll zones\n" + quantity_rows(quantities["totals"]);
  if (quantities.contains("cost_text")) {
    out += fmt::format("  Cost: {}. Prices: {}.\n", text_of(quantities, "cost_text"),
                       text_of(quantities, "prices_from"));
  }
  for (const auto& what : quantities["without_price"]) {
    out += wrapped("No price, and no cost counted: " + what.get<std::string>() + ".", 2);
  }
  out += "\n";
  for (const auto& caution : quantities["cautions"]) out += wrapped(caution.get<std::string>(), 0);
  return out;
}

std::string checks_text(const json& checks) {
  std::string out;
  int passed = 0;
  for (const auto& check : checks) {
    const bool good = check["passed"].get<bool>();
    passed += good ? 1 : 0;
    out +=
        fmt::format("{} {} {} {}: {}\n", good ? "kept  " : "MISSED", text_of(check, "method"),
                    text_of(check, "case"), text_of(check, "output"), text_of(check, "sentence"));
  }
  out += fmt::format("{} of {} published check values kept.\n", passed, checks.size());
  return out;
}

}  // namespace proofstone
