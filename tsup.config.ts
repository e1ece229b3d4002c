import { defineConfig, type Options } from "tsup";

// Three builds share one dist: only the first cleans.
const common: Options = { target: "node20", platform: "neutral", sourcemap: false };
const types: Options["dts"] = { entry: "src/index.ts", compilerOptions: { ignoreDeprecations: "6.0" } };

const config: Options[] = [
  // For bundlers: every source file is an entry, so that what an app does not import is dropped
  // (decimal.js and d3-interpolate cannot be shaken out of a single bundled index).
  { ...common, entry: ["src/**/*.ts"], format: "esm", splitting: true, clean: true, dts: types },
  // For Node: one file with its dependencies, since opening a hundred small modules costs a start 80 ms.
  { ...common, entry: ["src/index.ts"], format: "esm", outDir: "dist/node", noExternal: [/./], splitting: false },
  // For CommonJS: the same. d3-interpolate is ESM only, so it has to be carried in any case.
  { ...common, entry: ["src/index.ts"], format: "cjs", noExternal: [/./], dts: types },
];

const built: ReturnType<typeof defineConfig> = defineConfig(config);

export default built;
