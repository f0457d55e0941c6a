// Beddings, bands, the chart that is not there, and the curves of layers.
#include <gtest/gtest.h>

#include "engine/filter/base_category.h"
#include "engine/filter/beddings.h"
#include "engine/filter/cistin_ziems.h"
#include "engine/filter/filter_bands.h"
#include "engine/filter/geotextile_strength.h"
#include "engine/filter/layer_curves.h"
#include "engine/rock/rock_class.h"
#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

CurvePoints curve(const std::vector<std::pair<double, double>>& points) {
  CurvePoints made;
  for (const auto& [size, percent] : points) made.push_back({Length::millimeters(size), percent});
  return made;
}

LayerCurves bedding(const char* id) {
  const auto* found = find_bedding(id);
  EXPECT_NE(found, nullptr) << id;
  return {found->name, found->band};
}

double mm(const std::optional<Length>& size) { return size ? size->millimeters() : -1; }

TEST(Beddings, StandWithTheirSources) {
  ASSERT_EQ(bedding_catalog().size(), 3u);
  EXPECT_EQ(find_bedding("bedding-type-1")->source.standing, SourceStanding::published);
  EXPECT_EQ(find_bedding("astm-c33-fine")->source.standing, SourceStanding::memory);
  EXPECT_EQ(find_bedding("no-such"), nullptr);
}

// Computed from Table MD-11: D15, D50 and D85 in the middle of the bands, and at their edges.
TEST(LayerCurves, MiddleAndEdgesOfTheBeddings) {
  const auto sand = bedding("bedding-type-1");
  EXPECT_NEAR(mm(sand.middle(15)), 0.234, 0.001);
  EXPECT_NEAR(mm(sand.middle(50)), 0.789, 0.002);
  EXPECT_NEAR(mm(sand.middle(85)), 2.889, 0.005);
  EXPECT_NEAR(mm(sand.coarsest(15)), 0.365, 0.001);
  EXPECT_NEAR(mm(sand.finest(15)), 0.178, 0.001);
  EXPECT_NEAR(mm(sand.finest(85)), 1.671, 0.002);
  const auto gravel = bedding("bedding-type-2");
  EXPECT_NEAR(mm(gravel.middle(15)), 5.54, 0.01);
  EXPECT_NEAR(mm(gravel.middle(50)), 16.3, 0.05);
  EXPECT_NEAR(mm(gravel.middle(85)), 53.9, 0.1);
  EXPECT_NEAR(mm(gravel.coarsest(15)), 13.46, 0.02);
  EXPECT_NEAR(mm(gravel.finest(85)), 17.25, 0.02);
  // ASTM C33 (limits from memory).
  const auto concrete_sand = bedding("astm-c33-fine");
  EXPECT_NEAR(mm(concrete_sand.coarsest(15)), 0.424, 0.002);
  EXPECT_NEAR(mm(concrete_sand.finest(15)), 0.178, 0.001);
}

TEST(LayerCurves, MiddleAndEdgesOfRock) {
  const auto* medium = find_rock_class("front-range-m");
  ASSERT_NE(medium, nullptr);
  const LayerCurves rock(medium->name, medium->band);
  EXPECT_NEAR(mm(rock.coarsest(15)), 156.6, 0.1);
  EXPECT_NEAR(mm(rock.middle(15)), 133.2, 0.1);
  EXPECT_NEAR(mm(rock.finest(15)), 116.6, 0.1);
}

TEST(BaseCategory, RegradesToWhatPassesNo4) {
  const auto part = regraded(curve({{0.075, 30}, {0.85, 60}, {4.75, 78}, {19, 92}, {37.5, 100}}));
  ASSERT_EQ(part.size(), 3u);
  EXPECT_NEAR(part[0].percent_smaller, 38.4615, 1e-3);
  EXPECT_NEAR(part[1].percent_smaller, 76.923, 1e-3);
  EXPECT_EQ(part[2].percent_smaller, 100);
}

