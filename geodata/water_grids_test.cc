#include "geodata/water_grids.h"

#include <gdal_priv.h>
#include <gtest/gtest.h>
#include <ogr_spatialref.h>

#include <array>
#include <nlohmann/json.hpp>

#include "geodata/water_grids_document.h"

namespace proofstone {
namespace {

/// A small GeoTIFF in memory: 4 columns, 3 rows, cells of 10 ft, upper left corner at 1000, 2030.
struct GridFile {
  std::vector<float> values;
  int bands = 1;
  int epsg = 2226;  // California zone II, US survey feet
  std::array<double, 6> transform{1000, 10, 0, 2030, 0, -10};
  std::optional<double> no_data;

  std::string write(const std::string& name) const {
    GDALAllRegister();
    const std::string path = "/vsimem/" + name;
    GDALDriver* driver = GetGDALDriverManager()->GetDriverByName("GTiff");
    auto* dataset = driver->Create(path.c_str(), 4, 3, bands, GDT_Float32, nullptr);
    auto place = transform;
    dataset->SetGeoTransform(place.data());
    if (epsg != 0) {
      OGRSpatialReference system;
      system.importFromEPSG(epsg);
      dataset->SetSpatialRef(&system);
    }
    auto copy = values;
    copy.resize(12);
    auto* band = dataset->GetRasterBand(1);
    if (no_data) band->SetNoDataValue(*no_data);
    EXPECT_EQ(band->RasterIO(GF_Write, 0, 0, 4, 3, copy.data(), 4, 3, GDT_Float32, 0, 0, nullptr),
              CE_None);
    GDALClose(dataset);
    return path;
  }
};

const std::vector<float> depths{1, 2, 3, 0, 4, 5, 6, -9999, 7, 8, 9, 0};
const std::vector<float> velocities{2, 4, 6, 0, 3, 9, 5, -9999, 1, 2, 3, 0};

GridFile depth_file() { return {depths, 1, 2226, {1000, 10, 0, 2030, 0, -10}, -9999}; }
GridFile velocity_file() { return {velocities, 1, 2226, {1000, 10, 0, 2030, 0, -10}, -9999}; }

WaterGridsRequest usual_request() {
  WaterGridsRequest request;
  request.from = "model";
  request.depth = {depth_file().write("depth.tif"), unit::foot};
  request.velocity = {velocity_file().write("velocity.tif"), unit::foot_per_second};
  request.polygon = {{1000.5, 2001}, {1039.5, 2001}, {1039.5, 2029.5}, {1000.5, 2029.5}};
  return request;
}

std::string code_of(const WaterGridsRequest& request) {
  const auto water = sample_water_grids(request);
  return water ? "" : water.problems().front().code;
}

TEST(WaterGrids, TheFastestCellAndWhatStandsThere) {
  const auto water = sample_water_grids(usual_request());
  ASSERT_TRUE(water) << water.problems().front().sentence();
  EXPECT_EQ(water->cells, 12u);
  EXPECT_EQ(water->wet, 9u);
  EXPECT_EQ(water->dry, 2u);
  EXPECT_EQ(water->without_data, 1u);
  EXPECT_NEAR(water->greatest_velocity.feet_per_second(), 9, 1e-6);
  EXPECT_NEAR(water->depth_there.feet(), 5, 1e-6);
  EXPECT_NEAR(water->fastest.x, 1015, 1e-9);
  EXPECT_NEAR(water->fastest.y, 2015, 1e-9);
  EXPECT_NEAR(water->least_depth.feet(), 1, 1e-6);
  EXPECT_NEAR(water->greatest_depth.feet(), 9, 1e-6);
  EXPECT_NEAR(water->mean_velocity.feet_per_second(), 35.0 / 9, 1e-6);
}

TEST(WaterGrids, APolygonTakesCellsByTheirCentres) {
  auto request = usual_request();
  request.polygon = {{1001, 2009}, {1019, 2009}, {1019, 2001}, {1001, 2001}};
  const auto water = sample_water_grids(request);
  ASSERT_TRUE(water);
  EXPECT_EQ(water->cells, 2u);
  EXPECT_NEAR(water->greatest_velocity.feet_per_second(), 2, 1e-6);
  EXPECT_NEAR(water->depth_there.feet(), 8, 1e-6);
}

TEST(WaterGrids, APointTakesItsCell) {
  auto request = usual_request();
  request.polygon.clear();
  request.points = {{1021, 2029}, {1009.9, 2000.1}};
  const auto water = sample_water_grids(request);
  ASSERT_TRUE(water);
  EXPECT_NEAR(water->greatest_velocity.feet_per_second(), 6, 1e-6);
  EXPECT_NEAR(water->greatest_depth.feet(), 7, 1e-6);
}

TEST(WaterGrids, UnitsAreThoseStatedAndNotThoseOfTheFile) {
  auto request = usual_request();
  request.depth.unit = unit::meter;
  request.velocity.unit = unit::meter_per_second;
  const auto water = sample_water_grids(request);
  ASSERT_TRUE(water);
  EXPECT_NEAR(water->greatest_velocity.meters_per_second(), 9, 1e-6);
  EXPECT_NEAR(water->depth_there.meters(), 5, 1e-6);
  request.depth.unit = unit::foot_per_second;
  EXPECT_EQ(code_of(request), "wrong-kind");
}

TEST(WaterGrids, ADepthOfNothingIsWhatTheRequestSays) {
  auto request = usual_request();
  request.zero_depth = ZeroDepth::no_data;
  const auto water = sample_water_grids(request);
  ASSERT_TRUE(water);
  EXPECT_EQ(water->dry, 0u);
  EXPECT_EQ(water->without_data, 3u);
}

TEST(WaterGrids, AWaterLevelNeedsItsDatum) {
  auto request = usual_request();
  GridFile level = depth_file();
  level.values.assign(12, 104.5F);
  request.water_level = StatedGrid{level.write("level.tif"), unit::foot};
  EXPECT_EQ(code_of(request), "no-vertical-datum");
  request.vertical_datum = "NAVD 88";
  const auto water = sample_water_grids(request);
  ASSERT_TRUE(water);
  ASSERT_TRUE(water->water_level_there);
  EXPECT_NEAR(water->water_level_there->feet(), 104.5, 1e-5);
}

TEST(WaterGrids, WhatIsWrongWithAFileIsNamed) {
  const auto with_depth = [](const GridFile& file) {
    auto request = usual_request();
    request.depth.path = file.write("wrong.tif");
    return code_of(request);
  };
  auto file = depth_file();
  file.bands = 2;
  EXPECT_EQ(with_depth(file), "not-one-band");
  file = depth_file();
  file.transform = {1000, 9, 1, 2030, 1, -9};
  EXPECT_EQ(with_depth(file), "rotated-grid");
  file = depth_file();
  file.transform = {1000, 10, 0, 2000, 0, 10};
  EXPECT_EQ(with_depth(file), "rotated-grid");
  file = depth_file();
  file.epsg = 0;
  EXPECT_EQ(with_depth(file), "no-coordinate-system");
  file.epsg = 4326;
  EXPECT_EQ(with_depth(file), "not-projected");
  file.epsg = 3857;
  EXPECT_EQ(with_depth(file), "stretched-projection");
  file = depth_file();
  file.values[4] = -1;
  EXPECT_EQ(with_depth(file), "negative");
  auto request = usual_request();
  request.depth.path = "/vsimem/absent.tif";
  EXPECT_EQ(code_of(request), "not-readable");
}

TEST(WaterGrids, GridsOfOtherCellsAreRefused) {
  const auto with_velocity = [](const GridFile& file) {
    auto request = usual_request();
    request.velocity.path = file.write("other.tif");
    return code_of(request);
  };
  auto file = velocity_file();
  file.transform[0] = 1005;
  EXPECT_EQ(with_velocity(file), "grids-differ");
  file = velocity_file();
  file.transform[1] = 5;
  EXPECT_EQ(with_velocity(file), "grids-differ");
  file = velocity_file();
  file.epsg = 26910;
  EXPECT_EQ(with_velocity(file), "grids-differ");
}

TEST(WaterGrids, PlacesThatCannotBeSampledAreNamed) {
  auto request = usual_request();
  request.polygon = {{900, 2001}, {1039, 2001}, {1039, 2029}};
  EXPECT_EQ(code_of(request), "outside-grid");
  request.polygon = {{1000.5, 2001}, {1001, 2001}, {1001, 2002}};
  EXPECT_EQ(code_of(request), "smaller-than-a-cell");
  request.polygon = {{1000.5, 2001}, {1001, 2001}};
  EXPECT_EQ(code_of(request), "bad-polygon");
  request.polygon.clear();
  EXPECT_EQ(code_of(request), "no-place");
  request.points = {{1035, 2015}};
  EXPECT_EQ(code_of(request), "no-data");
  request.points = {{1035, 2025}};
  EXPECT_EQ(code_of(request), "dry");
}

nlohmann::json usual_document() {
  usual_request();
  return {{"from", "2-D model, run 12"},
          {"depth", {{"file", "depth.tif"}, {"unit", "ft"}}},
          {"velocity", {{"file", "velocity.tif"}, {"unit", "ft/s"}}},
          {"zero_depth", "dry"},
          {"moment", "greatest of each cell"},
          {"points", {{1015, 2015}}}};
}

TEST(WaterGridsDocument, SaysWhatAZoneMayState) {
  const auto answer = water_from_grids(usual_document().dump(), "/vsimem");
  ASSERT_TRUE(answer) << answer.problems().front().sentence();
  const nlohmann::json expected = {
      {"from", "2-D model, run 12"}, {"velocity", "9 ft/s"}, {"depth", "5 ft"}};
  EXPECT_EQ((*answer)["water"], expected);
  EXPECT_EQ((*answer)["sampled"]["cells"], 1);
  EXPECT_NE((*answer)["cautions"].dump().find("upper bound"), std::string::npos);
}

TEST(WaterGridsDocument, NothingIsGuessed) {
  for (const char* field : {"from", "depth", "velocity", "zero_depth", "moment"}) {
    auto document = usual_document();
    document.erase(field);
    const auto answer = water_from_grids(document.dump(), "/vsimem");
    ASSERT_FALSE(answer) << field;
    EXPECT_EQ(answer.problems().front().code, "missing-field") << field;
  }
  auto document = usual_document();
  document["depth"].erase("unit");
  EXPECT_FALSE(water_from_grids(document.dump(), "/vsimem"));
  document["depth"]["unit"] = "furlong";
  const auto answer = water_from_grids(document.dump(), "/vsimem");
  ASSERT_FALSE(answer);
  EXPECT_EQ(answer.problems().front().code, "unknown-unit");
}

}  // namespace
}  // namespace proofstone
