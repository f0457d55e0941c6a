#include "engine/site/position_reader.h"

#include <fmt/format.h>

#include <cmath>

#include "engine/site/loads_reader.h"

namespace proofstone {
namespace {

/// No device says less of where it is than that it is within a thousand kilometres.
constexpr double widest_m = 1e6;

/// Degrees within `most` of 0. A bank may be written as an angle or a slope; a position may not.
Angle read_degrees(FieldReader& reader, const std::string& field, double most) {
  const auto* value = reader.required(field);
  const bool slope =
      value != nullptr && value->is_string() &&
      value->get_ref<const std::string&>().find_first_of(":/VvHh") != std::string::npos;
  if (slope) {
    reader.report("not-an-angle", "Decimal degrees belong here.", field, "such as \"39.73921°\"");
    return {};
  }
  const auto angle = reader.required_quantity<Angle>(field);
  // Ninety degrees read back from radians may be a little more.
  constexpr double rounding = 1e-9;
  if (!(std::abs(angle.degrees()) <= most + rounding)) {
    reader.report("out-of-range", "No place on earth is there.", field,
                  most > 100 ? "-180° to 180°, east positive" : "-90° to 90°, north positive");
  }
  return angle;
}

/// The accuracy as it was written; empty where it is not stated or is none.
std::string read_accuracy(FieldReader& reader) {
  const auto accuracy = reader.optional_quantity<Length>("accuracy");
  if (!accuracy) return {};
  if (!(accuracy->meters() > 0 && accuracy->meters() <= widest_m)) {
    reader.report("implausible", "No device is as near or as far as this.", "accuracy",
                  "more than 0, at most 1000 km");
    return {};
  }
  return reader.optional("accuracy")->get<std::string>();
}

std::string degrees_text(Angle angle, char positive, char negative) {
  const auto number = fmt::format("{:.5f}", std::abs(angle.degrees()));
  return fmt::format("{}° {}", number, angle.degrees() < 0 ? negative : positive);
}

}  // namespace

std::string read_position(FieldReader& parent, const std::string& seen_when, Problems& problems) {
  const auto* json = parent.optional("position");
  if (json == nullptr) return {};
  const auto before = problems.size();
  FieldReader reader(*json, parent.pointer() + "/position", problems);
  const auto latitude = read_degrees(reader, "latitude", 90);
  const auto longitude = read_degrees(reader, "longitude", 180);
  const auto accuracy = read_accuracy(reader);
  const auto when = read_when(reader);
  reader.finish();
  if (problems.size() != before) return {};
  const auto text = degrees_text(latitude, 'N', 'S') + ", " + degrees_text(longitude, 'E', 'W');
  std::string added = accuracy.empty() ? "" : "within " + accuracy;
  if (!when.empty() && when != seen_when) added += (added.empty() ? "at " : ", at ") + when;
  return added.empty() ? text : fmt::format("{} ({})", text, added);
}

std::string beside(const std::string& one, const std::string& other) {
  if (one.empty() || other.empty()) return one + other;
  return one + "; " + other;
}

}  // namespace proofstone
