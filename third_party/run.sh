#!/usr/bin/env bash
# From a fresh copy to the first handouts: installs what is missing, builds, draws the sample course. Stops at the first failure.
set -euo pipefail
cd "$(dirname "$0")/.."

bash third_party/setup.sh

build=build/release
into=build/handouts
mkdir -p build
log=build/run.log
step() {  # what, command...: one line; the end of the command's own words when it fails
  echo "run: $1"
  shift
  if ! "$@" >"$log" 2>&1; then
    tail -n 40 "$log" >&2
    echo "run: failed: $*" >&2
    exit 1
  fi
}

generator=()
if [ ! -e $build/CMakeCache.txt ] && command -v ninja >/dev/null; then generator=(-G Ninja); fi
step "setting up $build" cmake -S . -B $build "${generator[@]}" -DCMAKE_BUILD_TYPE=Release -DTELLEKANT_TESTS=OFF -DTELLEKANT_BENCH=OFF
step "building (about a minute the first time)" cmake --build $build --parallel "$(nproc)"
rm -rf $into
step "drawing the handouts of lessons/frost.course.toml" $build/tellekant handouts lessons/frost.course.toml --into $into
echo "run: the handouts are in $into:"
find $into -name '*.png' | sort | sed 's/^/  /'
