#include "piles/trial_page.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <iterator>
#include <map>

#include "piles/layer_factors.h"
#include "piles/trial_tables.h"

namespace proofstone::piles {
namespace {

template <class Holds>
std::vector<TriedPile> those(const std::vector<TriedPile>& piles, Holds holds) {
  std::vector<TriedPile> found;
  std::copy_if(piles.begin(), piles.end(), std::back_inserter(found), holds);
  return found;
}

bool side_by_side(const TriedPile& pile) { return pile.apart; }

bool was_tapped(const TriedPile& pile) {
  return std::all_of(pile.pictures.begin(), pile.pictures.end(),
                     [](const TriedPicture& picture) { return !picture.taps.empty(); });
}

std::size_t pictures_of(const std::vector<TriedPile>& piles) {
  std::size_t pictures = 0;
  for (const auto& pile : piles) pictures += pile.pictures.size();
  return pictures;
}

/// "8 pictures were refused (8 of them as `no-rock`)", or that none was.
std::string refusals(const std::vector<TriedPile>& piles) {
  std::map<std::string, int> refused;
  int all = 0;
  for (const auto& pile : piles) {
    for (const auto& picture : pile.pictures) {
      if (picture.why_not.empty()) continue;
      ++all;
      ++refused[picture.why_not];
    }
  }
  if (all == 0) return "No picture was refused.";
  std::string reasons;
  for (const auto& [code, count] : refused) {
    reasons += fmt::format("{}{} of them as `{}`", reasons.empty() ? "" : ", ", count, code);
  }
  return fmt::format("{} refused ({}).",
                     all == 1 ? "1 picture was" : fmt::format("{} pictures were", all), reasons);
}

}  // namespace

std::string trial_page(const std::vector<TriedPile>& piles) {
  const auto guided = those(piles, side_by_side);
  const auto others = those(piles, std::not_fn(side_by_side));
  std::string page =
      "# Stones outlined on photographs\n\n"
      "How well are stones found on a photograph, and what do they say of the pile? The network "
      "was trained on rendered piles (`piles/training/README.md`) and is tried here on others that "
      "it never saw, in pictures as a phone keeps them, half straight on and half oblique, with "
      "the exact scale. **Nothing here was checked against real rock of known size.** The page is "
      "written by `piles trial`.\n\n"
      "Entries are the mean of the ratio and the standard deviation of its logarithm; against the "
      "pile also the error that nine of ten keep within, and how often the stated 90 % interval "
      "holds. *Matched*: the true stone and what was found share more than half of what both "
      "cover. *Refused* counts sets with fewer than 50 whole stones, stones in one corner only, or "
      "contradicting marks. Sizes against true outlines are as photographed; against the pile, "
      "after the factors of view.\n\n";
  if (!guided.empty()) {
    page += fmt::format(
        "## Photos taken as the screen asks\n\n"
        "{} layers, {} pictures of 1024 × 768, each 12 to 14 D50 wide (a fifth less where sizes "
        "spread far); the four square to the face lie side by side, and so do the four oblique "
        "ones. {}\n\n"
        "Against true outlines:\n\n{}\n"
        "The factors of layers: size as photographed over that of the pile, outlined by the "
        "network. Each rock was laid twice; what differs from rock to rock is left when photos are "
        "many, the rest is sampling. The error left is that on a rock not seen yet (Student's t). "
        "Last, what the engine uses (`engine/vision/size_factors.cc`):\n\n{}\n"
        "Against the whole pile, **each rock by the factors that the other rocks gave**, so that "
        "none served to find its own:\n\n{}\n"
        "*Calibrated*: the factors are those that photos of another layer of the same rock gave, "
        "whose sizes were known (`photo_calibrations`).\n\n"
        "### Stones tapped by hand\n\n"
        "Instead of outlines: under each node of a grid somebody who sees the stone exactly taps "
        "both visible axes, 3 % wrong, and leaves out stones of which less than 35 % shows; "
        "*choosy* is who leaves out all of which less than half shows. The screens ask for 35 "
        "nodes on each photo. {} of the layers, in pairs of one rock. Nobody sat before a screen "
        "for it: hand and eye are not in these figures. How the factors scatter from rock to rock "
        "cannot be told from so few rocks and nodes; the errors used are those of outlines of the "
        "same rock.\n\n{}\n",
        guided.size(), pictures_of(guided), refusals(guided), outline_table(guided),
        LayerFactors(guided).table(), pool_table(guided, true), those(guided, was_tapped).size(),
        tapped_table(those(guided, was_tapped)));
  }
  page += fmt::format(
      "## Photos of all kinds\n\n"
      "{} smaller piles, a quarter of them heaps, {} pictures of 768 × 576, 3 to 13 D50 wide. Four "
      "pictures of one of these piles are together wider than its face, so they show much the same "
      "rock, and the intervals, which take them for four looks, are too narrow. {}\n\n"
      "Against true outlines:\n\n{}\n"
      "Against the whole pile:\n\n{}\n"
      "## Why true outlines do not give one factor\n\n"
      "All piles, straight on, true outlines, D50. The size seen is the diameter of a circle of "
      "the visible area; the true size is the intermediate axis (or the sphere of the same volume, "
      "where a class is stated in mass).\n\n{}\n"
      "Hulls of random points, of which the factors of the first study were found, are the leanest "
      "of forms and are seen smallest, as there; all other forms are seen larger. **The factor "
      "hangs on the form of the rock**, which no picture here tells: what outlines show of form "
      "was tried, and does not help on other piles (`piles/training/README.md`). The factors of "
      "heaps are 1.10 times those of the study, and 7 % of error for the form goes into their "
      "intervals; those of layers are the ones above. Calibrate on rock of the site that was "
      "weighed or taped (`photo_calibrations`), and that error is gone.\n\n"
      "## A real photograph\n\n"
      "The one real photograph of loose stone at hand, gravel of unknown size (CC0), is outlined "
      "in the tests: more than 900 stones, the median by area 16.5 to 20.5 pixels and the same "
      "within 10 % when a part of it is enlarged twice. Drawn walls, pages and lawns are refused "
      "there.\n",
      others.size(), pictures_of(others), refusals(others), outline_table(others),
      pool_table(others, false), form_table(piles));
  return page;
}

}  // namespace proofstone::piles
