#!/usr/bin/env bash
# Starts a PostgreSQL server for the tests, in a temporary folder, on the loopback address only, and prints its connection string.
#
#   export PATTERNSTUDIO_TEST_POSTGRES="$(tests/postgres-for-tests.sh start)"
#   dotnet test --project tests/PatternStudio.Studio.Tests
#   tests/postgres-for-tests.sh stop
#
# The server won't run as root: as root, it is started as the user 'postgres'.
# PATTERNSTUDIO_TEST_POSTGRES_PORT chooses another port than 54329.
set -euo pipefail

port="${PATTERNSTUDIO_TEST_POSTGRES_PORT:-54329}"
note="$(dirname "$(mktemp --dry-run)")/pattern-studio-postgres-$port"    # remembers the folder from start to stop

bin="$(ls -d /usr/lib/postgresql/*/bin 2>/dev/null | sort -V | tail -n 1 || true)"
[ -n "$bin" ] || bin="$(dirname "$(command -v pg_ctl || echo /nowhere/pg_ctl)")"
[ -x "$bin/pg_ctl" ] || { echo "No PostgreSQL server is installed here." >&2; exit 1; }

as_server() {
    if [ "$(id -u)" = 0 ]; then (cd / && runuser -u postgres -- "$@"); else "$@"; fi
}

start() {
    local folder
    folder="$(as_server mktemp -d)"
    as_server "$bin/initdb" --pgdata="$folder/data" --username=postgres --auth=trust --encoding=UTF8 --locale=C --no-sync >"$note.log" 2>&1 ||
        { cat "$note.log" >&2; exit 1; }
    # Nothing of it needs to outlast a crash: without fsync the tests are quicker.
    as_server "$bin/pg_ctl" --pgdata="$folder/data" --log="$folder/log" --wait --silent \
        --options="-c listen_addresses=127.0.0.1 -c port=$port -c unix_socket_directories=$folder -c fsync=off" start >/dev/null ||
        { as_server cat "$folder/log" >&2; exit 1; }
    echo "$folder" >"$note"
    echo "Host=127.0.0.1;Port=$port;Username=postgres;Database=postgres"
}

stop() {
    [ -f "$note" ] || { echo "No server for tests is running on port $port." >&2; exit 0; }
    local folder
    folder="$(cat "$note")"
    as_server "$bin/pg_ctl" --pgdata="$folder/data" --mode=fast --silent stop >/dev/null || true
    as_server rm -rf "$folder"
    rm -f "$note" "$note.log"
}

case "${1:-start}" in
    start) start ;;
    stop) stop ;;
    *) echo "Say 'start' or 'stop'." >&2; exit 2 ;;
esac
