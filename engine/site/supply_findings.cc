#include "engine/site/supply_findings.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "engine/acceptance/run_length.h"
#include "engine/site/loads_of_lot.h"

namespace proofstone {
namespace {

/// With fewer loads a chart has not had time to speak (common practice).
constexpr std::size_t fewest_loads_of_supply = 5;
constexpr std::size_t most_named = 6;

using Loads = std::vector<const Load*>;

Finding begin_supply_finding(const Lot& lot, const char* part, std::string title) {
  Finding finding;
  finding.topic = Topic::supply;
  finding.about.lot = lot.id;
  finding.id = fmt::format("supply.{}.{}", lot.id, part);
  finding.title = std::move(title);
  return finding;
}

std::string name_of(const Load& load) {
  return load.ticket.empty() ? fmt::format("load {}", load.id)
                             : fmt::format("ticket {}", load.ticket);
}

std::string named(const Loads& loads) {
  std::vector<std::string> names;
  for (const auto* load : loads) {
    if (names.size() == most_named) {
      names.push_back(fmt::format("{} more", loads.size() - most_named));
      break;
    }
    names.push_back(name_of(*load));
  }
  return listed(names);
}

Mass mass_of(const Loads& loads) {
  Mass total;
  for (const auto* load : loads) {
    if (load->mass) total = total + *load->mass;
  }
  return total;
}

std::string by_source(const Site& site, const Lot& lot, const Loads& loads,
                      const Wording& wording) {
  std::map<std::string, Loads> groups;
  for (const auto* load : loads) {
    groups[load->source.empty() ? lot.source : load->source].push_back(load);
  }
  std::vector<std::string> words;
  for (const auto& [source, of_source] : groups) {
    words.push_back(
        fmt::format("{} from {}", wording.of(mass_of(of_source)), site.sources.at(source).name));
  }
  return listed(words);
}

Finding mass_finding(const Site& site, const Lot& lot, const Loads& loads, const Wording& wording) {
  auto finding = begin_supply_finding(lot, "mass", fmt::format("Rock delivered to {}", lot.name));
  const Mass delivered = mass_of(loads);
  finding.values.push_back({"delivered", "M", "mass delivered", measure(delivered)});
  finding.sentence =
      fmt::format("{} loads so far: {}.", loads.size(), by_source(site, lot, loads, wording));
  const auto planned = lot.supply ? lot.supply->planned_mass : std::nullopt;
  if (!planned) {
    finding.outcome = Outcome::not_yet_known;
    finding.sentence += " How much is planned is not stated.";
    finding.next = "State the planned mass of the lot.";
    return finding;
  }
  finding.values.push_back({"planned", "M_plan", "mass planned", measure(*planned)});
  const double share = delivered / *planned;
  finding.margin = Margin{share, std::nullopt, std::nullopt};
  finding.steps.computed("M/M_plan", "share delivered", "M/M_plan", measure(share));
  const bool all_here = share >= 1;
  finding.outcome = all_here ? Outcome::meets : Outcome::not_yet_known;
  finding.sentence += fmt::format(" That is {:.0f} % of {}.", 100 * share, wording.of(*planned));
  finding.next = all_here ? "Nothing to do."
                          : fmt::format("{} are still to come.", wording.of(*planned - delivered));
  return finding;
}

Finding tickets_finding(const Lot& lot, const Loads& loads) {
  auto finding = begin_supply_finding(lot, "tickets", fmt::format("Tickets of {}", lot.name));
  Loads without;
  Loads unweighed;
  std::map<std::string, Loads> same;
  for (const auto* load : loads) {
    if (load->ticket.empty()) {
      without.push_back(load);
    } else {
      same[load->source + "\n" + load->ticket].push_back(load);
    }
    if (!load->mass) unweighed.push_back(load);
  }
  if (!without.empty()) finding.reasons.push_back("Without a ticket: " + named(without) + ".");
  if (!unweighed.empty()) finding.reasons.push_back("Without a mass: " + named(unweighed) + ".");
  for (const auto& [ticket, twice] : same) {
    if (twice.size() < 2) continue;
    finding.reasons.push_back(
        fmt::format("Ticket {} stands at {} loads.", twice.front()->ticket, twice.size()));
  }
  const bool complete = finding.reasons.empty();
  finding.outcome = complete ? Outcome::meets : Outcome::falls_short;
  finding.sentence = complete ? "Every load has its own ticket and its mass."
                              : "Tickets or masses are missing or stand twice.";
  finding.next = complete ? "Nothing to do." : "Ask the driver or the quarry for them now.";
  return finding;
}

/// The first load of the run that led to the alarm: after the last one with a sum of nothing.
std::size_t where_drift_began(const std::vector<double>& sums, std::size_t alarm) {
  std::size_t begin_supply_finding = alarm;
  while (begin_supply_finding > 0 && sums[begin_supply_finding - 1] > 0) --begin_supply_finding;
  return begin_supply_finding;
}

void say_alarm(Finding& finding, const Loads& loads, const DriftCharts& charts, std::size_t alarm,
               const Wording& wording) {
  const bool smaller = charts.sums.lower[alarm] > charts.sums.upper[alarm];
  const auto& sums = smaller ? charts.sums.lower : charts.sums.upper;
  const auto began = where_drift_began(sums, alarm);
  Length sum;
  for (std::size_t i = began; i <= alarm; ++i) sum = sum + *loads[i]->median_size;
  const Length since = sum / static_cast<double>(alarm - began + 1);
  finding.outcome = Outcome::falls_short;
  finding.sentence = fmt::format(
      "The supply has become {}: alarm at {} of {} ({}), drift since about {}; loads since then "
      "have "
      "a median size of {} on average.",
      smaller ? "smaller" : "larger", alarm + 1, loads.size(), name_of(*loads[alarm]),
      name_of(*loads[began]), wording.rock(since));
  finding.next =
      "Look at the face and the screen at the quarry; count a load of now before placing more.";
  finding.values.push_back({"median_since", "D50", "median size since the drift began",
                            measure(since), LengthUse::rock});
}

Finding drift_finding(const Lot& lot, const Loads& with_size, const DriftCharts& charts,
                      const Wording& wording) {
  auto finding = begin_supply_finding(lot, "drift", fmt::format("Drift of {}", lot.name));
  const auto& about = cumulative_sum_chart_method().description();
  finding.about.method = about.id;
  finding.sources = about.sources;
  finding.cautions = about.cautions;
  const SupplyPlan& plan = *lot.supply;
  finding.steps.given_rock("μ0", "median size that loads should keep", *plan.target_size);
  finding.steps.given_rock("σ", "standard deviation from load to load", *plan.load_spread);
  finding.steps.given("ARL0", "loads between two false alarms", measure(plan.run_length));
  finding.steps.computed("h", "sum at which the alarm is raised, in standard deviations",
                         "so that ARL(h; k = 0.5, no shift) = ARL0", measure(charts.interval));
  finding.steps.computed("L", "limits of the moving average, in its standard deviations",
                         "so that ARL(L; λ = 0.2, no shift) = ARL0", measure(charts.limits));
  const auto alarm =
      charts.sums.first_alarm ? charts.sums.first_alarm : charts.averages.first_alarm;
  if (alarm) {
    say_alarm(finding, with_size, charts, static_cast<std::size_t>(*alarm - 1), wording);
  } else if (with_size.size() < fewest_loads_of_supply) {
    finding.outcome = Outcome::not_yet_known;
    finding.sentence =
        fmt::format("{} loads with a size are too few to speak of a drift.", with_size.size());
    finding.next = "Take the median size of each load.";
  } else {
    finding.outcome = Outcome::meets;
    finding.sentence = fmt::format("{} loads with a size show no drift from {}.", with_size.size(),
                                   wording.rock(*plan.target_size));
    finding.next = "Go on.";
  }
  return finding;
}

std::optional<RunChartPicture> run_chart(const Lot& lot, const Loads& loads,
                                         const std::optional<DriftCharts>& charts,
                                         const Wording& wording) {
  if (loads.size() < 2) return std::nullopt;
  RunChartPicture picture;
  picture.id = "loads." + lot.id;
  picture.title = fmt::format("Loads of {}", lot.name);
  for (const auto* load : loads) {
    RunChartPicture::Point point;
    point.label = name_of(*load);
    point.size = *load->median_size;
    picture.points.push_back(std::move(point));
  }
  picture.description = fmt::format("Median size of {} loads in the order of time, from {} to {}.",
                                    loads.size(), wording.rock(picture.points.front().size),
                                    wording.rock(picture.points.back().size));
  if (!charts) return picture;
  picture.target = lot.supply->target_size;
  const auto size_of = [&](double deviations) {
    return *lot.supply->target_size + deviations * *lot.supply->load_spread;
  };
  for (std::size_t i = 0; i < loads.size(); ++i) {
    auto& point = picture.points[i];
    const double average = charts->averages.average[i];
    const double half = charts->averages.half_width[i];
    point.average = size_of(average);
    point.low = size_of(-half);
    point.high = size_of(half);
    const bool sum_alarm =
        std::max(charts->sums.upper[i], charts->sums.lower[i]) > charts->interval;
    point.alarm = sum_alarm || average > half || average < -half;
  }
  return picture;
}

}  // namespace

Supply supply_of(const Site& site, const Lot& lot, const Wording& wording) {
  Supply supply;
  const auto loads = loads_of(site, lot);
  const auto with_size = sized(loads);
  std::optional<DriftCharts> charts;
  if (lot.supply && lot.supply->target_size) charts = drift_charts(with_size, *lot.supply);
  supply.run_chart = run_chart(lot, with_size, charts, wording);
  if (loads.empty() && !lot.supply) return supply;
  supply.findings.push_back(mass_finding(site, lot, loads, wording));
  if (!loads.empty()) supply.findings.push_back(tickets_finding(lot, loads));
  if (charts) supply.findings.push_back(drift_finding(lot, with_size, *charts, wording));
  return supply;
}

}  // namespace proofstone
