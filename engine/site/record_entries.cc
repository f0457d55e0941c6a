#include "engine/site/record_entries.h"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>
#include <tuple>
#include <utility>

namespace proofstone {
namespace {

std::string counted(std::size_t number, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", number, number == 1 ? one : many);
}

/// What was said, apart by semicolons, without what was not.
class Words {
 public:
  void add(std::string_view words) {
    if (!words.empty()) text_ += (text_.empty() ? "" : "; ") + std::string(words);
  }
  void add_observation(const Observation& seen) {
    add(seen.where);
    add(seen.instrument);
    if (!seen.photos.empty()) add(counted(seen.photos.size(), "photo", "photos"));
    add(seen.note);
  }
  std::string text() && { return std::move(text_); }

 private:
  std::string text_;
};

RecordEntry begun(std::string kind, const Observation& seen, std::string what) {
  RecordEntry entry;
  entry.kind = std::move(kind);
  entry.when = seen.when;
  entry.who = seen.who;
  entry.what = std::move(what);
  return entry;
}

struct TakenWords {
  std::string operator()(const StoneCount& count) const {
    std::size_t stones = count.intermediate_axes.size();
    for (const auto& bin : count.bins) stones += static_cast<std::size_t>(bin.stones);
    return "count of " + counted(stones, "stone", "stones");
  }
  std::string operator()(const WeighedSample& sample) const {
    return "weighed sample in " + counted(sample.groups.size(), "group", "groups");
  }
  std::string operator()(const MassRanges& ranges) const {
    return "stones weighed in " + counted(ranges.ranges.size(), "range", "ranges");
  }
  std::string operator()(const QuickLook& seen) const {
    return fmt::format("quick look: largest {}, smallest {}", wording.rock(seen.largest),
                       wording.rock(seen.smallest));
  }
  std::string operator()(const ShapeCount& count) const {
    return "shape of " + counted(count.stones.size(), "stone", "stones");
  }
  std::string operator()(const PhotoSet& photos) const {
    return "measured on " + counted(photos.photos.size(), "photo", "photos");
  }
  const Wording& wording;
};

RecordEntry entry_of(const Site& site, const Look& look, const Wording& wording) {
  auto entry =
      begun("look", look.seen, fmt::format("{} ({})", look.name, site.lots.at(look.lot).name));
  entry.lot = look.lot;
  Words words;
  words.add(std::visit(TakenWords{wording}, look.taken));
  words.add(look.side);
  if (!look.load.empty()) words.add("of load " + look.load);
  words.add_observation(look.seen);
  entry.words = std::move(words).text();
  return entry;
}

RecordEntry entry_of(const Site& site, const Load& load, const Wording& wording) {
  const Lot& lot = site.lots.at(load.lot);
  RecordEntry entry;
  entry.kind = "load";
  entry.when = load.when;
  entry.who = load.who;
  entry.lot = load.lot;
  entry.what = fmt::format(
      "{} ({})", load.ticket.empty() ? "Load without a ticket" : "Load, ticket " + load.ticket,
      lot.name);
  Words words;
  const auto source = site.sources.find(load.source.empty() ? lot.source : load.source);
  if (source != site.sources.end()) words.add("from " + source->second.name);
  if (load.mass) words.add(wording.of(*load.mass));
  if (load.median_size) words.add("median size " + wording.rock(*load.median_size));
  words.add(load.note);
  entry.words = std::move(words).text();
  return entry;
}

std::string entry_words(const CheckEntry& check) {
  std::string words = check.check;
  std::replace(words.begin(), words.end(), '-', ' ');
  if (check.passes) words += *check.passes ? " passes" : " fails";
  if (!check.measured.empty()) {
    words += " at " + counted(check.measured.size(), "point", "points");
  }
  for (const auto& [material, loads] : check.loads) {
    words += fmt::format(", {} of {}", counted(static_cast<std::size_t>(loads), "load", "loads"),
                         material);
  }
  return words;
}

RecordEntry entry_of(const Site& site, const PlacingWalk& walk) {
  auto entry =
      begun("walk", walk.seen, fmt::format("{} ({})", walk.name, site.zones.at(walk.zone).name));
  entry.zone = walk.zone;
  Words words;
  for (const auto& check : walk.entries) words.add(entry_words(check));
  words.add_observation(walk.seen);
  entry.words = std::move(words).text();
  return entry;
}

RecordEntry entry_of(const Site& site, const LayerSurvey& survey) {
  auto entry = begun("survey", survey.seen,
                     fmt::format("{} ({})", survey.name, site.zones.at(survey.zone).name));
  entry.zone = survey.zone;
  Words words;
  words.add("thickness at " + counted(survey.thicknesses.size(), "point", "points"));
  words.add_observation(survey.seen);
  entry.words = std::move(words).text();
  return entry;
}

void add_course(const Site& site, const Nonconformance& problem,
                std::vector<RecordEntry>& entries) {
  const auto& place =
      problem.zone.empty() ? site.lots.at(problem.lot).name : site.zones.at(problem.zone).name;
  const auto add = [&](const char* kind, const Observation& seen, std::string_view first) {
    auto entry = begun(kind, seen, fmt::format("{} ({})", problem.name, place));
    entry.zone = problem.zone;
    entry.lot = problem.lot;
    Words words;
    words.add(first);
    words.add_observation(seen);
    entry.words = std::move(words).text();
    entries.push_back(std::move(entry));
  };
  add("problem opened", problem.opened, problem.check);
  if (problem.disposition) {
    const auto& decided = *problem.disposition;
    auto words = std::string(disposition_word(decided.kind));
    if (!decided.approved_by.empty()) words += ", approved by " + decided.approved_by;
    add("problem decided", decided.signed_off, words);
  }
  if (problem.closed) add("problem closed", *problem.closed, "");
}

}  // namespace

std::vector<RecordEntry> record_entries(const Site& site, const Wording& wording) {
  std::vector<RecordEntry> entries;
  for (const auto& [id, load] : site.loads) entries.push_back(entry_of(site, load, wording));
  for (const auto& [id, look] : site.looks) entries.push_back(entry_of(site, look, wording));
  for (const auto& [id, walk] : site.placing_walks) entries.push_back(entry_of(site, walk));
  for (const auto& [id, survey] : site.layer_surveys) entries.push_back(entry_of(site, survey));
  for (const auto& [id, problem] : site.nonconformances) add_course(site, problem, entries);
  std::sort(entries.begin(), entries.end(), [](const RecordEntry& a, const RecordEntry& b) {
    return std::tie(a.when, a.kind, a.what) < std::tie(b.when, b.kind, b.what);
  });
  return entries;
}

}  // namespace proofstone
