#include "report/html_report.h"

#include <gtest/gtest.h>

#include <limits>
#include <string>

#include "report/markup_check.h"
#include "report/sample_pictures.h"

namespace proofstone {
namespace {

Finding finding(const std::string& id, Outcome outcome) {
  Finding finding;
  finding.id = id;
  finding.topic = Topic::rock_in_zone;
  finding.about.zone = "outer-bank";
  finding.about.lot = "first-deliveries";
  finding.title = "First deliveries on the outer bank";
  finding.outcome = outcome;
  finding.sentence = "The measured D30 is 1.08 times what is needed.";
  finding.next = "Measure 60 more stones.";
  finding.governs = true;
  finding.margin = Margin{1.08, 1.02, 1.15};
  finding.confidence = 0.97;
  finding.values.push_back({"d30", "D30", "size", measure(Length::inches(9)), LengthUse::rock});
  finding.steps.computed_rock("D30", "required size", "Sf·Cs·d·(V/√(g·d))^2.5", Length::inches(8.1),
                              "USACE EM 1110-2-1601, eq. 3-3");
  finding.reasons = {"The curve is wide below 15 %."};
  finding.limits = {{"Slope at most 2 %", "para. 3-2"}, {"Angular rock", "para. 3-2"}};
  finding.limits_not_kept = {finding.limits[0]};
  finding.sources = {{"USACE EM 1110-2-1601 (1994)", "eq. 3-3", SourceStanding::published}};
  finding.cautions = {"A count by one person."};
  return finding;
}

Findings findings() {
  Findings all;
  all.site_name = "Sorrel Creek";
  all.revision = "r2";
  all.headline_outcome = Outcome::not_yet_known;
  all.headline = "Sixty more stones decide.";
  all.findings = {finding("a.b", Outcome::meets), finding("a.c", Outcome::falls_short),
                  finding("a.d", Outcome::ask_the_designer)};
  all.findings[1].about.zone.clear();
  all.findings[2].about = {};
  all.gradation_pictures = {samples::gradation()};
  all.section_pictures = {samples::section()};
  all.stones_pictures = {samples::stones()};
  all.method_sizes_pictures = {samples::method_sizes()};
  all.run_charts = {samples::run_chart()};
  all.mix_pictures = {samples::mix()};
  all.cautions = {"Stay off the pile."};
  return all;
}

Paper paper_of(const Findings& all) {
  Paper paper;
  paper.title = "Findings";
  paper.findings = all;
  paper.signers = {"Reviewed by the licensed engineer responsible"};
  return paper;
}

void expect_whole(const Findings& all) {
  const auto html = html_report(paper_of(all));
  EXPECT_EQ(testing_markup::nesting_problem(html), "");
  EXPECT_EQ(testing_markup::content_problem(html), "");
  EXPECT_EQ(html.find("<script"), std::string::npos);
  EXPECT_EQ(html.find("http://") == std::string::npos ||
                html.find("http://") == html.find("http://www.w3.org/2000/svg"),
            true);
  EXPECT_EQ(html, html_report(paper_of(all)));
}

TEST(HtmlReport, IsWhole) { expect_whole(findings()); }

TEST(HtmlReport, IsWholeWithNothingToSay) {
  expect_whole(Findings{});
  auto all = findings();
  all.findings[0] = Finding{};
  expect_whole(all);
}

TEST(HtmlReport, ShowsEverythingOfAFinding) {
  const auto html = html_report(paper_of(findings()));
  for (const std::string text : {"Sorrel Creek",
                                 "revision r2",
                                 "Not yet known",
                                 "Sixty more stones decide.",
                                 "Stay off the pile.",
                                 "Zone: outer bank",
                                 "Lot: first deliveries",
                                 "The site",
                                 "First deliveries on the outer bank",
                                 "1.08 (1.02 to 1.15)",
                                 "97 %",
                                 "Measure 60 more stones.",
                                 "governs",
                                 "9.0 in",
                                 "8.1 in",
                                 "Sf·Cs·d·(V/√(g·d))^2.5",
                                 "The curve is wide below 15 %.",
                                 "Not kept: Slope at most 2 %",
                                 "Kept: Angular rock",
                                 "USACE EM 1110-2-1601 (1994), eq. 3-3",
                                 "A count by one person.",
                                 "licensed engineer",
                                 "Falls short",
                                 "Ask the designer",
                                 "<details>"}) {
    EXPECT_NE(html.find(text), std::string::npos) << text;
  }
}

TEST(HtmlReport, LinksLeadToFindings) {
  const auto html = html_report(paper_of(findings()));
  EXPECT_NE(html.find("href=\"#finding-a-c\""), std::string::npos);
  EXPECT_NE(html.find("id=\"finding-a-c\""), std::string::npos);
}

TEST(HtmlReport, EscapesEveryText) {
  const std::string hostile = "</style></p><script>x('\"&')</script>\x02\xFE\u202E🪨";
  auto all = findings();
  all.site_name = all.revision = all.headline = hostile;
  all.cautions = {hostile};
  auto& f = all.findings[0];
  f.id = f.title = f.sentence = f.next = hostile;
  f.about = {hostile, hostile, hostile, hostile, hostile, hostile, hostile};
  f.values[0].symbol = f.values[0].meaning = hostile;
  f.steps.given(hostile, hostile, measure(1.0), hostile);
  f.steps.computed(hostile, hostile, hostile, measure(1.0), hostile);
  f.reasons = f.cautions = {hostile};
  f.limits = {{hostile, hostile}};
  f.sources = {{hostile, hostile, SourceStanding::memory}};
  all.gradation_pictures[0].title = all.section_pictures[0].description = hostile;
  expect_whole(all);
}

TEST(HtmlReport, SurvivesNumbersThatAreNone) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  auto all = findings();
  all.findings[0].margin = Margin{nan, nan, nan};
  all.findings[0].confidence = nan;
  all.findings[0].values[0].value.si = nan;
  expect_whole(all);
}

}  // namespace
}  // namespace proofstone
