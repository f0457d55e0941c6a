#!/usr/bin/env bash
# The scripts at the root: the README names them and no others, they refuse what they do not know, and a failing step
# ends with one clear sentence.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

# wrong SENTENCE: reports a broken promise and ends.
wrong() {
  echo "$1"
  exit 1
}

# ends_with STATUS TEXT COMMAND...: COMMAND exits with STATUS, and the last line that it prints contains TEXT.
ends_with() {
  local status=$1 text=$2 output got=0
  shift 2
  output=$("$@" 2>&1) || got=$?
  [ "$got" = "$status" ] || wrong "$* exited with $got instead of $status: $output"
  case $(tail -n 1 <<<"$output") in
    *"$text"*) ;;
    *) wrong "$* should end with a line that says: $text. It said: $output" ;;
  esac
}

shellcheck -x run check .ci/run setup/*.sh tests/*.sh

# The commands that the README shows are those two, with options that exist.
commands=$(awk '/^```/ { inside = !inside; next } inside' README.md | grep -E '^(\$ )?\./' | sed 's/^\$ //; s/ *#.*//')
grep -qx './run' <<<"$commands" || wrong "README.md does not show the command ./run."
grep -qx './check' <<<"$commands" || wrong "README.md does not show the command ./check."
while read -r program options; do
  [ -x "$program" ] || wrong "README.md shows $program, which is no program of this project."
  { grep -oE -- '--[a-z]+' <<<"$options" || true; } | while read -r option; do
    "$program" --help | grep -q -- "$option\b" || wrong "README.md shows $program $option, which $program does not know."
  done
done <<<"$commands"
grep -q '\./check' .ci/run || wrong ".ci/run does not call ./check."

ends_with 1 'unknown option --colour; ./run --help' ./run --colour
ends_with 1 '--out needs a folder' ./run --out
ends_with 1 'unknown option --colour; ./check --help' ./check --colour
ends_with 1 'there is no part kitchen' ./check --only native,kitchen

# A step that fails stops the script, names the step and its log, and the log holds what was printed.
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cp setup/steps.sh "$work/"
cat >"$work/failing.sh" <<'SCRIPT'
. ./steps.sh
half_done() { echo "before the failure"; false; echo "after the failure"; }
step "Doing it by halves" halves half_done
echo "the script went on"
SCRIPT
ends_with 1 'the step "Doing it by halves" failed. Its log is build/logs/halves.log.' \
  env -C "$work" bash failing.sh
[ "$(cat "$work/build/logs/halves.log")" = "before the failure" ] || wrong "the log of a failing step is wrong."

# A step with a stamp runs when its key changes or its product is missing, and not otherwise.
cat >"$work/stamped.sh" <<'SCRIPT'
. ./steps.sh
make_it() { echo once more >>count; touch product; }
for key in a a b b; do step_unless_same stamp "$key" product "Making it" making make_it; done
rm product
step_unless_same stamp b product "Making it" making make_it
SCRIPT
env -C "$work" bash stamped.sh >/dev/null
[ "$(wc -l <"$work/count")" = 3 ] || wrong "a step with a stamp ran $(wc -l <"$work/count") times instead of 3."

echo "the scripts keep their promises"
