#!/bin/sh
# Installs what is missing, builds the program and opens it; on the first start it shows the demo.
# Arguments go to the program: sh app/run.sh my.tankwright
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
sh "$root/app/install_packages.sh"
build="$root/build/run"
cmake -S "$root" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DTANKWRIGHT_TESTS=OFF
cmake --build "$build"
exec "$build/app/tankwright" "$@"
