#include "engine/site/zone_chance.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/method/registry.h"
#include "engine/reliability/design_point.h"
#include "engine/reliability/first_order.h"
#include "engine/reliability/sampling.h"
#include "engine/site/zone_limit_state.h"

namespace proofstone {
namespace {

/// Enough that a mistake in the analysis would show, few enough for a screen.
constexpr std::uint64_t points_each = 256;
/// Shares are stated to a millionth: their last digits are those of numerical derivatives.
double stated_share(double share) { return std::round(share * 1e6) / 1e6; }

/// "average velocity" for "average_velocity".
std::string words_of(std::string key) {
  std::replace(key.begin(), key.end(), '_', ' ');
  std::replace(key.begin(), key.end(), '-', ' ');
  return key;
}

Finding begin_chance_finding(const ChanceQuestion& ask) {
  const auto& about = ask.method->description();
  Finding finding;
  finding.topic = Topic::chance;
  finding.about.zone = ask.zone->id;
  finding.about.flow_case = ask.water->flow_case->id;
  finding.about.method = about.id;
  finding.about.rock_class = ask.specified->id;
  finding.id = fmt::format("chance.{}.{}.{}", ask.zone->id, ask.water->flow_case->id, about.id);
  finding.title = fmt::format("Chance of instability: {}", about.title);
  finding.sources = about.sources;
  finding.reasons.push_back(fmt::format("Uncertainty as stated: {}", ask.stated->from));
  finding.cautions = {
      "This is the chance in that flood. Over the life of the works it goes with the chance that "
      "such a flood comes.",
      "Coefficients of variation are the designer's statement; what is not stated is taken as "
      "certain. Small chances are for comparing designs, not for believing the last digit."};
  return finding;
}

Finding cannot_say(Finding finding, const Problems& problems) {
  finding.outcome = Outcome::not_yet_known;
  for (const auto& problem : problems) finding.reasons.push_back(problem.sentence());
  finding.sentence = "The chance could not be computed. " + problems.front().sentence();
  finding.next = "Mend what the zone states of its uncertainty; then look again.";
  return finding;
}

/// "average velocity matters most (88 % of the variance), then available size (9 %)"
std::string ranking(const LimitState& limit, const std::vector<double>& shares) {
  std::vector<std::size_t> order(shares.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    const auto of_a = stated_share(shares[a]);
    const auto of_b = stated_share(shares[b]);
    return of_a > of_b || (!(of_b > of_a) && a < b);
  });
  const auto percent = [&](std::size_t i) { return fmt::format("{:.0f} %", 100 * shares[i]); };
  std::string words;
  for (std::size_t rank = 0; rank < order.size(); ++rank) {
    const auto name = words_of(limit.variables()[order[rank]].key);
    if (rank == 0) {
      words = fmt::format("{} matters most ({} of the variance)", name, percent(order[rank]));
    } else {
      words += fmt::format("{}{} ({})", rank == 1 ? ", then " : ", ", name, percent(order[rank]));
    }
  }
  return words;
}

void show(Finding& finding, const ZoneLimitState& asked, const FirstOrderResult& first,
          const DesignPoint& point, const SampledChance& sampled) {
  const auto& variables = asked.limit->variables();
  auto& steps = finding.steps;
  for (const auto& variable : variables) {
    steps.given("δ", "coefficient of variation of " + words_of(variable.key),
                measure(variable.distribution.coefficient_of_variation()), "stated for the zone");
  }
  steps.given_rock("D", "size of the rock that is there, mean", asked.available);
  steps.computed("G", "margin ln(available/required) at the means, no safety factor", "ln(D / Dc)",
                 measure(first.margin_at_means));
  steps.computed("σG", "standard deviation of the margin", "√Σ(∂G/∂x·σx)²",
                 measure(first.standard_deviation));
  steps.computed("β", "reliability index, first-order second-moment", "G / σG",
                 measure(first.beta));
  steps.computed("Pf", "chance by first-order second-moment", "Φ(−β)", measure(first.probability));
  steps.computed("β", "reliability index at the design point",
                 "distance to the nearest failure in standard normal scores", measure(point.beta));
  steps.computed("Pf", "chance by the design point", "Φ(−β)", measure(point.probability));
  steps.computed("Pf", fmt::format("chance by {} quasi-random samples", sampled.samples),
                 "share of the samples that move", measure(sampled.probability));
  steps.computed("s", "standard error of the sampled chance", "spread of 16 replicates",
                 measure(sampled.standard_error));

  const auto state = [&](const char* key, const char* symbol, const std::string& meaning,
                         double value) {
    finding.values.push_back({key, symbol, meaning, measure(value), LengthUse::ground});
  };
  state("chance", "Pf", "chance of instability, by the design point", point.probability);
  state("beta", "β", "reliability index at the design point", point.beta);
  state("first_order_chance", "Pf", "chance by first-order second-moment", first.probability);
  state("sampled_chance", "Pf", "chance by sampling", sampled.probability);
  state("sampled_error", "s", "standard error of the sampled chance", sampled.standard_error);
  for (std::size_t i = 0; i < variables.size(); ++i) {
    finding.values.push_back({"share." + variables[i].key, "α²",
                              "share of the variance: " + words_of(variables[i].key),
                              measure(stated_share(point.importance[i])), LengthUse::ground});
  }
}

void judge(Finding& finding, const StatedUncertainty& stated, double chance) {
  if (!stated.accepted_chance) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next = "State the chance that the owner accepts in this flood, and compare designs.";
    return;
  }
  const bool borne = chance <= *stated.accepted_chance;
  finding.outcome = borne ? Outcome::meets : Outcome::falls_short;
  finding.sentence += fmt::format(" {} is accepted.", chance_text(*stated.accepted_chance));
  finding.next =
      borne ? "Nothing to do."
            : "Choose a larger class, or learn more about what matters most and state it anew.";
}

