# The header-only libraries of the engine, from one folder of links for both sides: the system include folder itself
# would pull the C library's headers into a WebAssembly build, and would let other libraries into the engine unnoticed.
# One folder for all build folders, so that a compiler cache serves them all.
set(portable_include "${PROJECT_SOURCE_DIR}/build/portable_include")
file(MAKE_DIRECTORY "${portable_include}")
foreach(header_folder IN ITEMS boost eigen3/Eigen nlohmann fmt)
  set(target "/usr/include/${header_folder}")
  if(NOT EXISTS "${target}")
    message(FATAL_ERROR "Missing ${target}: install the packages listed in setup/packages-run.txt.")
  endif()
  get_filename_component(name "${header_folder}" NAME)
  file(CREATE_LINK "${target}" "${portable_include}/${name}" SYMBOLIC)
endforeach()

add_library(portable_libraries INTERFACE)
target_include_directories(portable_libraries SYSTEM INTERFACE "${portable_include}")
target_compile_definitions(portable_libraries INTERFACE EIGEN_MPL2_ONLY)

add_library(fmt_compiled_once STATIC "${PROJECT_SOURCE_DIR}/cmake/fmt_compiled_once.cc")
target_include_directories(fmt_compiled_once SYSTEM PRIVATE "${portable_include}")
target_link_libraries(portable_libraries INTERFACE fmt_compiled_once)
