#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <string_view>

#include "engine/evidence/size_ranges.h"
#include "engine/site/item_reader.h"
#include "engine/site/lot_reader.h"
#include "engine/site/observation_reader.h"
#include "engine/site/photo_look_reader.h"

namespace proofstone {
namespace {

/// What stands behind the number of "12.5 inches"; empty where there is no text or nothing behind.
std::string_view written_unit(const nlohmann::json& value) {
  if (!value.is_string()) return {};
  std::string_view text = value.get_ref<const std::string&>();
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  const auto of_number = [](char c) {
    return (c >= '0' && c <= '9') || c == '.' || c == ' ' || c == '+' || c == '-' || c == 'e' ||
           c == 'E';
  };
  while (!text.empty() && of_number(text.front())) text.remove_prefix(1);
  return text;
}

/// "in" of "in" and of "inches": a unit by its one symbol.
std::string_view symbol_of_unit(std::string_view written) {
  const auto& known = unit_spellings();
  const auto unit = std::find_if(
      known.begin(), known.end(),
      [written](const UnitSpelling& candidate) { return candidate.spelling == written; });
  return unit == known.end() ? written : unit->unit.symbol;
}

/// The unit of a look's sizes, which is that of its first. Sizes of one look in two units are two
/// habits, or a slip: they are not read.
class OneUnit {
 public:
  void check_list(FieldReader& reader, const char* field) {
    const auto* list = reader.optional_list(field);
    for (std::size_t i = 0; list != nullptr && i < list->size(); ++i) {
      if (keeps((*list)[i])) continue;
      report(reader, fmt::format("{}/{}", field, i), (*list)[i]);
    }
  }
  void check_row(FieldReader& row, std::initializer_list<const char*> fields) {
    for (const char* field : fields) {
      const auto* value = row.optional(field);
      if (value != nullptr && !keeps(*value)) report(row, field, *value);
    }
  }

 private:
  bool keeps(const nlohmann::json& value) {
    const auto written = written_unit(value);
    if (written.empty() || written == written_before_) return true;
    const auto symbol = symbol_of_unit(written);
    if (symbol_.empty()) symbol_ = symbol;
    if (symbol != symbol_) return false;
    written_before_ = written;
    return true;
  }
  void report(FieldReader& reader, const std::string& field, const nlohmann::json& value) const {
    reader.report("mixed-units",
                  fmt::format("This is in {}, the first is in {}.",
                              symbol_of_unit(written_unit(value)), symbol_),
                  field, "one unit throughout");
  }

