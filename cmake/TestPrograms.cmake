# Tests, fuzzers and benchmarks.
#
# One GoogleTest program per top folder. The same tests of engine/, formats/ and report/ run natively and, compiled to
# WebAssembly, in Node; only *_property_test.cc (rapidcheck) and cli/, server/ stay native.
enable_testing()

if(EMSCRIPTEN)
  set(googletest_source /usr/src/googletest/googletest)
  if(EXISTS "${googletest_source}/src/gtest-all.cc")
    add_library(test_framework STATIC
      "${googletest_source}/src/gtest-all.cc" "${googletest_source}/src/gtest_main.cc")
    target_include_directories(test_framework SYSTEM PUBLIC "${googletest_source}/include")
    target_include_directories(test_framework SYSTEM PRIVATE "${googletest_source}")
    target_compile_options(test_framework PRIVATE -w)
    set(tests_possible TRUE)
  endif()
  find_program(NODE_PROGRAM node REQUIRED)
else()
  find_package(GTest QUIET)
  find_package(rapidcheck QUIET)
  # The blending solver is checked at random against a general one, the statistics against a general library.
  find_library(GLPK_LIBRARY glpk)
  find_library(GSL_LIBRARY gsl)
  find_library(GSL_CBLAS_LIBRARY gslcblas)
  # The markers of boards are held against their own library.
  find_library(APRILTAG_LIBRARY apriltag)
  # The outline network is held against the same one in a general library.
  find_path(OPENCV_INCLUDE opencv2/dnn.hpp PATH_SUFFIXES opencv4)
  find_library(OPENCV_DNN_LIBRARY opencv_dnn)
  find_library(OPENCV_CORE_LIBRARY opencv_core)
  mark_as_advanced(GLPK_LIBRARY GSL_LIBRARY GSL_CBLAS_LIBRARY OPENCV_INCLUDE OPENCV_DNN_LIBRARY OPENCV_CORE_LIBRARY
    APRILTAG_LIBRARY)
  if(GTest_FOUND AND rapidcheck_FOUND AND GLPK_LIBRARY AND GSL_LIBRARY AND GSL_CBLAS_LIBRARY AND OPENCV_INCLUDE
      AND OPENCV_DNN_LIBRARY AND OPENCV_CORE_LIBRARY AND APRILTAG_LIBRARY)
    add_library(test_framework INTERFACE)
    target_link_libraries(test_framework INTERFACE
      GTest::gtest GTest::gtest_main rapidcheck ${GLPK_LIBRARY} ${GSL_LIBRARY} ${GSL_CBLAS_LIBRARY})
    set(tests_possible TRUE)
  endif()
endif()
if(NOT tests_possible)
  if(PROOFSTONE_TESTS)
    message(FATAL_ERROR "The test libraries are missing: install the packages listed in setup/packages-check.txt.")
  endif()
  return()
endif()

add_custom_target(tests)

# Makes the program <folder>_tests out of the *_test.cc files of `folder` and registers it with CTest.
function(add_test_program folder)
  set(program ${folder}_tests)
  set(library proofstone_${folder})
  files_ending(sources ${folder} _test.cc)
  if(EMSCRIPTEN)
    list(FILTER sources EXCLUDE REGEX "_property_test\\.cc$")
  endif()
  if(NOT sources OR NOT TARGET ${library})
    return()
  endif()
  add_executable(${program} EXCLUDE_FROM_ALL ${sources})
  target_link_libraries(${program} PRIVATE ${library} test_framework)
  # What a test does itself takes no time; compiling it does.
  target_compile_options(${program} PRIVATE -O0)
  precompile_usual_headers(${program} <gtest/gtest.h> ${usual_headers_of_tests_of_${folder}})
  target_compile_definitions(${program} PRIVATE PROOFSTONE_SOURCE_FOLDER="${PROJECT_SOURCE_DIR}")
  add_dependencies(tests ${program})
  if(EMSCRIPTEN)
    target_link_options(${program} PRIVATE
      -sENVIRONMENT=node -sNODERAWFS=1 -sEXIT_RUNTIME=1 -sALLOW_MEMORY_GROWTH=1 -sWASM_BIGINT
      "SHELL:--pre-js ${PROJECT_SOURCE_DIR}/cmake/load_without_fetch.js")
    add_test(NAME ${program} COMMAND ${NODE_PROGRAM} $<TARGET_FILE:${program}>)
  else()
    add_test(NAME ${program} COMMAND ${program})
  endif()
