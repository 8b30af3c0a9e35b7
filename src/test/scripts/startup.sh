#!/usr/bin/env bash
# Start-up to end, whole processes, as ratios to an empty Spring Batch job in the same run.
# Build first (mvn -q -DskipTests package), then run from the project's root. Median of five.
set -euo pipefail
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
jar=target/rickyard.jar

seconds() { # runs a command and prints the seconds it took
  local start end
  start=$(date +%s%N)
  "$@" >"$work/out" 2>&1
  end=$(date +%s%N)
  awk "BEGIN { print ($end - $start) / 1e9 }"
}
median() { sort -n | awk '{ v[NR] = $1 } END { print v[int((NR + 1) / 2)] }'; }
fresh() { rm -rf "$work/o"; mkdir -p "$work/o/inbox"; }

for round in 1 2 3 4 5; do
  rm -rf "$work/e"; mkdir "$work/e"
  seconds java -cp "target/test-classes:target/lib/*" rickyard.bench.EmptyBatchJob "$work/e" >>"$work/empty"
  fresh
  seconds java -jar $jar morning "$work/o" --as-of 2026-03-16 >>"$work/inbox"
  rm -rf "$work/d"
  seconds java -jar $jar demo --out "$work/d" >>"$work/demo"
done
base=$(median <"$work/empty")
for what in inbox demo; do
  took=$(median <"$work/$what")
  awk "BEGIN { printf \"%-6s %.2f s = %.2f x an empty Spring Batch job (%.2f s)\n\", \"$what\", $took, $took / $base, $base }"
done
