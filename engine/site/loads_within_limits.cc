#include "engine/site/loads_within_limits.h"

#include <fmt/format.h>

#include "engine/acceptance/percent_within_limits.h"
#include "engine/rock/size_and_mass.h"
#include "engine/site/loads_of_lot.h"

namespace proofstone {
namespace {

/// A lot of so many percent within limits is accepted in full (FAA AC 150/5370-10 Section 110 and
/// AASHTO R 9, from memory).
constexpr double accepted_in_full = 0.90;
constexpr std::size_t fewest_loads_to_judge = 3;

std::optional<Dimensionless> millimeters(const Expected<Length>& size, SizeMeaning meaning) {
  if (!size) return std::nullopt;
  return Dimensionless::number(
      convert_size(*size, meaning, SizeMeaning::intermediate_axis).millimeters());
}

}  // namespace

std::optional<Finding> loads_within_limits(const Site& site, const Lot& lot,
                                           const Wording& wording) {
  const auto loads = sized(loads_of(site, lot));
  if (loads.size() < fewest_loads_to_judge) return std::nullopt;
  const auto& rock_class = *find_class(site, lot.rock_class);
  const auto& band = rock_class.band;
  PercentWithinLimitsInputs inputs;
  for (const auto* load : loads) {
    inputs.values.push_back(Dimensionless::number(load->median_size->millimeters()));
  }
  inputs.lower_limit = millimeters(band.smallest_size_at(50), band.basis().size);
  inputs.upper_limit = millimeters(band.largest_size_at(50), band.basis().size);
  if (!inputs.lower_limit && !inputs.upper_limit) return std::nullopt;

  Finding finding;
  finding.topic = Topic::supply;
  finding.about.lot = lot.id;
  finding.about.rock_class = rock_class.id;
  const auto& about = percent_within_limits_method().description();
  finding.about.method = about.id;
  finding.id = fmt::format("supply.{}.within-limits", lot.id);
  finding.title = fmt::format("Loads of {} within the limits of {}", lot.name, rock_class.name);
  finding.sources = about.sources;
  finding.cautions = about.cautions;
  const auto result = percent_within_limits(inputs, finding.steps);
  if (!result) {
    finding.sentence = result.problems().front().sentence();
    finding.next = "Measure the median size of more loads.";
    return finding;
  }
  const double within = result->percent_within.number();
  finding.outcome = within >= accepted_in_full ? Outcome::meets : Outcome::ask_the_designer;
  finding.values.push_back(
      {"percent_within", "PWL", "percent of the lot within the limits", measure(100 * within)});
  finding.values.push_back({"table_percent", "PWL", "as printed tables give it",
                            measure(100 * result->table_percent.number())});
  finding.sentence = fmt::format(
      "From {} loads {:.0f} % of the lot have a median size from {} to {}.", loads.size(),
      100 * within,
      inputs.lower_limit ? wording.rock(Length::millimeters(inputs.lower_limit->number()))
                         : std::string("nothing"),
      inputs.upper_limit ? wording.rock(Length::millimeters(inputs.upper_limit->number()))
                         : std::string("any size"));
  finding.reasons.push_back(
      "A lot is accepted in full from 90 % within limits (published plans, from memory); what less "
      "means is for the contract to say.");
  finding.next = within >= accepted_in_full
                     ? "Go on."
                     : "Ask the designer what the contract provides, and see the remedies.";
  return finding;
}

}  // namespace proofstone
