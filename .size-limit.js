// Brotli sizes of what an app carries when it imports one thing. The bundler's notes on side-effect-free chunks are silenced: they say
// only that sideEffects: false works.
const quiet = { path: "dist/index.js", brotli: true, modifyEsbuildConfig: (config) => ({ ...config, logLevel: "silent" }) };
const dependencies = ["d3-interpolate", "simple-statistics", "decimal.js"];
const brew =
  "massOf, spoonSizesMl, spoonsFor, sodaMass, bakeYield, bakeProgress, bakedSoda, bakeTime, solubility, brewPh, brewStrength, checkBrew, scaleBrew, mixingSteps, handbookIngredients";
const pure = ["fahrenheitToCelsius", "useFactor", "ageFactor", "replenishmentMl"];
/** Leaves out what other rooms add to the main job. */
const laterRooms = {
  name: "later-rooms",
  setup(build) {
    build.onResolve({ filter: /\/(driftTerm|contrastTerm|jointVariance)\.js$/ }, ({ path }) => ({ path, external: true }));
  },
};

export default [
  ...pure.map((name) => ({ ...quiet, name: `${name}, all it pulls in`, import: `{ ${name} }`, limit: "500 B" })),
  // The main job by itself, from the source; what the rooms of drift, contrast and learning add to it is in the next line.
  {
    ...quiet,
    path: "src/index.ts",
    name: "compensate, own code without drift, contrast and joint spreads",
    import: "{ compensate }",
    ignore: dependencies,
    // The aim is 6 kB; the checks that fuzzing asked for brought it to 6.16.
    limit: "6.2 kB",
    modifyEsbuildConfig: (config) => ({ ...config, logLevel: "silent", plugins: [...(config.plugins ?? []), laterRooms] }),
  },
  { ...quiet, name: "compensate, own code", import: "{ compensate }", ignore: dependencies, limit: "8 kB" },
  // Of the 12.4 kB the room itself is 5.7: the rest are the causes and compensate, which it stands on.
  { ...quiet, name: "learning, own code with all it stands on", import: "{ startKnowledge, learn, predict, nextTest }", ignore: dependencies, limit: "13 kB" },
  { ...quiet, name: "brew room, own code", import: `{ ${brew} }`, ignore: dependencies, limit: "8 kB" },
  { ...quiet, name: "compensate, dependencies bundled", import: "{ compensate }", limit: "12 kB" },
];
