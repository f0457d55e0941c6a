#pragma once

#include <string_view>
#include <vector>

namespace proofstone {

/// A data file of the project, compiled into the engine because the engine reads no files.
struct EmbeddedFile {
  /// Path below its folder, with forward slashes: "classes/fhwa.json".
  std::string_view name;
  /// The whole file, byte for byte, UTF-8.
  std::string_view text;
};

/// The files of catalog/ (classes, soils, …), in alphabetical order of their paths.
const std::vector<EmbeddedFile>& embedded_catalog();

/// The published check cases of checks/, in alphabetical order of their paths.
const std::vector<EmbeddedFile>& embedded_checks();

/// The JSON Schemas of schema/, in alphabetical order of their paths.
const std::vector<EmbeddedFile>& embedded_schemas();

}  // namespace proofstone
