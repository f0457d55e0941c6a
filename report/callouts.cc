#include "report/callouts.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>
#include <vector>

#include "report/picture_style.h"
#include "report/text_width.h"

namespace proofstone {

namespace {

constexpr double callout_line_height = 17;
constexpr double gap = 7;
constexpr double badge = 9;  // radius

const Paint leader_halo{Ink::none, 1, Ink::paper, 3.5, {}, "leader-halo"};
const Paint leader{Ink::none, 1, Ink::ink, 1, {}, "leader"};
const Paint leader_end{Ink::ink, 1, Ink::paper, 0.75, {}, "leader"};

void draw_leader(SvgCanvas& canvas, PixelPoint from, PixelPoint to) {
  canvas.line(from, to, leader_halo);
  canvas.line(from, to, leader);
  canvas.circle(to, 2.5, leader_end);
}

void draw_badge(SvgCanvas& canvas, PixelPoint centre, std::size_t number) {
  canvas.circle(centre, badge, {Ink::paper, 1, Ink::ink, 1.25, {}, "badge"});
  canvas.text({centre.x, centre.y + 4}, fmt::format("{}", number),
              {11, TextAnchor::middle, Ink::ink, true, false, "badge"});
}

PixelBox badge_box(PixelPoint centre) {
  return {centre.x - badge - 2, centre.y - badge - 2, centre.x + badge + 2, centre.y + badge + 2};
}

/// Places for a number beside the place it means, the best first.
std::vector<PixelPoint> badge_places(const Callout& callout) {
  std::vector<PixelPoint> places;
  const auto add = [&](double away, double x, double y) {
    places.push_back({callout.at.x + away * x, callout.at.y + away * y});
  };
  if (callout.away.x != 0 || callout.away.y != 0) {
    for (const double away : {18.0, 22.0, 30.0}) add(away, callout.away.x, callout.away.y);
  }
  for (const double away : {22.0, 34.0, 48.0, 64.0, 82.0, 110.0}) {
    for (const auto& [x, y] :
         {std::pair(0.7, -0.7), std::pair(-0.7, -0.7), std::pair(0.7, 0.7), std::pair(-0.7, 0.7),
          std::pair(0.0, -1.0), std::pair(0.0, 1.0), std::pair(1.0, 0.0), std::pair(-1.0, 0.0)}) {
      add(away, x, y);
    }
  }
  return places;
}

/// A free place for a number; where there is none, one that is at least clear of other numbers.
PixelPoint badge_place(LabelPlacement& placement, const Callout& callout,
                       std::vector<PixelBox>& badges) {
  const auto clear_of_badges = [&](PixelPoint centre) {
    return std::none_of(badges.begin(), badges.end(),
                        [&](const PixelBox& other) { return badge_box(centre).overlaps(other); });
  };
  const auto places = badge_places(callout);
  const auto take = [&](PixelPoint centre) {
    badges.push_back(badge_box(centre));
    placement.take(badges.back());
    return centre;
  };
  for (const auto& centre : places) {
    if (placement.is_free(badge_box(centre))) return take(centre);
  }
  for (const auto& centre : places) {
    if (placement.holds(badge_box(centre)) && clear_of_badges(centre)) return take(centre);
  }
  return take(callout.at);
}

}  // namespace

double draw_callouts(SvgCanvas& canvas, const std::vector<Callout>& callouts,
                     LabelPlacement& placement, const CalloutList& list) {
  std::vector<PixelPoint> centres;
  std::vector<PixelBox> badges;
  for (const auto& callout : callouts) {
    centres.push_back(badge_place(placement, callout, badges));
  }
  for (std::size_t i = 0; i < callouts.size(); ++i) {
    draw_leader(canvas, centres[i], callouts[i].at);
  }
  for (std::size_t i = 0; i < callouts.size(); ++i) draw_badge(canvas, centres[i], i + 1);
  double y = list.top;
  for (std::size_t i = 0; i < callouts.size(); ++i) {
    draw_badge(canvas, {list.left + badge + 1, y + 9}, i + 1);
    for (const auto& line : wrapped(callouts[i].text, list.width - 30, font_size)) {
      canvas.text({list.left + 28, y + 13}, line,
                  {font_size, TextAnchor::start, Ink::ink, false, false, "callout"});
      y += callout_line_height;
    }
    y += gap;
  }
  return y;
}

}  // namespace proofstone
