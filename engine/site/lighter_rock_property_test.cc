#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/method/registry.h"
#include "engine/site/example_document.h"
#include "engine/site/reach_water.h"
#include "engine/site/zone_water.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {
namespace {

/// The water of the example's bank in its flood; the document is kept, for the setting points in.
struct Flooded {
  Flooded() : site(*site_from(ExampleDocument().document())) {
    const Wording wording(UnitSystem::us_customary);
    water = water_at_zone(site, site.zones.at("bank"), water_in_reaches(site, wording), wording);
  }
  Site site;
  std::vector<ZoneWater> water;
};

// Whatever the method: the lighter the rock, the larger the stone it asks for, and never a smaller
// one.
RC_GTEST_PROP(LighterRock, LighterRockNeverNeedsSmallerStones, ()) {
  static const Flooded flooded;
  ZoneSetting heavy = *flooded.water.back().setting;
  ZoneSetting light = heavy;
  const int low = *rc::gen::inRange(220, 300);
  const int high = *rc::gen::inRange(low, 320);
  light.rock.specific_gravity = Dimensionless::number(low / 100.0);
  heavy.rock.specific_gravity = Dimensionless::number(high / 100.0);
  int compared = 0;
  std::string broken;
  for (const auto* method : sizing_methods()) {
    if (!serves(*method, heavy.place)) continue;
    const auto of_light = method->size(light);
    const auto of_heavy = method->size(heavy);
    if (!of_light.required || !of_heavy.required) continue;
    ++compared;
    if (of_light.required->size.si() < of_heavy.required->size.si() * (1 - 1e-9)) {
      broken += method->description().id + " ";
    }
  }
  RC_ASSERT(broken == "");
  RC_ASSERT(compared > 3);
}

}  // namespace
}  // namespace proofstone
