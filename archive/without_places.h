#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <string_view>

#include "archive/packed_site.h"

namespace proofstone {

/// A site document without the positions of what was taken down, now or before; the same text where
/// it has none. `document` is a site document that parses. A copy without positions is the same
/// record still: it joins with one that has them.
std::string without_positions(const std::string& document);

/// One revision of a document without them: what only put a position there, or took one away, is
/// left out. A revision without positions comes back as it is.
nlohmann::ordered_json revision_without_positions(nlohmann::ordered_json revision);

/// Whether a photo may say where it was taken. Of a JPEG whose segments are known to say nothing of
/// it (JFIF, colour profile, colour transform, an Exif segment of the orientation alone) it is
/// known that it does not; of anything else, or what is cut off, it is not.
///
/// Source: JPEG, ITU-T T.81 annex B (markers); Exif 2.32, 4.6.4 (orientation, tag 0x0112).
bool may_tell_place(std::string_view photo);

/// The site without what tells where anything was taken down; photos that may tell are left out.
struct WithoutPlaces {
  PackedSite site;
  std::size_t photos_left_out = 0;
};
WithoutPlaces without_places(PackedSite site);

}  // namespace proofstone
