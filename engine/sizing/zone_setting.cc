#include "engine/sizing/zone_setting.h"

#include <algorithm>

namespace proofstone {

const std::vector<std::pair<std::string, ZonePlace>>& zone_place_words() {
  static const std::vector<std::pair<std::string, ZonePlace>> words{
      {"bank", ZonePlace::bank},   {"bed", ZonePlace::bed},
      {"chute", ZonePlace::chute}, {"outfall", ZonePlace::outfall},
      {"basin", ZonePlace::basin}, {"drop", ZonePlace::drop},
      {"pier", ZonePlace::pier},   {"abutment", ZonePlace::abutment},
      {"shore", ZonePlace::shore},
  };
  return words;
}

const std::string& zone_place_word(ZonePlace place) {
  const auto& words = zone_place_words();
  const auto found = std::find_if(words.begin(), words.end(),
                                  [place](const auto& word) { return word.second == place; });
  return found->first;
}

bool in_stream(ZonePlace place) { return place == ZonePlace::bank || place == ZonePlace::bed; }

}  // namespace proofstone
