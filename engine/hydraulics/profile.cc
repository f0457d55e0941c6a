#include "engine/hydraulics/profile.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <utility>

#include "engine/hydraulics/profile_passes.h"

namespace proofstone {

namespace {

/// Shares of the conveyance between which it should change from a section to the next.
constexpr double least_conveyance_ratio = 0.7;
constexpr double greatest_conveyance_ratio = 1.4;

Length along(double from, double to, double share) {
  return Length::meters(from + share * (to - from));
}

Length lower_bank(const ReachSection& section) {
  const Section& ground = section.section;
  return std::min(ground.ground_at(section.left_bank.value_or(ground.left_end())),
                  ground.ground_at(section.right_bank.value_or(ground.right_end())));
}

/// Turns what the passes found into the profile that is told.
class ProfileWriter {
 public:
  ProfileWriter(const std::deque<LevelTable>& tables, const PassedReach& found, Discharge discharge)
      : tables_(tables), found_(found), discharge_(discharge) {}

  WaterProfile write() const {
    WaterProfile profile;
    profile.discharge = discharge_;
    Length distance;
    for (std::size_t i = 0; i < tables_.size(); ++i) {
      profile.sections.push_back(section(i, distance));
      distance = distance + tables_[i].section().to_next.channel;
    }
    for (std::size_t i = 0; i + 1 < tables_.size(); ++i) {
      if (is_jump(i)) profile.jumps.push_back(jump(i, profile.sections[i]));
    }
    return profile;
  }

 private:
  ProfileSection section(std::size_t i, Length distance) const {
    const LevelTable& table = tables_[i];
    const KeptLevel& level = found_.levels[i];
    const EnergyBranches& energy = found_.energies[i];
    const double q = discharge_.si();
    ProfileSection one;
    one.name = table.section().name;
    one.interpolated = table.section().interpolated;
    one.distance = distance;
    one.lower_bank = lower_bank(table.section());
    one.flow = carrying(table.divided().flow(Length::meters(level.kept.state.level)), discharge_);
    one.regime = level.regime;
    one.energy_level = Length::meters(energy_level(level.kept.state, q));
    one.critical_level = Length::meters(energy.used_critical().level);
    for (std::size_t j = 0; j < energy.critical.size(); ++j) {
      if (j == energy.least) continue;
      one.further_critical_levels.push_back(Length::meters(energy.critical[j].level));
    }
    one.friction_slope = Slope::ratio(friction_slope(level.kept.state, q));
    one.specific_force_si = specific_force(level.kept.state, q);
    if (level.tranquil) one.subcritical_level = Length::meters(level.tranquil->state.level);
    if (level.rapid) one.supercritical_level = Length::meters(level.rapid->state.level);
    one.notes = level.notes;
    add_notes(i, one);
    return one;
  }

  void add_notes(std::size_t i, ProfileSection& one) const {
    const KeptLevel& level = found_.levels[i];
    const auto add = [&](bool holds, ProfileNote note) {
      if (holds) one.notes.push_back(note);
    };
    add(one.flow.wet.end_wall_added, ProfileNote::section_extended);
    add(one.flow.wet.wet_stretches > 1, ProfileNote::separate_water);
    add(level.kept.at_ineffective_height, ProfileNote::ineffective_height);
    add(level.kept.others_balance, ProfileNote::further_levels);
    add(!one.further_critical_levels.empty(), ProfileNote::several_critical);
    if (i + 1 == tables_.size()) return;
    const double ratio = found_.levels[i + 1].kept.state.conveyance / level.kept.state.conveyance;
    add(ratio < least_conveyance_ratio || ratio > greatest_conveyance_ratio,
        ProfileNote::conveyance_step);
  }

  bool is_jump(std::size_t i) const {
    return found_.levels[i].regime == FlowRegime::supercritical &&
           found_.levels[i + 1].regime != FlowRegime::supercritical &&
           found_.levels[i + 1].kept.balanced && found_.levels[i].tranquil;
  }

