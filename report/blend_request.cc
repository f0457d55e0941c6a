#include "report/blend_request.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/blend/blended_curve.h"
#include "engine/site/findings_text.h"
#include "engine/site/wording.h"
#include "report/gradation_picture.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// A margin of nothing but rounding reads as 0.
std::string points_text(double percent) {
  return significant(std::abs(percent) < 1e-6 ? 0 : percent, 3) + " %";
}

std::string percent_text(double share) { return significant(100 * share, 3) + " %"; }

json shares_json(const SiteBlend& blend, const std::vector<double>& shares) {
  json list = json::array();
  for (std::size_t i = 0; i < shares.size(); ++i) {
    list.push_back({{"material", blend.materials[i].id},
                    {"name", blend.materials[i].name},
                    {"value", shares[i]},
                    {"text", percent_text(shares[i])}});
  }
  return list;
}

json wordings(const SiteBlend& blend, const std::vector<std::size_t>& lines) {
  json list = json::array();
  for (const std::size_t k : lines) list.push_back(blend.target.lines[k].condition.wording);
  return list;
}

bool all_priced(const SiteBlend& blend) {
  return std::all_of(blend.materials.begin(), blend.materials.end(),
                     [](const OfferedMaterial& one) { return one.price_per_tonne.has_value(); });
}

/// In the money of the document, for each ton or tonne.
double cost_of(const SiteBlend& blend, const std::vector<double>& shares, UnitSystem units) {
  double cost = 0;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    cost += shares[i] * blend.materials[i].price_per_tonne.value_or(0);
  }
  return units == UnitSystem::si ? cost : cost * Mass::short_tons(1).tonnes();
}

/// "25 % Coarse stock and 75 % Fine stock".
std::string shares_text(const SiteBlend& blend, const std::vector<double>& shares) {
  std::vector<std::string> words;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    if (shares[i] < 5e-4) continue;
    words.push_back(fmt::format("{} {}", percent_text(shares[i]), blend.materials[i].name));
  }
  return listed(words);
}

/// The blend as a document keeps it among its materials.
json as_material(const SiteBlend& blend, const std::vector<double>& shares, UnitSystem units) {
  const Unit& unit = units == UnitSystem::si ? unit::millimeter : unit::inch;
  json points = json::array();
  for (const auto& point : blended_curve(blend.materials, shares)) {
    points.push_back({{"size", exact_text(measure(point.size), unit)},
                      {"smaller", significant(point.percent_smaller, 6) + " %"}});
  }
  json material = {{"name", shares_text(blend, shares)}, {"gradation", std::move(points)}};
  if (all_priced(blend)) {
    material["price"] = {{"amount", significant(cost_of(blend, shares, units), 6)},
                         {"per", units == UnitSystem::si ? "t" : "ton"}};
  }
  return material;
}

/// How an answer words blends: the unit system, and the width of pictures where they are asked for.
struct BlendShown {
  UnitSystem units = UnitSystem::us_customary;
  std::optional<int> width;
};

/// What can be seen and kept of a blend: its curve in the band, between those of its materials.
void add_curve(json& into, const SiteBlend& blend, const std::vector<double>& shares,
               const BlendShown& shown) {
  into["material"] = as_material(blend, shares, shown.units);
  if (!shown.width) return;
  GradationPicture picture;
  picture.id = "blend." + blend.rock_class->id;
  picture.title =
      fmt::format("{} in the band of {}", shares_text(blend, shares), blend.rock_class->name);
  picture.description =
      "Percent smaller by mass against size: the blend as a bold line, its "
      "materials as thin ones, the band as an area.";
  picture.class_name = blend.rock_class->name;
  picture.coarse_limit = blend.rock_class->band.coarse_limit();
  picture.fine_limit = blend.rock_class->band.fine_limit();
  for (const auto& point : blended_curve(blend.materials, shares)) {
    picture.measured.push_back(
        {point.size, point.percent_smaller, {point.percent_smaller, point.percent_smaller}});
  }
  for (std::size_t i = 0; i < shares.size(); ++i) {
    if (shares[i] < 5e-4) continue;
    picture.looks.push_back({blend.materials[i].name, blend.materials[i].gradation.points()});
  }
  into["picture"] = {{"id", picture.id},
                     {"kind", "gradation"},
                     {"title", picture.title},
                     {"description", picture.description},
                     {"svg", draw_computed(picture, "The blend", shown.units, *shown.width)}};
}

