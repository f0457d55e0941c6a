#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/outfall/outfall_apron.h"
#include "engine/outfall/outfall_basin.h"
#include "engine/outfall/outlet_fletcher_grace.h"
#include "engine/outfall/outlet_protection_length.h"

namespace proofstone {
namespace {

Length d50(double inches) { return Length::inches(inches); }

TEST(ApronClasses, EndsBelongToTheClass) {
  EXPECT_EQ(apron_class_for(d50(5))->number, 1);
  EXPECT_EQ(apron_class_for(d50(5.01))->number, 2);
  EXPECT_EQ(apron_class_for(d50(22))->number, 6);
  EXPECT_FALSE(apron_class_for(d50(22.01)));
}

// HEC-14 class 2 is rock of 6 in; FP-14 class 2 is 8 to 11 in: the number alone orders wrong rock.
TEST(ApronClasses, AreNotTheClassesOfFp14) {
  const auto row = apron_class_for(d50(5.5));
  ASSERT_TRUE(row);
  EXPECT_EQ(row->number, 2);
  EXPECT_LT(row->d50_in, 8);
}

TEST(OutfallApron, LargeCulvertsAreNamed) {
  const auto limits = [](const char* diameter) {
    return outfall_apron_method()
        .evaluate({{"discharge", "60 ft³/s"}, {"diameter", diameter}, {"tailwater", "3 ft"}})
        ->limits_not_kept.size();
  };
  EXPECT_EQ(limits("60 in"), 0U);
  EXPECT_EQ(limits("61 in"), 1U);
}

// One local print has (A/2)^1.5, which is not a length.
TEST(OutfallBasin, EquivalentDepthIsALength) {
  OutfallBasinInputs in;
  in.discharge = Discharge::cubic_feet_per_second(440);
  in.width = Length::feet(8);
  in.brink_depth = Length::feet(4.56);
  in.flow_area = Area::square_feet(29.6);
  in.tailwater = Length::feet(1);
  in.d50 = Length::feet(0.85);
  Steps steps;
  const auto result = outfall_basin(in, steps);
  ASSERT_TRUE(static_cast<bool>(result));
  EXPECT_NEAR(result->equivalent_depth.feet(), std::sqrt(29.6 / 2), 1e-9);
  EXPECT_GT(std::pow(29.6 / 2, 1.5), 50);
}

TEST(OutfallBasin, AFullPipeHasItsWholeArea) {
  const Length D = Length::feet(6);
  EXPECT_NEAR(pipe_flow_area(D, D).square_feet(), 28.2743, 1e-4);
  EXPECT_NEAR(pipe_flow_area(D, 0.5 * D).square_feet(), 28.2743 / 2, 1e-4);
  EXPECT_NEAR(pipe_flow_area(D, Length::feet(4)).square_feet(), 20.02, 0.005);
}

TEST(OutfallBasin, SizeOverDepthOutsideItsRangeIsNamed) {
  const auto evaluation = outfall_basin_method().evaluate({{"shape", "box"},
                                                           {"discharge", "800 ft³/s"},
                                                           {"width", "8 ft"},
                                                           {"brink_depth", "4 ft"},
                                                           {"tailwater", "2.8 ft"},
                                                           {"d50", "0.35 ft"}});
  ASSERT_TRUE(static_cast<bool>(evaluation));
  EXPECT_EQ(evaluation->limits_not_kept.size(), 1U);
}

// The tailwater term has no step where its three forms meet.
TEST(OutfallBasin, TailwaterTermIsContinuous) {
  OutfallBasinInputs in;
  in.shape = ConduitShape::box;
  in.discharge = Discharge::cubic_feet_per_second(1200);
  in.width = Length::feet(8);
  in.brink_depth = Length::feet(4);
  in.d50 = Length::feet(1.2);
  const auto term = [&](double share) {
    in.tailwater = share * in.brink_depth;
    Steps steps;
    const auto result = outfall_basin(in, steps);
    return result ? result->tailwater_term.number() : -1;
  };
  EXPECT_NEAR(term(0.75 - 1e-9), 1.4, 1e-6);
  EXPECT_NEAR(term(0.75 + 1e-9), 1.4, 1e-6);
  EXPECT_NEAR(term(1.0 - 1e-9), 2.4, 1e-6);
  EXPECT_NEAR(term(1.0 + 1e-9), 2.4, 1e-6);
}

// A pipe's own width belongs in At/Yt − W; a sheet that subtracts 1 makes the apron a fifth longer.
TEST(ProtectionLength, SubtractsTheWidth) {
  OutletProtectionLengthInputs in;
  in.discharge = Discharge::cubic_feet_per_second(11.25);
  in.height = Length::feet(1.5);
  in.width = Length::feet(1.5);
  in.tailwater = Length::feet(0.58);
  in.allowable_velocity = Velocity::feet_per_second(5);
  in.expansion_factor = Dimensionless::number(5);
  Steps steps;
  const auto result = outlet_protection_length(in, steps);
  ASSERT_TRUE(static_cast<bool>(result));
  EXPECT_NEAR(result->length.feet(), 11.9, 0.05);
  EXPECT_GT(5 * (2.25 / 0.58 - 1), 14.3);
}

// In SI the unit factor 0.552 = √(9.81/32.2) divides Q: both prints must give one size.
TEST(FletcherGrace, UnitFactorDivides) {
  OutletFletcherGraceInputs in;
  in.diameter = Length::meters(1.5);
  in.discharge = Discharge::cubic_meters_per_second(2.4);
  in.tailwater = Length::meters(0.6);
  Steps steps;
  const double size = outlet_fletcher_grace(in, steps)->d50.meters();
  const double q = 2.4 / std::pow(1.5, 2.5);
  const double divided = 0.020 * 1.5 * std::pow(q / 0.552, 4.0 / 3.0) * 2.5;
  const double multiplied = 0.020 * 1.5 * std::pow(q * 0.552, 4.0 / 3.0) * 2.5;
  EXPECT_NEAR(size / divided, 1, 0.002);
  EXPECT_LT(multiplied, 0.25 * size);
}

}  // namespace
}  // namespace proofstone
