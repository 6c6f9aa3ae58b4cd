#!/bin/sh
# Installs what is missing, builds everything with warnings as errors and runs all tests under a virtual display.
# TANKWRIGHT_PRESET chooses another preset of CMakePresets.json (dev, asan, coverage); release unless told.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
cd "$root"
sh app/install_packages.sh
preset=${TANKWRIGHT_PRESET:-release}
cmake --preset "$preset"
cmake --build --preset "$preset"

# The public glTF validator is a package of the npm registry; its check is left out, and says so, where npm is not there.
if command -v npm >/dev/null 2>&1; then
  npm install --silent --no-audit --no-fund --prefix "$root/build/npm" gltf-validator@2 || echo "no glTF validator: npm failed"
  export TANKWRIGHT_NODE_MODULES="$root/build/npm/node_modules"
fi

runtime=$(mktemp -d)
trap 'rm -rf "$runtime"' EXIT
chmod 700 "$runtime"
export XDG_RUNTIME_DIR="$runtime" QT_QPA_PLATFORM=xcb QT3D_RENDERER=opengl QT_SCALE_FACTOR=1 LIBGL_ALWAYS_SOFTWARE=1
export ASAN_OPTIONS=${ASAN_OPTIONS:-detect_leaks=0}  # Qt, Mesa and fontconfig keep memory to the end
export XDG_CONFIG_HOME="$runtime/config" XDG_DATA_HOME="$runtime/data" XDG_CACHE_HOME="$runtime/cache"
xvfb-run -a -s "-screen 0 1366x768x24" ctest --preset "$preset" "$@"
