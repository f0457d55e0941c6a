#include "report/gradation_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <tuple>

#include "engine/quantity/measure.h"
#include "report/axis_ticks.h"
#include "report/label_placement.h"
#include "report/outcome_mark.h"
#include "report/picture_legend.h"
#include "report/picture_style.h"
#include "report/text_width.h"

namespace proofstone {

namespace {

/// A point of a curve in numbers: size in the unit shown, percent smaller.
struct CurvePoint {
  double size = 0;
  double percent = 0;
};

using Curve = std::vector<CurvePoint>;

bool can_be_drawn(double size, double percent) {
  return std::isfinite(size) && size > 0 && std::isfinite(percent);
}

double percent_in_picture(double percent) { return std::clamp(percent, 0.0, 100.0); }

Curve curve_of(const std::vector<GradationPoint>& points, const Unit& unit) {
  Curve curve;
  for (const auto& point : points) {
    const double size = point.size.in(unit);
    if (can_be_drawn(size, point.percent_smaller)) {
      curve.push_back({size, percent_in_picture(point.percent_smaller)});
    }
  }
  return curve;
}

/// The measured curve with the curves that limit it.
struct MeasuredCurves {
  Curve low;
  Curve middle;
  Curve high;
};

MeasuredCurves measured_curves(const std::vector<ConfidencePoint>& points, const Unit& unit) {
  MeasuredCurves curves;
  for (const auto& point : points) {
    const double size = point.size.in(unit);
    if (!can_be_drawn(size, point.percent)) continue;
    const auto end = [&](double limit) {
      return CurvePoint{size, percent_in_picture(std::isfinite(limit) ? limit : point.percent)};
    };
    curves.low.push_back(end(point.interval.low));
    curves.middle.push_back(end(point.percent));
    curves.high.push_back(end(point.interval.high));
  }
  return curves;
}

struct RequiredMark {
  std::string text;  ///< "USACE bank and bed: D30 at least 9.2 in, meets"
  CurvePoint at;
  Outcome outcome = Outcome::not_yet_known;
};

/// Everything of a picture in numbers that can be drawn.
struct Content {
  Curve coarse;
  Curve fine;
  MeasuredCurves measured;
  std::string measured_name;
  bool has_limits = true;  ///< of confidence, about the measured curve
  std::vector<std::pair<std::string, Curve>> looks;
  std::vector<RequiredMark> required;
};

Content content_of(const GradationPicture& picture, UnitSystem units) {
  const Unit& unit = stone_size_unit(units);
  Content content;
  content.coarse = curve_of(picture.coarse_limit, unit);
  content.fine = curve_of(picture.fine_limit, unit);
  content.measured = measured_curves(picture.measured, unit);
  content.measured_name = fmt::format("Measured, with {} % confidence limits",
                                      significant(100 * picture.confidence, 3));
  for (const auto& look : picture.looks) {
    auto curve = curve_of(look.points, unit);
    if (!curve.empty()) content.looks.emplace_back(look.name, std::move(curve));
  }
  for (const auto& required : picture.required) {
    const double size = required.size.in(unit);
    if (!can_be_drawn(size, required.percent)) continue;
    content.required.push_back(
        {fmt::format("{}: D{} ≥ {}, {}", required.label, significant(required.percent, 3),
                     display(measure(required.size), units, LengthUse::rock).text,
                     outcome_phrase(required.outcome)),
         {size, percent_in_picture(required.percent)},
         required.outcome});
  }
  return content;
}

/// Where sizes and percents lie on the picture.
struct GradationAxes {
  double left = 0;
  double right = 0;
  double top = 0;
  double bottom = 0;
  double smallest = 1;
  double largest = 10;

