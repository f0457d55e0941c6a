# Data that the engine carries within itself, because it may not read files: catalog, check cases, schemas.

# Generates a C++ source that defines `proofstone::embedded_<GROUPS>()` (engine/rock/embedded_catalog.h) from the JSON
# files of `folder`, and sets the variable named by OUTPUT to its path.
function(embed_folder folder)
  cmake_parse_arguments(PARSE_ARGV 1 arg "" "GROUPS;OUTPUT" "")
  files_ending(files ${folder} .json)
  set(generated "${CMAKE_BINARY_DIR}/generated/embedded_${arg_GROUPS}.cc")
  set(list_file "${CMAKE_BINARY_DIR}/generated/embedded_${arg_GROUPS}.txt")
  # The list is an input of its own, so that a removed file also triggers the step.
  list(JOIN files "\n" listing)
  file(CONFIGURE OUTPUT "${list_file}" CONTENT "${listing}\n" @ONLY)
  add_custom_command(
    OUTPUT "${generated}"
    COMMAND ${CMAKE_COMMAND} -DROOT=${PROJECT_SOURCE_DIR}/${folder} -DLIST=${list_file}
            -DFUNCTION=embedded_${arg_GROUPS} -DOUTPUT=${generated}
            -P ${PROJECT_SOURCE_DIR}/cmake/embed_files.cmake
    DEPENDS ${files} "${list_file}" "${PROJECT_SOURCE_DIR}/cmake/embed_files.cmake"
    COMMENT "Embedding ${folder}/"
    VERBATIM)
  # The standard only promises literals up to 65536 bytes; the compilers in use take far longer ones.
  set_source_files_properties("${generated}" PROPERTIES COMPILE_OPTIONS -Wno-overlength-strings)
  set(${arg_OUTPUT} "${generated}" PARENT_SCOPE)
endfunction()
