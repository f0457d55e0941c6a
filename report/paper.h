#pragma once

#include <string>
#include <vector>

#include "engine/json/field_reader.h"
#include "engine/site/findings.h"
#include "engine/site/record_entries.h"

namespace proofstone {

/// The papers that go out of a site, each for its own reader.
enum class PaperKind {
  findings,        ///< everything, for whoever reviews it
  design_book,     ///< how the rock of the zones was found
  lot_acceptance,  ///< whether a lot is the rock ordered, and where it holds
  placing_record,  ///< what was checked of placed work
  daily_report,    ///< what was done and seen on one day
};

/// What a paper is asked to be about.
struct PaperAsked {
  PaperKind kind = PaperKind::findings;
  std::string lot;        ///< of a lot acceptance
  std::string zone;       ///< of a design book or a placing record; empty: all zones
  std::string day;        ///< of a daily report, "2026-05-28"
  int minutes_ahead = 0;  ///< of UTC, of the clock whose days and times are meant
};

/// `paper` of a request: {"kind": "lot-acceptance", "lot": "first-deliveries"}; all findings where
/// there is none.
PaperAsked read_paper(FieldReader& request, Problems& problems);

/// A paper ready to be written.
struct Paper {
  std::string title;  ///< "Lot acceptance"
  std::string about;  ///< "First deliveries"; empty: the site
  Findings findings;  ///< those that belong on it, with a headline of their own
  std::vector<RecordEntry> entries;
  std::string entries_heading;  ///< empty: no entries are shown
  std::string clock;            ///< "UTC" or "UTC−06:00"
  int minutes_ahead = 0;
  std::vector<std::string> signers;
};

/// Chooses what belongs on a paper. Problems: a lot, zone or day that the site does not have,
/// naming those it has.
Expected<Paper> paper_of(const Site& site, const PaperAsked& asked, UnitSystem units);

/// The entries of a paper as a table; empty where it shows none.
std::string entries_html(const Paper& paper);

}  // namespace proofstone
