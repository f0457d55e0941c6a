#include "geodata/landxml_document.h"

#include <expat.h>
#include <fmt/format.h>

#include <memory>
#include <type_traits>

#include "engine/finding/quoted_text.h"
#include "engine/quantity/measure.h"

namespace proofstone {

namespace {

constexpr int deepest = 100;
constexpr std::size_t most_sections = 2000;

using Attributes = const XML_Char**;

/// An element without its namespace prefix.
std::string_view local_name(const XML_Char* name) {
  const std::string_view whole(name);
  const auto colon = whole.rfind(':');
  return colon == std::string_view::npos ? whole : whole.substr(colon + 1);
}

std::string attribute(Attributes attributes, std::string_view name) {
  for (; attributes[0] != nullptr; attributes += 2) {
    if (local_name(attributes[0]) == name) return attributes[1];
  }
  return {};
}

/// Gathers a document while the parser walks through it.
class Reading {
 public:
  Reading(std::string file, XML_Parser parser) : file_(std::move(file)), parser_(parser) {}

  void begin(const XML_Char* name, Attributes attributes) {
    const auto element = local_name(name);
    if (++depth_ > deepest) {
      stop("too-deep", "Elements stand inside one another more than 100 deep.", "a survey");
    } else if (depth_ == 1) {
      begin_document(element, attributes);
    } else if (element == "Metric" || element == "Imperial") {
      take_units(element, attributes);
    } else if (element == "CoordinateSystem") {
      document.epsg_code = attribute(attributes, "epsgCode");
    } else if (element == "CgPoint") {
      point_name_ = attribute(attributes, "name");
      gather(3);
    } else if (element == "CrossSect") {
      begin_section(attributes);
    } else if (section_open_) {
      begin_in_section(element, attributes);
    }
  }

  void end(const XML_Char* name) {
    --depth_;
    const auto element = local_name(name);
    if (element == "CrossSect") {
      section_open_ = false;
      surface_open_ = false;
      gathering_ = false;
    } else if (element == "CrossSectSurf" || element == "DesignCrossSectSurf") {
      surface_open_ = false;
    } else if (element == "CgPoint" && gathering_) {
      end_point();
    } else if (gathering_ && surface_open_ &&
               (element == "PntList2D" || element == "PntList3D" || element == "CrossSectPnt")) {
      end_list();
    }
  }

  void characters(const XML_Char* text, int length) {
    if (gathering_) text_.append(text, static_cast<std::size_t>(length));
  }

  void refuse_doctype() {
    stop("has-doctype", "The file declares a document type, which LandXML never needs.",
         "LandXML without <!DOCTYPE>");
  }

  bool stopped() const { return !problems.empty(); }

  LandxmlDocument document;
  Problems problems;

 private:
  void stop(const char* code, const std::string& what, const std::string& allowed) {
    if (stopped()) return;
    problems.push_back(
        {code, what, file_, fmt::format("line {}", XML_GetCurrentLineNumber(parser_)), allowed});
    XML_StopParser(parser_, XML_FALSE);
  }

  void gather(int each) {
    gathering_ = true;
    each_ = each;
    text_.clear();
  }

  void begin_document(std::string_view element, Attributes attributes) {
    if (element != "LandXML") {
      stop("not-landxml", fmt::format("The document is a {}.", in_quotes(element)),
           "a LandXML document");
      return;
    }
    document.version = attribute(attributes, "version");
  }

  void take_units(std::string_view element, Attributes attributes) {
    if (!document.linear_unit.empty()) {
      stop("two-units", "The document states its units twice.", "one Metric or Imperial");
      return;
    }
    document.linear_unit = attribute(attributes, "linearUnit");
    document.elevation_unit = attribute(attributes, "elevationUnit");
    // Imperial metres would be a slip of somebody's.
    const bool metric = document.linear_unit.find("meter") != std::string::npos;
    if (!document.linear_unit.empty() && metric != (element == "Metric")) {
      stop("unknown-unit",
           fmt::format("{} is no {} unit.", in_quotes(document.linear_unit), element),
           "meter under Metric; foot or USSurveyFoot under Imperial");
    }
  }

  void begin_section(Attributes attributes) {
    if (document.sections.size() == most_sections) {
      stop("too-many-sections", "The document has more than 2000 cross sections.",
           "at most 2000; cut it to the works");
      return;
    }
    // A section that opens within another has no surface yet, nor a list of points.
    section_open_ = true;
    surface_open_ = false;
    gathering_ = false;
    LandxmlCrossSection section;
    section.station = attribute(attributes, "sta");
    section.name = attribute(attributes, "name");
    section.line = static_cast<long>(XML_GetCurrentLineNumber(parser_));
    document.sections.push_back(std::move(section));
  }

