#!/usr/bin/env bash
# Takes pictures of every page (1440, 820 and 390 px wide, light and dark) into artifacts/screens.
set -euo pipefail
cd "$(dirname "$0")/.."
# The browser with windows of its own: the one without lays pages out anew for a picture of the whole page.
if [ -x /usr/bin/chromium ]; then export PATTERNSTUDIO_BROWSER=${PATTERNSTUDIO_BROWSER:-/usr/bin/chromium}; fi
PATTERNSTUDIO_EVERY_WINDOW=1 PATTERNSTUDIO_PICTURES=1 PATTERNSTUDIO_REQUIRE_BROWSER=1 dotnet test -c Release --project tests/PatternStudio.EndToEnd -- \
  --filter-class '*EveryPageTests' '*ShelfLookTests' '*ManyDesignsTests' '*TestRoundTests' '*HelpAndSettingsTests' '*WritingTests' '*RarePagesTests' '*KeyboardTests'
echo "Pictures are in artifacts/screens."
