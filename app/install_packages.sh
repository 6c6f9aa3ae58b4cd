#!/bin/sh
# Installs the Debian packages of app/packages.txt that are missing. Does nothing, and asks nothing, when none is.
set -eu
list=$(dirname "$0")/packages.txt
missing=
for package in $(sed 's/#.*//' "$list"); do
  state=$(dpkg-query -W -f '${Status}' "$package" 2>/dev/null || true)
  [ "$state" = "install ok installed" ] || missing="$missing $package"
done
[ -z "$missing" ] && exit 0

echo "Installing:$missing"
as_root=
[ "$(id -u)" -eq 0 ] || as_root=sudo
$as_root apt-get update -qq
# shellcheck disable=SC2086  # one word a package
$as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $missing
