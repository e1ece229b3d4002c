#!/usr/bin/env bash
# The page in headless Chromium: installs what that needs, apart from the package's own tools, and runs the tests; with names as
# arguments only those files, as in "npm run page:test -- bath speed".
set -euo pipefail
cd "$(dirname "$0")/../.."
bash test/runtimes/install.sh
[ -d test/page/node_modules/playwright-core ] || npm ci --prefix test/page --no-audit --no-fund
npm run --silent build:once
files=()
for name in "$@"; do files+=("test/page/$name.test.mjs"); done
[ $# -gt 0 ] || files=(test/page/*.test.mjs)
node --test --test-concurrency=1 --test-reporter=spec "${files[@]}"
