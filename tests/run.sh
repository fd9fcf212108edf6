#!/usr/bin/env bash
# Every test: installs what is missing, builds, runs the quick test programs under the sanitizers and then all of them. Stops at the first
# failure with its reason; what is printed last is ctest's own summary. Seeds are fixed.
#   tests/run.sh           under five minutes on two cores
#   tests/run.sh --long    greater numbers: tests read TELLEKANT_LONG
set -euo pipefail
cd "$(dirname "$0")/.."

case "${1-}" in
  "") ;;
  --long) export TELLEKANT_LONG=1 ;;
  *) echo "tests: unknown option $1 (there is only --long)" >&2; exit 2 ;;
esac

# Test programs that are run under the sanitizers as well. The others spend their time in libraries.
sanitized=(base cloth words list stitch trail course guide file plan check)

bash third_party/setup.sh --tests

mkdir -p build
log=build/tests.log
step() {  # what, command...: one line; the end of the command's own words when it fails
  echo "tests: $1"
  shift
  if ! "$@" >"$log" 2>&1; then
    grep -n -m1 -A30 -E "error|Error|FAILED" "$log" >&2 || tail -n 40 "$log" >&2
    echo "tests: failed: $*" >&2
    exit 1
  fi
}
configure() {  # folder, options...
  local generator=()
  if [ ! -e "$1/CMakeCache.txt" ] && command -v ninja >/dev/null; then generator=(-G Ninja); fi
  step "setting up $1" cmake -S . -B "$1" "${generator[@]}" -DTELLEKANT_TESTS=ON -DTELLEKANT_BENCH=OFF "${@:2}"
}
jobs=$(nproc)

configure build/tests -DCMAKE_BUILD_TYPE=Release
step "building build/tests" cmake --build build/tests --parallel "$jobs"
configure build/sanitize -DCMAKE_BUILD_TYPE=RelWithDebInfo -DTELLEKANT_SANITIZE=ON "-DCMAKE_CXX_FLAGS_RELWITHDEBINFO=-O1 -g1"
step "building build/sanitize" cmake --build build/sanitize --parallel "$jobs" --target "${sanitized[@]/#/test_}"

echo "tests: under the address and undefined-behaviour sanitizers"
export UBSAN_OPTIONS=print_stacktrace=1
ctest --test-dir build/sanitize --output-on-failure --parallel "$jobs" --no-tests=error --tests-regex "^($(IFS='|'; echo "${sanitized[*]}"))\$"
echo "tests: all"
ctest --test-dir build/tests --output-on-failure --parallel "$jobs" --no-tests=error
