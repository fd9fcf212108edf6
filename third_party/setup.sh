#!/usr/bin/env bash
# Installs what is missing of the packages in packages.txt, and nothing else. Made for Debian 12, as root or with sudo.
#   setup.sh            what building needs
#   setup.sh --tests    what the tests need too
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)

groups=(build)
case "${1-}" in
  "") ;;
  --tests) groups+=(test) ;;
  *) echo "setup: unknown option $1 (there is only --tests)" >&2; exit 2 ;;
esac

missing=()
for group in "${groups[@]}"; do
  while read -r package; do
    status=$(dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null || true)
    [ "$status" = installed ] || missing+=("$package")
  done < <(awk -v group="$group" '$1 == group { print $2 }' "$here/packages.txt")
done

if [ ${#missing[@]} -eq 0 ]; then
  echo "setup: every package is there (${groups[*]})"
  exit 0
fi
if ! command -v apt-get >/dev/null; then
  echo "setup: these Debian packages are missing, and there is no apt-get to install them: ${missing[*]}" >&2
  exit 1
fi

as_root=()
if [ "$(id -u)" -ne 0 ]; then
  command -v sudo >/dev/null || { echo "setup: run as root: apt-get install --no-install-recommends ${missing[*]}" >&2; exit 1; }
  as_root=(sudo)
fi

log=$(mktemp)
trap 'rm -f "$log"' EXIT
step() {  # what, command...: one line; the command's own words only when it fails
  echo "setup: $1"
  shift
  if ! "${as_root[@]}" "$@" >"$log" 2>&1; then
    tail -n 20 "$log" >&2
    echo "setup: failed: $*" >&2
    exit 1
  fi
}
step "looking up packages" apt-get update -q
step "installing ${missing[*]}" env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "${missing[@]}"
