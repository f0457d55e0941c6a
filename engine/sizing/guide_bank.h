#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Plan of a guide bank: quarter ellipse X²/Ls² + Y²/(0.4·Ls)² = 1 (major to minor axis 2.5:1),
/// FHWA HEC-23 Vol. 2 (2009) Design Guideline 15. X is measured upstream from the abutment along
/// the bank's axis, Y from that axis' outer end. Ls is read from the guideline's chart.
struct GuideBankInputs {
  Length length;    ///< Ls, upstream
  Length distance;  ///< X, from 0 to Ls
};

struct GuideBankResult {
  Length offset;          ///< Y at X
  Length largest_offset;  ///< 0.4·Ls
};

/// Problems: a distance beyond the length.
Expected<GuideBankResult> guide_bank(const GuideBankInputs& inputs, Steps& steps);

const Method& guide_bank_method();

}  // namespace proofstone
