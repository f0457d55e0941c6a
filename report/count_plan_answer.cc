#include "report/count_plan_answer.h"

#include <fmt/format.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/acceptance/count_plan.h"
#include "engine/rock/rock_class.h"
#include "engine/site/assess.h"
#include "engine/site/wording.h"

namespace proofstone {
namespace {

using nlohmann::json;

double share(FieldReader& request, const char* field, double otherwise, double least, double most) {
  const auto stated = request.optional_quantity<Dimensionless>(field);
  if (!stated) return otherwise;
  if (!(stated->number() >= least && stated->number() <= most)) {
    request.report("out-of-range", "No count is planned with this.", field,
                   fmt::format("{:g} % to {:g} %", 100 * least, 100 * most));
  }
  return stated->number();
}

json limit_json(const LimitPlan& one, const Wording& wording) {
  return {{"condition", one.limit.condition.wording},
          {"wrong", fmt::format("{} than {}", one.limit.smaller_is_wrong ? "smaller" : "larger",
                                wording.rock(one.limit.size))},
          {"stones", one.stones},
          {"accept_at_most", one.accept_at_most},
          {"first_acceptance", one.first_acceptance},
          {"average_when_good", std::round(one.average_when_good)},
          {"average_at_limit", std::round(one.average_at_limit)}};
}

}  // namespace

CountQuestion read_count_question(FieldReader& request, const Site* site) {
  CountQuestion question;
  if (site != nullptr) {
    question.risks = site->evidence.risks();
    question.good_by = site->evidence.good_by;
  }
  question.rock_class = request.required_text("class");
  question.risks.owners = share(request, "owners_risk", question.risks.owners, 0.001, 0.49);
  question.risks.producers =
      share(request, "producers_risk", question.risks.producers, 0.001, 0.49);
  question.good_by = share(request, "good_by", question.good_by, 0.01, 0.4);
  question.alike_in_load = share(request, "alike_in_load", 0, 0, 1);
  if (const auto stones = request.optional_quantity<Dimensionless>("stones_in_load")) {
    if (stones->number() >= 1 && stones->number() <= 1000) {
      question.stones_in_load = static_cast<int>(stones->number());
    } else {
      request.report("out-of-range", "So many stones are not picked from a load.", "stones_in_load",
                     "1 to 1000");
    }
  }
  return question;
}

Expected<json> count_plan_answer(const CountQuestion& question, const Site* site,
                                 UnitSystem units) {
  const auto* rock_class = site == nullptr ? find_rock_class(question.rock_class)
                                           : find_class(*site, question.rock_class);
  if (rock_class == nullptr) {
    return Problem{"no-such-class", fmt::format("No class is called \"{}\".", question.rock_class),
                   "", "/class",
                   "an id that `proofstone classes` lists, or a class of the site named with it"};
  }
  const auto plan = count_plan(rock_class->band, question.risks, question.good_by);
  if (!plan) return plan.problems();
  const Wording wording(units);
  const double spread = 1 + (question.stones_in_load - 1) * question.alike_in_load;
  const int stones = static_cast<int>(std::ceil(plan->stones * spread));
  json answer = {
      {"class", rock_class->name},
      {"owners_risk", question.risks.owners},
      {"producers_risk", question.risks.producers},
      {"good_by", question.good_by},
      {"stones", stones},
      {"independent_stones", plan->stones},
      {"loads", static_cast<int>(std::ceil(static_cast<double>(stones) / question.stones_in_load))},
      {"limits", json::array()}};
  for (const auto& one : plan->limits) answer["limits"].push_back(limit_json(one, wording));
  answer["cautions"] = usual_cautions();
  answer["cautions"].push_back(
      "Holds for stones picked independently on a grid; stones of one load are alike, so spread "
      "the count over loads.");
  return answer;
}

}  // namespace proofstone
