#!/usr/bin/env bash
# The dossier of an invented building of 536 members and 300 pictures: processor time, clock, and the memory it took at most. From the top of the project:  bench/big.sh [houses] [pictures]
set -euo pipefail
cd "$(dirname "$0")/.."
jdk=${JAVA_HOME:-$(ls -d /usr/lib/jvm/*25* | head -1)}
command -v /usr/bin/time >/dev/null || { echo "GNU time is missing (Debian: apt-get install time)" >&2; exit 2; }
[ -f bench/target/classes/sillwright/bench/BigHouse.class ] || mvn -q -Pbench -Dmaven.test.skip=true package
./sillwright figure >/dev/null
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
"$jdk/bin/java" -Djava.awt.headless=true -cp "bench/target/classes:$(ls .sillwright/jars/*.jar | tr '\n' ':')" sillwright.bench.BigHouse examples/fallow-brook-house.survey.json "$work" "${1:-8}" "${2:-300}"
/usr/bin/time -f '%U s of processor and %S s of the system, %e s by the clock, at most %M kB of memory' ./sillwright dossier "$work/big.survey.json" -o "$work/out" --prices examples/prices.csv --start 2026-06-01 >"$work/said"
tail -4 "$work/said"
ls -l "$work/out/dossier.pdf" | awk '{ print $5 " bytes of dossier.pdf" }'
