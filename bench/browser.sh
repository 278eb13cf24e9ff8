#!/usr/bin/env bash
# Compiles the core for the browser and works every outside value in it. Needs Node (Debian: apt-get install nodejs) and fetches the compiler.
set -euo pipefail
cd "$(dirname "$0")/.."
export JAVA_HOME=${JAVA_HOME:-$(ls -d /usr/lib/jvm/*25* | head -1)}
command -v node >/dev/null || { echo "Node is missing (Debian: apt-get install nodejs)" >&2; exit 2; }
mvn -q -Pbrowser -pl core,bench/browser -DskipTests package
ls -l bench/browser/target/javascript/sillwright.mjs | awk '{print $5 " bytes"}'
gzip -9c bench/browser/target/javascript/sillwright.mjs | wc -c | awk '{print $1 " bytes as sent"}'
node bench/browser/check.mjs
