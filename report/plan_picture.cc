#include "report/plan_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/axis_ticks.h"
#include "report/label_placement.h"
#include "report/picture_legend.h"
#include "report/picture_style.h"
#include "report/text_width.h"

namespace proofstone {

namespace {

constexpr double margin = 26;

/// A place in metres.
struct Place {
  double x = 0;
  double y = 0;
};

std::vector<Place> places_of(const std::vector<PlanPoint>& points) {
  std::vector<Place> places;
  for (const auto& point : points) {
    const Place place{point.x.meters(), point.y.meters()};
    if (!std::isfinite(place.x) || !std::isfinite(place.y)) continue;
    const bool repeats = !places.empty() && std::abs(places.back().x - place.x) < 1e-9 &&
                         std::abs(places.back().y - place.y) < 1e-9;
    if (!repeats) places.push_back(place);
  }
  return places;
}

/// A line moved to its left by a distance (to its right where negative).
std::vector<Place> moved_left(const std::vector<Place>& line, double distance) {
  std::vector<Place> moved;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const Place& before = line[i > 0 ? i - 1 : 0];
    const Place& after = line[std::min(i + 1, line.size() - 1)];
    const double x = after.x - before.x;
    const double y = after.y - before.y;
    const double length = std::sqrt(x * x + y * y);
    if (!(length > 0)) continue;
    moved.push_back({line[i].x - y / length * distance, line[i].y + x / length * distance});
  }
  return moved;
}

/// Where the plan lies on the picture.
class PlanView {
 public:
  PlanView(const std::vector<Place>& edges, double width) {
    Place low = edges.front();
    Place high = edges.front();
    for (const Place& place : edges) {
      low = {std::min(low.x, place.x), std::min(low.y, place.y)};
      high = {std::max(high.x, place.x), std::max(high.y, place.y)};
    }
    const double across = std::max(high.x - low.x, 1e-3);
    const double up = std::max(high.y - low.y, 1e-3);
    const double highest = width < phone ? 360 : 460;
    scale_ = std::min((width - 2 * margin) / across, highest / up);
    left_ = low.x;
    top_ = high.y;
    offset_ = (width - across * scale_) / 2;
    height_ = up * scale_ + 2 * margin;
  }
  PixelPoint at(const Place& place) const {
    return {offset_ + (place.x - left_) * scale_, margin + (top_ - place.y) * scale_};
  }
  std::vector<PixelPoint> line(const std::vector<Place>& places) const {
    std::vector<PixelPoint> pixels;
    for (const Place& place : places) pixels.push_back(at(place));
    return pixels;
  }
  double scale() const { return scale_; }
  PlanFrame frame() const { return {left_ - offset_ / scale_, top_ + margin / scale_, 1 / scale_}; }
  double height() const { return height_; }

 private:
  double left_ = 0;
  double top_ = 0;
  double scale_ = 1;
  double offset_ = 0;
  double height_ = 0;
};

void draw_band(SvgCanvas& canvas, const PlanView& view, const std::vector<Place>& course,
               double width) {
  auto band = view.line(moved_left(course, width / 2));
  const auto right = view.line(moved_left(course, -width / 2));
  const Paint edge{Ink::none, 1, Ink::river, 1, {}, "water-edge"};
  canvas.polyline(band, edge);
  canvas.polyline(right, edge);
  band.insert(band.end(), right.rbegin(), right.rend());
  canvas.polygon(band, {Ink::river, 0.14, Ink::none, 0, {}, "water"});
  canvas.polyline(view.line(course), {Ink::none, 1, Ink::river, 1, "8 4 2 4", "centreline"});
}

/// Arrow heads along the centreline that point downstream.
void draw_arrows(SvgCanvas& canvas, const std::vector<PixelPoint>& course) {
  constexpr double apart = 150;
  double rest = apart / 2;
  for (std::size_t i = 1; i < course.size(); ++i) {
    const double x = course[i].x - course[i - 1].x;
    const double y = course[i].y - course[i - 1].y;
    const double length = std::sqrt(x * x + y * y);
    if (length < rest || !(length > 0)) {
      rest -= length;
      continue;
    }
    const PixelPoint tip{course[i].x, course[i].y};
    const double ux = x / length;
    const double uy = y / length;
    canvas.polygon({tip,
                    {tip.x - 11 * ux - 5 * uy, tip.y - 11 * uy + 5 * ux},
                    {tip.x - 11 * ux + 5 * uy, tip.y - 11 * uy - 5 * ux}},
                   {Ink::river, 1, Ink::none, 0, {}, "downstream"});
    rest = apart;
  }
}

void draw_north(SvgCanvas& canvas, PixelPoint foot) {
  canvas.line(foot, {foot.x, foot.y - 24}, {Ink::none, 1, Ink::ink, 1.5, {}, "north"});
  canvas.polygon({{foot.x, foot.y - 30}, {foot.x - 4, foot.y - 20}, {foot.x + 4, foot.y - 20}},
                 {Ink::ink, 1, Ink::none, 0, {}, "north"});
  canvas.text({foot.x + 8, foot.y - 16}, "N",
              {font_size, TextAnchor::start, Ink::ink, true, false, {}});
}

void draw_scale(SvgCanvas& canvas, const PlanView& view, UnitSystem units, PixelPoint left) {
  const Unit& unit = ground_unit(units);
  const double room = 0.3 * canvas.width() / view.scale() / unit.si_factor;
  auto ticks = even_ticks(0, room, 2);
  if (ticks.size() < 2) ticks = even_ticks(0, room, 4);
  if (ticks.size() < 2) return;
  const double length = ticks.back().value * unit.si_factor * view.scale();
  const Paint dark{Ink::ink, 1, Ink::ink, 1, {}, "scale-bar"};
  const Paint light{Ink::paper, 1, Ink::ink, 1, {}, "scale-bar"};
  canvas.rectangle({left.x + 0.5, left.y - 6}, length / 2, 6, dark);
  canvas.rectangle({left.x + 0.5 + length / 2, left.y - 6}, length / 2, 6, light);
  canvas.text({left.x + length + 8, left.y + 1.5},
              fmt::format("{} {}", ticks.back().label, unit.symbol),
              {font_size, TextAnchor::start, Ink::muted, false, false, {}});
}

/// Names beside their lines, where there is room; the others come back for the legend.
class Names {
 public:
  Names(SvgCanvas& canvas, double height)
      : canvas_(canvas), placement_({0, 0, canvas.width(), height}) {}
  void keep_clear_of(const std::vector<PixelPoint>& line, double thickness) {
    placement_.take_line(line, thickness);
  }
  bool write(const std::string& text, PixelPoint at, bool bold) {
    const double width = text_width(text, font_size) * (bold ? bold_width : 1);
    std::vector<LabelPlace> candidates;
    for (const double far : {14.0, 26.0, 40.0, 60.0}) {
      candidates.push_back({{at.x + far, at.y + 4.5}, TextAnchor::start});
      candidates.push_back({{at.x - far, at.y + 4.5}, TextAnchor::end});
      candidates.push_back({{at.x, at.y - far}, TextAnchor::middle});
      candidates.push_back({{at.x, at.y + far + 9}, TextAnchor::middle});
    }
    const auto place = placement_.place(width, font_size, candidates);
    if (!place) return false;
    canvas_.text(place->baseline, text,
                 {font_size, place->anchor, bold ? Ink::ink : Ink::muted, bold, true, {}});
    return true;
  }

