#include "engine/soil/internal_stability.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/quantity/rounding.h"
#include "engine/soil/burenkova.h"
#include "engine/soil/chang_zhang.h"
#include "engine/soil/istomina.h"
#include "engine/soil/kenney_lau.h"
#include "engine/soil/kezdi.h"

namespace proofstone {
namespace {

constexpr double doubtful_from = 0.5;

Outcome outcome_of(double margin) {
  return margin >= 1 - rounding ? Outcome::meets : Outcome::falls_short;
}

StabilityVerdict silent(const char* method, const char* name, const Problems& why) {
  return {method, name, Outcome::not_yet_known, std::nullopt,
          fmt::format("{}: {}", name, why.front().what)};
}

/// Runs one criterion; `say` words what it found.
template <class Inputs, class Result, class Say>
StabilityVerdict ask(const char* method, const char* name,
                     Expected<Result> (*criterion)(const Inputs&, Steps&),
                     const GradationInputs& curve, Steps& steps, Say say) {
  Inputs inputs;
  static_cast<GradationInputs&>(inputs) = curve;
  const auto result = criterion(inputs, steps);
  if (!result) return silent(method, name, result.problems());
  const double margin = result->margin.number();
  return {method, name, outcome_of(margin), margin, fmt::format("{}: {}", name, say(*result))};
}

std::string kenney_lau_words(const KenneyLauResult& result) {
  return fmt::format("least H/F {} at {} % smaller, limit 1", significant(result.ratio.number(), 3),
                     significant(result.at.in(unit::percent), 3));
}

std::string kezdi_words(const KezdiResult& result) {
  return fmt::format("largest D15c/d85f {} at {} % smaller, limit 4",
                     significant(result.ratio.number(), 3),
                     significant(result.at.in(unit::percent), 3));
}

std::string burenkova_words(const BurenkovaResult& result) {
  return fmt::format(
      "d90/d60 {}, stable from {} to {}", significant(result.upper_ratio.number(), 3),
      significant(result.lowest.number(), 3), significant(result.highest.number(), 3));
}

std::string chang_zhang_words(const ChangZhangResult& result) {
  return fmt::format("{} % of fines, {}, margin {}", significant(result.fines.in(unit::percent), 3),
                     result.gap_ratio.number() > 0
                         ? "gap ratio " + significant(result.gap_ratio.number(), 3)
                         : std::string("no gap"),
                     significant(result.margin.number(), 3));
}

std::string istomina_words(const IstominaResult& result) {
  return fmt::format("uniformity {}, safe below 10, unstable above 20",
                     significant(result.uniformity.number(), 3));
}

void bring_together(InternalStability& all) {
  std::vector<std::string> hold;
  std::vector<std::string> fail;
  bool doubt = false;
  for (const auto& verdict : all.verdicts) {
    if (verdict.outcome == Outcome::meets) hold.push_back(verdict.name);
    if (verdict.outcome == Outcome::falls_short) fail.push_back(verdict.name);
    doubt = doubt || verdict.outcome == Outcome::ask_the_designer;
  }
  const auto list = [](const std::vector<std::string>& names) {
    return fmt::format("{}", fmt::join(names, ", "));
  };
  all.agree = hold.empty() || fail.empty();
  if (hold.empty() && fail.empty()) {
    all.sentence = "No criterion of internal stability can be computed from this curve.";
  } else if (!all.agree) {
    all.outcome = Outcome::ask_the_designer;
    all.sentence = fmt::format(
        "Criteria of internal stability disagree: {} call it stable, {} "
        "unstable.",
        list(hold), list(fail));
  } else if (!fail.empty()) {
    all.outcome = Outcome::falls_short;
    all.sentence = fmt::format("Internally unstable by {}.", list(fail));
  } else {
    all.outcome = doubt ? Outcome::ask_the_designer : Outcome::meets;
    all.sentence = fmt::format("Internally stable by {}.", list(hold));
  }
}

}  // namespace

InternalStability internal_stability(const CurvePoints& curve, Steps& steps) {
  const auto inputs = inputs_of(curve);
  InternalStability all;
  all.verdicts = {ask("kenney-lau", "Kenney–Lau", &kenney_lau, inputs, steps, kenney_lau_words),
                  ask("kezdi", "Kezdi", &kezdi, inputs, steps, kezdi_words),
                  ask("burenkova", "Burenkova", &burenkova, inputs, steps, burenkova_words),
                  ask("chang-zhang", "Chang–Zhang", &chang_zhang, inputs, steps, chang_zhang_words),
                  ask("istomina", "Istomina", &istomina, inputs, steps, istomina_words)};
  auto& by_uniformity = all.verdicts.back();
  if (by_uniformity.outcome == Outcome::falls_short && *by_uniformity.margin >= doubtful_from) {
    by_uniformity.outcome = Outcome::ask_the_designer;
  }
  bring_together(all);
  return all;
}

}  // namespace proofstone
