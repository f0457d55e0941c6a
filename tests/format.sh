#!/usr/bin/env bash
# Every C++ file is as clang-format would write it. With --fix, writes it so.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
how=(--dry-run -Werror)
if [ "${1:-}" = --fix ]; then how=(-i); fi
git ls-files -z '*.cc' '*.h' | xargs -0 clang-format-19 --style=file "${how[@]}"
echo "$(git ls-files '*.cc' '*.h' | wc -l) files"
