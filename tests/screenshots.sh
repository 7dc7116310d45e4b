#!/usr/bin/env bash
# Takes pictures of every page (1440, 820 and 390 px wide, light and dark) into artifacts/screens.
set -euo pipefail
cd "$(dirname "$0")/.."
PATTERNSTUDIO_EVERY_WINDOW=1 PATTERNSTUDIO_PICTURES=1 PATTERNSTUDIO_REQUIRE_BROWSER=1 dotnet test -c Release --project tests/PatternStudio.EndToEnd -- \
  --filter-class '*EveryPageTests' '*ShelfLookTests' '*ManyDesignsTests' '*TestRoundTests' '*HelpAndSettingsTests' '*WritingTests' '*RarePagesTests' '*KeyboardTests'
echo "Pictures are in artifacts/screens."
