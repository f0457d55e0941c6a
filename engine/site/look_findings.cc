#include "engine/site/look_findings.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/vision/largest_stone.h"

namespace proofstone {
namespace {

/// The largest size that a look speaks of.
std::optional<Length> largest_of(const Look& look) {
  std::optional<Length> largest;
  const auto keep = [&largest](Length size) {
    if (!largest || size > *largest) largest = size;
  };
  if (const auto* count = std::get_if<StoneCount>(&look.taken)) {
    for (const auto axis : count->intermediate_axes) keep(axis);
    for (const auto& bin : count->bins) {
      // A stone in a bin may be as small as its lower edge.
      if (bin.stones > 0 && bin.lower) keep(*bin.lower);
    }
  } else if (const auto* photos = std::get_if<PhotoSet>(&look.taken)) {
    if (photos->taped_largest) keep(*photos->taped_largest);
    if (photos->tapped_largest) {
      auto unread = Steps::unread();
      // As large as it is at least, by the error of the scale.
      if (const auto by_ends = largest_by_ends(*photos, unread)) keep(by_ends->low);
    }
  } else if (const auto* seen = std::get_if<QuickLook>(&look.taken)) {
    keep(seen->largest);
  } else if (const auto* shapes = std::get_if<ShapeCount>(&look.taken)) {
    for (const auto& stone : shapes->stones) keep(stone.intermediate);
  }
  return largest;
}

std::optional<Finding> too_large_for_layer(const Site& site, const Lot& lot, const Look& look,
                                           const Wording& wording) {
  const auto largest = largest_of(look);
  if (!largest) return std::nullopt;
  std::vector<std::string> layers;
  for (const auto& id : lot.zones) {
    const auto& zone = site.zones.at(id);
    if (*largest <= zone.layer_thickness) continue;
    layers.push_back(fmt::format("{} of {}", wording.rock(zone.layer_thickness), zone.name));
  }
  if (layers.empty()) return std::nullopt;
  Finding finding;
  finding.topic = Topic::gradation;
  finding.about.lot = lot.id;
  finding.about.look = look.id;
  finding.id = fmt::format("stone-and-layer.{}.{}", lot.id, look.id);
  finding.title = fmt::format("Largest stone of {}", look.name);
  finding.outcome = Outcome::ask_the_designer;
  finding.sentence = fmt::format("A stone of {} or more does not fit into the layer: {}.",
                                 wording.rock(*largest), fmt::join(layers, ", "));
  finding.next =
      "Measure it again with its unit; if it is so, lay it aside: a single oversize stone leaves "
      "gaps round it and goes out.";
  finding.sources.push_back(
      {"trade", "no stone is larger than the layer is thick", SourceStanding::common_practice});
  return finding;
}

void add_late(std::vector<std::string>& late, const std::string& name, const std::string& when,
              const Site& site) {
  if (when.empty() || when <= site.recorded) return;
  late.push_back(fmt::format("{} ({})", name, when));
}

}  // namespace

std::vector<Finding> look_findings(const Site& site, const Lot& lot, const Wording& wording) {
  std::vector<Finding> findings;
  const auto* ordered = find_class(site, lot.rock_class);
  for (const auto& [id, look] : site.looks) {
    if (look.lot != lot.id) continue;
    if (const auto* seen = std::get_if<QuickLook>(&look.taken)) {
      findings.push_back(quick_look_finding(*ordered, look, *seen, wording));
    } else if (const auto* count = std::get_if<ShapeCount>(&look.taken)) {
      findings.push_back(shape_count_finding(site, look, *count, wording));
    } else if (const auto* photos = std::get_if<PhotoSet>(&look.taken);
               photos != nullptr && !photos->check.empty()) {
      findings.push_back(outline_check_finding(site, look, *photos));
    }
    if (auto too_large = too_large_for_layer(site, lot, look, wording)) {
      findings.push_back(std::move(*too_large));
    }
  }
  return findings;
}

std::vector<Finding> clock_findings(const Site& site) {
  std::vector<std::string> late;
  for (const auto& [id, look] : site.looks) add_late(late, look.name, look.seen.when, site);
  for (const auto& [id, load] : site.loads) add_late(late, "load " + id, load.when, site);
  for (const auto& [id, survey] : site.layer_surveys) {
    add_late(late, survey.name, survey.seen.when, site);
  }
  for (const auto& [id, walk] : site.placing_walks) {
    add_late(late, walk.name, walk.seen.when, site);
  }
  for (const auto& [id, one] : site.nonconformances) {
    add_late(late, one.name, one.opened.when, site);
  }
  if (late.empty()) return {};
  Finding finding;
  finding.topic = Topic::document;
  finding.id = "document.clock";
  finding.title = "A clock is wrong";
  finding.outcome = Outcome::ask_the_designer;
  finding.sentence = fmt::format("Seen after the last revision was written ({}): {}.",
                                 site.recorded, fmt::join(late, ", "));
  finding.next = "Set the clocks right and correct the times: evidence is read in their order.";
  return {finding};
}

}  // namespace proofstone
