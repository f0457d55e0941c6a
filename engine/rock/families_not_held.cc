#include "engine/rock/families_not_held.h"

namespace proofstone {

const std::vector<FamilyNotHeld>& families_not_held() {
  static const std::vector<FamilyNotHeld> families{
      {"ASTM D6092 classes",
       {"ASTM D6092 (editions -97 to -21)", "scope", SourceStanding::published},
       "Named by mass: R-20, R-60, R-150, R-300, R-700, R-1500; inch-pound units are the standard. "
       "Filter stone from ¾ in to the No. 40 sieve and bedding from 6 to ½ in beside them. Armour "
       "of 5 to 25 tons is out of its scope. Stones are measured by ASTM D5519."},
      {"FP-14 classes 9 and 10",
       {"FHWA Standard Specifications FP-14", "Table 705-1", SourceStanding::published},
       "The rows above class 8 stand on a page that was not seen."},
      {"California Method B classes",
       {"California Standard Specifications, section 72-2 (older edition)", "Method B",
        SourceStanding::published},
       "1 ton down to Backing No. 3; the columns of the page that was seen cannot be told apart. "
       "The roman-numeral classes that took their place were not seen either."},
  };
  return families;
}

const std::string& what_to_do_without_limits() {
  static const std::string words =
      "State such a class in the document as one of your own, from a copy of the standard.";
  return words;
}

}  // namespace proofstone
