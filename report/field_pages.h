#pragma once

#include "report/handbook.h"

namespace proofstone {

/// The page of the handbook on what is done at the pile, the load and the placed work, and how.
HandbookPage field_page();

/// The page of the handbook on what the words mean that findings and screens use.
HandbookPage words_page();

}  // namespace proofstone
