# The programs for this machine: the command line and the local server.

# Makes `program` from the sources of `folder`. All but main.cc go into a library, so that tests can link them.
function(add_program program folder)
  cmake_parse_arguments(PARSE_ARGV 2 arg "" "" "LIBRARIES")
  set(main "${PROJECT_SOURCE_DIR}/${folder}/main.cc")
  product_sources(sources ${folder})
  if(NOT main IN_LIST sources)
    return()
  endif()
  list(REMOVE_ITEM sources "${main}")
  set(library proofstone_${folder})
  if(sources)
    add_library(${library} STATIC ${sources})
    set(scope PUBLIC)
  else()
    add_library(${library} INTERFACE)
    set(scope INTERFACE)
  endif()
  target_include_directories(${library} ${scope} "${PROJECT_SOURCE_DIR}")
  target_link_libraries(${library} ${scope} ${arg_LIBRARIES})
  add_executable(${program} "${main}")
  target_link_libraries(${program} PRIVATE ${library})
endfunction()

# Files of surveyors and of mapping programs are read by GDAL and Expat, on this machine only.
find_package(GDAL REQUIRED)
find_package(EXPAT REQUIRED)
add_source_library(geodata DEPENDS engine formats)
get_target_property(geodata_kind proofstone_geodata TYPE)
if(geodata_kind STREQUAL "STATIC_LIBRARY")
  target_link_libraries(proofstone_geodata PUBLIC GDAL::GDAL EXPAT::EXPAT)
endif()

# Workbooks for the office are written by libxlsxwriter, on this machine only.
find_library(XLSXWRITER_LIBRARY xlsxwriter)
if(NOT XLSXWRITER_LIBRARY)
  message(FATAL_ERROR "Missing libxlsxwriter: install the packages listed in setup/packages-run.txt.")
endif()
mark_as_advanced(XLSXWRITER_LIBRARY)
add_source_library(office DEPENDS engine)
target_link_libraries(proofstone_office PUBLIC ${XLSXWRITER_LIBRARY})

# Photographs are read by libjpeg and libpng, on this machine only; a page in a browser asks the browser.
find_package(JPEG REQUIRED)
find_package(PNG REQUIRED)
add_source_library(photography DEPENDS engine)
target_link_libraries(proofstone_photography PUBLIC JPEG::JPEG PNG::PNG)
embed_bytes(catalog/outline-network.weights FUNCTION embedded_outline_weights OUTPUT embedded_weights_source)
target_sources(proofstone_photography PRIVATE "${embedded_weights_source}")

find_package(Threads REQUIRED)
add_program(proofstone cli LIBRARIES proofstone_photography proofstone_formats proofstone_geodata proofstone_office proofstone_report)
add_program(proofstone-server server LIBRARIES cpp-httplib Threads::Threads)
