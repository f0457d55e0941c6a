#include <fmt/format.h>

#include "engine/placing/placing_design.h"

namespace proofstone {
namespace {

/// A bucket holds well-graded rock when it is this many times as wide as the largest stone.
constexpr double bucket_in_largest = 2;

void add_handling(const PlacingDesign& design, std::vector<PlacingCheck>& checks) {
  if (design.largest_stone) {
    PlacingCheck bucket;
    bucket.id = "bucket";
    bucket.title = "Width of the bucket";
    bucket.measure = CheckMeasure::at_least;
    bucket.required =
        "The bucket is twice as wide as the largest stone or wider; a smaller one picks up single "
        "large stones, or only small ones";
    bucket.design = "class of the zone";
    bucket.asked = bucket_in_largest * *design.largest_stone;
    bucket.source = usual("bucket of 2 to 3 times the largest stone");
    bucket.how = "tape across the cutting edge of each machine that loads or places";
    checks.push_back(std::move(bucket));
  }
  PlacingCheck drop;
  drop.id = "drop";
  drop.title = "Height from which rock is dropped";
  drop.measure = CheckMeasure::at_most;
  drop.required = "Rock is set down, not tipped down the slope; dropped from a small height only";
  drop.design = "placing";
  drop.asked = Length::feet(3);
  drop.reads_as_ground = true;
  drop.source = {"USACE, Low Cost Shore Protection guide",
                 "not dropped more than 3 ft, never onto bare fabric", SourceStanding::published};
  for (const auto& layer : design.filter) {
    if (!layer.fabric) continue;
    drop.required += ", never onto bare fabric";
    if (!layer.drop_height || *layer.drop_height >= *drop.asked) break;
    drop.asked = layer.drop_height;
    drop.design = "filter/drop_height of the zone; finding \"filter\"";
    break;
  }
  drop.how = "seen from the bucket to the ground while rock is placed";
  checks.push_back(std::move(drop));

  PlacingCheck mixed;
  mixed.id = "handling";
  mixed.title = "Rock as it comes";
  mixed.required =
      "Large and small come together in every bucket; the pile was turned no oftener than needed, "
      "since each handling sorts and breaks stones; single oversize stones and flat ones are laid "
      "aside";
  mixed.design = "class of the zone";
  mixed.source = usual("handling sorts rock; a single oversize stone leaves gaps and goes out");
  mixed.how = "look at several buckets from a safe place, from both sides of the pile";
  checks.push_back(std::move(mixed));
}

PlacingCheck tally_of(const PlacingDesign& design) {
  PlacingCheck tally;
  tally.id = "mix";
  tally.title = "Tally of the mix";
  tally.measure = CheckMeasure::load_tally;
  if (design.mix.empty()) {
    tally.required = "Loads of every material by the recipe of the mix, which is not stated yet";
  } else {
    tally.required = "Loads of equal volume:";
  }
  for (const auto& share : design.mix) {
    tally.required += fmt::format("{} {:g} of {}", &share == &design.mix.front() ? "" : ",",
                                  share.parts, share.name);
  }
  tally.design = "mix of the zone; finding \"mix\"";
  tally.source =
      design.tolerances.mix
          ? Source{design.tolerances.from, "tolerances of the document", SourceStanding::stated}
          : usual("a tally may be out by one load, or 5 %");
  tally.how = "one mark for every load or bucket of each material";
  return tally;
}

void add_mix(const PlacingDesign& design, std::vector<PlacingCheck>& checks) {
  checks.push_back(tally_of(design));
  PlacingCheck voids;
  voids.id = "voids";
  voids.title = "Voids filled";
  voids.required =
      "Voids are full to the bottom, stones touch one another, no pocket of fill alone";
  voids.design = "kinds of the zone; finding \"mix\"";
  voids.source = usual("placed rock is opened and looked into");
  voids.how = "take out a few stones at several places and look into the layer";
  checks.push_back(std::move(voids));
}

}  // namespace

void add_rock_checks(const PlacingDesign& design, std::vector<PlacingCheck>& checks) {
  add_handling(design, checks);
  if (design.filled) add_mix(design, checks);

  PlacingCheck thickness;
  thickness.id = "thickness";
  thickness.title = "Thickness of the rock";
  thickness.measure = CheckMeasure::layer_survey;
  thickness.hold_point = true;
  thickness.required =
      "The mean thickness, by its lower bound, is that of the layer; nowhere less than the survey "
      "allows";
  thickness.design = "layer_thickness of the zone; finding \"layer\"";
  thickness.asked = design.layer_thickness;
  thickness.source = {"method layer-survey", "lower bound of the mean by Student's t",
                      SourceStanding::computed};
  thickness.how =
      "bedding and finished surface at the same points, spread over the whole area and farther "
      "apart than two stones; or a probe to the bedding";
  thickness.fewest_points = design.survey_points;
  checks.push_back(std::move(thickness));

  PlacingCheck surface;
  surface.id = "surface";
  surface.title = "Finished surface";
  surface.measure = CheckMeasure::within;
  surface.required = "Even, stones keyed into one another, no large gap, none that stands out";
  surface.design = "section and slope of the zone";
  put_tolerance(
      surface, design.tolerances, design.tolerances.surface, Length::inches(3),
      {"Maryland SHA, Standard Specifications",
       "312.03.04, finished surface within 3 in of the lines drawn", SourceStanding::published});
  surface.how = "straight edge or level, square to the slope";
  surface.fewest_points = 3;
  checks.push_back(std::move(surface));

  if (!design.toe_thickness) return;
  PlacingCheck toe;
  toe.id = "toe-thickness";
  toe.title = "Thickness of the toe";
  toe.measure = CheckMeasure::at_least;
  toe.required = "The thickened toe has its thickness";
  toe.design = "toe/thickness of the zone; finding \"toe\"";
  toe.asked = design.toe_thickness;
  toe.reads_as_ground = true;
  put_tolerance(toe, design.tolerances, design.tolerances.thickness, std::nullopt,
                usual("a toe is nowhere thinner than drawn"));
  toe.how = "level on bed and finished rock at the same points";
  toe.fewest_points = 3;
  checks.push_back(std::move(toe));
}

}  // namespace proofstone
