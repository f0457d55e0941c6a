# Language level, warnings and code generation shared by every target of this project.
set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_CXX_FLAGS_RELEASE "-O2")

# No fused multiply-add: the same document must give the same numbers natively and in the browser.
add_compile_options(-ffp-contract=off)
add_compile_options(-Wall -Wextra -Wpedantic -Wconversion -Wno-sign-conversion -Wshadow -Werror)

if(EMSCRIPTEN)
  # Objects and libraries must share one exception model.
  add_compile_options(-fwasm-exceptions -msimd128)
  add_link_options(-fwasm-exceptions)
  # A Node that is not Debian's does not look where Debian keeps the parser that the linker needs.
  set(debian_node_modules ${CMAKE_COMMAND} -E env NODE_PATH=/usr/share/nodejs)
  set(CMAKE_CXX_LINKER_LAUNCHER ${debian_node_modules})

  # The compiler itself with the flags em++ would hand it: starting em++ for each file costs a fifth of the build.
  get_filename_component(emscripten_folder "${CMAKE_CXX_COMPILER}" DIRECTORY)
  foreach(setting IN ITEMS LLVM_ROOT CLANG_ADD_VERSION)
    execute_process(COMMAND "${emscripten_folder}/em-config" ${setting}
      OUTPUT_VARIABLE ${setting} OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
  endforeach()
  execute_process(COMMAND "${CMAKE_CXX_COMPILER}" --cflags -fwasm-exceptions
    OUTPUT_VARIABLE emscripten_flags OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
  set(browser_compiler "${LLVM_ROOT}/clang++-${CLANG_ADD_VERSION}")
  set(CMAKE_CXX_COMPILE_OBJECT
    "${browser_compiler} ${emscripten_flags} <DEFINES> <INCLUDES> <FLAGS> -o <OBJECT> -c <SOURCE>")
endif()

if(PROOFSTONE_SANITIZE)
  # Instrumented code is a third of the work to compile without optimisation, and the tests are short.
  set(CMAKE_CXX_FLAGS_RELEASE "-O0 -g1")
  set(sanitizers -fsanitize=address,undefined -fno-sanitize-recover=all -fno-omit-frame-pointer)
  add_compile_options(${sanitizers} -D_GLIBCXX_ASSERTIONS)
  add_link_options(${sanitizers})
  if(CMAKE_CXX_COMPILER_ID STREQUAL "Clang")
    add_compile_options(-fsanitize=fuzzer-no-link)
  endif()
endif()

find_program(CCACHE_PROGRAM ccache)
mark_as_advanced(CCACHE_PROGRAM)
if(CCACHE_PROGRAM)
  # It compares headers that were read in advance only with these.
  set(CMAKE_CXX_COMPILER_LAUNCHER
    ${CMAKE_COMMAND} -E env CCACHE_SLOPPINESS=pch_defines,time_macros ${CCACHE_PROGRAM})
  # It hands out headers read in advance that are as old as those of another folder or day.
  if(CMAKE_CXX_COMPILER_ID STREQUAL "Clang")
    add_compile_options("SHELL:-Xclang -fno-pch-timestamp")
  endif()
endif()
