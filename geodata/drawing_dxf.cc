#include "geodata/drawing_dxf.h"

#include <fmt/format.h>
#include <gdal_priv.h>
#include <ogrsf_frmts.h>

#include <memory>
#include <nlohmann/json.hpp>

#include "geodata/dataset.h"

namespace proofstone {

namespace {

struct DestroyFeature {
  void operator()(OGRFeature* feature) const { OGRFeature::DestroyFeature(feature); }
};
using Feature = std::unique_ptr<OGRFeature, DestroyFeature>;

/// GDAL reports on its own to the terminal; here problems are values.
class QuietErrors {
 public:
  QuietErrors() { CPLPushErrorHandler(CPLQuietErrorHandler); }
  QuietErrors(const QuietErrors&) = delete;
  QuietErrors& operator=(const QuietErrors&) = delete;
  ~QuietErrors() { CPLPopErrorHandler(); }
};

Problems not_writable(const std::string& path) {
  return {{"not-writable", "The drawing cannot be written.", path, "",
           "a folder that exists, with room"}};
}

/// Words inside the style of a label: quotes and backslashes would end it.
std::string style_of(const LayeredText& text) {
  std::string words;
  for (const char c : text.text) {
    if (c == '"' || c == '\\') words += '\\';
    words += c;
  }
  return fmt::format("LABEL(f:\"Arial\",t:\"{}\",s:{:.6g}g,p:1)", words, text.height);
}

bool write_line(OGRLayer& layer, const LayeredLine& line) {
  OGRLineString path;
  for (const auto& place : line.points) path.addPoint(place.x, place.y);
  if (line.closed) path.closeRings();
  const Feature feature(OGRFeature::CreateFeature(layer.GetLayerDefn()));
  feature->SetField("Layer", line.layer.c_str());
  feature->SetGeometry(&path);
  return layer.CreateFeature(feature.get()) == OGRERR_NONE;
}

bool write_text(OGRLayer& layer, const LayeredText& text) {
  const OGRPoint at(text.at.x, text.at.y);
  const Feature feature(OGRFeature::CreateFeature(layer.GetLayerDefn()));
  feature->SetField("Layer", text.layer.c_str());
  feature->SetField("Text", text.text.c_str());
  feature->SetStyleString(style_of(text).c_str());
  feature->SetGeometry(&at);
  return layer.CreateFeature(feature.get()) == OGRERR_NONE;
}

}  // namespace

LayeredDrawing layered_drawing_from(const nlohmann::json& drawing) {
  LayeredDrawing read;
  read.title = drawing.at("title").get<std::string>();
  read.unit = drawing.at("unit").get<std::string>();
  for (const auto& json : drawing.at("lines")) {
    LayeredLine line;
    line.layer = json.at("layer").get<std::string>();
    line.closed = json.at("closed").get<bool>();
    for (const auto& point : json.at("points")) {
      line.points.push_back({point.at(0).get<double>(), point.at(1).get<double>()});
    }
    read.lines.push_back(std::move(line));
  }
  for (const auto& json : drawing.at("texts")) {
    read.texts.push_back({json.at("layer").get<std::string>(),
                          {json.at("at").at(0).get<double>(), json.at("at").at(1).get<double>()},
                          json.at("height").get<double>(),
                          json.at("text").get<std::string>()});
  }
  return read;
}

Problems write_drawing_dxf(const LayeredDrawing& drawing, const std::string& path) {
  GDALAllRegister();
  const QuietErrors quiet;
  GDALDriver* driver = GetGDALDriverManager()->GetDriverByName("DXF");
  if (driver == nullptr) return not_writable(path);
  Dataset dataset(driver->Create(path.c_str(), 0, 0, 0, GDT_Unknown, nullptr));
  if (!dataset) return not_writable(path);
  OGRLayer* layer = dataset->CreateLayer("entities", nullptr, wkbUnknown, nullptr);
  if (layer == nullptr) return not_writable(path);
  bool written = true;
  for (const auto& line : drawing.lines) written = written && write_line(*layer, line);
  for (const auto& text : drawing.texts) written = written && write_text(*layer, text);
  // What GDAL could not put on disk at the end it tells only by its last error.
  CPLErrorReset();
  dataset.reset();
  VSIStatBufL status;
  const bool there = VSIStatL(path.c_str(), &status) == 0 && status.st_size > 0;
  if (!written || !there || CPLGetLastErrorType() == CE_Failure) return not_writable(path);
  return {};
}

}  // namespace proofstone
