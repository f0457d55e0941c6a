#include "engine/scour/toe_depth.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace proofstone {
namespace {

bool holds(const std::vector<std::string>& names, const std::string& name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

TEST(ToeDepth, WhatNobodyGaveIsNamed) {
  ToeDepthInputs in;
  in.bend = {Length::feet(4)};
  Steps steps;
  const auto toe = toe_depth(in, steps);
  ASSERT_TRUE(toe);
  EXPECT_EQ(toe->left_out.size(), 4u);
  EXPECT_TRUE(holds(toe->left_out, "contraction scour"));
  EXPECT_TRUE(holds(toe->left_out, "lowering of the bed over the years"));
  EXPECT_TRUE(holds(toe->left_out, "troughs of bedforms"));
  EXPECT_TRUE(holds(toe->left_out, "local scour"));
  EXPECT_NEAR(toe->depth.feet(), 5.2, 1e-12);
}

TEST(ToeDepth, AnAllowanceOfZeroIsGivenAndNotLeftOut) {
  ToeDepthInputs in;
  in.bend = {Length::feet(4)};
  in.contraction = {Length::feet(0)};
  Steps steps;
  const auto toe = toe_depth(in, steps);
  ASSERT_TRUE(toe);
  EXPECT_FALSE(holds(toe->left_out, "contraction scour"));
}

TEST(ToeDepth, TheGoverningEstimateIsNamed) {
  ToeDepthInputs in;
  in.local = {Length::feet(2)};
  in.whole = {Length::feet(9)};
  in.least_depth = Length::feet(5);
  Steps steps;
  const auto toe = toe_depth(in, steps);
  ASSERT_TRUE(toe);
  EXPECT_EQ(toe->governed_by, "the estimate of the whole toe depth");
}

}  // namespace
}  // namespace proofstone
