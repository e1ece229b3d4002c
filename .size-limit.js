import { readFileSync } from "node:fs";

// Brotli sizes of what an app carries when it imports one thing. The bundler's notes on side-effect-free chunks are silenced: they say
// only that sideEffects: false works.
const quiet = {
  path: "dist/index.js",
  brotli: true,
  modifyEsbuildConfig: (config) => ({ ...config, logLevel: "silent" }),
};
const dependencies = ["d3-interpolate", "simple-statistics", "decimal.js"];
const pure = ["fahrenheitToCelsius", "useFactor", "ageFactor", "replenishmentMl"];
/** Leaves out what other rooms add to the main job. */
const laterRooms = {
  name: "later-rooms",
  setup(build) {
    build.onResolve({ filter: /\/(driftTerm|contrastTerm|jointVariance)\.js$/ }, ({ path }) => ({
      path,
      external: true,
    }));
  },
};

/** A room alone, without the rooms it stands on, whose functions are bare names here: all that it exports, or what is named. */
const room = (name, limit, only = exportsOf(name)) => ({
  ...quiet,
  path: "src/index.ts",
  name:
    only.length < exportsOf(name).length ? `${name} room alone, ${only.join(", ")}` : `${name} room alone`,
  import: `{ ${only.join(", ")} }`,
  ignore: dependencies,
  limit,
  modifyEsbuildConfig: (config) => ({
    ...config,
    logLevel: "silent",
    plugins: [...(config.plugins ?? []), otherRooms(name)],
  }),
});
const exportsOf = (name) =>
  [...readFileSync("src/index.ts", "utf8").matchAll(/^export \{(.*)\} from "\.\/(\w+)\//gm)]
    .filter(([, , from]) => from === name)
    .flatMap(([, names]) => names.split(",").map((each) => each.trim()))
    .filter((each) => !each.startsWith("type "));
const otherRooms = (name) => ({
  name: "other-rooms",
  setup(build) {
    build.onLoad({ filter: /\/src\/\w+\/\w+\.ts$/ }, ({ path }) => {
      if (path.includes(`/src/${name}/`)) return undefined;
      const names = [...readFileSync(path, "utf8").matchAll(/^export (?:function|const) (\w+)/gm)].map(
        ([, each]) => each,
      );
      return { contents: `export {}; ${names.map((each) => `export var ${each};`).join("")}`, loader: "js" };
    });
  },
});

export default [
  ...pure.map((name) => ({
    ...quiet,
    name: `${name}, all it pulls in`,
    import: `{ ${name} }`,
    limit: "500 B",
  })),
  // The main job by itself, from the source; what the rooms of drift, contrast and learning add to it is in the next line.
  {
    ...quiet,
    path: "src/index.ts",
    name: "compensate, own code without drift, contrast and joint spreads",
    import: "{ compensate }",
    ignore: dependencies,
    limit: "6 kB",
    modifyEsbuildConfig: (config) => ({
      ...config,
      logLevel: "silent",
      plugins: [...(config.plugins ?? []), laterRooms],
    }),
  },
  { ...quiet, name: "compensate, own code", import: "{ compensate }", ignore: dependencies, limit: "8 kB" },
  room("drift", "3 kB"),
  room("contrast", "3 kB"),
  room("inspection", "3 kB"),
  room("brew", "8 kB"),
  // Its regression and all; without the reading of notes, which an app with forms of its own leaves out.
  room("learning", "6 kB"),
  room("notes", "2 kB"),
  room("process", "6 kB"),
  room("recipe", "6 kB"),
  { ...quiet, name: "compensate, dependencies bundled", import: "{ compensate }", limit: "12 kB" },
];
