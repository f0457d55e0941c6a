#include "engine/vision/outline_check.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/vision/photo_scale.h"
#include "engine/vision/repeated_photos.h"
#include "engine/vision/size_factors.h"
#include "engine/vision/vision_sources.h"

namespace proofstone {
namespace {

constexpr int fewest_nodes = 5;
constexpr double look_error = 0.03;  ///< of ln size, of a stone that is looked at
constexpr double share_confidence = 0.95;

/// ln of the size of the stone at a node, as outlined and as looked at.
struct NodeSizes {
  double outlined = 0;
  double looked_at = 0;
  bool is_rock = true;
};

/// The outline round a node; of two the one that came last, as the screens show it.
const std::vector<PhotoPoint>* outline_at(const Photo& photo, PhotoPoint node) {
  const auto found = std::find_if(photo.outlines.rbegin(), photo.outlines.rend(),
                                  [node](const auto& outline) { return encloses(outline, node); });
  return found == photo.outlines.rend() ? nullptr : &*found;
}

class Checking {
 public:
  explicit Checking(const PhotoSet& set) : set_(set) {}

  void add(const CheckedOutline& node, const std::string& where) {
    if (node.photo < 1 || static_cast<std::size_t>(node.photo) > set_.photos.size()) {
      wrong("no-photo", "There is no photo of that number.", where,
            fmt::format("1 to {}", set_.photos.size()));
      return;
    }
    const auto index = static_cast<std::size_t>(node.photo - 1);
    const auto& photo = set_.photos[index];
    const auto& tapped = node.stone;
    for (const auto point :
         {tapped.node, tapped.long_from, tapped.long_to, tapped.short_from, tapped.short_to}) {
      if (is_on_picture(point, photo.size)) continue;
      wrong("outside-picture", "A tap is outside the picture.", where, "taps on the picture");
      return;
    }
    nodes_.push_back({where, {static_cast<double>(node.photo), tapped.node.x, tapped.node.y}});
    if (node.answer == CheckAnswer::mostly_hidden) {
      ++check.mostly_hidden;
      return;
    }
    const auto* outline = outline_at(photo, tapped.node);
    if (outline == nullptr) {
      ++check.without_outline;
      return;
    }
    auto unread = Steps::unread();
    const auto scale = photo_scale(photo, photo_name(index), unread);
    if (!scale) {
      problems.insert(problems.end(), scale.problems().begin(), scale.problems().end());
      return;
    }
    measure_node(node, *outline, scale->pixel_at(tapped.node.y).meters(), where);
  }

  void finish() { report_repeated(nodes_, problems); }

  OutlineCheck check;
  std::vector<NodeSizes> sizes;
  Problems problems;

 private:
  void wrong(const char* code, const char* what, const std::string& where,
             const std::string& allowed) {
    problems.push_back({code, what, "", where, allowed});
  }

  void measure_node(const CheckedOutline& node, const std::vector<PhotoPoint>& outline,
                    double pixel, const std::string& where) {
    const auto sides = tightest_rectangle(outline);
    const double outlined = std::sqrt(sides.longest * sides.shortest) * pixel;
    if (!(outlined > 0)) {
      wrong("no-area", "Its outline has no area.", where, "outlines of stones");
      return;
    }
    NodeSizes one{std::log(outlined), std::log(outlined)};
    switch (node.answer) {
      case CheckAnswer::right:
        ++check.right;
        break;
      case CheckAnswer::not_rock:
        ++check.not_rock;
        one.is_rock = false;
        break;
      default: {
        const double along = pixels_between(node.stone.long_from, node.stone.long_to);
        const double across = pixels_between(node.stone.short_from, node.stone.short_to);
        if (!(along >= 1 && across >= 1)) {
          wrong("no-area", "Both ends of an axis are at one place.", where,
                "two taps at the ends of each visible axis");
          return;
        }
        ++check.corrected;
        one.looked_at = std::log(std::sqrt(along * across) * pixel);
      }
    }
    sizes.push_back(one);
  }

