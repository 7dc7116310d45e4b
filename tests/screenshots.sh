#!/usr/bin/env bash
# Takes pictures of every page (desk and phone, light and dark) into artifacts/screens.
set -euo pipefail
cd "$(dirname "$0")/.."
PATTERNSTUDIO_REQUIRE_BROWSER=1 dotnet test --project tests/PatternStudio.EndToEnd -- --filter-class '*EveryPageTests'
echo "Pictures are in artifacts/screens."
