#include "engine/site/filter_reader.h"

#include <fmt/format.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/filter/beddings.h"
#include "engine/site/item_reader.h"
#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

std::optional<Dimensionless> within(FieldReader& reader, const char* field, double low, double high,
                                    const char* allowed) {
  const auto value = reader.optional_quantity<Dimensionless>(field);
  if (value && !(value->number() >= low && value->number() <= high)) {
    reader.report("implausible", "No soil has this.", field, allowed);
  }
  return value;
}

/// The plasticity index: stated, or liquid less plastic limit; "not plastic" is 0.
std::optional<Dimensionless> read_plasticity(FieldReader& reader,
                                             const std::optional<Dimensionless>& liquid_limit) {
  if (const auto* json = reader.optional("plasticity_index");
      json != nullptr && json->is_string() && *json == "not plastic") {
    return Dimensionless::number(0);
  }
  const auto plastic_limit = within(reader, "plastic_limit", 1, 300, "1 to 300");
  auto index = within(reader, "plasticity_index", 0, 400, "0 to 400, or \"not plastic\"");
  if (index && plastic_limit) {
    reader.report("stated-twice", "Plastic limit and plasticity index say the same.",
                  "plastic_limit", "one of the two");
  }
  if (plastic_limit && liquid_limit) index = *liquid_limit - *plastic_limit;
  if (index && liquid_limit && (index->number() < 0 || *index > *liquid_limit)) {
    reader.report("implausible", "The plasticity index is not between 0 and the liquid limit.",
                  plastic_limit ? "plastic_limit" : "plasticity_index",
                  "a plastic limit below the liquid limit");
  }
  return index;
}

GranularFilter read_granular(FieldReader& reader) {
  GranularFilter layer;
  layer.bedding = reader.required_text("bedding");
  layer.thickness = reader.required_positive<Length>("thickness", "A layer has a thickness.");
  return layer;
}

GeotextileFilter read_geotextile(FieldReader& reader) {
  GeotextileFilter layer;
  layer.opening_size =
      reader.required_positive<Length>("opening_size", "A fabric has openings (AOS, O95).");
  layer.permittivity = reader.optional_positive<Rate>("permittivity");
  layer.thickness = reader.optional_positive<Length>("thickness");
  layer.fabric = reader.choice<Fabric>("fabric",
                                       {{"nonwoven", Fabric::nonwoven},
                                        {"woven monofilament", Fabric::woven_monofilament},
                                        {"woven slit film", Fabric::woven_slit_film}},
                                       std::nullopt);
  layer.strength_class = reader.optional_integer("strength_class", 1, 3);
  layer.drop_height = reader.optional_quantity<Length>("drop_height");
  if (layer.drop_height && layer.drop_height->si() < 0) {
    reader.report("negative", "This is never less than zero.", "drop_height", "0 or more");
  }
  return layer;
}

enum class LayerKind { granular, geotextile };

void read_layers(const nlohmann::json& list, const std::string& pointer, ZoneFilter& filter,
                 Problems& problems) {
  for (std::size_t i = 0; i < list.size(); ++i) {
    FieldReader reader(list[i], fmt::format("{}/{}", pointer, i), problems);
    const auto kind = reader.choice<LayerKind>(
        "kind", {{"granular", LayerKind::granular}, {"geotextile", LayerKind::geotextile}},
        std::nullopt);
    if (kind == LayerKind::granular) {
      filter.layers.emplace_back(read_granular(reader));
    } else {
      filter.layers.emplace_back(read_geotextile(reader));
    }
    reader.finish();
  }
}

std::string known_beddings(const Site& site) {
  std::string allowed;
  for (const auto& [id, material] : site.materials) {
    allowed += (allowed.empty() ? "" : ", ") + id;
  }
  for (const auto& bedding : bedding_catalog()) {
    allowed += (allowed.empty() ? "" : ", ") + bedding.id;
  }
  return allowed;
}

/// What to write instead where percents that fall look like percents retained; empty otherwise.
std::string likely_mend(const std::vector<GradationPoint>& points) {
  if (look_retained(points)) {
    return "percents smaller; these look like percents retained: give 100 less each";
  }
  double sum = 0;
  for (const auto& point : points) sum += point.percent_smaller;
  constexpr double rounded_row_by_row = 0.5;
  constexpr double near_all = 15;
  if (std::abs(sum - 100) > near_all) return "";
  if (std::abs(sum - 100) > rounded_row_by_row) {
    return fmt::format(
        "percents that never fall with size; were these percents retained on each sieve they would "
        "sum to 100, not to {}: is the pan missing, or one of them wrong?",
        significant(sum, 4));
  }
  return "percents smaller; these sum to 100 and look like percents retained on each sieve: add up "
         "what is smaller than each";
}

/// Whether percents were written without their sign: 38 for "38 %", and so read as 3800 %.
bool look_unsigned(const std::vector<GradationPoint>& points) {
  constexpr double of_all = 100;
  bool beyond = false;
  for (const auto& point : points) {
    if (point.percent_smaller < 0 || point.percent_smaller > of_all * of_all) return false;
    beyond = beyond || point.percent_smaller > of_all * 1.5;
  }
  return beyond;
}

}  // namespace

