# Shared by examples/run and tests/run; sourced, not run.

# Debian packages that building needs.
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
  elif command -v sudo >/dev/null 2>&1; then
    sudo "$@"
  else
    printf 'this needs root or sudo: %s\n' "$*" >&2
    return 3
  fi
}

# install_missing PACKAGE...: says what is missing and installs it; nothing when all is there.
install_missing() {
  local missing=() package
  for package in "$@"; do
    if ! dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null | grep -qx installed; then
      missing+=("$package")
    fi
  done
  [ "${#missing[@]}" -eq 0 ] && return 0
  say "installing Debian packages: ${missing[*]}"
  as_root env DEBIAN_FRONTEND=noninteractive apt-get -qq update
  as_root env DEBIAN_FRONTEND=noninteractive apt-get -qq install -y --no-install-recommends \
    "${missing[@]}" >/dev/null
}

# build PRESET TARGET [cmake options...]
build() {
  local preset=$1 target=$2
  shift 2
  say "building $target ($preset)"
  cmake --preset "$preset" "$@" >/dev/null
  cmake --build "build/$preset" --target "$target"
}