  double x(double size) const {
    const double share = std::log(size / smallest) / std::log(largest / smallest);
    return left + std::clamp(share, 0.0, 1.0) * (right - left);
  }
  double y(double percent) const { return bottom - percent / 100 * (bottom - top); }
  PixelPoint at(const CurvePoint& point) const { return {x(point.size), y(point.percent)}; }
  std::vector<PixelPoint> line(const Curve& curve) const {
    std::vector<PixelPoint> points;
    for (const auto& point : curve) points.push_back(at(point));
    return points;
  }
};

void set_size_range(GradationAxes& axes, const Content& content, UnitSystem units) {
  std::vector<double> sizes;
  const auto add = [&](const Curve& curve) {
    for (const auto& point : curve) sizes.push_back(point.size);
  };
  add(content.coarse);
  add(content.fine);
  add(content.measured.middle);
  for (const auto& [name, curve] : content.looks) add(curve);
  for (const auto& mark : content.required) sizes.push_back(mark.at.size);
  if (sizes.empty()) {
    sizes = units == UnitSystem::si ? std::vector<double>{50, 1000} : std::vector<double>{2, 36};
  }
  const auto [low, high] = std::minmax_element(sizes.begin(), sizes.end());
  constexpr double margin = 1.15;
  axes.smallest = *low / margin;
  axes.largest = *high * margin;
  // At least a factor of four, so that a single size still stands on a readable axis.
  const double widen = std::sqrt(std::max(1.0, 4 * axes.smallest / axes.largest));
  axes.smallest /= widen;
  axes.largest *= widen;
}

void draw_gradation_axes(SvgCanvas& canvas, const GradationAxes& axes, UnitSystem units) {
  const TextStyle percent_style{font_size, TextAnchor::end, Ink::muted, false, false, {}};
  for (const double percent : {0.0, 15.0, 30.0, 50.0, 70.0, 85.0, 100.0}) {
    const double y = axes.y(percent);
    canvas.line({axes.left, y}, {axes.right, y},
                {Ink::none, 1, Ink::line, percent > 0 ? 1 : 1.5, {}, "grid"});
    canvas.text({axes.left - 6, y + 4.5}, fmt::format("{}", percent), percent_style);
  }
  canvas.text({axes.left - 34, axes.top - 14}, "Percent smaller by mass",
              {font_size, TextAnchor::start, Ink::muted, false, false, {}});

  auto ticks = stone_size_ticks(axes.smallest, axes.largest, units);
  if (ticks.empty()) ticks = even_ticks(axes.smallest, axes.largest, 5);
  for (const auto& tick : ticks) {
    const double x = axes.x(tick.value);
    canvas.line({x, axes.top}, {x, axes.bottom + 4}, {Ink::none, 1, Ink::line, 1, {}, "grid"});
  }
  std::sort(ticks.begin(), ticks.end(), [](const AxisTick& a, const AxisTick& b) {
    return std::tie(a.rank, a.value) < std::tie(b.rank, b.value);
  });
  LabelPlacement labels({0, axes.bottom, canvas.width(), axes.bottom + 24});
  for (const auto& tick : ticks) {
    const PixelPoint baseline{axes.x(tick.value), axes.bottom + 18};
    const double room = text_width(tick.label, font_size) + 8;
    if (!labels.place(room, font_size, {{baseline, TextAnchor::middle}})) continue;
    canvas.text(baseline, tick.label,
                {font_size, TextAnchor::middle, Ink::muted, false, false, {}});
  }
  canvas.text({axes.right, axes.bottom + 37},
              fmt::format("Stone size, {}", stone_size_unit(units).symbol),
              {font_size, TextAnchor::end, Ink::muted, false, false, {}});
}

/// The area between a curve and another of the same direction.
std::vector<PixelPoint> area_between(std::vector<PixelPoint> one, std::vector<PixelPoint> other) {
  one.insert(one.end(), other.rbegin(), other.rend());
  return one;
}

/// The area between the limits of the band. Where one of them says nothing any more, above the last
/// percent of the fine limit or below the first of the coarse one, the area goes on to the percent
/// at which the other ends.
std::vector<PixelPoint> band_outline(const GradationAxes& axes, const Content& content) {
  Curve fine = content.fine;
  Curve coarse = content.coarse;
  if (fine.size() < 2 || coarse.size() < 2) return {};
  if (coarse.back().percent > fine.back().percent) {
    fine.push_back({fine.back().size, coarse.back().percent});
  }
  if (fine.front().percent < coarse.front().percent) {
    coarse.insert(coarse.begin(), {coarse.front().size, fine.front().percent});
  }
  return area_between(axes.line(fine), axes.line(coarse));
}

const Paint band_area{Ink::stone_1, 1, Ink::none, 0, {}, "band"};
const Paint band_limit{Ink::none, 1, Ink::stone_3, 1.5, {}, "band-limit"};
const Paint confidence_area{Ink::river, 0.16, Ink::none, 0, {}, "confidence"};
const Paint confidence_limit{Ink::none, 1, Ink::river, 1, "4 3", "confidence-limit"};
const Paint measured_line{Ink::none, 1, Ink::river, 2.5, {}, "measured"};

/// Looks are told apart by dash and marker, in one quiet ink.
struct LookStyle {
  std::string_view dash;
  int corners;  ///< of the marker; 0 is a ring
};
LookStyle look_style(std::size_t index) {
  static const std::vector<LookStyle> styles{{"7 3", 0}, {"2 3", 3}, {"9 3 2 3", 4}, {"4 4", 5}};
  return styles[index % styles.size()];
}

void draw_look_marker(SvgCanvas& canvas, PixelPoint centre, const LookStyle& style) {
  const Paint paint{Ink::paper, 1, Ink::muted, 1.5, {}, "look-marker"};
  constexpr double radius = 4;
  if (style.corners == 0) {
    canvas.circle(centre, radius - 0.5, paint);
    return;
  }
  std::vector<PixelPoint> corners;
  for (int i = 0; i < style.corners; ++i) {
    const double angle = 2 * 3.14159265358979323846 * (i - 0.25 * style.corners) / style.corners;
    corners.push_back({centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)});
  }
  canvas.polygon(corners, paint);
}

void draw_look(SvgCanvas& canvas, const std::vector<PixelPoint>& line, const LookStyle& style) {
  canvas.polyline(line, {Ink::none, 1, Ink::muted, 1.25, style.dash, "look"});
  constexpr double apart = 34;
  const PixelPoint* last = nullptr;
  for (const auto& point : line) {
    if (last != nullptr && std::abs(point.x - last->x) + std::abs(point.y - last->y) < apart) {
      continue;
    }
    draw_look_marker(canvas, point, style);
    last = &point;
  }
}

/// The mark stands where the curve may just pass; the arrow points to the side where it must.
void draw_required(SvgCanvas& canvas, const GradationAxes& axes, const RequiredMark& mark) {
  const PixelPoint at = axes.at(mark.at);
  const double tip = std::min(at.x + 24, axes.right);
  canvas.path(fmt::format("M{0} {1}H{2}m-5 -4l5 4l-5 4", svg_number(at.x), svg_number(at.y),
                          svg_number(tip)),
              {Ink::none, 1, outcome_ink(mark.outcome), 2, {}, "coarse-side"});
  draw_outcome_mark(canvas, mark.outcome, at, mark_size);
}

/// Places beside points of a line, close to it first.
std::vector<LabelPlace> places_beside(const std::vector<PixelPoint>& line, bool on_left) {
  std::vector<LabelPlace> places;
  if (line.size() < 2) return places;
  for (const double gap : {9.0, 16.0, 26.0}) {
    for (const double share : {0.6, 0.5, 0.7, 0.4, 0.8, 0.3, 0.9, 0.2}) {
      const auto index = static_cast<std::size_t>(share * static_cast<double>(line.size() - 1));
      const PixelPoint from = line[index];
      const PixelPoint to = line[std::min(index + 1, line.size() - 1)];
      const PixelPoint middle{(from.x + to.x) / 2, (from.y + to.y) / 2 + 4};
      places.push_back(on_left ? LabelPlace{{middle.x - gap, middle.y}, TextAnchor::end}
                               : LabelPlace{{middle.x + gap, middle.y}, TextAnchor::start});
    }
  }
  return places;
}

std::vector<LabelPlace> places_round(PixelPoint at) {
  std::vector<LabelPlace> places;
  for (const double dy : {4.0, 20.0, -14.0, 36.0, -30.0}) {
    const double aside = std::abs(dy - 4) < 1 ? 30 : 8;
    places.push_back({{at.x + aside, at.y + dy}, TextAnchor::start});
    places.push_back({{at.x - (aside > 20 ? 14 : aside), at.y + dy}, TextAnchor::end});
  }
  return places;
}

/// Names what it can beside the thing itself; the rest goes into the legend.
class DirectLabels {
 public:
  DirectLabels(SvgCanvas& canvas, const GradationAxes& axes, const Content& content,
               bool room_for_words)
      : canvas_(canvas),
        placement_({axes.left, axes.top, axes.right, axes.bottom}),
        room_for_words_(room_for_words) {
    const auto take = [&](const Curve& curve) { placement_.take_line(axes.line(curve), 4); };
    take(content.coarse);
    take(content.fine);
    take(content.measured.low);
    take(content.measured.middle);
    take(content.measured.high);
    for (const auto& [name, curve] : content.looks) take(curve);
    for (const auto& mark : content.required) {
      const PixelPoint at = axes.at(mark.at);
      placement_.take(
          {at.x - mark_size / 2, at.y - mark_size / 2, at.x + 26, at.y + mark_size / 2});
    }
  }

