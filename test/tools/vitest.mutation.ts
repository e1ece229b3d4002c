import { defineConfig, type ViteUserConfig } from "vitest/config";

// For mutation testing: the tests of behaviour only. Those that read the source as text would see the mutated text.
const config: ViteUserConfig = defineConfig({
  test: {
    include: ["test/**/*.test.ts"],
    exclude: ["test/house.test.ts", "test/docs/**", "test/release.test.ts", "node_modules/**"],
  },
});

export default config;