void put(json& into, const char* kind, const std::optional<SharedBlend>& found,
         const SiteBlend& blend, const BlendShown& shown) {
  if (!found) return;
  json one = {{"kind", kind},
              {"shares", shares_json(blend, found->shares)},
              {"margin", found->margin},
              {"margin_text", points_text(found->margin)},
              {"binding", wordings(blend, found->binding)}};
  if (all_priced(blend)) {
    one["cost"] = cost_of(blend, found->shares, shown.units);
    one["cost_per"] = shown.units == UnitSystem::si ? "t" : "ton";
  }
  add_curve(one, blend, found->shares, shown);
  into.push_back(std::move(one));
}

json plan_json(const SiteBlend& blend, const LoadPlan& plan, const BlendShown& shown) {
  json loads = json::array();
  for (std::size_t i = 0; i < plan.loads.size(); ++i) {
    loads.push_back({{"material", blend.materials[i].id},
                     {"name", blend.materials[i].name},
                     {"number", plan.loads[i]}});
  }
  json answer = {{"loads", loads},
                 {"shares", shares_json(blend, plan.shares)},
                 {"margin", plan.margin},
                 {"margin_text", points_text(plan.margin)},
                 {"proven", plan.proven}};
  add_curve(answer, blend, plan.shares, shown);
  return answer;
}

std::string sentence_of(const SiteBlend& blend) {
  if (!blend.ranges) {
    return fmt::format("No blend of these materials keeps {}.", blend.rock_class->name);
  }
  const double margin = blend.widest ? blend.widest->margin : 0;
  return fmt::format("Blends of these materials keep {}, at best by {} % at every limit.",
                     blend.rock_class->name, significant(margin, 3));
}

}  // namespace

BlendQuestion read_blend_question(FieldReader& request, Problems&) {
  BlendQuestion question;
  question.rock_class = request.required_text("class");
  if (const auto* list = request.optional_list("materials")) {
    for (std::size_t i = 0; i < list->size(); ++i) {
      if ((*list)[i].is_string()) {
        question.materials.push_back((*list)[i].get<std::string>());
      } else {
        request.report("not-a-text", "The id of a material belongs here.",
                       fmt::format("materials/{}", i), "a text");
      }
    }
  }
  if (request.has("mass")) {
    question.mass = request.required_positive<Mass>("mass", "A mass to bring is more than zero.");
  }
  if (request.has("scalp")) {
    question.scalp_at = request.required_positive<Length>("scalp", "A size is more than zero.");
  }
  if (const auto margin = request.optional_quantity<Dimensionless>("margin")) {
    question.margin = 100 * margin->number();
  }
  if (const auto buckets = request.optional_quantity<Dimensionless>("buckets")) {
    const double number = buckets->number();
    const bool whole = number >= 1 && number <= 40 && number - static_cast<int>(number) < 1e-9;
    if (!whole) {
      request.report("not-a-whole-number", "This is no number of buckets.", "buckets", "1 to 40");
    } else {
      question.buckets = static_cast<int>(number);
    }
  }
  return question;
}

json blend_json(const SiteBlend& blend, UnitSystem units, std::optional<int> width) {
  const BlendShown shown{units, width};
  json answer = {{"class", blend.rock_class->id},
                 {"name", blend.rock_class->name},
                 {"feasible", blend.ranges.has_value()},
                 {"sentence", sentence_of(blend)},
                 {"why", blend.why},
                 {"cut_short", blend.target.cut_short},
                 {"materials", json::array()},
                 {"blends", json::array()}};
  for (std::size_t i = 0; i < blend.materials.size(); ++i) {
    json one = {{"id", blend.materials[i].id}, {"name", blend.materials[i].name}};
    if (blend.ranges) {
      const auto& range = (*blend.ranges)[i];
      one["least"] = range.least;
      one["most"] = range.most;
      one["range_text"] =
          fmt::format("{} to {}", percent_text(range.least), percent_text(range.most));
    }
    answer["materials"].push_back(std::move(one));
  }
  put(answer["blends"], "widest margin", blend.widest, blend, shown);
  put(answer["blends"], "best fit to the middle", blend.fitted, blend, shown);
  put(answer["blends"], "cheapest", blend.cheapest, blend, shown);
  if (blend.nearest) {
    answer["nearest"] = {{"shares", shares_json(blend, blend.nearest->shares)}};
    add_curve(answer["nearest"], blend, blend.nearest->shares, shown);
  }
  if (blend.recipe) answer["recipe"] = plan_json(blend, *blend.recipe, shown);
  if (blend.loads) {
    auto loads = plan_json(blend, *blend.loads, shown);
    loads["mass"] = measure_json(measure(blend.loads->mass), units, LengthUse::ground);
    if (all_priced(blend)) loads["cost"] = blend.loads->cost;
    answer["loads"] = std::move(loads);
  }
  return answer;
}

}  // namespace proofstone
