#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace proofstone {

/// The groups of the unified classification, in the order of its chart.
enum class SoilGroup { none, gw, gp, gm, gc, sw, sp, sm, sc, ml, cl, ol, mh, ch, oh };

/// "GW", "SC" …; empty for none.
std::string_view group_symbol(SoilGroup group);

/// What the fines are where no limits were tested.
enum class FinesKind { unknown, silt, clay };

/// What classification looks at. Percents of the material smaller than 3 in (75 mm), by mass.
struct SoilIndex {
  double passing_no_4 = 0;
  double passing_no_200 = 0;
  std::optional<double> uniformity;  ///< Cu
  std::optional<double> curvature;   ///< Cc
  std::optional<double> liquid_limit;
  std::optional<double> plasticity_index;  ///< 0 for what is not plastic
  FinesKind fines = FinesKind::unknown;
  bool organic = false;  ///< liquid limit after oven drying below 0.75 of the one before

  double gravel() const { return 100 - passing_no_4; }
  double sand() const { return passing_no_4 - passing_no_200; }
};

/// A group with its second half where the symbol is dual, or why there is none.
struct SoilClass {
  SoilGroup first = SoilGroup::none;
  SoilGroup second = SoilGroup::none;
  std::string name;     ///< "clayey sand with gravel"
  std::string missing;  ///< what must be known first; empty where the group is

  bool known() const { return first != SoilGroup::none; }
  std::string symbol() const;  ///< "GW-GM"
};

/// PI of the A-line: 0.73(LL − 20), not less than 4.
double a_line(double liquid_limit);

/// The group and name by the rules of ASTM D2487 (from memory; the rule of dual symbols was read).
SoilClass classify_soil(const SoilIndex& soil);

}  // namespace proofstone
