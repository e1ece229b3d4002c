#!/usr/bin/env bash
# The page in headless Chromium: installs what that needs, apart from the package's own tools, and runs the tests.
set -euo pipefail
cd "$(dirname "$0")/../.."
bash test/runtimes/install.sh
[ -d test/page/node_modules/playwright-core ] || npm ci --prefix test/page --no-audit --no-fund
npm run --silent build:once
node --test --test-concurrency=1 --test-reporter=spec test/page/*.test.mjs
