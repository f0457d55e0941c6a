#include "engine/hydraulics/profile_passes.h"

#include <fmt/format.h>

#include <utility>

#include "engine/hydraulics/boundary_level.h"

namespace proofstone {

namespace {

/// One discharge on its way through the sections.
class Passes {
 public:
  Passes(const std::deque<LevelTable>& tables, const ProfileCase& flow_case)
      : tables_(tables), case_(flow_case) {
    found_.choices = {flow_case.discharge.si(), flow_case.friction};
    found_.levels.resize(tables.size());
  }

  Expected<PassedReach> run() {
    Problems problems = find_energies();
    if (problems.empty() && case_.regime != ProfileRegime::supercritical) {
      problems = pass_upstream();
    }
    if (problems.empty() && case_.regime == ProfileRegime::subcritical) keep_tranquil();
    if (problems.empty() && case_.regime != ProfileRegime::subcritical) {
      problems = pass_downstream();
    }
    if (!problems.empty()) return problems;
    return std::move(found_);
  }

 private:
  std::size_t last() const { return tables_.size() - 1; }
  double discharge() const { return found_.choices.discharge; }
  Station station(std::size_t i) const { return {tables_[i], found_.energies[i]}; }

  Problems find_energies() {
    for (std::size_t i = 0; i < tables_.size(); ++i) {
      auto energies = energy_branches(tables_[i], discharge());
      if (!energies) {
        return {{"too-much-water", "The section is too small for the discharge.", "",
                 fmt::format("section {}", i + 1), "a smaller discharge, or a wider section"}};
      }
      found_.energies.push_back(std::move(*energies));
    }
    return {};
  }

  BalancedLevel critical_at(std::size_t i) const {
    BalancedLevel level;
    level.state = found_.energies[i].used_critical();
    level.balanced = false;
    return level;
  }

  Problems pass_upstream() {
    const std::size_t end = last();
    const auto start = boundary_level(station(end), case_.downstream, discharge());
    if (!start) return located_under(start.problems(), "downstream ");
    BalancedLevel level;
    level.state = *start;
    if (case_.downstream.kind == Boundary::Kind::critical) {
      level.balanced = false;
    } else if (!found_.energies[end].is_tranquil(start->level)) {
      level = critical_at(end);
      found_.levels[end].notes.push_back(ProfileNote::boundary_not_used);
    }
    found_.levels[end].tranquil = level;
    for (std::size_t i = end; i-- > 0;) {
      level = level_upstream(station(i), tables_[i + 1], level.state, found_.choices);
      found_.levels[i].tranquil = level;
    }
    return {};
  }

  void keep_tranquil() {
    for (std::size_t i = 0; i < found_.levels.size(); ++i) {
      KeptLevel& level = found_.levels[i];
      level.kept = *level.tranquil;
      if (level.kept.balanced) continue;
      level.regime = FlowRegime::critical;
      const bool is_boundary = i == last();
      if (is_boundary && !level.notes.empty()) continue;
      level.notes.push_back(is_boundary ? ProfileNote::control : ProfileNote::critical_assumed);
    }
  }

  /// The rapid flow with which the downstream pass begins, if there is any.
  Problems start_downstream() {
    KeptLevel& first = found_.levels.front();
    if (!case_.upstream) {
      if (case_.regime == ProfileRegime::mixed) return {};
      return {{"no-upstream-boundary", "Rapid flow needs a boundary at the upstream end.", "",
               "upstream boundary", "a level, a slope or critical flow"}};
    }
    const auto start = boundary_level(station(0), *case_.upstream, discharge());
    if (!start) return located_under(start.problems(), "upstream ");
    BalancedLevel level;
    level.state = *start;
    const bool critical = case_.upstream->kind == Boundary::Kind::critical;
    if (critical || found_.energies.front().is_tranquil(start->level)) {
      if (!critical) first.notes.push_back(ProfileNote::boundary_not_used);
      if (!critical && case_.regime == ProfileRegime::mixed) return {};
      level = critical_at(0);
    }
    first.rapid = level;
    return {};
  }

  Problems pass_downstream() {
    Problems problems = start_downstream();
    if (!problems.empty()) return problems;
    keep_at(0);
    for (std::size_t i = 1; i < tables_.size(); ++i) {
      const KeptLevel& before = found_.levels[i - 1];
      if (before.regime != FlowRegime::subcritical) {
        BalancedLevel level =
            level_downstream(tables_[i - 1], before.kept.state, station(i), found_.choices);
        if (level.balanced || case_.regime == ProfileRegime::supercritical) {
          found_.levels[i].rapid = level;
        }
      }
      keep_at(i);
    }
    note_critical_levels();
    return {};
  }

  /// Keeps the flow of the greater specific force, or the one there is.
  void keep_at(std::size_t i) {
    KeptLevel& level = found_.levels[i];
    const bool rapid = level.rapid && (!level.tranquil || is_stronger(*level.rapid, level));
    level.kept = rapid ? *level.rapid : *level.tranquil;
    level.regime = !level.kept.balanced ? FlowRegime::critical
                   : rapid              ? FlowRegime::supercritical
                                        : FlowRegime::subcritical;
  }

  bool is_stronger(const BalancedLevel& rapid, const KeptLevel& level) const {
    const BalancedLevel& tranquil = *level.tranquil;
    if (!tranquil.balanced) return true;
    const double q = discharge();
    return specific_force(rapid.state, q) > specific_force(tranquil.state, q) &&
           energy_level(rapid.state, q) > energy_level(tranquil.state, q);
  }

  /// A critical level followed by rapid flow is a control; elsewhere it was assumed.
  void note_critical_levels() {
    for (std::size_t i = 0; i < found_.levels.size(); ++i) {
      KeptLevel& level = found_.levels[i];
      if (level.regime != FlowRegime::critical) continue;
      const bool rapid_follows =
          i < last() && found_.levels[i + 1].regime == FlowRegime::supercritical;
      const bool at_top_unknown = i == 0 && !case_.upstream;
      const bool at_boundary =
          i == last() && case_.downstream.kind == Boundary::Kind::critical && level.tranquil;
      if (rapid_follows || at_boundary) level.notes.push_back(ProfileNote::control);
      if (at_top_unknown || !(rapid_follows || at_boundary)) {
        level.notes.push_back(ProfileNote::critical_assumed);
      }
    }
  }

  const std::deque<LevelTable>& tables_;
  const ProfileCase& case_;
  PassedReach found_;
};

}  // namespace

Expected<PassedReach> pass_through(const std::deque<LevelTable>& tables,
                                   const ProfileCase& flow_case) {
  return Passes(tables, flow_case).run();
}

}  // namespace proofstone