  const PhotoSet& set_;
  std::vector<DrawnThing> nodes_;
};

/// The difference of both means, and the variance that each node's part in it shows.
void compare(const std::vector<NodeSizes>& sizes, OutlineCheck& check) {
  const double n = static_cast<double>(sizes.size());
  const double rock = n - check.not_rock;
  double outlined = 0;
  double looked_at = 0;
  for (const auto& one : sizes) {
    outlined += one.outlined / n;
    if (one.is_rock) looked_at += one.looked_at / rock;
  }
  double squares = 0;
  for (const auto& one : sizes) {
    const double part =
        (one.is_rock ? (one.looked_at - looked_at) / rock : 0) - (one.outlined - outlined) / n;
    squares += part * part;
  }
  check.ratio = std::exp(looked_at - outlined);
  const double quantile = student_quantile_above((1 - interval_confidence) / 2, n - 1) /
                          normal_quantile(1 - (1 - interval_confidence) / 2);
  check.error = quantile * std::sqrt(n / (n - 1) * squares + look_error * look_error / rock);
}

/// The largest share of which so few nodes would be wrong by chance.
double share_wrong_at_most(const OutlineCheck& check) {
  const double wrong = check.corrected + check.not_rock;
  const double n = check.looked_at();
  double low = 0;
  double high = 100;
  for (int halving = 0; halving < 50; ++halving) {
    const double middle = (low + high) / 2;
    (chance_of_at_most(wrong, n, middle) > 1 - share_confidence ? low : high) = middle;
  }
  return high / 100;
}

}  // namespace

double OutlineCheck::low() const {
  return ratio * std::exp(-normal_quantile(1 - (1 - interval_confidence) / 2) * error);
}

double OutlineCheck::high() const {
  return ratio * std::exp(normal_quantile(1 - (1 - interval_confidence) / 2) * error);
}

Expected<OutlineCheck> check_outlines(const PhotoSet& set, Steps& steps) {
  Checking checking(set);
  for (std::size_t i = 0; i < set.check.size(); ++i) {
    checking.add(set.check[i], fmt::format("check, node {}", i + 1));
  }
  checking.finish();
  if (!checking.problems.empty()) return checking.problems;
  auto& check = checking.check;
  if (check.looked_at() < fewest_nodes || check.looked_at() - check.not_rock < 1) {
    return Problem{"too-few-nodes",
                   fmt::format("{} nodes of the check tell something.", check.looked_at()), "",
                   "check", fmt::format("{} or more, on rock", fewest_nodes)};
  }
  compare(checking.sizes, check);
  check.wrong_at_most = share_wrong_at_most(check);
  const auto count = [](int number) { return measure(static_cast<double>(number)); };
  steps.given("n right", "outlines that are right", count(check.right), "check");
  steps.given("n other", "stones whose axes were tapped instead", count(check.corrected), "check");
  steps.given("n no rock", "outlines of no rock", count(check.not_rock), "check");
  steps.given("n hidden", "stones mostly hidden, left out", count(check.mostly_hidden), "check");
  steps.given("n none", "nodes that no outline goes round, left out", count(check.without_outline),
              "check");
  steps.computed("R", "mean size as looked at over that as outlined",
                 "exp(mean ln √(long·short) looked at − mean ln √(long·short) outlined)",
                 measure(check.ratio));
  steps.computed("e_R", "error of the check, standard deviation of ln R",
                 "scatter of the nodes (Student's t) and 3 % for each stone looked at",
                 measure(check.error), rendered_piles("assisted count").sentence());
  steps.computed("p wrong", "share of the rock seen that may be outlined wrongly, 95 % confidence",
                 "limit of a proportion (Clopper and Pearson)", measure(check.wrong_at_most));
  return check;
}

}  // namespace proofstone
