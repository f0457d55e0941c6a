#include "report/paper.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "engine/json/utc_time.h"
#include "engine/site/assess.h"
#include "engine/site/headline.h"
#include "report/html_table.h"
#include "report/markup.h"

namespace proofstone {
namespace {

const std::string engineer = "Reviewed by the licensed engineer responsible; licence no.";

bool is_of_design(Topic topic) {
  switch (topic) {
    case Topic::kind:
    case Topic::cover:
    case Topic::water:
    case Topic::rock_size:
    case Topic::rock_class:
    case Topic::layer:
    case Topic::toe:
    case Topic::soil:
    case Topic::filter:
    case Topic::extent:
    case Topic::quantities:
    case Topic::chance:
    case Topic::mix:
      return true;
    default:
      return false;
  }
}

bool is_of_placing(Topic topic) { return topic == Topic::placing || topic == Topic::placing_check; }

/// Keeps the pictures of one thing, whose ids end with its own after a dot.
template <class Picture>
void keep_pictures(std::vector<Picture>& pictures, const std::set<std::string>& of) {
  std::erase_if(pictures, [&of](const Picture& picture) {
    const auto dot = picture.id.find('.');
    if (dot == std::string::npos) return true;
    const auto rest = picture.id.substr(dot + 1);
    return std::none_of(of.begin(), of.end(), [&rest](const std::string& id) {
      return rest == id || rest.starts_with(id + ".");
    });
  });
}

void keep_pictures_of_zones(Findings& findings, const std::set<std::string>& zones) {
  keep_pictures(findings.filter_pictures, zones);
  keep_pictures(findings.section_pictures, zones);
  keep_pictures(findings.typical_sections, zones);
  keep_pictures(findings.method_sizes_pictures, zones);
  keep_pictures(findings.mix_pictures, zones);
}

void keep_pictures_of_lots(Findings& findings, const std::set<std::string>& lots) {
  keep_pictures(findings.gradation_pictures, lots);
  keep_pictures(findings.stones_pictures, lots);
  keep_pictures(findings.sequential_counts, lots);
  keep_pictures(findings.run_charts, lots);
}

template <class Keeps>
void keep_findings(Findings& findings, Keeps keeps) {
  std::erase_if(findings.findings, [&keeps](const Finding& one) { return !keeps(one); });
  write_headline(findings);
}

void drop_plans(Findings& findings) {
  findings.plan_pictures.clear();
  findings.profile_pictures.clear();
}

std::set<std::string> zones_meant(const Site& site, const std::string& zone) {
  if (!zone.empty()) return {zone};
  std::set<std::string> all;
  for (const auto& [id, of_site] : site.zones) all.insert(id);
  return all;
}

void make_design_book(const Site& site, const PaperAsked& asked, Paper& paper) {
  const auto zones = zones_meant(site, asked.zone);
  auto& findings = paper.findings;
  keep_findings(findings, [&](const Finding& one) {
    return is_of_design(one.topic) && one.about.lot.empty() &&
           (asked.zone.empty() || one.about.zone == asked.zone);
  });
  keep_pictures_of_zones(findings, zones);
  keep_pictures_of_lots(findings, {});
  if (!asked.zone.empty()) {
    drop_plans(findings);
    findings.quantities = {};
  }
  findings.placing.clear();
  paper.signers = {"Designed by", "Checked by", engineer};
}

void make_lot_acceptance(const Site& site, const PaperAsked& asked, const Wording& wording,
                         Paper& paper) {
  auto& findings = paper.findings;
  keep_findings(findings, [&](const Finding& one) {
    return one.about.lot == asked.lot && !is_of_placing(one.topic);
  });
  keep_pictures_of_lots(findings, {asked.lot});
  keep_pictures_of_zones(findings, {});
  drop_plans(findings);
  findings.quantities = {};
  findings.placing.clear();
  paper.entries = record_entries(site, wording);
  std::erase_if(paper.entries, [&](const RecordEntry& entry) {
    return entry.lot != asked.lot || entry.kind == "load";
  });
  paper.entries_heading = "What was looked at";
  paper.signers = {"Looked at by", "Accepted, or not, for the owner by", engineer};
}

void make_placing_record(const Site& site, const PaperAsked& asked, const Wording& wording,
                         Paper& paper) {
  const auto zones = zones_meant(site, asked.zone);
  auto& findings = paper.findings;
  keep_findings(findings, [&](const Finding& one) {
    return is_of_placing(one.topic) && (asked.zone.empty() || one.about.zone == asked.zone);
  });
  const auto sections = std::move(findings.typical_sections);
  keep_pictures_of_zones(findings, {});
  findings.typical_sections = sections;
  keep_pictures(findings.typical_sections, zones);
  keep_pictures_of_lots(findings, {});
  drop_plans(findings);
  findings.quantities = {};
  if (!asked.zone.empty()) {
    const auto& name = site.zones.at(asked.zone).name;
    std::erase_if(findings.placing,
                  [&name](const PlacingRecord& record) { return record.zone != name; });
  }
  paper.entries = record_entries(site, wording);
  std::erase_if(paper.entries, [&](const RecordEntry& entry) {
    return entry.zone.empty() || (!asked.zone.empty() && entry.zone != asked.zone);
  });
  paper.entries_heading = "What was seen and decided";
  paper.signers = {"Inspected by", "Placed by, for the contractor", engineer};
}

/// "2 loads of First deliveries, 44.8 ton."
std::string loads_sentence(const Site& site, const PaperAsked& asked, const Wording& wording) {
  struct Delivered {
    std::size_t loads = 0;
    std::size_t unweighed = 0;
    Mass mass;
  };
  std::map<std::string, Delivered> by_lot;
  for (const auto& [id, load] : site.loads) {
    if (!clock_time(load.when, asked.minutes_ahead).starts_with(asked.day)) continue;
    auto& of_lot = by_lot[load.lot];
    ++of_lot.loads;
    if (load.mass) {
      of_lot.mass = of_lot.mass + *load.mass;
    } else {
      ++of_lot.unweighed;
    }
  }
  std::string sentence;
  for (const auto& [lot, of_lot] : by_lot) {
    sentence += fmt::format(
        " {} {} of {}: {}{}.", of_lot.loads, of_lot.loads == 1 ? "load" : "loads",
        site.lots.at(lot).name, wording.of(of_lot.mass),
        of_lot.unweighed == 0 ? "" : fmt::format(", {} of them without a mass", of_lot.unweighed));
  }
  return sentence;
}

void make_daily_report(const Site& site, const PaperAsked& asked, const Wording& wording,
                       Paper& paper) {
  auto& findings = paper.findings;
  std::set<std::string> lots;
  std::set<std::string> zones;
  for (const auto& entry : paper.entries) {
    if (!entry.lot.empty()) lots.insert(entry.lot);
    if (!entry.zone.empty()) zones.insert(entry.zone);
  }
  keep_findings(findings, [&](const Finding& one) {
    if (is_of_placing(one.topic)) {
      return (one.topic == Topic::placing || one.governs) && zones.contains(one.about.zone);
    }
    return lots.contains(one.about.lot) &&
           (one.topic == Topic::gradation || one.topic == Topic::supply);
  });
  keep_pictures_of_zones(findings, {});
  keep_pictures_of_lots(findings, lots);
  findings.stones_pictures.clear();
  findings.sequential_counts.clear();
  drop_plans(findings);
  findings.quantities = {};
  findings.placing.clear();
  findings.headline = fmt::format(
      "{} {} on this day.{} What stands now of the rock and the work "
      "touched: {}",
      paper.entries.size(), paper.entries.size() == 1 ? "entry" : "entries",
      loads_sentence(site, asked, wording), findings.headline);
  paper.entries_heading = "Done and seen";
  paper.signers = {"Taken down by", engineer};
}

Problem not_there(const char* what, const std::string& asked, const std::string& where,
                  const std::vector<std::string>& known) {
  return {"no-such-" + std::string(what),
          asked.empty() ? fmt::format("This paper is about one {}, and none is named.", what)
                        : fmt::format("The site has no {} \"{}\".", what, asked),
          "", where,
          known.empty() ? fmt::format("the site has no {} yet", what)
                        : fmt::format("{}", fmt::join(known, ", "))};
}

std::vector<std::string> names(const std::set<std::string>& set) {
  return {set.begin(), set.end()};
}

Expected<std::vector<RecordEntry>> entries_of_day(const Site& site, const PaperAsked& asked,
                                                  const Wording& wording) {
  std::set<std::string> days;
  auto entries = record_entries(site, wording);
  std::erase_if(entries, [&](const RecordEntry& entry) {
    if (entry.when.empty()) return true;
    const auto day = clock_time(entry.when, asked.minutes_ahead).substr(0, 10);
    days.insert(day);
    return day != asked.day;
  });
  if (entries.empty()) {
    return Problem{"nothing-on-day",
                   asked.day.empty() ? "A daily report is about one day, and none is named."
                                     : "Nothing was taken down on " + asked.day + ".",
                   "", "/paper/day",
                   days.empty() ? "nothing of this site has a time yet"
                                : fmt::format("{}", fmt::join(days, ", "))};
  }
  return entries;
}

std::string clock_name(int minutes_ahead) {
  if (minutes_ahead == 0) return "UTC";
  const int size = minutes_ahead < 0 ? -minutes_ahead : minutes_ahead;
  return fmt::format("UTC{}{:02}:{:02}", minutes_ahead < 0 ? "−" : "+", size / 60, size % 60);
}

/// The zone, lot or day that a paper speaks of; empty: the whole site.
Expected<std::string> what_it_is_about(const Site& site, const PaperAsked& asked) {
  std::string about;
  if (!asked.zone.empty()) {
    const auto zone = site.zones.find(asked.zone);
    if (zone == site.zones.end()) {
      return not_there("zone", asked.zone, "/paper/zone", names(zones_meant(site, "")));
    }
    about = zone->second.name;
  }
  if (asked.kind == PaperKind::lot_acceptance) {
    const auto lot = site.lots.find(asked.lot);
    if (lot == site.lots.end()) {
      std::vector<std::string> known;
      for (const auto& [id, of_site] : site.lots) known.push_back(id);
      return not_there("lot", asked.lot, "/paper/lot", known);
    }
    about = lot->second.name;
  }
  if (asked.kind == PaperKind::daily_report) about = asked.day;
  return about;
}

}  // namespace

PaperAsked read_paper(FieldReader& request, Problems& problems) {
  PaperAsked asked;
  const auto* json = request.optional("paper");
  if (json == nullptr) return asked;
  FieldReader reader(*json, request.pointer() + "/paper", problems);
  asked.kind = reader.choice<PaperKind>("kind",
                                        {{"findings", PaperKind::findings},
                                         {"design-book", PaperKind::design_book},
                                         {"lot-acceptance", PaperKind::lot_acceptance},
                                         {"placing-record", PaperKind::placing_record},
                                         {"daily-report", PaperKind::daily_report}},
                                        std::nullopt);
  asked.lot = reader.optional_text("lot");
  asked.zone = reader.optional_text("zone");
  asked.day = reader.optional_text("day");
  if (!asked.day.empty() && !is_day(asked.day)) {
    reader.report("bad-day", "This is not a day of the calendar.", "day",
                  "a day such as \"2026-05-28\"");
  }
  if (const auto clock = reader.optional_text("clock"); !clock.empty()) {
    const auto offset = clock_offset(clock);
    if (!offset) {
      reader.report("bad-clock", "This does not say how far a clock is ahead of UTC.", "clock",
                    "an offset such as \"-06:00\"");
    }
    asked.minutes_ahead = offset.value_or(0);
  }
  reader.finish();
  return asked;
}

Expected<Paper> paper_of(const Site& site, const PaperAsked& asked, UnitSystem units) {
  const Wording wording(units);
  Paper paper;
  paper.minutes_ahead = asked.minutes_ahead;
  paper.clock = clock_name(asked.minutes_ahead);
  auto about = what_it_is_about(site, asked);
  if (!about) return about.problems();
  paper.about = std::move(*about);
  if (asked.kind == PaperKind::daily_report) {
    auto entries = entries_of_day(site, asked, wording);
    if (!entries) return entries.problems();
    paper.entries = std::move(*entries);
  }
  paper.findings = assess(site, units);
  switch (asked.kind) {
    case PaperKind::findings:
      paper.title = "Findings";
      paper.signers = {"Prepared by", engineer};
      break;
    case PaperKind::design_book:
      paper.title = "Design book";
      make_design_book(site, asked, paper);
      break;
    case PaperKind::lot_acceptance:
      paper.title = "Lot acceptance";
      make_lot_acceptance(site, asked, wording, paper);
      break;
    case PaperKind::placing_record:
      paper.title = "Placing record";
      make_placing_record(site, asked, wording, paper);
      break;
    case PaperKind::daily_report:
      paper.title = "Daily report";
      make_daily_report(site, asked, wording, paper);
      break;
  }
  return paper;
}

std::string entries_html(const Paper& paper) {
  if (paper.entries_heading.empty()) return {};
  std::vector<std::vector<std::string>> rows;
  for (const auto& entry : paper.entries) {
    const auto time = entry.when.empty() ? "" : clock_time(entry.when, paper.minutes_ahead);
    rows.push_back({time, entry.kind, entry.what, entry.words, entry.who});
  }
  const std::string time = "Time, " + paper.clock;
  return fmt::format("<section class=\"record\">\n<h2>{}</h2>\n", escaped(paper.entries_heading)) +
         (rows.empty() ? "<p>Nothing yet.</p>\n"
                       : html_table({time.c_str(), "Kind", "What", "Seen", "By"}, rows)) +
         "</section>\n";
}

}  // namespace proofstone
