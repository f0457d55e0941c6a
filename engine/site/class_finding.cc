#include "engine/site/class_finding.h"

#include <fmt/format.h>

#include "engine/site/weighted_size.h"

namespace proofstone {
namespace {

std::string policy_words(GoverningPolicy policy) {
  switch (policy) {
    case GoverningPolicy::envelope:
      return "the method that leaves least margin governs";
    case GoverningPolicy::chosen:
      return "the designer's chosen method governs";
    case GoverningPolicy::weighted:
      break;
  }
  return "of the methods with a weight it leaves least margin";
}

Finding begin_class_finding(const ZoneSizing& sizing) {
  Finding finding;
  finding.topic = Topic::rock_class;
  finding.about.zone = sizing.zone->id;
  finding.about.rock_class = sizing.specified->id;
  finding.id = "class." + sizing.zone->id;
  finding.title = fmt::format("{} for {}", sizing.specified->name, sizing.zone->name);
  finding.sources.push_back(sizing.specified->source);
  finding.reasons = sizing.specified->notes;
  for (const auto& silent : sizing.silent) {
    finding.reasons.push_back(
        fmt::format("{} {}: {}", silent.method->description().title,
                    silent.applies ? "could not be computed" : "does not apply", silent.reason));
  }
  return finding;
}

/// What holds, and what to do, once the margin under the policy is known.
void conclude_class(Finding& finding, const ZoneSizing& sizing, const ClassChoice& choice,
                    double margin) {
  if (choice.smallest != nullptr) {
    finding.sentence +=
        fmt::format(" The smallest class of this family that holds is {}.", choice.smallest->name);
    if (!choice.why_next_smaller_fails.empty()) {
      finding.reasons.push_back("Next smaller: " + choice.why_next_smaller_fails + ".");
    }
  } else {
    finding.sentence += " No class of this family holds.";
  }
  finding.margin = Margin{margin, std::nullopt, std::nullopt};
  if (margin >= 1) {
    finding.outcome = Outcome::meets;
    finding.next = choice.smallest != nullptr && choice.smallest != sizing.specified
                       ? fmt::format("Nothing to do; {} would hold too.", choice.smallest->name)
                       : "Nothing to do.";
  } else {
    finding.outcome = Outcome::falls_short;
    finding.next = choice.smallest != nullptr
                       ? fmt::format("Specify {}.", choice.smallest->name)
                       : "Rock of this family is not enough: change the lining or the water.";
  }
}

/// Under stated weights: every weight and size is shown, and a mean that lies under what some
/// method asks for is never called safe.
void weigh_class(Finding& finding, const ZoneSizing& sizing, const ClassChoice& choice,
                 const Wording& wording) {
  const auto weighted = weigh_sizes(sizing, *sizing.specified);
  if (!weighted) {
    finding.outcome = Outcome::not_yet_known;
    finding.sentence = "The class does not state a size that a weighted method asks for.";
    finding.next = "Choose a class that has a limit there, or another policy.";
    return;
  }
  finding.sentence = fmt::format(
      "By the weights stated, rock of {} needs a D50 of {}; the method that asks most needs {}.",
      sizing.specified->name, wording.rock(weighted->d50), wording.rock(weighted->envelope_d50));
  tell_weighted(finding, *weighted, *sizing.specified, wording);
  conclude_class(finding, sizing, choice, weighted->margin);
  if (weighted->margin >= 1 && weighted->envelope_margin < 1) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next =
        "The weighted size holds, the envelope does not: the designer must stand by the weights.";
  }
}

}  // namespace

Finding class_finding(const ZoneSizing& sizing, const ClassChoice& choice, const Wording& wording) {
  auto finding = begin_class_finding(sizing);
  if (!sizing.governing) {
    finding.outcome = Outcome::ask_the_designer;
    finding.sentence = "No sizing method speaks for this zone within its published range.";
    finding.next = "Ask the designer which method governs here.";
    return finding;
  }
  const auto& governing = sizing.asked[*sizing.governing];
  const auto margin = class_margin(*sizing.specified, governing);
  finding.governs = true;
  finding.about.method = governing.method->description().id;
  finding.about.flow_case = governing.water->flow_case->id;
  finding.steps = governing.evaluation.steps;
  if (margin) add_margin_steps(finding.steps, *sizing.specified, governing.required, *margin);
  finding.values.push_back({"required_size", size_symbol(governing.required),
                            "governing stone size", measure(governing.required.size),
                            LengthUse::rock});
  if (sizing.zone->policy == GoverningPolicy::weighted) {
    weigh_class(finding, sizing, choice, wording);
    return finding;
  }
  finding.sentence =
      fmt::format("{} governs in the {} ({}); it asks for {}.",
                  governing.method->description().title, governing.water->flow_case->name,
                  policy_words(sizing.zone->policy), required_text(governing.required, wording));
  conclude_class(finding, sizing, choice, margin.value_or(0));
  return finding;
}

}  // namespace proofstone
