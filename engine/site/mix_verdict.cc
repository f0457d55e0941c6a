#include "engine/site/mix_verdict.h"

#include <fmt/format.h>

#include "engine/quantity/measure.h"

namespace proofstone {
namespace {

constexpr double rounding_of_filling = 1e-6;

std::string two(double value) { return fmt::format("{:.2f}", value); }

/// Why parts that look right do not fit: soil must shrink for it.
std::string why_it_must_shrink(const PreparedMix& prepared, const MixBalance& balance) {
  if (!balance.compaction_that_fits) return "";
  const auto& fill = prepared.mix.fills.front();
  return fmt::format(
      " These parts fit only if the loose fill ends at {} of its loose volume; {} is stated to end "
      "at {}.",
      two(*balance.compaction_that_fits), fill.name, two(fill.in_place_over_loose.value_or(1)));
}

void forced_apart(const PreparedMix& prepared, const MixBalance& balance, Finding& finding) {
  finding.outcome = Outcome::falls_short;
  finding.sentence += fmt::format(
      " The fill takes {} of the voids and forces the rock apart: the mix takes {} times the "
      "volume "
      "of its rock, and the stones no longer bear on one another.",
      two(balance.filling), two(balance.bulking));
  finding.sentence += why_it_must_shrink(prepared, balance);
  const double most = balance.loose_ratio / balance.filling;
  finding.next = fmt::format(
      "Mix in at most {} % fill by loose volume, or take the proportions proposed beside this.",
      significant(100 * most / (1 + most), 3));
}

/// Whether the fill can come to lie in the voids by being washed in.
bool washes_in(const PreparedMix& prepared, Finding& finding) {
  const auto washes = can_be_washed_in(prepared.mix);
  if (washes.value_or(false)) return true;
  finding.outcome = washes ? Outcome::falls_short : Outcome::not_yet_known;
  finding.sentence += washes
                          ? " It is too coarse to be washed into rock that lies: a tenth or more "
                            "of it is larger than 0.15 of the rock's D15."
                          : " Whether it can be washed in is not known: its curve ends too soon.";
  finding.next = washes ? "Mix it with the rock before placing, or take a finer fill."
                        : "Give the gradation of the fill up to the size of which all is smaller.";
  return false;
}

bool lies_in_contact(const PreparedMix& prepared, const MixBalance& balance, Finding& finding) {
  if (!balance.dilation) {
    finding.outcome = Outcome::not_yet_known;
    if (balance.beyond_packing.empty()) {
      finding.next =
          "State the porosity in place of every fill: without it the contact of the rock is not "
          "known.";
      return false;
    }
    finding.sentence += " Whether the fill holds the rock apart is not known.";
    for (const auto& problem : balance.beyond_packing) {
      finding.sentence += fmt::format(" {}: {}", problem.where, problem.what);
    }
    finding.next = advice_beyond_packing(balance.beyond_packing);
    return false;
  }
  if (*balance.dilation <= most_dilation) return true;
  finding.outcome = Outcome::ask_the_designer;
  finding.sentence += fmt::format(
      " By volume the fill fits, but mixed before placing it holds the rock apart by {}, where {} "
      "is usual at most.",
      two(*balance.dilation), two(most_dilation));
  finding.next =
      can_be_washed_in(prepared.mix).value_or(false)
          ? "Wash the fill into rock that already lies, which leaves its contact, or mix in less."
          : "Mix in less, or size the rock as if it were not in contact.";
  return false;
}

}  // namespace

std::string advice_beyond_packing(const Problems& problems) {
  std::vector<std::string> allowed;
  for (const auto& problem : problems) {
    if (problem.code != "too-loose" && problem.code != "too-dense") return "";
    allowed.push_back(fmt::format("{}, {}", problem.where, problem.allowed));
  }
  return fmt::format(
      "Measure the porosity in place anew and try a batch. The packing model serves: {}.",
      fmt::join(allowed, "; "));
}

void judge_mix(const PreparedMix& prepared, const MixBalance& balance, const std::string& on_ratio,
               Finding& finding) {
  finding.sentence = fmt::format("{} by loose volume.", on_ratio);
  finding.margin = Margin{1 / balance.filling, std::nullopt, std::nullopt};
  if (balance.filling > 1 + rounding_of_filling) {
    forced_apart(prepared, balance, finding);
    return;
  }
  finding.sentence += fmt::format(" It fills {} of the voids.", two(balance.filling));
  const bool washed = prepared.mix.placing == MixPlacing::washed_in;
  if (washed ? !washes_in(prepared, finding) : !lies_in_contact(prepared, balance, finding)) return;
  if (!is_full(balance)) {
    finding.outcome = Outcome::ask_the_designer;
    finding.sentence +=
        " The rest stays open, and what lies under the rock can wash out through it.";
    finding.next = fmt::format(
        "Fill at least {} of the voids, or put bedding under the rock as under bare rock.",
        two(least_filling));
    return;
  }
  if (prepared.recipe != nullptr && prepared.recipe->unverified) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next = "The recipe is recalled with doubt: compare it with the current manual first.";
    return;
  }
  finding.outcome = Outcome::meets;
  finding.next =
      "Mix to these parts, and look into the placed rock: voids full, stones touching, "
      "no pockets of fill alone.";
}

}  // namespace proofstone
