// What must hold in every reach, whatever its ground: 10,000 of them.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <utility>

#include "engine/hydraulics/profile.h"

namespace proofstone {
namespace {

/// Numbers from a seed, so that a failing reach can be made again.
class Numbers {
 public:
  explicit Numbers(std::uint32_t seed) : engine_(seed) {}
  double between(double low, double high) {
    return low + (high - low) * static_cast<double>(engine_()) / 4294967295.0;
  }
  int below(int count) { return static_cast<int>(engine_() % static_cast<unsigned>(count)); }
  bool chance(double share) { return between(0, 1) < share; }

 private:
  std::mt19937 engine_;
};

struct RandomReach {
  std::vector<ReachSection> sections;
  ProfileCase flow_case;
};

Section any_section(Numbers& numbers, double bed) {
  std::vector<SectionPoint> points;
  double x = numbers.between(-50, 50);
  const auto add = [&](double z) {
    points.push_back({Length::meters(x), Length::meters(bed + z),
                      Dimensionless::number(numbers.between(0.015, 0.12))});
  };
  add(numbers.between(1, 6));
  const int inner = 1 + numbers.below(9);
  for (int i = 0; i < inner; ++i) {
    const bool wall = numbers.chance(0.15) && points.size() >= 2 &&
                      points.back().station > points[points.size() - 2].station;
    if (!wall) x += numbers.between(0.3, 15);
    add(numbers.chance(0.2) ? 0.0 : numbers.between(0, 4));
  }
  x += numbers.between(0.3, 15);
  add(numbers.between(1, 6));
  auto section = Section::make(points);
  while (!section) {  // a wall of no height: move its second point
    for (auto& point : points)
      point.elevation = point.elevation + Length::meters(numbers.between(0, 0.01));
    section = Section::make(points);
  }
  return *section;
}

Boundary any_boundary(Numbers& numbers, const Section& section) {
  switch (numbers.below(3)) {
    case 0:
      return Boundary::normal(Slope::ratio(std::pow(10.0, numbers.between(-4, -1))));
    case 1:
      return Boundary::known(section.lowest() + Length::meters(numbers.between(0.05, 8)));
    default:
      return Boundary::critical();
  }
}

RandomReach any_reach(std::uint32_t seed) {
  Numbers numbers(seed);
  RandomReach reach;
  const int count = 2 + numbers.below(4);
  const bool banks = numbers.chance(0.6);
  const double steepest = std::pow(10.0, numbers.between(-3.5, -0.7));
  const auto composite =
      std::vector<CompositeRoughness>{CompositeRoughness::horton, CompositeRoughness::pavlovskii,
                                      CompositeRoughness::lotter}[numbers.below(3)];
  double bed = 100;
  for (int i = 0; i < count; ++i) {
    ReachSection one{"", any_section(numbers, bed)};
    one.composite = composite;
    const Length width = one.section.right_end() - one.section.left_end();
    if (banks) {
      one.left_bank = one.section.left_end() + numbers.between(0, 0.45) * width;
      one.right_bank = one.section.left_end() + numbers.between(0.55, 1) * width;
    }
    if (numbers.chance(0.2)) {
      const double from = numbers.between(0, 0.8);
      one.ineffective = {{one.section.left_end() + from * width,
                          one.section.left_end() + (from + numbers.between(0.05, 0.2)) * width,
                          one.section.lowest() + Length::meters(numbers.between(0.2, 4))}};
    }
    const double length = std::pow(10.0, numbers.between(0, 2.7));
    one.to_next = {Length::meters(length * numbers.between(0.5, 1.5)), Length::meters(length),
                   Length::meters(length * numbers.between(0.5, 1.5))};
    if (numbers.chance(0.3)) {
      one.losses = {Dimensionless::number(numbers.between(0, 0.8)),
                    Dimensionless::number(numbers.between(0, 1))};
    }
    bed -= length * steepest * numbers.between(-0.3, 1);
    reach.sections.push_back(std::move(one));
  }
  ProfileCase& flow_case = reach.flow_case;
  flow_case.discharge =
      Discharge::cubic_meters_per_second(std::pow(10.0, numbers.between(-2, 3.3)));
  flow_case.friction =
      std::vector<FrictionMean>{FrictionMean::average_conveyance, FrictionMean::arithmetic,
                                FrictionMean::geometric, FrictionMean::harmonic}[numbers.below(4)];
  flow_case.downstream = any_boundary(numbers, reach.sections.back().section);
  if (numbers.chance(0.5)) {
    flow_case.upstream = any_boundary(numbers, reach.sections.front().section);
  }
  return reach;
}

/// Whether a boundary was refused, which is no failure of the profile.
bool boundary_refused(const Problems& problems) {
  return problems.front().code == "level-not-above-bed";
}

void expect_sound(const WaterProfile& profile, const RandomReach& reach) {
  RC_ASSERT(profile.sections.size() == reach.sections.size());
  for (std::size_t i = 0; i < profile.sections.size(); ++i) {
    const ProfileSection& one = profile.sections[i];
    RC_ASSERT(std::isfinite(one.flow.water_level.meters()));
    RC_ASSERT(one.flow.water_level > reach.sections[i].section.lowest());
    RC_ASSERT(one.flow.wet.area.si() > 0);
    RC_ASSERT(one.flow.energy_coefficient.number() > 1 - 1e-9);
    RC_ASSERT(std::isfinite(one.flow.froude_number.number()));
    if (i == 0) continue;
    // Energy is only lost on the way down, in a jump or by friction.
    RC_ASSERT(one.energy_level <= profile.sections[i - 1].energy_level + Length::meters(1e-9));
  }
  for (const ProfileJump& jump : profile.jumps) {
    RC_ASSERT(profile.sections[jump.upstream_section].regime == FlowRegime::supercritical);
    RC_ASSERT(profile.sections[jump.upstream_section + 1].regime == FlowRegime::subcritical);
  }
}

// Times 100 seeds: 10,000 reaches, and fewer where a sanitizer makes each fifty times as long.
#ifdef __has_feature
#if __has_feature(address_sanitizer)
constexpr int reaches_in_each = 5;
#else
constexpr int reaches_in_each = 100;
#endif
#else
constexpr int reaches_in_each = 100;
#endif

void expect_sound_reach(std::uint32_t seed) {
  const RandomReach random = any_reach(seed);
  const auto reach = Reach::make(random.sections);
  RC_ASSERT(static_cast<bool>(reach));
  const auto profile = water_profile(*reach, random.flow_case);
  if (!profile) {
    RC_ASSERT(boundary_refused(profile.problems()));
    return;
  }
  expect_sound(*profile, random);
}

RC_GTEST_PROP(ReachProperties, EverySectionEndsWithALevelAndEnergyNeverRises, ()) {
  const auto seed = *rc::gen::arbitrary<std::uint32_t>();
  for (int i = 0; i < reaches_in_each; ++i) {
    RC_LOG() << "reach " << seed + static_cast<std::uint32_t>(i) << "\n";
    expect_sound_reach(seed + static_cast<std::uint32_t>(i));
  }
}

// An ineffective part begins to flow just where energy is least: no tranquil level balances, and
// the critical level of least energy has too little. Found at random.
RC_GTEST_PROP(ReachProperties, EnergyThatJumpsAtACriticalLevelIsKept, ()) {
  expect_sound_reach(191356);
}

RC_GTEST_PROP(ReachProperties, InterpolatedReachesAreSoundToo, ()) {
  RandomReach random = any_reach(*rc::gen::arbitrary<std::uint32_t>());
  const auto reach = Reach::make(random.sections, Length::meters(40));
  RC_ASSERT(static_cast<bool>(reach));
  const auto profile = water_profile(*reach, random.flow_case);
  if (!profile) {
    RC_ASSERT(boundary_refused(profile.problems()));
    return;
  }
  random.sections = reach->sections();
  expect_sound(*profile, random);
}

Section mirrored(const Section& section) {
  const auto& points = section.points();
  std::vector<SectionPoint> turned;
  for (std::size_t i = points.size(); i-- > 0;) {
    turned.push_back(
        {-1.0 * points[i].station, points[i].elevation, points[i > 0 ? i - 1 : 0].roughness});
  }
  const auto made = Section::make(turned);
  RC_ASSERT(static_cast<bool>(made));
  return *made;
}

/// A level that stands between two answers may fall on either by the last digit; so may one that
/// stands where an ineffective part begins to flow.
bool is_plain(const WaterProfile& profile) {
  return std::none_of(profile.sections.begin(), profile.sections.end(), [](const auto& one) {
    return one.has(ProfileNote::further_levels) || one.has(ProfileNote::several_critical) ||
           one.has(ProfileNote::ineffective_height) || one.has(ProfileNote::critical_assumed);
  });
}

RC_GTEST_PROP(ReachProperties, AMirroredReachHasTheSameLevels, ()) {
  const RandomReach random = any_reach(*rc::gen::arbitrary<std::uint32_t>());
  std::vector<ReachSection> sections;
  for (const ReachSection& one : random.sections) {
    ReachSection turned = one;
    turned.section = mirrored(one.section);
    if (one.left_bank) {
      turned.left_bank = -1.0 * *one.right_bank;
      turned.right_bank = -1.0 * *one.left_bank;
    }
    for (auto& part : turned.ineffective) {
      part = {-1.0 * part.right, -1.0 * part.left, part.until};
    }
    turned.to_next = {one.to_next.right, one.to_next.channel, one.to_next.left};
    sections.push_back(std::move(turned));
  }
  const auto one = water_profile(*Reach::make(random.sections), random.flow_case);
  const auto other = water_profile(*Reach::make(sections), random.flow_case);
  RC_ASSERT(static_cast<bool>(one) == static_cast<bool>(other));
  if (!one || !is_plain(*one)) return;
  for (std::size_t i = 0; i < one->sections.size(); ++i) {
    RC_ASSERT(std::abs((one->sections[i].flow.water_level - other->sections[i].flow.water_level)
                           .meters()) < 1e-6);
  }
}

// Froude's law: lengths by λ, roughness by λ^(1/6), discharge by λ^2.5 take velocities by √λ.
RC_GTEST_PROP(ReachProperties, ScalesAsFroudeSays, ()) {
  const RandomReach random = any_reach(*rc::gen::arbitrary<std::uint32_t>());
  const double scale = 2;
  std::vector<ReachSection> sections;
  for (const ReachSection& one : random.sections) {
    std::vector<SectionPoint> points = one.section.points();
    for (auto& point : points) {
      point = {scale * point.station, scale * point.elevation,
               std::pow(scale, 1.0 / 6.0) * point.roughness};
    }
    ReachSection larger = one;
    larger.section = *Section::make(points);
    if (one.left_bank) {
      larger.left_bank = scale * *one.left_bank;
      larger.right_bank = scale * *one.right_bank;
    }
    for (auto& part : larger.ineffective) {
      part = {scale * part.left, scale * part.right, scale * part.until};
    }
    larger.to_next = {scale * one.to_next.left, scale * one.to_next.channel,
                      scale * one.to_next.right};
    sections.push_back(std::move(larger));
  }
  ProfileCase larger_case = random.flow_case;
  larger_case.discharge = std::pow(scale, 2.5) * larger_case.discharge;
  larger_case.downstream.level = scale * larger_case.downstream.level;
  if (larger_case.upstream) larger_case.upstream->level = scale * larger_case.upstream->level;
  const auto one = water_profile(*Reach::make(random.sections), random.flow_case);
  const auto other = water_profile(*Reach::make(sections), larger_case);
  RC_ASSERT(static_cast<bool>(one) == static_cast<bool>(other));
  if (!one || !is_plain(*one)) return;
  for (std::size_t i = 0; i < one->sections.size(); ++i) {
    const auto& small = one->sections[i].flow;
    const auto& large = other->sections[i].flow;
    RC_ASSERT(std::abs(large.water_level.meters() / scale - small.water_level.meters()) < 1e-6);
  }
}

// Tranquil flow knows nothing of what lies upstream.
RC_GTEST_PROP(ReachProperties, TheUpperPartOfAReachGoesOnFromTheLowerPart, ()) {
  RandomReach random = any_reach(*rc::gen::arbitrary<std::uint32_t>());
  random.flow_case.regime = ProfileRegime::subcritical;
  const auto whole = water_profile(*Reach::make(random.sections), random.flow_case);
  if (!whole || random.sections.size() < 3) return;
  const std::size_t at = random.sections.size() - 2;
  if (whole->sections[at].regime != FlowRegime::subcritical) return;
  const std::vector<ReachSection> upper(
      random.sections.begin(), random.sections.begin() + static_cast<std::ptrdiff_t>(at) + 1);
  ProfileCase upper_case = random.flow_case;
  upper_case.downstream = Boundary::known(whole->sections[at].flow.water_level);
  const auto part = water_profile(*Reach::make(upper), upper_case);
  RC_ASSERT(static_cast<bool>(part));
  for (std::size_t i = 0; i <= at; ++i) {
    RC_ASSERT(std::abs((part->sections[i].flow.water_level - whole->sections[i].flow.water_level)
                           .meters()) < 1e-9);
  }
}

}  // namespace
}  // namespace proofstone
