#include "archive/without_places.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

namespace proofstone {
namespace {

using nlohmann::json;

std::string document_of(const json& changes) {
  return json{{"proofstone", "site"},
              {"format", 1},
              {"revisions", {{{"id", "r1"}, {"after", json::array()}, {"changes", changes}}}}}
      .dump();
}

const json position = {{"latitude", "39.7°"}, {"longitude", "-104.9°"}};

std::string segment(char marker, const std::string& content) {
  const auto length = content.size() + 2;
  return std::string("\xff") + marker + static_cast<char>(length / 256) +
         static_cast<char>(length % 256) + content;
}

std::string jpeg(const std::string& segments) {
  return "\xff\xd8" + segment('\xe0', std::string("JFIF\0", 5)) + segments +
         segment('\xda', "\x01\x01") + std::string("\x12\xff\x00\x34\xff\xd0\x56", 7) + "\xff\xd9";
}

const std::string turned("Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x06\0\0\0\0\0\0",
                         32);

TEST(WithoutPlaces, TakesPositionsOutOfAllRevisions) {
  const auto text = without_positions(
      document_of({{{"set", "/looks/a"}, {"to", {{"name", "A"}, {"position", position}}}},
                   {{"set", "/looks/a/position"}, {"to", position}},
                   {{"set", "/looks/a/position/accuracy"}, {"to", "6 m"}},
                   {{"remove", "/looks/a/position"}},
                   {{"set", "/nonconformances/b"},
                    {"to", {{"opened", {{"position", position}, {"who", "L"}}}}}}}));
  const auto changes = json::parse(text)["revisions"][0]["changes"];
  ASSERT_EQ(changes.size(), 2U);
  EXPECT_EQ(changes[0]["to"], (json{{"name", "A"}}));
  EXPECT_EQ(changes[1]["to"], (json{{"opened", {{"who", "L"}}}}));
}

TEST(WithoutPlaces, LeavesADocumentWithoutPositionsAsItIs) {
  const auto text = document_of({{{"set", "/looks/a"}, {"to", {{"position", "by the gate"}}}}});
  EXPECT_EQ(without_positions(text), text);
}

TEST(WithoutPlaces, KnowsPhotosThatTellNothing) {
  EXPECT_FALSE(may_tell_place(jpeg("")));
  EXPECT_FALSE(may_tell_place(jpeg(segment('\xe1', turned))));
  EXPECT_FALSE(may_tell_place(jpeg(segment('\xe2', std::string("ICC_PROFILE\0sRGB", 16)))));
}

TEST(WithoutPlaces, TrustsNoOther) {
  const auto gps = turned.substr(0, 31) + "GPS 47.1 N";
  for (const auto& photo :
       {std::string(), std::string("GIF89a"), std::string("\xff\xd8"), jpeg(segment('\xe1', gps)),
        jpeg(segment('\xe1', "http://ns.adobe.com/xap/1.0/")),
        jpeg(segment('\xfe', "by the bridge")), jpeg(segment('\xe2', "MPF")), jpeg("") + "GPS",
        jpeg("").substr(0, 20), std::string("\xff\xd8\xff\xdb\x00\x01\x07", 7)}) {
    EXPECT_TRUE(may_tell_place(photo)) << photo.size();
  }
}

TEST(WithoutPlaces, LeavesOutPhotosThatMayTell) {
  PackedSite site{
      document_of(json::array()), {}, {{"photos/a.jpeg", jpeg("")}, {"photos/b.png", "png"}}};
  const auto result = without_places(std::move(site));
  EXPECT_EQ(result.photos_left_out, 1U);
  ASSERT_EQ(result.site.photos.size(), 1U);
  EXPECT_EQ(result.site.photos[0].name, "photos/a.jpeg");
}

}  // namespace
}  // namespace proofstone
