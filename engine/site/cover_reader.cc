#include "engine/site/cover_reader.h"

#include <algorithm>

#include "engine/cover/blanket_types.h"
#include "engine/cover/lining_limits.h"
#include "engine/site/kinds_reader.h"

namespace proofstone {
namespace {

/// An overlap as wide as what it overlaps would leave nothing.
void check_overlap(FieldReader& reader, const char* field, std::optional<Length> overlap,
                   std::optional<Length> whole) {
  if (overlap && whole && !(*overlap < *whole)) {
    reader.report("outside-allowed", "The overlap leaves nothing of the roll.", field,
                  "less than the roll");
  }
}

std::optional<CoverBlanket> read_blanket(FieldReader& cover, Problems& problems) {
  const auto* json = cover.optional("blanket");
  if (json == nullptr) return std::nullopt;
  FieldReader reader(*json, cover.pointer() + "/blanket", problems);
  CoverBlanket blanket;
  blanket.type = reader.required_text("type");
  if (!blanket.type.empty() && find_blanket_type(blanket.type) == nullptr) {
    std::string allowed;
    for (const auto& known : blanket_types()) allowed += (allowed.empty() ? "" : ", ") + known.id;
    reader.report("unknown-word", "No type of blanket is called so.", "type", allowed);
  }
  blanket.tested_shear = reader.optional_positive<Stress>("tested_shear");
  blanket.roll_width = reader.optional_positive<Length>("roll_width");
  blanket.roll_length = reader.optional_positive<Length>("roll_length");
  blanket.side_overlap = reader.optional_not_negative<Length>("side_overlap");
  blanket.end_overlap = reader.optional_not_negative<Length>("end_overlap");
  check_overlap(reader, "side_overlap", blanket.side_overlap, blanket.roll_width);
  check_overlap(reader, "end_overlap", blanket.end_overlap, blanket.roll_length);
  reader.finish();
  return blanket;
}

std::optional<CoverStakes> read_stakes(FieldReader& cover, Problems& problems) {
  const auto* json = cover.optional("stakes");
  if (json == nullptr) return std::nullopt;
  FieldReader reader(*json, cover.pointer() + "/stakes", problems);
  CoverStakes stakes;
  stakes.form = reader.choice<StakeForm>(
      "form",
      {{"wedge stake", StakeForm::wedge}, {"staple", StakeForm::staple}, {"pin", StakeForm::pin}},
      StakeForm::wedge);
  stakes.length = reader.required_positive<Length>("length", "A stake has a length.");
  stakes.spacing = reader.optional_positive<Length>("spacing");
  stakes.count = reader.optional_positive<Dimensionless>("count");
  reader.finish();
  return stakes;
}

std::optional<AnchorTrench> read_trench(FieldReader& cover, const char* field, Problems& problems) {
  const auto* json = cover.optional(field);
  if (json == nullptr) return std::nullopt;
  FieldReader reader(*json, cover.pointer() + "/" + field, problems);
  AnchorTrench trench;
  trench.width = reader.required_positive<Length>("width", "A trench has a width.");
  trench.depth = reader.required_positive<Length>("depth", "A trench has a depth.");
  trench.back_from_crest = reader.optional_not_negative<Length>("back_from_crest");
  reader.finish();
  return trench;
}

/// The inputs are read by the method itself; here only that it is an object of texts.
void read_soil(FieldReader& reader, ZoneCover& cover) {
  const auto* json = reader.optional("soil");
  if (json == nullptr) return;
  const bool texts = json->is_object() && std::all_of(json->begin(), json->end(),
                                                      [](const auto& v) { return v.is_string(); });
  if (texts) {
    cover.soil = HeldJson(*json);
  } else {
    reader.report("not-an-object", "Inputs of the method bare-soil-shear belong here.", "soil",
                  "{ \"soil\": \"sc\", \"plasticity_index\": \"16\", \"void_ratio\": \"0.5\" }");
  }
}

void read_plants(FieldReader& reader, ZoneCover& cover) {
  cover.plants = reader.optional_text("plants");
  const auto& rows = lining_limit_rows();
  const bool known = cover.plants.empty() ||
                     std::any_of(rows.begin(), rows.end(),
                                 [&](const LiningLimit& row) { return row.key == cover.plants; });
  if (known) return;
  std::string allowed;
  for (const auto& row : rows) allowed += (allowed.empty() ? "" : ", ") + row.key;
  reader.report("unknown-word", "No lining is called so.", "plants", allowed);
}

}  // namespace

std::optional<ZoneCover> read_cover(FieldReader& zone_reader, Problems& problems) {
  const auto* json = zone_reader.optional("cover");
  if (json == nullptr) return std::nullopt;
  FieldReader reader(*json, zone_reader.pointer() + "/cover", problems);
  ZoneCover cover;
  if (reader.has("from")) cover.from = read_named_level(reader, "from", "toe");
  cover.topsoil = reader.optional_positive<Length>("topsoil");
  read_soil(reader, cover);
  cover.seed = reader.optional_text("seed");
  read_plants(reader, cover);
  cover.months_to_establish = reader.optional_positive<Dimensionless>("months_to_establish");
  cover.blanket = read_blanket(reader, problems);
  cover.stakes = read_stakes(reader, problems);
  cover.top_trench = read_trench(reader, "top_trench", problems);
  cover.water_edge_trench = read_trench(reader, "water_edge_trench", problems);
  if (reader.has("stream")) {
    cover.stream = reader.choice<StreamWater>(
        "stream", {{"perennial", StreamWater::perennial}, {"dry swale", StreamWater::dry_swale}},
        std::nullopt);
  }
  cover.length = reader.optional_positive<Length>("length");
  reader.finish();
  return cover;
}

}  // namespace proofstone
