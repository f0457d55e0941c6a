#include "engine/site/weighted_size.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/site/class_choice.h"

namespace proofstone {
namespace {

const SizeAsked* most_asked(const ZoneSizing& sizing, const std::string& method,
                            const RockClass& rock_class, double& least_margin) {
  const SizeAsked* most = nullptr;
  for (const auto& asked : sizing.asked) {
    if (!asked.within_limits || asked.method->description().id != method) continue;
    const auto margin = class_margin(rock_class, asked);
    if (!margin) continue;
    if (most == nullptr || *margin < least_margin) {
      most = &asked;
      least_margin = *margin;
    }
  }
  return most;
}

}  // namespace

std::optional<WeightedSize> weigh_sizes(const ZoneSizing& sizing, const RockClass& rock_class) {
  const auto least_d50 = least_size_of(rock_class, 50);
  if (!least_d50) return std::nullopt;
  WeightedSize weighted;
  double sum = 0;
  for (const auto& [method, weight] : sizing.zone->weights) {
    double margin = 0;
    const auto* asked = most_asked(sizing, method, rock_class, margin);
    if (asked == nullptr) {
      weighted.silent.push_back(method);
      continue;
    }
    weighted.parts.push_back({asked, weight, 0, 1 / margin, 1 / margin * *least_d50});
    sum += weight;
  }
  if (weighted.parts.empty()) return std::nullopt;
  double mean = 0;
  double largest = 0;
  for (auto& part : weighted.parts) {
    part.share = part.weight / sum;
    mean += part.share * part.ratio;
    largest = std::max(largest, part.ratio);
  }
  weighted.d50 = mean * *least_d50;
  weighted.envelope_d50 = largest * *least_d50;
  weighted.margin = 1 / mean;
  weighted.envelope_margin = 1 / largest;
  return weighted;
}

void tell_weighted(Finding& finding, const WeightedSize& weighted, const RockClass& rock_class,
                   const Wording& wording) {
  for (const auto& part : weighted.parts) {
    const auto& title = part.asked->method->description().title;
    finding.reasons.push_back(fmt::format(
        "{}: weight {} ({} % of the sum); it asks for {}, as rock of {} a D50 of {}.", title,
        significant(part.weight, 6), significant(100 * part.share, 3),
        required_text(part.asked->required, wording), rock_class.name, wording.rock(part.as_d50)));
    finding.steps.given("w", "weight of " + title, measure(part.weight), "document");
    finding.steps.computed_rock("D50", "as rock of this class, by " + title,
                                "D50 min · size asked / size the class has there", part.as_d50);
  }
  for (const auto& id : weighted.silent) {
    finding.reasons.push_back(fmt::format(
        "{} has a weight but does not speak here within its published range; the weights of the "
        "others are taken alone.",
        id));
  }
  finding.steps.computed_rock("D50", "weighted size", "Σ w·D50 / Σ w", weighted.d50);
  finding.steps.computed_rock("D50", "envelope of the same methods", "the largest of them",
                              weighted.envelope_d50);
  finding.values.push_back(
      {"weighted_size", "D50", "weighted size", measure(weighted.d50), LengthUse::rock});
  finding.values.push_back({"envelope_size", "D50", "envelope of the weighted methods",
                            measure(weighted.envelope_d50), LengthUse::rock});
  if (weighted.d50 < weighted.envelope_d50) {
    finding.cautions.push_back(fmt::format(
        "The weighted size of {} lies under the envelope of {}: at least one method with a weight "
        "asks for larger rock.",
        wording.rock(weighted.d50), wording.rock(weighted.envelope_d50)));
  }
}

}  // namespace proofstone
