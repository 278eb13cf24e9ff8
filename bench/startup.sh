#!/usr/bin/env bash
# Times whole processes: one small figure, twenty times, and the demo, three times; prints least, middle and most, and the memory.
set -euo pipefail
home=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT

measure() { # name, runs, command...
  local name=$1 runs=$2 i; shift 2
  for ((i = 0; i < runs; i++)); do /usr/bin/time -f '%e %M' -o "$out/one" "$@" >/dev/null 2>&1; cat "$out/one"; done | sort -n | awk -v name="$name" '
    { s[NR] = $1; if ($2 > most) most = $2 }
    END { printf "%-22s least %.2f s, middle %.2f s, most %.2f s; at most %.0f MB\n", name, s[1], s[int((NR + 1) / 2)], s[NR], most / 1024 }'
}

command -v /usr/bin/time >/dev/null || { echo "GNU time is missing (Debian: apt-get install time)" >&2; exit 2; }
"$home/sillwright" figure >/dev/null
measure "figure emc" 20 "$home/sillwright" figure emc temp=70F rh=65%
measure "dossier, one sill" 5 "$home/sillwright" dossier "$home/examples/one-sill.survey.json" -o "$out/sill"
measure "demo, 67 members" 3 "$home/sillwright" demo -o "$out/demo"
