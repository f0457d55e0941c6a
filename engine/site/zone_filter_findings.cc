#include "engine/site/zone_filter_findings.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/site/filter_chain.h"
#include "engine/site/filter_layer_findings.h"
#include "engine/site/filter_options.h"

namespace proofstone {
namespace {

/// Between soil and rock without a filter, highway ratio of retention.
constexpr double retention_limit = 5;

LayerCurves class_curves(const Site& site, const Zone& zone) {
  const auto* rock = find_class(site, zone.rock_class);
  return {rock->name, rock->band};
}

Finding filled_finding(const Zone& zone) {
  auto finding =
      begin_filter_finding(zone, "filter." + zone.id, fmt::format("Filter of {}", zone.name));
  finding.governs = true;
  finding.outcome = Outcome::meets;
  finding.sentence =
      "The rock is filled: the fill is the filter, and no bedding is needed below it.";
  finding.next = "Fill every void down to the soil; where rock stays bare, lay a filter.";
  if (!zone.mix.empty()) {
    finding.reasons.push_back(
        "What the sizes of this very mix say of it as a filter is judged beside this, with the "
        "mix.");
  }
  finding.sources.push_back(
      {"trade", "filled rock is its own filter", SourceStanding::common_practice});
  finding.steps.given_rock("T", "thickness of the filled layer", zone.layer_thickness, "document");
  return finding;
}

/// What soil could lie bare under the rock, where nothing is known of soil and filter.
void warn_of_nothing(const Zone& zone, const LayerCurves& rock, Finding& finding,
                     const Wording& wording) {
  finding.outcome = Outcome::ask_the_designer;
  finding.sentence = fmt::format(
      "Bare rock, and the design shows neither a filter nor the soil below it: soil may wash out "
      "through the rock.");
  finding.next =
      "Go to the designer with the soil's data: its gradation, liquid limit and plasticity index; "
      "or state the filter.";
  finding.sources.push_back({"trade",
                             "bare rock nearly always needs bedding or fabric; a design that shows "
                             "neither goes to the designer with the soil's data",
                             SourceStanding::common_practice});
  finding.steps.given_rock("T", "thickness of the rock", zone.layer_thickness, "document");
  const auto d15 = rock.coarsest(15);
  if (!d15) return;
  const Length needed = *d15 / retention_limit;
  finding.steps.given_rock("D15", "coarsest of the rock", *d15, rock.name());
  finding.steps.computed_grain("d85", "least of a soil that holds below it", "D15/5", needed,
                               "FHWA HDS-6 (2001), Eq 6.24");
  finding.reasons.push_back(fmt::format(
      "Only a soil of which less than 85 % is smaller than {} could lie below this rock without a "
      "filter.",
      grain_text(needed, wording)));
}

void put_chain(const ChainVerdict& chain, Finding& finding) {
  const auto* deciding = chain.deciding();
  if (deciding == nullptr) return;
  finding.outcome = chain.outcome;
  finding.sentence =
      deciding->outcome == Outcome::meets
          ? fmt::format("Soil, filter and rock agree, layer on layer. {}", deciding->sentence)
          : deciding->sentence;
  finding.next = deciding->next;
  finding.steps = deciding->steps;
  finding.sources = deciding->sources;
  for (const auto& pair : chain.pairs) {
    finding.reasons.push_back(
        fmt::format("{} on {}: {}.", pair.upper, pair.lower, outcome_phrase(pair.outcome)));
  }
  if (deciding->middle && deciding->worst) {
    finding.margin = Margin{*deciding->middle, std::min(*deciding->worst, *deciding->middle),
                            std::max(*deciding->worst, *deciding->middle)};
  }
  if (finding.sources.empty()) {
    finding.sources.push_back(
        {"trade", "soil is tested before a filter is chosen", SourceStanding::common_practice});
  }
  if (finding.steps.lines().empty()) {
    finding.steps.given("", "pairs of layers looked at",
                        measure(static_cast<double>(chain.pairs.size())));
  }
}

void take_thickness(const Finding& thickness, Finding& zone_finding) {
  if (thickness.outcome == Outcome::meets) return;
  zone_finding.reasons.push_back(thickness.sentence);
  if (!is_worse(thickness.outcome, zone_finding.outcome)) return;
  zone_finding.outcome = thickness.outcome;
  zone_finding.sentence = thickness.sentence;
  zone_finding.next = thickness.next;
}

}  // namespace

std::vector<Finding> filter_findings(const Site& site, const Zone& zone, const Wording& wording) {
  const auto& layers = layers_of(zone);
  // A filter that is drawn under filled rock all the same is judged like any other.
  if (all_filled(zone) && layers.empty()) return {filled_finding(zone)};
  const auto rock = class_curves(site, zone);
  std::vector<Finding> findings;
  auto whole =
      begin_filter_finding(zone, "filter." + zone.id, fmt::format("Filter of {}", zone.name));
  whole.governs = true;
  whole.cautions = {
      "A filter is only as good as its placing: keep it even, whole and clean, and "
      "cover it before water runs over it."};
  if (zone.soil.empty() && !zone.filter) {
    warn_of_nothing(zone, rock, whole, wording);
    return {std::move(whole)};
  }
  const auto chain = judge_chain(site, zone, layers, rock, wording);
  put_chain(chain, whole);
  if (std::any_of(zone.kinds.begin(), zone.kinds.end(),
                  [](const KindUpSlope& part) { return is_filled(part.kind); })) {
    whole.reasons.push_back(
        "Where the rock is filled the fill is the filter; what is said here holds where it is "
        "bare.");
  }
  std::size_t number = 0;
  for (const auto& pair : chain.pairs) {
    findings.push_back(
        pair_finding(zone, pair, fmt::format("filter.{}.pair.{}", zone.id, ++number)));
  }
  number = 0;
  for (const auto& layer : layers) {
    ++number;
    const auto* granular = std::get_if<GranularFilter>(&layer);
    if (granular == nullptr) continue;
    findings.push_back(thickness_finding(site, zone, *granular, number, wording));
    take_thickness(findings.back(), whole);
    judge_fines(site, *granular, whole);
    note_stability(site, *granular, whole);
  }
  if (auto options = filter_options(site, zone, rock, wording);
      options && whole.outcome != Outcome::meets) {
    whole.next += " See what would serve.";
    findings.push_back(std::move(*options));
  }
  findings.insert(findings.begin(), std::move(whole));
  return findings;
}

}  // namespace proofstone
