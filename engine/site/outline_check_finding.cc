#include <fmt/format.h>

#include "engine/site/look_findings.h"
#include "engine/vision/check_nodes.h"
#include "engine/vision/outline_check.h"
#include "engine/vision/photo_gradation.h"
#include "engine/vision/vision_sources.h"

namespace proofstone {
namespace {

constexpr const char* count_instead =
    "Use a count of 100 nodes instead of the outlines: tap the stones under a grid, on two or "
    "three photos. Or mend the outlines and check them anew.";

Finding without_result(Finding finding, const Problems& problems, const char* next) {
  for (const auto& problem : problems) finding.reasons.push_back(problem.sentence());
  finding.sentence = "The outlines could not be compared. " + finding.reasons.front();
  finding.next = next;
  return finding;
}

/// What the photos' own limits allow the size to be over what they say.
struct OwnLimits {
  double low = 0;
  double high = 0;
};

std::optional<OwnLimits> limits_of_median(const PhotoGradation& photos) {
  for (const auto& size : photos.sizes) {
    if (size.percent == 50) return OwnLimits{size.low() / size.size, size.high() / size.size};
  }
  return std::nullopt;
}

void judge(Finding& finding, const OutlineCheck& check, const OwnLimits& own) {
  finding.sentence += fmt::format(" The limits of D50 allow {:.2f} to {:.2f}:", own.low, own.high);
  if (check.ratio < own.low || check.ratio > own.high) {
    finding.sentence += " the automatic result does not agree.";
    finding.next = count_instead;
  } else if (check.looked_at() + check.mostly_hidden < nodes_of_check) {
    finding.sentence += " so far the automatic result agrees.";
    finding.next = fmt::format("Look at {} nodes in all.", nodes_of_check);
  } else if (check.low() < own.low || check.high() > own.high) {
    finding.sentence += " the automatic result agrees, but so few nodes cannot show that it does.";
    finding.next = count_instead;
  } else {
    finding.outcome = Outcome::meets;
    finding.sentence += " the automatic result agrees.";
    finding.next = "Nothing to do.";
  }
}

}  // namespace

Finding outline_check_finding(const Site& site, const Look& look, const PhotoSet& photos) {
  Finding finding;
  finding.topic = Topic::gradation;
  finding.about.lot = look.lot;
  finding.about.look = look.id;
  finding.id = fmt::format("outline-check.{}.{}", look.lot, look.id);
  finding.title = fmt::format("Check of the outlines: {}", look.name);
  finding.outcome = Outcome::not_yet_known;
  finding.sources.push_back(rendered_piles("assisted count as a check of outlines"));
  const auto check = check_outlines(photos, finding.steps);
  if (!check) return without_result(std::move(finding), check.problems(), "Look at more nodes.");
  finding.sentence = fmt::format(
      "{} outlines looked at: {} right, {} otherwise, {} no rock; {} mostly hidden. Stones are "
      "{:.2f} times as large as outlined ({:.2f} to {:.2f}, 90 %).",
      check->looked_at() + check->mostly_hidden, check->right, check->corrected, check->not_rock,
      check->mostly_hidden, check->ratio, check->low(), check->high());
  finding.values.push_back(
      {"ratio", "R", "mean size as looked at over that as outlined", measure(check->ratio)});
  finding.reasons.push_back(
      fmt::format("At most {:.0f} % of the rock seen is outlined wrongly, at 95 % confidence.",
                  100 * check->wrong_at_most));
  finding.cautions.emplace_back(
      "Stones that were not outlined at all are not looked at: see on the photos that none are "
      "missing.");
  const auto measured = gradation_from_photos(photos, site.evidence.photo_calibrations);
  if (!measured) {
    return without_result(std::move(finding), measured.problems(), "Mend the entry named above.");
  }
  const auto own = limits_of_median(*measured);
  if (!own) {
    finding.sentence += " The photos do not tell D50, so there is nothing to compare with.";
    finding.next = "Take photos from nearer by.";
    return finding;
  }
  judge(finding, *check, *own);
  return finding;
}

}  // namespace proofstone
