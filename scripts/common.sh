# shellcheck shell=bash
# Shared by examples/run, tests/run and tests/bench/run: sourced from the root of the tree.

# Debian packages that building needs. The static link asks for the libraries' own dependencies.
build_packages=(
  g++ cmake ninja-build ccache pkg-config
  tao-pegtl-dev libfmt-dev libcli11-dev nlohmann-json3-dev libutf8proc-dev
  coinor-libclp-dev coinor-libcoinutils-dev
  libgfortran-12-dev libblas-dev liblapack-dev libbz2-dev zlib1g-dev
)

say() { printf '== %s\n' "$*"; }

as_root() {
  if [ "$(id -u)" -eq 0 ]; then
    "$@"
  elif command -v sudo >/dev/null; then
    sudo "$@"
  else
    printf 'this needs root, and there is no sudo: %s\n' "$*" >&2
    return 3
  fi
}

# install_missing PACKAGE...: nothing when all is there.
install_missing() {
  if ! command -v dpkg-query >/dev/null; then
    say "not Debian, so nothing is installed; what is needed goes there by these names: $*"
    return 0
  fi
  local package missing=()
  for package in "$@"; do
    if [ "$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null)" != installed ]; then
      missing+=("$package")
    fi
  done
  if [ ${#missing[@]} -eq 0 ]; then return 0; fi
  say "installing Debian packages: ${missing[*]}"
  local apt=(env DEBIAN_FRONTEND=noninteractive apt-get -qq -o Dpkg::Use-Pty=0)
  as_root "${apt[@]}" update &&
    as_root "${apt[@]}" install -y --no-install-recommends "${missing[@]}" >/dev/null
}

# build PRESET TARGET [OPTION OF CMAKE...]
build() {
  local preset=$1 target=$2
  shift 2
  say "building $target in build/$preset"
  cmake --preset "$preset" "$@" >/dev/null && cmake --build "build/$preset" --target "$target"
}
