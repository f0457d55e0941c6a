#pragma once

#include <string>
#include <vector>

#include "engine/finding/problem.h"
#include "engine/hydraulics/section.h"
#include "engine/quantity/measure.h"

namespace proofstone {

/// A problem of a section, its water or its parts; no file and row are known here.
inline Problem section_problem(const std::string& code, const std::string& what,
                               const std::string& where, const std::string& allowed) {
  return {code, what, "", where, allowed};
}

/// "1500 ft³/s (42.5 m³/s)". Internal to the hydraulics, as all below.
std::string in_both_systems(Measure measure);

/// What is wrong with a discharge, or with the stations at which a section is divided.
Problems discharge_problems(const Section& section, const std::vector<Length>& divisions,
                            Discharge discharge);

/// "overtopped": the section does not hold a discharge, because of something told as "it …".
Problem overtopped(const Section& section, Discharge discharge, const std::string& because);

}  // namespace proofstone