  void begin_in_section(std::string_view element, Attributes attributes) {
    if (element == "CrossSectSurf" || element == "DesignCrossSectSurf") {
      surface_open_ = true;
      LandxmlSurface surface;
      surface.name = attribute(attributes, "name");
      surface.design = element == "DesignCrossSectSurf";
      document.sections.back().surfaces.push_back(std::move(surface));
      return;
    }
    if (!surface_open_) return;
    if (element == "PntList2D") gather(2);
    if (element == "PntList3D") gather(3);
    if (element == "CrossSectPnt") begin_point(attributes);
  }

  void begin_point(Attributes attributes) {
    const auto format = attribute(attributes, "dataFormat");
    if (!format.empty() && format != "Offset Elevation") {
      stop("slope-distance", fmt::format("A point is given as {}.", in_quotes(format)),
           "points as Offset Elevation");
      return;
    }
    reference_ = attribute(attributes, "pntRef");
    gather(2);
  }

  /// The numbers of the gathered text.
  std::optional<std::vector<double>> numbers() {
    std::vector<double> found;
    const std::string_view blanks = " \t\r\n";
    const std::string_view text = text_;
    for (std::size_t at = text.find_first_not_of(blanks); at != std::string_view::npos;) {
      const auto end = std::min(text.find_first_of(blanks, at), text.size());
      const auto word = text.substr(at, end - at);
      const auto number = parse_quantity<Dimensionless>(word);
      if (!number) {
        stop("not-a-number", fmt::format("{} is no number.", in_quotes(word)),
             "numbers with a decimal point, apart by spaces");
        return std::nullopt;
      }
      found.push_back(number->number());
      at = text.find_first_not_of(blanks, end);
    }
    return found;
  }

  void end_point() {
    gathering_ = false;
    auto found = numbers();
    if (found && !point_name_.empty()) document.points[point_name_] = std::move(*found);
  }

  void end_list() {
    gathering_ = false;
    auto& surface = document.sections.back().surfaces.back();
    const std::string reference = std::move(reference_);
    reference_.clear();
    if (!reference.empty()) {
      surface.references.push_back(reference);
      return;
    }
    auto found = numbers();
    if (!found) return;
    if (found->size() % static_cast<std::size_t>(each_) != 0) {
      stop("not-a-number",
           fmt::format("A list of points has {} numbers, not {} for each point.", found->size(),
                       each_),
           "whole points");
      return;
    }
    surface.points.push_back({each_, std::move(*found)});
  }

  std::string file_;
  XML_Parser parser_;
  int depth_ = 0;
  bool section_open_ = false;
  bool surface_open_ = false;
  bool gathering_ = false;
  int each_ = 2;
  std::string text_;
  std::string point_name_;
  std::string reference_;
};

Reading& reading_of(void* data) { return *static_cast<Reading*>(data); }

struct FreeParser {
  void operator()(XML_Parser parser) const { XML_ParserFree(parser); }
};
using Parser = std::unique_ptr<std::remove_pointer_t<XML_Parser>, FreeParser>;

void set_handlers(XML_Parser parser, Reading& reading) {
  XML_SetUserData(parser, &reading);
  XML_SetElementHandler(
      parser,
      [](void* data, const XML_Char* name, Attributes attributes) {
        reading_of(data).begin(name, attributes);
      },
      [](void* data, const XML_Char* name) { reading_of(data).end(name); });
  XML_SetCharacterDataHandler(parser, [](void* data, const XML_Char* text, int length) {
    reading_of(data).characters(text, length);
  });
  XML_SetStartDoctypeDeclHandler(
      parser, [](void* data, const XML_Char*, const XML_Char*, const XML_Char*, int) {
        reading_of(data).refuse_doctype();
      });
}

}  // namespace

Expected<LandxmlDocument> read_landxml_document(std::string_view bytes, const std::string& file) {
  const Parser parser(XML_ParserCreate(nullptr));
  if (!parser) return Problem{"not-readable", "There is no memory to read the file.", file, "", ""};
  Reading reading(file, parser.get());
  set_handlers(parser.get(), reading);
  const auto status =
      XML_Parse(parser.get(), bytes.data(), static_cast<int>(bytes.size()), XML_TRUE);
  if (reading.stopped()) return reading.problems;
  if (status != XML_STATUS_OK) {
    return Problem{"not-xml",
                   fmt::format("The file is no whole XML document: {}.",
                               XML_ErrorString(XML_GetErrorCode(parser.get()))),
                   file, fmt::format("line {}", XML_GetCurrentLineNumber(parser.get())),
                   "a whole LandXML file"};
  }
  return std::move(reading.document);
}

}  // namespace proofstone