  ProfileJump jump(std::size_t i, const ProfileSection& before) const {
    const KeptLevel& up = found_.levels[i];
    const KeptLevel& down = found_.levels[i + 1];
    const double q = discharge_.si();
    // Where rapid flow no longer reaches the next section it has risen to critical there.
    const SectionState rapid_down =
        down.rapid ? down.rapid->state : found_.energies[i + 1].used_critical();
    const SectionState& rapid_up = up.rapid->state;
    const SectionState& tranquil_up = up.tranquil->state;
    const SectionState& tranquil_down = down.tranquil->state;
    const double rapid_stronger = specific_force(rapid_up, q) - specific_force(tranquil_up, q);
    const double tranquil_stronger =
        specific_force(tranquil_down, q) - specific_force(rapid_down, q);
    const double both = rapid_stronger + tranquil_stronger;
    const double share = both > 0 ? std::clamp(rapid_stronger / both, 0.0, 1.0) : 0.0;
    ProfileJump jump;
    jump.upstream_section = i;
    jump.distance = before.distance + share * tables_[i].section().to_next.channel;
    jump.level_before = along(rapid_up.level, rapid_down.level, share);
    jump.level_after = along(tranquil_up.level, tranquil_down.level, share);
    jump.froude_before = before.flow.froude_number;
    jump.energy_lost = along(energy_level(rapid_up, q), energy_level(rapid_down, q), share) -
                       along(energy_level(tranquil_up, q), energy_level(tranquil_down, q), share);
    return jump;
  }

  const std::deque<LevelTable>& tables_;
  const PassedReach& found_;
  Discharge discharge_;
};

}  // namespace

struct ProfileSolver::Prepared {
  explicit Prepared(const Reach& from) : reach(from) {
    for (const ReachSection& section : reach.sections()) {
      tables.emplace_back(section);
    }
  }
  Reach reach;
  std::deque<LevelTable> tables;
};

ProfileSolver::ProfileSolver(const Reach& reach) : prepared_(std::make_unique<Prepared>(reach)) {}
ProfileSolver::~ProfileSolver() = default;
ProfileSolver::ProfileSolver(ProfileSolver&&) noexcept = default;
ProfileSolver& ProfileSolver::operator=(ProfileSolver&&) noexcept = default;

Expected<WaterProfile> ProfileSolver::solve(const ProfileCase& flow_case) const {
  const double q = flow_case.discharge.si();
  if (!(q > 0) || !std::isfinite(q)) {
    return Problem{"discharge-not-positive", "The discharge is not a positive number.", "",
                   "discharge", "a discharge above 0"};
  }
  const auto found = pass_through(prepared_->tables, flow_case);
  if (!found) return found.problems();
  return ProfileWriter(prepared_->tables, *found, flow_case.discharge).write();
}

Expected<WaterProfile> water_profile(const Reach& reach, const ProfileCase& flow_case) {
  return ProfileSolver(reach).solve(flow_case);
}

bool ProfileSection::has(ProfileNote note) const {
  return std::find(notes.begin(), notes.end(), note) != notes.end();
}

std::string_view friction_mean_name(FrictionMean mean) {
  switch (mean) {
    case FrictionMean::average_conveyance:
      return "average conveyance";
    case FrictionMean::arithmetic:
      return "arithmetic";
    case FrictionMean::geometric:
      return "geometric";
    case FrictionMean::harmonic:
      return "harmonic";
  }
  return "";
}

std::string_view flow_regime_name(FlowRegime regime) {
  switch (regime) {
    case FlowRegime::subcritical:
      return "subcritical";
    case FlowRegime::critical:
      return "critical";
    case FlowRegime::supercritical:
      return "supercritical";
  }
  return "";
}

std::string_view profile_note_sentence(ProfileNote note) {
  switch (note) {
    case ProfileNote::control:
      return "Critical flow: the section controls the flow above and below it.";
    case ProfileNote::critical_assumed:
      return "Critical depth assumed: no level balances the energy here; add sections or shorten "
             "the step.";
    case ProfileNote::boundary_not_used:
      return "The level of the boundary lies on the wrong side of critical and was not used.";
    case ProfileNote::section_extended:
      return "The water stands above an end of the survey; a vertical wall was added there.";
    case ProfileNote::separate_water:
      return "Low ground behind higher ground is taken to carry water; look whether it is "
             "connected.";
    case ProfileNote::ineffective_height:
      return "The level stands where an ineffective part begins to flow; the energy does not "
             "balance exactly.";
    case ProfileNote::further_levels:
      return "Another level would also balance the energy.";
    case ProfileNote::several_critical:
      return "The section has several critical depths; the one of least energy was used.";
    case ProfileNote::conveyance_step:
      return "The conveyance changes by more than 0.7 to 1.4 times to the next section; shorten "
             "the "
             "step (common practice).";
  }
  return "";
}

}  // namespace proofstone
