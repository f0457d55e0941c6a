#include "engine/finding/source.h"

#include <array>

template class std::vector<proofstone::Source>;

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

Source::Source() = default;
Source::Source(std::string_view of_document, std::string_view place_in_it, SourceStanding how_known)
    : document(of_document), place(place_in_it), standing(how_known) {}
Source::Source(const Source&) = default;
Source::Source(Source&&) noexcept = default;
Source& Source::operator=(const Source&) = default;
Source& Source::operator=(Source&&) noexcept = default;
Source::~Source() = default;

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
