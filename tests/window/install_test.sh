#!/usr/bin/env bash
# What is installed is there and well-formed: programs that run, desktop entry, icon, the file type, manual pages.
#   install_test.sh BUILD_FOLDER
set -euo pipefail
build=$1 into=$1/installed
rm -rf "$into"
cmake --install "$build" --prefix "$into" >/dev/null
for file in bin/tellekant bin/tellekant-desk share/applications/tellekant.desktop share/icons/hicolor/scalable/apps/tellekant.svg \
  share/mime/packages/tellekant.xml share/man/man1/tellekant.1 share/man/man1/tellekant-desk.1; do
  [ -s "$into/$file" ] || { echo "install: $file is missing" >&2; exit 1; }
done
cd /
"$into/bin/tellekant" --version >/dev/null
"$into/bin/tellekant-desk" --version >/dev/null
xmllint --noout "$into/share/mime/packages/tellekant.xml" "$into/share/icons/hicolor/scalable/apps/tellekant.svg"
for page in "$into"/share/man/man1/*.1; do
  said=$(man -l --warnings "$page" 2>&1 >/dev/null)
  [ -z "$said" ] || { echo "install: $page: $said" >&2; exit 1; }
done
if command -v desktop-file-validate >/dev/null; then desktop-file-validate "$into/share/applications/tellekant.desktop"
else echo "install: desktop-file-validate is not here: the desktop entry was not looked over"; fi
