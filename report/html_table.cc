#include "report/html_table.h"

#include <fmt/format.h>

#include "report/markup.h"

namespace proofstone {

std::string html_table(const std::vector<const char*>& columns,
                       const std::vector<std::vector<std::string>>& rows) {
  std::string html = "<table role=\"table\">\n<thead><tr>";
  for (const char* column : columns) html += fmt::format("<th>{}</th>", column);
  html += "</tr></thead>\n<tbody>\n";
  for (const auto& row : rows) {
    html += "<tr role=\"row\">";
    for (std::size_t i = 0; i < row.size(); ++i) {
      html +=
          fmt::format("<td role=\"cell\" data-name=\"{}\">{}</td>", columns[i], escaped(row[i]));
    }
    html += "</tr>\n";
  }
  return html + "</tbody>\n</table>\n";
}

std::string html_list(const std::vector<std::string>& lines) {
  std::string html = "<ul>\n";
  for (const auto& line : lines) html += fmt::format("<li>{}</li>\n", escaped(line));
  return html + "</ul>\n";
}

}  // namespace proofstone
