#!/usr/bin/env python3
"""Reads the product's C++ with clang-tidy, two files at a time, what was changed last first.

  tests/tidy.py            all of it
  tests/tidy.py SECONDS    what can be begun within that time; how much was left is told

A file is read again only when it, a header of ours that it includes, its compiler command or the rules change.
"""

import concurrent.futures
import hashlib
import json
import os
import pathlib
import re
import subprocess
import sys
import time

ROOT = pathlib.Path(__file__).resolve().parent.parent
PASSED = ROOT / "build/tidy"
COMMANDS = PASSED / "compile_commands.json"
# Headers that the build reads in advance for all files: here each file has to include what it needs.
READ_IN_ADVANCE = re.compile(r" -Winvalid-pch| -Xclang -include(-pch)? -Xclang \S+")
OWN_INCLUDE = re.compile(rb'^#include "([^"]+)"', re.MULTILINE)
# The analyzer follows paths through a function up to so many steps. A tenth of its default finds the same in functions
# of a size that people read, and does not lose itself in the long ones that only put descriptions together.
ANALYZER = [f"--extra-arg={word}" for word in ("-Xclang", "-analyzer-config", "-Xclang", "max-nodes=20000")]
OWN_FOLDERS = ("engine", "formats", "report", "archive", "geodata", "office", "photography", "cli", "server")


def own_files_behind(source):
    """The file itself and every header of ours that it includes, directly or not."""
    found, waiting = set(), [source]
    while waiting:
        path = waiting.pop()
        if path in found or not path.exists():
            continue
        found.add(path)
        waiting += [ROOT / name.decode() for name in OWN_INCLUDE.findall(path.read_bytes())]
    return sorted(found)


def files_by_last_change():
    """How many files were changed after a file, by its path: 0 for the one changed last."""
    git = ["git", "-C", str(ROOT)]
    not_committed = subprocess.run([*git, "diff", "--name-only", "HEAD"], capture_output=True, text=True, check=False)
    committed = subprocess.run([*git, "log", "--format=", "--name-only"], capture_output=True, text=True, check=False)
    names = dict.fromkeys(not_committed.stdout.splitlines() + committed.stdout.splitlines())
    return {ROOT / name: place for place, name in enumerate(names)}


def key_of(source, command, version):
    """One hash over everything that the result depends on."""
    text = hashlib.sha256(f"{version}\n{ANALYZER}\n{command}\n".encode())
    for path in [ROOT / ".clang-tidy", *own_files_behind(source)]:
        text.update(str(path).encode() + b"\n" + path.read_bytes())
    return text.hexdigest()


def read(source):
    """Runs clang-tidy on one file; returns whether it is clean and what was said."""
    result = subprocess.run(
        ["clang-tidy-19", "--quiet", *ANALYZER, "-p", str(PASSED), str(source)],
        capture_output=True, text=True, check=False, cwd=ROOT)
    return result.returncode == 0, result.stdout


def is_product_source(path):
    """Tests are full of the test framework's macros, and are read by three compilers and the sanitizers."""
    return (path.is_relative_to(ROOT) and path.relative_to(ROOT).parts[0] in OWN_FOLDERS
            and not re.search(r"_(test|fuzz|bench)\.cc$", path.name))


def main(seconds=None):
    version = subprocess.run(["clang-tidy-19", "--version"], capture_output=True, text=True, check=True).stdout
    # Each file by itself, not several at once as they are built.
    subprocess.run(["cmake", "--preset", "tidy"], stdout=subprocess.DEVNULL, check=True, cwd=ROOT)
    entries = [{**entry, "command": READ_IN_ADVANCE.sub("", entry["command"])}
               for entry in json.loads(COMMANDS.read_text())]
    COMMANDS.write_text(json.dumps(entries))
    keys = {}
    for entry in entries:
        source = pathlib.Path(entry["file"])
        if is_product_source(source):
            keys[source] = key_of(source, entry["command"], version)
    places = files_by_last_change()
    waiting = [source for source, key in keys.items() if not (PASSED / key).exists()]
    waiting.sort(key=lambda source: min(places.get(path, len(places)) for path in own_files_behind(source)))
    print(f"{len(keys)} files, {len(waiting)} to read", flush=True)
    end = time.monotonic() + seconds if seconds else None

    def read_in_time(source):
        return None if end and time.monotonic() > end else read(source)

    bad = left = 0
    with concurrent.futures.ThreadPoolExecutor(max(2, os.cpu_count() or 2)) as pool:
        for source, result in zip(waiting, pool.map(read_in_time, waiting)):
            if result is None:
                left += 1
            elif result[0]:
                (PASSED / keys[source]).touch()
            else:
                bad += 1
                print(f"== {source.relative_to(ROOT)}\n{result[1]}", flush=True)
    print("all clean" if bad == 0 else f"{bad} files with findings")
    if left:
        print(f"No time was left for {left} files, those whose last change is the longest ago.")
    return 0 if bad == 0 else 1


if __name__ == "__main__":
    sys.exit(main(*map(float, sys.argv[1:])))
