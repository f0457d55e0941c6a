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

# Has the compiler read once for all files of a target what nearly every file includes, and `ARGN`: a third of the work on a
# file. Of few files it would cost more than it saves. Each file still includes what it needs: tests/tidy.py reads it
# without them.
function(precompile_usual_headers target)
  get_target_property(sources ${target} SOURCES)
  list(LENGTH sources files)
  if(files LESS 7)
    return()
  endif()
  set(headers <algorithm> <cmath> <functional> <map> <memory> <optional> <string> <string_view> <vector>
    <fmt/format.h> <nlohmann/json.hpp> ${ARGN})
  target_precompile_headers(${target} PRIVATE ${headers})
  # Ninja does not see that the list has changed: CMake dates it back.
  set(folder "${CMAKE_BINARY_DIR}/CMakeFiles/${target}.dir")
  set(kept "${folder}/usual_headers")
  set(read_in_advance "")
  if(EXISTS "${kept}")
    file(READ "${kept}" read_in_advance)
  endif()
  if(NOT read_in_advance STREQUAL headers)
    file(REMOVE "${folder}/cmake_pch.hxx.pch")
    file(WRITE "${kept}" "${headers}")
  endif()
endfunction()

# How many files of a folder are compiled as one: the headers and what comes of their templates are then worked on once.
set(files_compiled_at_once 8 CACHE STRING "Files of a folder that are compiled as one; 1: each by itself")

# Has the files of a target compiled several at once, those of a folder together. So a name in a nameless namespace is
# used by one file of a folder only. Warnings of shadowed names, which would see those of the files before, are left to
# clang-tidy, which reads each file by itself.
function(compile_several_at_once target)
  if(files_compiled_at_once EQUAL 1)
    return()
  endif()
  get_target_property(sources ${target} SOURCES)
  list(FILTER sources INCLUDE REGEX "\\.cc$")
  set(folder "")
  foreach(source IN LISTS sources)
    get_filename_component(folder_of_source "${source}" DIRECTORY)
    if(NOT folder_of_source STREQUAL folder)
      set(folder "${folder_of_source}")
      set(place 0)
    endif()
    math(EXPR group "${place} / ${files_compiled_at_once}")
    file(RELATIVE_PATH name "${PROJECT_SOURCE_DIR}" "${folder}")
    string(MAKE_C_IDENTIFIER "${name}_${group}" name)
    set_source_files_properties("${source}" PROPERTIES UNITY_GROUP ${name})
    math(EXPR place "${place} + 1")
  endforeach()
  set_target_properties(${target} PROPERTIES UNITY_BUILD ON UNITY_BUILD_MODE GROUP)
  target_compile_options(${target} PRIVATE -Wno-shadow)
endfunction()

# Headers of ours that most files of a folder include and that seldom change.
set(usual_headers_of_engine engine/json/field_reader.h engine/method/typed_method.h)
set(usual_headers_of_engine_site ${usual_headers_of_engine} engine/site/findings.h engine/site/site.h)
set(usual_headers_of_engine_hurried ${usual_headers_of_engine})
set(usual_headers_of_report engine/site/findings.h engine/site/site.h)
set(usual_headers_of_tests_of_engine engine/site/assess.h)

# Makes the static library proofstone_<folder>. A folder without sources yet becomes an empty interface. APART names some
# of its sources that are compiled with usual headers, or options, of their own: those that match <name>_of_<folder>,
# as the target proofstone_<folder>_<name>.
function(add_source_library folder)
  cmake_parse_arguments(PARSE_ARGV 1 arg "" "" "APART;DEPENDS;EXTRA")
  set(library proofstone_${folder})
  product_sources(sources ${folder})
  if(sources)
    foreach(name IN LISTS arg_APART)
      set(apart ${library}_${name})
      set(sources_apart ${sources})
      list(FILTER sources_apart INCLUDE REGEX "${${name}_of_${folder}}")
      list(REMOVE_ITEM sources ${sources_apart})
      add_library(${apart} OBJECT ${sources_apart})
      target_include_directories(${apart} PRIVATE "${PROJECT_SOURCE_DIR}")
      target_link_libraries(${apart} PRIVATE portable_libraries)
      precompile_usual_headers(${apart} ${usual_headers_of_${folder}_${name}})
      compile_several_at_once(${apart})
      list(APPEND arg_EXTRA $<TARGET_OBJECTS:${apart}>)
    endforeach()
    add_library(${library} STATIC ${sources} ${arg_EXTRA})
    precompile_usual_headers(${library} ${usual_headers_of_${folder}})
    compile_several_at_once(${library})
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
