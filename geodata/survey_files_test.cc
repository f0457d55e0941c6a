#include "geodata/survey_files.h"

#include <gdal_priv.h>
#include <gtest/gtest.h>
#include <ogrsf_frmts.h>

#include <array>
#include <cmath>

namespace proofstone {
namespace {

using Line = std::vector<std::array<double, 3>>;

/// A file of lines in memory, written by the library that reads it.
struct LineFile {
  std::string driver = "GPKG";
  std::string path = "/vsimem/sections.gpkg";
  int epsg = 2226;  // California zone II, US survey feet
  OGRwkbGeometryType type = wkbLineString25D;
  std::vector<Line> lines;
  std::vector<std::string> names;
  std::vector<std::string> roughness;

  std::string write() const {
    GDALAllRegister();
    GDALDriver* writer = GetGDALDriverManager()->GetDriverByName(driver.c_str());
    writer->Delete(path.c_str());
    GDALDataset* dataset = writer->Create(path.c_str(), 0, 0, 0, GDT_Unknown, nullptr);
    OGRSpatialReference system;
    if (epsg != 0) system.importFromEPSG(epsg);
    OGRLayer* layer =
        dataset->CreateLayer("sections", epsg == 0 ? nullptr : &system, type, nullptr);
    OGRFieldDefn name_field("name", OFTString);
    OGRFieldDefn n_field("n", OFTString);
    EXPECT_EQ(layer->CreateField(&name_field), OGRERR_NONE);
    EXPECT_EQ(layer->CreateField(&n_field), OGRERR_NONE);
    for (std::size_t i = 0; i < lines.size(); ++i) {
      auto* feature = OGRFeature::CreateFeature(layer->GetLayerDefn());
      if (i < names.size()) feature->SetField("name", names[i].c_str());
      if (i < roughness.size()) feature->SetField("n", roughness[i].c_str());
      OGRLineString course;
      for (const auto& [x, y, z] : lines[i]) {
        if (wkbHasZ(type) != 0) {
          course.addPoint(x, y, z);
        } else {
          course.addPoint(x, y);
        }
      }
      EXPECT_EQ(feature->SetGeometry(&course), OGRERR_NONE);
      EXPECT_EQ(layer->CreateFeature(feature), OGRERR_NONE);
      OGRFeature::DestroyFeature(feature);
    }
    GDALClose(dataset);
    return path;
  }
};

/// From the left bank: down 10, along 30 with a corner in plan, a wall, up. Coordinates as state
/// planes have them.
const double east = 6561000;
const double north = 2010000;
const Line usual_line{{east, north, 110.25},
                      {east + 6, north + 8, 104},
                      {east + 36, north + 8, 98.5},
                      {east + 36, north + 8, 103},
                      {east + 66, north + 48, 111}};

LineFile usual_file() {
  LineFile file;
  file.lines = {usual_line};
  file.names = {"XS 2+40"};
  file.roughness = {"0.035"};
  return file;
}

const LayerFields usual_fields{"", "name", "n", "", ""};

SectionFilesRequest usual_request() {
  SectionFilesRequest request;
  request.from = "sections.gpkg";
  request.elevation_unit = unit::foot;
  request.vertical_datum = "NAVD 88";
  request.energy_slope = "0.0031";
  return request;
}

std::string code_of(const LineFile& file, const LayerFields& fields = usual_fields) {
  const auto survey = read_section_lines(file.write(), fields);
  if (!survey) return survey.problems().front().code;
  const auto made = section_files(*survey, usual_request());
  return made ? "" : made.problems().front().code;
}

TEST(SurveyFiles, StationsRunAlongTheLineInTheUnitOfItsCoordinates) {
  const auto survey = read_section_lines(usual_file().write(), usual_fields);
  ASSERT_TRUE(survey) << survey.problems().front().sentence();
  EXPECT_EQ(survey->station_unit.symbol, unit::survey_foot.symbol);
  ASSERT_EQ(survey->sections.size(), 1u);
  const auto& ground = survey->sections[0].ground;
  const std::vector<double> stations{0, 10, 40, 40, 90};
  ASSERT_EQ(ground.size(), stations.size());
  for (std::size_t i = 0; i < stations.size(); ++i)
    EXPECT_NEAR(ground[i].station, stations[i], 1e-9);
  EXPECT_EQ(ground[3].elevation, 103);
}

TEST(SurveyFiles, TheTableAndTheChangesAreWhatADocumentTakes) {
  const auto survey = read_section_lines(usual_file().write(), usual_fields);
  ASSERT_TRUE(survey);
  const auto made = section_files(*survey, usual_request());
  ASSERT_TRUE(made) << made.problems().front().sentence();
  ASSERT_EQ(made->files.size(), 1u);
  EXPECT_EQ(made->files[0].name, "xs-2-40.csv");
  EXPECT_EQ(made->files[0].text,
            "station (US survey ft), elevation (ft), roughness n\n"
            "0, 110.25, 0.035\n10, 104, 0.035\n40, 98.5, 0.035\n40, 103, 0.035\n90, 111, 0.035\n");
  const nlohmann::json expected = {
      {{"set", "/sections/xs-2-40"},
       {"to",
        {{"name", "XS 2+40"}, {"survey", {{"file", "xs-2-40.csv"}}}, {"energy_slope", "0.0031"}}}}};
  EXPECT_EQ(made->revision["changes"], expected);
  EXPECT_NE(made->revision["note"].get<std::string>().find("NAVD 88"), std::string::npos);
  ASSERT_EQ(made->cautions.size(), 1u);
  EXPECT_NE(made->cautions[0].find("left_bank"), std::string::npos);
}

TEST(SurveyFiles, BankStationsTurnRoundWithTheSection) {
  auto survey = read_section_lines(usual_file().write(), usual_fields);
  ASSERT_TRUE(survey);
  survey->sections[0].left_bank = 70;
  survey->sections[0].right_bank = 10;
  auto request = usual_request();
  request.starts = LineStart::right_bank;
  const auto made = section_files(*survey, request);
  ASSERT_TRUE(made) << made.problems().front().sentence();
  const auto& to = made->revision["changes"][0]["to"];
  EXPECT_EQ(to["left_bank"], "20 US survey ft");
  EXPECT_EQ(to["right_bank"], "80 US survey ft");
  EXPECT_TRUE(made->cautions.empty());
}

TEST(SurveyFiles, ALineFromTheRightBankIsTurnedRound) {
  const auto survey = read_section_lines(usual_file().write(), usual_fields);
  ASSERT_TRUE(survey);
  auto request = usual_request();
  request.starts = LineStart::right_bank;
  const auto made = section_files(*survey, request);
  ASSERT_TRUE(made);
  EXPECT_EQ(made->files[0].text,
            "station (US survey ft), elevation (ft), roughness n\n"
            "0, 111, 0.035\n50, 103, 0.035\n50, 98.5, 0.035\n80, 104, 0.035\n90, 110.25, 0.035\n");
}

TEST(SurveyFiles, FeetOfBothKindsAndMetresComeFromTheCoordinateSystem) {
  const auto unit_of = [](int epsg) {
    auto file = usual_file();
    file.epsg = epsg;
    const auto survey = read_section_lines(file.write(), usual_fields);
    return survey ? std::string(survey->station_unit.symbol) : survey.problems().front().code;
  };
  EXPECT_EQ(unit_of(2226), "US survey ft");  // California zone II, ftUS
  EXPECT_EQ(unit_of(2223), "ft");            // Arizona East, international feet
  EXPECT_EQ(unit_of(26910), "m");            // UTM zone 10N
  EXPECT_EQ(unit_of(0), "no-coordinate-system");
  EXPECT_EQ(unit_of(4326), "not-projected");
  EXPECT_EQ(unit_of(3857), "stretched-projection");
  EXPECT_EQ(unit_of(24571), "unknown-unit");  // Kertau RSO in chains
}

TEST(SurveyFiles, AShapefileIsReadToo) {
  auto file = usual_file();
  file.driver = "ESRI Shapefile";
  file.path = "/vsimem/sections.shp";
  EXPECT_EQ(code_of(file), "");
  file.type = wkbLineString;
  EXPECT_EQ(code_of(file), "no-elevation");
}

TEST(SurveyFiles, WhatIsWrongWithALineIsNamedWithItsFeature) {
  const auto with_line = [](const Line& line) {
    auto file = usual_file();
    file.lines.push_back(line);
    file.names.emplace_back("other");
    file.roughness.emplace_back("0.04");
    return code_of(file);
  };
  EXPECT_EQ(with_line(usual_line), "");
  EXPECT_EQ(with_line({{0, 0, 1}}), "one-point");
  EXPECT_EQ(with_line({{0, 0, 1}, {0, 0, 1}, {9, 0, 1}}), "repeated-point");
  EXPECT_EQ(with_line({{0, 0, 1}, {10, 0, 1}, {10, 10, 1}, {5, -5, 1}}), "crosses-itself");
  EXPECT_EQ(with_line({{0, 0, 1}, {10, 0, 1}, {10, 10, 1}, {0, 0, 1}}), "crosses-itself");
  EXPECT_EQ(with_line({{0, 0, 0}, {10, 0, 0}, {20, 0, 0}}), "no-elevation");
  EXPECT_EQ(with_line({{0, 0, 5}, {10, 0, std::nan("")}, {20, 0, 5}}), "not-a-number");
  EXPECT_EQ(with_line({{0, 0, 5}, {10, 0, 4}}), "too-few-points");
  auto file = usual_file();
  file.lines.push_back({{0, 0, 1}});
  file.names.emplace_back("stub");
  const auto survey = read_section_lines(file.write(), usual_fields);
  ASSERT_FALSE(survey);
  const auto sentence = survey.problems().front().sentence();
  EXPECT_NE(sentence.find("sections.gpkg"), std::string::npos) << sentence;
  EXPECT_NE(sentence.find("feature 2 (“stub”)"), std::string::npos) << sentence;
}

TEST(SurveyFiles, FieldsLayersAndNamesThatDoNotServeAreNamed) {
  EXPECT_EQ(code_of(usual_file(), {"levels", "", "", "", ""}), "no-such-layer");
  EXPECT_EQ(code_of(usual_file(), {"", "title", "", "", ""}), "no-such-field");
  EXPECT_EQ(code_of(usual_file(), {"", "name", "", "", ""}), "no-roughness");
  auto file = usual_file();
  file.roughness = {"rough"};
  EXPECT_EQ(code_of(file), "not-a-number");
  file.roughness = {"3"};
  EXPECT_EQ(code_of(file), "roughness-out-of-range");
  file = usual_file();
  file.lines.push_back(usual_line);
  file.names = {"XS 2+40", "xs 2 40"};
  file.roughness = {"0.035", "0.035"};
  EXPECT_EQ(code_of(file), "same-name");
  file = usual_file();
  file.lines.clear();
  EXPECT_EQ(code_of(file), "no-feature");
  const auto absent = read_section_lines("/vsimem/absent.gpkg", {});
  ASSERT_FALSE(absent);
  EXPECT_EQ(absent.problems().front().code, "not-readable");
}

TEST(SurveyFiles, ATruncatedFileIsRefused) {
  auto file = usual_file();
  for (int i = 0; i < 200; ++i) {
    file.lines.push_back(usual_line);
    file.names.push_back("line " + std::to_string(i));
    file.roughness.emplace_back("0.04");
  }
  file.driver = "ESRI Shapefile";
  file.path = "/vsimem/broken.shp";
  file.write();
  VSIStatBufL stat{};
  ASSERT_EQ(VSIStatL("/vsimem/broken.shp", &stat), 0);
  VSILFILE* open = VSIFOpenL("/vsimem/broken.shp", "rb+");
  ASSERT_EQ(VSIFTruncateL(open, stat.st_size / 2), 0);
  VSIFCloseL(open);
  const auto survey = read_section_lines("/vsimem/broken.shp", usual_fields);
  EXPECT_FALSE(survey);
}

TEST(SurveyFiles, ACentrelineRunsTheWayTheWaterDoes) {
  auto file = usual_file();
  file.type = wkbLineString;
  file.lines = {{{east, north, 0}, {east + 100, north, 0}, {east + 200, north + 50, 0}}};
  file.names = {"Main channel"};
  const auto found = read_course_lines(file.write(), {"", "name", "", "", ""});
  ASSERT_TRUE(found) << found.problems().front().sentence();
  const auto made = course_files(*found, "channel.gpkg", CourseRuns::upstream);
  ASSERT_TRUE(made) << made.problems().front().sentence();
  EXPECT_EQ(made->files[0].name, "main-channel.csv");
  EXPECT_EQ(made->files[0].text,
            "easting (US survey ft), northing (US survey ft)\n"
            "6561200, 2010050\n6561100, 2010000\n6561000, 2010000\n");
  EXPECT_EQ(made->revision["changes"][0]["set"], "/centrelines/main-channel");
}

}  // namespace
}  // namespace proofstone
