/* Walks that take minutes: npx vitest run --config test/slow/vitest.config.ts */
import { defineConfig, type ViteUserConfig } from "vitest/config";

const config: ViteUserConfig = defineConfig({
  test: { include: ["test/slow/**/*.slow.ts"], testTimeout: 4 * 3600_000, disableConsoleIntercept: true },
});

export default config;
