#include "piles/trial_tables.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <functional>
#include <set>

#include "piles/layer_factors.h"
#include "piles/trial_ratios.h"

namespace proofstone::piles {
namespace {

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

std::string name_of(SizesBy by) {
  switch (by) {
    case SizesBy::true_outlines:
      return "true";
    case SizesBy::network:
      return "network";
    case SizesBy::taps:
      return fmt::format("{} nodes each", screen_grid.columns * screen_grid.rows);
    case SizesBy::close_taps:
      return fmt::format("{} nodes each", close_grid.columns * close_grid.rows);
    case SizesBy::choosy_taps:
      break;
  }
  return fmt::format("{} nodes each, choosy", close_grid.columns * close_grid.rows);
}

std::string pool_head(const std::string& by) {
  return fmt::format(
      "| Photos together | {} | D15 | D50 | D85 | refused |\n|---|---|---|---|---|---|\n", by);
}

/// Whose factors turn what is seen into sizes of the pile.
enum class FactorsOf { engine, other_rocks, other_layer };

/// What so many photos of one view together say against the pile.
struct PoolRow {
  std::string name;
  std::size_t photos;
  SizesBy by;
  bool straight_on;
  bool oblique;
  FactorsOf factors = FactorsOf::engine;
};

/// Which photos of a pile a row takes, in their order.
std::vector<Photo> photos_of(const TriedPile& pile, const PoolRow& row) {
  std::vector<Photo> photos;
  for (const auto& picture : pile.pictures) {
    const bool asked = straight(pile, picture) ? row.straight_on : row.oblique;
    if (!picture.why_not.empty() || !asked) continue;
    photos.push_back(picture.photo_by(row.by));
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

/// What photos say of a pile by the factors of layers that all other rocks gave.
std::optional<SizesSaid> said_by_other_rocks(const TriedPile& pile,
                                             const std::vector<Photo>& photos,
                                             const LayerFactors& layers) {
  SizesSaid all;
  for (const int percent : tried_percents) {
    std::vector<PhotoCalibration> calibrations;
    for (const auto view : {PhotoView::straight_on, PhotoView::oblique}) {
      const auto factor = layers.without(&pile, view, percent);
      if (!factor) return std::nullopt;
      PhotoCalibration calibration;
      calibration.from = "other rocks";
      calibration.view = view;
      calibration.lies = pile.lies;
      calibration.of_tapped_stones = !photos.front().tapped.empty();
      calibration.d15 = calibration.d50 = calibration.d85 = Dimensionless::number(factor->ratio);
      calibration.error = Dimensionless::number(factor->error());
      calibrations.push_back(calibration);
    }
    const auto said = sizes_said(pile, photos, calibrations);
    if (!said) return std::nullopt;
    const auto size = said->sizes.find(percent);
    if (size != said->sizes.end()) all.sizes.insert(*size);
  }
  return all;
}

std::string pool_row(const std::vector<TriedPile>& piles, const PoolRow& row,
                     const LayerFactors& layers) {
  PoolErrors errors;
  const auto known_beside = of_same_rock(piles);
  for (std::size_t number = 0; number < piles.size(); ++number) {
    const TriedPile& pile = piles[number];
    std::vector<PhotoCalibration> calibrations;
    if (row.factors == FactorsOf::other_layer) {
      const TriedPile* known = known_beside[number];
      const auto photos = known == nullptr ? std::vector<Photo>{} : photos_of(*known, row);
      const auto calibration = photos.empty() ? std::nullopt : calibration_on(*known, photos);
      if (!calibration) continue;
      calibrations.push_back(*calibration);
    }
    const auto photos = photos_of(pile, row);
    for (std::size_t first = 0; first + row.photos <= photos.size(); first += row.photos) {
      const auto from = photos.begin() + static_cast<std::ptrdiff_t>(first);
      const std::vector<Photo> together{from, from + static_cast<std::ptrdiff_t>(row.photos)};
      errors.add(pile, row.factors == FactorsOf::other_rocks
                           ? said_by_other_rocks(pile, together, layers)
                           : sizes_said(pile, together, calibrations));
    }
  }
  return fmt::format("| {} | {} |{} {} |\n", row.name, name_of(row.by), errors.text(),
                     errors.refused);
}

}  // namespace

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

std::string pool_table(const std::vector<TriedPile>& piles, bool pairs_of_one_rock) {
  std::string text = pool_head("outlines");
  const LayerFactors layers(piles);
  const auto usual = pairs_of_one_rock ? FactorsOf::other_rocks : FactorsOf::engine;
  for (const auto by : {SizesBy::true_outlines, SizesBy::network}) {
    for (const PoolRow& row : {PoolRow{"one, straight on", 1, by, true, false, usual},
                               PoolRow{"one, oblique", 1, by, false, true, usual},
                               PoolRow{"four, straight on", 4, by, true, false, usual},
                               PoolRow{"four, oblique", 4, by, false, true, usual},
                               PoolRow{"eight, half and half", 8, by, true, true, usual}}) {
      text += pool_row(piles, row, layers);
    }
    if (!pairs_of_one_rock) continue;
    for (PoolRow row : {PoolRow{"one, straight on", 1, by, true, false},
                        PoolRow{"four, straight on", 4, by, true, false},
                        PoolRow{"four, oblique", 4, by, false, true}}) {
      row.name += ", calibrated";
      row.factors = FactorsOf::other_layer;
      text += pool_row(piles, row, layers);
    }
  }
  return text;
}

std::string tapped_table(const std::vector<TriedPile>& piles) {
  const LayerFactors layers(piles, SizesBy::taps);
  std::string text = layers.table() + "\n" + pool_head("taps");
  for (const auto factors : {FactorsOf::engine, FactorsOf::other_rocks}) {
    for (PoolRow row : {PoolRow{"one, straight on", 1, SizesBy::close_taps, true, false},
                        PoolRow{"one, straight on", 1, SizesBy::choosy_taps, true, false},
                        PoolRow{"one, oblique", 1, SizesBy::close_taps, false, true},
                        PoolRow{"three, straight on", 3, SizesBy::taps, true, false},
                        PoolRow{"three, oblique", 3, SizesBy::taps, false, true},
                        PoolRow{"eight, half and half", 8, SizesBy::taps, true, true}}) {
      row.factors = factors;
      if (factors == FactorsOf::other_rocks) row.name += ", by the other rocks";
      text += pool_row(piles, row, layers);
    }
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

}  // namespace proofstone::piles
