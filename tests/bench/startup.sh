#!/bin/sh
# Compares the start of tankwright with that of an empty Qt 3D window, in one run on one machine.
# Usage: startup.sh BUILD_FOLDER [RUNS]
# Prints for each: median time to the first picture [ms], peak memory [MiB], processor use at rest over 10 s [%]; then the ratios.
# Without a display it starts a virtual one (xvfb-run).
set -eu

build=${1:?usage: startup.sh BUILD_FOLDER [RUNS]}
runs=${2:-5}
wait_s=60
rest_s=10

if [ -z "${DISPLAY:-}" ]; then
  exec xvfb-run -a -s "-screen 0 1366x768x24" "$0" "$@"
fi

find_program() {
  found=$(find "$build" -type f -name "$1" -perm -u+x | head -n 1)
  [ -n "$found" ] || { echo "no program $1 in $build" >&2; exit 1; }
  echo "$found"
}

scratch=$(mktemp -d)
child=
trap 'if [ -n "$child" ]; then kill "$child" 2>/dev/null || :; fi; rm -rf "$scratch"' EXIT
export HOME="$scratch" XDG_CONFIG_HOME="$scratch/config" XDG_DATA_HOME="$scratch/data" XDG_CACHE_HOME="$scratch/cache"
export TANKWRIGHT_REPORT_FIRST_PICTURE=1

median() { sort -n "$1" | awk '{ v[NR] = $1 } END { print NR % 2 ? v[(NR + 1) / 2] : (v[NR / 2] + v[NR / 2 + 1]) / 2 }'; }

# milliseconds to the first picture, as the program says itself, and peak KiB of one start that ends there
start_once() {
  TANKWRIGHT_QUIT_AFTER_FIRST_PICTURE=1 timeout "$wait_s" \
    /usr/bin/time -f '%M' -o "$scratch/time" "$1" 2>"$scratch/err" >/dev/null ||
    { echo "$1 did not end after its first picture" >&2; cat "$scratch/err" >&2; exit 1; }
  grep -q 'first picture' "$scratch/err" || { echo "$1 showed no first picture" >&2; exit 1; }
  echo "$(sed -n 's/^first picture: \([0-9]*\) ms.*/\1/p' "$scratch/err") $(tail -n 1 "$scratch/time")"
}

# processor time used so far [clock ticks]
ticks() { awk '{ sub(/^.*\) /, ""); print $12 + $13 }' "/proc/$1/stat"; }

# processor use over the rest [%], once the picture is there and a start's after-work is done
at_rest() {
  "$1" 2>"$scratch/err" >/dev/null &
  child=$!
  waited=0
  until grep -q 'first picture' "$scratch/err"; do
    sleep 0.2
    waited=$((waited + 1))
    [ "$waited" -lt $((wait_s * 5)) ] || { echo "$1 showed no first picture" >&2; exit 1; }
  done
  sleep 3
  before=$(ticks "$child")
  sleep "$rest_s"
  after=$(ticks "$child")
  kill "$child"
  wait "$child" 2>/dev/null || :
  child=
  awk -v n=$((after - before)) -v hz="$(getconf CLK_TCK)" -v s="$rest_s" 'BEGIN { printf "%.2f\n", 100 * n / hz / s }'
}

# keeps the figures of one start under a name
record() {
  start_once "$2" >"$scratch/one"
  awk '{ print $1 }' "$scratch/one" >>"$scratch/$1.ms"
  awk '{ printf "%.1f\n", $2 / 1024 }' "$scratch/one" >>"$scratch/$1.mib"
}

summary() { echo "$(median "$scratch/$1.ms") $(median "$scratch/$1.mib") $(at_rest "$2")"; }

tankwright=$(find_program tankwright)
empty=$(find_program empty_qt3d_window)
start_once "$tankwright" >/dev/null  # the first starts fill the file cache
start_once "$empty" >/dev/null
for _ in $(seq "$runs"); do  # by turns, so that other load on the machine meets both
  record tankwright "$tankwright"
  record empty "$empty"
done
summary tankwright "$tankwright" >"$scratch/tankwright"
summary empty "$empty" >"$scratch/empty"
awk '{ printf "tankwright          first picture %5d ms   peak %7.1f MiB   at rest %5.2f %%\n", $1, $2, $3 }' "$scratch/tankwright"
awk '{ printf "empty Qt 3D window  first picture %5d ms   peak %7.1f MiB   at rest %5.2f %%\n", $1, $2, $3 }' "$scratch/empty"
paste -d ' ' "$scratch/tankwright" "$scratch/empty" |
  awk '{ printf "ratio               first picture %6.2f     peak %7.2f       at rest %+5.2f points\n", $1 / $4, $2 / $5, $3 - $6 }'
