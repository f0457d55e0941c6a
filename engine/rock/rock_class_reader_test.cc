#include <gtest/gtest.h>

#include <string>
#include <string_view>
#include <vector>

#include "engine/rock/embedded_catalog.h"
#include "engine/rock/rock_class.h"

namespace proofstone {
namespace {

constexpr const char* good = R"({
  "family": "Ours", "source": {"document": "d", "place": "p", "standing": "computed"},
  "basis": {"size": "sphere", "percent": "mass"},
  "rock_density": "165 lb/ft³", "thickness_in_d50": 2, "notes": ["for all"],
  "classes": [
    {"id": "a", "name": "A", "nominal_d50": "12 in", "notes": ["for A"],
     "percent_windows": [{"size": "12 in", "min_percent": 30, "max_percent": 50}]},
    {"id": "b", "name": "B", "nominal_d50": "0.4 m",
     "source": {"document": "e", "place": "q", "standing": "common practice"},
     "size_windows": [{"percent": 50, "min_size": "0.35 m"}, {"percent": 100, "max_size": "1 m"}]},
    {"id": "c", "name": "C", "nominal_d50": "1 ft",
     "mass_windows": [{"percent": 50, "min_mass": "130 lb", "max_mass": "200 lb"}]}]})";

TEST(ReadRockClasses, reads_all_three_wordings) {
  const auto classes = read_rock_classes(good);
  ASSERT_TRUE(classes) << classes.problems().front().sentence();
  ASSERT_EQ(classes->size(), 3U);
  const auto& a = (*classes)[0];
  const auto& b = (*classes)[1];
  const auto& c = (*classes)[2];
  EXPECT_EQ(a.family, "Ours");
  EXPECT_EQ(a.notes, (std::vector<std::string>{"for all", "for A"}));
  EXPECT_EQ(a.band.conditions().size(), 2U);
  EXPECT_EQ(a.source.standing, SourceStanding::computed);
  EXPECT_EQ(a.thickness_in_d50, 2.0);
  EXPECT_EQ(b.largest_stone, Length::meters(1));
  EXPECT_EQ(b.source.document, "e");
  EXPECT_EQ(b.source.standing, SourceStanding::common_practice);
  EXPECT_EQ(c.band.conditions().size(), 2U);
  EXPECT_EQ(c.band.basis().size, SizeMeaning::sphere);
}

TEST(ReadRockClasses, reads_percents_at_masses_and_percents_larger) {
  const auto classes = read_rock_classes(R"({
    "family": "Ours", "source": {"document": "d", "place": "p", "standing": "computed"},
    "basis": {"size": "sphere", "percent": "count"}, "rock_density": "2650 kg/m³",
    "classes": [{"id": "a", "name": "A", "nominal_d50": "0.5 m", "layer_thickness": "1 m",
      "stated_sizes": [{"percent": 30, "min_size": "0.4 m"}],
      "mass_percent_windows": [
        {"mass": "60 kg", "min_percent_larger": 95, "max_percent_larger": 100,
         "percent_of": "mass"},
        {"mass": "300 kg", "min_percent": 70, "max_percent": 100}]}]})");
  ASSERT_TRUE(classes) << classes.problems().front().sentence();
  const auto& a = classes->front();
  EXPECT_EQ(a.thickness_in_d50, 2.0);
  EXPECT_EQ(*least_size_of(a, 30), Length::meters(0.4));
  const auto& conditions = a.band.conditions();
  ASSERT_EQ(conditions.size(), 2U);
  EXPECT_EQ(conditions[0].sense, BandCondition::Sense::at_most);
  EXPECT_EQ(conditions[0].percent, 5);
  EXPECT_EQ(percent_of(conditions[0], a.band.basis()), PercentOf::mass);
  EXPECT_EQ(percent_of(conditions[1], a.band.basis()), PercentOf::count);
  EXPECT_EQ(conditions[1].percent, 70);
}

/// The good file with one part of its text put in place of another.
Problems problems_with(const std::string& part, const std::string& instead) {
  std::string text = good;
  const auto at = text.find(part);
  EXPECT_NE(at, std::string::npos) << part;
  text.replace(at, part.size(), instead);
  const auto classes = read_rock_classes(text);
  EXPECT_FALSE(classes) << instead;
  return classes ? Problems{{}} : classes.problems();
}

