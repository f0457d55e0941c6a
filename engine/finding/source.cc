#include "engine/finding/source.h"

#include <array>

namespace proofstone {

std::string_view standing_name(SourceStanding standing) {
  switch (standing) {
    case SourceStanding::published:
      return "published";
    case SourceStanding::memory:
      return "memory";
    case SourceStanding::computed:
      return "computed";
    case SourceStanding::common_practice:
      return "common practice";
    case SourceStanding::stated:
      return "stated";
  }
  return {};
}

std::optional<SourceStanding> standing_called(std::string_view name) {
  constexpr std::array standings{SourceStanding::published, SourceStanding::memory,
                                 SourceStanding::computed, SourceStanding::common_practice,
                                 SourceStanding::stated};
  for (const auto standing : standings) {
    if (standing_name(standing) == name) return standing;
  }
  return std::nullopt;
}

std::string Source::sentence() const {
  std::string text = document;
  if (!place.empty()) text += (text.empty() ? "" : ", ") + place;
  std::string_view remark;
  switch (standing) {
    case SourceStanding::published:
      return text;
    case SourceStanding::memory:
      remark = "from memory; confirm";
      break;
    case SourceStanding::computed:
      remark = "computed";
      break;
    case SourceStanding::common_practice:
      remark = "common practice";
      break;
    case SourceStanding::stated:
      remark = "stated for this site";
      break;
  }
  return text + (text.empty() ? "(" : " (") + std::string(remark) + ")";
}

}  // namespace proofstone
