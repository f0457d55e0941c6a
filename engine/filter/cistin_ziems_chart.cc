#include <algorithm>
#include <nlohmann/json.hpp>
#include <stdexcept>

#include "engine/filter/cistin_ziems.h"
#include "engine/rock/embedded_catalog.h"

namespace proofstone {
namespace {

bool rises(const std::vector<double>& axis) {
  return std::adjacent_find(axis.begin(), axis.end(), std::greater_equal<>()) == axis.end();
}

bool is_table(const CistinZiemsChart& chart) {
  const auto columns = chart.filter_uniformities.size();
  return chart.ratios.size() == chart.base_uniformities.size() &&
         std::all_of(chart.ratios.begin(), chart.ratios.end(),
                     [&](const auto& row) { return row.size() == columns; });
}

/// The data come with the engine and are tested with it, so a fault in them is a fault of ours.
CistinZiemsChart read() {
  for (const auto& file : embedded_catalog()) {
    if (file.name != "cistin-ziems-chart.json") continue;
    const auto data = nlohmann::json::parse(file.text);
    CistinZiemsChart chart;
    data.at("base_uniformities").get_to(chart.base_uniformities);
    data.at("filter_uniformities").get_to(chart.filter_uniformities);
    data.at("ratios").get_to(chart.ratios);
    if (!rises(chart.base_uniformities) || !rises(chart.filter_uniformities) || !is_table(chart)) {
      throw std::logic_error("catalog/cistin-ziems-chart.json is no table of rising uniformities");
    }
    return chart;
  }
  throw std::logic_error("catalog/cistin-ziems-chart.json is missing");
}

}  // namespace

const CistinZiemsChart& cistin_ziems_chart() {
  static const CistinZiemsChart chart = read();
  return chart;
}

}  // namespace proofstone
