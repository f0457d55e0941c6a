#include "piles/trial_page.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <map>
#include <set>

namespace proofstone::piles {
namespace {

/// Ratios as they come, in logarithms.
struct Ratios {
  std::vector<double> logs;
  void add(double ratio) { logs.push_back(std::log(ratio)); }

  double mean() const {
    double sum = 0;
    for (const double log : logs) sum += log;
    return sum / static_cast<double>(logs.size());
  }
  double deviation() const {
    double sum = 0;
    for (const double log : logs) sum += (log - mean()) * (log - mean());
    return std::sqrt(sum / static_cast<double>(logs.size() - 1));
  }
  /// The error that nine of ten keep within.
  double nine_of_ten() const {
    std::vector<double> errors;
    for (const double log : logs) errors.push_back(std::abs(std::exp(log) - 1));
    std::sort(errors.begin(), errors.end());
    return errors[static_cast<std::size_t>(0.9 * static_cast<double>(errors.size() - 1) + 0.5)];
  }
  /// "0.98 / 6 %"
  std::string text() const {
    if (logs.size() < 2) return "–";
    return fmt::format("{:.2f} / {:.0f} %", std::exp(mean()), 100 * deviation());
  }
};

using Keeps = std::function<bool(const TriedPile&, const TriedPicture&)>;

bool straight(const TriedPile&, const TriedPicture& picture) {
  return picture.true_photo.view == PhotoView::straight_on;
}
bool oblique(const TriedPile& pile, const TriedPicture& picture) {
  return !straight(pile, picture);
}

std::string outline_row(const std::vector<TriedPile>& piles, const std::string& name,
                        const Keeps& keeps) {
  Ratios sizes[3];
  double area = 0;
  double count = 0;
  int pictures = 0;
  for (const auto& pile : piles) {
    for (const auto& picture : pile.pictures) {
      if (!picture.why_not.empty() || !keeps(pile, picture)) continue;
      ++pictures;
      area += picture.matched_area;
      count += picture.matched_count;
      const auto truth = sizes_said(pile, {picture.true_photo});
      const auto found = sizes_said(pile, {picture.found_photo});
      if (!truth || !found) continue;
      for (std::size_t i = 0; i < tried_percents.size(); ++i) {
        const int percent = tried_percents[i];
        if (!truth->sizes.contains(percent) || !found->sizes.contains(percent)) continue;
        sizes[i].add(found->sizes.at(percent).as_photographed.meters() /
                     truth->sizes.at(percent).as_photographed.meters());
      }
    }
  }
  return fmt::format("| {} | {} | {:.0f} % | {:.0f} % | {} | {} | {} |\n", name, pictures,
                     100 * area / pictures, 100 * count / pictures, sizes[0].text(),
                     sizes[1].text(), sizes[2].text());
}

std::string outline_table(const std::vector<TriedPile>& piles) {
  std::string text =
      "| Pictures | number | area matched | stones matched | "
      "D15 | D50 | D85 |\n"
      "|---|---|---|---|---|---|---|\n";
  text += outline_row(piles, "all", [](const auto&, const auto&) { return true; });
  text += outline_row(piles, "straight on", straight);
  text += outline_row(piles, "oblique", oblique);
  text += outline_row(piles, "sun", [](const auto&, const auto& p) { return p.light == "sun"; });
  text +=
      outline_row(piles, "overcast", [](const auto&, const auto& p) { return p.light != "sun"; });
  text += outline_row(piles, "heavy dust", [](const auto&, const auto& p) { return p.dust > 0.6; });
  std::set<std::string> forms;
  for (const auto& pile : piles) forms.insert(pile.form);
  for (const auto& form : forms) {
    text += outline_row(piles, form,
                        [&form](const auto& pile, const auto&) { return pile.form == form; });
  }
  return text;
}

/// What so many photos of one view together say against the pile.
struct PoolRow {
  const char* name;
  std::size_t photos;
  bool found;
  bool straight_on;
  bool oblique;
  bool calibrated = false;  ///< on the other pile of the same rock
};

/// Which photos of a pile a row takes, in their order.
std::vector<Photo> photos_of(const TriedPile& pile, const PoolRow& row) {
  std::vector<Photo> photos;
  for (const auto& picture : pile.pictures) {
    const bool asked = straight(pile, picture) ? row.straight_on : row.oblique;
    if (!picture.why_not.empty() || !asked) continue;
    photos.push_back(row.found ? picture.found_photo : picture.true_photo);
  }
  return photos;
}

/// Errors of what photos say of a pile, and how often its interval held.
struct PoolErrors {
  std::array<Ratios, 3> sizes;
  std::array<int, 3> held{};
  int refused = 0;

