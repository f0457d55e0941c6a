# The engine as one ES module with one function, request(text) -> text, for a page's worker and for tests in Node.
product_sources(sources wasm)
if(NOT sources OR NOT EXISTS "${PROJECT_SOURCE_DIR}/report/request.h")
  return()
endif()

set(engine_folder "${PROJECT_SOURCE_DIR}/web/public/engine")
add_executable(engine_module ${sources})
target_link_libraries(engine_module PRIVATE proofstone_report proofstone_formats)
set_target_properties(engine_module PROPERTIES
  OUTPUT_NAME engine
  RUNTIME_OUTPUT_DIRECTORY "${engine_folder}")
target_link_options(engine_module PRIVATE
  # The page loads it whole before the first finding.
  -Oz
  -sBINARYEN_EXTRA_PASSES=--merge-similar-functions
  --bind
  -sMODULARIZE
  -sEXPORT_ES6
  -sEXPORT_NAME=createEngine
  -sENVIRONMENT=web,worker
  -sALLOW_MEMORY_GROWTH=1
  -sMAXIMUM_MEMORY=2GB
  -sWASM_BIGINT
  -sFILESYSTEM=0
  # Otherwise the glue makes functions out of text, which the server's content security policy forbids.
  -sDYNAMIC_EXECUTION=0)
