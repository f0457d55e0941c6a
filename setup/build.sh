# Sourced by run and check: the builds that both need.
# shellcheck shell=bash

# configure PRESET [OPTION...]: prepares build/PRESET; quick when it is prepared already, from scratch when what it
# remembers of the machine is no longer so.
configure() { cmake --preset "$@" || cmake --fresh --preset "$@"; }

build_programs() { configure native && ninja -C build/native proofstone proofstone-server; }
build_browser_engine() { configure wasm && ninja -C build/wasm browser_modules; }
# One core links while the other still compiles. The browser's engine goes first: its link takes long.
build_programs_and_browser_engine() {
  local programs
  configure native && configure wasm || return
  nice ninja -j "$(nproc)" -C build/native proofstone proofstone-server &
  programs=$!
  ninja -j "$(nproc)" -C build/wasm browser_modules || { kill "$programs"; return 1; }
  wait "$programs"
}
build_screens() { (cd web && npm run build); }

# make_programs, make_browser_engine, make_programs_and_browser_engine, make_screens: the same as steps with their own lines.
make_programs() { step "Building the programs" build-native build_programs; }
make_programs_and_browser_engine() {
  step "Building the programs and the engine for the browser" build-both build_programs_and_browser_engine
}
make_browser_engine() { step "Building the engine for the browser" build-wasm build_browser_engine; }
make_screens() {
  step_unless_same screens "$(fingerprint web examples)" web/dist/index.html "Building the screens" build-web build_screens
}