  void add(const TriedPile& pile, const std::optional<SizesSaid>& said) {
    if (!said) {
      ++refused;
      return;
    }
    for (std::size_t i = 0; i < tried_percents.size(); ++i) {
      const auto size = said->sizes.find(tried_percents[i]);
      if (size == said->sizes.end()) continue;
      const double truth = pile.sizes.at(tried_percents[i]);
      sizes[i].add(size->second.size.meters() / truth);
      held[i] += size->second.low().meters() <= truth && truth <= size->second.high().meters();
    }
  }

  /// "0.98 / 6 %; 12 %; 90 % |" of each size.
  std::string text() const {
    std::string text;
    for (std::size_t i = 0; i < sizes.size(); ++i) {
      const auto n = static_cast<double>(sizes[i].logs.size());
      text += n < 2 ? " – |"
                    : fmt::format(" {}; {:.0f} %; {:.0f} % |", sizes[i].text(),
                                  100 * sizes[i].nine_of_ten(), 100 * held[i] / n);
    }
    return text;
  }
};

/// For each pile the one beside it that was made of the same rock by another seed; none where that
/// one is missing.
std::vector<const TriedPile*> of_same_rock(const std::vector<TriedPile>& piles) {
  std::vector<const TriedPile*> others(piles.size(), nullptr);
  for (std::size_t i = 0; i + 1 < piles.size(); ++i) {
    const bool same = piles[i].rock == piles[i + 1].rock && piles[i].form == piles[i + 1].form;
    if (!same || others[i] != nullptr) continue;
    others[i] = &piles[i + 1];
    others[i + 1] = &piles[i];
  }
  return others;
}

std::string pool_row(const std::vector<TriedPile>& piles, const PoolRow& row) {
  PoolErrors errors;
  const auto known_beside = of_same_rock(piles);
  for (std::size_t number = 0; number < piles.size(); ++number) {
    const TriedPile& pile = piles[number];
    std::vector<PhotoCalibration> calibrations;
    if (row.calibrated) {
      const TriedPile* known = known_beside[number];
      const auto photos = known == nullptr ? std::vector<Photo>{} : photos_of(*known, row);
      const auto calibration = photos.empty() ? std::nullopt : calibration_on(*known, photos);
      if (!calibration) continue;
      calibrations.push_back(*calibration);
    }
    const auto photos = photos_of(pile, row);
    for (std::size_t first = 0; first + row.photos <= photos.size(); first += row.photos) {
      const auto from = photos.begin() + static_cast<std::ptrdiff_t>(first);
      errors.add(pile, sizes_said(pile, {from, from + static_cast<std::ptrdiff_t>(row.photos)},
                                  calibrations));
    }
  }
  return fmt::format("| {} | {} |{} {} |\n", row.name, row.found ? "network" : "true",
                     errors.text(), errors.refused);
}

std::string pool_table(const std::vector<TriedPile>& piles, bool pairs_of_one_rock) {
  std::string text =
      "| Photos together | outlines | D15 | D50 | D85 | refused "
      "|\n|---|---|---|---|---|---|\n";
  for (const bool found : {false, true}) {
    for (const PoolRow& row : {PoolRow{"one, straight on", 1, found, true, false},
                               PoolRow{"one, oblique", 1, found, false, true},
                               PoolRow{"four, straight on", 4, found, true, false},
                               PoolRow{"four, oblique", 4, found, false, true},
                               PoolRow{"eight, half and half", 8, found, true, true}}) {
      text += pool_row(piles, row);
    }
    if (!pairs_of_one_rock) continue;
    text += pool_row(piles, {"one, straight on, calibrated", 1, found, true, false, true});
    text += pool_row(piles, {"four, straight on, calibrated", 4, found, true, false, true});
    text += pool_row(piles, {"four, oblique, calibrated", 4, found, false, true, true});
  }
  return text;
}

std::string form_table(const std::vector<TriedPile>& piles) {
  std::string text =
      "| Rock | pictures | true sizes in sight over the pile's "
      "| seen size over true size | "
      "together |\n|---|---|---|---|---|\n";
  std::set<std::string> forms;
  for (const auto& pile : piles) forms.insert(pile.form);
  for (const auto& form : forms) {
    Ratios in_sight;
    Ratios seen;
    Ratios together;
    for (const auto& pile : piles) {
      if (pile.form != form) continue;
      for (const auto& picture : pile.pictures) {
        if (!straight(pile, picture)) continue;
        const auto said = sizes_said(pile, {picture.true_photo});
        if (!said || !said->sizes.contains(50)) continue;
        const double whole = said->sizes.at(50).as_photographed.meters() / pile.sizes.at(50);
        in_sight.add(std::exp(picture.seen_over_pile[1]));
        seen.add(whole / std::exp(picture.seen_over_pile[1]));
        together.add(whole);
      }
    }
    text += fmt::format("| {} | {} | {} | {} | {} |\n", form, together.logs.size(), in_sight.text(),
                        seen.text(), together.text());
  }
  return text;
}

/// Those whose pictures lie side by side, or all others.
std::vector<TriedPile> those(const std::vector<TriedPile>& piles, bool apart) {
  std::vector<TriedPile> found;
  for (const auto& pile : piles) {
    if (pile.apart == apart) found.push_back(pile);
  }
  return found;
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
  return fmt::format("{} pictures were refused ({}).", all, reasons);
}

}  // namespace

std::string trial_page(const std::vector<TriedPile>& piles) {
  const auto guided = those(piles, true);
  const auto others = those(piles, false);
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
      "after the factors of view, which come from the first study and from 20 other piles, not "
      "from these.\n\n";
  if (!guided.empty()) {
    page += fmt::format(
        "## Photos taken as the screen asks\n\n"
        "{} layers, {} pictures of 1024 × 768, each 12 to 14 D50 wide (a fifth less where sizes "
        "spread far); the four square to the face lie side by side, and so do the four oblique "
        "ones. {}\n\n"
        "Against true outlines:\n\n{}\n"
        "Against the whole pile:\n\n{}\n"
        "*Calibrated*: the factors are those that photos of another pile of the same rock gave, "
        "whose sizes were known (`photo_calibrations`).\n\n",
        guided.size(), pictures_of(guided), refusals(guided), outline_table(guided),
        pool_table(guided, true));
  }
  page += fmt::format(
      "## Photos of all kinds\n\n"
      "{} smaller piles, a quarter of them heaps, {} pictures of 768 × 576, 3 to 13 D50 wide. Four "
      "pictures of one of these piles are together wider than its face, so they show much the same "
      "rock. {}\n\n"
      "Against true outlines:\n\n{}\n"
      "Against the whole pile:\n\n{}\n"
      "## Why true outlines do not give one factor\n\n"
      "All piles, straight on, true outlines, D50. The size seen is the diameter of a circle of "
      "the visible area; the true size is the intermediate axis (or the sphere of the same volume, "
      "where a class is stated in mass).\n\n{}\n"
      "Hulls of random points, of which the factors of the first study were found, are the leanest "
      "of forms and are seen smallest, as there; all other forms are seen larger. **The factor "
      "hangs on the form of the rock**, which no picture here tells: what outlines show of form "
      "was tried, and does not help on other piles (`piles/training/README.md`). The factors used "
      "are 1.10 times those of the study, and 7 % of error for the form goes into every interval. "
      "Calibrate on rock of the site that was weighed or taped (`photo_calibrations`), and that "
      "error is gone.\n\n"
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
