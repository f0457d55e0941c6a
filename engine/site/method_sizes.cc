#include "engine/site/method_sizes.h"

#include <fmt/format.h>

#include "engine/site/class_choice.h"
#include "engine/site/weighted_size.h"

namespace proofstone {
namespace {

std::optional<double> share_of(const std::optional<WeightedSize>& weighted,
                               const SizeAsked& asked) {
  if (!weighted) return std::nullopt;
  for (const auto& part : weighted->parts) {
    if (part.asked == &asked) return part.share;
  }
  return std::nullopt;
}

MethodSizesPicture::Row row_of(const ZoneSizing& sizing, const SizeAsked& asked) {
  const auto& specified = *sizing.specified;
  const auto meaning = specified.band.basis().size;
  MethodSizesPicture::Row row;
  row.label =
      fmt::format("{}, {}", asked.method->description().title, asked.water->flow_case->name);
  row.symbol = "D" + percent_number(asked.required.percent_smaller);
  row.required = size_as(asked.required, meaning);
  row.within_limits = asked.within_limits;
  row.counts = counts(*sizing.zone, asked);
  const auto margin = class_margin(specified, asked);
  if (margin) row.class_least = *margin * row.required;
  const auto most = specified.band.largest_size_at(asked.required.percent_smaller);
  if (most) row.class_most = *most;
  if (!asked.within_limits) {
    row.outcome = Outcome::ask_the_designer;
  } else if (margin) {
    row.outcome = *margin >= 1 ? Outcome::meets : Outcome::falls_short;
  }
  return row;
}

}  // namespace

MethodSizesPicture method_sizes_picture(const ZoneSizing& sizing) {
  const auto& zone = *sizing.zone;
  MethodSizesPicture picture;
  picture.id = "sizes." + zone.id;
  picture.title = fmt::format("What each method asks for in {}", zone.name);
  picture.class_name = sizing.specified->name;
  const auto weighted = zone.policy == GoverningPolicy::weighted
                            ? weigh_sizes(sizing, *sizing.specified)
                            : std::nullopt;
  for (std::size_t i = 0; i < sizing.asked.size(); ++i) {
    auto row = row_of(sizing, sizing.asked[i]);
    row.governs = sizing.governing == i;
    row.weight = share_of(weighted, sizing.asked[i]);
    picture.rows.push_back(std::move(row));
  }
  picture.description = fmt::format(
      "One line a method on one axis of stone sizes: the size it asks for, and from the least to "
      "the "
      "largest that {} has at the same percent.",
      sizing.specified->name);
  return picture;
}

}  // namespace proofstone
