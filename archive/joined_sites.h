#pragma once

#include <cstddef>
#include <string>

#include "archive/packed_site.h"
#include "engine/finding/problem.h"

namespace proofstone {

/// Two copies of one site in one, and how many revisions each had that the other lacked.
struct JoinedSites {
  PackedSite site;
  std::size_t only_in_one = 0;
  std::size_t only_in_other = 0;
};

/// Everything of both copies of a site, as two people carried them apart: what the other has more
/// is put behind what `one` has, and nothing is taken away. Changes that cross are kept on both
/// sides; the engine tells of them. A copy may have left out where things were taken down (the
/// fields `position`): what `one` says then stands. Problems, named after the copies: documents
/// that are no site; copies that do not begin with the same revision; a revision, a file or a photo
/// that stands in both under one name and is not the same.
Expected<JoinedSites> joined_sites(PackedSite one, PackedSite other, const std::string& one_name,
                                   const std::string& other_name);

}  // namespace proofstone
