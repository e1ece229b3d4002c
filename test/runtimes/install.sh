#!/usr/bin/env bash
# Installs Debian's Chromium for the bundled page, when there is none and this is root on a machine with apt-get. Does nothing otherwise:
# test/runtimes/run.mjs then says in one line that it is missing.
set -euo pipefail
for program in "${CHROMIUM:-}" /usr/bin/chromium /usr/bin/chromium-browser /usr/bin/google-chrome; do
  if [ -n "$program" ] && [ -x "$program" ]; then exit 0; fi
done
if [ "$(id -u)" != 0 ] || ! command -v apt-get > /dev/null; then exit 0; fi
echo "installing Debian's chromium"
export DEBIAN_FRONTEND=noninteractive
apt-get update -qq
apt-get install -y -qq --no-install-recommends chromium > /dev/null
