# Script: writes OUTPUT, a C++ source in which FUNCTION returns the files named in LIST (one path a line), each under
# its path relative to ROOT.
set(entries "")
file(STRINGS "${LIST}" paths)
foreach(path IN LISTS paths)
  file(RELATIVE_PATH name "${ROOT}" "${path}")
  file(READ "${path}" text)
  string(FIND "${text}" ")~~\"" clash)
  if(NOT clash EQUAL -1)
    message(FATAL_ERROR "${path} contains the mark )~~\" that ends an embedded text; change that text.")
  endif()
  string(APPEND entries "      {\"${name}\"sv, R\"~~(${text})~~\"sv},\n")
endforeach()

file(WRITE "${OUTPUT}" "// Generated from data files by cmake/embed_files.cmake; edit those instead.
#include \"engine/rock/embedded_catalog.h\"

namespace proofstone {

using namespace std::string_view_literals;

const std::vector<EmbeddedFile>& ${FUNCTION}() {
  static const std::vector<EmbeddedFile> files{
${entries}  };
  return files;
}

}  // namespace proofstone
")
