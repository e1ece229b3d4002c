import { defineConfig, type Options } from "tsup";

// Two builds share one dist: only the first cleans. Every source file is an entry of the ESM build, so that a
// bundler drops what an app does not import (decimal.js cannot be shaken out of a single bundled index).
const common: Options = {
  target: "node20",
  platform: "neutral",
  sourcemap: false,
  dts: { entry: "src/index.ts", compilerOptions: { ignoreDeprecations: "6.0" } },
};

const config: Options[] = [
  { ...common, entry: ["src/**/*.ts"], format: "esm", splitting: true, clean: true },
  // d3-interpolate is ESM only, so the CommonJS build carries it.
  { ...common, entry: ["src/index.ts"], format: "cjs", noExternal: ["d3-interpolate", "d3-color"] },
];

const built: ReturnType<typeof defineConfig> = defineConfig(config);

export default built;
