#include "report/filter_picture.h"

#include <gtest/gtest.h>

#include <limits>

#include "report/markup_check.h"

namespace proofstone {
namespace {

GradationPoint at(double mm, double percent) { return {Length::millimeters(mm), percent}; }

FilterPicture sample() {
  FilterPicture picture;
  picture.id = "filter.bank";
  picture.title = "Soil, filter and rock";
  picture.description = "Percent smaller by mass against grain size.";
  picture.layers = {
      {"Bank soil", FilterPicture::Part::soil, {at(0.005, 6), at(0.075, 24), at(9.5, 100)}, {}},
      {"Bedding Type I",
       FilterPicture::Part::filter,
       {at(0.15, 2), at(1.18, 45), at(9.5, 100)},
       {at(0.15, 10), at(1.18, 80), at(4.75, 100)}},
      {"Crushed bedding", FilterPicture::Part::filter, {at(4.75, 9), at(25, 50), at(76, 100)}, {}},
      {"Class III",
       FilterPicture::Part::rock,
       {at(267, 15), at(356, 50), at(610, 100)},
       {at(185, 15), at(292, 50)}}};
  picture.control_points = {{15, Length::millimeters(2.6), true},
                            {15, Length::millimeters(0.52), false}};
  picture.fabric_opening = Length::millimeters(0.21);
  return picture;
}

void expect_whole(const FilterPicture& picture) {
  for (const double width : {240.0, 360.0, 900.0}) {
    for (const auto units : {UnitSystem::us_customary, UnitSystem::si}) {
      const auto svg = draw(picture, units, width);
      EXPECT_EQ(testing_markup::nesting_problem(svg), "") << width;
      EXPECT_EQ(testing_markup::content_problem(svg), "") << width;
      EXPECT_EQ(svg, draw(picture, units, width));
    }
  }
}

std::size_t count(const std::string& text, const std::string& word) {
  std::size_t found = 0;
  for (auto at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) ++found;
  return found;
}

TEST(FilterPicture, ShowsEveryLayerPointAndOpening) {
  const auto picture = sample();
  expect_whole(picture);
  const auto svg = draw(picture, UnitSystem::us_customary, 900);
  for (const auto& layer : picture.layers) EXPECT_NE(svg.find(layer.name), std::string::npos);
  EXPECT_EQ(count(svg, "class=\"control-point\""), 3u);  // two, and one in the legend
  EXPECT_EQ(count(svg, "class=\"fabric\""), 2u);
  EXPECT_NE(svg.find("No. 200"), std::string::npos);
  EXPECT_EQ(draw(picture, UnitSystem::si, 900).find("No. 200"), std::string::npos);
}

TEST(FilterPicture, StaysWholeWithoutItsParts) {
  expect_whole(FilterPicture{});
  auto picture = sample();
  picture.control_points.clear();
  picture.fabric_opening.reset();
  picture.layers[0].coarse[0].size = Length::meters(std::numeric_limits<double>::quiet_NaN());
  picture.layers[1].coarse[0].percent_smaller = std::numeric_limits<double>::infinity();
  picture.layers[2].name = "</text><script>alert(1)</script>";
  expect_whole(picture);
}

}  // namespace
}  // namespace proofstone
