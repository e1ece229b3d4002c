import { defineConfig, type ViteUserConfig } from "vitest/config";

// For mutation testing: the tests of behaviour only. Those that read the source as text would see the mutated text.
const config: ViteUserConfig = defineConfig({
  resolve: { alias: { "@fast-check/vitest": new URL("../property.ts", import.meta.url).pathname } },
  test: {
    include: ["test/**/*.test.ts"],
    // Every function under test is pure, so files may share a process: a fifth of the time.
    isolate: false,
    exclude: ["test/house.test.ts", "test/docs/**", "test/release.test.ts", "node_modules/**"],
  },
});

export default config;
