#include "simulation/simulation_page.h"

#include <fmt/format.h>

namespace proofstone {
namespace {

std::string percent(double share) { return fmt::format("{:.1f} %", 100 * share); }

std::string coverage_table(const std::vector<CoverageRow>& rows) {
  std::string text =
      "| Looks | percent smaller than D15 | than D50 | than D85 | D15, D50 and D85 together |\n"
      "|---|---|---|---|---|\n";
  for (const auto& [looks, pile, observer, held] : rows) {
    text += fmt::format("| {} | {} | {} | {} | {} |\n", looks, percent(held.percent_smaller[0]),
                        percent(held.percent_smaller[1]), percent(held.percent_smaller[2]),
                        percent(held.all_sizes));
  }
  return text;
}

std::string comparison_table(const std::vector<ComparisonRow>& rows) {
  std::string text =
      "| Two looks | Test | same rock | 10 % coarser | 25 % coarser |\n|---|---|---|---|---|\n";
  for (const auto& row : rows) {
    text += fmt::format("| {} | {} | {} | {} | {} |\n", row.looks, row.test, percent(row.same_rock),
                        percent(row.tenth_coarser), percent(row.quarter_coarser));
  }
  return text;
}

std::string plan_table(const std::vector<PlanRow>& rows) {
  std::string text =
      "| Good up to | Not accepted from | True share | Single plan: stones | accepted | Stone by "
      "stone: stones on average | accepted | Stones saved |\n|---|---|---|---|---|---|---|---|\n";
  for (const auto& [risks, share, single, sequential] : rows) {
    text += fmt::format("| {} | {} | {} | {:.0f} | {} | {:.1f} | {} | {} |\n",
                        percent(risks.acceptable.number()), percent(risks.unacceptable.number()),
                        percent(share), single.average_stones, percent(single.accepted),
                        sequential.average_stones, percent(sequential.accepted),
                        percent(1 - sequential.average_stones / single.average_stones));
  }
  return text;
}

std::string rule_table(const std::vector<RuleRow>& rows) {
  std::string text =
      "| Stones looked at | Rule says yes: pile inside its band | pile outside | count falls "
      "short at 95 % |\n|---|---|---|---|\n";
  for (const auto& [stones, found] : rows) {
    text += fmt::format("| {} | {} of {} | {} of {} | {} of {} |\n", stones,
                        percent(found.yes_when_inside()), found.truly_inside,
                        percent(found.yes_when_outside()), found.piles - found.truly_inside,
                        percent(found.yes_when_falls_short()), found.falls_short);
  }
  return text;
}

}  // namespace

std::string simulation_page(const SimulationResults& results) {
  return fmt::format(
      "# Simulated piles\n\n"
      "Does what is stated hold? Piles whose rock is known are counted by simulated observers, and "
      "what the engine states of each count is held against the truth. The page is written by "
      "`build/native/simulate docs`, and a test runs it all again.\n\n"
      "The stones of a pile are log-normal in size by mass, with D85/D15 of 2.3 (2.0 and a median "
      "that changes by about a fifth from the middle to either end where segregated).\n\n"
      "## Intervals stated at 90 %\n\n"
      "{} looks each. To hold in 90 % is what is stated: Jeffreys' limits by the stones that stand "
      "behind a share, which are more at the fine end of a count that is weighed by size and fewer "
      "at its coarse end. Between the edges of bins a share is read halfway between two ways to "
      "draw "
      "the curve, straight in log D and straight on log-probability paper, and the half by which "
      "they differ counts as scatter, twice. Verdicts about rock are passed more carefully: by "
      "exact "
      "limits, with the whole of what the two ways differ.\n\n{}\n"
      "Where a few heavy stones tell the coarse end, some five of a load of 400, the intervals "
      "hold "
      "a little less than stated.\n\n"
      "The last line is no fault of the statistics: **a count at one end of a segregated pile says "
      "nothing about the pile**, however many stones it has. Count over the whole of it, or "
      "compare "
      "its sides first.\n\n"
      "## Plans for a share of stones on the wrong side of a limit\n\n"
      "{} counts each, of rock with the true share named, at a producer's risk of 5 % and an "
      "owner's risk of 10 %. Good rock is to be accepted in 95 % or more, rock that must not be "
      "accepted in 10 % or less; between the two either may happen, and a count stone by stone "
      "takes longest there.\n\n{}\n"
      "The curves of the risks that are usual here, a share of 10 % against one of 30 %, computed "
      "and not simulated:\n\n"
      "![Chance of acceptance against the true share](operating-characteristic.svg)\n\n"
      "![Stones counted on average against the true share](average-stones.svg)\n\n"
      "## Are two looks at the same rock?\n\n"
      "{} pairs each, asked at 95 %: at most 5 % of the pairs at one rock are to be found "
      "different. "
      "How often rock that is coarser by so much is found out is the power of the test; with the "
      "usual numbers of stones a tenth in size is seldom seen.\n\n{}\n"
      "## The rule of the neighbouring classes\n\n"
      "Common practice, no source: rock of a class reaches at least from the median size of the "
      "class below to that of the class above. {} piles each around FHWA Classes II to IV, medians "
      "from 0.6 to 1.4 of the class's own, D85/D15 from 1.4 to 2.5. A pile is inside when its own "
      "curve keeps every condition of the band.\n\n{}\n"
      "A pile that fails the rule is almost surely not the class when a hundred stones were looked "
      "at; **a pile that keeps it may be anything**. The rule finds a missing end. It cannot "
      "accept rock.\n",
      looks_a_row, coverage_table(results.coverage), counts_a_row, plan_table(results.plans),
      pairs_a_row, comparison_table(results.comparisons), piles_a_row,
      rule_table(results.neighbour_rule));
}

}  // namespace proofstone
