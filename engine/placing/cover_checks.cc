#include "engine/placing/placing_design.h"

namespace proofstone {
namespace {

PlacingCheck measured(const char* id, const char* title, CheckMeasure measure, Length asked,
                      const char* required, const char* design) {
  PlacingCheck check;
  check.id = id;
  check.title = title;
  check.measure = measure;
  check.required = required;
  check.design = design;
  check.asked = asked;
  check.how = "rule or tape at several places";
  check.fewest_points = 3;
  return check;
}

void add_soil(const DesignedCover& cover, const PlacingTolerances& tolerances,
              std::vector<PlacingCheck>& checks) {
  if (cover.topsoil) {
    auto soil = measured("topsoil", "Topsoil", CheckMeasure::at_least, *cover.topsoil,
                         "Spread over filled rock, loose enough for roots, to its thickness",
                         "cover/topsoil of the zone");
    put_tolerance(soil, tolerances, tolerances.thickness, std::nullopt,
                  usual("topsoil is nowhere thinner than drawn"));
    checks.push_back(std::move(soil));
  }
  if (!cover.seed) return;
  PlacingCheck seed;
  seed.id = "seed";
  seed.title = "Seed";
  seed.required = "The seed of the design is sown before the blanket, raked in, not washed off";
  seed.design = "cover/seed of the zone";
  seed.source = usual("labels of the seed are kept");
  seed.how = "labels of the bags; look before the blanket covers it";
  checks.push_back(std::move(seed));
}

void add_trenches(const DesignedCover& cover, const PlacingTolerances& tolerances,
                  std::vector<PlacingCheck>& checks) {
  if (cover.top_trench) {
    auto top =
        measured("top-trench", "Trench at the top", CheckMeasure::at_least, cover.top_trench->depth,
                 "The upper edge of the blanket lies in a trench of its depth",
                 "cover/top_trench of the zone; finding \"cover\"");
    put_tolerance(top, tolerances, tolerances.thickness, std::nullopt,
                  {"Installation guideline of a blanket maker, Colorado DRMS record 911390 p. 24",
                   "top trench 6 to 9 in wide and deep", SourceStanding::published});
    checks.push_back(std::move(top));
  }
  if (cover.water_edge_trench) {
    auto edge = measured("water-edge-trench", "Trench at the water's edge", CheckMeasure::at_most,
                         cover.water_edge_trench->depth,
                         "The lower edge lies in a trench that does not cut into the rock",
                         "cover/water_edge_trench of the zone; finding \"cover\"");
    edge.source = usual("the trench at the water's edge does not cut the rock");
    checks.push_back(std::move(edge));
  }
}

void add_blanket(const DesignedCover& cover, std::vector<PlacingCheck>& checks) {
  auto sides = measured("blanket-sides", "Laps of the blanket at its sides", CheckMeasure::at_least,
                        cover.side_overlap.value_or(Length::inches(6)),
                        "In touch with the soil, not stretched, upstream over downstream; laps at "
                        "the sides",
                        "cover/blanket/side_overlap of the zone");
  sides.source = usual("4 to 6 in at the sides; the maker's own pattern stands before it");
  checks.push_back(std::move(sides));
  auto ends = measured("blanket-ends", "Laps of the blanket at its ends", CheckMeasure::at_least,
                       cover.end_overlap.value_or(Length::inches(12)),
                       "Laps at the ends of rolls, upper over lower",
                       "cover/blanket/end_overlap of the zone");
  ends.source = usual("12 in at the ends; the maker's own pattern stands before it");
  checks.push_back(std::move(ends));
}

void add_stakes(const DesignedCover& cover, std::vector<PlacingCheck>& checks) {
  if (cover.stake_length) {
    auto length = measured("stake-length", "Length of the stakes", CheckMeasure::at_least,
                           *cover.stake_length,
                           "Stakes reach through the topsoil into the soil of the filled rock",
                           "cover/stakes/length of the zone; finding \"cover\"");
    length.source = usual("a stake holds below the topsoil");
    checks.push_back(std::move(length));
  }
  if (!cover.stake_spacing) return;
  auto spacing = measured("stakes", "Spacing of the stakes", CheckMeasure::at_most,
                          *cover.stake_spacing, "Driven home, no farther apart than drawn",
                          "cover/stakes/spacing of the zone; finding \"cover\"");
  spacing.reads_as_ground = true;
  spacing.source = usual("the maker's own pattern stands before densities of the trade");
  checks.push_back(std::move(spacing));
}

}  // namespace

void add_cover_checks(const PlacingDesign& design, std::vector<PlacingCheck>& checks) {
  const auto& cover = *design.cover;
  add_soil(cover, design.tolerances, checks);
  if (!cover.blanket) return;
  add_trenches(cover, design.tolerances, checks);
  add_blanket(cover, checks);
  add_stakes(cover, checks);
}

}  // namespace proofstone
