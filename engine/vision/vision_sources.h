#pragma once

#include <string>

#include "engine/finding/source.h"

namespace proofstone {

/// The project's own study of photographs of computed piles whose rock is known: first 14 piles,
/// 149 pictures, then 32 layers, 256 pictures (docs/photo-outlines.md). Nothing in it was checked
/// against a real pile that was weighed.
inline Source rendered_piles(const std::string& place) {
  return {"Proofstone's own study of photographs, measured on rendered piles of known rock", place,
          SourceStanding::computed};
}

/// Why the share of the surface is the share of the mass.
inline Source surface_share_source() {
  return {"Kellerhals & Bray 1971, Sampling procedures for coarse fluvial sediments",
          "equivalence of a share of the surface and a share of the volume",
          SourceStanding::memory};
}

}  // namespace proofstone