Finding chance_finding(const ChanceQuestion& ask, const Wording& wording) {
  auto finding = begin_chance_finding(ask);
  const auto asked = zone_limit_state(ask);
  if (!asked) return cannot_say(std::move(finding), asked.problems());
  const auto space = ScoreSpace::of(*asked->limit, asked->correlations);
  if (!space) return cannot_say(std::move(finding), space.problems());
  const auto first = first_order(*asked->limit, asked->correlations);
  if (!first) return cannot_say(std::move(finding), first.problems());
  const auto point = find_design_point(*asked->limit, asked->correlations);
  if (!point) return cannot_say(std::move(finding), point.problems());
  const auto sampled = Sampler(*space).chance(points_each);
  show(finding, *asked, *first, *point, sampled);
  auto ranked = ranking(*asked->limit, point->importance);
  if (!ranked.empty() && ranked[0] >= 'a' && ranked[0] <= 'z') {
    ranked[0] = static_cast<char>(ranked[0] - 'a' + 'A');
  }
  finding.sentence =
      fmt::format("In the {}, D{} of {} moves with a chance of {} (sampled: {}, ± {}). {}.",
                  ask.water->flow_case->name, percent_number(asked->percent_smaller),
                  wording.rock(asked->available), chance_text(point->probability),
                  chance_text(sampled.probability), chance_text(sampled.standard_error), ranked);
  if (sampled.unanswered > 0) {
    finding.reasons.push_back(
        fmt::format("{} of {} samples lie where the formula has no answer; they count as moving.",
                    sampled.unanswered, sampled.samples));
  }
  judge(finding, *ask.stated, point->probability);
  return finding;
}

}  // namespace

std::string chance_text(double chance) {
  const double percent = 100 * chance;
  if (percent < 1e-4) return "less than 0.0001 %";
  if (percent > 99.9) return "more than 99.9 %";
  return significant(percent, 2) + " %";
}

std::vector<Finding> chance_findings(const Zone& zone, const ZoneSizing& sizing,
                                     const std::vector<ZoneWater>& water, const Wording& wording) {
  std::vector<Finding> findings;
  for (const auto& at : water) {
    if (at.flow_case->purpose != FlowPurpose::design || !at.setting) continue;
    for (const auto& [id, stated] : zone.uncertainty) {
      const auto* method = find_sizing_method(id);
      if (method == nullptr) continue;  // refused when the document was read
      findings.push_back(chance_finding({&zone, sizing.specified, &at, method, &stated}, wording));
    }
  }
  return findings;
}

}  // namespace proofstone