  /// Whether the words found a place.
  bool try_words(const std::string& text, const std::vector<LabelPlace>& places, Ink ink) {
    return room_for_words_ && draw(text, places, ink);
  }

  /// The words of all marks beside them, or, where one of them finds no place, a number beside
  /// each. Whether it came to words.
  bool mark_all(const std::vector<RequiredMark>& marks, const GradationAxes& axes) {
    const LabelPlacement before = placement_;
    std::vector<LabelPlace> found;
    for (const auto& mark : marks) {
      const auto place =
          room_for_words_ ? place_of(mark.text, places_round(axes.at(mark.at))) : std::nullopt;
      if (!place) break;
      found.push_back(*place);
    }
    const bool words = found.size() == marks.size();
    if (!words) placement_ = before;
    for (std::size_t i = 0; i < marks.size(); ++i) {
      const Ink ink = outcome_ink(marks[i].outcome);
      if (words) {
        write(marks[i].text, found[i], ink);
        continue;
      }
      const std::string number = std::to_string(i + 1);
      const auto places = places_round(axes.at(marks[i].at));
      // A number without a free place stands at its first one: better crowded than missing.
      write(number, place_of(number, places).value_or(places.front()), ink);
    }
    return words;
  }

 private:
  std::optional<LabelPlace> place_of(const std::string& text,
                                     const std::vector<LabelPlace>& places) {
    return placement_.place(text_width(text, font_size) * bold_width, font_size, places);
  }
  void write(const std::string& text, const LabelPlace& place, Ink ink) {
    canvas_.text(place.baseline, text, {font_size, place.anchor, ink, true, true, "label"});
  }
  bool draw(const std::string& text, const std::vector<LabelPlace>& places, Ink ink) {
    const auto place = place_of(text, places);
    if (place) write(text, *place, ink);
    return place.has_value();
  }