 private:
  SvgCanvas& canvas_;
  LabelPlacement placement_;
};

LegendEntry legend_line(const std::string& text, const Paint& paint) {
  return {[paint](SvgCanvas& canvas, PixelPoint centre) {
            canvas.line({centre.x - 13, centre.y}, {centre.x + 13, centre.y}, paint);
          },
          text};
}

const Paint bend_paint{Ink::none, 1, Ink::ochre, 2.5, "7 4", "bend"};
const Paint zone_paint{Ink::none, 1, Ink::stone_3, 6, {}, "zone"};

/// Draws marks along the course and names them; a name without room goes into the legend.
void draw_marks(SvgCanvas& canvas, const PlanView& view,
                const std::vector<PlanPicture::Mark>& marks, const Paint& paint, bool bold,
                Names& names, std::vector<LegendEntry>& legend) {
  std::vector<std::pair<std::string, PixelPoint>> waiting;
  for (const auto& mark : marks) {
    const auto line = view.line(places_of(mark.line));
    if (line.size() < 2) continue;
    canvas.polyline(line, paint);
    names.keep_clear_of(line, 8);
    waiting.emplace_back(mark.label, line[line.size() / 2]);
  }
  for (const auto& [label, at] : waiting) {
    const std::string text = shortened(label, canvas.width() / 2, font_size);
    if (!names.write(text, at, bold)) legend.push_back(legend_line(label, paint));
  }
}

/// Nothing where no course and no water are known.
std::optional<PlanView> view_of(const PlanPicture& picture, double width) {
  const auto course = places_of(picture.course);
  const double band = picture.width.meters();
  if (course.size() < 2 || !std::isfinite(band) || !(band > 0)) return std::nullopt;
  auto edges = moved_left(course, band);
  const auto right = moved_left(course, -band);
  edges.insert(edges.end(), right.begin(), right.end());
  return PlanView(edges, width);
}

}  // namespace

std::optional<PlanFrame> frame_of(const PlanPicture& picture, double width) {
  const auto view = view_of(picture, width);
  if (!view) return std::nullopt;
  return view->frame();
}

std::string draw(const PlanPicture& picture, UnitSystem units, double width) {
  SvgCanvas canvas(fmt::format("{}-{}", picture.id, svg_number(width)), width);
  const auto plan = view_of(picture, width);
  if (!plan) {
    canvas.text({4, 18}, "No centreline to show.",
                {font_size, TextAnchor::start, Ink::muted, false, false, {}});
    return canvas.finish(28, "plan-picture", picture.title, picture.description);
  }
  const PlanView& view = *plan;
  const auto course = places_of(picture.course);
  const double band = picture.width.meters();
  draw_band(canvas, view, course, band);
  const auto line = view.line(course);
  draw_arrows(canvas, line);

  Names names(canvas, view.height());
  names.keep_clear_of(line, std::max(10.0, band * view.scale()));
  std::vector<LegendEntry> legend;
  draw_marks(canvas, view, picture.zones, zone_paint, true, names, legend);
  draw_marks(canvas, view, picture.bends, bend_paint, false, names, legend);
  const double below = view.height() + 24;
  draw_scale(canvas, view, units, {4, below});
  draw_north(canvas, {width - 24, below + 4});
  if (!picture.bends.empty()) {
    legend.insert(legend.begin(), legend_line("Outer bank of a bend", bend_paint));
  }
  if (!picture.zones.empty()) legend.insert(legend.begin(), legend_line("Zone", zone_paint));
  const double end = draw_legend(canvas, legend, 0, width - 4, below + 18);
  return canvas.finish(end + 4, "plan-picture", picture.title, picture.description);
}

}  // namespace proofstone
