#!/usr/bin/env bash
# How long a changed reading takes to be seen. From the top of the project:  bench/change.sh [changes]
set -euo pipefail
cd "$(dirname "$0")/.."
jdk=${JAVA_HOME:-$(ls -d /usr/lib/jvm/*25* | head -1)}
[ -d bench/target/classes ] || mvn -q -Pbench -Dmaven.test.skip=true package
m2=${MAVEN_REPO:-$HOME/.m2/repository}
driver=$({ find "$m2/com/microsoft/playwright" "$m2/com/google/code/gson" "$m2/org/java-websocket" "$m2/org/opentest4j" -name '*.jar' 2>/dev/null || true; } | tr '\n' ':')
jars="bench/target/classes:page/target/classes:sheet/target/classes:store/target/classes:solve/target/classes:core/target/classes:$(ls desk/target/jars/*.jar | grep -vE '/(core|solve|store|sheet|page|desk)-0' | tr '\n' ':')$driver"
uptime
"$jdk/bin/java" -XX:+UseSerialGC -Djava.awt.headless=true --enable-native-access=ALL-UNNAMED -cp "$jars" sillwright.bench.ChangedReading "$@"
uptime
