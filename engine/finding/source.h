#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace proofstone {

/// How well a statement's origin is known. Shown beside every formula, value and check.
enum class SourceStanding {
  published,        ///< the named page was read
  memory,           ///< recalled from the named document; confirm against it
  computed,         ///< worked out by us from a named formula
  common_practice,  ///< a rule of the trade without one source
  stated,           ///< the designer says so in the document
};

/// "published", "memory", "computed", "common practice", "stated": as data files write them.
std::string_view standing_name(SourceStanding standing);

/// The standing that data files call `name`.
std::optional<SourceStanding> standing_called(std::string_view name);

/// Where something comes from: document with edition, and the section, equation or table in it.
struct Source {
  // Made, copied and let go in one file: what that takes would else be compiled in every file that
  // does.
  Source();
  Source(std::string_view of_document, std::string_view place_in_it,
         SourceStanding how_known = SourceStanding::memory);
  Source(const Source&);
  Source(Source&&) noexcept;
  Source& operator=(const Source&);
  Source& operator=(Source&&) noexcept;
  ~Source();

  std::string document;
  std::string place;
  SourceStanding standing = SourceStanding::memory;

  /// "USACE EM 1110-2-1601 (1994), eq. 3-3 (from memory; confirm)"
  std::string sentence() const;
};

}  // namespace proofstone

extern template class std::vector<proofstone::Source>;
