#pragma once

#include <string>
#include <string_view>

#include "geodata/surveyed_section.h"

namespace proofstone {

/// The largest LandXML file that is read: 64 MB.
inline constexpr std::size_t largest_landxml = std::size_t{64} << 20;

/// Reads the cross sections of a LandXML 1.2 document (the open schema of landxml.org):
///
///   Units/Metric or Units/Imperial, linearUnit meter, foot or USSurveyFoot
///   …/CrossSects/CrossSect sta, name
///       CrossSectSurf or DesignCrossSectSurf name
///           PntList2D     "offset elevation …", offsets from the alignment, positive right
///           PntList3D     "northing easting elevation …"
///           CrossSectPnt  "offset elevation", or pntRef to a CgPoint "northing easting elevation"
///
/// Offsets become stations as they are: they rise from left to right looking along the alignment.
/// `surface` names the surface to take where a section has several; design surfaces are taken only
/// when named. A document type declaration is refused unread: it could hold entities that grow.
///
/// Problems, each with the file and the line or the section: not-xml (broken off, too),
/// has-doctype, too-large, too-deep, not-landxml, no-units, unknown-unit, not-a-number,
/// several-surfaces, no-such-surface, no-section, too-many-sections, no-such-point, mixed-points,
/// slope-distance, not-projected, stretched-projection, those of ground_along, stations-fall (the
/// section crosses itself), repeated-point.
Expected<SurveyFile> read_landxml_sections(std::string_view bytes, const std::string& file,
                                           const std::string& surface);

}  // namespace proofstone
