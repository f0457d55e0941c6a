#include "report/placing_record.h"

#include <fmt/format.h>

#include "report/markup.h"
#include "report/outcome_mark.h"

namespace proofstone {
namespace {

std::string cell(const char* name, const std::string& html) {
  return fmt::format("<td role=\"cell\" data-name=\"{}\">{}</td>", name, html);
}

std::string seen_html(const PlacingRecordLine& line) {
  if (line.evidence.empty()) return "<span class=\"meaning\">Date, by:</span>";
  std::string html = "<ul>\n";
  for (const auto& one : line.evidence) html += fmt::format("<li>{}</li>\n", escaped(one));
  return html + "</ul>\n";
}

std::string line_html(const PlacingRecordLine& line, std::size_t number) {
  std::string html = "<tr role=\"row\">";
  html += fmt::format("<td role=\"cell\">{}. {}{}</td>", number, escaped(line.title),
                      line.hold_point ? " <b>hold point</b>" : "");
  html += cell("Asked",
               fmt::format("{} <span class=\"meaning\">Tolerance: {}. By: {}.</span>",
                           escaped(line.required), escaped(line.tolerance), escaped(line.how)));
  html +=
      cell("State", fmt::format("{} {}", outcome_mark_svg(line.outcome, 16), escaped(line.state)));
  return html + cell("Seen", seen_html(line)) + "</tr>\n";
}

}  // namespace

std::string placing_record_html(const Findings& findings) {
  if (findings.placing.empty()) return {};
  std::string html =
      "<section>\n<h2>Placing record</h2>\n<p>The checks follow from the design of each zone and "
      "stand in the order of work. Work does not go past a hold point before it is released.</p>\n";
  for (const auto& record : findings.placing) {
    html += fmt::format(
        "<h3>{}</h3>\n<table role=\"table\" class=\"placing\">\n<thead><tr><th>Check</th>"
        "<th>Asked</th><th>State</th><th>Seen</th></tr></thead>\n<tbody>\n",
        escaped(record.zone));
    std::size_t number = 0;
    for (const auto& line : record.lines) html += line_html(line, ++number);
    html += "</tbody>\n</table>\n";
  }
  return html + "</section>\n";
}

}  // namespace proofstone
