#include "engine/soil/soil_group.h"

#include <algorithm>
#include <array>

namespace proofstone {
namespace {

/// Where fines stand on the plasticity chart.
enum class Fines { unknown, silt, clay, silty_clay };

constexpr std::array<std::string_view, 15> symbols{"",   "GW", "GP", "GM", "GC", "SW", "SP", "SM",
                                                   "SC", "ML", "CL", "OL", "MH", "CH", "OH"};

Fines fines_of(const SoilIndex& soil) {
  if (!soil.plasticity_index) {
    if (soil.fines == FinesKind::silt) return Fines::silt;
    return soil.fines == FinesKind::clay ? Fines::clay : Fines::unknown;
  }
  const double index = *soil.plasticity_index;
  if (!soil.liquid_limit) return index < 4 ? Fines::silt : Fines::unknown;
  const double limit = *soil.liquid_limit;
  if (index < a_line(limit) || index < 4) return Fines::silt;
  return limit < 50 && index <= 7 ? Fines::silty_clay : Fines::clay;
}

bool well_graded(const SoilIndex& soil, bool gravel) {
  const double least = gravel ? 4 : 6;
  return soil.uniformity.value_or(0) >= least && soil.curvature.value_or(0) >= 1 &&
         soil.curvature.value_or(4) <= 3;
}

std::string with_other(const std::string& name, bool has_other, const char* other) {
  return has_other ? name + " with " + other : name;
}

SoilClass not_known(std::string missing) {
  SoilClass result;
  result.missing = std::move(missing);
  return result;
}

SoilClass coarse_with_many_fines(bool gravel, Fines fines) {
  SoilClass result;
  switch (fines) {
    case Fines::unknown:
      return not_known("the liquid limit and plasticity index of the fines");
    case Fines::silt:
      result.first = gravel ? SoilGroup::gm : SoilGroup::sm;
      result.name = "silty ";
      break;
    case Fines::clay:
      result.first = gravel ? SoilGroup::gc : SoilGroup::sc;
      result.name = "clayey ";
      break;
    case Fines::silty_clay:
      result.first = gravel ? SoilGroup::gc : SoilGroup::sc;
      result.second = gravel ? SoilGroup::gm : SoilGroup::sm;
      result.name = "silty, clayey ";
      break;
  }
  result.name += gravel ? "gravel" : "sand";
  return result;
}

SoilClass coarse(const SoilIndex& soil) {
  const bool gravel = soil.gravel() > soil.sand();
  const double other = gravel ? soil.sand() : soil.gravel();
  const char* other_name = gravel ? "sand" : "gravel";
  if (soil.passing_no_200 > 12) {
    auto result = coarse_with_many_fines(gravel, fines_of(soil));
    if (result.known()) result.name = with_other(result.name, other >= 15, other_name);
    return result;
  }
  if (!soil.uniformity || !soil.curvature) {
    return not_known("D10, D30 and D60, for its uniformity and curvature");
  }
  const bool well = well_graded(soil, gravel);
  SoilClass result;
  result.first =
      gravel ? (well ? SoilGroup::gw : SoilGroup::gp) : (well ? SoilGroup::sw : SoilGroup::sp);
  result.name =
      std::string(well ? "well-graded " : "poorly graded ") + (gravel ? "gravel" : "sand");
  if (soil.passing_no_200 < 5) {
    result.name = with_other(result.name, other >= 15, other_name);
    return result;
  }
  const Fines fines = fines_of(soil);
  if (fines == Fines::unknown) return not_known("whether its fines are silt or clay");
  const bool silt = fines == Fines::silt;
  result.second =
      gravel ? (silt ? SoilGroup::gm : SoilGroup::gc) : (silt ? SoilGroup::sm : SoilGroup::sc);
  result.name += silt ? " with silt" : fines == Fines::clay ? " with clay" : " with silty clay";
  if (other >= 15) result.name += std::string(" and ") + other_name;
  return result;
}

std::string fine_name(const SoilIndex& soil, const std::string& plain) {
  const double coarse_share = 100 - soil.passing_no_200;
  const bool more_gravel = soil.gravel() > soil.sand();
  if (coarse_share < 15) return plain;
  if (coarse_share < 30) return plain + (more_gravel ? " with gravel" : " with sand");
  const bool other = (more_gravel ? soil.sand() : soil.gravel()) >= 15;
  if (more_gravel) return "gravelly " + plain + (other ? " with sand" : "");
  return "sandy " + plain + (other ? " with gravel" : "");
}

SoilClass fine(const SoilIndex& soil) {
  if (!soil.plasticity_index || (!soil.liquid_limit && *soil.plasticity_index >= 4)) {
    return not_known("its liquid limit and plasticity index");
  }
  const bool high = soil.liquid_limit.value_or(0) >= 50;
  const Fines fines = fines_of(soil);
  SoilClass result;
  if (soil.organic) {
    result.first = high ? SoilGroup::oh : SoilGroup::ol;
    result.name = fine_name(soil, fines == Fines::silt ? "organic silt" : "organic clay");
  } else if (fines == Fines::silty_clay) {
    result.first = SoilGroup::cl;
    result.second = SoilGroup::ml;
    result.name = fine_name(soil, "silty clay");
  } else if (fines == Fines::clay) {
    result.first = high ? SoilGroup::ch : SoilGroup::cl;
    result.name = fine_name(soil, high ? "fat clay" : "lean clay");
  } else {
    result.first = high ? SoilGroup::mh : SoilGroup::ml;
    result.name = fine_name(soil, high ? "elastic silt" : "silt");
  }
  return result;
}

}  // namespace

std::string_view group_symbol(SoilGroup group) {
  return symbols.at(static_cast<std::size_t>(group));
}

std::string SoilClass::symbol() const {
  std::string text(group_symbol(first));
  if (second != SoilGroup::none) text += "-" + std::string(group_symbol(second));
  return text;
}

double a_line(double liquid_limit) { return std::max(4.0, 0.73 * (liquid_limit - 20)); }

SoilClass classify_soil(const SoilIndex& soil) {
  return soil.passing_no_200 >= 50 ? fine(soil) : coarse(soil);
}

}  // namespace proofstone
