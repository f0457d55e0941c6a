#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/finding/problem.h"
#include "engine/rock/gradation.h"

namespace proofstone {

/// The rock of a filled mix.
struct MixRock {
  Gradation gradation;
  double voids = 0.4;  ///< share of the bulk volume of the rock placed alone
};

/// What fills its voids. What is absent is not known.
struct MixFill {
  std::string name;
  Gradation gradation;
  std::optional<double> porosity;             ///< in place, alone
  std::optional<double> in_place_over_loose;  ///< c; 1 where parts are measured in place
};

/// Whether fill and rock are mixed before placing, or the fill is washed into rock that lies.
enum class MixPlacing { mixed, washed_in };

/// A filled mix by parts of loose volume: so many of rock, so many of each fill.
struct FilledMix {
  MixRock rock;
  double rock_parts = 1;
  std::vector<MixFill> fills;
  std::vector<double> fill_parts;  ///< one a fill
  MixPlacing placing = MixPlacing::mixed;
};

/// What a mix comes to, for each unit of bulk volume of its rock.
struct MixBalance {
  double loose_ratio = 0;    ///< loose fill to rock
  double fill_in_place = 0;  ///< volume of all fill in place, the fills in one another
  double filling = 0;        ///< degree: of the voids of the rock; above 1 it bulks
  double bulking = 1;        ///< volume of the mix over that of the rock
  /// Of the rock by the packing model, mixed before placing. Absent, as is the density, where the
  /// porosity of a fill is not known or beyond what the model reaches.
  std::optional<double> dilation;
  std::optional<double> mix_density;           ///< solids share by the packing model
  std::vector<double> solids;                  ///< of each fill
  std::optional<double> compaction_that_fits;  ///< c at which these parts just fill, one fill only
  Problems beyond_packing;  ///< of rock and fill that the packing model does not reach
};

/// Contact of the rock is being lost above this dilation (common practice).
inline constexpr double most_dilation = 1.05;
/// Fill that leaves a tenth of the voids open is not full (common practice).
inline constexpr double least_filling = 0.9;
/// What a problem of the rock of a mix names as its place.
inline constexpr const char* of_rock = "rock";
/// Fill up to this share of the rock's size can be washed in (geometry of throats, rounded).
inline constexpr double washed_in_ratio = 0.15;

/// Whether the fill leaves less than a tenth of the voids open.
bool is_full(const MixBalance& balance);

/// Volume balance, and dilation by the compressible packing model at K = 4.5 with the sizes of all
/// curves. Several fills lie in one another's voids: their volume in place is that of their solids
/// over the density that the packing model gives for them together.
///
/// Problems: parts that are not positive, a fill without in_place_over_loose, several fills of
/// which one has no porosity or lies looser or denser than the packing model reaches, voids or
/// porosities outside what grains can have.
Expected<MixBalance> balance_of(const FilledMix& mix);

/// Whether the curve of the rock stops above 0 %, as those of classes do: nothing limits the stones
/// below it.
bool rock_is_open_below(const FilledMix& mix);

/// The curve of the whole mix by the volume of its solids. Rock that is open below is taken to end
/// at half of its smallest size, which leaves the widest gap to the fill. Problems as of
/// balance_of, and of curves that do not meet.
Expected<Gradation> mix_curve(const FilledMix& mix, const MixBalance& balance);

/// Whether the fill can be washed into the rock: nine tenths of it smaller than 0.15 of the rock's
/// D15. Absent where the curves do not reach.
std::optional<bool> can_be_washed_in(const FilledMix& mix);

}  // namespace proofstone
