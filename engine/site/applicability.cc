#include "engine/site/applicability.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/method/registry.h"

namespace proofstone {
namespace {

std::string asked_line(const Zone& zone, const SizeAsked& asked, const Wording& wording) {
  auto line =
      fmt::format("{}, {}: ", asked.method->description().title, asked.water->flow_case->name);
  if (!asked.within_limits) {
    line += "outside its published range (";
    const auto& limits = asked.evaluation.limits_not_kept;
    for (std::size_t i = 0; i < limits.size(); ++i)
      line += (i > 0 ? "; " : "") + limits[i].sentence;
    line += "); ";
  } else {
    line += "applies; ";
  }
  line += "it asks for " + required_text(asked.required, wording);
  line += ".";
  if (!asked.within_limits || counts(zone, asked)) return line;
  line += " Shown, but it does not govern";
  return line + (asked.for_comparison ? ": " + *asked.for_comparison : ".");
}

std::string silent_line(const SilentMethod& silent) {
  return fmt::format(
      "{}, {}: {}. {}", silent.method->description().title, silent.water->flow_case->name,
      silent.applies ? "applies, but could not be computed" : "does not apply", silent.reason);
}

/// Sources not named yet.
void add_new(std::vector<Source>& sources, const std::vector<Source>& more) {
  for (const auto& source : more) {
    const bool known = std::any_of(sources.begin(), sources.end(), [&](const Source& named) {
      return named.document == source.document && named.place == source.place;
    });
    if (!known) sources.push_back(source);
  }
}

std::size_t made_for_other_places(ZonePlace place) {
  const auto& methods = sizing_methods();
  return static_cast<std::size_t>(
      std::count_if(methods.begin(), methods.end(),
                    [place](const SizingMethod* method) { return !serves(*method, place); }));
}

}  // namespace

Finding applicability_finding(const ZoneSizing& sizing, const Wording& wording) {
  const auto& zone = *sizing.zone;
  Finding finding;
  finding.topic = Topic::rock_size;
  finding.about.zone = zone.id;
  finding.id = "methods." + zone.id;
  finding.title = fmt::format("Methods for {}", zone.name);
  std::size_t within = 0;
  for (const auto& asked : sizing.asked) {
    if (asked.within_limits) ++within;
    finding.reasons.push_back(asked_line(zone, asked, wording));
    const auto& about = asked.method->description();
    add_new(finding.sources, about.sources);
    finding.steps.given_rock(
        "D" + percent_number(asked.required.percent_smaller),
        fmt::format("asked for by {}, {}", about.title, asked.water->flow_case->name),
        asked.required.size, about.sources.empty() ? "" : about.sources.front().sentence());
  }
  for (const auto& silent : sizing.silent) {
    finding.reasons.push_back(silent_line(silent));
    add_new(finding.sources, silent.method->description().sources);
  }
  const std::size_t outside = sizing.asked.size() - within;
  finding.sentence = fmt::format(
      "Within their published range: {}. Outside it, shown but never governing: {}. Silent: {}. "
      "{} more are made for other places than {}.",
      within, outside, sizing.silent.size(), made_for_other_places(zone.place),
      zone_place_word(zone.place));
  finding.outcome = within > 0 ? Outcome::meets : Outcome::ask_the_designer;
  finding.next = within > 0 ? "Read the sizes side by side before one of them is believed."
                            : "Ask the designer which method may be used here.";
  return finding;
}

}  // namespace proofstone
