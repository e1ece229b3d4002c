#!/usr/bin/env bash
# npm run notebooks: executes the notebooks of docs/notebooks without a browser and checks that every cell ran, that every showing cell has its
# outputs, and that they are the ones committed. With --write the executed notebooks take their place.
# Needs a build, and Jupyter's command line: from Debian's packages, installed here when this is root. Deno, the kernel, comes from npm at a
# pinned version into a cache outside git, shared with test/runtimes.
set -euo pipefail
cd "$(dirname "$0")/../.."
say() { echo "notebooks: $1" >&2; exit 1; }

[ -f dist/index.js ] || say "the package is not built: npm run build"

packages="jupyter-nbconvert python3-nbclient jupyter-client jupyter-core"
if ! jupyter nbconvert --version > /dev/null 2>&1; then
  if [ "$(id -u)" = 0 ] && command -v apt-get > /dev/null; then
    echo "installing Debian's $packages"
    export DEBIAN_FRONTEND=noninteractive
    { apt-get update -qq && apt-get install -y -qq --no-install-recommends $packages; } > /dev/null 2>&1 || say "Debian's packages could not be installed: $packages"
  else
    say "Jupyter's nbconvert is missing and this is no root on Debian: install $packages"
  fi
fi

cache=node_modules/.cache/runtimes
manifest=test/runtimes
if ! cmp -s "$manifest/package-lock.json" "$cache/package-lock.json" || [ ! -d "$cache/node_modules" ]; then
  echo "installing Deno"
  mkdir -p "$cache"
  cp "$manifest/package.json" "$manifest/package-lock.json" "$cache/"
  (cd "$cache" && npm ci --no-audit --no-fund --ignore-scripts --loglevel=error > /dev/null) || say "Deno could not be installed from npm"
fi
deno=$(ls -d "$PWD/$cache"/node_modules/@deno/*/deno 2> /dev/null | head -n 1)
[ -n "$deno" ] || say "npm has no Deno for this machine ($(uname -sm))"

# The kernel as Jupyter wants it described, in a folder of its own so that a user's kernels stay as they are.
work=$PWD/node_modules/.cache/notebooks
rm -rf "$work" && mkdir -p "$work/jupyter/kernels/deno" "$work/out"
printf '{"argv":["%s","jupyter","--kernel","--conn","{connection_file}"],"display_name":"Deno","language":"typescript","env":{"NO_COLOR":"1"}}\n' "$deno" > "$work/jupyter/kernels/deno/kernel.json"

export JUPYTER_PATH=$work/jupyter DENO_NO_UPDATE_CHECK=1 NO_COLOR=1
for notebook in docs/notebooks/*.ipynb; do
  # A kernel may lose an output on its way, which is no fault of the notebook: such a one is run again, twice at most.
  for try in 1 2 3; do
    if ! jupyter nbconvert --to notebook --execute --ExecutePreprocessor.kernel_name=deno --ExecutePreprocessor.record_timing=False \
      --ExecutePreprocessor.timeout=60 "$notebook" --output-dir "$work/out" > "$work/log" 2>&1; then
      tail -n 20 "$work/log" >&2
      say "$notebook: a cell threw"
    fi
    lost=0
    node test/notebooks/check.mjs lost "$work/out/$(basename "$notebook")" || lost=$?
    [ "$lost" = 0 ] && break
    [ "$try" != 3 ] || say "$notebook: an output is missing three times over"
  done
done
if [ "${1:-}" = --write ]; then node test/notebooks/check.mjs write docs/notebooks "$work/out"; else node test/notebooks/check.mjs compare docs/notebooks "$work/out"; fi
