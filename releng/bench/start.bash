#!/usr/bin/env bash
# How long from the start of the process until a design can be worked on? Builds nothing.
#   releng/bench/start.bash PRODUCT FILE.design [times]
# Opens the design once, then starts again with it restored and tells the milliseconds of each start.
# Needs a display; without one: xvfb-run releng/bench/start.bash ...
set -euo pipefail
product=$1
design=$(realpath "$2")
times=${3:-5}
launcher=$(ls "$product"/plugins/org.eclipse.equinox.launcher_*.jar)
workspace=$(mktemp -d)
trap 'rm -rf "$workspace"' EXIT
start() {
    rm -f "$workspace.ms"
    java -Xmx1g -Dfile.encoding=UTF-8 -Dorg.pollex.start.file="$workspace.ms" -jar "$launcher" -nosplash \
        -data "$workspace" "$@" > "$workspace.log" 2>&1
    cat "$workspace.ms"
}
echo "first, design opened by name: $(start "$design") ms"
for ((i = 1; i <= times; i++)); do
    echo "restored: $(start) ms"
done
rm -f "$workspace.ms" "$workspace.log"
