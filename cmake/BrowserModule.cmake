# What the browser runs, as ES modules for a page's workers and for tests in Node: the engine, with one function,
# request(text) -> text, and apart from it what finds stones on photos, which is loaded once a photo is measured.
if(NOT EXISTS "${PROJECT_SOURCE_DIR}/report/request.h")
  return()
endif()

set(browser_folder "${PROJECT_SOURCE_DIR}/web/public/engine")

# Makes the module NAME.js and NAME.wasm, whose factory is FACTORY, from sources in wasm/.
function(add_browser_module target name factory)
  cmake_parse_arguments(PARSE_ARGV 3 arg "" "" "SOURCES;OPTIONS")
  list(TRANSFORM arg_SOURCES PREPEND "${PROJECT_SOURCE_DIR}/wasm/" REGEX "^[^/]")
  add_executable(${target} ${arg_SOURCES})
  target_link_libraries(${target} PRIVATE proofstone_report proofstone_formats)
  set_target_properties(${target} PROPERTIES
    OUTPUT_NAME ${name}
    RUNTIME_OUTPUT_DIRECTORY "${browser_folder}")
  target_link_options(${target} PRIVATE
    ${arg_OPTIONS}
    --bind
    -sMODULARIZE
    -sEXPORT_ES6
    -sEXPORT_NAME=${factory}
    -sENVIRONMENT=web,worker
    -sALLOW_MEMORY_GROWTH=1
    -sMAXIMUM_MEMORY=2GB
    -sWASM_BIGINT
    -sFILESYSTEM=0
    # Otherwise the glue makes functions out of text, which the server's content security policy forbids.
    -sDYNAMIC_EXECUTION=0)
endfunction()

add_browser_module(engine_module engine createEngine
  SOURCES engine_module.cc check_tables.cc
  # The page loads it whole before the first finding: small. But for what is shorter than the call of it, such as asking a
  # text how long it is, which takes a fifth of the time.
  OPTIONS -Os -sBINARYEN_EXTRA_PASSES=--always-inline-max-function-size=5,--merge-similar-functions)

add_browser_module(vision_module vision createVision
  SOURCES vision_module.cc "${PROJECT_SOURCE_DIR}/photography/camera_notes.cc"
  OPTIONS -O3)
# The weights lie beside it, a file of their own that a browser keeps while the module changes.
set(outline_weights "${PROJECT_SOURCE_DIR}/catalog/outline-network.weights")
set_target_properties(vision_module PROPERTIES LINK_DEPENDS "${outline_weights}")
add_custom_command(TARGET vision_module POST_BUILD
  COMMAND ${CMAKE_COMMAND} -E copy_if_different "${outline_weights}" "${browser_folder}/outline-network.weights"
  VERBATIM)
add_custom_target(browser_modules DEPENDS engine_module vision_module)
