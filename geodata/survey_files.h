#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "geodata/surveyed_section.h"
#include "geodata/vector_layer.h"

namespace proofstone {

/// The bank, looking downstream, at which lines begin, or the water's way along a course: files do
/// not say it.
enum class LineStart { left_bank, right_bank };
enum class CourseRuns { downstream, upstream };

/// What a person states of surveyed sections because files do not, or not reliably.
struct SectionFilesRequest {
  std::string from;  ///< the file and its survey, in words
  Unit elevation_unit = unit::meter;
  std::string vertical_datum;
  LineStart starts = LineStart::left_bank;
  std::optional<Dimensionless> roughness;  ///< Manning's n where no field gives it
  std::string energy_slope;                ///< of every section, as a document writes it
};

struct NamedText {
  std::string name;
  std::string text;
};

/// Files to lay beside a site document, and what a revision says so that they are read: note and
/// changes, to be completed with id, after, time and author.
struct SurveyedFiles {
  std::vector<NamedText> files;
  nlohmann::json revision;
  std::vector<std::string> cautions;
};

/// Sections as CSV files (station, elevation, roughness) and as changes under /sections. Every file
/// is read back by the reader of section files before it is handed out.
///
/// Problems: units-differ (the file states another unit of elevation than the person),
/// no-roughness, same-name (two sections would have one id), and those of read_section_csv, each
/// with the section's place in its file.
Expected<SurveyedFiles> section_files(const SurveyFile& survey, const SectionFilesRequest& request);

/// Courses as CSV files (easting, northing) and as changes under /centrelines; `from` is the file
/// in words. Problems: same-name,
/// and those of read_centreline_csv.
Expected<SurveyedFiles> course_files(const CourseFile& found, const std::string& from,
                                     CourseRuns runs);

}  // namespace proofstone
