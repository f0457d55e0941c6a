#include "report/typical_section_cover.h"

#include <algorithm>
#include <cmath>

namespace proofstone {
namespace {

void add_stakes(const TypicalSectionPicture::Cover& cover, const BuiltSlope& slope, double from,
                TypicalSectionDrawing& drawing) {
  const double spacing = cover.stake_spacing.meters();
  const double length = cover.stake_length.meters();
  const double top = -cover.topsoil.meters();
  constexpr int most = 200;
  if (!(length > 0) || cover.blanket_label.empty()) return;
  const double covered = slope.length() - from;
  const double step = spacing > 0 ? std::max(spacing, covered / most) : covered / 4;
  const double half = 0.06 * length;
  for (int i = 0; step * (i + 0.5) < covered; ++i) {
    const double here = from + step * (i + 0.5);
    drawing.shapes.push_back(
        {SectionRole::stake,
         true,
         {slope.at(std::max(from, here - half), top - 0.1 * length),
          slope.at(here + half, top - 0.1 * length), slope.at(here, top + 0.9 * length)}});
  }
  if (!cover.stakes_label.empty()) {
    const double here = from + step * (std::floor(0.3 * covered / step) + 0.5);
    drawing.notes.push_back(
        {SectionRole::stake, slope.at(here, top + 0.5 * length), cover.stakes_label});
  }
}

/// A trench in plan of the section: down from the surface, as wide as deep.
void add_trench(const BuiltSlope& slope, double here, double depth, double top, const char* text,
                TypicalSectionDrawing& drawing) {
  const double other = here + depth;
  drawing.shapes.push_back({SectionRole::trench, true, slope.area(here, other, top, top + depth)});
  drawing.notes.push_back(
      {SectionRole::trench, slope.at((here + other) / 2, top + depth / 2), text});
}

/// The trench behind the crest lies in level ground.
void add_top_trench(const TypicalSectionPicture::Cover& cover, TypicalSectionDrawing& drawing,
                    SectionPlace crest) {
  const double depth = cover.top_trench->meters();
  const double back = drawing.channel_on_right ? -1 : 1;
  const double near = crest.x + back * cover.back_from_crest.meters();
  const double far = near + back * depth;
  drawing.shapes.push_back(
      {SectionRole::blanket,
       false,
       {{crest.x, crest.z}, {near, crest.z}, {near, crest.z - depth}, {far, crest.z - depth}}});
  drawing.shapes.push_back(
      {SectionRole::trench,
       true,
       {{near, crest.z}, {far, crest.z}, {far, crest.z - depth}, {near, crest.z - depth}}});
  drawing.notes.push_back(
      {SectionRole::trench, {(near + far) / 2, crest.z - depth / 2}, "anchor trench at the top"});
}

}  // namespace

void add_cover(const TypicalSectionPicture& picture, const BuiltSlope& slope,
               TypicalSectionDrawing& drawing) {
  if (!picture.cover) return;
  const auto& cover = *picture.cover;
  const double from = slope.from_foot(cover.from.meters());
  const double covered = slope.length() - from;
  if (!(covered > 0)) return;
  const double soil = cover.topsoil.meters();
  if (soil > 0) {
    drawing.shapes.push_back(
        {SectionRole::topsoil, true, slope.area(from, slope.length(), -soil, 0)});
    drawing.notes.push_back(
        {SectionRole::topsoil, slope.at(from + 0.8 * covered, -soil / 2), cover.topsoil_label});
  }
  if (cover.water_edge_trench) {
    add_trench(slope, from, cover.water_edge_trench->meters(), -soil, "trench at the water's edge",
               drawing);
  }
  if (!cover.blanket_label.empty()) {
    auto line = slope.area(from, slope.length(), -soil, -soil);
    line.resize(line.size() / 2);
    drawing.shapes.push_back({SectionRole::blanket, false, std::move(line)});
    drawing.notes.push_back(
        {SectionRole::blanket, slope.at(from + 0.55 * covered, -soil), cover.blanket_label});
  }
  add_stakes(cover, slope, from, drawing);
  if (cover.top_trench) add_top_trench(cover, drawing, slope.at(slope.length(), -soil));
}

}  // namespace proofstone