TEST(BaseCategory, TheFormulaOfCategory3JoinsItsNeighbours) {
  const auto one = Length::millimeters(1);
  EXPECT_NEAR(max_filter_d15(15, one, Dispersion::no).millimeters(), 4, 1e-12);
  EXPECT_NEAR(max_filter_d15(14.999, one, Dispersion::no).millimeters(), 4, 1e-12);
  EXPECT_NEAR(max_filter_d15(39.999999, one, Dispersion::no).millimeters(), 0.7, 1e-6);
  EXPECT_NEAR(max_filter_d15(40, one, Dispersion::no).millimeters(), 0.7, 1e-12);
  // 4·d85 below 0.7 mm counts as 0.7 mm.
  EXPECT_NEAR(max_filter_d15(20, Length::millimeters(0.1), Dispersion::no).millimeters(), 0.7,
              1e-12);
}

TEST(BaseCategory, SegregationStepsByTheLeastD10) {
  const auto d90 = [](double d10) {
    return max_filter_d90(Length::millimeters(d10)).millimeters();
  };
  EXPECT_EQ(d90(0.169), 20);
  EXPECT_EQ(d90(0.5), 25);
  EXPECT_EQ(d90(0.918), 25);
  EXPECT_EQ(d90(1.5), 30);
  EXPECT_EQ(d90(3), 40);
  EXPECT_EQ(d90(5.5), 50);
  EXPECT_EQ(d90(12), 60);
}

TEST(BaseCategory, TheBandKeepsItsOwnLimits) {
  const auto sand = curve({{0.075, 5},
                           {0.15, 12},
                           {0.17, 15},
                           {0.25, 24},
                           {0.425, 45},
                           {0.85, 68},
                           {1.5, 85},
                           {2, 89},
                           {4.75, 97},
                           {9.5, 100}});
  Steps steps;
  const auto limits = filter_limits({sand, sand}, {}, steps);
  ASSERT_TRUE(limits) << limits.problems().front().sentence();
  const auto band = filter_band_of(*limits);
  ASSERT_TRUE(band) << band.problems().front().sentence();
  EXPECT_NEAR(band->largest_size_at(15)->millimeters(), limits->max_d15.millimeters(), 1e-9);
  EXPECT_NEAR(band->smallest_size_at(15)->millimeters(), limits->min_d15.millimeters(), 1e-9);
  EXPECT_LE(*band->largest_size_at(15) / *band->smallest_size_at(15), 5 * (1 + 1e-9));
  EXPECT_LE(band->largest_size_at(100)->millimeters(), 75 + 1e-9);
}

TEST(BaseCategory, NoRoomForAFilterIsSaid) {
  // Very fine and sieved no further than No. 200: d15 could be just that.
  const auto clay = curve({{0.075, 95}, {0.15, 100}});
  Steps steps;
  const auto limits = filter_limits({clay, clay}, {}, steps);
  ASSERT_FALSE(limits);
  EXPECT_EQ(limits.problems().front().code, "curve-does-not-reach");
}

TEST(CistinZiems, AnEmptyChartSaysSo) {
  const auto nothing = read_chart(cistin_ziems_chart(), 3, 5);
  ASSERT_FALSE(nothing);
  EXPECT_EQ(nothing.problems().front().code, "chart-not-digitised");
}

// A table of our own, to prove the reading: no value of the published chart.
TEST(CistinZiems, ReadsBetweenThePointsOfATableAndNeverBeyond) {
  const CistinZiemsChart table{{1, 3}, {2, 4, 8}, {{10, 20, 30}, {30, 40, 60}}};
  EXPECT_NEAR(*read_chart(table, 1, 2), 10, 1e-12);
  EXPECT_NEAR(*read_chart(table, 3, 8), 60, 1e-12);
  EXPECT_NEAR(*read_chart(table, 2, 3), 25, 1e-12);
  EXPECT_NEAR(*read_chart(table, 2, 6), (25.0 + 50.0) / 2, 1e-12);
  for (const auto& [base, filter] : {std::pair{0.9, 3.0}, {3.1, 3.0}, {2.0, 8.1}, {2.0, 1.9}}) {
    EXPECT_FALSE(read_chart(table, base, filter)) << base << " " << filter;
  }
}

TEST(GeotextileStrength, ClassesAreInWords) {
  EXPECT_EQ(strength_text(1, Fabric::nonwoven),
            "grab 900 N, sewn seam 810 N, tear 350 N, puncture 1925 N");
  EXPECT_EQ(strength_text(2, Fabric::woven_monofilament),
            "grab 1100 N, sewn seam 990 N, tear 250 N, puncture 2200 N");
}

