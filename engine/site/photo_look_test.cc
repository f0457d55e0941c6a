// Photos of a lot, from the document to the findings: what they say, what they leave open, what is
// refused.
#include <gtest/gtest.h>

#include <fmt/format.h>

#include <algorithm>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"
#include "engine/vision/drawn_photos.h"

namespace proofstone {
namespace {

using nlohmann::json;

json point(PhotoPoint at) { return json::array({at.x, at.y}); }
json ends(PhotoPoint from, PhotoPoint to) { return json::array({point(from), point(to)}); }

json picture_of(const Photo& photo, const char* staff, const char* scale_error) {
  json picture = {
      {"width", photo.size.width}, {"height", photo.size.height}, {"view", "straight on"}};
  picture["staffs"] = json::array();
  picture["staffs"].push_back({{"from", point(photo.staffs[0].from)},
                               {"to", point(photo.staffs[0].to)},
                               {"length", staff}});
  picture["scale_error"] = scale_error;
  for (const auto& outline : photo.outlines) {
    json corners = json::array();
    for (const auto& corner : outline) corners.push_back(point(corner));
    picture["outlines"].push_back(std::move(corners));
  }
  for (const auto& stone : photo.tapped) {
    picture["nodes"].push_back({{"at", point(stone.node)},
                                {"long", ends(stone.long_from, stone.long_to)},
                                {"short", ends(stone.short_from, stone.short_to)}});
  }
  return picture;
}

/// Outlined stones about a median by number, in pixels of 5 mm.
json outlined_look(double median) {
  json look = {{"name", "Photos"}, {"kind", "photo"}, {"lot", "first"}, {"lies", "layer"}};
  look["pictures"] = json::array();
  look["pictures"].push_back(picture_of(outlined_photo(1, median, 0.32), "4 m", "4 %"));
  look["pictures"].push_back(picture_of(outlined_photo(2, median, 0.32), "4 m", "4 %"));
  return look;
}

/// Tapped stones of D50 12.7 in, as class III asks, on many photos.
json tapped_look(const char* scale_error) {
  json look = {{"name", "Taps"}, {"kind", "photo"}, {"lot", "first"}, {"lies", "layer"}};
  look["pictures"] = json::array();
  for (std::uint64_t i = 0; i < 10; ++i) {
    look["pictures"].push_back(picture_of(tapped_photo(i, 64.5, 0.317), "4 m", scale_error));
  }
  return look;
}

ExampleDocument with_photos(const json& look) {
  ExampleDocument example;
  example.items["looks"].clear();
  example.items["looks"]["photos"] = look;
  return example;
}

Findings findings_of(const ExampleDocument& example) {
  const auto site = read_site(example.text());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, UnitSystem::us_customary) : Findings{};
}

std::string code_of(const json& look) {
  const auto site = read_site(with_photos(look).text());
  return site ? "" : site.problems().front().code;
}

bool says(const std::string& sentence, const std::string& part) {
  return sentence.find(part) != std::string::npos;
}

TEST(PhotoLook, GivesACurveWithItsErrorsAndWhereTheyComeFrom) {
  const auto findings = findings_of(with_photos(outlined_look(55)));
  const auto* finding = findings.find("gradation.first.photos");
  ASSERT_NE(finding, nullptr);
  EXPECT_TRUE(says(finding->sentence, "600 stones by outlines on 2 photos")) << finding->sentence;
  EXPECT_TRUE(says(finding->sentence, "indicative"));
  const auto& sources = finding->sources;
  EXPECT_TRUE(std::any_of(sources.begin(), sources.end(), [](const Source& source) {
    return says(source.document, "rendered piles");
  }));
  const auto step = [&](const char* symbol) {
    const auto& lines = finding->steps.lines();
    return std::any_of(lines.begin(), lines.end(),
                       [&](const Step& line) { return line.symbol == symbol; });
  };
  for (const char* symbol : {"k15", "k50", "k85", "e_s", "e_n", "D50 low", "D50 high"}) {
    EXPECT_TRUE(step(symbol)) << symbol;
  }
  EXPECT_FALSE(finding->cautions.empty());
}

TEST(PhotoLook, OfRockThatIsFarTooSmallFallsShort) {
  const auto findings = findings_of(with_photos(outlined_look(22)));
  EXPECT_EQ(findings.find("gradation.first")->outcome, Outcome::falls_short);
}

TEST(PhotoLook, ThatCannotDecideSaysWhatWould) {
  const auto findings = findings_of(with_photos(tapped_look("4 %")));
  const auto* finding = findings.find("gradation.first");
  ASSERT_NE(finding, nullptr);
  EXPECT_EQ(finding->outcome, Outcome::not_yet_known) << finding->sentence;
  EXPECT_TRUE(says(finding->next, "More photos alone will not decide")) << finding->next;
  EXPECT_TRUE(says(finding->next, "with a tape")) << finding->next;
}

/// With a calibration and a good scale the same photos do decide; the largest stone takes a tape.
TEST(PhotoLook, MeetsOnceItsIntervalClearsEveryLimit) {
  auto look = tapped_look("1 %");
  look["largest"] = {{"tape", "23 in"}};
  auto example = with_photos(look);
  json own = {{"from", "two weighed loads"},
              {"view", "straight on"},
              {"lies", "layer"},
              {"of", "taps"},
              {"d15", "1"},
              {"d50", "1"},
              {"d85", "1"},
              {"error", "1 %"}};
  example.items["evidence"]["photo_calibrations"] = json::array();
  example.items["evidence"]["photo_calibrations"].push_back(own);
  const auto findings = findings_of(example);
  const auto* finding = findings.find("gradation.first");
  ASSERT_NE(finding, nullptr);
  EXPECT_EQ(finding->outcome, Outcome::meets) << finding->sentence;

  example.items["looks"]["photos"].erase("largest");
  const auto untaped = findings_of(example);
  EXPECT_EQ(untaped.find("gradation.first")->outcome, Outcome::not_yet_known);
  EXPECT_TRUE(says(untaped.find("gradation.first")->next, "with a tape"));
}

TEST(PhotoLook, ThatIsNoPhotoOfRockSaysWhy) {
  auto look = outlined_look(55);
  look["pictures"][1] = look["pictures"][0];
  const auto findings = findings_of(with_photos(look));
  EXPECT_TRUE(says(findings.find("gradation.first.photos")->sentence, "repeats photo 1"));
  EXPECT_EQ(findings.find("gradation.first")->outcome, Outcome::not_yet_known);
  look["pictures"].erase(1);
  look["pictures"][0].erase("staffs");
  const auto no_scale = findings_of(with_photos(look));
  EXPECT_TRUE(says(no_scale.find("gradation.first.photos")->sentence, "tells its scale"));
}

TEST(PhotoLook, IsPutTogetherWithACount) {
  ExampleDocument example;
  const auto alone = findings_of(example);
  example.items["looks"]["photos"] = tapped_look("4 %");
  const auto both = findings_of(example);
  ASSERT_NE(both.find("gradation.first"), nullptr);
  EXPECT_NE(both.find("gradation.first.photos"), nullptr);
  EXPECT_NE(both.find("gradation.first")->sentence, alone.find("gradation.first")->sentence);
}

TEST(PhotoLook, TakesItsScaleFromAMarkerBoard) {
  // The staff shows 5 mm to a pixel; so does a marker of 200 mm over 40 pixels. Its sheet lies
  // between four stones.
  const auto with_scale = [](const char* edge) {
    auto look = outlined_look(64.5);
    for (auto& picture : look["pictures"]) {
      picture.erase("staffs");
      json marker = {{"number", 7}};
      marker["corners"] = {{180, 155}, {220, 155}, {220, 195}, {180, 195}};
      json board = {{"edge", edge}};
      board["markers"].push_back(marker);
      picture["boards"].push_back(board);
    }
    return findings_of(with_photos(look));
  };
  const auto by_staff = findings_of(with_photos(outlined_look(64.5)));
  const auto by_board = with_scale("200 mm");
  EXPECT_EQ(by_board.find("gradation.first.photos")->sentence,
            by_staff.find("gradation.first.photos")->sentence);
  EXPECT_NE(with_scale("220 mm").find("gradation.first.photos")->sentence,
            by_staff.find("gradation.first.photos")->sentence);
}

/// The middles of the first stones of a look, as a check that finds them all right.
json check_of(const json& look, int nodes) {
  json check = json::array();
  for (int i = 0; i < nodes; ++i) {
    const auto& outline = look["pictures"][0]["outlines"][static_cast<std::size_t>(7 * i)];
    double x = 0;
    double y = 0;
    for (const auto& corner : outline) {
      x += corner[0].get<double>() / static_cast<double>(outline.size());
      y += corner[1].get<double>() / static_cast<double>(outline.size());
    }
    check.push_back({{"picture", 1}, {"at", point({x, y})}, {"found", "as outlined"}});
  }
  return check;
}

TEST(PhotoLook, ThatWasCheckedSaysWhetherItsOutlinesHold) {
  auto look = outlined_look(55);
  EXPECT_EQ(findings_of(with_photos(look)).find("outline-check.first.photos"), nullptr);
  look["check"] = check_of(look, 30);
  auto findings = findings_of(with_photos(look));
  const auto* finding = findings.find("outline-check.first.photos");
  ASSERT_NE(finding, nullptr);
  EXPECT_EQ(finding->outcome, Outcome::meets) << finding->sentence;
  EXPECT_TRUE(says(finding->sentence, "1.00 times as large")) << finding->sentence;
  EXPECT_TRUE(says(finding->reasons.front(), "At most 10 %")) << finding->reasons.front();

  look["check"] = check_of(look, 12);
  findings = findings_of(with_photos(look));
  finding = findings.find("outline-check.first.photos");
  EXPECT_EQ(finding->outcome, Outcome::not_yet_known);
  EXPECT_TRUE(says(finding->next, "30 nodes in all"));

  // Stones that are twice as large as outlined: the outlines are pieces of them.
  look["check"] = check_of(look, 30);
  for (auto& node : look["check"]) {
    const double x = node["at"][0];
    const double y = node["at"][1];
    node.erase("found");
    node["long"] = ends({x - 55, y}, {x + 55, y});
    node["short"] = ends({x, y - 55}, {x, y + 55});
  }
  findings = findings_of(with_photos(look));
  finding = findings.find("outline-check.first.photos");
  EXPECT_EQ(finding->outcome, Outcome::not_yet_known);
  EXPECT_TRUE(says(finding->sentence, "does not agree")) << finding->sentence;
  EXPECT_TRUE(says(finding->next, "100 nodes")) << finding->next;
}

TEST(PhotoLook, SaysTheLargestStoneSeen) {
  auto look = outlined_look(55);
  look["largest"] = {{"picture", 1}, {"ends", ends({1000, 1000}, {1120, 1000})}};
  const auto findings = findings_of(with_photos(look));
  // 120 pixels of 5 mm, 4 % in doubt.
  EXPECT_TRUE(says(findings.find("gradation.first.photos")->sentence,
                   "Largest stone seen: 23.6 in by its ends (22.1 in to 25.2 in)"))
      << findings.find("gradation.first.photos")->sentence;
  look["largest"] = {{"tape", "23 in"}};
  const auto taped = findings_of(with_photos(look));
  EXPECT_TRUE(
      says(taped.find("gradation.first.photos")->sentence, "Largest stone seen: 23.0 in by tape"))
      << taped.find("gradation.first.photos")->sentence;
}

TEST(PhotoLookReader, RefusesACheckThatIsNone) {
  const auto code_with = [](const json& node) {
    auto look = outlined_look(55);
    look["check"] = json::array();
    look["check"].push_back(node);
    return code_of(look);
  };
  json node = {{"picture", 1}, {"at", json::array({500, 500})}, {"found", "as outlined"}};
  EXPECT_EQ(code_with(node), "");
  node["found"] = "wet";
  EXPECT_EQ(code_with(node), "unknown-word");
  node.erase("found");
  EXPECT_EQ(code_with(node), "missing-field");
  node["found"] = "not rock";
  node.erase("picture");
  EXPECT_EQ(code_with(node), "missing-field");
  node["picture"] = 1;
  node["at"] = 7;
  EXPECT_EQ(code_with(node), "not-pixels");
  EXPECT_NE(code_with(json("right")), "");
}

TEST(PhotoLookReader, RefusesABoardThatIsNone) {
  const auto code_with = [](const json& markers) {
    auto look = outlined_look(64.5);
    auto& picture = look["pictures"][0];
    picture["boards"] = json::array();
    picture["boards"].push_back({{"edge", "200 mm"}, {"markers", markers}});
    return code_of(look);
  };
  const json square = {{100, 100}, {140, 100}, {140, 140}, {100, 140}};
  const auto marker = [](const json& number, const json& corners) {
    json list = json::array();
    list.push_back({{"number", number}, {"corners", corners}});
    return list;
  };
  EXPECT_EQ(code_with(marker(7, square)), "");
  EXPECT_NE(code_with(marker(24, square)), "");
  EXPECT_NE(code_with(marker("7", square)), "");
  EXPECT_EQ(code_with(marker(7, {{100, 100}, {140, 100}})), "not-pixels");
  EXPECT_EQ(code_with(marker(7, "square")), "not-pixels");
}

TEST(PhotoLookReader, RefusesWhatIsNoPicture) {
  EXPECT_EQ(code_of(outlined_look(55)), "");
  auto look = outlined_look(55);
  look["pictures"] = json::array();
  EXPECT_EQ(code_of(look), "empty");
  look.erase("pictures");
  EXPECT_EQ(code_of(look), "missing-field");

  const auto with = [](const char* field, const json& value) {
    auto one = outlined_look(55);
    one["pictures"][0][field] = value;
    return code_of(one);
  };
  EXPECT_EQ(with("width", "4000 px"), "not-pixels");
  EXPECT_EQ(with("height", 1e9), "not-pixels");
  EXPECT_EQ(with("view", "from above"), "unknown-word");
  EXPECT_EQ(with("file", "IMG_0412.jpg"), "not-a-digest");
  EXPECT_EQ(with("zoom", 2), "unknown-field");
  EXPECT_EQ(with("scale_error", "4 in"), "wrong-kind");
  EXPECT_EQ(with("smallest_drawn", "8 px"), "not-pixels");
  EXPECT_EQ(with("outlines", json::array({4, 5})), "not-an-outline");
  json outline = json::array();
  outline.push_back(json::array({1, 2, 3}));
  EXPECT_EQ(with("outlines", json::array({outline, outline})), "not-pixels");

  auto largest = outlined_look(55);
  largest["largest"] = {{"ends", 4}};
  EXPECT_EQ(code_of(largest), "missing-field");
  largest["largest"] = {{"tape", "0 in"}};
  EXPECT_EQ(code_of(largest), "not-positive");

  auto skipped = tapped_look("4 %");
  skipped["pictures"][0]["nodes"][0] = {{"at", json::array({5, 5})}, {"skip", "wet"}};
  EXPECT_EQ(code_of(skipped), "unknown-word");
  skipped["pictures"][0]["nodes"][0]["skip"] = "mostly hidden";
  EXPECT_EQ(code_of(skipped), "");
}

TEST(PhotoLookReader, RefusesACalibrationThatIsNone) {
  json own = {{"from", "load"}, {"view", "oblique"}, {"lies", "heap"}, {"of", "outlines"},
              {"d15", "0.8"},   {"d50", "9"},        {"d85", "1"},     {"error", "3 %"}};
  const auto code = [&own] {
    ExampleDocument example;
    example.items["evidence"]["photo_calibrations"] = json::array();
    example.items["evidence"]["photo_calibrations"].push_back(own);
    const auto site = read_site(example.text());
    return site ? std::string() : site.problems().front().code;
  };
  EXPECT_EQ(code(), "implausible");
  own["d50"] = "0.9";
  EXPECT_EQ(code(), "");
  own["error"] = "0 %";
  EXPECT_EQ(code(), "implausible");
}

}  // namespace
}  // namespace proofstone
