#include "engine/mix/packed_material.h"

#include <gtest/gtest.h>

#include <cmath>

#include "engine/blend/blend_examples.h"

namespace proofstone {
namespace {

TEST(PackedMaterial, PackedAloneHasTheDensityItIsGiven) {
  const auto curve = curve_of_sieves({1, 5, 20, 60, 100}, {5, 25, 50, 80, 100});
  const auto classes = packed_classes(curve, 0.72, rodded_index);
  double sum = 0;
  for (const auto& one : classes) sum += one.share;
  EXPECT_NEAR(sum, 1, 1e-12);
  EXPECT_NEAR(compressible_packing(classes, rodded_index)->density, 0.72, 1e-6);
  EXPECT_LT(classes.front().density, 0.72);
}

// One size alone: its own limits, 0.2 and K/(1 + K) of the volume.
TEST(PackedMaterial, OneSizeReachesAsFarAsTheModelsClasses) {
  const auto reach = porosity_reach(curve_of_sieves({99, 101}, {0, 100}), rodded_index);
  EXPECT_NEAR(reach.most, 0.8, 1e-9);
  EXPECT_NEAR(reach.least, 1 - 4.5 / 5.5, 1e-9);
}

TEST(PackedMaterial, ReachIsWhereTheModelTakesItsClasses) {
  const auto curve = curve_of_sieves({0.002, 0.02, 0.075, 0.425, 2}, {9, 31, 54, 83, 100});
  const auto reach = porosity_reach(curve, rodded_index);
  EXPECT_LT(reach.most, 0.7);
  const auto taken = [&](double porosity) {
    const auto classes = packed_classes(curve, 1 - porosity, rodded_index);
    return static_cast<bool>(compressible_packing(classes, rodded_index));
  };
  for (const double porosity : {0.1, 0.2, 0.4, reach.most - 1e-4, reach.most + 1e-4, 0.7}) {
    EXPECT_EQ(taken(porosity), !beyond_packing("", curve, porosity, rodded_index)) << porosity;
  }
  EXPECT_FALSE(taken(0.7));
}

TEST(PackedMaterial, WhatIsBeyondIsNamedWithWhatIsAllowed) {
  const auto one_size = curve_of_sieves({99, 101}, {0, 100});
  const auto dense = beyond_packing("cobble", one_size, 0.12, rodded_index);
  ASSERT_TRUE(dense.has_value());
  EXPECT_EQ(dense->code, "too-dense");
  EXPECT_EQ(dense->sentence(),
            "cobble: With a porosity of 0.12 its grains lie denser than the packing model reaches. "
            "Allowed: a porosity of 0.19 to 0.70.");
  EXPECT_FALSE(beyond_packing("cobble", one_size, 0.19, rodded_index));
}

TEST(PackingModel, BadClassesAreNamed) {
  const auto code = [](const std::vector<PackedClass>& classes, double index) {
    return compressible_packing(classes, index).problems().front().code;
  };
  const Length size = Length::inches(4);
  EXPECT_EQ(code({}, 4.5), "no-class");
  EXPECT_EQ(code({{size, 0.6, 1}}, 0), "index-outside");
  EXPECT_EQ(code({{Length::inches(-1), 0.6, 1}}, 4.5), "size-not-positive");
  EXPECT_EQ(code({{size, 0.99, 1}}, 4.5), "density-outside");
  EXPECT_EQ(code({{size, std::nan(""), 1}}, 4.5), "density-outside");
  EXPECT_EQ(code({{size, 0.6, -1}}, 4.5), "bad-share");
  EXPECT_EQ(code({{size, 0.6, 0.9}}, 4.5), "shares-not-whole");
  EXPECT_NEAR(compressible_packing({{size, 0.6, 1}}, 4.5)->density, 0.6, 1e-9);
}

}  // namespace
}  // namespace proofstone
