#pragma once

#include "engine/blend/blend_shares.h"
#include "engine/blend/load_plan.h"
#include "engine/site/site.h"

namespace proofstone {

/// The materials of a document as the solver takes them, in the order of their ids.
std::vector<OfferedMaterial> offered_materials(const Site& site);

/// What to blend, and into what.
struct BlendQuestion {
  std::string rock_class;
  std::vector<std::string> materials;  ///< ids; empty: all of the document
  std::optional<Mass> mass;            ///< for whole loads
  double margin = 0;                   ///< percent inside every limit, for what is cheapest
  int buckets = 12;                    ///< at most, to a recipe
  /// Stones larger than this could be taken out of any material that states no size of its own; the
  /// material as it is stays on offer.
  std::optional<Length> scalp_at = {};
};

/// What the materials can do together. What could not be found is absent, and `why` says what
/// stands in the way.
struct SiteBlend {
  const RockClass* rock_class = nullptr;
  std::vector<OfferedMaterial> materials;  ///< with what they are after scalping
  BlendTarget target;
  std::optional<std::vector<ShareRange>> ranges;
  std::optional<SharedBlend> widest;
  std::optional<SharedBlend> fitted;
  std::optional<SharedBlend> cheapest;
  std::optional<LoadPlan> recipe;
  std::optional<LoadPlan> loads;
  std::optional<NearestBlend> nearest;  ///< where no blend keeps the band
  std::vector<std::string> why;
};

/// Problems: a class or material that is not there, what cannot be blended at all, a margin, a mass
/// or a size to scalp at without meaning.
Expected<SiteBlend> blend_on_site(const Site& site, const BlendQuestion& question);

}  // namespace proofstone
