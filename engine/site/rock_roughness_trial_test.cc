#include "engine/site/rock_roughness_trial.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/hydraulics/rock_roughness_flow.h"
#include "engine/site/example_document.h"

namespace proofstone {
namespace {

/// A method that asks for one size in fast water, another in slower and a third in the slowest: no
/// real one is so contrary, but a search must not be led astray by one.
class ContraryMethod : public SizingMethod {
 public:
  struct Demand {
    Velocity faster_than;
    Length size;
  };
  std::vector<Demand> demands;  ///< fastest first, the last for all the rest

  const MethodDescription& description() const override { return about_; }
  Expected<Evaluation> evaluate(const nlohmann::json&) const override { return refuse(); }
  Expected<std::unique_ptr<VariedOutput>> vary(const nlohmann::json&,
                                               const std::vector<std::string>&,
                                               const std::string&) const override {
    return refuse();
  }
  const std::vector<ZonePlace>& places() const override { return places_; }
  SizingAnswer size(const ZoneSetting& zone) const override {
    SizingAnswer answer;
    for (const Demand& demand : demands) {
      answer.required = RequiredSize{50, demand.size};
      if (zone.average_velocity > demand.faster_than) break;
    }
    return answer;
  }
  std::optional<RequiredSize> required_size(const ZoneSetting& zone) const override {
    return size(zone).required;
  }
  const nlohmann::json& without_margins() const override { return *none_; }
  Expected<VariedSize> vary_size(const ZoneSetting&, const std::vector<std::string>&,
                                 SizeMeaning) const override {
    return refuse();
  }

 private:
  static Problem refuse() { return {"not-here", "Not in this test.", "", "", ""}; }
  MethodDescription about_;
  std::vector<ZonePlace> places_{ZonePlace::bank};
  HeldJson none_;
};

TEST(BalancingScales, AllAreFoundAndEveryLargerRockHolds) {
  const auto site = site_from(ExampleDocument().document());
  ASSERT_TRUE(site);
  const Zone& zone = site->zones.at("bank");
  const auto waters = water_at_zone(*site, zone, {}, Wording(UnitSystem::si));
  const SiteSection& section = site->sections.at("one");
  ContraryMethod method;
  const Length available = Length::feet(1);
  const RockRoughnessCase of{&zone,
                             &section,
                             &waters.back(),
                             find_rock_class("fhwa-3"),
                             {{&method, available}},
                             {Length::feet(26), Length::feet(124)},
                             Length::feet(1.5)};
  const auto low = Dimensionless::number(0.034);
  method.demands = {{Velocity(), available}};
  const auto velocity_over = [&](double scale) {
    const auto trial =
        water_over_rock(of, rock_roughness(scale * of.d90, low), of.water->flow->water_level);
    EXPECT_TRUE(trial);
    return trial ? trial->setting.average_velocity : Velocity();
  };
  // Rock of 0.3 to 0.5, of 1 to 1.5 and from 2 on holds in the water that it makes.
  method.demands = {{velocity_over(0.5), Length::feet(0.3)},
                    {velocity_over(1.5), Length::feet(1)},
                    {Velocity(), Length::feet(2)}};
  const auto found = find_balancing_scales(of, low);
  const std::vector<double> expected{0.3, 0.5, 1, 1.5, 2};
  ASSERT_EQ(found.scales.size(), expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) {
    EXPECT_NEAR(found.scales[i], expected[i], 1e-7 * expected[i]) << i;
  }
  EXPECT_TRUE(found.largest_holds);
  EXPECT_TRUE(found.ended_by.empty()) << found.ended_by;
}

}  // namespace
}  // namespace proofstone
