# Which files of a folder are product sources, tests, fuzzers and benchmarks: told by the end of their names.

# Sets `out` to the files of `folder` whose names end in `ending`.
function(files_ending out folder ending)
  file(GLOB_RECURSE found CONFIGURE_DEPENDS "${PROJECT_SOURCE_DIR}/${folder}/*${ending}")
  set(${out} "${found}" PARENT_SCOPE)
endfunction()

# Sets `out` to the product sources of `folder`.
function(product_sources out folder)
  files_ending(found ${folder} .cc)
  list(FILTER found EXCLUDE REGEX "_(test|fuzz|bench)\\.cc$")
  set(${out} "${found}" PARENT_SCOPE)
endfunction()

# Has a clang read once for all files of a target what nearly every file includes, and `ARGN`: a third of a second less a
# file. Each file still includes what it needs; g++, which gains little by it, builds without it and finds one that does not.
function(precompile_usual_headers target)
  if(CMAKE_CXX_COMPILER_ID STREQUAL "Clang")
    target_precompile_headers(${target} PRIVATE
      <algorithm> <cmath> <functional> <map> <memory> <optional> <string> <string_view> <vector> <fmt/format.h> ${ARGN})
  endif()
endfunction()

# Makes the static library proofstone_<folder>. A folder without sources yet becomes an empty interface.
function(add_source_library folder)
  cmake_parse_arguments(PARSE_ARGV 1 arg "" "" "DEPENDS;EXTRA")
  set(library proofstone_${folder})
  product_sources(sources ${folder})
  if(sources)
    add_library(${library} STATIC ${sources} ${arg_EXTRA})
    precompile_usual_headers(${library})
    set(scope PUBLIC)
  else()
    add_library(${library} INTERFACE)
    set(scope INTERFACE)
  endif()
  target_include_directories(${library} ${scope} "${PROJECT_SOURCE_DIR}")
  target_link_libraries(${library} ${scope} portable_libraries)
  foreach(dependency IN LISTS arg_DEPENDS)
    target_link_libraries(${library} ${scope} proofstone_${dependency})
  endforeach()
endfunction()