endfunction()

foreach(folder IN ITEMS engine formats report)
  add_test_program(${folder})
endforeach()
if(EMSCRIPTEN)
  return()
endif()
foreach(folder IN ITEMS archive geodata office photography cli server)
  add_test_program(${folder})
endforeach()

if(TARGET photography_tests)
  target_include_directories(photography_tests SYSTEM PRIVATE "${OPENCV_INCLUDE}")
  target_link_libraries(photography_tests PRIVATE
    "${OPENCV_DNN_LIBRARY}" "${OPENCV_CORE_LIBRARY}" "${APRILTAG_LIBRARY}")
endif()

# Piles whose rock is known, against which what the engine states is held. Their handbook page is written by simulate.
if(NOT PROOFSTONE_SANITIZE)
  add_source_library(simulation DEPENDS engine)
  set_target_properties(proofstone_simulation PROPERTIES EXCLUDE_FROM_ALL ON)
  add_test_program(simulation)
  add_executable(simulate EXCLUDE_FROM_ALL "${PROJECT_SOURCE_DIR}/tests/simulate.cc")
  target_link_libraries(simulate PRIVATE proofstone_simulation)
  add_dependencies(tests simulate)
endif()

set(product_libraries proofstone_engine proofstone_formats proofstone_report)
set(fuzzed_libraries ${product_libraries} proofstone_archive proofstone_geodata proofstone_photography)

# The native side of tests/agreement.mjs.
add_executable(ask EXCLUDE_FROM_ALL "${PROJECT_SOURCE_DIR}/tests/ask.cc")
target_link_libraries(ask PRIVATE ${product_libraries})
add_dependencies(tests ask)

# A fuzzer is named after its file; its seeds are in fuzz_corpus/<name>/.
if(PROOFSTONE_SANITIZE AND CMAKE_CXX_COMPILER_ID STREQUAL "Clang")
  add_custom_target(fuzzers)
  foreach(folder IN ITEMS engine formats report archive geodata photography cli)
    files_ending(sources ${folder} _fuzz.cc)
    foreach(source IN LISTS sources)
      get_filename_component(program "${source}" NAME_WE)
      add_executable(${program} EXCLUDE_FROM_ALL "${source}")
      target_link_libraries(${program} PRIVATE ${fuzzed_libraries})
      target_link_options(${program} PRIVATE -fsanitize=fuzzer)
      set_target_properties(${program} PROPERTIES RUNTIME_OUTPUT_DIRECTORY "${CMAKE_BINARY_DIR}/fuzzers")
      add_dependencies(fuzzers ${program})
    endforeach()
  endforeach()
endif()

find_package(benchmark QUIET)
if(benchmark_FOUND AND NOT PROOFSTONE_SANITIZE)
  add_custom_target(benchmarks)
  files_ending(sources bench _bench.cc)
  foreach(source IN LISTS sources)
    get_filename_component(program "${source}" NAME_WE)
    add_executable(${program} EXCLUDE_FROM_ALL "${source}")
    target_link_libraries(${program} PRIVATE
      ${product_libraries} proofstone_simulation proofstone_photography benchmark::benchmark benchmark::benchmark_main)
    target_compile_definitions(${program} PRIVATE PROOFSTONE_SOURCE_FOLDER="${PROJECT_SOURCE_DIR}")
    add_dependencies(benchmarks ${program})
  endforeach()
endif()