  SvgCanvas& canvas_;
  LabelPlacement placement_;
  bool room_for_words_;
};

void draw_curves(SvgCanvas& canvas, const GradationAxes& axes, const Content& content) {
  canvas.polygon(band_outline(axes, content), band_area);
  canvas.polyline(axes.line(content.fine), band_limit);
  canvas.polyline(axes.line(content.coarse), band_limit);
  for (std::size_t i = 0; i < content.looks.size(); ++i) {
    draw_look(canvas, axes.line(content.looks[i].second), look_style(i));
  }
  const auto& measured = content.measured;
  if (content.has_limits) {
    canvas.polygon(area_between(axes.line(measured.high), axes.line(measured.low)),
                   confidence_area);
    canvas.polyline(axes.line(measured.high), confidence_limit);
    canvas.polyline(axes.line(measured.low), confidence_limit);
  }
  canvas.polyline(axes.line(measured.middle), measured_line);
  if (measured.middle.size() == 1) {
    canvas.circle(axes.at(measured.middle.front()), 4,
                  {Ink::river, 1, Ink::none, 0, {}, "measured"});
  }
}

LegendEntry numbered_mark(const RequiredMark& mark, std::size_t number) {
  return {[outcome = mark.outcome, number](SvgCanvas& to, PixelPoint centre) {
            draw_outcome_mark(to, outcome, {centre.x + 5, centre.y}, mark_size);
            to.text({centre.x - 6, centre.y + 4.5}, std::to_string(number),
                    {font_size, TextAnchor::end, outcome_ink(outcome), true, false, {}});
          },
          mark.text};
}

LegendEntry measured_entry(const Content& content) {
  return {[limits = content.has_limits](SvgCanvas& to, PixelPoint centre) {
            if (limits) {
              to.rectangle({centre.x - 14, centre.y - 7}, 28, 14, confidence_area);
              for (const double y : {centre.y - 7, centre.y + 7}) {
                to.line({centre.x - 14, y}, {centre.x + 14, y}, confidence_limit);
              }
            }
            to.line({centre.x - 14, centre.y}, {centre.x + 14, centre.y}, measured_line);
          },
          content.measured_name};
}

/// Labels in the picture where there is room; returns what is left for the legend.
std::vector<LegendEntry> label(SvgCanvas& canvas, const GradationPicture& picture,
                               const GradationAxes& axes, const Content& content) {
  constexpr double wide = 640;
  DirectLabels labels(canvas, axes, content, canvas.width() >= wide);
  std::vector<LegendEntry> legend;

  if (!labels.mark_all(content.required, axes)) {
    for (std::size_t i = 0; i < content.required.size(); ++i) {
      legend.push_back(numbered_mark(content.required[i], i + 1));
    }
  }
  if (!content.measured.middle.empty() &&
      !labels.try_words(content.measured_name,
                        places_beside(axes.line(content.measured.high), true), Ink::river)) {
    legend.push_back(measured_entry(content));
  }
  const bool has_band = content.coarse.size() > 1 || content.fine.size() > 1;
  if (has_band && !labels.try_words(picture.class_name,
                                    places_beside(axes.line(content.coarse), false), Ink::muted)) {
    legend.push_back({[](SvgCanvas& to, PixelPoint centre) {
                        to.rectangle({centre.x - 14, centre.y - 7}, 28, 14, band_area);
                        for (const double x : {centre.x - 14, centre.x + 14}) {
                          to.line({x, centre.y - 7}, {x, centre.y + 7}, band_limit);
                        }
                      },
                      fmt::format("Band of {}", picture.class_name)});
  }
  for (std::size_t i = 0; i < content.looks.size(); ++i) {
    legend.push_back({[style = look_style(i)](SvgCanvas& to, PixelPoint centre) {
                        to.line({centre.x - 14, centre.y}, {centre.x + 14, centre.y},
                                {Ink::none, 1, Ink::muted, 1.25, style.dash, "look"});
                        draw_look_marker(to, centre, style);
                      },
                      content.looks[i].first});
  }
  return legend;
}

std::string drawn(const GradationPicture& picture, const Content& content, UnitSystem units,
                  double width) {
  SvgCanvas canvas(fmt::format("{}-{}", picture.id, svg_number(width)), width);
  GradationAxes axes;
  axes.left = 40;
  axes.right = width - 12;
  axes.top = 34;
  axes.bottom = axes.top + std::clamp(width * 0.48, 250.0, 460.0);
  set_size_range(axes, content, units);

  draw_gradation_axes(canvas, axes, units);
  draw_curves(canvas, axes, content);
  for (const auto& mark : content.required) draw_required(canvas, axes, mark);
  const auto legend = label(canvas, picture, axes, content);
  double bottom = draw_legend(canvas, legend, 4, width - 4, axes.bottom + 50);
  if (!content.required.empty()) {
    for (const auto& line : wrapped("The curve must pass at a mark or on the side of its arrow.",
                                    width - 8, font_size)) {
      canvas.text({4, bottom + 14}, line,
                  {font_size, TextAnchor::start, Ink::muted, false, false, {}});
      bottom += 18;
    }
  }
  return canvas.finish(bottom + 4, "gradation-picture", picture.title, picture.description);
}

}  // namespace

std::string draw(const GradationPicture& picture, UnitSystem units, double width) {
  return drawn(picture, content_of(picture, units), units, width);
}

std::string draw_computed(const GradationPicture& picture, const std::string& curve,
                          UnitSystem units, double width) {
  Content content = content_of(picture, units);
  content.measured_name = curve;
  content.has_limits = false;
  return drawn(picture, content, units, width);
}

}  // namespace proofstone
