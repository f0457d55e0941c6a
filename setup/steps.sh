# Sourced by run and check: named steps with their seconds, a log for each, and one clear sentence on failure.
# shellcheck shell=bash
set -euo pipefail

# shellcheck disable=SC2034  # the scripts that source this use it
example_site=examples/sorrel-creek
logs=build/logs
stamps=build/stamps
mkdir -p "$logs" "$stamps"

# take_turn: lets one script at a time work in this folder, because two would write the same files.
take_turn() {
  exec 9>build/lock
  if ! flock --nonblock 9; then
    echo "Waiting for another ./run or ./check in this folder to end."
    flock 9
  fi
}

# fail SENTENCE: ends the script.
fail() {
  printf '\nStopped: %s\n' "$1" >&2
  exit 1
}

# step TITLE LOG COMMAND...: runs COMMAND with its output in build/logs/LOG.log; shows the log's end if it fails.
step() {
  local title=$1 log="$logs/$2.log" started=$SECONDS status
  shift 2
  printf '  %-58s' "$title"
  # Not as the condition of an if: there the shell would run on after a failed command.
  set +e
  (set -e; "$@") >"$log" 2>&1 </dev/null 9>&-
  status=$?
  set -e
  if [ "$status" = 0 ]; then
    printf '%5d s\n' $((SECONDS - started))
    return
  fi
  printf ' failed\n\n'
  tail -n 40 "$log" | cut -c 1-400 | sed 's/^/    /'
  fail "the step \"$title\" failed. Its log is $log."
}

# fingerprint PATH...: one hash over the names and contents of all files below the paths, build products left out.
fingerprint() {
  find "$@" \( -name node_modules -o -name dist -o -name '.*.sw?' \) -prune -o -type f -print0 2>/dev/null |
    LC_ALL=C sort -z | xargs -0 sha256sum | sha256sum | cut -c1-64
}

# step_unless_same STAMP KEY PRODUCT TITLE LOG COMMAND...: a step that is skipped while PRODUCT exists and KEY is what it
# was after the last success.
step_unless_same() {
  local stamp="$stamps/$1" key=$2 product=$3
  shift 3
  if [ -e "$product" ] && [ "$(cat "$stamp" 2>/dev/null)" = "$key" ]; then
    return
  fi
  step "$@"
  echo "$key" >"$stamp"
}
