#include "geodata/drawing_dxf.h"

#include <gdal_priv.h>
#include <gtest/gtest.h>
#include <ogrsf_frmts.h>

#include <map>
#include <memory>
#include <nlohmann/json.hpp>
#include <set>

namespace proofstone {
namespace {

LayeredDrawing sample() {
  LayeredDrawing drawing;
  drawing.title = "Typical section";
  drawing.unit = "ft";
  drawing.lines = {{"GROUND", false, {{0, 119.2}, {26, 117}, {50, 105}, {240, 119.6}}},
                   {"ROCK-SOIL-FILLED", true, {{26, 117}, {38, 111}, {37, 109.2}, {25, 115.2}}},
                   {"STONES", true, {{30, 114}, {31, 114.5}, {31, 113.5}}}};
  drawing.texts = {{"TEXT", {60, 112}, 0.5, "topsoil 6 in, seeded: \"native\" grasses"},
                   {"TEXT", {60, 110}, 0.5, "launchable toe storing 60 ft²"}};
  return drawing;
}

struct Entity {
  std::string layer;
  std::string text;
  std::unique_ptr<OGRGeometry> geometry;
};

std::vector<Entity> read_back(const std::string& path) {
  std::vector<Entity> entities;
  auto* dataset = static_cast<GDALDataset*>(
      GDALOpenEx(path.c_str(), GDAL_OF_VECTOR | GDAL_OF_READONLY, nullptr, nullptr, nullptr));
  EXPECT_NE(dataset, nullptr) << path;
  if (dataset == nullptr) return entities;
  OGRLayer* layer = dataset->GetLayerByName("entities");
  EXPECT_NE(layer, nullptr);
  while (OGRFeature* feature = layer->GetNextFeature()) {
    entities.push_back({feature->GetFieldAsString("Layer"), feature->GetFieldAsString("Text"),
                        std::unique_ptr<OGRGeometry>(feature->StealGeometry())});
    OGRFeature::DestroyFeature(feature);
  }
  GDALClose(dataset);
  return entities;
}

TEST(DrawingDxf, IsReadBackWithItsLayersPlacesAndWords) {
  const std::string path = "/vsimem/section.dxf";
  ASSERT_TRUE(write_drawing_dxf(sample(), path).empty());
  const auto entities = read_back(path);
  ASSERT_EQ(entities.size(), 5u);
  std::map<std::string, int> layers;
  for (const auto& entity : entities) ++layers[entity.layer];
  EXPECT_EQ(layers, (std::map<std::string, int>{
                        {"GROUND", 1}, {"ROCK-SOIL-FILLED", 1}, {"STONES", 1}, {"TEXT", 2}}));
  OGREnvelope box;
  entities[0].geometry->getEnvelope(&box);
  EXPECT_NEAR(box.MinX, 0, 1e-9);
  EXPECT_NEAR(box.MaxX, 240, 1e-9);
  EXPECT_NEAR(box.MinY, 105, 1e-9);
  EXPECT_NEAR(box.MaxY, 119.6, 1e-9);
  entities[1].geometry->getEnvelope(&box);
  EXPECT_NEAR(box.MaxY - box.MinY, 7.8, 1e-9);
  EXPECT_NE(entities[3].text.find("seeded: \"native\" grasses"), std::string::npos)
      << entities[3].text;
  EXPECT_NE(entities[4].text.find("60 ft²"), std::string::npos) << entities[4].text;
}

TEST(DrawingDxf, AnEmptyDrawingIsAWholeFile) {
  const std::string path = "/vsimem/empty.dxf";
  ASSERT_TRUE(write_drawing_dxf({}, path).empty());
  EXPECT_TRUE(read_back(path).empty());
}

TEST(DrawingDxf, WhereItCannotBeWrittenIsSaid) {
  const auto problems = write_drawing_dxf(sample(), "/no/such/folder/section.dxf");
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_EQ(problems[0].code, "not-writable");
}

TEST(DrawingDxf, TakesTheAnswerOfTheRequestInterface) {
  const auto drawing = layered_drawing_from(nlohmann::json::parse(R"({"title": "T", "unit": "m",
      "lines": [{"layer": "GROUND", "closed": false, "points": [[0, 1], [2.5, 3]]}],
      "texts": [{"layer": "TEXT", "at": [1, 2], "height": 0.2, "text": "toe"}]})"));
  EXPECT_EQ(drawing.unit, "m");
  ASSERT_EQ(drawing.lines.size(), 1u);
  EXPECT_DOUBLE_EQ(drawing.lines[0].points[1].x, 2.5);
  EXPECT_EQ(drawing.texts[0].text, "toe");
}

}  // namespace
}  // namespace proofstone
