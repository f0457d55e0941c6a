#pragma once

#include <span>

#include "report/request_reading.h"

namespace proofstone {

/// A question of the shells: reads what else stands in the request, answers or says why not.
using RequestAnswer = Answer (*)(FieldReader& request, Problems& problems);

/// A question about a site document, by the word with which it is asked.
struct SiteRequest {
  const char* word;
  RequestAnswer answer;
};

/// All that can be asked about a site document.
std::span<const SiteRequest> site_requests();

}  // namespace proofstone
