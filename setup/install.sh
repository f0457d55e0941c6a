# Sourced by run and check: what must be on the machine before anything can be built.
# shellcheck shell=bash

# packages_missing LIST_FILE...: prints the packages of the lists that are not installed. A program of the package's name
# will do, so that an npm from elsewhere is left alone.
packages_missing() {
  local package
  cat "$@" | grep -v '^#' | sort -u | while read -r package; do
    command -v "$package" >/dev/null ||
      dpkg-query -W -f '${db:Status-Status}\n' "$package" 2>/dev/null | grep -qx installed || echo "$package"
  done
}

# as_root COMMAND...: runs COMMAND with the rights that installing needs.
as_root() {
  if [ "$(id -u)" = 0 ]; then "$@"; else sudo "$@"; fi
}

install_packages() {
  export DEBIAN_FRONTEND=noninteractive
  as_root apt-get update -qq -o Acquire::Retries=3
  as_root apt-get install -y -qq --no-install-recommends \
    -o Acquire::Retries=3 -o DPkg::Lock::Timeout=300 -o Dpkg::Use-Pty=0 "$@"
}

# need_packages LIST_FILE...: installs what is missing of the lists.
need_packages() {
  command -v dpkg-query >/dev/null ||
    fail "this machine has no Debian packages. Use Debian 12, or install what setup/packages-*.txt names by hand."
  local missing
  missing=$(packages_missing "$@")
  [ -n "$missing" ] || return 0
  if [ "$(id -u)" != 0 ] && ! command -v sudo >/dev/null; then
    fail "these Debian packages are missing and only root can install them: $(echo "$missing" | xargs)."
  fi
  # shellcheck disable=SC2086  # one word a package
  step "Installing $(echo "$missing" | wc -l) Debian packages" packages install_packages $missing
}

# The screens' build needs Node 20.19 or later of 20, or 22.12 or later.
node_is_new_enough() {
  command -v node >/dev/null && node -e '
    const [major, minor] = process.versions.node.split(".").map(Number);
    process.exit((major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major > 22 ? 0 : 1);'
}

install_node() {
  mkdir -p .tools/node
  cp setup/node/package.json setup/node/package-lock.json .tools/node/
  (cd .tools/node && npm ci --no-audit --no-fund)
}

# need_node: puts a Node that is new enough first in PATH, from the npm registry if the machine's own is too old.
need_node() {
  local own="$PWD/.tools/node/bin" folder
  if ! node_is_new_enough; then
    if [ ! -x "$own/node" ]; then
      step "Installing a newer Node" node install_node
      mkdir -p "$own"
      for folder in .tools/node/node_modules/node-linux-*/bin/node; do
        ln -sf "$PWD/$folder" "$own/node"
      done
    fi
    export PATH="$own:$PATH"
    node_is_new_enough || fail "the Node that was installed in .tools/node does not run on this machine."
  fi
}

install_web_libraries() { (cd web && npm ci --no-audit --no-fund); }

# need_web_libraries: the npm packages of the lock file.
need_web_libraries() {
  local key
  key="$(node --version) $(cat web/package.json web/package-lock.json | sha256sum)"
  step_unless_same web-libraries "$key" web/node_modules "Installing the libraries of the screens" npm install_web_libraries
}
