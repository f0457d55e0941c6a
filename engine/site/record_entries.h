#pragma once

#include <string>
#include <vector>

#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// One thing that was done or seen at the site, in words.
struct RecordEntry {
  std::string when;  ///< RFC 3339 in UTC; empty: nobody said
  std::string kind;  ///< "load", "look", "walk", "survey", "problem opened"
  std::string lot;   ///< id; empty where it is about no lot
  std::string zone;  ///< id; empty where it is about no zone
  std::string what;  ///< "Count of first deliveries (first deliveries)"
  std::string who;
  std::string words;  ///< "grid count of 100 stones; tape; 2 photos"
};

/// Every load, look, walk, survey and step of a problem, in the order of time; those without a time
/// come first.
std::vector<RecordEntry> record_entries(const Site& site, const Wording& wording);

}  // namespace proofstone
