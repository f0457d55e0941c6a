#pragma once

// Pictures for tests, of an invented site.

#include <cmath>

#include "engine/site/pictures.h"
#include "engine/site/typical_section.h"

namespace proofstone::samples {

inline GradationPicture gradation() {
  const auto in = [](double size) { return Length::inches(size); };
  GradationPicture picture;
  picture.id = "gradation.pile";
  picture.title = "Pile in the band of Class III";
  picture.description = "Percent smaller by mass against stone size.";
  picture.class_name = "Class III";
  picture.coarse_limit = {{in(9.2), 15}, {in(14), 50}, {in(19.5), 85}, {in(24), 100}};
  picture.fine_limit = {{in(6.2), 15}, {in(11.5), 50}, {in(15.5), 85}, {in(18), 100}};
  picture.measured = {{in(4), 0, {0, 4}},     {in(7), 12, {6, 20}},   {in(10), 45, {35, 55}},
                      {in(13), 74, {64, 82}}, {in(18), 96, {90, 99}}, {in(20), 100, {96, 100}}};
  picture.looks = {{"Count on the pile", {{in(4), 0}, {in(10), 47}, {in(20), 100}}},
                   {"Weighed load", {{in(5), 1}, {in(11), 52}, {in(18), 100}}}};
  picture.required = {{"USACE bank and bed equation", 30, in(8.1), Outcome::meets},
                      {"FHWA shear-based lining", 50, in(11.3), Outcome::falls_short},
                      {"Isbash equation", 50, in(9.1), Outcome::not_yet_known},
                      {"Front Range channel equation", 50, in(7.6), Outcome::ask_the_designer}};
  return picture;
}

inline SectionPicture section() {
  const auto ft = [](double length) { return Length::feet(length); };
  SectionPicture picture;
  picture.id = "section.outer-bank";
  picture.title = "Section 2+40: Outer bank";
  picture.description = "Cross-section looking downstream.";
  picture.ground = {{ft(0), ft(119.2)},  {ft(26), ft(117)},    {ft(50), ft(105)},
                    {ft(78), ft(104.7)}, {ft(112), ft(109.6)}, {ft(188), ft(113.8)},
                    {ft(240), ft(119.6)}};
  picture.water_levels = {{"Design flood", ft(115.6), true},
                          {"Frequent flow", ft(111.2), false},
                          {"Base flow", ft(106.1), false}};
  SectionPicture::RockLayer layer;
  layer.label = "Class III";
  layer.surface = {{ft(26), ft(117)}, {ft(50), ft(105)}};
  layer.thickness = Length::inches(24);
  layer.median_stone = Length::inches(12.75);
  picture.layers = {layer};
  picture.across_of = "Design flood";
  for (int i = 0; i < 30; ++i) {
    const double share = (i + 0.5) / 30;
    picture.across.push_back({ft(40 + 4.0 * i), ft(44 + 4.0 * i),
                              Velocity::feet_per_second(12 * share * (2 - share)),
                              Stress::pounds_per_square_foot(3 * share * (1.5 - share))});
  }
  return picture;
}

inline TypicalSectionPicture typical_section() {
  const auto ft = [](double length) { return Length::feet(length); };
  TypicalSectionPicture picture;
  picture.id = "typical.outer-bank";
  picture.title = "Typical section of Outer bank";
  picture.description = "The bank as it is built.";
  picture.ground = section().ground;
  picture.surface = {{ft(60), ft(100)}, {ft(50), ft(105)}, {ft(26), ft(117)}};
  picture.thickness = Length::inches(24);
  picture.thickness_text = "24 in";
  picture.median_stone = Length::inches(12.75);
  picture.rise_per_run = 0.5;
  picture.slope_text = "2";
  picture.water_levels = {{"Design flood, 115.60 ft", ft(115.6)},
                          {"Base flow, 106.10 ft", ft(106.1)}};
  picture.parts = {{RockKind::void_filled, "Class III, void-filled rock", ft(100), ft(109)},
                   {RockKind::soil_filled, "Class III, soil-filled rock", ft(109), ft(114)},
                   {RockKind::bare, "Class III, bare rock", ft(114), ft(117)}};
  picture.under = {{"Bedding, 6 in", Length::inches(6)}, {"Geotextile", Length::inches(0)}};
  picture.blocks = {{"key at the top",
                     {{ft(26), ft(117)}, {ft(23), ft(117)}, {ft(23), ft(114)}, {ft(26), ft(114)}},
                     true}};
  picture.toe_depth =
      TypicalSectionPicture::Dimension{"toe dug in 5 ft", {ft(60), ft(105)}, {ft(60), ft(100)}};
  TypicalSectionPicture::Cover cover;
  cover.from = ft(109);
  cover.topsoil = Length::inches(6);
  cover.topsoil_label = "topsoil 6 in, seeded";
  cover.blanket_label = "blanket, type 3.B";
  cover.stakes_label = "wedge stakes 18 in";
  cover.stake_length = Length::inches(18);
  cover.stake_spacing = ft(2);
  cover.seeded = true;
  cover.top_trench = Length::inches(6);
  cover.back_from_crest = ft(1);
  cover.water_edge_trench = Length::inches(6);
  picture.cover = cover;
  return picture;
}

/// An apron below a conduit, seen along the flow.
inline TypicalSectionPicture apron_section() {
  const auto ft = [](double length) { return Length::feet(length); };
  TypicalSectionPicture picture;
  picture.id = "typical.culvert-apron";
  picture.title = "Typical section of Culvert apron";
  picture.description = "The apron as it is built.";
  picture.level = true;
  picture.surface = {{ft(20), ft(0)}, {ft(0), ft(0)}};
  picture.ground = {{ft(-6), ft(0)}, {ft(0), ft(0)}, {ft(26), ft(0)}};
  picture.thickness = Length::inches(30);
  picture.thickness_text = "30 in";
  picture.median_stone = Length::inches(9);
  picture.parts = {{RockKind::bare, "Class II, bare rock, 30 in thick", ft(0), ft(0)}};
  picture.under = {{"Geotextile", Length::inches(0)}};
  picture.water_levels = {{"Design flood, tailwater 2.0 ft", ft(2)}};
  picture.conduit = TypicalSectionPicture::Conduit{"conduit, 5.0 ft high", {ft(0), ft(0)}, ft(5)};
  picture.dimensions = {{"apron 20.0 ft long, as stated", {ft(0), ft(6)}, {ft(20), ft(6)}}};
  picture.notes = {{"upper end not stated", {ft(20), ft(0)}}};
  return picture;
}

inline PlanPicture plan() {
  PlanPicture picture;
  picture.id = "plan.main-channel";
  picture.title = "Main channel in plan";
  picture.description = "The channel seen from above.";
  picture.width = Length::feet(130);
  PlanPicture::Mark bend{"radius 380 ft", {}};
  PlanPicture::Mark zone{"Outer bank", {}};
  for (int i = 0; i <= 40; ++i) {
    const double turn = 0.04 * i;
    const auto at = [&](double radius) {
      return PlanPoint{Length::feet(radius * std::sin(turn)),
                       Length::feet(radius * std::cos(turn))};
    };
    picture.course.push_back(at(380));
    bend.line.push_back(at(445));
    if (i > 10 && i < 30) zone.line.push_back(at(445));
  }
  picture.bends = {bend};
  picture.zones = {zone};
  return picture;
}

inline ProfilePicture profile() {
  const auto ft = [](double length) { return Length::feet(length); };
  ProfilePicture picture;
  picture.id = "profile.upper-run";
  picture.title = "Upper run: water surface";
  picture.description = "Elevation of bed and water along the run.";
  picture.places = {{"Section 6+00", ft(0), ft(108), ft(116)},
                    {"", ft(150), ft(106), ft(114)},
                    {"Section 3+00", ft(300), ft(104), ft(112)},
                    {"Section 0+00", ft(600), ft(103.4), ft(111.5)}};
  ProfilePicture::WaterLine flood;
  flood.name = "Design flood";
  flood.largest = true;
  flood.points = {{ft(0), ft(114), ft(114)},
                  {ft(150), ft(110), ft(112)},
                  {ft(300), ft(111), ft(110)},
                  {ft(600), ft(110.8), ft(109.4)}};
  flood.jumps = {{ft(240), ft(109), ft(111.1)}};
  ProfilePicture::WaterLine low;
  low.name = "Base flow";
  low.points = {{ft(0), ft(109), ft(109)},
                {ft(150), ft(107), ft(107)},
                {ft(300), ft(105.5), ft(105)},
                {ft(600), ft(105), ft(104)}};
  picture.water_lines = {low, flood};
  return picture;
}

inline StonesPicture stones() {
  const auto in = [](double size) { return Length::inches(size); };
  StonesPicture picture;
  picture.id = "stones.pile";
  picture.title = "The stones of Class III and of the pile";
  picture.description = "Stones drawn to one scale beside a rule.";
  picture.rows = {{"Class III, smallest allowed",
                   {{"D15", in(6.2)}, {"D50", in(11.5)}, {"D85", in(15.5)}},
                   Angularity::angular},
                  {"Pile, measured",
                   {{"D15", in(6.9)}, {"D50", in(10.2)}, {"D85", in(14.1)}},
                   Angularity::rounded}};
  return picture;
}

/// Loads that become finer from the sixth on.
inline RunChartPicture run_chart() {
  RunChartPicture picture;
  picture.id = "loads.sample";
  picture.title = "Loads of the sample";
  picture.description = "Median sizes of loads.";
  picture.target = Length::inches(12);
  int load = 0;
  for (const double inches : {12.1, 11.8, 12.3, 11.9, 12.0, 11.3, 11.1, 11.0, 10.9}) {
    RunChartPicture::Point point;
    point.label = "ticket " + std::to_string(++load);
    point.size = Length::inches(inches);
    point.average = Length::inches(12 - 0.1 * load);
    point.low = Length::inches(11.4);
    point.high = Length::inches(12.6);
    point.alarm = load > 7;
    picture.points.push_back(std::move(point));
  }
  return picture;
}

inline MethodSizesPicture method_sizes() {
  const auto in = [](double size) { return Length::inches(size); };
  MethodSizesPicture picture;
  picture.id = "sizes.outer-bank";
  picture.title = "What each method asks for in the outer bank";
  picture.description = "One line a method on one axis of stone sizes.";
  picture.class_name = "Class III";
  picture.rows = {{"USACE bank and bed equation, Design flood", "D30", in(8.1), in(9.1), in(12),
                   true, true, true, 0.75, Outcome::meets},
                  {"FHWA shear-based channel lining, Design flood", "D50", in(13), in(11.5), in(14),
                   true, true, false, 0.25, Outcome::falls_short},
                  {"Isbash equation, Design flood", "D50", in(9.1), in(11.5), std::nullopt, true,
                   false, false, std::nullopt, Outcome::meets},
                  {"Front Range channel equation, Design flood", "D50", in(7.6), std::nullopt,
                   std::nullopt, false, false, false, std::nullopt, Outcome::ask_the_designer}};
  return picture;
}

inline MixPicture mix() {
  using Stuff = MixPicture::Stuff;
  MixPicture picture;
  picture.id = "mix.outer-bank";
  picture.title = "Where the volume of the soil-filled mix goes";
  picture.description = "Bars of volume, the bulk volume of the rock being one.";
  picture.bars = {
      {"As delivered, loose", {{"Class II", Stuff::rock, 1}, {"Native loam", Stuff::fill, 0.5385}}},
      {"In place",
       {{"stones", Stuff::rock, 0.6},
        {"fill in its voids", Stuff::fill, 0.388},
        {"voids left open", Stuff::open_voids, 0.012}}}};
  return picture;
}

}  // namespace proofstone::samples
