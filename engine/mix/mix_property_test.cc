// What must hold of every mix, whatever its numbers.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "engine/blend/blend_examples.h"
#include "engine/mix/mix_design.h"
#include "engine/mix/mix_quantities.h"
#include "engine/mix/packing_model.h"

namespace proofstone {
namespace {

double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0;
}

FilledMix some_mix() {
  const double rock = between(80, 500);
  FilledMix mix{
      {curve_of_sieves({rock / 2, rock, 2 * rock}, {0, between(30, 70), 100}), between(0.3, 0.5)},
      between(1, 20),
      {},
      {},
      *rc::gen::inRange(0, 2) == 0 ? MixPlacing::mixed : MixPlacing::washed_in};
  const int fills = *rc::gen::inRange(1, 4);
  for (int i = 0; i < fills; ++i) {
    const double size = between(0.1, rock / 2);
    mix.fills.push_back({"fill", curve_of_sieves({size / 10, size, 2 * size}, {0, 60, 100}),
                         between(0.25, 0.5), between(0.6, 1)});
    mix.fill_parts.push_back(between(0.5, 10));
  }
  return mix;
}

TEST(MixProperty, FilledVoidsNeverExceedTheVoidsUnlessTheMixBulks) {
  EXPECT_TRUE(rc::check("volume balance", [] {
    const auto mix = some_mix();
    const auto balance = balance_of(mix);
    RC_ASSERT(bool(balance));
    const double room = mix.rock.voids + (balance->bulking - 1);
    RC_ASSERT(balance->fill_in_place <= room + 1e-9);
    RC_ASSERT(balance->bulking >= 1);
    double solids = 1 - mix.rock.voids;
    for (const double one : balance->solids) solids += one;
    RC_ASSERT(solids <= balance->bulking + 1e-9);
    // Fills never take more room together than apart, nor less than their solids.
    double apart = 0;
    for (std::size_t i = 0; i < mix.fills.size(); ++i) {
      apart += mix.fill_parts[i] / mix.rock_parts * mix.fills[i].in_place_over_loose.value_or(1);
    }
    RC_ASSERT(balance->fill_in_place <= apart * (1 + 1e-6));
  }));
}

TEST(MixProperty, MoreFillIsNeverLessMassNorLessDilation) {
  EXPECT_TRUE(rc::check("monotone", [] {
    const auto mix = some_mix();
    auto more = mix;
    more.fill_parts[0] *= between(1.01, 3);
    const auto before = balance_of(mix);
    const auto after = balance_of(more);
    RC_ASSERT(before->filling <= after->filling + 1e-9);
    double mass_before = 0;
    double mass_after = 0;
    for (const double one : before->solids) mass_before += one;
    for (const double one : after->solids) mass_after += one;
    RC_ASSERT(mass_after > mass_before);
    RC_ASSERT(*after->dilation >= *before->dilation - 1e-6);
    RC_ASSERT(*before->dilation >= 1 - 1e-6);
  }));
}

TEST(MixProperty, ADesignFitsAndItsBucketsAreWhole) {
  EXPECT_TRUE(rc::check("design", [] {
    const auto mix = some_mix();
    const auto recipe = design_mix(mix, 8);
    if (!recipe) {
      const auto& code = recipe.problems().front().code;
      RC_ASSERT(code == "no-recipe" || code == "too-coarse");
      return;
    }
    RC_ASSERT(recipe->recipe.balance.filling <= 1 + 1e-9);
    RC_ASSERT(recipe->recipe.buckets() <= 8);
    RC_ASSERT(recipe->recipe.rock_buckets >= 1);
    if (mix.placing == MixPlacing::mixed) {
      RC_ASSERT(*recipe->recipe.balance.dilation <= most_dilation + 1e-9);
    }
    const auto again = balance_of(with_recipe(mix, recipe->recipe));
    RC_ASSERT(std::abs(again->filling - recipe->recipe.balance.filling) < 1e-6);
  }));
}

TEST(MixProperty, SharesOfAMixAreOneAndDensitiesStayPossible) {
  EXPECT_TRUE(rc::check("packing", [] {
    const int count = *rc::gen::inRange(1, 7);
    std::vector<PackedClass> classes;
    double sum = 0;
    for (int i = 0; i < count; ++i) {
      classes.push_back(
          {Length::millimeters(between(0.01, 500)), between(0.45, 0.7), between(0.01, 1)});
      sum += classes.back().share;
    }
    double most_alone = 0;
    for (auto& one : classes) {
      one.share /= sum;
      most_alone = std::max(most_alone, one.density);
    }
    const auto packing = compressible_packing(classes, rodded_index);
    RC_ASSERT(bool(packing));
    RC_ASSERT(packing->density > 0.4);
    RC_ASSERT(packing->density < 1);
  }));
}

TEST(MixProperty, AThickerLayerIsNeverLighter) {
  EXPECT_TRUE(rc::check("quantities", [] {
    MixQuantitiesInputs inputs;
    inputs.volume = Volume::cubic_yards(between(1, 1000));
    inputs.voids = Dimensionless::number(between(0.25, 0.5));
    inputs.filling = Dimensionless::number(between(0, 1));
    inputs.fill_density = Density::pounds_mass_per_cubic_foot(between(80, 130));
    Steps steps;
    const auto before = mix_quantities(inputs, steps);
    auto more = inputs;
    more.volume = more.volume * between(1, 4);
    more.filling = Dimensionless::number(std::min(1.0, inputs.filling.number() + between(0, 1)));
    const auto after = mix_quantities(more, steps);
    RC_ASSERT(after->rock_mass + after->fill_mass >= before->rock_mass + before->fill_mass);
    RC_ASSERT(after->fill_in_place <= more.voids.number() * more.volume * (1 + 1e-12));
  }));
}

}  // namespace
}  // namespace proofstone
