#include "geodata/landxml_sections.h"

#include <gtest/gtest.h>

#include "geodata/survey_files.h"

namespace proofstone {
namespace {

const std::string usual_units = "<Units><Imperial linearUnit=\"USSurveyFoot\"/></Units>";

std::string document(const std::string& units, const std::string& inside) {
  return "<?xml version=\"1.0\"?>\n<LandXML xmlns=\"http://www.landxml.org/schema/LandXML-1.2\" "
         "version=\"1.2\">\n" +
         units + "\n" + inside + "\n</LandXML>\n";
}

/// One cross section at station 240 with the surfaces given.
std::string section(const std::string& surfaces, const std::string& units = usual_units) {
  return document(units,
                  "<Alignments><Alignment name=\"Run\"><CrossSects><CrossSect sta=\"240.5\">" +
                      surfaces + "</CrossSect></CrossSects></Alignment></Alignments>");
}

std::string surface(const std::string& points, const std::string& name = "existing") {
  return "<CrossSectSurf name=\"" + name + "\">" + points + "</CrossSectSurf>";
}

const std::string usual_points = "<PntList2D>-20 108 -4 101.5 0 101 6 102 22 109</PntList2D>";

std::string code_of(const std::string& text, const std::string& surface_name = "") {
  const auto survey = read_landxml_sections(text, "survey.xml", surface_name);
  return survey ? "" : survey.problems().front().code;
}

TEST(LandxmlSections, OffsetsAreStationsFromLeftToRight) {
  const auto survey = read_landxml_sections(section(surface(usual_points)), "survey.xml", "");
  ASSERT_TRUE(survey) << survey.problems().front().sentence();
  EXPECT_EQ(survey->station_unit.symbol, "US survey ft");
  ASSERT_EQ(survey->sections.size(), 1u);
  EXPECT_EQ(survey->sections[0].name, "Section 240.5");
  const auto& ground = survey->sections[0].ground;
  ASSERT_EQ(ground.size(), 5u);
  EXPECT_EQ(ground[0].station, -20);
  EXPECT_EQ(ground[4].elevation, 109);
}

TEST(LandxmlSections, PointsMayBeListedAsPointsOrByTheirNames) {
  const auto listed = read_landxml_sections(
      section(surface("<CrossSectPnt>-5 3.5</CrossSectPnt><CrossSectPnt code=\"toe\">0 1"
                      "</CrossSectPnt><CrossSectPnt>5 4</CrossSectPnt>")),
      "survey.xml", "");
  ASSERT_TRUE(listed) << listed.problems().front().sentence();
  EXPECT_EQ(listed->sections[0].ground[1].elevation, 1);

  const std::string named =
      document(usual_units,
               "<CgPoints><CgPoint name=\"1\">100 200 8</CgPoint><CgPoint name=\"2\">103 204 5"
               "</CgPoint><CgPoint name=\"3\">106 208 9</CgPoint></CgPoints><CrossSects><CrossSect "
               "sta=\"1\" name=\"XS 1\">" +
                   surface("<CrossSectPnt pntRef=\"1\"/><CrossSectPnt pntRef=\"2\"/>"
                           "<CrossSectPnt pntRef=\"3\"/>") +
                   "</CrossSect></CrossSects>");
  const auto by_name = read_landxml_sections(named, "survey.xml", "");
  ASSERT_TRUE(by_name) << by_name.problems().front().sentence();
  EXPECT_EQ(by_name->sections[0].name, "XS 1");
  EXPECT_NEAR(by_name->sections[0].ground[2].station, 10, 1e-12);
  EXPECT_EQ(by_name->sections[0].ground[2].elevation, 9);
  EXPECT_FALSE(by_name->cautions.empty());
}

TEST(LandxmlSections, ListsInSpaceRunNorthingEastingElevation) {
  const auto survey = read_landxml_sections(
      section(surface("<PntList3D>0 0 5 0 30 2 40 30 6</PntList3D>")), "survey.xml", "");
  ASSERT_TRUE(survey) << survey.problems().front().sentence();
  EXPECT_NEAR(survey->sections[0].ground[1].station, 30, 1e-12);
  EXPECT_NEAR(survey->sections[0].ground[2].station, 70, 1e-12);
}

TEST(LandxmlSections, UnitsAreThoseOfTheDocument) {
  const auto unit_of = [](const std::string& units) {
    const auto survey = read_landxml_sections(section(surface(usual_points), units), "s.xml", "");
    return survey ? std::string(survey->station_unit.symbol) : survey.problems().front().code;
  };
  EXPECT_EQ(unit_of("<Units><Metric linearUnit=\"meter\"/></Units>"), "m");
  EXPECT_EQ(unit_of("<Units><Imperial linearUnit=\"foot\" elevationUnit=\"feet\"/></Units>"), "ft");
  EXPECT_EQ(unit_of("<Units><Imperial linearUnit=\"mile\"/></Units>"), "unknown-unit");
  EXPECT_EQ(unit_of("<Units><Metric linearUnit=\"foot\"/></Units>"), "unknown-unit");
  EXPECT_EQ(unit_of("<Units><Metric linearUnit=\"meter\" elevationUnit=\"feet\"/></Units>"),
            "unknown-unit");
  EXPECT_EQ(unit_of(""), "no-units");
}

TEST(LandxmlSections, TheUnitOfElevationsMustBeTheOneAPersonStates) {
  const auto survey = read_landxml_sections(section(surface(usual_points)), "survey.xml", "");
  ASSERT_TRUE(survey);
  SectionFilesRequest request;
  request.elevation_unit = unit::meter;
  request.roughness = Dimensionless::number(0.04);
  request.energy_slope = "0.002";
  const auto differing = section_files(*survey, request);
  ASSERT_FALSE(differing);
  EXPECT_EQ(differing.problems().front().code, "units-differ");
  request.elevation_unit = unit::survey_foot;
  const auto made = section_files(*survey, request);
  ASSERT_TRUE(made) << made.problems().front().sentence();
  EXPECT_EQ(made->files[0].name, "section-240-5.csv");
}

TEST(LandxmlSections, OneSurfaceIsChosenByNameAndDesignsOnlySo) {
  const std::string design =
      "<DesignCrossSectSurf name=\"new\"><CrossSectPnt>-5 3</CrossSectPnt><CrossSectPnt>0 1"
      "</CrossSectPnt><CrossSectPnt>5 3</CrossSectPnt></DesignCrossSectSurf>";
  EXPECT_EQ(code_of(section(surface(usual_points) + design)), "");
  EXPECT_EQ(code_of(section(surface(usual_points) + design), "new"), "");
  EXPECT_EQ(code_of(section(design)), "no-such-surface");
  EXPECT_EQ(code_of(section(surface(usual_points)), "bed"), "no-such-surface");
  const auto two = surface(usual_points, "2024") + surface(usual_points, "2026");
  EXPECT_EQ(code_of(section(two)), "several-surfaces");
  EXPECT_EQ(code_of(section(two), "2026"), "");
}

TEST(LandxmlSections, WhatIsWrongWithASectionIsNamed) {
  const auto with = [](const std::string& points) { return code_of(section(surface(points))); };
  EXPECT_EQ(with("<PntList2D>0 1</PntList2D>"), "one-point");
  EXPECT_EQ(with(""), "one-point");
  EXPECT_EQ(with("<PntList2D>0 1 4 2 3 5</PntList2D>"), "stations-fall");
  EXPECT_EQ(with("<PntList2D>0 1 0 1 3 5</PntList2D>"), "repeated-point");
  EXPECT_EQ(with("<PntList2D>0 1 4</PntList2D>"), "not-a-number");
  EXPECT_EQ(with("<PntList2D>0 1 4 NaN 5 6</PntList2D>"), "not-a-number");
  EXPECT_EQ(with("<PntList2D>0 1 4 1,5 5 6</PntList2D>"), "not-a-number");
  EXPECT_EQ(with("<PntList3D>0 0 5 10 10 5 0 10 5 10 0 5</PntList3D>"), "crosses-itself");
  EXPECT_EQ(with("<CrossSectPnt dataFormat=\"Slope Distance\">0 1</CrossSectPnt>"),
            "slope-distance");
  EXPECT_EQ(with("<CrossSectPnt pntRef=\"77\"/><CrossSectPnt pntRef=\"78\"/>"), "no-such-point");
  EXPECT_EQ(with("<PntList2D>0 1 4 2</PntList2D><PntList3D>1 2 3</PntList3D>"), "mixed-points");
  EXPECT_EQ(code_of(document(usual_units, "")), "no-section");
}

TEST(LandxmlSections, CoordinatesMustBeMeasurable) {
  const auto with_code = [](const std::string& code) {
    return code_of(document(
        usual_units,
        "<CoordinateSystem epsgCode=\"" + code + "\"/><CrossSects><CrossSect sta=\"1\">" +
            surface("<PntList3D>0 0 5 0 30 2 40 30 6</PntList3D>") + "</CrossSect></CrossSects>"));
  };
  EXPECT_EQ(with_code("2226"), "");
  EXPECT_EQ(with_code("2223"), "units-differ");
  EXPECT_EQ(with_code("4326"), "not-projected");
  EXPECT_EQ(with_code("3857"), "stretched-projection");
  EXPECT_EQ(with_code("17"), "no-coordinate-system");
}

// Found by the fuzzer: lists of points where no surface is open.
TEST(LandxmlSections, ListsOfPointsOutsideASurfaceAreNotRead) {
  const std::string open = "<LandXML version=\"1.2\"><Units><Metric linearUnit=\"meter\"/></Units>";
  const std::string in_point =
      open + "<CgPoint name=\"a\"><PntList2D>1 2</PntList2D></CgPoint></LandXML>";
  const std::string nested = open +
                             "<CrossSect sta=\"0\"><CrossSectSurf name=\"s\"><CrossSect sta=\"1\">"
                             "<PntList2D>1 2</PntList2D></CrossSect></CrossSectSurf></CrossSect>"
                             "</LandXML>";
  for (const auto& text : {in_point, nested}) {
    EXPECT_FALSE(read_landxml_sections(text, "survey.xml", "")) << text;
  }
}

TEST(LandxmlSections, HostileAndBrokenDocumentsAreRefused) {
  const std::string whole = section(surface(usual_points));
  for (std::size_t length = 0; length + 2 < whole.size(); length += 7) {
    EXPECT_NE(code_of(whole.substr(0, length)), "") << length;
  }
  EXPECT_EQ(code_of("<!DOCTYPE LandXML [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]>" +
                    std::string("<LandXML>&b;</LandXML>")),
            "has-doctype");
  EXPECT_EQ(code_of("<gpx version=\"1.1\"/>"), "not-landxml");
  std::string deep = "<LandXML>";
  for (int i = 0; i < 200; ++i) deep += "<a>";
  EXPECT_EQ(code_of(deep), "too-deep");
  EXPECT_EQ(code_of(document(usual_units + usual_units, "")), "two-units");
}

}  // namespace
}  // namespace proofstone
