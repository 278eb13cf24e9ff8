#!/usr/bin/env bash
# Fifty phones that sync at once, against SQLite and against a PostgreSQL server of its own that is made for the run.
# From the top of the project:  bench/load.sh [phones] [entries of each]
set -euo pipefail
cd "$(dirname "$0")/.."
phones=${1:-50} entries=${2:-200}
jdk=${JAVA_HOME:-$(ls -d /usr/lib/jvm/*25* | head -1)}
[ -d bench/target/classes ] || mvn -q -Pbench -Dmaven.test.skip=true package
jars="bench/target/classes:page/target/classes:sheet/target/classes:store/target/classes:solve/target/classes:core/target/classes:$(ls desk/target/jars/*.jar | grep -vE '/(core|solve|store|sheet|page|desk)-0' | tr '\n' ':')"
work=$(mktemp -d)
pg=
end() {
  [ -z "$pg" ] || as "$pg/pg_ctl" -D "$work/pg/data" -m immediate stop >/dev/null 2>&1 || true
  rm -rf "$work"
}
trap end EXIT
as() { if [ "$(id -u)" = 0 ]; then (cd / && setpriv --reuid=postgres --regid=postgres --clear-groups -- "$@"); else "$@"; fi; }
load() { "$jdk/bin/java" --enable-native-access=ALL-UNNAMED -cp "$jars" sillwright.bench.SyncLoad "$@" || code=1; }

code=0
uptime
# As the field page sends, and for comparison one by one and all at once.
load "$work/load.book" "$phones" "$entries"
for batch in 1 200; do load "$work/load-$batch.book" "$phones" "$entries" "$batch"; done
bin=$(ls -d /usr/lib/postgresql/*/bin 2>/dev/null | sort -V | tail -1 || true)
if [ -n "$bin" ]; then
  pg=$bin
  chmod 711 "$work"
  mkdir "$work/pg"
  [ "$(id -u)" != 0 ] || chown postgres "$work/pg"
  as "$pg/initdb" -D "$work/pg/data" -U keeper -A trust -E UTF8 --locale=C >/dev/null
  port=$((20000 + RANDOM % 20000))
  as "$pg/pg_ctl" -D "$work/pg/data" -w -o "-p $port -c listen_addresses=127.0.0.1 -c unix_socket_directories=$work/pg" -l "$work/pg/log" start >/dev/null
  for batch in "" 1 200; do
    as "$pg/createdb" -h 127.0.0.1 -p "$port" -U keeper "load$batch"
    load "postgresql://keeper:x@127.0.0.1:$port/load$batch" "$phones" "$entries" $batch
  done
  as "$pg/pg_ctl" -D "$work/pg/data" -m fast stop >/dev/null
  pg=
else
  echo "PostgreSQL is not here: apt-get install postgresql"
fi
uptime
exit $code
