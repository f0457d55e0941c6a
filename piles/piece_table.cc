#include "piles/piece_table.h"

#include <fmt/format.h>
#include <fmt/ostream.h>

#include "engine/vision/photo_scale.h"
#include "piles/outline_form.h"

namespace proofstone::piles {
namespace {

void write_pieces_of(std::ostream& out, const std::string& pile, std::size_t number,
                     const Photo& photo) {
  Steps steps;
  const auto scale = photo_scale(photo, pile, steps);
  if (!scale) return;
  for (const auto& outline : photo.outlines) {
    const auto piece = piece_of_outline(outline, pile);
    if (!piece || is_cut_by_edge(*piece, photo.size)) continue;
    const double pixel = scale->pixel_at(piece->box.middle().y).meters();
    const auto form = form_of_outline(outline, piece->area);
    fmt::print(out, "{},{},{:.5g},{:.5g},{:.4f},{:.4f},{:.4f}\n", pile, number,
               equal_area_diameter(piece->area) * pixel,
               piece->area * pixel * pixel * edge_weight(*piece, photo.size), form.box_fill,
               form.elongation, form.solidity);
  }
}

}  // namespace

void write_pictures(std::ostream& out, const std::vector<TriedPile>& piles) {
  fmt::print(out,
             "pile,picture,form,lies,off_square,light,dust,matched_area,d15,d50,d85,"
             "true15,true50,true85,seen15,seen50,seen85\n");
  for (const auto& pile : piles) {
    for (std::size_t i = 0; i < pile.pictures.size(); ++i) {
      const auto& picture = pile.pictures[i];
      if (!picture.why_not.empty()) continue;
      fmt::print(out, "{},{},{},{},{:.4f},{},{:.3f},{:.4f}", pile.name, i + 1, pile.form,
                 pile.lies == RockLies::in_heap ? "heap" : "layer",
                 picture.found_photo.off_square->radians(), picture.light, picture.dust,
                 picture.matched_area);
      for (const int percent : tried_percents) {
        fmt::print(out, ",{:.5g}", pile.sizes.at(percent));
      }
      const auto truth = sizes_said(pile, {picture.true_photo});
      for (const int percent : tried_percents) {
        const bool said = truth && truth->sizes.contains(percent);
        fmt::print(out, ",{:.5g}", said ? truth->sizes.at(percent).as_photographed.meters() : 0.0);
      }
      for (const double seen : picture.seen_over_pile) fmt::print(out, ",{:.5g}", seen);
      fmt::print(out, "\n");
    }
  }
}

void write_pieces(std::ostream& out, const std::vector<TriedPile>& piles) {
  fmt::print(out, "pile,picture,size,weight,box_fill,elongation,solidity\n");
  for (const auto& pile : piles) {
    for (std::size_t i = 0; i < pile.pictures.size(); ++i) {
      const auto& picture = pile.pictures[i];
      if (picture.why_not.empty()) write_pieces_of(out, pile.name, i + 1, picture.found_photo);
    }
  }
}

}  // namespace proofstone::piles