CurvePoints even_sand() {
  return {{Length::millimeters(0.06), 2},
          {Length::millimeters(0.075), 10},
          {Length::millimeters(0.12), 85},
          {Length::millimeters(0.15), 97},
          {Length::millimeters(4.75), 100}};
}

CurvePoints sandy_silt() {
  return {{Length::millimeters(0.005), 16},
          {Length::millimeters(0.075), 62},
          {Length::millimeters(0.425), 95},
          {Length::millimeters(4.75), 100}};
}

// The finer of two samples is not the one that asks for the finer filter.
TEST(FilterLimitsOfSamples, TakeTheLeastThatHoldsAndTheMostThatDrains) {
  Steps steps;
  const FilterBase silt{sandy_silt(), sandy_silt()};
  const FilterBase sand{even_sand(), even_sand()};
  const auto of_silt = filter_limits(silt, {}, steps);
  const auto of_sand = filter_limits(sand, {}, steps);
  const auto both = filter_limits(std::vector<FilterBase>{silt, sand}, {}, steps);
  ASSERT_TRUE(of_silt && of_sand && both);
  EXPECT_NEAR(of_silt->max_d15.millimeters(), 0.7, 1e-12);
  EXPECT_NEAR(of_sand->max_d15.millimeters(), 0.48, 1e-9);
  EXPECT_EQ(both->max_d15, of_sand->max_d15);
  EXPECT_EQ(both->permeable_d15, std::max(of_silt->permeable_d15, of_sand->permeable_d15));
  EXPECT_EQ(both->retained, 1U);
  EXPECT_EQ(both->drained, 1U);
  EXPECT_EQ(both->category, 4);
}

TEST(FilterBands, LeadFromTheSoilToTheRockLayerOnLayer) {
  const auto rock =
      GradationBand::from_size_windows({{15, Length::millimeters(60), Length::millimeters(100)},
                                        {50, Length::millimeters(150), Length::millimeters(200)},
                                        {100, Length::millimeters(300), Length::millimeters(400)}},
                                       sieved_by_mass);
  ASSERT_TRUE(rock);
  const auto bands = filter_bands({{sandy_silt(), sandy_silt()}}, {"rock", *rock}, {});
  EXPECT_EQ(bands.why_not, "");
  ASSERT_GE(bands.layers.size(), 2U);
  for (std::size_t i = 1; i < bands.layers.size(); ++i) {
    const auto below = filter_band_of(bands.layers[i - 1]);
    ASSERT_TRUE(below);
    const LayerCurves lower("lower", *below);
    // Held by the finest below, drained by the coarsest.
    EXPECT_LE(bands.layers[i].max_d15, 4.001 * *lower.finest(85));
    EXPECT_GE(bands.layers[i].permeable_d15, 4.999 * *lower.coarsest(15));
  }
  // The rock is held by the last band and lets its water out.
  const auto last = filter_band_of(bands.layers.back());
  ASSERT_TRUE(last);
  const LayerCurves top("top", *last);
  EXPECT_LE(Length::millimeters(100), 4.001 * *top.finest(85));
  EXPECT_GE(Length::millimeters(60), 4.999 * *top.coarsest(15));
  for (const auto& limits : bands.layers) {
    const auto curve = middle_of(limits);
    ASSERT_TRUE(curve);
    EXPECT_GE(*curve->size_at(15), limits.min_d15);
    EXPECT_LE(*curve->size_at(15), limits.max_d15);
    EXPECT_GE(*curve->size_at(60), limits.min_d60);
    EXPECT_LE(*curve->size_at(90), limits.max_d90);
  }
  // Rock of which a seventh is smaller than a metre stands on no filter of sizes up to 75 mm.
  const auto huge = GradationBand::from_size_windows(
      {{15, Length::meters(1), Length::meters(1.1)}, {100, Length::meters(2), Length::meters(2.2)}},
      sieved_by_mass);
  ASSERT_TRUE(huge);
  EXPECT_NE(filter_bands({{sandy_silt(), sandy_silt()}}, {"huge", *huge}, {}).why_not, "");
}

}  // namespace
}  // namespace proofstone
