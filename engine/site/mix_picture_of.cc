#include "engine/site/mix_picture_of.h"

#include <fmt/format.h>

namespace proofstone {

MixPicture mix_picture(const Zone& zone, const PreparedMix& prepared, const MixBalance& balance) {
  using Stuff = MixPicture::Stuff;
  const auto& mix = prepared.mix;
  MixPicture picture;
  picture.id = "mix." + zone.id;
  picture.title = fmt::format("Where the volume of {} goes", prepared.site_mix->name);
  MixPicture::Bar loose{"As delivered, loose", {{prepared.rock_class->name, Stuff::rock, 1}}};
  for (std::size_t i = 0; i < mix.fills.size(); ++i) {
    loose.pieces.push_back({mix.fills[i].name, Stuff::fill, mix.fill_parts[i] / mix.rock_parts});
  }
  const double n = mix.rock.voids;
  MixPicture::Bar placed{
      "In place",
      {{"stones", Stuff::rock, 1 - n}, {"fill in its voids", Stuff::fill, balance.fill_in_place}}};
  const double open = n - balance.fill_in_place;
  if (open > 0) placed.pieces.push_back({"voids left open", Stuff::open_voids, open});
  MixPicture::Bar alone{"The rock alone",
                        {{"stones", Stuff::rock, 1 - n}, {"voids", Stuff::open_voids, n}}};
  picture.bars = {std::move(loose), std::move(alone), std::move(placed)};
  picture.description = fmt::format(
      "Three bars of volume, the bulk volume of the rock being one: the materials loose, the rock "
      "alone with its voids, and the mix in place, which takes {:.2f} times the volume of the "
      "rock.",
      balance.bulking);
  return picture;
}

}  // namespace proofstone
