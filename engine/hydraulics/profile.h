#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/hydraulics/reach.h"

namespace proofstone {

/// How the slope of the energy line is averaged between two sections.
enum class FrictionMean {
  average_conveyance,  ///< (2Q/(K₁+K₂))²
  arithmetic,          ///< (S₁+S₂)/2
  geometric,           ///< √(S₁·S₂)
  harmonic             ///< 2·S₁·S₂/(S₁+S₂)
};
std::string_view friction_mean_name(FrictionMean mean);

/// What is known of the water at an end of a reach.
struct Boundary {
  enum class Kind { normal_slope, critical, known_level, rating };
  /// One line of a rating table; between the lines it is read along straight lines.
  struct RatedLevel {
    Discharge discharge;
    Length level;
  };
  Kind kind = Kind::critical;
  Slope slope;                     ///< normal_slope
  Length level;                    ///< known_level
  std::vector<RatedLevel> rating;  ///< rating: discharges rise, levels do not fall

  static Boundary normal(Slope slope) { return {Kind::normal_slope, slope, {}, {}}; }
  static Boundary critical() { return {}; }
  static Boundary known(Length level) { return {Kind::known_level, {}, level, {}}; }
  static Boundary rated(std::vector<RatedLevel> table) {
    return {Kind::rating, {}, {}, std::move(table)};
  }
};

/// Which passes are made. Mixed flow keeps, at each section, the flow of the greater specific
/// force.
enum class ProfileRegime { mixed, subcritical, supercritical };

/// One discharge through a reach.
struct ProfileCase {
  Discharge discharge;
  Boundary downstream;
  /// Absent: nothing is known upstream, and rapid flow starts at a critical section at most.
  std::optional<Boundary> upstream = {};
  ProfileRegime regime = ProfileRegime::mixed;
  FrictionMean friction = FrictionMean::average_conveyance;
};

enum class FlowRegime { subcritical, critical, supercritical };
std::string_view flow_regime_name(FlowRegime regime);

/// What must be known when a level is used.
enum class ProfileNote {
  control,             ///< critical: tranquil flow upstream, rapid flow downstream
  critical_assumed,    ///< no level balances the energy; the critical one is put in its place
  boundary_not_used,   ///< the boundary's level lies on the wrong side of critical
  section_extended,    ///< water above an end of the section: a wall was added there
  separate_water,      ///< water in stretches apart from one another
  ineffective_height,  ///< the level stands where an ineffective part begins to flow
  further_levels,      ///< another level would also balance the energy
  several_critical,    ///< several critical levels; the one of least energy was used
  conveyance_step      ///< conveyance changes by more than 0.7 to 1.4 to the next section
};
std::string_view profile_note_sentence(ProfileNote note);

/// The water at one section of a profile.
struct ProfileSection {
  std::string name;
  bool interpolated = false;
  Length distance;    ///< along the channel from the first section
  Length lower_bank;  ///< elevation of the ground at the lower of the two banks
  SectionFlow flow;   ///< level, parts with their velocities, α, Froude number
  FlowRegime regime = FlowRegime::subcritical;
  Length energy_level;
  Length critical_level;
  std::vector<Length> further_critical_levels;
  Slope friction_slope;
  double specific_force_si = 0;  ///< β·Q²/(g·A) + A·z̄, m³
  /// Levels of the two passes, where they were worked out: rock beside a jump must suit both.
  std::optional<Length> subcritical_level;
  std::optional<Length> supercritical_level;
  std::vector<ProfileNote> notes;

  bool has(ProfileNote note) const;
};

/// A hydraulic jump between two neighbouring sections.
struct ProfileJump {
  std::size_t upstream_section = 0;
  /// Along the channel from the first section, where the specific forces of the two passes are
  /// equal, taken to change evenly between the sections.
  Length distance;
  Length level_before;
  Length level_after;
  Dimensionless froude_before;
  Length energy_lost;
};

struct WaterProfile {
  Discharge discharge;
  std::vector<ProfileSection> sections;
  std::vector<ProfileJump> jumps;
};

/// A reach made ready for many discharges: interpolated sections and tables of their states.
class ProfileSolver {
 public:
  explicit ProfileSolver(const Reach& reach);
  ~ProfileSolver();
  ProfileSolver(ProfileSolver&&) noexcept;
  ProfileSolver& operator=(ProfileSolver&&) noexcept;

  /// Steady gradually varied flow by the standard step method: the energy between neighbouring
  /// sections is balanced,
  ///
  ///   w₁ + α₁V₁²/2g = w₂ + α₂V₂²/2g + L·S̄f + C·|α₂V₂²/2g − α₁V₁²/2g|,
  ///
  /// upstream in tranquil and downstream in rapid flow, by bracketed root finding on the right side
  /// of critical. Every section ends with a level; where none balances the energy the critical
  /// level is put there and noted. (Chow 1959, chs. 9 to 11 and 15; Henderson 1966, chs. 4 and 5;
  /// from memory.) A jump's own length, its weight on a slope and the friction in it are left out.
  ///
  /// Problems: discharge not positive; a boundary that cannot be used (slope not positive, a level
  /// at or below the bed, a rating out of order or not reaching the discharge); rapid flow without
  /// an upstream boundary.
  Expected<WaterProfile> solve(const ProfileCase& flow_case) const;

 private:
  struct Prepared;
  std::unique_ptr<Prepared> prepared_;
};

/// The same for one discharge.
Expected<WaterProfile> water_profile(const Reach& reach, const ProfileCase& flow_case);

}  // namespace proofstone