  std::string symbol_;
  std::string_view written_before_;  ///< in the document, and known to keep
};

StoneCount read_stone_count(FieldReader& look, Problems& problems) {
  StoneCount count;
  count.picking = look.choice<StonePicking>("picking",
                                            {{"grid", StonePicking::grid},
                                             {"line", StonePicking::line},
                                             {"area", StonePicking::area},
                                             {"whole", StonePicking::whole}},
                                            std::nullopt);
  const auto* stones = look.required("stones");
  if (stones == nullptr || is_unread_file(look, "stones", *stones)) return count;
  FieldReader table(*stones, look.pointer() + "/stones", problems);
  if (table.has("axes") == table.has("bins")) {
    look.report("one-of", "A count has measured axes or bins, one of the two.", "stones",
                "{\"axes\": […]} or {\"bins\": […]}");
  }
  OneUnit unit;
  count.intermediate_axes = table.optional_quantities<Length>("axes");
  unit.check_list(table, "axes");
  if (const auto* bins = table.optional_list("bins")) {
    for (std::size_t i = 0; i < bins->size(); ++i) {
      FieldReader row((*bins)[i], fmt::format("{}/bins/{}", table.pointer(), i), problems);
      unit.check_row(row, {"larger_than", "not_larger_than"});
      CountBin bin;
      bin.lower = row.optional_quantity<Length>("larger_than");
      bin.upper = row.required_quantity<Length>("not_larger_than");
      if (row.required("stones") != nullptr) {
        bin.stones = row.optional_integer("stones", 0, 1'000'000).value_or(0);
      }
      row.finish();
      count.bins.push_back(bin);
    }
  }
  table.finish();
  return count;
}

WeighedSample read_weighed_sample(FieldReader& look, Problems& problems) {
  WeighedSample sample;
  sample.size_meaning = look.choice<SizeMeaning>(
      "size_meaning",
      {{"intermediate axis", SizeMeaning::intermediate_axis}, {"sieve", SizeMeaning::sieve}},
      SizeMeaning::intermediate_axis);
  const auto* groups = look.required("groups");
  if (groups == nullptr || is_unread_file(look, "groups", *groups)) return sample;
  FieldReader table(*groups, look.pointer() + "/groups", problems);
  const auto* list = table.required("groups") != nullptr ? table.optional_list("groups") : nullptr;
  OneUnit unit;
  for (std::size_t i = 0; list != nullptr && i < list->size(); ++i) {
    FieldReader row((*list)[i], fmt::format("{}/groups/{}", table.pointer(), i), problems);
    unit.check_row(row, {"larger_than", "not_larger_than"});
    WeighedGroup group;
    group.lower = row.optional_quantity<Length>("larger_than");
    group.upper = row.required_quantity<Length>("not_larger_than");
    group.mass = row.required_quantity<Mass>("mass");
    if (row.required("stones") != nullptr) {
      group.stones = row.optional_integer("stones", 0, 1'000'000).value_or(0);
    }
    row.finish();
    sample.groups.push_back(group);
  }
  table.finish();
  return sample;
}

MassRanges read_mass_ranges(FieldReader& look, Problems& problems) {
  MassRanges taken;
  if (look.required("ranges") == nullptr) return taken;
  const auto* list = look.optional_list("ranges");
  OneUnit unit;
  for (std::size_t i = 0; list != nullptr && i < list->size(); ++i) {
    FieldReader row((*list)[i], fmt::format("{}/ranges/{}", look.pointer(), i), problems);
    unit.check_row(row, {"heavier_than", "not_heavier_than"});
    MassRange range;
    range.lower = row.optional_quantity<Mass>("heavier_than");
    range.upper = row.required_positive<Mass>("not_heavier_than", "A stone has a mass.");
    range.mass = row.required_quantity<Mass>("mass");
    if (row.has("stones")) range.stones = row.optional_integer("stones", 0, 1'000'000).value_or(0);
    row.finish();
    taken.ranges.push_back(range);
  }
  return taken;
}

/// A stone that no rock of the trade is.
void must_be_a_stone(FieldReader& reader, const char* field, Length size) {
  if (size.meters() <= largest_believable_size.meters()) return;
  reader.report("implausible", "No stone of the trade is that large; the unit may be wrong.", field,
                "up to 5 m (16 ft)");
}

QuickLook read_quick_look(FieldReader& look, Problems& problems) {
  QuickLook seen;
  OneUnit unit;
  unit.check_row(look, {"largest", "smallest", "most_common"});
  seen.largest = look.required_positive<Length>("largest", "A stone has a size.");
  seen.smallest = look.required_positive<Length>("smallest", "A stone has a size.");
  must_be_a_stone(look, "largest", seen.largest);
  if (seen.smallest > seen.largest) {
    look.report("swapped", "The smallest stone is larger than the largest.", "smallest",
                "not more than the largest");
  }
  if (look.has("most_common")) {
    seen.most_common = look.required_positive<Length>("most_common", "A stone has a size.");
    if (*seen.most_common > seen.largest || *seen.most_common < seen.smallest) {
      look.report("out-of-order", "The most common stone is not between the two ends.",
                  "most_common", "between smallest and largest");
    }
  }
  const auto* missing = look.optional_list("missing");
  for (std::size_t i = 0; missing != nullptr && i < missing->size(); ++i) {
    FieldReader row((*missing)[i], fmt::format("{}/missing/{}", look.pointer(), i), problems);
    MissingSizes gap;
    gap.larger_than = row.required_quantity<Length>("larger_than");
    gap.not_larger_than = row.required_positive<Length>("not_larger_than", "Stones have a size.");
    if (gap.larger_than.si() < 0 || gap.larger_than >= gap.not_larger_than) {
      row.report("swapped", "The range does not go from small to large.", "larger_than",
                 "0 or more, and less than not_larger_than");
    }
    row.finish();
    seen.missing.push_back(gap);
  }
  seen.shape = look.choice<SeenShape>("shape",
                                      {{"blocky", SeenShape::blocky},
                                       {"mixed", SeenShape::mixed},
                                       {"flat or long", SeenShape::flat_or_long}},
                                      std::nullopt);
  seen.fines = look.choice<SeenFines>(
      "fines",
      {{"none", SeenFines::none}, {"little", SeenFines::little}, {"much", SeenFines::much}},
      std::nullopt);
  return seen;
}

ShapeCount read_shape_count(FieldReader& look, Problems& problems) {
  ShapeCount count;
  if (look.required("stones") == nullptr) return count;
  const auto* list = look.optional_list("stones");
  OneUnit unit;
  for (std::size_t i = 0; list != nullptr && i < list->size(); ++i) {
    FieldReader row((*list)[i], fmt::format("{}/stones/{}", look.pointer(), i), problems);
    unit.check_row(row, {"longest", "intermediate", "shortest"});
    StoneAxes stone;
    stone.longest = row.required_positive<Length>("longest", "A stone has a length.");
    stone.intermediate = row.required_positive<Length>("intermediate", "A stone has a breadth.");
    stone.shortest = row.required_positive<Length>("shortest", "A stone has a thickness.");
    must_be_a_stone(row, "longest", stone.longest);
    if (stone.longest < stone.intermediate || stone.intermediate < stone.shortest) {
      row.report("swapped", "The axes do not go from the longest to the shortest.", "longest",
                 "longest, intermediate, shortest");
    }
    row.finish();
    count.stones.push_back(stone);
  }
  if (list != nullptr && list->empty()) {
    look.report("empty", "No stone was measured.", "stones", "at least one stone");
  }
  return count;
}

enum class LookKind { stone_count, weighed_sample, mass_ranges, quick_look, shape_count, photo };

const std::vector<std::pair<std::string, LookKind>>& look_kinds() {
  static const std::vector<std::pair<std::string, LookKind>> kinds{
      {"stone count", LookKind::stone_count}, {"weighed sample", LookKind::weighed_sample},
      {"mass ranges", LookKind::mass_ranges}, {"quick look", LookKind::quick_look},
      {"shape count", LookKind::shape_count}, {"photo", LookKind::photo}};
  return kinds;
}

}  // namespace

Look read_look(FieldReader& reader, const std::string& id, Problems& problems) {
  Look look;
  look.id = id;
  look.name = reader.required_text("name");
  look.lot = reader.required_text("lot");
  look.seen = read_observation(reader, problems);
  look.side = reader.optional_text("side");
  look.load = reader.optional_text("load");
  switch (reader.choice<LookKind>("kind", look_kinds(), std::nullopt)) {
    case LookKind::stone_count:
      look.taken = read_stone_count(reader, problems);
      break;
    case LookKind::weighed_sample:
      look.taken = read_weighed_sample(reader, problems);
      break;
    case LookKind::mass_ranges:
      look.taken = read_mass_ranges(reader, problems);
      break;
    case LookKind::quick_look:
      look.taken = read_quick_look(reader, problems);
      break;
    case LookKind::shape_count:
      look.taken = read_shape_count(reader, problems);
      break;
    case LookKind::photo:
      look.taken = read_photo_set(reader, problems);
      break;
  }
  return look;
}

Problems repeated_looks(const Site& site) {
  Problems problems;
  std::set<std::string> known;
  for (const auto& [id, look] : site.looks) {
    if (look.seen.when.empty() || look.seen.who.empty()) continue;
    const auto same =
        fmt::format("{}\n{}\n{}\n{}", look.lot, look.taken.index(), look.seen.who, look.seen.when);
    if (known.insert(same).second) continue;
    problems.push_back({"repeated-look",
                        fmt::format("{} stands twice: the same kind of look at the same lot by the "
                                    "same person at the same time.",
                                    look.name),
                        "", "/looks/" + id, "each look once"});
  }
  return problems;
}

}  // namespace proofstone
