#include "report/method_plot.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>
#include <vector>

#include "engine/rock/embedded_catalog.h"
#include "report/plot_axes.h"

namespace proofstone {
namespace {

using nlohmann::json;

constexpr int points = 61;

/// What is drawn, in the published units of the method.
struct PlottedCurve {
  const InputDescription* input = nullptr;
  const OutputDescription* output = nullptr;
  std::vector<std::vector<PlotPlace>> pieces;  ///< broken where the method has no answer
  PlotPlace base;
};

/// The inputs of the first case of the method's table that has values.
std::optional<json> first_inputs(const Method& method) {
  for (const auto& file : embedded_checks()) {
    if (file.name != method.description().id + ".json") continue;
    const auto table = json::parse(file.text, nullptr, false);
    if (table.is_discarded()) return std::nullopt;
    for (const auto& one : table["cases"]) {
      if (one.contains("expect") && method.evaluate(one["inputs"])) return one["inputs"];
    }
  }
  return std::nullopt;
}

/// A size of rock before anything else.
const OutputDescription* main_output(const MethodDescription& about) {
  for (const auto& output : about.outputs) {
    if (output.length_use == LengthUse::rock) return &output;
  }
  return about.outputs.empty() ? nullptr : &about.outputs.front();
}

/// How well an input tells the story of a method: what attacks the rock before the rock itself.
int rank(const InputDescription& input) {
  switch (input.kind) {
    case QuantityKind::velocity:
      return 0;
    case QuantityKind::discharge:
    case QuantityKind::unit_discharge:
      return 1;
    case QuantityKind::stress:
      return 2;
    default:
      return input.required ? 3 : 4;
  }
}

std::vector<const InputDescription*> variables(const MethodDescription& about, const json& inputs) {
  std::vector<const InputDescription*> list;
  for (const auto& input : about.inputs) {
    if (input.form == InputForm::quantity && inputs.contains(input.key)) list.push_back(&input);
  }
  // Of one rank, in the order of the description, whose elements the pointers point to.
  std::sort(list.begin(), list.end(), [](const auto* a, const auto* b) {
    return rank(*a) != rank(*b) ? rank(*a) < rank(*b) : a < b;
  });
  return list;
}

std::optional<PlottedCurve> curve_of(const VariedOutput& varied, const InputDescription& input,
                                     const OutputDescription& output) {
  const auto held = varied.inputs().front().value_si;
  if (!held || !(*held > 0)) return std::nullopt;
  const auto base = varied.at(std::vector<double>{*held});
  if (!base || !std::isfinite(*base)) return std::nullopt;
  PlottedCurve curve;
  curve.input = &input;
  curve.output = &output;
  curve.base = {*held / input.unit.si_factor, *base / output.unit.si_factor};
  bool broken = true;
  bool moves = false;
  for (int i = 0; i < points; ++i) {
    const double x = *held * (0.5 + 1.5 * i / (points - 1));
    const auto y = varied.at(std::vector<double>{x});
    if (!y || !std::isfinite(*y)) {
      broken = true;
      continue;
    }
    if (broken) curve.pieces.emplace_back();
    broken = false;
    curve.pieces.back().push_back({x / input.unit.si_factor, *y / output.unit.si_factor});
    moves = moves || std::abs(*y - *base) > 1e-9 * std::abs(*base);
  }
  if (!moves) return std::nullopt;
  return curve;
}

std::optional<PlottedCurve> best_curve(const Method& method) {
  const auto inputs = first_inputs(method);
  const auto& about = method.description();
  const auto* output = main_output(about);
  if (!inputs || output == nullptr) return std::nullopt;
  for (const auto* input : variables(about, *inputs)) {
    const auto varied = method.vary(*inputs, {input->key}, output->key);
    if (!varied) continue;
    if (auto curve = curve_of(**varied, *input, *output)) return curve;
  }
  return std::nullopt;
}

PlotAxes axes_of(const PlottedCurve& curve, double width) {
  PlotAxes axes{curve.base.x / 2, 2 * curve.base.x, std::min(0.0, curve.base.y),
                std::max(0.0, curve.base.y), width};
  for (const auto& piece : curve.pieces) {
    for (const auto& place : piece) {
      axes.y_low = std::min(axes.y_low, place.y);
      axes.y_high = std::max(axes.y_high, place.y);
    }
  }
  axes.y_high += 0.05 * (axes.y_high - axes.y_low);
  return axes;
}

std::string named(const std::string& symbol, const std::string& meaning, const Unit& unit) {
  std::string text = symbol.empty() ? meaning : symbol + ": " + meaning;
  constexpr std::size_t longest = 84;
  if (text.size() > longest) text = symbol.empty() ? text.substr(0, text.find(';')) : symbol;
  return unit.symbol.empty() ? text : text + " (" + std::string(unit.symbol) + ")";
}

}  // namespace

std::string method_plot(const Method& method, double width) {
  const auto curve = best_curve(method);
  if (!curve) return {};
  const auto& about = method.description();
  const PlotAxes axes = axes_of(*curve, width);
  SvgCanvas canvas("plot-" + about.id, width);
  canvas.rectangle({0, 0}, width, PlotAxes::height, {Ink::paper, 1, Ink::none, 1, {}, {}});
  draw_plot_axes(canvas, axes,
                 named(curve->output->symbol, curve->output->meaning, curve->output->unit),
                 named(curve->input->symbol, curve->input->meaning, curve->input->unit));
  for (const auto& piece : curve->pieces) {
    std::vector<PixelPoint> line;
    line.reserve(piece.size());
    for (const auto& place : piece) line.push_back(axes.at(place));
    canvas.polyline(line, {Ink::none, 1, Ink::river, 2.5, {}, {}});
  }
  canvas.circle(axes.at(curve->base), 5, {Ink::ochre, 1, Ink::paper, 1.5, {}, {}});
  const auto description = fmt::format(
      "{} from half to twice the {} of the first check case, everything else held; the case is "
      "marked: {} at {}.",
      curve->output->key, curve->input->key,
      significant(curve->base.y, 4) + " " + std::string(curve->output->unit.symbol),
      significant(curve->base.x, 4) + " " + std::string(curve->input->unit.symbol));
  return canvas.finish(PlotAxes::height, "plot", about.title, description);
}

}  // namespace proofstone
