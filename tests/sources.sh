#!/usr/bin/env bash
# Looks for what no compiler of ours refuses, and yet would break a promise of the architecture.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

failures=0

# forbid WHY PATTERN PATH...: fails with the places where the extended regular expression matches a file of the project.
forbid() {
  local why=$1 pattern=$2 found
  shift 2
  if found=$(git grep -nE --untracked -e "$pattern" -- "$@"); then
    printf '%s\n%s\n\n' "$why" "$found"
    failures=$((failures + 1))
  fi
}

shared=('engine/*.cc' 'engine/*.h' 'formats/*.cc' 'formats/*.h' 'report/*.cc' 'report/*.h' 'wasm/*.cc')

forbid "Each standard library draws other numbers from a distribution; write the transform." \
  'std::[a-z_]+_distribution' "${shared[@]}"
forbid "std::cbrt differs by several units in the last place between libraries; use std::pow." \
  '\bcbrt[fl]?\(' "${shared[@]}"
forbid "Not in the browser's C++ library." \
  'std::(views|ranges::views|format\(|bit_cast)|<(source_location|expected|coroutine|format)>' "${shared[@]}"
forbid "The engine reads no files, no clock and no environment, and prints nothing." \
  '<(fstream|iostream|filesystem|chrono|ctime|cstdio|thread|random)>|\bgetenv\(' 'engine/*.cc' 'engine/*.h' \
  ':!*_test.cc' ':!*_fuzz.cc'
forbid "A factor of a unit or a formula of the trade in the screens; it belongs in the engine." \
  '(^|[^0-9.])(0?\.3048|3\.2808[0-9]*|9\.80?[0-9]*|32\.(2|17[0-9]*)|62\.4[0-9]*|25\.4|2\.54|0?\.0254|1\.48[0-9]*|47\.88[0-9]*|6\.894[0-9]*|4\.448[0-9]*|0?\.0283[0-9]*|35\.31[0-9]*|0?\.4535[0-9]*|2\.2046[0-9]*)([^0-9.]|$)' \
  'web/src/*.ts' 'web/src/*.tsx'
forbid "A lock file that names a host works on one network only; write it with omit-lockfile-registry-resolved." \
  '"resolved":' '*package-lock.json'

twice=$(git grep -hoE --untracked '^(struct|class|enum class) [A-Za-z0-9]+( final)?( : [^{;]*)? ?\{' -- '*.h' |
  sed -E 's/^(struct|class|enum class) ([A-Za-z0-9]+).*/\2/' | sort | uniq -d)
if [ -n "$twice" ]; then
  printf '%s\n%s\n\n' "A type name is taken twice: the linker mixes their functions up without a word." "$twice"
  failures=$((failures + 1))
fi

if [ "$failures" != 0 ]; then
  echo "$failures promises broken."
  exit 1
fi
echo "nothing found"
