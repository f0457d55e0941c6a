#pragma once

#include "cli/arguments.h"

namespace proofstone {

/// `proofstone read-sections FILE --out FOLDER …`: section lines with elevations, or the cross
/// sections of a LandXML document, as section files and the changes of a revision. Returns the exit
/// code.
int read_sections_command(const Arguments& arguments);

/// `proofstone read-centreline FILE --out FOLDER …`: lines in plan as courses of channels.
int read_centreline_command(const Arguments& arguments);

}  // namespace proofstone