TEST(ReadRockClasses, points_to_what_is_wrong) {
  const auto code_at = [](const std::string& part, const std::string& instead) {
    const auto problem = problems_with(part, instead).front();
    return problem.code + " " + problem.where;
  };
  EXPECT_EQ(code_at("\"family\": \"Ours\",", ""), "missing-field /family");
  EXPECT_EQ(code_at("\"family\"", "\"famly\": 1, \"family\""), "unknown-field /famly");
  EXPECT_EQ(code_at("\"standing\": \"computed\"", "\"standing\": \"sure\""),
            "unknown-word /source/standing");
  EXPECT_EQ(code_at("\"size\": \"sphere\"", "\"size\": \"round\""), "unknown-word /basis/size");
  EXPECT_EQ(code_at("\"thickness_in_d50\": 2", "\"thickness_in_d50\": 0"),
            "not-a-number /thickness_in_d50");
  EXPECT_EQ(code_at("\"thickness_in_d50\": 2", "\"thickness_in_d50\": \"2\""),
            "not-a-number /thickness_in_d50");
  EXPECT_EQ(code_at("[\"for all\"]", "[1]"), "not-a-text /notes/0");
  EXPECT_EQ(code_at("\"id\": \"b\"", "\"id\": \"a\""), "id-twice /classes/1/id");
  EXPECT_EQ(code_at("\"id\": \"b\"", "\"id\": \"B b\""), "not-an-id /classes/1/id");
  EXPECT_EQ(code_at("\"0.4 m\"", "\"-0.4 m\""), "size-not-positive /classes/1/nominal_d50");
  EXPECT_EQ(code_at("\"0.4 m\"", "\"0,4 m\""), "decimal-comma /classes/1/nominal_d50");
  EXPECT_EQ(code_at("\"0.4 m\"", "0.4"), "missing-unit /classes/1/nominal_d50");
  EXPECT_EQ(code_at("\"min_percent\": 30", "\"min_percent\": 130"),
            "not-a-number /classes/0/percent_windows/0/min_percent");
  EXPECT_EQ(code_at("\"min_percent\": 30", "\"min_percent\": 60"),
            "percent-outside /classes/0/percent_windows, window 1");
  EXPECT_EQ(code_at("\"min_percent\": 30, ", ""),
            "missing-field /classes/0/percent_windows/0/min_percent");
  EXPECT_EQ(code_at("\"0.35 m\"", "\"5 lb\""), "wrong-kind /classes/1/size_windows/0/min_size");
  EXPECT_EQ(code_at("\"0.35 m\"", "\"3.5 m\""),
            "windows-contradict /classes/1/size_windows, window 2");
  EXPECT_EQ(code_at("\"rock_density\": \"165 lb/ft³\",", ""),
            "missing-field /classes/2/mass_windows");
  EXPECT_EQ(
      code_at(
          "\"percent_windows\": [{\"size\": \"12 in\", \"min_percent\": 30, \"max_percent\": 50}]",
          "\"notes2\": []"),
      "one-band /classes/0");
}

TEST(ReadRockClasses, refuses_what_is_no_catalog) {
  const auto code = [](std::string_view text) {
    const auto classes = read_rock_classes(text);
    return classes ? "none" : classes.problems().front().code;
  };
  EXPECT_EQ(code(""), "empty");
  EXPECT_EQ(code("{"), "not-json");
  EXPECT_EQ(code("\xFF\xFE"), "not-json");
  EXPECT_EQ(code("[]"), "not-an-object");
  EXPECT_EQ(code("3"), "not-an-object");
  EXPECT_EQ(code("{}"), "missing-field");
  EXPECT_EQ(code(R"({"family":"a","family":"b"})"), "repeated-field");
  EXPECT_EQ(code(std::string(100000, '[')), "too-deep");
  const std::string start = good;
  EXPECT_EQ(code(start.substr(0, start.size() / 2)), "not-json");
  EXPECT_EQ(code(start.substr(0, start.find("\"classes\"")) + "\"classes\": []}"), "no-classes");
  EXPECT_EQ(code(start.substr(0, start.find("\"classes\"")) + "\"classes\": {}}"), "not-a-list");
  EXPECT_EQ(code(start.substr(0, start.find("\"classes\"")) + "\"classes\": [1]}"),
            "not-an-object");
}

TEST(ReadRockClasses, reads_the_whole_catalog) {
  std::size_t files = 0;
  for (const auto& file : embedded_catalog()) {
    if (file.name.substr(0, 13) != "rock-classes-") continue;
    ++files;
    const auto classes = read_rock_classes(file.text);
    EXPECT_TRUE(classes) << file.name << ": "
                         << (classes ? "" : classes.problems().front().sentence());
  }
  EXPECT_GE(files, 2U);
}

}  // namespace
}  // namespace proofstone