std::optional<Gradation> read_gradation(FieldReader& reader, const GradationBasis& basis,
                                        Problems& problems) {
  const auto before = problems.size();
  std::vector<GradationPoint> points;
  const auto* value = reader.required("gradation");
  if (value != nullptr && is_unread_file(reader, "gradation", *value)) return std::nullopt;
  if (const auto* list = value != nullptr ? reader.optional_list("gradation") : nullptr) {
    for (std::size_t i = 0; i < list->size(); ++i) {
      FieldReader row((*list)[i], fmt::format("{}/gradation/{}", reader.pointer(), i), problems);
      GradationPoint point;
      point.size = row.required_quantity<Length>("size");
      // A share is written "50 %" or "0.5"; a curve keeps it as percent.
      point.percent_smaller = 100 * row.required_quantity<Dimensionless>("smaller").number();
      row.finish();
      points.push_back(point);
    }
  }
  if (problems.size() != before) return std::nullopt;
  const auto mend = likely_mend(points);
  const bool without_sign = look_unsigned(points);
  auto gradation = Gradation::make(std::move(points), basis);
  if (gradation) return *gradation;
  auto wrong = gradation.problems();
  for (auto& problem : wrong) {
    if (problem.code == "sizes-out-of-order") problem.allowed += "; are two units mixed?";
    if (problem.code == "percent-falls" && !mend.empty()) problem.allowed = mend;
    if (problem.code == "percent-outside" && without_sign) {
      problem.allowed += " %; write the sign: \"38 %\", or the share 0.38";
    }
  }
  add_located(problems, wrong, reader.pointer() + "/gradation");
  return std::nullopt;
}

namespace {

/// Further samples of one ground, each with a name of its own.
std::vector<SoilSample> read_samples(FieldReader& reader, Problems& problems) {
  std::vector<SoilSample> samples;
  const auto* list = reader.optional_list("further_samples");
  if (list == nullptr) return samples;
  for (std::size_t i = 0; i < list->size(); ++i) {
    FieldReader one((*list)[i], fmt::format("{}/further_samples/{}", reader.pointer(), i),
                    problems);
    const auto name = one.required_text("name");
    const auto gradation = read_gradation(one, sieved_by_mass, problems);
    one.finish();
    if (gradation) samples.push_back({name, *gradation});
  }
  return samples;
}

}  // namespace

std::optional<Soil> read_soil(FieldReader& reader, const std::string& id, Problems& problems) {
  const auto name = reader.required_text("name");
  auto gradation = read_gradation(reader, sieved_by_mass, problems);
  const auto liquid_limit = within(reader, "liquid_limit", 1, 500, "1 to 500");
  const auto plasticity_index = read_plasticity(reader, liquid_limit);
  const auto dispersion = reader.choice<Dispersion>(
      "dispersive",
      {{"yes", Dispersion::yes}, {"no", Dispersion::no}, {"not tested", Dispersion::not_tested}},
      Dispersion::not_tested);
  const auto specific_gravity = within(reader, "specific_gravity", 1.5, 4, "1.5 to 4");
  const auto porosity = within(reader, "porosity", 0.1, 0.9, "0.1 to 0.9");
  auto further = read_samples(reader, problems);
  if (!gradation) return std::nullopt;
  return Soil{id,
              name,
              *gradation,
              liquid_limit,
              plasticity_index,
              dispersion,
              specific_gravity,
              porosity,
              std::move(further)};
}

void read_soil_and_filter(FieldReader& zone_reader, Zone& zone, Problems& problems) {
  zone.soil = zone_reader.optional_text("soil");
  const auto* json = zone_reader.optional("filter");
  if (json == nullptr) return;
  zone.filter = ZoneFilter{};
  if (json->is_string() && *json == "none") return;
  if (!json->is_array() || json->empty()) {
    zone_reader.report("not-a-filter", "Layers from the soil upward belong here.", "filter",
                       "\"none\", or [{\"kind\": \"granular\", …}, {\"kind\": \"geotextile\", …}]");
    return;
  }
  read_layers(*json, zone_reader.pointer() + "/filter", *zone.filter, problems);
}

Problems filter_reference_problems(const Site& site, const Zone& zone) {
  Problems problems;
  const std::string at = "/zones/" + zone.id;
  if (!zone.soil.empty() && !site.soils.contains(zone.soil)) {
    std::string allowed;
    for (const auto& [id, soil] : site.soils) allowed += (allowed.empty() ? "" : ", ") + id;
    problems.push_back({"no-such-item", fmt::format("No soil is called \"{}\".", zone.soil), "",
                        at + "/soil", allowed.empty() ? "there is no soil yet" : allowed});
  }
  if (!zone.filter) return problems;
  for (std::size_t i = 0; i < zone.filter->layers.size(); ++i) {
    const auto* layer = std::get_if<GranularFilter>(&zone.filter->layers[i]);
    if (layer == nullptr || site.materials.contains(layer->bedding) ||
        find_bedding(layer->bedding) != nullptr) {
      continue;
    }
    problems.push_back({"no-such-item",
                        fmt::format("No material or bedding is called \"{}\".", layer->bedding), "",
                        fmt::format("{}/filter/{}/bedding", at, i), known_beddings(site)});
  }
  return problems;
}

}  // namespace proofstone
