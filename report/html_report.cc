#include "report/html_report.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "engine/finding/with_capital.h"
#include "engine/site/version.h"
#include "engine/site/wording.h"
#include "report/filter_picture.h"
#include "report/gradation_picture.h"
#include "report/html_style.h"
#include "report/markup.h"
#include "report/method_sizes_picture.h"
#include "report/mix_picture.h"
#include "report/outcome_mark.h"
#include "report/placing_record.h"
#include "report/plan_picture.h"
#include "report/profile_picture.h"
#include "report/quantity_answer.h"
#include "report/run_chart_picture.h"
#include "report/section_picture.h"
#include "report/sequential_count_picture.h"
#include "report/stones_picture.h"
#include "report/typical_section_picture.h"

namespace proofstone {

namespace {

constexpr double wide_picture = 900;
constexpr double narrow_picture = 358;

constexpr Outcome reading_order[] = {Outcome::falls_short, Outcome::not_yet_known,
                                     Outcome::ask_the_designer, Outcome::meets};

std::string lower_case_first(std::string text) {
  if (!text.empty() && text.front() >= 'A' && text.front() <= 'Z') {
    text.front() = static_cast<char>(text.front() - 'A' + 'a');
  }
  return text;
}

/// An id of the document as words: "outer-bank" is "outer bank".
std::string readable(std::string id) {
  std::replace(id.begin(), id.end(), '-', ' ');
  return id;
}

std::string paragraph(std::string_view css_class, std::string_view text) {
  if (text.empty()) return {};
  return fmt::format("<p class=\"{}\">{}</p>\n", css_class, escaped(text));
}

/// The margin and the confidence as text; empty when there is none, or none that is a number.
std::string margin_of(const Finding& finding) {
  if (!finding.margin || !std::isfinite(finding.margin->value)) return {};
  Margin margin = *finding.margin;
  if (margin.low && !std::isfinite(*margin.low)) margin.low.reset();
  if (margin.high && !std::isfinite(*margin.high)) margin.high.reset();
  return margin_text(margin);
}
std::string confidence_of(const Finding& finding) {
  if (!finding.confidence || !std::isfinite(*finding.confidence)) return {};
  return confidence_text(*finding.confidence);
}

std::string list_of(const std::vector<std::string>& lines) {
  std::string html = "<ul>\n";
  for (const auto& line : lines) html += fmt::format("<li>{}</li>\n", escaped(line));
  return html + "</ul>\n";
}

std::string outcome_html(Outcome outcome, double mark_size) {
  const std::string phrase(outcome_phrase(outcome));
  std::string css_class = phrase;
  std::replace(css_class.begin(), css_class.end(), ' ', '-');
  return fmt::format("<span class=\"outcome {}\">{}<span>{}</span></span>", css_class,
                     outcome_mark_svg(outcome, mark_size), with_capital(phrase));
}

/// What a finding stands under: its zone, or its lot, or the site.
std::string heading_of(const Finding& finding) {
  if (!finding.about.zone.empty()) return "Zone: " + readable(finding.about.zone);
  if (!finding.about.reach.empty()) return "Reach: " + readable(finding.about.reach);
  if (!finding.about.lot.empty()) return "Lot: " + readable(finding.about.lot);
  return "The site";
}

struct FindingGroup {
  std::string heading;
  std::vector<const Finding*> findings;
};

/// In the order in which the engine first speaks of them.
std::vector<FindingGroup> groups_of(const Findings& findings) {
  std::vector<FindingGroup> groups;
  for (const auto& finding : findings.findings) {
    const auto heading = heading_of(finding);
    auto group = std::find_if(groups.begin(), groups.end(),
                              [&](const FindingGroup& known) { return known.heading == heading; });
    if (group == groups.end()) group = groups.insert(groups.end(), {heading, {}});
    group->findings.push_back(&finding);
  }
  return groups;
}

std::string anchor_of(const Finding& finding) { return "finding-" + id_from(finding.id); }

std::string counts_text(const Findings& findings) {
  std::vector<std::string> parts;
  for (const Outcome outcome : reading_order) {
    const auto number = std::count_if(findings.findings.begin(), findings.findings.end(),
                                      [&](const Finding& f) { return f.outcome == outcome; });
    if (number > 0) parts.push_back(fmt::format("{}: {}", outcome_phrase(outcome), number));
  }
  return parts.empty() ? "none" : fmt::format("{}", fmt::join(parts, " · "));
}

std::string opening(const Paper& paper) {
  const Findings& findings = paper.findings;
  std::string html = fmt::format("<header>\n<p class=\"kind\">Rock protection: {}</p>\n",
                                 escaped(lower_case_first(paper.title)));
  html += fmt::format("<h1>{}{}</h1>\n",
                      escaped(findings.site_name.empty() ? "Unnamed site" : findings.site_name),
                      paper.about.empty() ? "" : ": " + escaped(paper.about));
  html += "<div class=\"headline\">\n" + outcome_html(findings.headline_outcome, 30) + "\n";
  html += paragraph("sentence", findings.headline) + "</div>\n";
  html += fmt::format(
      "<dl class=\"facts\">\n<dt>Findings</dt><dd>{}</dd>\n<dt>Document</dt><dd>revision {}</dd>\n"
      "<dt>Units</dt><dd>{}</dd>\n<dt>Computed by</dt><dd>Proofstone {}</dd>\n</dl>\n</header>\n",
      counts_text(findings), escaped(findings.revision),
      findings.units == UnitSystem::si ? "SI" : "US customary", engine_version);
  return html;
}

std::string cautions_section(const Findings& findings) {
  if (findings.cautions.empty()) return {};
  return "<section>\n<h2>Cautions</h2>\n<div class=\"cautions\">\n" + list_of(findings.cautions) +
         "</div>\n</section>\n";
}

/// Every finding in a line; what must be acted on comes first.
std::string overview(const Findings& findings) {
  if (findings.findings.empty()) return {};
  std::string html =
      "<section>\n<h2>At a glance</h2>\n<table role=\"table\" class=\"overview\">\n<thead><tr>"
      "<th>Finding</th><th>Outcome</th><th>Margin</th><th>Confidence that it "
      "holds</th></tr></thead>\n<tbody>\n";
  for (const Outcome outcome : reading_order) {
    for (const auto& finding : findings.findings) {
      if (finding.outcome != outcome) continue;
      html += fmt::format(
          "<tr role=\"row\"><td role=\"cell\"><a href=\"#{}\">{}</a> <span class=\"meaning\">{}"
          "</span></td><td role=\"cell\">{}</td><td role=\"cell\" data-name=\"Margin\">{}</td>"
          "<td role=\"cell\" data-name=\"Confidence that it holds\">{}</td></tr>\n",
          anchor_of(finding), escaped(finding.title), escaped(heading_of(finding)),
          outcome_html(finding.outcome, 20), escaped(margin_of(finding)),
          escaped(confidence_of(finding)));
    }
  }
  return html + "</tbody>\n</table>\n</section>\n";
}

template <class Picture>
std::string figure(const Picture& picture, UnitSystem units) {
  return fmt::format(
      "<figure>\n<figcaption>{}</figcaption>\n<div class=\"wide\">{}</div>\n"
      "<div class=\"narrow\">{}</div>\n{}</figure>\n",
      escaped(picture.title), draw(picture, units, wide_picture),
      draw(picture, units, narrow_picture), paragraph("words", picture.description));
}

std::string pictures(const Findings& findings) {
  std::string html;
  for (const auto& p : findings.gradation_pictures) html += figure(p, findings.units);
  for (const auto& p : findings.filter_pictures) html += figure(p, findings.units);
  for (const auto& p : findings.section_pictures) html += figure(p, findings.units);
  for (const auto& p : findings.plan_pictures) html += figure(p, findings.units);
  for (const auto& p : findings.typical_sections) html += figure(p, findings.units);
  for (const auto& p : findings.profile_pictures) html += figure(p, findings.units);
  for (const auto& p : findings.stones_pictures) html += figure(p, findings.units);
  for (const auto& p : findings.method_sizes_pictures) html += figure(p, findings.units);
  for (const auto& p : findings.sequential_counts) html += figure(p, findings.units);
  for (const auto& p : findings.run_charts) html += figure(p, findings.units);
  for (const auto& p : findings.mix_pictures) html += figure(p, findings.units);
  return html.empty() ? html : "<section>\n<h2>Pictures</h2>\n" + html + "</section>\n";
}

std::string steps_table(const Steps& steps, UnitSystem units) {
  std::string html =
      "<h4>Working</h4>\n<table role=\"table\" "
      "class=\"steps\">\n<thead><tr><th>Symbol</th><th>Formula</th>"
      "<th>Value</th><th>Source</th></tr></thead>\n<tbody>\n";
  for (const auto& step : steps.lines()) {
    html += fmt::format(
        "<tr role=\"row\"><td role=\"cell\"><span class=\"symbol\">{}</span> <span "
        "class=\"meaning\">{}</span></td><td role=\"cell\" class=\"formula\">{}</td><td "
        "role=\"cell\" class=\"value\">{}</td><td role=\"cell\" class=\"source\">{}</td></tr>\n",
        escaped(step.symbol), escaped(step.meaning), escaped(step.formula),
        escaped(display(step.value, units, step.length_use).text), escaped(step.source));
  }
  return html + "</tbody>\n</table>\n";
}

std::string values_list(const std::vector<StatedValue>& values, UnitSystem units) {
  std::string html = "<h4>Values</h4>\n<ul class=\"values\">\n";
  for (const auto& value : values) {
    html += fmt::format(
        "<li><span class=\"symbol\">{}</span> <span class=\"meaning\">{}</span> <b>{}</b></li>\n",
        escaped(value.symbol), escaped(value.meaning),
        escaped(display(value.value, units, value.length_use).text));
  }
  return html + "</ul>\n";
}

std::string limits_list(const Finding& finding) {
  std::string html = "<h4>Limits of the published method</h4>\n<ul>\n";
  for (const auto& limit : finding.limits) {
    const bool kept = finding.keeps(limit);
    html += fmt::format("<li class=\"{}\">{}: {} <span class=\"source\">{}</span></li>\n",
                        kept ? "kept" : "not-kept", kept ? "Kept" : "Not kept",
                        escaped(limit.sentence), escaped(limit.source));
  }
  return html + "</ul>\n";
}

std::string unfolding(const Finding& finding, UnitSystem units) {
  std::string html;
  if (!finding.values.empty()) html += values_list(finding.values, units);
  if (!finding.steps.lines().empty()) html += steps_table(finding.steps, units);
  if (!finding.reasons.empty()) html += "<h4>Reasons</h4>\n" + list_of(finding.reasons);
  if (!finding.limits.empty()) html += limits_list(finding);
  if (!finding.sources.empty()) {
    std::vector<std::string> lines;
    for (const auto& source : finding.sources) lines.push_back(source.sentence());
    html += "<h4>Sources</h4>\n" + list_of(lines);
  }
  if (!finding.cautions.empty()) html += "<h4>Cautions</h4>\n" + list_of(finding.cautions);
  if (html.empty()) return html;
  return "<details>\n<summary>Working, sources and limits</summary>\n" + html + "</details>\n";
}

std::string article(const Finding& finding, UnitSystem units) {
  std::string html = fmt::format(
      "<article id=\"{}\">\n<p class=\"kind\">{}</p>\n<h3>{}</h3>\n", anchor_of(finding),
      escaped(with_capital(std::string(topic_name(finding.topic)))), escaped(finding.title));
  html += fmt::format("<div class=\"verdict\">{}{}</div>\n", outcome_html(finding.outcome, 24),
                      finding.governs ? "<span class=\"governs\">governs</span>" : "");
  html += paragraph("sentence", finding.sentence);
  std::string measures;
  if (const auto margin = margin_of(finding); !margin.empty()) {
    measures += fmt::format("<span>Margin <b>{}</b></span>", escaped(margin));
  }
  if (const auto confidence = confidence_of(finding); !confidence.empty()) {
    measures += fmt::format("<span>Confidence that it holds <b>{}</b></span>", escaped(confidence));
  }
  if (!measures.empty()) html += fmt::format("<div class=\"measures\">{}</div>\n", measures);
  if (!finding.next.empty()) {
    html += fmt::format("<p class=\"next\"><b>Next:</b> {}</p>\n", escaped(finding.next));
  }
  return html + unfolding(finding, units) + "</article>\n";
}

std::string signatures(const Paper& paper) {
  std::string html =
      "<section>\n<h2>Review</h2>\n<p>These findings support, and never replace, the judgement of "
      "the licensed engineer responsible and local criteria. A margin is what is there over what "
      "is "
      "needed; 1.00 just holds. A confidence is how strongly the evidence shows that what is asked "
      "for holds.</p>\n<div class=\"signatures\">\n";
  for (const auto& signer : paper.signers) {
    html += fmt::format("<div>{}</div><div>Date</div>\n", escaped(signer));
  }
  return html + "</div>\n</section>\n";
}

}  // namespace

std::string html_report(const Paper& paper) {
  const Findings& findings = paper.findings;
  const auto groups = groups_of(findings);
  std::string html =
      "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
      "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
      "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
      "style-src 'unsafe-inline'\">\n";
  html += fmt::format("<title>{}: {}</title>\n<style>\n{}</style>\n</head>\n<body>\n",
                      escaped(findings.site_name), escaped(lower_case_first(paper.title)),
                      html_style());
  html += opening(paper) + entries_html(paper) + overview(findings) + pictures(findings) +
          quantities_html(findings.quantities, findings.units) + "<main>\n";
  for (const auto& group : groups) {
    html += fmt::format("<section>\n<h2>{}</h2>\n", escaped(group.heading));
    for (const auto* finding : group.findings) html += article(*finding, findings.units);
    html += "</section>\n";
  }
  html += "</main>\n" + placing_record_html(findings) + cautions_section(findings);
  return html + signatures(paper) + "</body>\n</html>\n";
}

}  // namespace proofstone
